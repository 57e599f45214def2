import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeText, MOST_CHARACTERS, MOST_PROBLEMS, readCsv } from '../../src/exchange/index.ts';
import type { Cells, SheetName } from '../../src/schedule/index.ts';

describe('readCsv', () => {
  it.each<[name: string, text: string, sheet: SheetName, rows: Cells[]]>([
    ['commas', 'Ref,Qty,Rail\r\nD1,3,R1\r\n', 'devices', [{ ref: 'D1', qty: 3, rail: 'R1' }]],
    ['semicolons and decimal commas', 'Ref;Distance (m);Rail\nD1;12,5;R1\n', 'devices',
      [{ ref: 'D1', distance: 12.5, rail: 'R1' }]],
    ['tabs', 'Ref\tQty\tRail\nD1\t3\tR1', 'devices', [{ ref: 'D1', qty: 3, rail: 'R1' }]],
    ['a byte order mark', '\ufeffRef,Qty\nD1,3', 'devices', [{ ref: 'D1', qty: 3 }]],
    ['line ends of one character', 'Ref,Qty\rD1,3\rD2,4\r', 'devices', [{ ref: 'D1', qty: 3 }, { ref: 'D2', qty: 4 }]],
    ['mixed line ends', 'Ref,Qty\r\nD1,3\nD2,4\rD3,5', 'devices',
      [{ ref: 'D1', qty: 3 }, { ref: 'D2', qty: 4 }, { ref: 'D3', qty: 5 }]],
    ['line breaks inside quotes', 'Ref,Note\r\nD1,"a\r\nb"\r\nD2,"c\nd"\r\n', 'devices',
      [{ ref: 'D1', note: 'a\r\nb' }, { ref: 'D2', note: 'c\nd' }]],
    ['a quote inside an unquoted text', 'Ref,Note\r\nD1,5" pipe\r\nD2,x\r\n', 'devices',
      [{ ref: 'D1', note: '5" pipe' }, { ref: 'D2', note: 'x' }]],
    ['keys, in another order', 'qty,ref\n3,D1', 'devices', [{ ref: 'D1', qty: 3 }]],
    ['titles in any case, spaces around', ' UNIT  DRAW (MA) , ref\n350,D1', 'devices', [{ ref: 'D1', unitDraw: 350 }]],
    ['titles without the unit', 'Ref,Unit draw\nD1,350', 'devices', [{ ref: 'D1', unitDraw: 350 }]],
    ['amperes for milliamperes', 'Ref,Unit draw (A)\nD1,0.35', 'devices', [{ ref: 'D1', unitDraw: 350 }]],
    ['percent for shares', 'Ref,Diversity (%)\nD1,70', 'devices', [{ ref: 'D1', diversity: 0.7 }]],
    ['millimetres for metres', 'Ref,Distance [mm]\nD1,850', 'devices', [{ ref: 'D1', distance: 0.85 }]],
    [
      'a unit in the cell before that of the heading', 'Ref,Unit draw (A)\nD1,350 mA', 'devices',
      [{ ref: 'D1', unitDraw: 350 }],
    ],
    [
      'a point for decimals where commas part the fields', 'Ref,Distance\nD1,1.234', 'devices',
      [{ ref: 'D1', distance: 1.234 }],
    ],
    ['quoted decimal commas', 'Ref,Distance\nD1,"1,5"\nD2,"1,234"', 'devices',
      [{ ref: 'D1', distance: 1.5 }, { ref: 'D2', distance: 1.234 }]],
    [
      'computed columns, ignored', 'Rail,Rated,Demand (A),Status\nR1,10,99,over', 'supplies',
      [{ rail: 'R1', rated: 10 }],
    ],
    ['short lines', 'Ref,Qty,Rail\nD1\nD2,4', 'devices', [{ ref: 'D1' }, { ref: 'D2', qty: 4 }]],
    ['empty lines at the end', 'Ref,Qty\nD1,3\n\n\n,\n', 'devices', [{ ref: 'D1', qty: 3 }]],
    ['headings alone', 'Ref,Qty\n', 'devices', []],
    ['titles of before', 'Run,Length (m),Most drop\nW1,5,0.03', 'runs', [{ run: 'W1', length: 5, maxDrop: 0.03 }]],
    [
      'a formula', "Ref,Qty\nD1,3\nD2,'=[devices.qty@D1]*2", 'devices',
      [{ ref: 'D1', qty: 3 }, { ref: 'D2', qty: '=[devices.qty@D1]*2' }],
    ],
  ])('reads %s', (_name, text, sheet, rows) => {
    expect(readCsv(text)).toEqual({ ok: true, sheet, rows, lines: expect.any(Array) as unknown, notes: [] });
  });

  it.each<[name: string, text: string, note: string]>([
    ['columns that the sheet does not have', 'Ref,Qty,Colour,Price\nD1,3,red,5', '“Colour”, “Price”'],
    ['values without a heading', 'Ref,Qty,\nD1,3,x', 'column 3 with 1 value'],
    ['empty lines', 'Ref,Qty\nD1,3\n\n\nD2,4', '2 empty lines'],
    [
      'the voltage at which watts were taken', 'Ref,Unit draw\nD1,8.4 W',
      'Line 2, Unit draw (mA): 8.4 W at 24 V is 350 mA.',
    ],
    [
      'the same for watts in the heading', 'Ref,Unit draw (W)\nD1,8.4',
      'Line 2, Unit draw (mA): 8.4 W at 24 V is 350 mA.',
    ],
    ['how many hints are not shown', `Ref,Unit draw\n${'D1,8.4 W\n'.repeat(50)}`, 'And 30 more of this kind.'],
  ])('notes %s', (_name, text, note) => {
    const read = readCsv(text);
    expect(read.ok && read.notes.join('\n')).toContain(note);
  });

  it('takes watts at the voltage of the rail, wherever its column stands', () => {
    const text = 'Unit draw,Rail\n8.4 W,R1\n8.4 W,R2';
    expect(readCsv(text, 'devices', (rail) => rail === 'R1' ? 12 : undefined))
      .toMatchObject({ ok: true, rows: [{ unitDraw: 700 }, { unitDraw: 350 }] });
  });

  it.each<[name: string, text: string, problem: object, words: string]>([
    [
      'a bad number', 'Ref,Qty\nD1,3\nD2,many', { code: 'value-refused', line: 3, column: 2, received: 'many' },
      'is not a',
    ],
    ['a bad number below a text of two lines', 'Ref,Note,Qty\nD1,"a\nb",3\nD2,,many', { line: 4, column: 3 }, 'many'],
    ['an ambiguous number', 'Ref;Distance\nD1;1.200', { code: 'value-refused', line: 2, column: 2 }, '1.2 or 1200'],
    ['an unquoted decimal comma', 'Ref,Distance,Rail\nD1,12,5,R1', { code: 'too-many-fields', line: 2 }, 'in quotes'],
    ['a heading that stands twice', 'Ref,Qty,qty\nD1,3,4', { code: 'column-duplicate', line: 1, column: 3 }, '2 and 3'],
    [
      'a unit that does not fit', 'Ref,Distance (kg)\nD1,3', { code: 'unit-unknown', line: 1, column: 2 },
      'Distance (m)',
    ],
    ['a quote that nothing closes', 'Ref,Note\nD1,x\nD2,"y\n', { code: 'csv-syntax', line: 3 }, 'nothing closes'],
    ['text behind a quote', 'Ref,Note\nD1,"x"y\n', { code: 'csv-syntax', line: 2 }, 'closing quote'],
    [
      'a formula without its row', "Ref,Qty\nD1,'=[devices.qty#7]*2",
      { code: 'formula-unreadable', line: 2, column: 2 }, 'no row 7',
    ],
    ['an empty file', '', { code: 'csv-empty' }, 'empty'],
    ['a file that is not text', 'Ref,Qty\nD1,\0', { code: 'not-text', line: 2 }, 'UTF-8'],
  ])('refuses %s', (_name, text, problem, words) => {
    const read = readCsv(text);
    expect(read.ok || read.problems).toContainEqual(expect.objectContaining(problem));
    expect(!read.ok && read.problems.map(({ message }) => message).join('\n')).toContain(words);
  });

  it('reads nothing when one cell is bad, and lists every bad cell', () => {
    const read = readCsv('Ref,Qty,Diversity\nD1,x,70\nD2,3,0.5\nD3,1.5,2');
    expect(read).toMatchObject({ ok: false, total: 4 });
    expect(!read.ok && read.problems.map(({ line, column }) => `${line}:${column}`))
      .toEqual(['2:2', '2:3', '4:2', '4:3']);
  });

  it('lists the first problems and counts all', () => {
    const read = readCsv(`Ref,Qty\n${'D,x\n'.repeat(1000)}`);
    expect(read).toMatchObject({ ok: false, total: 1000 });
    expect(!read.ok && read.problems).toHaveLength(MOST_PROBLEMS);
  });

  it('refuses a file above the limit', () => {
    expect(readCsv(' '.repeat(MOST_CHARACTERS + 1)))
      .toMatchObject({ ok: false, problems: [{ code: 'file-too-large' }] });
  });

  it('reads half a surrogate pair as the replacement character', () => {
    expect(readCsv('Ref,Note\nD1,\ud83d')).toMatchObject({ ok: true, rows: [{ note: '\ufffd' }] });
  });

  it('reads a large text without overflowing', () => {
    const note = 'x\r\n'.repeat(500_000);
    expect(readCsv(`Ref,Note\r\nD1,"${note}"`)).toMatchObject({ ok: true, rows: [{ ref: 'D1', note }] });
  });

  it('never throws, whatever it is given', () => {
    const piece = fc.oneof(
      fc.string(), fc.constantFrom('Ref', 'Qty', 'Rail', ',', ';', '\t', '\n', '\r', '"', "'", '=D1', '1,5', '8 W')
    );
    fc.assert(fc.property(fc.array(piece).map((parts) => parts.join('')), fc.constantFrom(
      undefined, 'devices' as const
    ), (text, sheet) => {
      const read = readCsv(text, sheet);
      expect(read.ok || (read.total > 0 && read.problems.every(({ message }) => message !== ''))).toBe(true);
    }), { numRuns: 500 });
  });
});

describe('decodeText', () => {
  const text = 'Ω;²';
  it.each([
    ['UTF-8', 'UTF-8', new TextEncoder().encode(text)],
    ['UTF-8 with a byte order mark', 'UTF-8', new TextEncoder().encode(`\ufeff${text}`)],
    ['UTF-16, low byte first', 'UTF-16 LE', Uint8Array.from(Buffer.from(`\ufeff${text}`, 'utf16le'))],
    ['UTF-16, high byte first', 'UTF-16 BE', Uint8Array.from(Buffer.from(`\ufeff${text}`, 'utf16le').swap16())],
  ])('reads %s and says so', (_name, encoding, bytes) => {
    expect(decodeText(bytes)).toEqual({ ok: true, text, encoding });
  });

  it.each([
    ['UTF-16 LE', Buffer.from('Gerät;Anzahl', 'utf16le')], ['UTF-16 BE', Buffer.from('Gerät;Anzahl', 'utf16le').swap16()],
    // 0xE4 is ä and 0x96 an en dash there: the WHATWG encoding standard, index windows-1252.
    ['Windows-1252', Buffer.from('Ger\xe4t;Anzahl', 'latin1')],
  ])('knows %s without a mark', (encoding, bytes) => {
    expect(decodeText(Uint8Array.from(bytes))).toEqual({ ok: true, text: 'Gerät;Anzahl', encoding });
  });

  it('reads dashes, quotes and the euro of Windows-1252', () => {
    expect(decodeText(Uint8Array.of(0x96, 0x93, 0x94, 0x80, 0xb2))).toMatchObject({ text: '–“”€²', encoding: 'Windows-1252' });
  });

  it.each([
    ['a control character', [0x52, 0xb2, 0x01]], ['NUL', [0x52, 0xb2, 0, 0x41, 0x42]], ['a free place', [0x52, 0x81]],
    ['half of a sign of two', [0xff, 0xfe, 0x41]],
  ])('refuses bytes with %s, which are no text', (_why, bytes) => {
    expect(decodeText(Uint8Array.from(bytes))).toMatchObject({ ok: false, problems: [{ code: 'not-text' }] });
  });
});

it.each(['Protection (A)', 'trip', 'Schutzeinrichtung (A)', 'Multiple de déclenchement'])(
  'a file of runs with a column %s of before is refused with what to do', (heading) => {
    const read = readCsv(`Run,Rail,${heading}\nW1,L1,4`, 'runs');
    expect(read).toMatchObject({ ok: false, problems: [{ code: 'column-moved', line: 1, column: 3, received: heading }] });
  });

import { describe, expect, it } from 'vitest';
import { readHtmlTables } from '../../src/exchange/index.ts';
import { htmlTables, missingColumns, type RememberedColumns, type TakeoffSource } from '../../src/exchange/takeoff/index.ts';
import { namesOtherQuantity } from '../../src/exchange/takeoff/other-quantity.ts';
import { makeWorkbook } from '../support/make-workbook.ts';
import { read, tablesOfWorkbook } from './support.ts';

/** What is taken, as «2 Router @ L0», and what is asked about, with its flag. */
function inWords(source: TakeoffSource): { taken: string[]; asked: string[] } {
  const { lines } = read(source);
  const of = (...outcomes: string[]) => lines.filter(({ outcome }) => outcomes.includes(outcome));
  return {
    taken: of('taken', 'merged').map(({ qty, type, area }) => `${qty} ${type} @ ${area}`),
    asked: of('undecided').map(({ key, qty, flag }) => `${key}: ${qty} ${flag ?? '-'}`),
  };
}

const taken = (source: TakeoffSource) => inWords(source).taken;

describe('several columns of counts', () => {
  it.each([
    ['a quantity for each storey', 'Device,Qty L0,Qty L1\nRouter,1,2', ['1 Router @ L0', '2 Router @ L1']],
    ['storeys in brackets', 'Device,Qty (L0),Qty (L1)\nRouter,1,2', ['1 Router @ L0', '2 Router @ L1']],
    ['German storeys', 'Gerät;EG;1. OG\nRouter;1;2', ['1 Router @ EG', '2 Router @ 1. OG']],
    ['French storeys', 'Appareil;RDC;R+1\nRouter;1;2', ['1 Router @ RDC', '2 Router @ R+1']],
    ['rooms', 'Device;Hall;Bar\nRouter;1;2\nLight sensor;;3', ['1 Router @ Hall', '2 Router @ Bar', '3 Light sensor @ Bar']],
    ['a part of the building in each line', 'Building;Device;Qty L0;Qty L1\nNorth;Router;1;2', ['1 Router @ North, L0', '2 Router @ North, L1']],
    ['headings in two lines', 'Device;Qty;\n;L0;L1\nRouter;1;2', ['1 Router @ L0', '2 Router @ L1']],
    ['dashes for none', 'Device;EG;OG\nRouter;-;2\nRouter;1;–', ['2 Router @ OG', '1 Router @ EG']],
  ])('each count, with its heading for an area: %s', (_, source, expected) => {
    expect(taken(source)).toEqual(expected);
  });

  it.each([
    ['types × rooms', 'Device;101;102\nRouter;4;1', ['4 Router @ 101', '1 Router @ 102']],
    ['rooms × types', 'Room;Router;Light sensor\n101;4;1', ['4 Router @ 101', '1 Light sensor @ 101']],
    ['rooms × types under an empty corner', ';Router;Light sensor\nRoom 101;4;1', ['4 Router @ Room 101', '1 Light sensor @ Room 101']],
    ['types × rooms under an empty corner', ';Hall;Bar\nRouter;4;1', ['4 Router @ Hall', '1 Router @ Bar']],
  ])('a matrix is read either way: %s', (_, source, expected) => {
    expect(taken(source)).toEqual(expected);
  });

  it.each([
    ['beside numbers of rooms', ';AA;Bolt\n101;4;1', ['4 AA @ 101', '1 Bolt @ 101']],
    ['above rooms that no word tells', ';PD;K2\nNorth;4;1\nSouth;3;', ['4 PD @ North', '1 K2 @ North', '3 PD @ South']],
    ['beside them', ';North;South\nPD;4;1', ['4 PD @ North', '1 PD @ South']],
  ])('unknown codes become new types %s', (_, source, expected) => {
    expect(taken(source)).toEqual(expected);
  });

  it('is to be decided on where types and rooms cannot be told apart, by its column or as it is', () => {
    const source = ';Aaaa;Bbbb\nCccc;4;1\nDddd;3;1';
    const { columns, sums, lines, names } = read(source);
    expect([missingColumns(columns), sums.taken, sums.undecided]).toEqual([[], 0, 9]);
    expect(lines.filter(({ outcome }) => outcome === 'undecided').map(({ flag }) => flag)).toEqual(['matrix', 'matrix', 'matrix', 'matrix']);
    expect(names.map(({ type, state }) => `${type} ${state}`)).toEqual(['Aaaa new', 'Bbbb new']);
    const rows = (columns: RememberedColumns) => read(source, { columns }).rows.map(({ type, area, qty }) => [qty, type, '@', area].join(' '));
    expect(rows({ 1: 'area' })).toEqual(['4 Aaaa @ Cccc', '1 Bbbb @ Cccc', '3 Aaaa @ Dddd', '1 Bbbb @ Dddd']);
    expect(rows({ 1: 'type' })).toEqual(['4 Cccc @ Aaaa', '1 Cccc @ Bbbb', '3 Dddd @ Aaaa', '1 Dddd @ Bbbb']);
  });

  it('totals of lines and of columns are checked', () => {
    const good = read('Device;EG;OG;Total\nRouter;1;2;3\nLight sensor;4;5;9\nTotal;5;7;12');
    expect(good.sums).toMatchObject({ taken: 12, leftOut: 12, undecided: 0 });
    // 4 + 5 are not 8; a total of 6 is not 1 + 4.
    expect(inWords('Device;EG;OG;Total\nRouter;1;2;3\nLight sensor;4;5;8\nTotal;6;7;13').asked)
      .toEqual(['3/2: 4 sum', '3/3: 5 sum', '4/2: 6 sum']);
  });

  it('a total without counts is not lost', () => {
    expect(inWords('Device;EG;OG;Total\nRouter;1;2;3\nLight sensor;;;8').asked).toEqual(['3: 8 sum']);
  });

  it('a column called total that is none is the quantity, and its neighbours are told', () => {
    const takeoff = read('Device;Cores;Poles;Total\nRouter;3;2;7\nLight sensor;3;1;9');
    expect(takeoff.sums.taken).toBe(16);
    expect(takeoff.notes.join()).toContain('“Cores” (2), “Poles” (2)');
  });

  it('a count beside a whole one is asked about', () => {
    const { lines } = read('Device;Qty;Qty spare\nRouter;3;2');
    expect(lines.map(({ outcome, qty }) => `${outcome} ${qty}`)).toEqual(['left-out null', 'taken 3', 'undecided 2']);
    expect(lines[2]!.reason).toContain('It stands under “Qty spare”, beside another count.');
  });
});

describe('what is no count', () => {
  it.each([
    'Draw (mA)', 'Leistung [W]', 'Preis', 'Unit price', 'Prix €', 'Fläche (m²)', 'dB', 'Breite mm', 'Length (m)', 'Strom', 'P.U.',
    'Einzelpreis EUR', 'Schallpegel dB(A)', 'Height', 'Nodes', 'Artikelnummer', 'Spannung (V)', 'Tiefe', 'Puissance', 'Rev',
  ])('a heading such as %s', (heading) => {
    expect(namesOtherQuantity(heading)).toBe(true);
    const takeoff = read(`Code;Description;${heading}\nAb;Light sensor;12\nCd;Router;2162`);
    expect([takeoff.sums.read, takeoff.rows]).toEqual([0, []]);
  });

  it.each(['Qty', 'Qty L0', 'Menge', 'EG', '1. OG', 'Wing A', 'Block B', 'Anzahl (Stk)', 'Nb', 'Hall', 'Total', 'Menge (m)'])('but %s is', (heading) => {
    expect(namesOtherQuantity(heading)).toBe(false);
  });

  it('a legend, whose descriptions and draws belong to the codes of lists, on another sheet or above', () => {
    const legend = 'Code;Description;Draw (mA)\nAb;Light sensor;12\nCd;Flap drive;0,5';
    const list = 'Code;Room;Qty\nAb;Hall;3\nCd;Hall;2';
    for (const source of [[{ cells: list, sheet: 'EG' }, { cells: legend, sheet: 'Legend' }], `${legend}\n\n${list}`] as TakeoffSource[]) {
      const { sums, lines } = read(source);
      expect(sums).toMatchObject({ read: 5, taken: 5 });
      const devices = lines.filter(({ outcome }) => outcome === 'taken');
      expect(devices.map(({ type, facts }) => [type, facts])).toEqual([['Light sensor', { draw: 12 }], ['Cd', { draw: 0.5 }]]);
    }
  });

  it('a legend in amperes gives milliamperes, and a code that is explained in two ways means neither', () => {
    const takeoff = read([
      { cells: 'Code;Description;Draw (A)\nAb;Light sensor;0.012\nCd;Flap drive;1\nCd;Lift;1' }, { cells: 'Code;Room;Qty\nAb;Hall;1\nCd;Hall;1' },
    ]);
    expect(takeoff.lines.filter(({ outcome }) => outcome === 'taken').map(({ type, facts }) => [type, facts]))
      .toEqual([['Light sensor', { draw: 12 }], ['Cd', {}]]);
    expect(takeoff.notes).toContain('“Cd” is explained in two ways, of which none is taken.');
  });
});

describe('rooms that stand once', () => {
  it('are carried down, storeys and rooms each, and not below another storey, a title or a total', () => {
    expect(taken('Storey;Room;Device;Qty\nEG;Hall;Router;1\n;;Light sensor;2\n;Bar;Router;3\nOG;;Router;4\n;Gallery;Router;5'))
      .toEqual(['1 Router @ EG, Hall', '2 Light sensor @ EG, Hall', '3 Router @ EG, Bar', '4 Router @ OG', '5 Router @ OG, Gallery']);
    expect(taken('Room;Device;Qty\nHall;Router;1\n;Total;1\n;Router;2')).toEqual(['1 Router @ Hall', '2 Router @ null']);
  });

  it('are never joined with another room', () => {
    const { rows } = read('Room;Device;Qty\nHall;Router;1\n;Light sensor;2\nBar;Router;1\n;Light sensor;2');
    expect(rows.map(({ area, type, qty }) => `${area as string} ${type as string} ${qty as number}`))
      .toEqual(['Hall Router 1', 'Hall Light sensor 2', 'Bar Router 1', 'Bar Light sensor 2']);
  });
});

it.each([
  ['L2;;\nL3;2;7', ['L3', 'L3']], ['Room 101;;\nRoom 102;2;7', ['Room 102', 'Room 102']], ['L1;;\nR1;2;1\nL2;;\nR1;7;4', ['L1, R1', 'L1, R1', 'L2, R1', 'L2, R1']],
  // A storey holds for its rooms, until the next one.
  ['Ground floor;;\nHall;2;7\nFirst floor;;\nHall;1;', ['Ground floor, Hall', 'Ground floor, Hall', 'First floor, Hall']],
])('a room of a matrix that has no devices holds for no other room: %s', (lines, areas) => {
  expect(read(`Room;Router;Light sensor\n${lines}`).lines.flatMap(({ outcome, area }) => outcome === 'taken' ? [area] : [])).toEqual(areas);
});

describe('tables of a page', () => {
  const page = `<html><style><!-- .old {text-decoration:line-through} --></style><body><table>
    <col><col><col style='display:none'>
    <tr><th>Room</th><th>Device</th><th>Qty</th></tr>
    <tr><td rowspan="3">Hall &amp; bar</td><td>Router</td><td>1</td></tr>
    <tr><td>Light<br>sensor</td><td rowspan=2>2</td></tr>
    <tr class="old"><td class=old>Router</td></tr>
    <tr style="display:none"><td>Bar</td><td>Router</td><td>4</td></tr>
    <tr><td>Bar</td><td><s>Router</s></td><td>5</td></tr>
    <tr><td colspan="2">Total</td><td>12</td></tr></table></body></html>`;

  it('repeat texts that span rows, and no numbers; what spans columns stands once', () => {
    expect(readHtmlTables(page)[0]!.cells).toEqual([
      ['Room', 'Device', 'Qty'], ['Hall & bar', 'Router', '1'], ['Hall & bar', 'Light sensor', '2'], ['Hall & bar', 'Router', ''],
      ['Bar', 'Router', '4'], ['Bar', 'Router', '5'], ['Total', '', '12'],
    ]);
  });

  it('pasted as a takeoff carry a room that spans rows down, count nothing twice, and ask about what is hidden or struck', () => {
    const takeoff = read(htmlTables(page.replace("style='display:none'", '')));
    expect(takeoff.rows).toEqual([{ type: 'Router', area: 'Hall & bar', qty: 1 }, { type: 'Light sensor', area: 'Hall & bar', qty: 2 }]);
    // A quantity that spans two lines stands once; 4 are hidden, 5 are struck through, 12 is their total.
    expect(takeoff.sums).toMatchObject({ read: 24, taken: 3, leftOut: 12, undecided: 9 });
    expect(takeoff.lines.map(({ outcome, flag }) => [outcome, flag].join(' ').trim())).toEqual([
      'left-out', 'taken', 'taken', 'undecided struck', 'undecided hidden', 'undecided struck', 'left-out',
    ]);
  });

  it('tell what is hidden and struck through', () => {
    const { hiddenRows, hiddenColumns, struckRows } = readHtmlTables(page)[0]!;
    expect([[...hiddenRows], [...hiddenColumns], [...struckRows]]).toEqual([[4], [2], [3, 5]]);
  });

  it('are read up to two million cells, and tables within cells as text', () => {
    expect(readHtmlTables('<table><tr><td>a<table><tr><td>b</td></tr></table>c</td><td>d</td></tr></table>')[0]!.cells).toEqual([['ab c', 'd']]);
    const wide = readHtmlTables(`<table><tr>${'<td colspan=9999 rowspan=9999>x</td>'.repeat(5000)}</tr><tr><td>y</td></tr></table>`);
    expect(wide[0]!.cells.reduce((sum, row) => sum + row.length, 0)).toBeLessThan(4_100_000);
  });
});

describe('what a workbook hides', () => {
  const book = makeWorkbook({ 'Level 0': {
    rows: [['Device', 'Qty', 'Qty L1'], ['Router', 3, 1], ['Router', 99, null], ['Light sensor', 2, null], ['Total', 104, 1]],
    hiddenRows: [3], struckRows: [4],
  } });

  it('is asked about, and taken by decision', async () => {
    const tables = await tablesOfWorkbook(book);
    expect(inWords(tables).asked).toEqual(['Level 0!2/3: 1 sum', 'Level 0!3/2: 99 hidden', 'Level 0!4/2: 2 struck']);
    const decided = read(tables, { decisions: { lines: { 'Level 0!3/2': 'take', 'Level 0!4/2': 'leave-out', 'Level 0!2/3': { qty: 7 } } } });
    expect(decided.sums).toMatchObject({ taken: 3 + 99 + 7, undecided: 0 });
    expect(decided.lines.find(({ key }) => key === 'Level 0!3/2')).toMatchObject({ flag: 'hidden', outcome: 'merged' });
  });
});

describe('lines that count no longer', () => {
  it.each(['entfällt', 'by others', 'bauseits', 'supprimé', 'Lieferung bauseits (Mieter)', 'hors lot', 'omitted', 'storniert'])('say %s', (remark) => {
    expect(inWords(`Device;Qty;Remarks\nRouter;3;${remark}`).asked).toEqual(['2: 3 superseded']);
  });

  it('are known in any cell, but not by the name of a type', () => {
    expect(inWords('Device;Qty\nRouter (entfällt);3').asked).toEqual(['2: 3 superseded']);
    expect(read('Device;Qty\nVoid sensor;3', { types: [{ type: 'Void sensor' }] }).sums.taken).toBe(3);
  });
});

describe('several sheets', () => {
  const list = (qty: number) => `Device;Qty\nRouter;${qty}`;

  it('are taken together, the sheet for an area, and rooms of one name stay apart', () => {
    expect(taken([{ cells: list(2), sheet: 'L0' }, { cells: list(3), sheet: 'L1' }])).toEqual(['2 Router @ L0', '3 Router @ L1']);
    const { rows } = read([
      { cells: 'Device;Room;Qty\nRouter;Hall;2', sheet: 'L0' }, { cells: 'Device;Room;Qty\nRouter;Hall;3', sheet: 'L1' },
    ]);
    expect(rows).toHaveLength(2);
  });

  it('do not count twice what one of them adds up', () => {
    expect(inWords([1, 2, 3].map((qty) => ({ cells: list(qty), sheet: `Part ${qty}` }))).asked).toEqual(['Part 3!2: 3 sum']);
    expect(inWords([{ cells: list(4), sheet: 'EG' }, { cells: list(4), sheet: 'Zusammenfassung' }]).asked).toEqual(['Zusammenfassung!2: 4 sum']);
    // Storeys may well be alike.
    expect(inWords([{ cells: list(4), sheet: 'L1' }, { cells: list(4), sheet: 'L2' }]).asked).toEqual([]);
  });

  it('without a list are left out, and said', () => {
    const { notes, sums } = read([{ cells: list(4), sheet: 'EG' }, { cells: 'Project;Depot\nIssue;B', sheet: 'Cover' }]);
    expect([notes, sums.undecided]).toEqual([['Sheet “Cover”: There is no list on it: no column is known to hold quantities.'], 0]);
  });
});

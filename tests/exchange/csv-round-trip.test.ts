import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guardText, headingsOf, readCsv, recogniseSheet, unguardText, writeCsv } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { inputColumns, SCHEMA, SHEET_NAMES, type Cells, type SheetName } from '../../src/schedule/index.ts';
import { sheetRows } from './support.ts';

function csvOf(sheet: SheetName, rows: readonly Cells[]): string {
  const schedule = new LoadSchedule({ details: {}, sheets: { [sheet]: rows } });
  try {
    return writeCsv(schedule, sheet);
  } finally {
    schedule.dispose();
  }
}

describe('a sheet in CSV', () => {
  it.each(SHEET_NAMES)('%s comes back as it went out, whatever its texts', (sheet) => {
    fc.assert(fc.property(sheetRows(sheet), (rows) => {
      const read = readCsv(csvOf(sheet, rows));
      expect(read).toEqual({ ok: true, sheet, rows, lines: rows.map(() => expect.any(Number) as number), notes: [] });
    }), { numRuns: 40 });
  });

  it.each(SHEET_NAMES)('%s can be saved by a program with semicolons and decimal commas', (sheet) => {
    const numbers = inputColumns(sheet).filter(({ kind }) => kind === 'number');
    const row: Cells = {
      [SCHEMA[sheet].tag]: 'T1', ...Object.fromEntries(numbers.map(({ key, max, above = 0 }) => [
        key, max === 1 ? 0.5 : above + 1.5,
      ])),
    };
    const theirs = csvOf(sheet, [row]).replaceAll(',', ';').replaceAll(/(?<=\d)\.(?=\d)/g, ',').replaceAll('\r\n', '\n');
    expect(readCsv(`\ufeff${theirs}`)).toEqual({ ok: true, sheet, rows: [row], lines: [2], notes: [] });
  });

  it('says on which line each row begins, cells of several lines before it included', () => {
    expect(readCsv('Ref,Note\r\nD1,"a\r\nb"\r\nD2,c\r\n')).toMatchObject({ rows: [{ ref: 'D1' }, { ref: 'D2' }], lines: [2, 4] });
  });

  it('keeps a blank row in the midst, so that formulas keep their rows', () => {
    const rows: Cells[] = [{ ref: 'a', qty: 1 }, {}, { ref: 'b', qty: '=[devices.qty@a]*2' }];
    expect(readCsv(csvOf('devices', rows))).toMatchObject({ ok: true, rows });
  });

  it('has the headings of the schema, ends lines in CRLF and quotes where RFC 4180 asks for it', () => {
    const csv = csvOf('contacts', [{ contact: 'say "5 A"', source: 'a,b' }]);
    expect(csv).toBe('Contact,Resistive (A),Lamp (A),Motor (A),Coil (A),DC (A),DC coil (A),Highest voltage (V),Highest DC voltage (V),Inrush (A),Source\r\n'
      + '"say ""5 A""",,,,,,,,,,"a,b"\r\n');
  });

  it('gives no spreadsheet a text to run', () => {
    fc.assert(fc.property(sheetRows('contacts'), (rows) => {
      const [, ...lines] = csvOf('contacts', rows.map(({ source = null }) => ({ source }))).split('\r\n');
      expect(lines.filter((line) => /^,{6}"?[=+\-@\t\r\n＝＋－＠]/.test(line))).toEqual([]);
    }));
  });
});

describe('guardText', () => {
  it.each([
    ['=1+1', "'=1+1"], ['+49', "'+49"], ['-x', "'-x"], ['@a', "'@a"], ['\tx', "'\tx"], ['\rx', "'\rx"],
    ["'", "''"], ["'=1", "''=1"], ['plain', 'plain'], ['a=1', 'a=1'], ['', ''],
  ])('writes %j as %j', (text, guarded) => {
    expect(guardText(text)).toBe(guarded);
  });

  it('is taken back by unguardText', () => {
    fc.assert(fc.property(fc.string(), (text) => {
      expect(unguardText(guardText(text))).toBe(text);
    }));
  });

  it('leaves the apostrophe of a foreign text alone', () => {
    expect(unguardText("'s-Hertogenbosch")).toBe("'s-Hertogenbosch");
  });
});

describe('recogniseSheet', () => {
  it.each(SHEET_NAMES)('knows %s by its titles and by its keys', (sheet) => {
    expect(recogniseSheet(headingsOf(sheet))).toEqual({ ok: true, sheet });
    expect(recogniseSheet(SCHEMA[sheet].columns.map(({ key }) => key))).toEqual({ ok: true, sheet });
  });

  it('finds in each sheet every key and every title as one column', () => {
    for (const { columns } of Object.values(SCHEMA)) {
      const names = columns.flatMap(({ key, title }) => [...new Set([key.toLowerCase(), title.toLowerCase()])]);
      expect(names).toHaveLength(new Set(names).size);
    }
  });

  it.each([
    [['Area', 'Type', 'Qty', 'Rail'], 'devices'],
    [['BRANCH', ' limit '], 'branches'],
    [['Feed', 'Rated [A]'], 'feeds'],
    [['Type', 'Draw (A)', 'Price', 'Weight'], 'types'],
  ])('%j are headings of %s', (headings, sheet) => {
    expect(recogniseSheet(headings)).toEqual({ ok: true, sheet });
  });

  it.each([
    [['Name', 'Weight'], 'sheet-unrecognised'],
    [['Type', 'Colour', 'Weight'], 'sheet-unrecognised'],
    [['Note'], 'sheet-ambiguous'],
    [[''], 'sheet-unrecognised'],
  ])('%j are refused as %s', (headings, code) => {
    expect(recogniseSheet(headings)).toMatchObject({ ok: false, problems: [{ code, line: 1 }] });
  });
});

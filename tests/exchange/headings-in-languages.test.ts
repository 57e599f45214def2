import { describe, expect, test } from 'vitest';
import { readCsv, readHeading, recogniseSheet, writeCsv } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf, inputColumns, SCHEMA, SHEET_NAMES, titleWithUnit, type Cells } from '../../src/schedule/index.ts';
import { loadWords } from '../../src/words/index.ts';

const ROWS: readonly Cells[] = [
  {
    ref: 'D1', area: 'Flur', type: 'T 1', qty: 4, rail: 'P1', distance: 12.5, unitDraw: 350, diversity: 0.7,
  }, { ref: 'D2', qty: 1, note: 'a;b' },
];

describe.each(['de', 'fr'])('headings in %s', (language) => {
  test('name the columns that they are the titles of, and so do English ones', async () => {
    const words = await loadWords(language);
    for (const sheet of SHEET_NAMES) {
      for (const column of SCHEMA[sheet].columns) {
        for (const heading of [
          words.text(column.title), titleWithUnit(column, words), column.title, titleWithUnit(column), column.key,
        ]) {
          expect([sheet, heading, readHeading(sheet, heading, words).column?.key])
            .toEqual([sheet, heading, column.key]);
        }
      }
    }
  });

  test('tell which sheet a file holds', async () => {
    const words = await loadWords(language);
    for (const sheet of SHEET_NAMES) {
      const headings = SCHEMA[sheet].columns.map((column) => titleWithUnit(column, words));
      expect(recogniseSheet(headings, words)).toEqual({ ok: true, sheet });
      expect(recogniseSheet(inputColumns(sheet).map(({ title }) => words.text(title)), words))
        .toEqual({ ok: true, sheet });
    }
  });

  test('stand over numbers with a decimal comma, and values in words of the language', async () => {
    const words = await loadWords(language);
    const title = (sheet: 'outputs' | 'branches', key: string) => titleWithUnit(columnOf(sheet, key), words);
    const outputs = `${title('outputs', 'output')};${title('outputs', 'kind')};${title('outputs', 'power')}\nK1;${words.text('lamp')};12,5`;
    expect(readCsv(outputs, undefined, undefined, words)).toMatchObject({
      ok: true, sheet: 'outputs', rows: [{ output: 'K1', kind: 'lamp', power: 12.5 }], notes: [],
    });
    const yes = words.say('yes');
    const branches = `${title('branches', 'branch')};${title('branches', 'reserve')};${title('branches', 'terminated')}\nB1;7,5 %;${yes}`;
    expect(readCsv(branches, undefined, undefined, words)).toMatchObject({
      ok: true, sheet: 'branches', rows: [{ branch: 'B1', reserve: 0.075, terminated: true }],
    });
  });

  test('are not written: a file is the same in every language, and read in every language', async () => {
    const words = await loadWords(language);
    const content = { details: {}, sheets: { devices: ROWS } };
    const [english, own] = [new LoadSchedule(content), new LoadSchedule(content, { words })];
    expect(writeCsv(own, 'devices')).toBe(writeCsv(english, 'devices'));
    expect(readCsv(writeCsv(own, 'devices'), undefined, undefined, words))
      .toMatchObject({ ok: true, sheet: 'devices', rows: ROWS });
    english.dispose();
    own.dispose();
  });
});

test('a heading in another language than that of the reader is named, not guessed', () => {
  expect(readCsv('Ref,Qty,Spannungsfall\nD1,2,x')).toMatchObject({
    ok: true, rows: [{ ref: 'D1', qty: 2 }], notes: ['Left out, as the sheet has no such column: “Spannungsfall”.'],
  });
});

import { describe, expect, test } from 'vitest';
import { outOfRange } from '../../src/engine/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import {
  checkCell, columnOf, formatCell, inputColumns, parseCell, SHEET_NAMES, toSnapshot, type InputColumn,
} from '../../src/schedule/index.ts';
import { messagesSaidIn } from '../support/messages.ts';
import { outside, PSEUDO, recordedWords } from '../support/pseudo-words.ts';
import { reference, typeFormula } from '../support/schedules.ts';

const withLettersOutside = (said: readonly string[]) => said.filter((text) => /\p{L}/u.test(outside(text).left));

const TYPED = [
  '12.5', '-1', '1e400', '99999999999999999999', 'about 12', '1,200', '5 lm', '8.4 W', '150 %', '1.4', '80', '800', 'B',
  'maybe', 'yes', 'x\0', '2e9', 'TIA-485-A',
];
const HELD = [2.5, -1, true, 'a', '=D3', Infinity, 1e9];
const qty = columnOf('devices', 'qty') as InputColumn;
/** A column as none of the schema is, limited upwards only. */
const LIMITED: InputColumn = {
  role: 'input', key: 'limited', title: 'Limit', kind: 'number', unit: 'A', max: 5, help: 'What it is.',
};

describe('in a language that nobody speaks', () => {
  test('whatever is wrong with a cell is said through the words, in every message', () => {
    const { words, messages } = recordedWords();
    const said: string[] = [];
    for (const column of [...SHEET_NAMES.flatMap(inputColumns), LIMITED]) {
      for (const text of TYPED) {
        const parsed = parseCell(column, text, { words });
        said.push(parsed.ok ? parsed.hint ?? '' : parsed.problem);
      }
      for (const value of HELD) said.push(checkCell(column, value, undefined, words) ?? '');
    }
    expect(said.filter((text) => text !== '').length).toBeGreaterThan(500);
    expect(withLettersOutside(said)).toEqual([]);
    expect(messagesSaidIn(
      'src/schedule/cell-text/parse-', 'src/schedule/cell-text/check-'
    ).filter((message) => !messages.has(message))).toEqual([]);
  });

  test('whatever is wrong with a formula is said through the words, in every message', () => {
    const { words, messages } = recordedWords();
    const schedule =
      new LoadSchedule({ details: {}, sheets: { devices: [{ ref: 'D1' }], types: [{ type: 'T1' }] } }, { words });
    const status = reference('supplies', 'status');
    const said = [
      '=NOW()', '=OFFSET(D1;1;1)', '=VLOOKUP(1;D1;1)', '="', '=D:D', '=NIX(1)', '=(1', '=1+++++++++++1', '=nowhere!A1',
      '=ZZ1', `=${status}`,
      '=A99', '=A1:types!A1', `=${'1+'.repeat(1001)}1`, '=⟦⟧', '=1;2;', '=SUM(', '=ROUND(1;2;3)', '=D1*limit',
      `=${'('.repeat(60)}1${')'.repeat(60)}`,
    ].map((formula) => typeFormula(
      schedule, 'devices', 0, 'qty', formula
    )?.replace(/^=.*?: /, '') ?? `accepted: ${formula}`);
    const inFile = [
      '=D1', '=[.D1]', '=SUM(D:D)', '=[xyz.qty#1]', '=[xyz]', '=[types.draw]', '=[devices.qty@X]', '=[devices.qty@D1]',
      '=[devices.qty#99]',
    ].map((qty) => ({ ref: 'D1', qty }));
    const { problems } = toSnapshot({ details: {}, sheets: { devices: inFile } }, words);
    expect(problems).toHaveLength(inFile.length);
    said.push(...problems.map(({ problem }) => problem));
    const ratio = columnOf('supplies', 'target') as InputColumn;
    said.push(...[[qty, 0.5], [qty, -1], [qty, Infinity], [ratio, 0], [ratio, 2]].map(([column, value]) =>
      outOfRange(column as InputColumn, value as number, words) ?? 'accepted'));
    expect(withLettersOutside(said)).toEqual([]);
    expect(messagesSaidIn(
      'src/schedule/formula/', 'src/engine/formula-fault.ts', 'src/engine/workbook.ts'
    ).filter((message) => !messages.has(message))).toEqual([]);
  });

  test('whatever a cell of the schema shows is its value, or said through the words', () => {
    for (const column of SHEET_NAMES.flatMap(inputColumns)) {
      for (const choice of column.choices ?? []) expect(formatCell(column, choice, PSEUDO, 'show')).toBe(`⟦${choice}⟧`);
      if (column.kind === 'boolean') expect([true, false].map((value) => formatCell(column, value, PSEUDO, 'show')))
        .toEqual(['⟦yes⟧', '⟦no⟧']);
    }
  });
});

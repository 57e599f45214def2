import { describe, expect, test } from 'vitest';
import { columnHelp } from '../../src/report/column-help.ts';
import { columnOf, SCHEMA, SHEET_NAMES, type SheetName } from '../../src/schedule/index.ts';
import { ENGLISH } from '../../src/words/index.ts';

const help = (sheet: SheetName, key: string) => columnHelp(sheet, columnOf(sheet, key), ENGLISH);
const facts = (sheet: SheetName, key: string) => help(sheet, key).facts.map(({ name, text }) => `${name}: ${text}`);

test('a column that is filled in: unit, range, default, where it comes from, key in files', () => {
  expect(help('supplies', 'rated').title).toBe('Rated (A)');
  // Tolerances of commissioning: schema/measured.ts.
  expect(facts('runs', 'voltageTolerance')).toEqual([
    'May be entered: a share or a percentage (more than 0 and at most 1)', 'Empty: 2\u202f%', 'Source: common practice, no source',
    'In files: runs.voltageTolerance',
  ]);
});

test('names that may be typed, each with its value and source', () => {
  expect(facts('branches', 'limit')).toContain(
    'TIA-485-A: 32; TIA-485-A (EIA RS-485), Table 1: 32 unit loads on a line');
});

test('what an empty cell follows from, and what it leaves unchecked', () => {
  expect(facts('devices', 'rail')).toContain('Empty: rail of the run');
  expect(facts('branches', 'maxCable')).toContain('Empty: What is held against it is not checked.');
});

test('a column that is calculated: the rule in words that hold for every row, and its source', () => {
  expect(facts('branches', 'used')).toEqual([
    'Rule: nodes ÷ limit', 'Source: arithmetic of the load schedule', 'In files: branches.used',
  ]);
  expect(facts('branches', 'nodes')[0]).toBe('Rule: sum of nodes over the device rows that name it');
});

test('a column that follows cases: which of them counts, what is added up in each, what marked ones give', () => {
  expect(facts('supplies', 'demand')).toContain('Cases: The highest of all cases that count.');
  expect(facts('ways', 'available')).toContain('Cases: The lowest of all cases that count.');
  expect(facts('runs', 'worstCase')[0]).toBe('Rule: the case that makes demand what it is');
  expect(facts('cases', 'demand')[0]).toBe('Rule: sum of power over all supplies in this case');
  expect(facts('supplies', 'standbyDemand')[0]).toContain('demand in the case marked standby');
});

describe.each(SHEET_NAMES)('every column of the sheet %s', (sheet) => {
  test.each(SCHEMA[sheet].columns.map((column) => [column.key, column] as const))('%s', (key, column) => {
    const { title, facts: told } = columnHelp(sheet, column, ENGLISH);
    expect(title).toContain(column.unit ?? column.title);
    expect(told.at(-1)).toEqual({ name: 'In files', text: `${sheet}.${key}` });
    // A path that was left in a rule would stand in braces.
    expect(told.filter(({ text }) => /[{}]|undefined|null|NaN/.test(text))).toEqual([]);
    if (column.role === 'input') expect(told[0]!.name).toBe('May be entered');
    else if (column.status !== true) {
      const isWorst = typeof column.inCases === 'string';
      expect(told.map(({ name }) => name)).toEqual([
        'Rule', ...isWorst ? ['Cases'] : [], ...column.worstOf === undefined ? ['Source'] : [], 'In files',
      ]);
    }
  });
});

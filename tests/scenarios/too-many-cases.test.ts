import { describe, expect, test } from 'vitest';
import { caseLoadings } from '../../src/engine/index.ts';
import { readCsv, readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { readProfile } from '../../src/exchange/profile/index.ts';
import { replaceWithList } from '../../src/exchange/update/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { tableJson } from '../../src/report/index.ts';
import { insertRows, pasteCells, setFactors, type Cells, type Content } from '../../src/schedule/index.ts';
import { scheduleOf } from '../support/schedules.ts';

/** A supply with a way and a run, in an enclosure and on a feed, all of it within limits; and as many cases. */
const sheets = (cases: number): Content['sheets'] => ({
  types: [{ type: 'Blind', draw: 500, load: 'current', nodes: 1, inrush: 0, minVoltage: 18, maxVoltage: 30, group: 'blinds' }],
  supplies: [{
    rail: 'P1', rated: 20, efficiency: 0.9, inputPowerFactor: 0.9, enclosure: 'E1', feed: 'N1', fullUpTo: 60, lessPerKelvin: 0.02,
  }],
  enclosures: [{ enclosure: 'E1', height: 1800, width: 800, depth: 400, maxInside: 60 }], feeds: [{ feed: 'N1', rated: 16 }],
  ways: [{ way: 'F1', rail: 'P1', kind: 'electronic', rated: 4 }],
  conductors: [{ conductor: 'c', resistance: 7.41, maxCurrent: 24 }],
  branches: [{ branch: 'B1', limit: 50 }],
  runs: [{ run: 'W1', way: 'F1', branch: 'B1', conductor: 'c', length: 20 }],
  devices: [{ ref: 'D1', type: 'Blind', qty: 4, run: 'W1', branch: 'B1' }],
  contacts: [{ contact: 'K', resistive: 5 }], modules: [{ module: 'M1', outputs: 4 }],
  outputs: [{ output: 'K1', module: 'M1', contact: 'K', kind: 'resistive', power: 46, feed: 'N1', group: 'heaters' }],
  cases: named(cases),
});
const named = (count: number, from = 0): Cells[] => Array.from({ length: count }, (_, at) => ({ case: `C${from + at}` }));

/** Sheets of which the limits hang on what is on together. */
const JUDGED = ['supplies', 'ways', 'runs', 'feeds', 'enclosures'] as const;
const statuses = (schedule: LoadSchedule) =>
  JUDGED.map((sheet) => schedule.value(sheet, schedule.rows(sheet)[0]!.id, 'status'));
const ALL_OK = JUDGED.map(() => 'ok');

/** Each case beyond the hundredth is told, and nothing is said to be within its limits. */
function expectRefused(schedule: LoadSchedule, beyond: number): void {
  const told = schedule.findings.filter(({ rule }) => rule === 'case-beyond-count');
  expect(told.map(({ row }) => row)).toEqual(Array.from({ length: beyond }, (_, at) => 101 + at));
  expect(told[0]!.message).toMatch(/comes after the first 100 cases, and no more than these are calculated: nothing is judged in it/);
  expect(statuses(schedule)).toEqual(JUDGED.map(() => 'incomplete'));
  for (const { own, cases } of caseLoadings(schedule.document, schedule.figures)) {
    for (const each of [own, ...cases]) expect(each?.state ?? 'incomplete').toBe('incomplete');
  }
  const { sheets: handed } = tableJson(schedule);
  for (const sheet of JUDGED) expect(handed[sheet]![0]!.status).toBe('incomplete');
  // How many fit is reckoned with everything on, as it is not known what the cases left out say.
  expect(schedule.cases.mostShare(0, 0.1, false)).toBe(1);
}

describe('more than 100 cases are not worked out, which is said of each beyond, and nothing is well then', () => {
  test('100 are worked out', () => {
    const schedule = scheduleOf(sheets(100));
    expect(statuses(schedule)).toEqual(ALL_OK);
    expect(schedule.findings.filter(({ rule }) => rule === 'case-beyond-count')).toEqual([]);
  });

  test('a file', () => {
    const read = readSchedule(writeSchedule({ details: {}, sheets: sheets(102) }));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expectRefused(new LoadSchedule(read.content), 2);
  });

  test('a list in CSV', () => {
    const list = readCsv(`Case\n${named(101).map((row) => String(row.case)).join('\n')}\n`, 'cases');
    if (!list.ok) throw new Error(JSON.stringify(list.problems));
    expectRefused(new LoadSchedule(replaceWithList({ details: {}, sheets: sheets(0) }, list, 'cases.csv').content), 1);
  });

  test('a paste, and what takes it back', () => {
    const schedule = scheduleOf(sheets(99));
    schedule.act('paste', pasteCells(schedule.document, 'cases', 99, ['case'], named(3, 99).map(({ case: name }) => [name!])));
    expectRefused(schedule, 2);
    schedule.undo();
    expect(statuses(schedule)).toEqual(ALL_OK);
    schedule.redo();
    expectRefused(schedule, 2);
  });

  test('one by hand', () => {
    const schedule = scheduleOf(sheets(100));
    schedule.act('row', insertRows(schedule.document, 'cases', 100, [{ case: 'one more' }]));
    expectRefused(schedule, 1);
  });

  test('a profile of 24 hours beside 80 cases', () => {
    const schedule = scheduleOf(sheets(80));
    const read = readProfile([['blinds', ...Array.from({ length: 24 }, () => '0.5')]]);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    schedule.act('profile', [
      ...insertRows(schedule.document, 'cases', 80, read.cases.map((each): Cells => ({ ...each }))),
      ...setFactors(schedule.document, read.factors.map(({ factor, ...each }) => ({ ...each, value: factor }))),
    ]);
    expectRefused(schedule, 4);
  });
});

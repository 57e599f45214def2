import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { SCHEMA, setCells, SHEET_NAMES, withWays, type SheetName } from '../../src/schedule/index.ts';
import { ENGLISH } from '../../src/words/index.ts';
import { readData, rowsOf } from '../data/read-data.ts';
import { closeTo, EXACT } from '../support/close-to.ts';

// A panel as it is built every week: safe must not mean nagging.
const read = readSchedule(
  readFileSync(new URL('../fixtures/small-panel.schedule.json', import.meta.url), 'utf8')
);
if (!read.ok) throw new Error(read.problems[0]!.message);
const { sheets } = read.content;
const schedule = new LoadSchedule(read.content);
const LISTS = [
  ['types', 'device-types.json'], ['conductors', 'conductors.json'], ['contacts', 'contacts.json'],
] as const;
const isList = (sheet: string) => LISTS.some(([list]) => list === sheet);

/** What a row of a sheet comes to, by its tag. */
const figure = (sheet: SheetName, tag: string, key: string) => {
  const { id } = schedule.rows(sheet).find(({ cells }) => Object.values(cells)[0] === tag)!;
  return schedule.value(sheet, id, key);
};

test('has 12 device rows on two supplies, four runs and one enclosure, and takes its lists as they are shipped', () => {
  const rows = SHEET_NAMES.map((sheet) => [sheet, schedule.rows(sheet).length] as const)
    .filter(([sheet, count]) => !isList(sheet) && count > 0);
  expect(rows).toEqual([['devices', 12], ['supplies', 2], ['ways', 4], ['runs', 4], ['enclosures', 1]]);
  for (const [sheet, file] of LISTS) {
    expect(rowsOf(readData(file), sheet)).toEqual(expect.arrayContaining([...sheets[sheet] ?? []]));
  }
});

test('has its ways by kind and rating typed in the way of each run', () => {
  const typed = new LoadSchedule({
    ...read.content, sheets: { ...sheets, ways: [], runs: sheets.runs!.map(({ way: _way, ...run }) => run) },
  });
  for (const [at, { kind, rated }] of sheets.ways!.entries()) {
    const { id } = typed.rows('runs')[at]!;
    const change = setCells(typed.document, [{ sheet: 'runs', id, key: 'way', value: `${kind} ${rated}` }]);
    typed.act('Entry', withWays(typed.document, change, ENGLISH));
  }
  expect(typed.content().sheets).toEqual(schedule.content().sheets);
  typed.undo();
  expect([typed.rows('ways').length, typed.rows('runs')[3]!.cells.way]).toEqual([3, undefined]);
});

test('needs at most 45 entries beyond its device rows and the lists', () => {
  // The ways come of what is typed in the runs: kind and rating.
  const entries = SHEET_NAMES.filter((sheet) => sheet !== 'devices' && sheet !== 'ways' && !isList(sheet))
    .flatMap((sheet) => (sheets[sheet] ?? []).flatMap((row) => Object.keys(row).map((key) => `${sheet}.${key}`)));
  const counted = Object.fromEntries(entries.map((each) => [each, entries.filter((other) => other === each).length]));
  expect(counted).toEqual({
    // Tags, those that rows name among them.
    'supplies.rail': 2, 'supplies.enclosure': 2, 'runs.run': 4, 'runs.rail': 4, 'enclosures.enclosure': 1,
    // Ratings as plates and data sheets have them, and the kind and rating of each way.
    'supplies.rated': 2, 'supplies.efficiency': 2, 'enclosures.maxInside': 1, 'runs.way': 4,
    'runs.conductor': 4, 'runs.length': 4,
    'enclosures.height': 1, 'enclosures.width': 1, 'enclosures.depth': 1,
  });
  expect(entries.length).toBeLessThanOrEqual(45);
});

test('is within limits in every row, and nothing that its verdict needs is asked for', () => {
  const judged = SHEET_NAMES.filter((sheet) => SCHEMA[sheet].columns.some(({ key }) => key === 'status'));
  const statuses = judged.flatMap((sheet) => schedule.rows(sheet)
    .map(({ id, cells }) => [Object.values(cells)[0], schedule.value(sheet, id, 'status')]));
  expect(statuses).toEqual(['L1', 'P1', 'L1-F1', 'L1-F2', 'P1-F1', 'P1-F2', 'L1-W1', 'L1-W2', 'P1-W1', 'P1-W2', 'KP-1'].map((tag) => [tag, 'ok']));
  expect(schedule.findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
});

test('comes to what is added up by hand', () => {
  // L1: downlights 8 × 7 W ÷ 24 V = 2.333… A, strip 3 × 0.2 A, linear luminaires 2 × 24 W ÷ 24 V: 4.933… A of 10 A.
  // What devices of constant power draw more at the end of their cables comes on top: below 3 % here.
  const extra = (rail: string) => [1, 2].reduce((sum, run) => sum + (figure('runs', `${rail}-W${run}`, 'extra') as number), 0);
  const asked = { L1: 8 * 7 / 24 + 0.6 + 2 + extra('L1'), P1: 1.574 + extra('P1') };
  expect(extra('L1') / asked.L1).toBeGreaterThan(0);
  expect(extra('L1') / asked.L1).toBeLessThan(0.03);
  expect(figure('supplies', 'L1', 'demand')).toEqual(closeTo(asked.L1, EXACT));
  // P1, mA: station 18, presence sensors 2 × 15, strike 250, room panels 2 × 75, CO2 sensors 2 × 105, humidity sensors
  // 2 × 8, actuators that start cold 3 × 300: 1574 of 5000.
  expect(figure('supplies', 'P1', 'demand')).toEqual(closeTo(asked.P1, EXACT));
  // All of constant current, so that it is the same at any voltage: 18 + 30 + 250 mA.
  expect(figure('runs', 'P1-W1', 'current')).toEqual(closeTo(0.298, EXACT));
  // Losses 24 V × demand × (1 ÷ 0.93 − 1) and × (1 ÷ 0.9 − 1), others 20 W: about 33.3 W. Surface
  // against a wall 1.4 × 0.6 × (0.6 + 0.21) + 1.8 × 0.21 × 0.6 = 0.9072 m², of 5.5 W/(m²K): about 6.7 K above 30 °C.
  const loss = 24 * asked.L1 * (1 / 0.93 - 1) + 24 * asked.P1 * (1 / 0.9 - 1) + 20;
  expect(figure('enclosures', 'KP-1', 'loss')).toEqual(closeTo(loss, EXACT));
  expect(figure('enclosures', 'KP-1', 'inside')).toEqual(closeTo(30 + loss / (5.5 * 0.9072), EXACT));
});

import fc from 'fast-check';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf, setCells, type Cells, type Content, type InputColumn } from '../../src/schedule/index.ts';

/** A cell that is mostly filled. */
const mostly = <Value>(...values: Value[]) => fc.option(fc.constantFrom(...values), { freq: 12 });

const someEnclosure = {
  height: mostly(600, 800, 2000), width: mostly(400, 600), depth: mostly(200, 250.5),
  mounting: fc.constantFrom(
    ...(columnOf('enclosures', 'mounting') as InputColumn).choices!
  ), transfer: fc.constantFrom(null, 5.5, 4),
  otherLoss: mostly(0, 12.5, 80), ambient: mostly(-10, 20, 35, 55), maxInside: mostly(40, 55, 70),
};
const someSupply = {
  rated: mostly(2.5, 5, 10), units: fc.constantFrom(null, 2), redundant: fc.constantFrom(null, true),
  derating: fc.constantFrom(null, 0.9),
  efficiency: mostly(0.8, 0.92, 1), enclosure: mostly('E0', 'E1'), fullUpTo: mostly(20, 40, 50),
  lessPerKelvin: mostly(0, 0.02, 0.2),
};
const someDevice = {
  rail: mostly('S0', 'S1', 'S2'), qty: mostly(0, 1, 4, 9), unitDraw: fc.option(fc.constantFrom(100, 350), { freq: 30 }),
  diversity: fc.constantFrom(null, 0.5),
};
const SHEETS = { enclosures: someEnclosure, supplies: someSupply, devices: someDevice };

const filled = (cells: Cells): Cells => Object.fromEntries(Object.entries(cells).filter(([, value]) => value !== null));
const tagged = (key: string, letter: string, rows: readonly Cells[]): Cells[] =>
  rows.map((row, index) => ({ [key]: `${letter}${index}`, ...filled(row) }));

/** Three supplies in two enclosures, with what most of them need to have a temperature. */
export const someWarmSchedule: fc.Arbitrary<Content> = fc.record({
  enclosures: fc.array(fc.record(someEnclosure), { minLength: 2, maxLength: 2 }),
  supplies: fc.array(fc.record(someSupply), { minLength: 3, maxLength: 3 }),
  devices: fc.array(fc.record(someDevice), { minLength: 1, maxLength: 6 }),
}).map(({ enclosures, supplies, devices }) => ({
  details: {},
  sheets: {
    enclosures: tagged(
      'enclosure', 'E', enclosures
    ), supplies: tagged('rail', 'S', supplies), devices: tagged('ref', 'D', devices),
  },
}));

/** An edit of one cell on which the warmth hangs. */
export const someWarmEdit: fc.Arbitrary<(schedule: LoadSchedule) => void> = fc.constantFrom(
  ...(Object.keys(SHEETS) as (keyof typeof SHEETS)[])
    .flatMap((sheet) => Object.entries<fc.Arbitrary<Cells[string]>>(SHEETS[sheet])
    .map(([key, values]) => ({ sheet, key, values }))),
).chain(({ sheet, key, values }) => fc.tuple(fc.nat(), values).map(([at, value]) => (schedule: LoadSchedule): void => {
  const rows = schedule.rows(sheet);
  schedule.act('edit', setCells(schedule.document, [{ sheet, id: rows[at % rows.length]!.id, key, value }]));
}));

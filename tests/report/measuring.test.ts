import { expect, test } from 'vitest';
import { readFileSync } from 'node:fs';
import { readSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { measuringSection } from '../../src/report/model/measuring-section.ts';
import { tagOf } from '../../src/schedule/index.ts';
import { scheduleOf } from '../support/schedules.ts';

/** The lines of a table by its title, cells to be filled in as `…`. */
function table(schedule: LoadSchedule, title: string): string[][] {
  const found = measuringSection(schedule)!.tables.find((each) => each.title === title)!;
  return found.rows.map(({ cells }) => cells.map(({ text, toFill }) => toFill === true && text === '' ? '…' : text));
}

const panel = () => scheduleOf({
  enclosures: [{ enclosure: 'A' }, { enclosure: 'B' }], feeds: [{ feed: 'M1', rated: 10, enclosure: 'A' }],
  supplies: [{ rail: 'L1', rated: 5, enclosure: 'A', derating: 1, measuredVoltage: 23.9 }],
  ways: [{ way: 'F1', rail: 'L1', rated: 4 }, { way: 'F2', rail: 'L1', rated: 4, enclosure: 'B' }],
  // 12.1 Ω/km: 1.5 mm², IEC 60228 class 1.
  conductors: [{ conductor: '1.5', size: 1.5, resistance: 12.1 }],
  branches: [{ branch: 'B1', limit: 64, enclosure: 'B' }], types: [{ type: 'T', draw: 500, nodes: 1, minVoltage: 20 }],
  runs: [
    { run: 'W1', way: 'F1', conductor: '1.5', length: 20, measuredCurrent: 1 },
    { run: 'W2', way: 'F2', conductor: '1.5', length: 20, pairs: 2 }, { run: 'W3', way: 'F1', length: 5 },
  ],
  modules: [{ module: 'K', enclosure: 'A' }],
  outputs: [
    { output: 'K1', module: 'K', kind: 'resistive', power: 230, feed: 'M1' },
    { output: 'K2', module: 'K', kind: 'dc', power: 24, rail: 'L1' }, { output: 'K3', module: 'K' },
  ],
  devices: [{ ref: 'D1', type: 'T', qty: 2, run: 'W1' }, { ref: 'D2', type: 'T', qty: 3, rail: 'L1', branch: 'B1' }],
});

test('cables before energising: what each is tested with, and the loop of both conductors of a run', () => {
  // 2 × 20 m × 12.1 Ω/km; half of that in two pairs.
  expect(table(panel(), 'A: cables, before energising')).toEqual([
    ['M1', 'feed', '500', '1', '…', '☐', '–', '–'],
    ['K1', 'relay output', '500', '1', '…', '☐', '–', '–'],
    ['K2', 'relay output', '250', '0.5', '…', '☐', '–', '–'],
    // Nothing says that it is of extra-low voltage.
    ['K3', 'relay output', '500', '1', '…', '☐', '–', '–'],
    ['W1', 'run', '250', '0.5', '…', '☐', '0.484', '…'],
    ['W3', 'run', '250', '0.5', '…', '☐', 'not known', '…'],
  ]);
  expect(table(panel(), 'B: cables, before energising')).toEqual([['W2', 'run', '250', '0.5', '…', '☐', '0.242', '…']]);
});

test('energised: what may be measured, by the tolerances that findings have, and what was', () => {
  expect(table(panel(), 'A: energised')).toEqual([
    ['M1', 'feed', '–', '–', '…', '1.00', '10.00', '…'],
    // 24 V, of which 2 % may differ.
    ['L1', 'supply', '23.52', '24.48', '23.90', '3.50', '5.00', '…'],
    ['F1', 'way', '23.52', '24.48', '…', '1.00', '4.00', '…'],
    ['W1', 'run', '20.00', '24.48', '…', '1.00', '4.00', '1.00'],
    ['W3', 'run', 'not known', '24.48', '…', 'not known', '4.00', '…'],
    ['K1', 'relay output', '–', '–', '…', '1.00', 'not known', '…'],
    ['K2', 'relay output', '–', '–', '…', '1.00', 'not known', '…'],
    ['K3', 'relay output', '–', '–', '…', 'not known', 'not known', '…'],
  ]);
  expect(table(panel(), 'B: bus')).toEqual([['B1', '2', '…', '3', '…', '☐']]);
});

test('every supply, way, run, output, feed and branch of the demo is measured once, in its panel', () => {
  const read = readSchedule(readFileSync(new URL('../../data/demo.schedule.json', import.meta.url), 'utf8'));
  if (!read.ok) throw new Error('The demo cannot be read.');
  const schedule = new LoadSchedule(read.content);
  const { tables } = measuringSection(schedule)!;
  const tags = (kind: string) => tables.filter(({ title }) => title?.endsWith(kind))
    .flatMap(({ rows }) => rows.map(({ cells }) => cells[0]!.text)).sort();
  const all = (...sheets: readonly ('supplies' | 'ways' | 'runs' | 'outputs' | 'feeds' | 'branches')[]) =>
    sheets.flatMap((sheet) => schedule.rows(sheet).map((row) => tagOf(sheet, row)).filter((tag) => tag !== '')).sort();
  expect(tags(': cables, before energising')).toEqual(all('runs', 'outputs', 'feeds'));
  expect(tags(': energised')).toEqual(all('supplies', 'ways', 'runs', 'outputs', 'feeds'));
  expect(tags(': bus')).toEqual(all('branches'));
  expect(measuringSection(scheduleOf({}))).toBeUndefined();
});

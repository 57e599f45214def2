import fc from 'fast-check';
import type { Cells, Content } from '../../src/schedule/index.ts';
import { someRunSchedule } from './random-runs.ts';

const GROUPS = ['blinds', 'lamps', 'sensors'];
const someFactor = fc.option(fc.integer({ min: 0, max: 100 }).map((hundredths) => hundredths / 100), { freq: 3 });
const someGroup = fc.option(fc.constantFrom(...GROUPS), { freq: 3 });

/** A schedule with runs, feeds and cases, some of which give groups no factor. */
export const someCases: fc.Arbitrary<Content> = fc.record({
  content: someRunSchedule,
  ofTypes: fc.array(someGroup, { minLength: 4, maxLength: 4 }),
  ofRows: fc.array(fc.option(fc.constantFrom(...GROUPS), { freq: 1 }), { minLength: 25, maxLength: 25 }),
  ofOutputs: fc.array(someGroup, { minLength: 2, maxLength: 2 }),
  factors: fc.array(fc.record({ share: someFactor, of: fc.constantFrom(null, 'connected', 'demand') }), { minLength: 6, maxLength: 6 }),
  feedDiversity: fc.constantFrom(null, 0.7), second: fc.boolean(),
}).map(({ content: { details, sheets }, ofTypes, ofRows, ofOutputs, factors, feedDiversity, second }) => ({
  details,
  sheets: {
    ...sheets,
    types: sheets.types!.map((row, at) => ({ ...row, group: ofTypes[at]! })),
    devices: sheets.devices!.map((row, at) => ({ ...row, group: ofRows[at]! })),
    supplies: sheets.supplies!.map((row) => ({ ...row, feed: 'M', efficiency: 0.9, inputPowerFactor: 0.8 })),
    feeds: [{ feed: 'M', rated: 10, diversity: feedDiversity }],
    outputs: ofOutputs.map((group, at): Cells => ({
      output: `K${at}`, load: 'Pump', kind: 'resistive', power: 200 + 100 * at, group,
      ...at === 0 ? { feed: 'M' } : { kind: 'dc', rail: 'S0' },
    })),
    // A run with two ways, of the same rail, where there are two.
    runs: sheets.runs!.map((row, at) => second && at === 1 && row.way !== undefined && sheets.ways!.some(({ way }) => way === 'F0')
      ? { ...row, secondWay: 'F0', secondLength: 20 } : row),
    cases: [{ case: 'evening' }, { case: 'storm' }],
    factors: factors.flatMap(({ share, of }, at): Cells[] => share === null ? []
      : [{ case: at < 3 ? 'evening' : 'storm', group: GROUPS[at % 3]!, factor: share, of }]),
  },
}));

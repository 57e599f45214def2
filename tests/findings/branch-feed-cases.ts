import type { Cells } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

const BRANCH = (qty: number, branch: Cells = {}, type: Cells = {}) => ({
  types: [{ type: 'T', draw: 10, nodes: 1, ...type }], branches: [
    { branch: 'B1', limit: 50, terminated: true, ...branch },
  ],
  devices: [{ ref: 'D1', type: 'T', qty, branch: 'B1' }],
});
/** So many devices on a branch, each of which takes so many mA from its bus. */
const ON_BUS = (qty: number, branch: Cells, busDraw: number | null = 2) =>
  BRANCH(qty, { limit: 999, ...branch }, { busDraw });

/** A feed of outputs of 230 W at 230 V, 1 A each. */
const FEED = (amps: number, feed: Cells) =>
  ({ feeds: [{ feed: 'F1', ...feed }], outputs: [{ output: 'Q1', feed: 'F1', kind: 'resistive', power: 230, qty: amps }] });

/** A lamp of 1 A and 60 A of inrush, and a supply that takes 230 W, 1 A, and starts with 100 A, on a breaker. */
const STARTING = (feed: Cells, supply: Cells = {}) => ({
  feeds: [{ feed: 'F1', rated: 16, curve: 'B', ...feed }],
  outputs: [{ output: 'Q1', feed: 'F1', kind: 'lamp', power: 230, powerFactor: 1, inrush: 60 }],
  supplies: [{
    rail: 'L1', rated: 20, feed: 'F1', efficiency: 1, inputPowerFactor: 1, inputInrush: 100, ...supply,
  }],
  devices: [{ ref: 'D1', rail: 'L1', qty: 1, unitDraw: 230_000 / 24 }],
});

export const BRANCH_AND_FEED_CASES: readonly FindingCase[] = [
  {
    rule: 'branch-over-limit', sheet: 'branches', sheets: BRANCH(53), severity: 'over', key: 'nodes', value: 53,
    limit: 50, inStatus: true,
    message: 'Branch B1 carries 53 nodes and may carry 50: 3 too many. Move devices to another branch.',
    silent: [BRANCH(50), BRANCH(500, {}, { nodes: 0.1 })],
  },
  {
    rule: 'branch-over-reserve', sheet: 'branches', sheets: BRANCH(
      42, { reserve: 0.2 }
    ), severity: 'near', key: 'free', value: -2, limit: 0, inStatus: true,
    message: 'Branch B1 carries 42 nodes of 50, 2 into its reserve of 20 %. Move devices to another branch, or give up part of the reserve.',
    silent: [BRANCH(40, { reserve: 0.2 }), BRANCH(51, { reserve: 0.2 }), BRANCH(370, { limit: 37 }, { nodes: 0.1 })],
  },
  {
    rule: 'branch-limit-missing', sheet: 'branches', sheets: BRANCH(
      10, { limit: null }
    ), severity: 'incomplete', key: 'limit', value: null, inStatus: true,
    message: 'Branch B1 has no limit, so whether it carries too many nodes is not known. Enter the most nodes that the bus may carry, or its standard, such as TIA-485-A.',
    silent: [BRANCH(10), BRANCH(10, { limit: '=60/0' })],
  },
  {
    // 130 × 2 mA of 250 mA, IEC 62386
    rule: 'branch-over-bus-current', sheet: 'branches', severity: 'over', key: 'busDemand', value: 0.26, limit: 0.25, inStatus: true,
    sheets: ON_BUS(130, { busCurrent: 0.25 }),
    message: 'Branch B1: its devices take 260 mA from the bus, whose supply gives 250 mA: 10 mA too much. Move devices to another branch, or feed some of them otherwise.',
    silent: [ON_BUS(125, { busCurrent: 0.25 }), ON_BUS(130, {})],
  },
  {
    // 64 × 2 mA of 250 mA less the half: 3 mA into it.
    rule: 'branch-over-bus-reserve', sheet: 'branches', severity: 'near', key: 'busDemand', value: 0.128, limit: 0.125, inStatus: true,
    sheets: ON_BUS(64, { busCurrent: 0.25, reserve: 0.5 }),
    message: 'Branch B1: its devices take 128 mA of the 250 mA that the supply of the bus gives, 3 mA into its reserve of 50 %. Move devices to another branch, or give up part of the reserve.',
    silent: [
      ON_BUS(62, { busCurrent: 0.25, reserve: 0.5 }), ON_BUS(126, { busCurrent: 0.25, reserve: 0.5 }),
      ON_BUS(64, { reserve: 0.5 }),
    ],
  },
  {
    rule: 'type-bus-draw-missing', sheet: 'types', severity: 'incomplete', key: 'busDraw', value: null, inStatus: false,
    sheets: ON_BUS(64, { busCurrent: 0.25 }, null),
    message: 'Type T: what one takes from the supply of its bus is not known, and 1 device row waits for it. Enter it in mA; 0 if it takes none.',
    silent: [ON_BUS(64, { busCurrent: 0.25 }, 0), ON_BUS(64, {}, null)],
  },
  {
    rule: 'branch-not-terminated', sheet: 'branches', sheets: BRANCH(
      10, { terminated: false }
    ), severity: 'note', key: 'terminated', value: false, limit: true, inStatus: false,
    message: 'Branch B1 is not marked as terminated. Fit the terminating resistors at both ends of the line and mark it.',
    silent: [BRANCH(10)],
  },
  {
    rule: 'feed-over-rated', sheet: 'feeds', sheets: FEED(13, { rated: 10 }), severity: 'over', key: 'demand',
    value: 13, limit: 10, inStatus: true,
    message: 'Feed F1: demand 13.00 A exceeds the rating 10.00 A by 3.00 A. Move outputs or supplies to another feed, or lower the diversity if not all are on at the same time.',
    silent: [FEED(10, { rated: 10 }), FEED(13, { rated: 10, diversity: 0.75 })],
  },
  {
    rule: 'feed-over-target', sheet: 'feeds', sheets: FEED(9, { rated: 10 }), severity: 'near', key: 'loading',
    value: 0.9, limit: 0.8, inStatus: true,
    message: 'Feed F1 is loaded to 90 % of 10.00 A, above its target of 80 % by 1.00 A: move outputs or supplies to another feed, or lower the diversity if not all are on at the same time.',
    silent: [FEED(8, { rated: 10 }), FEED(11, { rated: 10 })],
  },
  {
    rule: 'feed-lives-on-diversity', sheet: 'feeds', sheets: FEED(20, { rated: 10, diversity: 0.1 }), severity: 'note', key: 'connected',
    value: 20, limit: 10, inStatus: false,
    message: 'Feed F1 is rated 10.00 A, and everything on it at the same time takes 20.00 A: it lives on diversity, and where all of it is on together, as at power return, its breaker opens. Move outputs or supplies to another feed, or lock some of them against each other.',
    silent: [FEED(10, { rated: 10, diversity: 0.1 }), FEED(20, { rated: 10, diversity: 0.9 })],
  },
  {
    rule: 'feed-rating-missing', sheet: 'feeds', sheets: FEED(9, {}), severity: 'incomplete', key: 'rated',
    value: null, inStatus: true,
    message: 'Feed F1 has no rated current, so nothing can be said of its loading. Enter the rating of its protection in A.',
    silent: [FEED(9, { rated: 10 })],
  },
  // By hand: B 16 stands 1.41 × 16 × 3 = 67.68 A; the supply starts with 100 A while 1 A runs. C 16 stands 112.8 A.
  {
    rule: 'feed-over-inrush', sheet: 'feeds', sheets: STARTING({}), severity: 'near', key: 'inrush', value: 101,
    limit: 67.68, inStatus: true,
    message: 'Feed F1 takes up to 101.00 A when all its supplies start at power return while the rest runs, and its breaker B stands 67.68 A for sure: 33.32 A too much. It may trip. Use a breaker of curve C, which would stand it, where the fault loop allows; else share it over more feeds.',
    silent: [
      STARTING({ curve: 'C' }), STARTING({ curve: null }), STARTING({ pulseFactor: 1.5 }), STARTING({}, { feed: null }),
      STARTING({}, { maxOnB16: 2 }),
    ],
  },
];

import type { Cells } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

const ON = (milliamps: number | null, supply: Cells) => ({
  supplies: [{ rail: 'L1', ...supply }], devices: [
    { ref: 'D1', qty: 1, rail: 'L1', ...(milliamps === null ? {} : { unitDraw: milliamps }) },
  ],
});

/** So many devices of 0.8 A each, of which a share is expected at the same time. */
const AT_ONCE = (qty: number, diversity: number, supply: Cells) => ({
  supplies: [{ rail: 'L1', ...supply }], devices: [{ ref: 'D1', qty, unitDraw: 800, diversity, rail: 'L1' }],
});

/** A supply of 1 A of demand on a feed with a breaker. */
const FED = (supply: Cells, feed: Cells = {}) => ({
  ...ON(1000, { rated: 10, feed: 'F1', efficiency: 0.9, inputPowerFactor: 0.95, inputInrush: 20, ...supply }),
  feeds: [{ feed: 'F1', rated: 16, curve: 'B', ...feed }],
});

export const SUPPLY_CASES: readonly FindingCase[] = [
  {
    rule: 'supply-over-usable', sheet: 'supplies', sheets: ON(
      12_500, { rated: 10 }
    ), severity: 'over', key: 'demand', value: 12.5, limit: 10,
    message: 'Rail L1: demand 12.50 A exceeds the usable 10.00 A by 2.50 A. Move devices to another rail, lower the diversity, or fit a larger supply. One of 20.00 A would do.',
    // 0.1 + 0.2 is more than 0.3 in binary
    silent: [
      ON(10_000, { rated: 10 }),
      {
        supplies: [{ rail: 'L1', rated: 0.3 }],
        devices: [{ rail: 'L1', qty: 1, unitDraw: 100 }, { rail: 'L1', qty: 1, unitDraw: 200 }],
      },
      ON(12_500, {}),
    ],
    inStatus: true,
  },
  {
    // Beyond both limits it is one finding, held against the lesser of them.
    rule: 'supply-over-usable', sheet: 'supplies', sheets: ON(12_500, { rated: 10, fuse: 6 }), severity: 'over',
    key: 'demand', value: 12.5, limit: 6, inStatus: true,
    message: 'Rail L1: demand 12.50 A exceeds the lower of the usable 10.00 A and its fuse of 6.00 A by 6.50 A. Move devices to another rail, or lower the diversity; a larger supply needs a larger fuse too.',
    silent: [ON(8000, { rated: 10, fuse: 6 }), ON(6000, { rated: 10, fuse: 6 })],
  },
  {
    rule: 'supply-lives-on-diversity-usable', sheet: 'supplies', sheets: AT_ONCE(38, 0.25, { rated: 10, fuse: 10 }),
    severity: 'near', key: 'connected', value: 30.4, limit: 10, inStatus: true,
    message: 'Rail L1 has 10.00 A usable and a fuse of 10.00 A, and everything on it at the same time takes 30.40 A: it lives on diversity, and where all of it starts together, as in a wind alarm or at power return, it shuts down or the fuse opens. Move devices to another rail; a larger supply needs a larger fuse too.',
    silent: [AT_ONCE(12, 0.25, { rated: 10, fuse: 10 }), AT_ONCE(12, 0.25, { rated: 10, fuse: 9 })],
  },
  {
    rule: 'supply-over-fuse', sheet: 'supplies', sheets: ON(
      7000, { rated: 10, fuse: 6 }
    ), severity: 'over', key: 'demand', value: 7, limit: 6,
    message: 'Rail L1: demand 7.00 A exceeds its fuse of 6.00 A by 1.00 A. Share the load over several fused ways, or fit a larger fuse if the conductors carry it. One of 8.00 A would do.',
    silent: [
      ON(6000, { rated: 10, fuse: 6 }), ON(7000, { rated: 10 }), ON(12_000, { rated: 10, fuse: 6 }),
    ], inStatus: true,
  },
  {
    rule: 'supply-over-target', sheet: 'supplies', sheets: ON(
      9000, { rated: 10 }
    ), severity: 'near', key: 'loading', value: 0.9, limit: 0.8,
    message: 'Rail L1 is loaded to 90 % of 10.00 A, above its target of 80 % by 1.00 A: move that much to another rail, or fit a larger supply. One of 20.00 A would do.',
    // Beyond the rating the rule of the rating speaks; 0.7 × 3 is less than 2.1 in binary.
    silent: [ON(8000, { rated: 10 }), ON(10_001, { rated: 10 }), ON(2100, { rated: 3, target: 0.7 })], inStatus: true,
  },
  {
    // 38 × 0.8 A, a quarter of which is expected: 7.6 A
    rule: 'supply-lives-on-diversity-usable', sheet: 'supplies', sheets: AT_ONCE(38, 0.25, { rated: 10 }),
    severity: 'near', key: 'connected', value: 30.4, limit: 10, inStatus: true,
    message: 'Rail L1 has 10.00 A usable, and everything on it at the same time takes 30.40 A: it lives on diversity, and where all of it starts together, as in a wind alarm or at power return, it shuts down. Move devices to another rail, or fit a larger supply. One of 40.00 A would do.',
    // At 0.5 the demand itself, 15.2 A, is too much, and its own rule speaks.
    silent: [
      AT_ONCE(38, 0.25, { rated: 30.4 }), AT_ONCE(38, 0.5, { rated: 10 }), AT_ONCE(38, 0.25, {}),
      AT_ONCE(12, 0.25, { rated: 10 }),
    ],
  },
  {
    // 25 × 0.8 A, half of which is expected: 10 A
    rule: 'supply-lives-on-diversity-fuse', sheet: 'supplies',
    sheets: AT_ONCE(25, 0.5, { rated: 40, fuse: 10, fuseKind: 'gG' }), severity: 'near', key: 'connected', value: 20,
    limit: 10, inStatus: true,
    message: 'Rail L1 has a fuse of 10.00 A, and everything on it at the same time takes 20.00 A: it lives on diversity, and where all of it starts together, as in a wind alarm or at power return, the fuse opens. Share the load over several fused ways, or fit a larger fuse if the conductors carry it. One of 20.00 A would do.',
    silent: [
      AT_ONCE(25, 0.5, { rated: 40, fuse: 20 }), AT_ONCE(25, 0.5, { rated: 40 }),
      AT_ONCE(25, 0.6, { rated: 40, fuse: 10 }), AT_ONCE(25, 0.4, { rated: 10, fuse: 10 }),
    ],
  },
  {
    rule: 'supply-rating-missing', sheet: 'supplies', sheets: ON(5000, {}), severity: 'incomplete', key: 'rated',
    value: null,
    message: 'Rail L1 has no rated current, so nothing can be said of its loading. Enter the rating of one unit in A.',
    silent: [ON(5000, { rated: 10 }), ON(5000, { rated: '=1/0' })], inStatus: true,
  },
  {
    rule: 'supply-warm-derating-unknown', sheet: 'supplies', sheets: ON(
      5000, { rated: 10, fullUpTo: 40 }
    ), severity: 'incomplete', key: 'usable', value: null, limit: 40,
    message: 'Rail L1 gives its full current up to 40.0 °C, and what it gives where it stands is not known. Enter its derating per K.',
    silent: [ON(5000, { rated: 10 })], inStatus: true,
  },
  {
    rule: 'supply-fuse-not-checked', sheet: 'supplies', sheets: ON(
      5000, { rated: 10 }
    ), severity: 'note', key: 'fuse', value: null,
    message: 'Rail L1 has no fuse entered: its demand is not checked against one. Enter its rating in A.',
    silent: [ON(5000, { rated: 10, fuse: 10 })], inStatus: false,
  },
  {
    rule: 'supply-power-factor-missing', sheet: 'supplies', sheets: FED({ inputPowerFactor: null }),
    severity: 'incomplete', key: 'inputPowerFactor', value: null, inStatus: true,
    message: 'Rail L1 has no power factor at its input entered, so what it takes from feed F1 is not known. Enter it, as its data sheet has it at full load.',
    silent: [FED({}), FED({ inputPowerFactor: null, feed: null })],
  },
  {
    rule: 'supply-input-inrush-missing', sheet: 'supplies', sheets: FED({ inputInrush: null }), severity: 'incomplete',
    key: 'inputInrush', value: null, inStatus: true,
    message: 'Rail L1 has no inrush at its input entered, so whether the breaker of feed F1 stands the start of its supplies is not known. Enter the peak current of one unit, or how many of them a breaker B 16 stands.',
    silent: [FED({}), FED({ inputInrush: null, maxOnB16: 4 }), FED({ inputInrush: null }, { curve: null })],
  },
  {
    rule: 'supply-purposes-mixed', sheet: 'supplies', severity: 'note', key: 'purpose', value: 'lighting, control',
    inStatus: false,
    sheets: {
      ...ON(5000, { rated: 10, purpose: 'lighting' }), types: [{ type: 'valve', purpose: 'control' }],
      devices: [{ type: 'valve', rail: 'L1', qty: 1, unitDraw: 10 }],
    },
    message: 'Rail L1 serves lighting and control together. Common practice is a separate supply for each: move the devices of the other purposes.',
    silent: [ON(5000, { rated: 10, purpose: 'lighting' })],
  },
];

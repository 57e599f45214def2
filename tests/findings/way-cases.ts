import type { Cells, Content } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

/** Two devices of 1 A on two runs of one way behind a supply that gives 12 A for a moment; others draw besides. */
const WAY = (way: Cells, supply: Cells = {}, device: Cells = {}, others = 0): Content['sheets'] => ({
  supplies: [{ rail: 'L1', rated: 10, peak: 1.2, ...supply }],
  ways: [{ way: 'F1', rail: 'L1', kind: 'fast', rated: 3, ...way }, { way: 'F2', rail: 'L1', kind: 'fast', rated: 1 }],
  runs: [{ run: 'W1', way: 'F1' }, { run: 'W2', way: 'F1' }],
  devices: [
    { ref: 'D1', qty: 1, unitDraw: 1000, run: 'W1', ...device }, { ref: 'D2', qty: 1, unitDraw: 1000, run: 'W2' },
    { ref: 'D3', qty: 1, unitDraw: others, rail: 'L1' },
  ],
});

/** A motor of 1 A that starts with 3 A, beside 1 A without a known inrush: 4 A at once. */
const STARTING = (way: Cells, inrush: number | null = 3) => ({
  ...WAY({ kind: 'electronic', ...way }, {}, { type: 'M' }), types: [{ type: 'M', inrush }],
});

export const WAY_CASES: readonly FindingCase[] = [
  {
    rule: 'way-over-start', sheet: 'ways', sheets: STARTING({}), severity: 'near', key: 'start', value: 4, limit: 3,
    inStatus: true,
    message: 'Way F1 is rated 3.00 A, and its devices ask for 4.00 A when all of them start at the same time, as after a failure of the mains: an electronic way switches off above its rating and may not come up. Set it to 4.00 A or more if its cables carry it; no order of starting helps.',
    silent: [
      STARTING({ rated: 4 }), STARTING({ kind: 'slow' }), STARTING({}, 2), STARTING({}, null), STARTING({ rated: null }),
      STARTING({ rated: 1.5 }),
    ],
  },
  {
    // Two of 0.5 A that start with 1.5 A each, beside 1 A: 4 A at once, 3 A one after the other.
    rule: 'way-over-start', sheet: 'ways', severity: 'near', key: 'start', value: 4, limit: 3, inStatus: true,
    sheets: {
      ...WAY({ kind: 'electronic' }, {}, { type: 'M', qty: 2, unitDraw: 500 }), types: [{ type: 'M', inrush: 1.5 }],
    },
    message: 'Way F1 is rated 3.00 A, and its devices ask for 4.00 A when all of them start at the same time, as after a failure of the mains: an electronic way switches off above its rating and may not come up. Let its devices start one after the other, share its runs over more ways, or set it higher if their cables carry it.',
    silent: [],
  },
  {
    // D1 takes 2 A at its start, D2 too: with 1 A of the one that runs they are 3 A.
    rule: 'way-over-start', sheet: 'ways', severity: 'near', key: 'start', value: 4, limit: 3, inStatus: true,
    sheets: {
      ...WAY({ kind: 'electronic' }), types: [{ type: 'M', inrush: 2 }],
      devices: ['W1', 'W2'].map((run, at) => ({ ref: `D${at + 1}`, type: 'M', qty: 1, unitDraw: 1000, run })),
    },
    message: 'Way F1 is rated 3.00 A, and its devices ask for 4.00 A when all of them start at the same time, as after a failure of the mains: an electronic way switches off above its rating and may not come up. Let D1 start later than the others, share its runs over more ways, or set it higher if their cables carry it.',
    silent: [],
  },
  {
    rule: 'way-over-rated', sheet: 'ways', sheets: WAY({ rated: 1.6 }), severity: 'over', key: 'demand', value: 2,
    limit: 1.6, inStatus: true,
    message: 'Way F1: demand 2.00 A exceeds the rating 1.60 A by 0.40 A. Move runs to another way, or fit a larger one if their cables carry it.',
    silent: [WAY({ rated: 2 }), WAY({ rated: null })],
  },
  {
    rule: 'way-device-over-rated', sheet: 'ways', sheets: WAY({ rated: 2.5 }, {}, { unitDraw: 3000, diversity: 0.1 }),
    severity: 'over', key: 'largest', value: 3, limit: 2.5, inStatus: true,
    message: 'Way F1 feeds one device of 3.00 A and is rated 2.50 A: 0.50 A too much, whatever the diversity. Put that device on a larger way.',
    silent: [
      WAY({ rated: 3 }, {}, { unitDraw: 3000, diversity: 0.1 }), WAY({ rated: 2.5 }, {}, { unitDraw: 3000, qty: 0 }),
    ],
  },
  {
    rule: 'way-over-target', sheet: 'ways', sheets: WAY({ rated: 2 }), severity: 'near', key: 'loading', value: 1,
    limit: 0.8, inStatus: true,
    message: 'Way F1 is loaded to 100 % of 2.00 A, above its target of 80 % by 0.40 A: move runs to another way, or fit a larger one if their cables carry it.',
    silent: [WAY({ rated: 2.5 }), WAY({ rated: 2, target: 1 })],
  },
  {
    rule: 'way-lives-on-diversity', sheet: 'ways', sheets: WAY({}, {}, { qty: 3, diversity: 0.25 }), severity: 'near',
    key: 'connected', value: 4, limit: 3, inStatus: true,
    message: 'Way F1 is rated 3.00 A, and everything on it at the same time takes 4.00 A: it lives on diversity, and where all of it starts together, as at power return or in a wind alarm, it opens. Share its runs over more ways, or fit a larger one if their cables carry it.',
    silent: [WAY({}, {}, { qty: 2, diversity: 0.25 }), WAY({ rated: 1 }, {}, { qty: 3, diversity: 0.25 })],
  },
  {
    // 10 A × 1.2 − 1 A of others; C 0.75 needs 15 × 0.75 = 11.25 A, and F2 only 4 A
    rule: 'way-may-not-act', sheet: 'ways', sheets: WAY({ kind: 'C', rated: 0.75 }, {}, {}, 1000), severity: 'near',
    key: 'available', value: 11, limit: 11.25, inStatus: false,
    message: 'Way F1 needs 11.25 A to trip instantaneously, 15 × its rating, and beside its other loads the supply has 11.00 A for a short circuit on it: it may never act, and all of the rail goes dark. Use a lower-rated or faster way, move loads to another rail, or fit a supply that gives more.',
    silent: [WAY({ kind: 'C', rated: 0.75 }), WAY({ kind: 'B', rated: 0.75 }, {}, {}, 1000)],
  },
  {
    rule: 'way-not-discriminating', sheet: 'ways', sheets: WAY({ kind: 'gG', rated: 4 }, { fuse: 6, fuseKind: 'gG' }),
    severity: 'near', key: 'rated', value: 4, limit: 6, inStatus: true,
    message: 'Way F1, gG 4.00 A, does not discriminate against the fuse of its supply, gG 6.00 A: a short circuit on it may open both, and all of the rail goes dark. Use a lower-rated way, or a larger fuse if what it protects carries it.',
    silent: [
      WAY({ kind: 'gG', rated: 4 }, { fuse: 10, fuseKind: 'gG' }), WAY({ kind: 'gG', rated: 4 }, { fuse: 6 }),
      WAY({ kind: 'electronic', rated: 4 }, { fuse: 6, fuseKind: 'gG' }),
    ],
  },
  {
    rule: 'way-fuse-kind-unknown', sheet: 'ways', sheets: WAY({ kind: 'gG', rated: 4 }, { fuse: 6 }), severity: 'incomplete',
    key: 'rated', value: 4, limit: 6, inStatus: false,
    message: 'Way F1, gG 4.00 A, stands behind a fuse of 6.00 A of which the kind is not known: a short circuit on it may open both, and all of the rail goes dark. Enter the kind of that fuse, or use a lower-rated way.',
    silent: [
      WAY({ kind: 'gG', rated: 4 }, { fuse: 6.25 }), WAY({ kind: 'gG', rated: 4 }, { fuse: 6, fuseKind: 'gG' }),
      WAY({ kind: 'electronic', rated: 4 }, { fuse: 4 }), WAY({ kind: 'gG', rated: 4 }),
    ],
  },
  {
    rule: 'way-discrimination-not-shown', sheet: 'ways', sheets: WAY({ kind: 'B', rated: 4 }, { fuse: 10, fuseKind: 'gG' }),
    severity: 'note', key: 'rated', value: null, inStatus: false,
    message: 'Way F1: whether B behind gG leaves the fuse of the supply whole is shown by no common rule. See the tables of their makers.',
    silent: [WAY({ kind: 'gG', rated: 4 }, { fuse: 10, fuseKind: 'gG' }), WAY({ kind: 'B', rated: 4 }, { fuse: 10 })],
  },
  {
    rule: 'way-rail-missing', sheet: 'ways', sheets: WAY({ rail: null }), severity: 'incomplete', key: 'rail',
    value: null, inStatus: true,
    message: 'Way F1 has no rail, so what it is fed from is not known. Choose the rail behind it.', silent: [WAY({})],
  },
  {
    rule: 'way-rating-missing', sheet: 'ways', sheets: WAY({ rated: null }), severity: 'incomplete', key: 'rated',
    value: null, inStatus: true,
    message: 'Way F1 has no rating, so nothing can be said of its loading. Enter it in A.', silent: [WAY({})],
  },
  {
    rule: 'way-trip-below-kind', sheet: 'ways', sheets: WAY({ kind: 'C', trip: 1 }), severity: 'near', key: 'trip', value: 1, limit: 7,
    inStatus: true,
    message: 'Way F1: its trip multiple is entered as 1, and no breaker C trips instantaneously below 7 on direct current: what is too little for it counts as enough. Correct it, or empty it for that of its kind.',
    silent: [
      WAY({ kind: 'C', trip: 7 }), WAY({ kind: 'C' }), WAY({ kind: 'B', trip: 4 }), WAY({ kind: 'fast', trip: 1 }),
      WAY({ kind: null, trip: 1 }),
    ],
  },
  {
    rule: 'way-kind-missing', sheet: 'ways', sheets: WAY({ kind: null }), severity: 'incomplete', key: 'kind',
    value: null, inStatus: true,
    message: 'Way F1 has no kind, so when it acts is not known. Choose it, or enter both its trip multiple and its operating multiple.',
    silent: [WAY({}), WAY({ kind: null, trip: 4, k2: 1.45 })],
  },
  {
    rule: 'supply-fuse-never-acts', sheet: 'supplies', sheets: WAY({}, { fuse: 16 }), severity: 'near', key: 'fuse',
    value: 16, limit: 12, inStatus: true,
    message: 'Rail L1 has a fuse of 16.00 A, and the supply gives 12.00 A at most before it limits: the fuse may never act. Use a fuse of no more than that.',
    silent: [
      WAY({}, { fuse: 12 }), WAY({}, { fuse: 16, units: 2 }), WAY({}, { fuse: 16, peak: 1.6 }),
      WAY({}, { fuse: 16, rated: null }),
    ],
  },
  {
    rule: 'supply-trips-no-way', sheet: 'supplies', severity: 'near', key: 'leastTrip', value: 15, limit: 12,
    sheets: { ...WAY({}), ways: [{ way: 'F1', rail: 'L1', kind: 'B', rated: 4 }, { way: 'F2', rail: 'L1', kind: 'B', rated: 2 }] },
    inStatus: true,
    message: 'Rail L1: a short circuit on any of its 2 ways does not trip it: 15.00 A would be needed and the supply gives 12.00 A, so it folds back and all of the rail goes dark. Use lower-rated or faster ways, such as electronic ones, or a supply that gives more for a moment.',
    silent: [
      WAY({}), WAY({ kind: 'B', rated: 4 }),
      { ...WAY({}), ways: [{ way: 'F1', rail: 'L1', kind: 'B', rated: 4 }, { way: 'F2', rail: 'L1', rated: 4 }] },
    ],
  },
];

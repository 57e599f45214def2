import type { Cells } from '../../src/schedule/index.ts';
import type { FindingCase } from './finding-case.ts';

const DEVICE = (device: Cells, more: Record<string, Cells[]> = {}) => ({
  types: [{ type: 'T', draw: 10, nodes: 1 }], supplies: [{ rail: 'L1' }], branches: [{ branch: 'B1', limit: 40 }],
  runs: [{ run: 'W1', rail: 'L1', length: 30 }], ...more, devices: [{ ref: 'D1', ...device }],
});
const WHOLE = { type: 'T', qty: 2, rail: 'L1' };

/** A device of a type on a rail of 24 V. */
const MADE_FOR = (type: Cells, supply: Cells = {}) =>
  DEVICE(WHOLE, { types: [{ type: 'T', draw: 10, ...type }], supplies: [{ rail: 'L1', voltage: 24, ...supply }] });
/** One device of which a tenth is expected, on a supply of 10 A. */
const LARGE = (device: Cells, supply: Cells = {}) =>
  DEVICE({ rail: 'L1', qty: 1, diversity: 0.1, ...device }, { supplies: [{ rail: 'L1', rated: 10, ...supply }] });

export const DEVICE_AND_CELL_CASES: readonly FindingCase[] = [
  {
    rule: 'device-quantity-missing', sheet: 'devices', sheets: DEVICE({
      type: 'T', rail: 'L1',
    }), severity: 'incomplete', key: 'qty', value: null, inStatus: false,
    message: 'The current of ref D1 is not known, and 1 row waits for it. Enter how many devices there are.', silent: [
      DEVICE(WHOLE), DEVICE({ ...WHOLE, qty: 0 }),
    ],
  },
  {
    rule: 'device-draw-missing', sheet: 'devices', sheets: DEVICE({
      qty: 2, rail: 'L1',
    }), severity: 'incomplete', key: 'unitDraw', value: null, inStatus: false,
    message: 'The current of ref D1 is not known, and 1 row waits for it. Choose a type, or enter the unit draw in mA.',
    silent: [
      DEVICE(WHOLE), DEVICE({ qty: 2, rail: 'L1', unitDraw: 0 }), DEVICE(WHOLE, { types: [{ type: 'T' }] }),
    ],
  },
  {
    rule: 'device-other-voltage', sheet: 'devices', sheets: MADE_FOR({ voltage: 12 }), severity: 'over', key: 'rail',
    value: 12, limit: 24, inStatus: false,
    message: 'Ref D1 is made for 12.00 V and rail L1 has 24.00 V. Put it on a rail of its voltage, or correct the voltage of its type; where it works on both, enter its minimum and maximum voltage there.',
    silent: [
      MADE_FOR({ voltage: 26.4 }), MADE_FOR({ voltage: 21.6 }), MADE_FOR({}),
      MADE_FOR({ voltage: 12, minVoltage: 10, maxVoltage: 30 }), MADE_FOR({ voltage: 12 }, { voltage: 12 }),
    ],
  },
  {
    rule: 'device-over-voltage', sheet: 'devices', sheets: MADE_FOR({ maxVoltage: 25 }, { tolerance: 0.05 }),
    severity: 'over', key: 'rail', value: 25.2, limit: 25, inStatus: false,
    // 24 V × 1.05
    message: 'Ref D1 stands 25.00 V at the most, and rail L1 may give 25.20 V: 0.20 V too much. Put it on a rail of its voltage, or use a type that stands it.',
    silent: [
      MADE_FOR({ maxVoltage: 25.2 }, { tolerance: 0.05 }), MADE_FOR({ maxVoltage: 25 }),
      MADE_FOR({}, { tolerance: 0.05 }),
    ],
  },
  {
    // 24 V × 0.95
    rule: 'device-under-voltage', sheet: 'devices', sheets: MADE_FOR({ minVoltage: 23 }, { tolerance: 0.05 }),
    severity: 'over', key: 'rail', value: 22.8, limit: 23, inStatus: false,
    message: 'Ref D1 needs 23.00 V at the least, and rail L1 may give 22.80 V: 0.20 V too little, without any cable. Put it on a rail that holds its voltage, or use a type that needs less.',
    silent: [
      MADE_FOR({ minVoltage: 22.8 }, { tolerance: 0.05 }), MADE_FOR({ minVoltage: 23 }),
      MADE_FOR({}, { tolerance: 0.05 }),
    ],
  },
  {
    rule: 'device-over-supply', sheet: 'devices', sheets: LARGE({ unitDraw: 12_000 }), severity: 'over',
    key: 'unitDraw', value: 12, limit: 10, inStatus: false,
    message: 'Ref D1: one device draws 12.00 A, and rail L1 has 10.00 A usable. No diversity helps: put it on a larger supply.',
    silent: [
      LARGE({ unitDraw: 10_000 }), LARGE({ unitDraw: 12_000, qty: 0 }), LARGE({ unitDraw: 12_000 }, { rated: null }),
      LARGE({ unitDraw: 6000, qty: 2, diversity: 1 }),
    ],
  },
  {
    rule: 'device-without-rail', sheet: 'devices', sheets: DEVICE({
      type: 'T', qty: 2,
    }), severity: 'incomplete', key: 'rail', value: null, inStatus: false,
    message: 'Ref D1 has no rail, so its current counts in no supply. Choose a rail.',
    // What its run lacks is told there.
    silent: [
      DEVICE(WHOLE), DEVICE({ type: 'T', qty: 2, run: 'W1' }, { runs: [{ run: 'W1' }] }),
      DEVICE({ type: 'T', qty: 2, run: 'W1' }, { runs: [{ run: 'W1', rail: 'L9' }] }),
    ],
  },
  {
    rule: 'device-gone', sheet: 'devices', sheets: DEVICE({ ...WHOLE, state: 'gone', qty: 2 }),
    severity: 'incomplete', key: 'state', value: 2, inStatus: false,
    message: 'Ref D1 is no longer in its list, and its 2 devices still count. Delete the row, or empty its state where they stay.',
    silent: [DEVICE(WHOLE)],
  },
  {
    rule: 'device-gone', sheet: 'devices', sheets: DEVICE({ type: 'T', state: 'gone' }),
    severity: 'incomplete', key: 'state', value: null, inStatus: false,
    message: 'Ref D1 is no longer in its list, and still stands here. Delete the row, or empty its state where it stays.',
    silent: [DEVICE({ type: 'T' })],
  },
  {
    rule: 'device-nodes-missing', sheet: 'devices', sheets: DEVICE(
      { qty: 2, unitDraw: 10, rail: 'L1', branch: 'B1' }
    ), severity: 'incomplete', key: 'nodes', value: null, inStatus: false,
    message: 'Ref D1 counts an unknown number of nodes on branch B1. Choose a type that says how many nodes one device counts.',
    silent: [
      DEVICE({ ...WHOLE, branch: 'B1' }), DEVICE({ qty: 2, unitDraw: 10, rail: 'L1' }),
      DEVICE({ ...WHOLE, branch: 'B1' }, { types: [{ type: 'T', draw: 10 }] }),
    ],
  },
  {
    rule: 'type-nodes-missing', sheet: 'types', sheets: DEVICE(
      { ...WHOLE, branch: 'B1' }, { types: [{ type: 'T', draw: 10 }] }
    ),
    severity: 'incomplete', key: 'nodes', value: null, inStatus: false,
    message: 'Type T: how many nodes one device counts on a branch is not known, and 1 device row waits for it. Enter it; 0 if it is no bus participant.',
    silent: [
      DEVICE(WHOLE, { types: [{ type: 'T', draw: 10 }] }),
      ...[1, 0, '=1/0'].map((nodes) => DEVICE({ ...WHOLE, branch: 'B1' }, { types: [{ type: 'T', draw: 10, nodes }] })),
    ],
  },
  {
    rule: 'device-run-on-other-rail', sheet: 'devices', sheets: DEVICE(
      { ...WHOLE, run: 'W1' }, { runs: [{ run: 'W1', rail: 'L2' }] }
    ),
    severity: 'incomplete', key: 'run', value: 'L1', limit: 'L2', inStatus: false,
    message: 'Ref D1 is on rail L1 but its run W1 is fed from rail L2. Correct one of them.',
    silent: [DEVICE({ ...WHOLE, run: 'W1' }), DEVICE({ ...WHOLE, run: 'W1' }, { runs: [{ run: 'W1' }] })],
  },
  {
    rule: 'device-beyond-run', sheet: 'devices', sheets: DEVICE({
      ...WHOLE, run: 'W1', distance: 31,
    }), severity: 'incomplete', key: 'distance', value: 31, limit: 30, inStatus: false,
    message: 'Ref D1 is 31 m along its run, which is 30 m long. Correct one of them.',
    silent: [DEVICE({ ...WHOLE, run: 'W1', distance: 30 }), DEVICE({ ...WHOLE, distance: 31 })],
  },
  {
    rule: 'tag-names-nothing', sheet: 'devices', sheets: DEVICE({
      ...WHOLE, branch: 'B9',
    }), severity: 'incomplete', key: 'branch', value: 'B9', inStatus: false,
    message: 'Ref D1: there is no bus branch B9. Add it to the sheet Branches, or correct the tag.', silent: [
      DEVICE({ ...WHOLE, branch: 'B1' }), DEVICE(WHOLE),
    ],
  },
  {
    rule: 'hidden-character', sheet: 'devices', sheets: DEVICE({
      ...WHOLE, rail: 'L1\u200b',
    }), severity: 'incomplete', key: 'rail', value: 'L1\u200b', inStatus: false,
    message: 'Ref D1: Rail contains U+200B, which cannot be seen, and so is not the tag that it looks like. Delete it.', silent: [DEVICE(WHOLE)],
  },
  {
    rule: 'hidden-character', sheet: 'supplies', sheets: {
      supplies: [{ rail: '\u202eL1\u202c', rated: 10 }],
    }, severity: 'incomplete', key: 'rail',
    value: '\u202eL1\u202c', inStatus: false, silent: [
      { supplies: [{ rail: 'L\u00a01', rated: 10 }] }, { supplies: [{ rail: '☀\ufe0f', rated: 10 }] },
    ],
    message: 'Rail \u202eL1\u202c: Rail contains U+202E, U+202C, which cannot be seen, and so is not the tag that it looks like. Delete it.',
  },
  {
    rule: 'tag-missing', sheet: 'supplies', sheets: {
      supplies: [{ rated: 10 }],
    }, severity: 'note', key: 'rail', value: null, inStatus: false,
    message: 'A supply without a tag: nothing can refer to it. Give it a tag.', silent: [
      { supplies: [{ rail: 'L1', rated: 10 }] },
    ],
  },
  {
    rule: 'tag-used-twice', sheet: 'types', sheets: {
      types: [{ type: 'T', draw: 1 }, { type: 'T', draw: 2 }],
    }, severity: 'incomplete', key: 'type', value: 'T', inStatus: false,
    message: 'Type T stands in more than one row. References mean the first of them. Give each row a tag of its own.',
    silent: [{ types: [{ type: 'T', draw: 1 }, { type: 't', draw: 2 }] }, { types: [{ draw: 1 }, { draw: 2 }] }],
  },
  {
    rule: 'tag-used-twice', sheet: 'supplies', sheets: {
      supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L1', rated: 20 }],
    },
    severity: 'incomplete', key: 'rail', value: 'L1', inStatus: true,
    message: 'Rail L1 stands in more than one row. References mean the first of them. Give each row a tag of its own.',
    silent: [{ supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 20 }] }],
  },
  {
    rule: 'formula-without-result', sheet: 'supplies', sheets: {
      supplies: [{ rail: 'L1', rated: '=10/0' }],
    }, severity: 'incomplete', key: 'rated', value: null, inStatus: true,
    message: 'Rail L1: the formula in Rated divides by zero. Check the cell that it divides by.', silent: [
      { supplies: [{ rail: 'L1', rated: '=10/1' }] },
    ],
  },
  {
    rule: 'number-out-of-range', sheet: 'devices', sheets: DEVICE({
      ...WHOLE, diversity: 1.2,
    }), severity: 'incomplete', key: 'diversity', value: 1.2, inStatus: false,
    message: 'Ref D1: Diversity 1.2 is greater than 1. Correct it.', silent: [
      DEVICE({ ...WHOLE, diversity: 1 }), DEVICE({ ...WHOLE, diversity: 0 }),
    ],
  },
];

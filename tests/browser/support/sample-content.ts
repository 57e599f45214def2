import type { Content } from '../../../src/schedule/index.ts';

/**
 * A small schedule of invention: two rails, two branches, two types. By hand: L1 demands 2 × 350 mA × 0.8 + 4 × 100 mA
 * = 0.96 A, L2 1 × 350 mA × 0.8 = 0.28 A.
 */
export const sample = (): Content => ({
  details: { project: 'Boat house' },
  sheets: {
    devices: [
      { ref: 'D1', area: 'Hall', type: 'Lamp', qty: 2, rail: 'L1', branch: 'B1' },
      { ref: 'D2', area: 'Hall', type: 'Sensor', qty: 4, rail: 'L1', branch: 'B1' },
      { ref: 'D3', area: 'Store', type: 'Lamp', qty: 1, rail: 'L2', branch: 'B2' },
      { ref: 'D4', area: 'Store', type: 'Sensor', qty: 3 },
    ],
    types: [
      { type: 'Lamp', draw: 350, nodes: 1, diversity: 0.8, purpose: 'lighting' },
      { type: 'Sensor', draw: 100, nodes: 1, purpose: 'control' },
    ],
    supplies: [
      { rail: 'L1', purpose: 'lighting', rated: 10 },
      { rail: 'L2', purpose: 'control', rated: 5 },
    ],
    branches: [{ branch: 'B1', limit: 50 }, { branch: 'B2', limit: 50 }],
  },
});

/** Places of the columns of `devices`, as shown. */
export const COLUMN = {
  ref: 0, area: 1, type: 2, qty: 3, rail: 4, branch: 5, run: 6, distance: 7, unitDraw: 8, diversity: 9, connected: 10,
  demand: 11, note: 16,
} as const;

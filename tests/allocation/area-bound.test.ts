import { expect, test } from 'vitest';
import { tooLarge } from '../../src/allocation/packing/index.ts';

// Their sums refute none but the last: 3 × 0.3 and 0.6 are below 0.5 + 0.5.
test.each([
  { name: 'three above a half do not go into two', size: 0.3, count: 3, capacities: [0.5, 0.5], refuted: true },
  { name: 'two above a half go into two', size: 0.3, count: 2, capacities: [0.5, 0.5], refuted: false },
  { name: 'four halves go into two', size: 0.25, count: 4, capacities: [0.5, 0.5], refuted: false },
  { name: 'one is larger than each', size: 0.6, count: 1, capacities: [0.5, 0.5], refuted: true },
  { name: 'what takes room goes into none', size: 0.3, count: 1, capacities: [], refuted: true },
])('bins of less than one: $name', ({ size, count, capacities, refuted }) => {
  expect(tooLarge({ sizes: [size], counts: [count] }, capacities)).toBe(refuted);
});

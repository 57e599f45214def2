import { expect, test } from 'vitest';
import { fitDecreasing } from '../../src/allocation/packing/index.ts';

// By hand: 6 leaves 4 of the 10, 5 leaves 2 of the 7; the 2 fits into both, and exactly into the second.
test.each([
  { choice: 'first', fills: [[1, 0, 1], [0, 1, 0]] }, { choice: 'best', fills: [[1, 0, 0], [0, 1, 1]] },
] as const)('of two bins with room the $choice takes the next item', ({ choice, fills }) => {
  expect(fitDecreasing({ sizes: [6, 5, 2], counts: [1, 1, 1] }, [10, 7], choice)).toEqual(fills);
});

import { expect, test } from 'vitest';
import { completions } from '../../src/allocation/packing/completions.ts';

const task = { mostWaste: 10, forced: -1, mostSteps: 1000 };

/*
 * By hand, bins of 10 with one item of each size: 7 and 3 fill it. 5, 3 and 2 do so too, but 7 could take the place of
 * 5 and 2; 7 and 2 leave 1, with which 3 could take the place of 2.
 */
test('a fill is left out where one item outside, or one for two, could take its place', () => {
  const { fills, complete } = completions({ ...task, sizes: [7, 5, 3, 2], left: [1, 1, 1, 1], capacity: 10 });
  expect(fills).toEqual([{ fill: [1, 0, 1, 0], waste: 0 }]);
  expect(complete).toBe(true);
});

// By hand, bins of 6: 5 leaves 1, and 6 fits in its place; 4 leaves 2 likewise.
test('a larger item that fits in the place of a smaller one dominates', () => {
  expect(completions({ ...task, sizes: [6, 5, 4], left: [1, 1, 1], capacity: 6 }).fills)
    .toEqual([{ fill: [1, 0, 0], waste: 0 }]);
});

test('a forced item is in every fill, and is not put out for a larger one', () => {
  expect(completions({ ...task, sizes: [6, 5], left: [1, 1], capacity: 6, forced: 1 }).fills)
    .toEqual([{ fill: [0, 1], waste: 1 }]);
});

test('who gives up says that there may be more', () => {
  const sizes = Array.from({ length: 12 }, (_, place) => 30 - place);
  expect(completions({ ...task, sizes, left: sizes.map(() => 2), capacity: 100, mostSteps: 50 }).complete).toBe(false);
});

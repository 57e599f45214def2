import { expect, test } from 'vitest';
import { seriesOf } from '../../src/editing/index.ts';
import type { CellValue } from '../../src/schedule/index.ts';

const on = (values: readonly CellValue[], steps: readonly number[], single = false) => {
  const series = seriesOf(values, single);
  return series && steps.map(series);
};

test.each<[values: CellValue[], steps: number[], expected: CellValue[] | undefined]>([
  [[12, 20], [1, 2], [28, 36]],
  [[12, 20], [-1, -2], [4, -4]],
  [[10, 8, 6], [1], [4]],
  // 0.1 + 0.2 is 0.30000000000000004 in the machine.
  [[0.1, 0.2], [1, 2], [0.3, 0.4]],
  [['L1-001', 'L1-002'], [1, 2], ['L1-003', 'L1-004']],
  [['KP-08', 'KP-10'], [1], ['KP-12']],
  [['A9', 'A10'], [1], ['A11']],
  [['B2', 'B1'], [1, 2], ['B0', null]],
  [['Floor 1', 'Floor 2'], [1], ['Floor 3']],
  // What goes on in no plain way is to be repeated.
  [[12, 20, 21], [1], undefined],
  [[5, 5], [1], undefined],
  [['L1', 'L1'], [1], undefined],
  [['A1', 'B2'], [1], undefined],
  [['Hall', 'Store'], [1], undefined],
  [['A1', 2], [1], undefined],
  [[null, null], [1], undefined],
  [[5], [1], undefined],
  [[], [1], undefined],
])('%j goes on, at the steps %j, with %j', (values, steps, expected) => {
  expect(on(values, steps)).toEqual(expected);
});

test('one alone goes on where it is asked to, as a tag does', () => {
  expect(on(['L1-099'], [1, 2], true)).toEqual(['L1-100', 'L1-101']);
  expect(on(['Hall'], [1], true)).toBeUndefined();
});

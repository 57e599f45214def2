import { expect, test } from 'vitest';
import { closeTo, EXACT, printed } from './close-to.ts';

test.each([
  { actual: 1.049, tolerance: { absolute: 0.05, relative: 0 }, near: true },
  { actual: 1.06, tolerance: { absolute: 0.05, relative: 0 }, near: false },
  { actual: 0.94, tolerance: { absolute: 0.05, relative: 0 }, near: false },
  { actual: 1.09, tolerance: { absolute: 0.05, relative: 0.1 }, near: true },
  { actual: 1 + 1e-9, tolerance: EXACT, near: false },
  { actual: Number.NaN, tolerance: { absolute: 1, relative: 1 }, near: false },
  { actual: null, tolerance: { absolute: 1, relative: 1 }, near: false },
])('$actual is near 1: $near', ({ actual, tolerance, near }) => {
  expect(closeTo(1, tolerance).asymmetricMatch(actual)).toBe(near);
});

test('within a list', () => {
  expect([1, null]).toEqual([closeTo(1.0000001, { absolute: 1e-6, relative: 0 }), null]);
  expect(() => expect([1.1]).toEqual([closeTo(1, EXACT)])).toThrow();
});

test.each([
  ['316', 0.5], ['10.3', 0.05], ['12.70', 0.005],
])('%s is printed to ± %d', (digits, absolute) => {
  expect(printed(digits).absolute).toBeCloseTo(absolute, 12);
});

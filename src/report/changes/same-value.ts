import type { CellValue } from '../../schedule/index.ts';

/** Differences that only rounding makes. */
const ROUNDING = 1e-9;

/** Whether two values are the same, apart from what rounding makes of numbers. */
export function isSameValue(one: CellValue, other: CellValue): boolean {
  if (typeof one !== 'number' || typeof other !== 'number') return one === other;
  return Math.abs(one - other) <= ROUNDING * Math.max(Math.abs(one), Math.abs(other));
}

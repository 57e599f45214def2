/** Far above the rounding of a sum of thousands of terms, far below what any meter reads. */
const RELATIVE_ROUNDING = 1e-9;

/**
 * Whether a value is above its limit by more than the rounding of the arithmetic.
 *
 * @param value the value
 * @param limit its limit, in the same unit
 * @returns whether the value is above the limit by more than 1e-9 of the larger of the two
 *
 * Source: arithmetic of IEEE 754 binary floating point.
 *
 * @example exceeds(0.1 + 0.2, 0.3) // false
 * @example exceeds(10.01, 10) // true
 */
export function exceeds(value: number, limit: number): boolean {
  return value - limit > RELATIVE_ROUNDING * Math.max(Math.abs(value), Math.abs(limit));
}

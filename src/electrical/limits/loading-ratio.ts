/**
 * What is asked over what may be given.
 *
 * `l = D ÷ C`
 *
 * @param demand D, what is asked, 0 or more
 * @param capacity C, what may be given, in the same unit, 0 or more
 * @returns l, 1 when all is asked; `null` when the capacity is 0
 *
 * Source: arithmetic.
 *
 * @example loadingRatio(7.9, 10) // 0.79
 */
export function loadingRatio(demand: number, capacity: number): number | null {
  return capacity === 0 ? null : demand / capacity;
}

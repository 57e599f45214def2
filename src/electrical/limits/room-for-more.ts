/** A whole number that a quotient missed by rounding still counts: there is room for 3 times 0.1 in 0.3. */
const ROUNDING = 1e-9;

/**
 * How many more of the same fit below a limit.
 *
 * `n = ⌊(L − T) ÷ e⌋`
 *
 * @param limit L, what may be taken, 0 or more
 * @param taken T, what is taken, in the same unit, 0 or more
 * @param each e, what one more takes, in the same unit, above 0
 * @returns n; 0 when nothing more fits, `null` when one more takes nothing
 *
 * Source: arithmetic.
 *
 * @example roomForMore(16, 12.4, 1.2) // 3
 */
export function roomForMore(limit: number, taken: number, each: number): number | null {
  return each === 0 ? null : Math.max(0, Math.floor((limit - taken) / each + ROUNDING));
}

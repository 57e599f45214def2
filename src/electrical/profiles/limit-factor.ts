/**
 * The factor of one group at which a limit is just met, the others staying as they are.
 *
 * `f = (L − Po) ÷ P1`
 *
 * @param limit L, what may be drawn in all, in one unit, 0 or more
 * @param others Po, what everything else draws, in the same unit, 0 or more
 * @param ownAtOne P1, what the group draws at a factor of 1, in the same unit, 0 or more
 * @returns f as it follows, neither bounded nor rounded: below 0 where the others alone are over the limit, above 1
 *   where the limit holds even with all of the group; `null` when the group draws nothing, whatever its factor
 *
 * Source: the demand Po + P1 × f set equal to L; arithmetic.
 *
 * @example limitFactor(10, 4, 8) // 0.75
 * @example limitFactor(10, 12, 8) // -0.25
 * @example limitFactor(10, 4, 5) // 1.2
 */
export function limitFactor(limit: number, others: number, ownAtOne: number): number | null {
  return ownAtOne === 0 ? null : (limit - others) / ownAtOne;
}

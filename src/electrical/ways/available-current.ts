/**
 * Current that a supply still has for a short circuit on one of its ways.
 *
 * `I = Iu × p − Io`
 *
 * @param usableAmps Iu, what may be used of the supply, without a redundant unit and derated [A], 0 or more; see
 *   `usableCurrent`
 * @param peak p, multiple of it that the supply holds long enough to clear a fault, 1 or more
 * @param otherAmps Io, demand of the rail that does not come through this way [A]; below 0, as where devices of a way
 *   count on another rail by mistake, none
 * @returns I [A]; 0 where the others take it all
 *
 * Limits: takes the other loads to go on drawing what they did. A redundant unit may be the one that has failed, so it
 * counts for nothing.
 *
 * Source: currents at a node add up, Kirchhoff; that the other loads hold is common practice, no source.
 *
 * @example availableCurrent(10, 1.2, 7) // 5
 */
export function availableCurrent(usableAmps: number, peak: number, otherAmps: number): number {
  return Math.max(0, usableAmps * peak - Math.max(0, otherAmps));
}

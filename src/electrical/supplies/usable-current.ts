/**
 * Current that may be drawn from the units of a supply, with one of them held back where they are redundant.
 *
 * `I = In × (n − 1 if redundant) × k`
 *
 * @param ratedAmps In, rated output current of one unit [A], above 0
 * @param units n, units in parallel, 1 or more
 * @param redundant whether one unit is a spare that carries nothing in the reckoning
 * @param derating k, share of the rating that may be used where the supply is mounted, above 0 to 1
 * @returns I [A]; 0 when the only unit is the spare
 *
 * Limits: takes the units to share the current evenly, as the maker's instructions for parallel use must allow.
 *
 * Source: N + 1 redundancy; common practice, no source.
 *
 * @example usableCurrent(10, 2, true, 0.9) // 9
 */
export function usableCurrent(ratedAmps: number, units: number, redundant: boolean, derating: number): number {
  return ratedAmps * (redundant ? units - 1 : units) * derating;
}

/**
 * What is left on the mounting rails of an enclosure.
 *
 * `f = n × L × (1 − r) − w`
 *
 * @param rails n, mounting rails, 1 or more
 * @param railLength L, usable length of one [mm], above 0
 * @param reserve r, share kept free for later, 0 to 1
 * @param usedWidth w, width of all that is mounted on them [mm], 0 or more
 * @returns f [mm]; below 0 where the reserve is used
 *
 * Limits: a sum; parts that fit in sum may still not be arranged so that each stands on one rail, which is decided
 * apart from it.
 *
 * Source: arithmetic.
 *
 * @example freeWidth(3, 400, 0.2, 960) // 0
 */
export function freeWidth(rails: number, railLength: number, reserve: number, usedWidth: number): number {
  return rails * railLength * (1 - reserve) - usedWidth;
}

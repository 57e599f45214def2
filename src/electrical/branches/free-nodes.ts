/** A whole number that a product missed by rounding still counts: 10 × (1 − 0.9) is 1 place. */
const ROUNDING = 1e-9;

/**
 * Places left on a bus branch below its limit less the reserve.
 *
 * `f = ⌊L × (1 − r)⌋ − p`
 *
 * @param limit L, most nodes that the branch may carry, 1 or more
 * @param reserve r, share of the limit kept free for later, 0 to 1
 * @param nodes p, nodes on it, 0 or more
 * @returns f; negative when the reserve is being used
 *
 * Source: arithmetic; for an RS-485 line the limit is 32 unit loads, EIA RS-485.
 *
 * @example freeNodes(50, 0.25, 30) // 7
 */
export function freeNodes(limit: number, reserve: number, nodes: number): number {
  return Math.floor(limit * (1 - reserve) + ROUNDING) - nodes;
}

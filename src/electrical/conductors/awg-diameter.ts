/**
 * Diameter of a round wire of an American wire gauge number.
 *
 * `d = 0.127 × 92^((36 − n) ÷ 39)`
 *
 * @param gauge n, the gauge number; 0 for 1/0, −1 for 2/0, −2 for 3/0, −3 for 4/0; −3 to 40
 * @returns d [mm]
 *
 * Limits: solid wire; strands of the same gauge number have about this cross-section and a larger outside diameter.
 *
 * Source: ASTM B258.
 *
 * @example awgDiameter(36) // 0.127
 */
export function awgDiameter(gauge: number): number {
  return 0.127 * 92 ** ((36 - gauge) / 39);
}

import { awgDiameter } from './awg-diameter.ts';

/**
 * Cross-section of a round wire of an American wire gauge number.
 *
 * `A = π ÷ 4 × d²`
 *
 * @param gauge the gauge number; 0 for 1/0, −1 for 2/0, −2 for 3/0, −3 for 4/0; −3 to 40
 * @returns A [mm²]
 *
 * Source: ASTM B258.
 *
 * @example awgArea(24) // 0.2047303
 */
export function awgArea(gauge: number): number {
  return (Math.PI / 4) * awgDiameter(gauge) ** 2;
}

import { resistanceAt } from './resistance-at.ts';

/**
 * Resistance of one metre of cable, out and back, at the temperature of its conductors.
 *
 * `r = 2 × R20 ÷ 1000 × (1 + 0.00393 × (θ − 20)) ÷ p`
 *
 * @param ohmPerKm R20, resistance of one conductor at 20 °C [Ω/km], above 0
 * @param temperature θ, temperature of the conductors [°C], −40 to 120
 * @param pairs p, pairs in parallel, 1 or more
 * @returns r [Ω/m]; `null` when there are no pairs
 *
 * Limits: copper; pairs of the same conductor and length. Joints and terminals are not counted.
 *
 * Source: IEC 60228 for R20; see `resistanceAt` for the temperature.
 *
 * @example loopResistancePerMetre(12.1, 20, 2) // 0.0121
 */
export function loopResistancePerMetre(ohmPerKm: number, temperature: number, pairs: number): number | null {
  return pairs === 0 ? null : (2 * resistanceAt(ohmPerKm, temperature)) / 1000 / pairs;
}

import { ambientFactor } from './ambient-factor.ts';
import { groupingFactor } from './grouping-factor.ts';

/**
 * Current that a cable carries where it lies.
 *
 * `Iz = Im × p × Ca × Cg`
 *
 * @param maxAmps Im, what one pair carries alone [A], above 0
 * @param pairs p, pairs in parallel, 1 or more
 * @param ambient temperature around the cable [°C]; see `ambientFactor` for Ca
 * @param grouped loaded circuits in its bunch; taken as the pairs where it is less, as each pair warms the others; see
 *   `groupingFactor` for Cg
 * @param maxTemperature highest temperature of the conductor [°C]
 * @param baseTemperature temperature around the cable that Im is for [°C], below the highest
 * @returns Iz [A]; `null` when there are no pairs, or the base is not below the highest temperature
 *
 * Limits: steady load; pairs that share the current evenly. Im holds for one way of laying.
 *
 * Source: IEC 60364-5-52, 523; pairs in parallel, 523.7 (clause from memory).
 *
 * @example carriedCurrent(27, 1, 40, 2, 70, 30) // 18.792
 */
export function carriedCurrent(
  maxAmps: number, pairs: number, ambient: number, grouped: number, maxTemperature: number, baseTemperature: number,
): number | null {
  const ambientShare = ambientFactor(ambient, maxTemperature, baseTemperature);
  const groupedShare = pairs < 1 ? null : groupingFactor(Math.max(grouped, pairs));
  return ambientShare === null || groupedShare === null ? null : maxAmps * pairs * ambientShare * groupedShare;
}

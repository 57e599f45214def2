import { exceeds } from '../limits/index.ts';

/**
 * Longest run at whose far end a short circuit still makes its protection act at once.
 *
 * `l = (U ÷ It − Ri) ÷ r`
 *
 * @param supplyVolts U, lowest voltage where the run starts [V], above 0
 * @param loopOhmPerMetre r, resistance of both conductors together at their highest temperature [Ω/m], 0 or more
 * @param innerOhm Ri, resistance of supply, protection and wiring before the run [Ω], 0 or more
 * @param tripAmps It, current at which the protection acts at once [A], above 0: its rating times its trip multiple
 * @param availableAmps what the supply has for the fault [A], 0 or more; see `availableCurrent`
 * @returns l, one way [m]; 0 where it may not act at any length, `null` where cable of no resistance sets no limit.
 *   It is exact: whoever writes it rounds it down
 *
 * Limits: a fault of no resistance of its own.
 *
 * Source: follows from `faultCurrent`.
 *
 * @example longestClearing(24, 0.03, 0.3, 30, 50) // 16.666667
 * @example longestClearing(24, 0.03, 0.3, 30, 12) // 0
 */
export function longestClearing(
  supplyVolts: number, loopOhmPerMetre: number, innerOhm: number, tripAmps: number, availableAmps: number,
): number | null {
  const ohm = supplyVolts / tripAmps - innerOhm;
  if (ohm < 0 || exceeds(tripAmps, availableAmps)) return 0;
  return loopOhmPerMetre === 0 ? null : ohm / loopOhmPerMetre;
}

/** What a battery loses over its life is on top. */
const AGEING = 1.25;
/** A battery that is discharged faster than in 20 hours gives less. */
const FAST = 1.75;

/**
 * Capacity of a lead-acid battery that bridges a mains failure.
 *
 * `C = 1.25 × (I1 × T1 + D × I2 × T2)`, D = 1 where `I2 ≤ Cn ÷ 20 h`, else 1.75
 *
 * @param standbyAmps I1, current of the quiet state [A], 0 or more
 * @param standbyHours T1, how long it lasts [h], 0 or more
 * @param loadAmps I2, current of the loads that are then on [A], 0 or more
 * @param loadHours T2, how long they are on [h], 0 or more
 * @param batteryAmpereHours Cn, capacity of the battery at its 20-hour rate [Ah], above 0; `null` when it is not known
 * @returns C [Ah]; with D = 1.75 where the battery is not known
 *
 * Limits: sealed lead-acid batteries at room temperature.
 *
 * Source: BS 5839-1, Annex E, read in a forum of fire engineers and in a guide of 2025.
 *
 * @example batteryNeeded(0.25, 24, 0.75, 0.5, null) // 8.3203125
 * @example batteryNeeded(0, 0, 2, 4, 40) // 10
 */
export function batteryNeeded(
  standbyAmps: number, standbyHours: number, loadAmps: number, loadHours: number, batteryAmpereHours: number | null,
): number {
  const isSlow = batteryAmpereHours !== null && loadAmps <= batteryAmpereHours / 20;
  return AGEING * (standbyAmps * standbyHours + (isSlow ? 1 : FAST) * loadAmps * loadHours);
}

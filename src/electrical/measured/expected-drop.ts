/**
 * Drop to be expected on a cable that carries another current than the one that was worked with.
 *
 * `ΔU = ΔU1 × I ÷ I1`
 *
 * @param drop ΔU1, drop that was worked out [V], 0 or more
 * @param current I1, current with which it was [A], 0 or more
 * @param measuredCurrent I, current that flows [A], 0 or more; `null` when it was not measured, which gives ΔU1
 * @returns ΔU [V]; ΔU1 when I1 is 0
 *
 * Limits: the devices along the cable share the current as they do in the calculation.
 *
 * Source: Ohm’s law.
 *
 * @example expectedDrop(0.64, 2, 1.5) // 0.48
 */
export function expectedDrop(drop: number, current: number, measuredCurrent: number | null): number {
  return measuredCurrent === null || current === 0 ? drop : drop * measuredCurrent / current;
}

/** Conductors of 20 °C and 70 °C differ by as much: 50 K × 0.393 %. */
const RESISTANCE_SHARE = 0.2;
/** Two readings of a meter of 0.2 % at 24 V. */
const METER_VOLTS = 0.1;

/**
 * By how much a measured drop may be more than the expected one.
 *
 * `δ = 0.2 × ΔU + δU`, δU 0.1 V where both ends were measured, else what the voltage at the start may differ by
 *
 * @param drop ΔU, expected drop [V], 0 or more
 * @param startVolts δU, by how much the voltage at the start may differ [V], 0 or more; `null` when it was measured
 * @returns δ [V]
 *
 * Source: common practice, no source; the share is what 50 K do to copper (0.393 % for each, IEC 60228).
 *
 * @example allowedDropError(0.64, null) // 0.228
 */
export function allowedDropError(drop: number, startVolts: number | null): number {
  return RESISTANCE_SHARE * drop + (startVolts ?? METER_VOLTS);
}

import type { LoadKind } from './contact-rating.ts';
import { lampPowerFactor } from './lamp-power-factor.ts';

/**
 * Power factor of a load whose own is not entered.
 *
 * Resistive loads and coils 1, direct current 1, lamps by their power, see `lampPowerFactor`.
 *
 * @param kind kind of load; `null` when it is not known
 * @param powerWatts power of one load [W], 0 or more; `null` when it is not known
 * @returns power factor, above 0 to 1; `null` for motors, and where kind or power is not known
 *
 * Limits: a coil takes less active power than its apparent one: enter its VA as power, or its power factor.
 *
 * Source: resistance, IEC 60050-131; EU 2019/2020 for lamps; 1 for coils: common practice, no source.
 *
 * @example usualPowerFactor('lamp', 18) // 0.7
 */
export function usualPowerFactor(kind: LoadKind | null, powerWatts: number | null): number | null {
  if (kind === null || kind === 'motor') return null;
  if (kind !== 'lamp') return 1;
  return powerWatts !== null && powerWatts >= 0 ? lampPowerFactor(powerWatts) : null;
}

/**
 * Efficiency of a load whose own is not entered: 1, as the power of all but motors is what they take in.
 *
 * @param kind kind of load; `null` when it is not known
 * @returns 1; `null` for motors, whose plate gives the power at the shaft, and where the kind is not known
 *
 * Source: rated output of a motor is the mechanical power at the shaft, IEC 60034-1, from memory, sure.
 *
 * @example usualEfficiency('resistive') // 1
 */
export function usualEfficiency(kind: LoadKind | null): number | null {
  return kind === null || kind === 'motor' ? null : 1;
}

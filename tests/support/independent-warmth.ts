import { independentCarries, type Laid } from './independent-carries.ts';

/**
 * Temperature of the conductors of a cable [°C] that carries a current, from what it would carry where it lies; it
 * shares nothing with the software. As warm as they may get, else 70 °C, where it is not known what they carry.
 */
export function independentWarmth(
  amps: number, laid: Omit<Laid, 'alone'> & { readonly alone: number | null }, isNamed = true,
): number {
  const { alone, pairs, highest, base, ambient } = laid;
  if (!isNamed) return 70;
  if (alone === null || alone * pairs === 0 || base >= highest) return highest;
  const share = independentCarries({ ...laid, alone: 1, pairs, grouped: Math.max(laid.grouped, pairs) }) / pairs;
  const warm = highest - (share ** 2 - (amps / (alone * pairs)) ** 2) * (highest - base);
  return warm > highest ? highest : warm > ambient ? warm : Math.min(ambient, highest);
}

/**
 * Lowest voltage at the output of a supply [V]; `null` where it is not known what decouples its units. A battery of
 * twelve cells is empty at 1.75 V each, 21 V of 24 (from memory).
 */
export function independentLowest(
  voltage: number | null, tolerance: number | null, drop: number | null, redundant: boolean, hasBattery: boolean,
): number | null {
  if (voltage === null || tolerance === null || (redundant && drop === null)) return null;
  const regulated = voltage - tolerance * voltage;
  const volts = (hasBattery ? Math.min(regulated, voltage / 24 * 21) : regulated) - (drop ?? 0);
  return volts > 0 ? volts : null;
}

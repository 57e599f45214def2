import { ambientFactor, conductorTemperature, FAULT_TEMPERATURE, groupingFactor } from '../../electrical/index.ts';

/**
 * Temperature of the conductors of a run by its load [°C]: as warm as they may get where it is not known what they
 * carry.
 * @param nominalAmps what its devices draw at their nominal voltage [A]
 * @param maxAmps what one pair carries alone [A]; `null` where that is not known
 * @param highest highest temperature of the conductor [°C], and `base` that around it for `maxAmps`; `null` without one
 */
export function temperatureByLoad(
  nominalAmps: number | null, maxAmps: number | null, pairs: number | null, ambient: number | null,
  grouped: number | null, highest: number | null, base: number | null,
): number | null {
  if (maxAmps === null || highest === null || base === null) return highest ?? FAULT_TEMPERATURE;
  if (nominalAmps === null || pairs === null || ambient === null || grouped === null) return null;
  const ambientShare = ambientFactor(ambient, highest, base);
  const groupedShare = groupingFactor(Math.max(grouped, pairs));
  if (ambientShare === null || groupedShare === null) return highest;
  return conductorTemperature(nominalAmps, maxAmps * pairs, ambient, ambientShare, groupedShare, highest, base);
}

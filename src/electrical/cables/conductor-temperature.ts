/**
 * Temperature of the conductors of a loaded cable.
 *
 * `θ = θm − (Ca² × Cg² − (I ÷ It)²) × (θm − θ0)`, at least that around the cable, at most θm
 *
 * @param currentAmps I, current of the cable [A], 0 or more
 * @param aloneAmps It, what its pairs together carry alone at θ0 [A], above 0
 * @param ambient temperature around the cable [°C]
 * @param ambientShare Ca; see `ambientFactor`
 * @param groupedShare Cg; see `groupingFactor`
 * @param maxTemperature θm, highest temperature of the conductor [°C]
 * @param baseTemperature θ0, temperature around the cable that It is for [°C], below θm
 * @returns θ [°C]; θm where It is 0
 *
 * Limits: takes the heat for in proportion to the square of the current, which is on the safe side: a cooler conductor
 * has less resistance. A grouped cable is taken for as warm as its neighbours may make it.
 *
 * Source: BS 7671, Appendix 4, 6.1, as quoted in an engineering community of the IET.
 *
 * @example conductorTemperature(16, 27, 30, 1, 1, 70, 30) // 44.046639
 * @example conductorTemperature(27, 27, 30, 1, 1, 70, 30) // 70
 */
export function conductorTemperature(
  currentAmps: number, aloneAmps: number, ambient: number, ambientShare: number, groupedShare: number,
  maxTemperature: number, baseTemperature: number,
): number {
  if (aloneAmps === 0) return maxTemperature;
  const unused = (ambientShare * groupedShare) ** 2 - (currentAmps / aloneAmps) ** 2;
  const temperature = maxTemperature - unused * (maxTemperature - baseTemperature);
  return Math.min(maxTemperature, Math.max(ambient, temperature));
}

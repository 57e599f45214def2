/**
 * Cooling surface that an enclosure needs, so that its top gets no warmer than it may.
 *
 * `A = P × f ÷ (k × (θm − θa))`, which is `θa + f × P ÷ (k × A) = θm` solved for A
 *
 * @param lossWatts P, heat given off inside [W], 0 or more
 * @param transfer k, heat that a square metre gives off for each kelvin [W/(m²K)], above 0
 * @param topFactor f, rise at the top over the mean rise, 1 or more
 * @param ambient θa, highest temperature around it [°C]
 * @param maxInside θm, highest temperature that its contents bear [°C]
 * @returns A [m²]; no heat gives 0, `null` where it is as warm around it as it may get inside, or the transfer is 0
 *
 * Limits: those of the linear rule of `temperatureRise`, a rule of thumb for closed enclosures.
 *
 * Source: arithmetic.
 *
 * @example neededArea(66, 5.5, 1.3, 30, 43) // 1.2
 */
export function neededArea(
  lossWatts: number, transfer: number, topFactor: number, ambient: number, maxInside: number,
): number | null {
  const kelvins = maxInside - ambient;
  if (kelvins <= 0 || transfer <= 0) return null;
  return lossWatts * topFactor / (transfer * kelvins);
}

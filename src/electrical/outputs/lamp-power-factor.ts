/**
 * Least power factor of a lamp with its driver, where its maker says none.
 *
 * Above 25 W 0.9, above 10 W 0.7, else 0.5.
 *
 * @param powerWatts power of one lamp [W], 0 or more
 * @returns power factor, 0.5 to 0.9
 *
 * Limits: light sources placed on the market of the EU since 2021. Up to 5 W nothing is asked for, and 0.5 is common
 * practice, no source.
 *
 * Source: Commission Regulation (EU) 2019/2020, displacement factor, read on a secondary page.
 *
 * @example lampPowerFactor(18) // 0.7
 */
export function lampPowerFactor(powerWatts: number): number {
  if (powerWatts > 25) return 0.9;
  return powerWatts > 10 ? 0.7 : 0.5;
}

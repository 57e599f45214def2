/**
 * How much warmer it is inside an enclosure than around it.
 *
 * `ΔT = P ÷ (k × A)`
 *
 * @param lossWatts P, heat given off inside [W], 0 or more
 * @param transfer k, heat that a square metre gives off for each kelvin [W/(m²K)], above 0
 * @param areaM2 A, effective cooling surface [m²], above 0
 * @returns ΔT [K]; no heat gives 0, `null` when the transfer or the area is 0
 *
 * Limits: a rule of thumb, linear and for the mean inside; it is warmer at the top. IEC TR 60890 finds a rise in
 * proportion to P^0.804 (from memory). Sun on the enclosure and fans are not covered.
 *
 * Source: 5.5 W/(m²K) for painted sheet steel in several published tables; common practice.
 *
 * @example temperatureRise(66, 5.5, 1.2) // 10
 */
export function temperatureRise(lossWatts: number, transfer: number, areaM2: number): number | null {
  const wattsPerKelvin = transfer * areaM2;
  return wattsPerKelvin === 0 ? null : lossWatts / wattsPerKelvin;
}

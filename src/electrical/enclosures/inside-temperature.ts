/**
 * Temperature inside an enclosure.
 *
 * `θi = θa + ΔT`
 *
 * @param ambient θa, highest temperature around it [°C], −40 to 70
 * @param riseKelvin ΔT, how much warmer it is inside [K], 0 or more
 * @returns θi [°C]
 *
 * Source: arithmetic.
 *
 * @example insideTemperature(35, 10) // 45
 */
export function insideTemperature(ambient: number, riseKelvin: number): number {
  return ambient + riseKelvin;
}

/**
 * Temperature at the top of an enclosure, where supplies sit.
 *
 * `θt = θa + ΔT × f`
 *
 * @param ambient θa, highest temperature around it [°C], −40 to 70
 * @param riseKelvin ΔT, how much warmer it is inside in the mean [K], 0 or more
 * @param topFactor f, rise at the top over the mean rise, 1 or more
 * @returns θt [°C]
 *
 * Limits: closed enclosures without fans. The factor depends on height and surface.
 *
 * Source: the form is that of IEC TR 60890, rise at the top = c × rise at half height, from memory; 1.3 is common
 * practice, no source.
 *
 * @example topTemperature(35, 10, 1.3) // 48
 */
export function topTemperature(ambient: number, riseKelvin: number, topFactor: number): number {
  return ambient + riseKelvin * topFactor;
}

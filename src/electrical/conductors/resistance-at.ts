/**
 * Resistance of a conductor at a temperature, from that at 20 °C.
 *
 * `R = R20 × (1 + α × (θ − 20))`
 *
 * @param resistanceAt20 R20, resistance at 20 °C, in any unit, 0 or more
 * @param temperature θ, temperature of the conductor [°C], −40 to 120
 * @param coefficient α, temperature coefficient at 20 °C [1/K]; 0.00393 is that of annealed copper
 * @returns R, in the unit of R20
 *
 * Limits: linear, good to 0.02 % of the form (234.5 + θ) ÷ 254.5 of IEC 60228 over the range given.
 *
 * Source: Industrial Power Engineering and Applications Handbook, p. 970 (3.93e-3 per kelvin at 20 °C).
 *
 * @example resistanceAt(12.1, 70) // 14.47765
 */
export function resistanceAt(resistanceAt20: number, temperature: number, coefficient = 0.00393): number {
  return resistanceAt20 * (1 + coefficient * (temperature - 20));
}

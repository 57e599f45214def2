/** How a supply is derated with the temperature around it. */
export interface DeratingLine {
  /** Highest temperature at which the full rating may be used [°C]. */
  readonly fullUpTo: number;
  /** What is lost for each kelvin above it [% of the rating], 0 or more. */
  readonly percentPerKelvin: number;
}

/**
 * Share of its rating that a supply may be used to, at a temperature.
 *
 * `k = 1 − p ÷ 100 × (θ − t1)` above t1, else 1; never below 0
 *
 * @param line t1, full up to [°C], and p, loss for each kelvin above it [%]
 * @param temperature θ, temperature around the supply [°C]
 * @returns k, 0 to 1
 *
 * Limits: as far as the maker's line goes; beyond the highest temperature that the maker allows the supply may not be
 * used.
 *
 * Source: the form in which data sheets give it; common practice, no source.
 *
 * @example deratingAt({ fullUpTo: 50, percentPerKelvin: 2.5 }, 54) // 0.9
 */
export function deratingAt(line: DeratingLine, temperature: number): number {
  const lost = (line.percentPerKelvin / 100) * Math.max(0, temperature - line.fullUpTo);
  return Math.max(0, 1 - lost);
}

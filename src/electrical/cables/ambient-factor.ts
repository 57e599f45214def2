/** Factors of B.52.14 for insulation of 70 °C in air of 30 °C, by the temperature around the cable [°C]. */
const TABLE = [
  [10, 1.22], [15, 1.17], [20, 1.12], [25, 1.06], [30, 1], [35, 0.94], [40, 0.87], [45, 0.79], [50, 0.71], [55, 0.61],
  [60, 0.5],
] as const;
const [COLDEST] = TABLE[0];

/**
 * What a cable carries at a temperature around it, as a share of what it carries at the one that its rating is for.
 *
 * 70 °C insulation rated at 30 °C: IEC 60364-5-52, Table B.52.14, straight lines between its entries, which lie below
 * the law that it follows, so on the safe side. Else, and above the 60 °C at which the table ends, that law:
 *
 * `Ca = √((θm − θa) ÷ (θm − θ0))`
 *
 * @param ambient θa, temperature around the cable [°C]; below 10 °C, where the tables end, 10 °C is taken
 * @param maxTemperature θm, highest temperature of the conductor [°C]
 * @param baseTemperature θ0, temperature around the cable that its rating is for [°C], below θm
 * @returns Ca; 0 where it is as warm around as the conductor may get, `null` where θ0 is not below θm
 *
 * Source: IEC 60364-5-52, Table B.52.14, from memory, sure; 0.87 at 40 °C read in print. The root follows from a heat
 * that grows with the square of the current and the rise; EN 60204-1 prints it for 40 °C.
 *
 * @example ambientFactor(35, 70, 30) // 0.94
 * @example ambientFactor(30, 70, 40) // 1.1547005
 */
export function ambientFactor(ambient: number, maxTemperature: number, baseTemperature: number): number | null {
  if (baseTemperature >= maxTemperature) return null;
  const around = Math.max(ambient, COLDEST);
  const next = TABLE.findIndex(([celsius]) => celsius > around);
  if (maxTemperature !== 70 || baseTemperature !== 30 || next < 1) {
    return Math.sqrt(Math.max(0, maxTemperature - around) / (maxTemperature - baseTemperature));
  }
  const [[cooler, more], [warmer, less]] = [TABLE[next - 1]!, TABLE[next]!];
  return more + ((less - more) * (around - cooler)) / (warmer - cooler);
}

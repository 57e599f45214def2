/**
 * Current of a short circuit at the far end of a run, fed by a supply that limits its output.
 *
 * `I = min(U ÷ (r × l), In × n × p)`
 *
 * @param supplyVolts U, voltage where the run starts [V], above 0
 * @param loopOhmPerMetre r, resistance of both conductors together [Ω/m], 0 or more
 * @param lengthMetres l, length of the run, one way [m], 0 or more
 * @param ratedAmps In, rated current of one unit of the supply [A], above 0
 * @param units n, units in parallel, 1 or more
 * @param peak p, multiple of its rating that the supply gives into a short circuit, 1 or more
 * @returns I [A]; without cable what the supply gives
 *
 * Limits: a fault of no resistance of its own, at the temperature that r is for. A supply that folds back, or shuts
 * down and tries again, gives less than p times its rating once the first moment is over: measure, or ask its maker.
 *
 * Source: Ohm's law, Lessons In Electric Circuits, vol. I ch. 12; the output limit is common practice, no source.
 *
 * @example faultCurrent(24, 0.0242, 100, 10, 1, 1.2) // 9.917355
 * @example faultCurrent(24, 0.0242, 10, 10, 1, 1.2) // 12
 */
export function faultCurrent(
  supplyVolts: number, loopOhmPerMetre: number, lengthMetres: number, ratedAmps: number, units: number, peak: number,
): number {
  const loopOhm = loopOhmPerMetre * lengthMetres;
  const limitAmps = ratedAmps * units * peak;
  return loopOhm === 0 ? limitAmps : Math.min(supplyVolts / loopOhm, limitAmps);
}

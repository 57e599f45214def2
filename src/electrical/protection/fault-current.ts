/** Temperature at which a conductor is taken to be when a short circuit comes [°C]: as warm as PVC may get. */
export const FAULT_TEMPERATURE = 70;

/**
 * Current of a short circuit at the far end of a run, fed by a supply that limits its output.
 *
 * `I = min(U ÷ (r × l + Ri), Ia)`
 *
 * @param supplyVolts U, lowest voltage where the run starts [V], above 0
 * @param loopOhmPerMetre r, resistance of both conductors together, warm as they are when the fault comes [Ω/m], 0 or
 *   more
 * @param lengthMetres l, length of the run, one way [m], 0 or more
 * @param innerOhm Ri, resistance of supply, protection and wiring before the run [Ω], 0 or more
 * @param availableAmps Ia, what the supply has for the fault [A], 0 or more; see `availableCurrent`
 * @returns I [A]; without any resistance what the supply has
 *
 * Limits: a fault of no resistance of its own. A supply that folds back, or shuts down and tries again, gives less than
 * it does in the first moment: measure, or ask its maker.
 *
 * Source: Ohm's law, Lessons In Electric Circuits, vol. I ch. 12; the output limit is common practice, no source.
 *
 * @example faultCurrent(24, 0.0242, 100, 0, 12) // 9.917355
 * @example faultCurrent(24, 0.0242, 10, 0.3, 12) // 12
 */
export function faultCurrent(
  supplyVolts: number, loopOhmPerMetre: number, lengthMetres: number, innerOhm: number, availableAmps: number,
): number {
  const ohm = loopOhmPerMetre * lengthMetres + innerOhm;
  return ohm === 0 ? availableAmps : Math.min(supplyVolts / ohm, availableAmps);
}

/**
 * Current of a short circuit on a cable that is fed at both ends, in all, where its two protections are least sure to
 * act: there both get the same share of what they need, and are as slow as they may be.
 *
 * `I = min(U ÷ (r × T × It1 × It2 ÷ (It1 + It2)² + Ri), Ia)`, at `x = T × It2 ÷ (It1 + It2)` from the first
 *
 * Nearer to the first it gets more, and acts; farther away the second does. What is left has one feed: `faultCurrent`
 * over the whole length.
 *
 * @param supplyVolts U, lowest voltage of the supply [V], above 0
 * @param loopOhmPerMetre r, resistance of both conductors together, warm as they are when the fault comes [Ω/m], 0 or
 *   more
 * @param totalMetres T, length of the cable from feed to feed [m], above 0
 * @param innerOhm Ri, resistance that both feeds have in common [Ω], 0 or more
 * @param availableAmps Ia, what the supply has for the fault [A], 0 or more
 * @param firstTripAmps It1, current that makes the first protection act at once [A], above 0
 * @param secondTripAmps It2, that of the second [A], above 0
 * @returns I [A]; where it is less than It1 + It2 neither may act at once
 *
 * Limits: as `faultCurrent`; takes the resistance before the runs for one that both share.
 *
 * Source: currents divide by the inverse of resistances, Lessons In Electric Circuits, vol. I ch. 6; the place where
 * both get the same share follows from it.
 *
 * @example sharedFault(24, 0.03, 100, 0, 60, 15, 15) // 32
 * @example sharedFault(24, 0.03, 100, 0, 20, 15, 15) // 20
 */
export function sharedFault(
  supplyVolts: number, loopOhmPerMetre: number, totalMetres: number, innerOhm: number, availableAmps: number,
  firstTripAmps: number, secondTripAmps: number,
): number {
  const needed = firstTripAmps + secondTripAmps;
  const ohm = loopOhmPerMetre * totalMetres * firstTripAmps * secondTripAmps / needed ** 2 + innerOhm;
  return ohm === 0 ? availableAmps : Math.min(supplyVolts / ohm, availableAmps);
}

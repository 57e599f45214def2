/**
 * How far the loading moves when the factor of one group moves by a step.
 *
 * `Δl = P1 × Δf ÷ Pu`
 *
 * @param ownAtOne P1, what the group draws at a factor of 1, in one unit, 0 or more
 * @param usable Pu, what may be used, in the same unit, 0 or more
 * @param step Δf, how far its factor moves, -1 to 1
 * @returns Δl, with the sign of the step; `null` when nothing may be used
 *
 * Limits: exact within one case, since demand is linear in each factor. The worst of several cases may become another
 * one along the way. What devices of constant power draw more at a lower voltage is not in it.
 *
 * Source: difference of two loadings, (Po + P1 × (f + Δf)) ÷ Pu − (Po + P1 × f) ÷ Pu; arithmetic.
 *
 * @example loadingStep(8, 10, 0.1) // 0.08
 */
export function loadingStep(ownAtOne: number, usable: number, step: number): number | null {
  return usable === 0 ? null : (ownAtOne * step) / usable;
}

/**
 * The common diversity of everything connected at which the target loading is just met.
 *
 * `g = Iu × t ÷ Ic`
 *
 * @param usableAmps Iu, what may be used [A], 0 or more
 * @param target t, loading that the design aims to stay below, above 0 to 1
 * @param connectedAmps Ic, connected current [A], 0 or more
 * @returns g; above 1 when even everything at once stays below the target, `null` when nothing is connected
 *
 * Source: the demand Ic × g set equal to Iu × t; arithmetic.
 *
 * @example limitDiversity(10, 0.8, 16) // 0.5
 */
export function limitDiversity(usableAmps: number, target: number, connectedAmps: number): number | null {
  return connectedAmps === 0 ? null : (usableAmps * target) / connectedAmps;
}

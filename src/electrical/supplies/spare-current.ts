/**
 * Current that can still be added before the target loading is reached.
 *
 * `I = Iu × t − Id`
 *
 * @param capacityAmps Iu, what may be used [A], 0 or more
 * @param target t, loading that the design aims to stay below, above 0 to 1
 * @param demandAmps Id, demand [A], 0 or more
 * @returns I [A]; negative when the demand is beyond the target
 *
 * Source: a target of 0.8 is the reciprocal of the factor 1.25 for continuous loads in NEC 210.20(A); arithmetic.
 *
 * @example spareCurrent(10, 0.8, 7.5) // 0.5
 */
export function spareCurrent(capacityAmps: number, target: number, demandAmps: number): number {
  return capacityAmps * target - demandAmps;
}

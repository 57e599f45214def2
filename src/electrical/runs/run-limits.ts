import { exceeds } from '../limits/index.ts';
import { faultCurrent, mayNotClear } from '../protection/index.ts';
import type { WorkingPoint } from './working-point.ts';

/** The protection of a run and the supply that has to make it act. */
export interface RunProtection {
  /** Rating of the fuse or breaker [A], above 0. */
  readonly protectionAmps: number;
  /** Multiple of the rating that makes it act at once, 1 or more; without it a short circuit is not checked. */
  readonly trip?: number;
  /** What the supply has for a short circuit [A], 0 or more; without it only the cable limits it. */
  readonly availableAmps?: number;
  /** Resistance before the run [Ω], 0 or more; without it none. */
  readonly innerOhm?: number;
}

/** What a run has to keep to. A limit that is left out is not checked. */
export interface RunLimits {
  /** Highest voltage that a device on the run needs [V], above 0. */
  readonly minVolts?: number;
  /** Share of the supply voltage that may be lost, above 0 to 1. */
  readonly maxDrop?: number;
  readonly protection?: RunProtection;
  /** What the conductors carry together [A], above 0: neither the current nor the protection may be more. */
  readonly carriesAmps?: number;
}

/** Whether a run keeps to its limits, rounding apart; `null` is a run that collapsed. */
export function keepsLimits(
  point: WorkingPoint | null, supplyVolts: number, loopOhmPerMetre: number, lengthMetres: number, limits: RunLimits,
): boolean {
  if (point === null) return false;
  const { minVolts, maxDrop, protection, carriesAmps } = limits;
  if (minVolts !== undefined && exceeds(minVolts, point.endVolts)) return false;
  if (maxDrop !== undefined && exceeds(point.dropVolts, maxDrop * supplyVolts)) return false;
  const asked = Math.max(point.currentAmps, protection?.protectionAmps ?? 0);
  if (carriesAmps !== undefined && exceeds(asked, carriesAmps)) return false;
  if (protection?.trip === undefined) return true;
  const { protectionAmps, trip, availableAmps = Infinity, innerOhm = 0 } = protection;
  const fault = faultCurrent(supplyVolts, loopOhmPerMetre, lengthMetres, innerOhm, availableAmps);
  return !mayNotClear(fault, trip, protectionAmps);
}

import { mostProtection } from '../cables/index.ts';
import { exceeds } from '../limits/index.ts';
import { faultCurrent, mayNotClear, sharedFault } from '../protection/index.ts';
import type { TapOrder } from './tap-order.ts';
import { workingPoint } from './working-point.ts';

/** The protection of a run and the supply that has to make it act. */
export interface RunProtection {
  /** Rating of the fuse or breaker [A], above 0. */
  readonly protectionAmps: number;
  /** k2, multiple of the rating at which it acts on overload, above 0; without it 1.45. See `operatingMultiple`. */
  readonly operatingMultiple?: number;
  /** Multiple of the rating that makes it act at once, 1 or more; without it a short circuit is not checked. */
  readonly trip?: number;
  /** What the supply has for a short circuit [A], 0 or more; without it only the cable limits it. */
  readonly availableAmps?: number;
  /** Resistance before the run [Ω], 0 or more; without it none. */
  readonly innerOhm?: number;
}

/** What a run has to keep to. A limit that is left out is not checked. */
export interface RunLimits {
  /**
   * Lowest voltage where the run starts [V], above 0: what each tap needs and a short circuit are judged from it. The
   * voltage of the supply where it is left out.
   */
  readonly lowestVolts?: number;
  /** Share of the supply voltage that may be lost, above 0 to 1. */
  readonly maxDrop?: number;
  readonly protection?: RunProtection;
  /** That of the second feed, of a run that has one: either has to protect it by itself, and both share a fault. */
  readonly secondProtection?: RunProtection;
  /**
   * What the conductors carry together [A], 0 or more: neither the current may be more, nor the protection than
   * `mostProtection`.
   */
  readonly carriesAmps?: number;
  /** What the largest device draws by itself [A], 0 or more: the conductors carry it whatever the diversity. */
  readonly largestAmps?: number;
  /**
   * What the supply feeds for ever [A], 0 or more, where no way protects the run: conductors that carry as much need no
   * protection, and those that carry less have only `protection`, the fuse of the supply. Else left out.
   */
  readonly givenAmps?: number;
}

/** A cable that a run is tried with. */
export interface TriedCable {
  /** Resistance of both conductors together [Ω/m], 0 or more: loaded, and when a short circuit comes. */
  readonly loopOhmPerMetre: number;
  readonly faultOhmPerMetre: number;
}

/** A run that cables and lengths are tried on, with its taps in order. */
export interface TriedRun {
  readonly supplyVolts: number;
  /** Length up to where it is fed again; without a second feed, of all of it. */
  readonly lengthMetres: number;
  readonly order: TapOrder;
}

/** Whether a run keeps to its limits with a cable, rounding apart; one that collapses does not. */
export function keepsLimits(run: TriedRun, cable: TriedCable, limits: RunLimits): boolean {
  const { supplyVolts, order } = run;
  const { lowestVolts = supplyVolts, maxDrop, protection, secondProtection, carriesAmps, givenAmps } = limits;
  const volts = new Float64Array(order.places.length);
  const point = workingPoint(supplyVolts, cable.loopOhmPerMetre, order, volts);
  if (point === null) return false;
  const { currentAmps, secondAmps } = point;
  if (maxDrop !== undefined && exceeds(point.dropVolts, maxDrop * supplyVolts)) return false;
  // With one feed open all of it comes through the other.
  const carried = Math.max(currentAmps + secondAmps, limits.largestAmps ?? 0);
  if (carriesAmps !== undefined && exceeds(carried, carriesAmps)) return false;
  const isLower = lowestVolts !== supplyVolts;
  if (isLower && workingPoint(lowestVolts, cable.loopOhmPerMetre, order, volts) === null) return false;
  if (order.leastVolts.some((least, tap) => exceeds(least, volts[tap]!))) return false;
  const isBorne = givenAmps !== undefined && carriesAmps !== undefined && !exceeds(givenAmps, carriesAmps);
  if (isBorne) return true;
  if (protection === undefined) return givenAmps === undefined || carriesAmps === undefined;
  if (!protects(protection, currentAmps, run, cable, limits)) return false;
  if (secondProtection === undefined) return true;
  return protects(secondProtection, secondAmps, run, cable, limits)
    && !sharesTooLittle(protection, secondProtection, run, cable, lowestVolts);
}

/** Whether a protection bears what flows through it, and protects the cable by itself. */
function protects(
  { protectionAmps, operatingMultiple = 1.45, trip, availableAmps = Infinity, innerOhm = 0 }: RunProtection,
  currentAmps: number, { supplyVolts, lengthMetres }: TriedRun, { faultOhmPerMetre }: TriedCable,
  { lowestVolts = supplyVolts, carriesAmps }: RunLimits,
): boolean {
  if (exceeds(currentAmps, protectionAmps)) return false;
  const most = carriesAmps === undefined ? Infinity : mostProtection(carriesAmps, operatingMultiple) ?? 0;
  if (exceeds(protectionAmps, most)) return false;
  if (trip === undefined) return true;
  const fault = faultCurrent(lowestVolts, faultOhmPerMetre, lengthMetres, innerOhm, availableAmps);
  return !mayNotClear(fault, trip, protectionAmps);
}

/** Whether there is a place where a short circuit leaves both protections of a run below what makes them act. */
function sharesTooLittle(
  one: RunProtection, other: RunProtection, { lengthMetres }: TriedRun, { faultOhmPerMetre }: TriedCable,
  lowestVolts: number,
): boolean {
  if (one.trip === undefined || other.trip === undefined) return false;
  const [first, second] = [one.trip * one.protectionAmps, other.trip * other.protectionAmps];
  const { innerOhm = 0, availableAmps = Infinity } = one;
  const fault = sharedFault(lowestVolts, faultOhmPerMetre, lengthMetres, innerOhm, availableAmps, first, second);
  return exceeds(first + second, fault);
}

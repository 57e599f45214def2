/**
 * Whether a short circuit at the end of a run without a way makes the fuse of its supply act at once, a second time:
 * nothing of the product is imported. The run is all that hangs on its supply; all in A, V and Ω.
 */

export interface FusedRun {
  readonly rated: number | null;
  readonly units: number;
  readonly redundant: boolean;
  readonly maxOutput: number;
  readonly peak: number;
  readonly fuse: number | null;
  readonly fuseKind: string | null;
  readonly lowest: number;
  readonly carries: number;
  /** The loop at 70 °C with what lies before it. */
  readonly ohm: number;
}

/** At once on direct current: breakers 1.5 × 5, 10, 20 of IEC 60898-1; the others as the document says. */
const TRIP: Readonly<Record<string, number>> = { B: 7.5, C: 15, D: 30, gG: 7, fast: 4, slow: 10, electronic: 1.8 };

const above = (one: number, other: number) => one > other * (1 + 1e-9);

/** How many times its rating flows an hour before it opens. */
function overload(kind: string, rated: number): number {
  if (kind === 'fast' || kind === 'slow') return 2.1;
  if (kind !== 'gG') return 1.45;
  return rated <= 4 ? 2.1 : rated < 16 ? 1.9 : 1.6;
}

/** The rule that is broken, if any. */
export function fuseRule(run: FusedRun): string[] {
  const { rated, units, redundant, maxOutput, peak, fuse, fuseKind, lowest, carries, ohm } = run;
  if (rated === null || fuse === null || fuseKind === null) return [];
  // Where the supply itself never overloads the cable, or the fuse does not protect it, there is nothing to act.
  const isNeeded = above(rated * units * maxOutput, carries);
  const isEnough = !above(fuse, carries) && !above(overload(fuseKind, fuse) * fuse, 1.45 * carries);
  if (!isNeeded || !isEnough) return [];
  const most = rated * (redundant ? units - 1 : units) * peak;
  const needed = TRIP[fuseKind]! * fuse;
  if (most === 0) return [];
  if (above(needed, most)) return above(fuse, most) ? [] : ['supply-trips-no-fuse'];
  return above(needed, Math.min(most, lowest / ohm)) ? ['run-fuse-may-not-act'] : [];
}

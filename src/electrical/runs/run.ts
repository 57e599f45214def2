/** What hangs on a run at one place: a constant current, a constant power, or both. */
export interface Tap {
  /** Distance from the supply along the cable [m], 0 or more. */
  readonly distanceMetres: number;
  /** Current that does not depend on the voltage [A], 0 or more. */
  readonly amps?: number;
  /** Power that does not depend on the voltage [W], 0 or more. */
  readonly watts?: number;
  /** Voltage that it needs [V], 0 or more; left out where that is not asked. */
  readonly leastVolts?: number;
}

/** A two-conductor cable that a supply feeds at one end or at both, and devices load along its length. */
export interface Run {
  /** Voltage where the run starts [V], above 0. */
  readonly supplyVolts: number;
  /** Resistance of both conductors together [Ω/m], 0 or more. */
  readonly loopOhmPerMetre: number;
  /** In any order; several may share a place. */
  readonly taps: readonly Tap[];
  /**
   * Length of the cable up to where the same supply feeds it again [m], no less than any distance, above 0; left out
   * where it is fed at its start alone.
   */
  readonly fedAgainMetres?: number;
}

/** The voltages and the current of a run that works. */
export interface WorkingRun {
  readonly working: true;
  /** Largest volt drop on the run [V]. */
  readonly dropVolts: number;
  /** Lowest voltage on the run [V]. */
  readonly endVolts: number;
  /** Voltage at each tap [V], in the order in which the taps were given. */
  readonly tapVolts: readonly number[];
  /** Current at the start of the run [A]. */
  readonly currentAmps: number;
  /** Current through the second feed [A]; 0 where there is none. */
  readonly secondAmps: number;
}

/** The cable cannot deliver what the taps ask for: no voltage above zero exists at which they would get it. */
export interface CollapsedRun {
  readonly working: false;
}

/** What a run comes to: voltages along it, or that there is no working voltage. */
export type RunSolution = WorkingRun | CollapsedRun;

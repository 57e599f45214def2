/** What a voltage and a current that were measured together say of a supply or of the far end of a cable. */
export type MeasuredState = 'reversed' | 'dead' | 'short circuit' | 'open';

/** What was measured, and what it is held against. */
export interface Measured {
  /** Voltage [V], below 0 where plus and minus are changed over; `null` when it was not measured. */
  readonly volts: number | null;
  /** Current [A]; `null` when it was not measured. */
  readonly amps: number | null;
  /** What the voltage ought to be about [V], above 0. */
  readonly nominalVolts: number;
  /** Current at which what feeds it limits or protects [A]; `null` when it is not known. */
  readonly limitAmps: number | null;
  /** Current that is worked out [A]; `null` when it is not known. */
  readonly expectedAmps: number | null;
  /** Whether a low voltage alone says that it limits its current or tries again and again, as that of a supply does. */
  readonly isSupply: boolean;
}

/** Up to this share of the nominal voltage there is none but what a meter picks up. */
const NEARLY_NONE = 0.1;
/** Below this share of the nominal voltage something holds it down. */
const HELD_DOWN = 0.5;
/** From this share of the limit on a current is at it. */
const AT_LIMIT = 0.9;
/** From this share of the nominal voltage on it is there. */
const THERE = 0.9;
/** Up to this share of what is expected there is no current. */
const NO_CURRENT = 0.02;

/**
 * What is plainly wrong where a voltage, a current and what was worked out do not go together.
 *
 * @returns `reversed` below −10 % of the nominal voltage; below 50 % `short circuit` with a current of at least 90 % of
 * the limit, else `dead` up to 10 %, and between them `short circuit` for a supply; `open` from 90 % with
 * a current of at most 2 % of what is expected; `undefined` where none of these can be said
 *
 * Limits: a meter shows a mean of what pulses.
 *
 * Source: common practice, no source.
 *
 * @example measuredState({
 *   volts: 0, amps: 0, nominalVolts: 24, limitAmps: 10, expectedAmps: 5, isSupply: true,
 * }) // 'dead'
 */
export function measuredState(
  { volts, amps, nominalVolts, limitAmps, expectedAmps, isSupply }: Measured
): MeasuredState | undefined {
  if (volts === null) return undefined;
  const share = volts / nominalVolts;
  if (share < -NEARLY_NONE) return 'reversed';
  if (share < HELD_DOWN) {
    if (amps !== null && limitAmps !== null && amps >= AT_LIMIT * limitAmps) return 'short circuit';
    if (share <= NEARLY_NONE) return 'dead';
    return isSupply ? 'short circuit' : undefined;
  }
  const isExpected = share >= THERE && expectedAmps !== null && expectedAmps > 0;
  return isExpected && amps !== null && amps <= NO_CURRENT * expectedAmps ? 'open' : undefined;
}

import type { Tap } from './run.ts';

/** The taps of a run in columns, nearest first. */
export interface TapOrder {
  readonly distances: Float64Array;
  readonly amps: Float64Array;
  readonly watts: Float64Array;
  readonly leastVolts: Float64Array;
  /** Whether the last is the place of a second feed. */
  readonly isFedAgain: boolean;
  /** Where each tap stood in the list that was given. */
  readonly places: readonly number[];
}

/**
 * Sorts taps by distance. One order serves every solution of the same taps.
 * @param fedAgainMetres place of a second feed, if there is one, which ends the cable
 */
export function tapOrder(given: readonly Tap[], fedAgainMetres?: number): TapOrder {
  // Nothing hangs beyond the second feed, which is the last of them.
  const taps = fedAgainMetres === undefined ? given : [
    ...given.map((tap) => ({ ...tap, distanceMetres: Math.min(tap.distanceMetres, fedAgainMetres) })),
    { distanceMetres: fedAgainMetres },
  ];
  const places = taps.map((_tap, place) => place)
    .sort((one, other) => taps[one]!.distanceMetres - taps[other]!.distanceMetres);
  const column = (pick: (tap: Tap) => number) =>
    Float64Array.from(places, (place) => pick(taps[place]!));
  return {
    distances: column((tap) => tap.distanceMetres),
    amps: column((tap) => tap.amps ?? 0),
    watts: column((tap) => tap.watts ?? 0),
    leastVolts: column((tap) => tap.leastVolts ?? 0),
    isFedAgain: fedAgainMetres !== undefined, places,
  };
}

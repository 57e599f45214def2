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
  const places = taps.map((_tap, place) => place);
  const isInOrder = taps.every(({ distanceMetres }, place) =>
    place === 0 || distanceMetres >= taps[place - 1]!.distanceMetres);
  if (!isInOrder) places.sort((one, other) => taps[one]!.distanceMetres - taps[other]!.distanceMetres);
  const column = () => new Float64Array(taps.length);
  const order = {
    distances: column(), amps: column(), watts: column(), leastVolts: column(),
    isFedAgain: fedAgainMetres !== undefined, places,
  };
  places.forEach((place, at) => {
    const tap = taps[place]!;
    order.distances[at] = tap.distanceMetres;
    order.amps[at] = tap.amps ?? 0;
    order.watts[at] = tap.watts ?? 0;
    order.leastVolts[at] = tap.leastVolts ?? 0;
  });
  return order;
}

/**
 * Several lists of what hangs on one run, in each case one, the heaviest first: what asks most of the cable, as far
 * from its start as it is. Which comes first decides how soon the strictest is found, and nothing else.
 */
export function heaviestFirst(cases: readonly (readonly Tap[])[], supplyVolts: number): readonly (readonly Tap[])[] {
  if (cases.length < 2) return cases;
  const moments = new Map(cases.map((taps) => [taps, taps.reduce((sum, { amps = 0, watts = 0, distanceMetres }) =>
    sum + (amps + watts / supplyVolts) * distanceMetres, 0)]));
  return [...cases].sort((one, other) => moments.get(other)! - moments.get(one)!);
}

/**
 * Current at which a supply limits its output.
 *
 * `I = In × n × m`
 *
 * @param ratedAmps In, rated output current of one unit [A], above 0
 * @param units n, units that feed: all of them for the most that a cable may get, without the redundant one for the
 *   least that makes a fuse act; 0 or more
 * @param multiple m, multiple of the rating, above 0: for a moment what clears a fault, for ever the most that it feeds
 * @returns I [A]; a fuse above it may never act
 *
 * Source: the form in which data sheets give it; common practice, no source.
 *
 * @example outputLimit(10, 2, 1.5) // 30
 */
export function outputLimit(ratedAmps: number, units: number, multiple: number): number {
  return ratedAmps * units * multiple;
}

/** How a kind of fuse or breaker acts on a short circuit. */
export interface TripCharacteristic {
  /** The standard's own name for it. */
  readonly name: string;
  /** Multiple of the rating at which it acts, whatever the sample. */
  readonly multiple: number;
  /** Longest time that it then takes [s]. */
  readonly withinSeconds: number;
  readonly source: string;
}

const BREAKER = 'IEC 60898-1, upper end of the band of instantaneous tripping; the time from memory';
const MINIATURE_FUSE = 'IEC 60127-2, quick-acting, as reprinted in an article on fuse operating times';

/**
 * Multiples of the rating that make a fuse or breaker act on a short circuit, as choices for the trip multiple of a
 * run.
 *
 * Limits: the bands of breakers hold on alternating current; on direct current their magnetic trip needs about 1.4 to
 * 1.5 times as much (from memory): take the maker's figure. gG covers 16 A to 100 A; smaller ones need less (from
 * memory).
 */
export const TRIP_CHARACTERISTICS: readonly TripCharacteristic[] = [
  { name: 'B', multiple: 5, withinSeconds: 0.1, source: BREAKER },
  { name: 'C', multiple: 10, withinSeconds: 0.1, source: BREAKER },
  { name: 'D', multiple: 20, withinSeconds: 0.1, source: BREAKER },
  {
    name: 'gG', multiple: 7, withinSeconds: 0.4,
    source: 'rounded up from the 5.6 to 6.6 × of gG fuses in BS 7671:2018+A2:2022, Table 41.2, as reprinted',
  },
  { name: 'quick-acting at 4 ×', multiple: 4, withinSeconds: 0.3, source: MINIATURE_FUSE },
  { name: 'quick-acting at 10 ×', multiple: 10, withinSeconds: 0.02, source: MINIATURE_FUSE },
];

/** Factors of B.52.17 for bunched cables, by the most circuits that each holds for. */
const TABLE = [
  [1, 1], [2, 0.8], [3, 0.7], [4, 0.65], [5, 0.6], [6, 0.57], [7, 0.54], [8, 0.52], [9, 0.5], [12, 0.45], [16, 0.41],
  [20, 0.38],
] as const;

/**
 * What a cable carries in a bunch of loaded circuits, as a share of what it carries alone.
 *
 * Between two entries of the table the one for more circuits holds. Above 20, where it ends, `Cg = 1 ÷ √n`, the rule
 * for bunches of mixed sizes, which is on the safe side.
 *
 * @param circuits n, circuits in the bunch, this one among them, 1 or more; those that are not expected to carry more
 *   than 30 % of their grouped rating may be left out
 * @returns Cg; `null` when there are no circuits
 *
 * Limits: bunched in air, on a surface, embedded or enclosed; cables that are spaced carry more.
 *
 * Source: IEC 60364-5-52, Table B.52.17, item 1, from memory, sure; 0.80 at 2 read. 30 %: note to BS 7671, Table 4C1,
 * and regulation 523.5. Mixed sizes: guide to BS 7671:2008, p. 37.
 *
 * @example groupingFactor(3) // 0.7
 * @example groupingFactor(10) // 0.45
 * @example groupingFactor(25) // 0.2
 */
export function groupingFactor(circuits: number): number | null {
  if (circuits < 1) return null;
  return TABLE.find(([most]) => circuits <= most)?.[1] ?? 1 / Math.sqrt(circuits);
}

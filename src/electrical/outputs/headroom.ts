/**
 * Current that is left before a rating.
 *
 * `h = Ir − I`
 *
 * @param ratingAmps Ir, the rating [A], above 0
 * @param currentAmps I, the current [A], 0 or more
 * @returns h [A]; negative when the current is beyond the rating
 *
 * Source: arithmetic.
 *
 * @example headroom(16, 12.5) // 3.5
 */
export function headroom(ratingAmps: number, currentAmps: number): number {
  return ratingAmps - currentAmps;
}

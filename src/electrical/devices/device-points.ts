/**
 * Places that a number of like devices take on their bus branch.
 *
 * `p = n × p1`
 *
 * @param quantity n, how many there are, 0 or more
 * @param pointsEach p1, places that one device takes, usually 1, 0 or more
 * @returns p, places; no devices give 0
 *
 * Source: common practice, no source; on an RS-485 line the places are unit loads, EIA RS-485.
 *
 * @example devicePoints(6, 2) // 12
 */
export function devicePoints(quantity: number, pointsEach: number): number {
  return quantity * pointsEach;
}

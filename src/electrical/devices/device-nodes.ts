/**
 * Places that a number of like devices take on their bus branch.
 *
 * `p = n × p1`
 *
 * @param quantity n, how many there are, 0 or more
 * @param nodesEach p1, nodes that one device counts, usually 1, 0 or more
 * @returns p, nodes; no devices give 0
 *
 * Source: common practice, no source; on an RS-485 line the nodes are unit loads, EIA RS-485.
 *
 * @example deviceNodes(6, 2) // 12
 */
export function deviceNodes(quantity: number, nodesEach: number): number {
  return quantity * nodesEach;
}

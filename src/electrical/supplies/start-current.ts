/** Devices of one row that start together. */
export interface Starting {
  /** How many there are, 0 or more. */
  readonly quantity: number;
  /** What one draws when it runs [A], 0 or more. */
  readonly drawAmps: number;
  /** What one draws when it starts, as far as that lasts above 50 ms [A], 0 or more. */
  readonly inrushAmps: number;
}

/**
 * Current of devices that start all at once, as after a failure of the mains.
 *
 * `I = Σ n × max(In, Ia)`
 *
 * @param rows n, In, Ia of each row
 * @returns I [A]; 0 for no rows
 *
 * Limits: all starts fall together, and every device draws its running current at least.
 *
 * Source: arithmetic; a supply that tries again and again never gets over such a start: common practice, no source.
 *
 * @example startCurrent([{ quantity: 4, drawAmps: 0.5, inrushAmps: 2 }]) // 8
 */
export function startCurrent(rows: readonly Starting[]): number {
  return rows.reduce((sum, { quantity, drawAmps, inrushAmps }) => sum + quantity * Math.max(drawAmps, inrushAmps), 0);
}

/**
 * Peak current when a number of like loads switch on together.
 *
 * `î = n × î1`
 *
 * @param quantity n, how many there are, 0 or more
 * @param inrushEachAmps î1, peak current of one load at switching on [A], 0 or more
 * @returns î [A]; no loads give 0
 *
 * Limits: adds the peaks as if they came at one moment and the line had no impedance, so it errs on the safe side.
 *
 * Source: arithmetic. The inrush of an electronic driver may exceed 100 times its operating current: Lighting Research
 * Center, technical note of 2 March 2011.
 *
 * @example inrushTotal(4, 20) // 80
 */
export function inrushTotal(quantity: number, inrushEachAmps: number): number {
  return quantity * inrushEachAmps;
}

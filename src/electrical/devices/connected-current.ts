/**
 * Current of a number of like devices, all at once.
 *
 * `I = n × i ÷ 1000`
 *
 * @param quantity n, how many there are, 0 or more
 * @param unitDrawMilliamps i, current of one device at nominal voltage [mA], 0 or more
 * @returns I, the connected current [A]; no devices give 0
 *
 * Source: connected load, the sum of the ratings of what is installed; arithmetic.
 *
 * @example connectedCurrent(12, 350) // 4.2
 */
export function connectedCurrent(quantity: number, unitDrawMilliamps: number): number {
  return (quantity * unitDrawMilliamps) / 1000;
}

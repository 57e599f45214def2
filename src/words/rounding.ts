/** The side to which a limit is rounded: what may be used `down`, what is needed at least `up`. */
export type SafeSide = 'down' | 'up';

/** What only the rounding of the arithmetic makes, relative to the figure, as `exceeds` has it. */
const RELATIVE_ROUNDING = 1e-9;

/**
 * Writes a figure with so many decimals: rounded to the nearest, or a limit to its safe side, so that what is written
 * never passes what is true.
 * @param side `down` for what may be used, `up` for what is needed; a figure that differs from a written one by the
 *   rounding of the arithmetic alone is that one: 2.4999999999999996 A left are 2.50 A.
 * @returns digits with a point; never a negative zero.
 */
export function fixed(value: number, decimals: number, side?: SafeSide): string {
  let rounded = Number(value.toFixed(decimals));
  if (side !== undefined) {
    const step = 10 ** -decimals;
    const beyond = side === 'down' ? rounded - value : value - rounded;
    if (beyond > RELATIVE_ROUNDING * Math.max(Math.abs(value), step)) rounded += side === 'down' ? -step : step;
  }
  const text = rounded.toFixed(decimals);
  return /[1-9]/.test(text) ? text : text.replace('-', '');
}

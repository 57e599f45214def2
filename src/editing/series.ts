import type { CellValue } from '../schedule/index.ts';

/** A text that ends in a number: what stands before it, and its digits. */
const NUMBERED = /^(.*?)(\d+)$/s;

/** How values go on: the one so many steps behind the last, or before the first where `step` is negative. */
export type Series = (step: number) => CellValue;

/**
 * How values go on that differ by the same step: 12, 20 goes on with 28, L1-001, L1-003 with L1-005, and before the
 * first with what comes before.
 * @param values in their order; one alone goes on by itself only where `single` says so, by one.
 * @returns `undefined` where they do not go on: they are to be repeated.
 */
export function seriesOf(values: readonly CellValue[], single = false): Series | undefined {
  if (values.length === 0 || (values.length === 1 && !single)) return undefined;
  if (values.every((value) => typeof value === 'number')) return numbers(values);
  const parts = values.map((value) => (typeof value === 'string' ? NUMBERED.exec(value) : null));
  const stem = parts[0]?.[1];
  if (parts.some((part) => part?.[1] !== stem || stem === undefined)) return undefined;
  const digits = parts.map((part) => part![2]!);
  const series = numbers(digits.map(Number));
  return series && ((step) => {
    const number = series(step);
    return number < 0 ? null : `${stem ?? ''}${String(number).padStart(digits[0]!.length, '0')}`;
  });
}

function numbers(values: readonly number[]): ((step: number) => number) | undefined {
  const [first, last] = [values[0]!, values.at(-1)!];
  const by = values.length === 1 ? 1 : (last - first) / (values.length - 1);
  const goesOn = by !== 0 && values.every((value, place) => Math.abs(first + by * place - value) < Math.abs(by) * 1e-9);
  // Without the noise of the last digits: 0.1, 0.2 goes on with 0.3.
  return goesOn ? (step) => Number(((step > 0 ? last : first) + by * step).toPrecision(12)) : undefined;
}

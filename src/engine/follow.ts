import type { CellValue, Rule } from '../schedule/index.ts';
import type { Values } from './argument-reader.ts';

/** Works a rule out for some rows, from the values of each argument in them. @returns those that differ from before. */
export function follow(
  { by, takesUnknown }: Rule, ids: readonly number[], rows: readonly unknown[], values: readonly Values[],
  numbers: Float64Array,
): number[] {
  const work = by as (...values: CellValue[]) => number | string | null;
  const [one, other, third] = values as [Values, Values, Values];
  const count = values.length;
  const differing: number[] = [];
  for (let place = 0; place < ids.length; place += 1) {
    const id = ids[place]!;
    let result: number | string | null = null;
    if (rows[id] !== undefined && (takesUnknown === true || isKnown(values, place))) {
      // Most rules take few values, and are called without a list of them.
      if (count === 1) result = work(one[place]!);
      else if (count === 2) result = work(one[place]!, other[place]!);
      else if (count === 3) result = work(one[place]!, other[place]!, third[place]!);
      else result = work(...values.map((each) => each[place]!));
    }
    // Adding 0 makes zero of a negative zero.
    const number = typeof result === 'number' && Number.isFinite(result) ? result + 0 : NaN;
    if (!Object.is(numbers[id], number)) differing.push(id);
    numbers[id] = number;
  }
  return differing;
}

function isKnown(values: readonly Values[], place: number): boolean {
  for (const each of values) if (Number.isNaN(each[place] ?? NaN)) return false;
  return true;
}

import { COMPARED, type Results } from './operation.ts';

/** Share by which a sum may differ, as the order in which it is added up does. */
const TOLERANCE = 1e-9;

/**
 * Holds a candidate's figures against the reference.
 * @throws Error that names the first figure that differs: a fast wrong answer is no answer.
 */
export function compare(who: string, found: Results, expected: Results): void {
  for (const sheet of Object.keys(COMPARED) as (keyof Results)[]) {
    if (found[sheet].length !== expected[sheet].length) {
      throw new Error(`${who}: ${sheet} has ${found[sheet].length} rows, expected ${expected[sheet].length}.`);
    }
    expected[sheet].forEach((row, at) => row.forEach((value, place) => {
      const got = found[sheet][at]![place]!;
      const same = typeof value === 'number' && typeof got === 'number'
        ? Math.abs(got - value) <= TOLERANCE * Math.max(1, Math.abs(value)) : got === value;
      if (same) return;
      const key = COMPARED[sheet][place]!;
      throw new Error(`${who}: ${sheet} row ${at + 1} ${key} is ${String(got)}, expected ${String(value)}.`);
    }));
  }
}

import type { SheetName } from '../schedule/index.ts';
import { dependentsOf, type Dependent } from './schema-rules.ts';

/** A column that formulas of a person stand in, and a column that they read. */
export interface ColumnLink {
  readonly from: { readonly sheet: SheetName; readonly key: string };
  readonly into: { readonly sheet: SheetName; readonly key: string };
}

/**
 * Whether a formula in column `into` that reads column `from` would read a total that its own cell feeds. Totals are
 * gathered outside the formula engine, which therefore cannot see such a loop. It is judged by columns, so a few
 * formulas are refused that would not loop.
 * @param links what the formulas of persons read already.
 */
export function readsOwnTotal(link: ColumnLink, links: readonly ColumnLink[]): boolean {
  const name = (column: { sheet: SheetName; key: string }) => `${column.sheet}.${column.key}`;
  const end = name(link.from);
  const seen = new Set<string>();
  const waiting = [{ ...link.into, summed: false }];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (next.summed && name(next) === end) return true;
    const typed = links.filter(({ from }) => name(from) === name(next))
      .map(({ into }): Dependent => ({ ...into, summed: false }));
    for (const dependent of [...dependentsOf(next.sheet, next.key), ...typed]) {
      const step = { sheet: dependent.sheet, key: dependent.key, summed: next.summed || dependent.summed };
      const state = `${name(step)} ${step.summed}`;
      if (!seen.has(state)) waiting.push(step);
      seen.add(state);
    }
  }
  return false;
}

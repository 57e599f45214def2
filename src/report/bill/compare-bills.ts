import type { Bill, BillItem } from './bill.ts';

/** An item of which a newer bill has more or less, or for which it asks another amount. */
export interface BillChange extends Pick<BillItem, 'key' | 'panel' | 'kind' | 'item' | 'unit'> {
  /** As far as they are known; 0 where the bill has no such item. */
  readonly before: number;
  readonly after: number;
  /** Above 0 where more is needed. */
  readonly difference: number;
  /** What the amount has become more by, as by a new price; `null` where one of the two is not known. */
  readonly amount: number | null;
}

/**
 * What a newer bill has more and less than an older one, key by key; part numbers do not matter.
 * @param by `items`: panel by panel, where what moved to another panel is less in one and more in the other; `inAll`:
 *   of all panels together.
 */
export function compareBills(older: Bill, newer: Bill, by: 'items' | 'inAll' = 'items'): BillChange[] {
  const [before, after] = [sums(older[by]), sums(newer[by])];
  return [...new Map([...after, ...before])].flatMap(([place, { key, panel, kind, item, unit }]): BillChange[] => {
    const [was, is] = [before.get(place) ?? NONE, after.get(place) ?? NONE];
    const [difference, amount] = [less(is.quantity, was.quantity)!, less(is.amount, was.amount)];
    return difference === 0 && (amount === 0 || (is.amount === null && was.amount === null)) ? []
      : [{ key, panel, kind, item, unit, before: was.quantity, after: is.quantity, difference, amount }];
  });
}

interface Sum extends Pick<BillItem, 'key' | 'panel' | 'kind' | 'item' | 'unit' | 'amount'> {
  readonly quantity: number;
}

const NONE = { quantity: 0, amount: 0 };

function less(one: number | null, other: number | null): number | null {
  return one === null || other === null ? null : Number((one - other).toPrecision(12));
}

function sums(items: readonly BillItem[]): Map<string, Sum> {
  const byKey = new Map<string, Sum>();
  for (const item of items) {
    const key = JSON.stringify([item.panel, item.key, item.unit]);
    const { quantity, amount } = byKey.get(key) ?? NONE;
    byKey.set(key, {
      ...item, quantity: quantity + (item.quantity ?? 0),
      amount: amount === null || item.amount === null ? null : amount + item.amount,
    });
  }
  return byKey;
}

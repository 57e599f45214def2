import type { Bill, BillItem } from './bill.ts';

/** An item of which a newer bill has more or less. */
export interface BillChange extends Pick<BillItem, 'panel' | 'kind' | 'item' | 'unit'> {
  /** As far as they are known; 0 where the bill has no such item. */
  readonly before: number;
  readonly after: number;
  /** Above 0 where more is needed. */
  readonly difference: number;
}

/** What a newer bill has more and less than an older one, panel by panel; part numbers and prices do not matter. */
export function compareBills(older: Bill, newer: Bill): BillChange[] {
  const [before, after] = [sums(older), sums(newer)];
  return [...new Map([...after, ...before])].flatMap(([key, { panel, kind, item, unit }]): BillChange[] => {
    const [was, is] = [before.get(key)?.quantity ?? 0, after.get(key)?.quantity ?? 0];
    const difference = Number((is - was).toPrecision(12));
    return difference === 0 ? [] : [{ panel, kind, item, unit, before: was, after: is, difference }];
  });
}

function sums({ items }: Bill): Map<string, BillItem> {
  const byKey = new Map<string, BillItem>();
  for (const item of items) {
    const key = JSON.stringify([item.panel, item.kind, item.item, item.unit]);
    byKey.set(key, { ...item, quantity: (byKey.get(key)?.quantity ?? 0) + (item.quantity ?? 0) });
  }
  return byKey;
}

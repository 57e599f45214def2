import { message, type Words } from '../../words/index.ts';
import type { Bill, BillItem, BillKind } from './bill.ts';
import { compareBills, type BillChange } from './compare-bills.ts';

const KINDS: Readonly<Record<BillKind, string>> = {
  device: message('Device'), supply: message('Supply'), way: message('Way'), module: message('Module'),
  enclosure: message('Enclosure'), conductor: message('Cable'),
};
const UNITS: Readonly<Record<BillItem['unit'], string>> = { pcs: message('pcs'), m: message('m') };

/** Kind of an item in the language of a person. */
export function kindText(kind: BillKind, words: Words): string {
  return words.say(KINDS[kind]);
}

/** Unit of an item in the language of a person. */
export function unitText(unit: BillItem['unit'], words: Words): string {
  return words.say(UNITS[unit]);
}

/** A table of a bill: numbers are numbers, what is not known is `null`. */
export interface BillTable {
  readonly title: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
  /** Places of the columns whose product the amount is: quantity and price; and that of the amount. */
  readonly product?: readonly [quantity: number, price: number, amount: number];
}

/**
 * A bill as tables, for files: by panel, in all, and what is more or less than in an older one.
 * @param older the older bill; without it there are no such tables
 */
export function billTables(
  bill: Bill, older: Bill | undefined, words: Words,
): Readonly<Record<'byPanel' | 'inAll', BillTable> & Partial<Record<'changes' | 'changesInAll', BillTable>>> {
  const { items, inAll } = bill;
  const [key, panel, kind, item] = [words.say('Key'), words.say('Panel'), words.say('Item kind'), words.say('Item')];
  const [quantity, unit] = [words.say('Quantity'), words.say('Unit')];
  const headings = [
    panel, key, kind, item, quantity, unit, words.say('Part number'), words.say('Price'), words.say('Amount'), words.say('Why'),
  ];
  const row = (each: BillItem) => [
    each.panel ?? '', each.key, kindText(each.kind, words), each.item, each.quantity, unitText(each.unit, words),
    each.partNumber ?? '', each.price, each.amount, each.why,
  ];
  const changeHeadings = [
    panel, key, kind, item, words.say('Before'), words.say('After'), words.say('Difference'), unit, words.say('Amount more by'),
  ];
  const changeRow = (each: BillChange) => [
    each.panel ?? '', each.key, kindText(each.kind, words), each.item, each.before, each.after, each.difference,
    unitText(each.unit, words), each.amount,
  ];
  return {
    byPanel: { title: words.say('Bill of quantities'), headings, rows: items.map(row), product: [4, 7, 8] },
    inAll: {
      title: words.say('All panels'), headings: headings.slice(1), rows: inAll.map((each) => row(each).slice(1)),
      product: [3, 6, 7],
    },
    ...older === undefined ? {} : {
      changes: {
        title: words.say('More and less'), headings: changeHeadings, rows: compareBills(older, bill).map(changeRow),
      },
      changesInAll: {
        title: words.say('More and less in all'), headings: changeHeadings.slice(1),
        rows: compareBills(older, bill, 'inAll').map((each) => changeRow(each).slice(1)),
      },
    },
  };
}

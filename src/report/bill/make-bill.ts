import { rowNames } from '../../allocation/index.ts';
import { panelNames } from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { grouped } from '../../schedule/index.ts';
import { fixed, metres, roundedUp, type Words } from '../../words/index.ts';
import { billEntries, type BillEntry } from './bill-entries.ts';
import { ALLOWANCE, type Bill, type BillItem, type BillOptions, type BillSum } from './bill.ts';

/**
 * The bill of quantities of a schedule: what it lists, by panel and in all, with what is entered of it for ordering.
 *
 * Devices count by type, in metres where it is counted by the metre; supplies by their units, those kept as a spare
 * too; ways, relay modules and enclosures as they are listed; cables in metres of one pair of a conductor, each run as
 * often as it has pairs, rounded up to a decimetre, so never less than the lengths together; types of cable have the
 * allowance too. Nothing that is not known is counted: rows without a quantity or a length are named beside it.
 *
 * Limits: terminals, mains ways, wire within panels and fixings are not in it.
 */
export function makeBill(schedule: LoadSchedule, { allowance = ALLOWANCE, panel }: BillOptions = {}): Bill {
  const { words } = schedule;
  const entries = billEntries(schedule).filter((entry) => panel === undefined || entry.panel === panel);
  const items = panelsOf(schedule, entries).flatMap((name) =>
    itemsOf(entries.filter((entry) => entry.panel === name), allowance, words));
  // What is rounded up by panel is added up, so that the panels together come to all.
  const inAll = itemsOf(entries.map((entry) => ({ ...entry, panel: null })), allowance, words).map((item) => {
    const quantity = sumOf(items.filter((each) => keyOf(each) === keyOf(item)).map((each) => each.quantity));
    return { ...item, quantity, amount: amountOf(quantity, item.price) };
  });
  const sums = [...new Set(items.map((item) => item.panel))].map((name) =>
    sumUp(name, items.filter((item) => item.panel === name)));
  return { items, inAll, sums: [...sums, sumUp(null, inAll)] };
}

/** Panels of which the bill has something, in their order, then none. */
function panelsOf(schedule: LoadSchedule, entries: readonly BillEntry[]): (string | null)[] {
  const said = new Set(entries.map(({ panel }) => panel));
  return [...panelNames(schedule), null].filter((name) => said.has(name));
}

const keyOf = ({ key, unit, partNumber, price }: BillEntry | BillItem) =>
  JSON.stringify([key, unit, partNumber, price]);

/** Items of one panel, or of all, each kind in order of its names. */
function itemsOf(entries: readonly BillEntry[], allowance: number, words: Words): BillItem[] {
  const kinds = [...new Set(entries.map(({ kind }) => kind))];
  return [...grouped(entries, keyOf).values()].map((members) => itemOf(members, allowance, words)).sort((a, b) =>
    kinds.indexOf(a.kind) - kinds.indexOf(b.kind) || a.item.localeCompare(b.item, words.language, { numeric: true }));
}

function itemOf(members: readonly BillEntry[], allowance: number, words: Words): BillItem {
  const { key, panel, kind, item, unit, isCable, partNumber, price } = members[0]!;
  const known = members.filter(({ quantity }) => quantity !== null);
  const unknown = members.filter(({ quantity }) => quantity === null);
  const sum = sumOf(members.map(({ quantity }) => quantity));
  const quantity = sum === null || !isCable ? sum : Number(fixed(sum * (1 + allowance), 1, 'up'));
  const gone = known.filter(({ isGone }) => isGone);
  const why = [
    ...known.length === 0 ? [] : [reasonOf(known, sum!, allowance, words)],
    ...gone.length === 0 ? [] : [words.say('Still in it, although their list no longer has them: {rows}.', {
      rows: rowNames(gone, words),
    })],
    ...unknown.length === 0 ? [] : [kind === 'conductor'
      ? words.say('Not in it, as the length is not known: {rows}. Enter their length.', { rows: rowNames(unknown, words) })
      : words.say('Not in it, as the quantity is not known: {rows}. Enter their quantity.', {
        rows: rowNames(unknown, words),
      })],
  ].join(' ');
  return {
    key, panel, kind, item, quantity, unit, partNumber, price, amount: amountOf(quantity, price),
    unknownRows: unknown.length, why,
  };
}

function reasonOf(known: readonly BillEntry[], sum: number, allowance: number, words: Words): string {
  const { kind, unit, isCable } = known[0]!;
  const rows = rowNames(known, words);
  const count = known.length;
  const length = {
    count, rows, length: roundedUp(metres(sum)), allowance: isCable && allowance !== 0 ? 'some' : 'none',
    added: Math.round(allowance * 1000) / 10,
  };
  switch (kind) {
    case 'device': return unit === 'm' ? words.say(
      '{count, plural, one {# device row} other {# device rows}} of {length} in all{allowance, select, none {} other {, and {added} % more}}: {rows}.',
      length
    ) : words.say('Sum over {count, plural, one {# device row} other {# device rows}}: {rows}.', { count, rows });
    case 'supply': return words.say('Units of the rails {rows}, those kept as a spare too.', { rows });
    case 'conductor': return words.say(
      '{count, plural, one {# run} other {# runs}} of {length} in all, length × pairs each{allowance, select, none {} other {, and {added} % more}}: {rows}. In metres of one pair; of single cores it takes twice as much.',
      length
    );
    default: return words.say('As listed: {rows}.', { rows });
  }
}

/** The sum of what is known; `null` where nothing is. */
function sumOf(quantities: readonly (number | null)[]): number | null {
  const known = quantities.filter((quantity) => quantity !== null);
  // Decimal metres add up to a rounding that nobody wants to read.
  return known.length === 0 ? null : Number(known.reduce((sum, quantity) => sum + quantity, 0).toPrecision(12));
}

function amountOf(quantity: number | null, price: number | null): number | null {
  return quantity === null || price === null ? null : Number((quantity * price).toPrecision(12));
}

function sumUp(panel: string | null, items: readonly BillItem[]): BillSum {
  return {
    panel, amount: sumOf(items.map(({ amount }) => amount)) ?? 0,
    without: items.filter(({ amount }) => amount === null).length,
  };
}

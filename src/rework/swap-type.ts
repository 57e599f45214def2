import { numberOf } from '../engine/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import {
  inputColumns, setCells, tagOf, type CellEdit, type Change, type Row, type ScheduleDocument,
} from '../schedule/index.ts';

/** Which device rows are to have another type. */
export interface TypeSwap {
  /** Tag of the type that they have. */
  readonly from: string;
  /** Tag of the type that they are to have. */
  readonly to: string;
  /** Ids of the device rows among which those of the type are meant; all of the schedule unless said otherwise. */
  readonly among?: readonly number[] | undefined;
  /** Keys of own values that go, so that the rows follow the new type; others stay. See `ownOfType`. */
  readonly drop: readonly string[];
}

/** Keys of values that a device row takes from its type where it has none of its own: its unit draw, its diversity. */
export const TYPE_VALUES: readonly string[] = inputColumns('devices')
  .filter(({ derived }) => derived?.of.some((path) => path.startsWith('type.')) === true).map(({ key }) => key);

/** The device rows that a swap is for, in their order. */
export function rowsToSwap(document: ScheduleDocument, { from, among }: Pick<TypeSwap, 'from' | 'among'>): Row[] {
  const meant = among && new Set(among);
  return document.rows('devices').filter(({ id, cells }) => cells.type === from && meant?.has(id) !== false);
}

/** How many of some device rows have a value of their own where they could follow their type, by key. */
export function ownOfType(rows: readonly Row[]): Map<string, number> {
  const isOwn = (key: string) => ({ cells }: Row) => (cells[key] ?? null) !== null;
  const counts = TYPE_VALUES.map((key) => [key, rows.filter(isOwn(key)).length] as const);
  return new Map(counts.filter(([, count]) => count > 0));
}

/**
 * Changes that give device rows another type.
 * @throws RangeError where no type has the tag `to`.
 */
export function swapType(document: ScheduleDocument, swap: TypeSwap): Change[] {
  if (!document.rows('types').some((row) => tagOf('types', row) === swap.to)) {
    throw new RangeError(`There is no type “${swap.to}”.`);
  }
  return setCells(document, rowsToSwap(document, swap).flatMap(({ id }): CellEdit[] => [
    { sheet: 'devices', id, key: 'type', value: swap.to },
    ...swap.drop.map((key) => ({ sheet: 'devices' as const, id, key, value: null })),
  ]));
}

/** What device rows come to in all; `null` where it is not known of all of them. */
export interface DeviceSums {
  /** Device rows. */
  readonly rows: number;
  /** Number of devices, or metres of what is counted by the metre. */
  readonly qty: number | null;
  /** [A] */
  readonly connected: number | null;
  /** [A] */
  readonly demand: number | null;
  readonly nodes: number | null;
  /** In the currency of the office. */
  readonly price: number | null;
}

/** What device rows come to in all: quantity, currents, nodes, and their price by that of their types. */
export function sumDevices(schedule: LoadSchedule, ids: readonly number[]): DeviceSums {
  const sum = (of: (id: number) => number | null) => ids.reduce<number | null>((all, id) => {
    const value = of(id);
    return all === null || value === null ? null : all + value;
  }, 0);
  const read = (key: string) => (id: number) => numberOf(schedule, 'devices', id, key);
  const price = (id: number) => {
    const [type, qty] = [schedule.target('devices', id, 'type'), read('qty')(id)];
    const one = type < 0 ? null : numberOf(schedule, 'types', type, 'price');
    return one === null || qty === null ? null : one * qty;
  };
  return {
    rows: ids.length, qty: sum(read('qty')), connected: sum(read('connected')), demand: sum(read('demand')),
    nodes: sum(read('nodes')), price: sum(price),
  };
}

import { tagOf } from '../../src/schedule/index.ts';
import type { Served, SharedSheet, Sharing } from '../../src/allocation/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';

/** The column of the devices that names what is shared. */
export const KEY_OF = { branches: 'branch', supplies: 'rail' } as const;

/** One branch or supply, before and after. */
export interface FillLine {
  readonly tag: string;
  /** What a supply is for; `null` where that is not known, and for branches. */
  readonly serves: Served | null;
  readonly isNew: boolean;
  /** Nodes or amperes up to which it is shared out; `null` when not known. */
  readonly capacity: number | null;
  /** What its figures are held against: the limit of a branch, whose reserve stands apart; else what it may carry. */
  readonly limit: number | null;
  readonly before: number | null;
  /** `null` where what stays is not known. */
  readonly after: number | null;
  /** Sign before what follows from a partial total. */
  readonly sign: string;
  /** Device rows that come, and that go. */
  readonly coming: number;
  readonly going: number;
}

/** A device row, or a part of it, that gets another place. */
export interface Move {
  readonly ref: string;
  readonly type: string;
  readonly qty: number | null;
  readonly from: string;
  readonly to: string;
}

/**
 * Every branch or supply that carries devices before or after.
 * @param extension share for extension by which the capacities of the sharing are less than what may be carried.
 */
export function fillLines(
  schedule: LoadSchedule, sharing: Sharing, moves: readonly Move[], extension: number,
): FillLine[] {
  const { over, fillings, added } = sharing;
  const byTag = new Map(fillings.map((filling) => [filling.tag, filling]));
  const rows = schedule.rows(over).flatMap((row): FillLine[] => {
    const tag = tagOf(over, row);
    const figure = (key: string) => numeric(schedule.value(over, row.id, key));
    const before = figure(over === 'branches' ? 'nodes' : 'demand');
    const filling = byTag.get(tag);
    if (filling === undefined && (before ?? 0) === 0) return [];
    byTag.delete(tag);
    const capacity = filling === undefined ? capacityOf(over, figure, before) : filling.capacity;
    const sign = schedule.partialSign(over, row.id, over === 'branches' ? 'nodes' : 'demand');
    const limit = over === 'branches' ? figure('limit')
      : capacity === null || filling === undefined ? capacity : capacity * (1 + extension);
    return [lineOf(tag, filling?.serves ?? null, false, capacity, limit, before, filling, sign)];
  });
  return [...rows, ...[...byTag.values()].map((filling) => {
    const like = added.find(({ tag }) => tag === filling.tag)?.like ?? -1;
    const limit = over === 'branches' && like >= 0 ? numeric(schedule.value(over, like, 'limit'))
      : filling.capacity === null ? null : filling.capacity * (1 + extension);
    return lineOf(filling.tag, filling.serves, true, filling.capacity, limit, 0, filling);
  })];

  function lineOf(
    tag: string, serves: Served | null, isNew: boolean, capacity: number | null, limit: number | null,
    before: number | null,
    filling: { kept: number; placed: number } | undefined, sign = '',
  ): FillLine {
    const after = (filling?.kept ?? 0) + (filling?.placed ?? 0);
    const number = (side: 'from' | 'to') => moves.filter((move) => move[side] === tag).length;
    return {
      tag, serves, isNew, capacity, limit, before, sign, after: Number.isFinite(after)
        ? after : null, coming: number('to'), going: number('from'),
    };
  }
}

/** What a branch or supply may carry, from what is left of it. */
function capacityOf(over: SharedSheet, figure: (key: string) => number | null, before: number | null): number | null {
  const left = figure(over === 'branches' ? 'free' : 'spare');
  return left === null || before === null ? null : left + before;
}

/** What gets another place, in the order of the rows; what is left out of the sharing loses its place. */
export function movesOf(schedule: LoadSchedule, { over, placements, leftOut }: Sharing): Move[] {
  const key = KEY_OF[over];
  const textOf = (id: number, column: string) => {
    const value = schedule.value('devices', id, column);
    return typeof value === 'string' ? value : '';
  };
  const move = (id: number, qty: number | null, to: string): Move =>
    ({ ref: textOf(id, 'ref'), type: textOf(id, 'type'), qty, from: textOf(id, key), to });
  return [
    ...placements.map(({ id, tag, qty }) => move(id, qty, tag)),
    ...leftOut.filter(({ code }) => code !== 'takes-none').map(({ id, qty }) => move(id, qty, '')),
  ].filter(({ from, to }) => from !== to);
}

function numeric(value: unknown): number | null {
  return typeof value === 'number' ? value : null;
}

import type { LoadSchedule } from '../../../src/load-schedule.ts';
import type { SheetName } from '../../../src/schedule/index.ts';
import type { Words } from '../../../src/words/index.ts';
import type { Grouping } from '../../events/index.ts';
import { numberAt } from '../../look/index.ts';
import { groupName, rowLine, type GroupedBy, type HeadingLine, type Line } from './line.ts';
import { rowsInSight } from './sight.ts';
import type { Sight } from './sight-type.ts';

/** What decides on the lines of a sheet. */
export interface LinesOf {
  readonly schedule: LoadSchedule;
  readonly sheet: SheetName;
  readonly grouping: Grouping;
  readonly sight: Sight;
  /** Names of the groups that are folded. */
  readonly folded: ReadonlySet<string>;
  readonly words: Words;
  /** Whether a blank line ends the list, in which a person adds a row. */
  readonly canAdd: boolean;
}

/** The lines of a grid, and the rows that are out of sight: what is new comes in sight, whatever it holds. */
export interface Lines {
  readonly lines: readonly Line[];
  /** Ids of the rows in sight, in their order. */
  readonly seen: readonly number[];
  readonly unseen: ReadonlySet<number>;
}

const NONE: ReadonlySet<number> = new Set();
/** The group of rows that name none, or have no area. */
const NO_ROW = -1;

/**
 * The lines of a sheet: its rows in sight in their order, or gathered under a heading for each supply, branch, way, run
 * or type, in the order of that sheet, or for each area, in that in which they come first; last those that name none.
 * Where rows are sorted, groups are too: by what their rows add up to, or else by the row that comes first.
 */
export function buildLines(of: LinesOf): Lines {
  const { schedule, sheet, sight, words } = of;
  const seen = groupsSorted(of, rowsInSight(schedule, sheet, sight, words));
  return { lines: linesOf(of, seen), seen, unseen: idsBeside(schedule.document.rows(sheet), seen) };
}

/** Ids of the rows that are not in sight. */
function idsBeside(rows: readonly { readonly id: number }[], seen: readonly number[]): ReadonlySet<number> {
  if (seen.length === rows.length) return NONE;
  const inSight = new Set(seen);
  const beside = new Set<number>();
  for (const { id } of rows) if (!inSight.has(id)) beside.add(id);
  return beside;
}

/**
 * The lines after an action: rows that were out of sight stay there and others in it, in their order, until a person
 * asks anew, so that nothing goes from under their hands. The very lines given where they still hold.
 * @param before lines of the same sheet, grouping and sight.
 */
export function linesAfter(before: Lines, of: LinesOf): Lines {
  const { schedule: { document }, sheet, sight, grouping } = of;
  const rows = document.rows(sheet);
  // Rows as entered are compared without a list of them, as this happens at every edit.
  const isSame = before.unseen.size === 0 && rows.length === before.seen.length
    && (sight.sort === undefined ? rows.every(({ id }, at) => before.seen[at] === id)
      : before.seen.every((id) => document.row(sheet, id) !== undefined));
  if (isSame && grouping === 'entered') return before;
  const unseen = before.unseen.size === 0 ? NONE
    : new Set([...before.unseen].filter((id) => document.row(sheet, id) !== undefined));
  const visible = rows.map(({ id }) => id).filter((id) => !unseen.has(id));
  const seen = isSame ? before.seen : sight.sort === undefined ? visible : inOrderOf(before.seen, visible);
  const lines = linesOf(of, seen);
  return { lines: sameLines(before.lines, lines) ? before.lines : lines, seen, unseen };
}

/** Lines with one more row in sight, in its place in the document where rows are not sorted. */
export function linesWith(before: Lines, id: number, of: LinesOf): Lines {
  return linesAfter({ ...before, unseen: new Set([...before.unseen].filter((each) => each !== id)) }, of);
}

/** Rows in an order that some of them have; each other one comes behind the one before it in the document. */
function inOrderOf(order: readonly number[], ids: readonly number[]): number[] {
  const [there, known] = [new Set(ids), new Set(order)];
  const behind = new Map<number, number[]>();
  let last = -1;
  for (const id of ids) {
    if (known.has(id)) last = id;
    else behind.set(last, [...behind.get(last) ?? [], id]);
  }
  return [
    ...behind.get(-1) ?? [], ...order.filter((id) => there.has(id)).flatMap((id) => [id, ...behind.get(id) ?? []]),
  ];
}

function linesOf(of: LinesOf, seen: readonly number[]): Line[] {
  const { grouping, sheet, canAdd } = of;
  const lines: Line[] = grouping === 'entered' || sheet !== 'devices'
    ? seen.map(rowLine) : groupedLines(of, seen, grouping);
  if (canAdd) lines.push({ kind: 'blank' });
  return lines;
}

const SHEETS: Readonly<Partial<Record<GroupedBy, SheetName>>> = {
  rail: 'supplies', branch: 'branches', way: 'ways', run: 'runs', type: 'types',
};
/** A group of these is shown although no row is in it: a person works on each of them. */
const SHOWN_EMPTY: ReadonlySet<GroupedBy> = new Set(['rail', 'branch']);

/** Columns of devices of which the figures of a group have a sum that says something. */
const ADDED: ReadonlySet<string> = new Set(['qty', 'nodes', 'connected', 'demand']);

/** Sorted rows with those of one group together: the group that comes to most before or behind the others. */
function groupsSorted(of: LinesOf, seen: readonly number[]): readonly number[] {
  const { schedule, sheet, sight: { sort }, grouping } = of;
  if (sheet !== 'devices' || grouping === 'entered' || sort === undefined || !ADDED.has(sort.key)) return seen;
  const groups = new Map<number | string, { sum: number; members: number[] }>();
  for (const id of seen) {
    const name = groupKey(schedule, grouping, id);
    let group = groups.get(name);
    if (group === undefined) groups.set(name, group = { sum: 0, members: [] });
    group.members.push(id);
    group.sum += numberAt(schedule, { sheet, id, key: sort.key }) ?? 0;
  }
  const turn = sort.down ? -1 : 1;
  return [...groups.values()].sort((one, other) => turn * (one.sum - other.sum)).flatMap(({ members }) => members);
}

/** What a device row has in common with those of its group: the id of a row, -1 for none, or its area. */
function groupKey(schedule: LoadSchedule, by: GroupedBy, id: number): number | string {
  if (by === 'area') return String(schedule.document.row('devices', id)!.cells.area ?? '').trim() || NO_ROW;
  const target = schedule.target('devices', id, by === 'way' ? 'run' : by);
  return by === 'way' && target >= 0 ? schedule.target('runs', target, 'way') : target;
}

function groupedLines({ schedule, folded, sight }: LinesOf, seen: readonly number[], by: GroupedBy): Line[] {
  const { document } = schedule;
  const sheet = SHEETS[by];
  const groups = new Map<number | string, { readonly members: number[]; all: number }>();
  // What a row belongs to is asked for once.
  const of = new Map<number, { readonly members: number[]; all: number }>();
  const groupOf = (key: number | string) => {
    let group = groups.get(key);
    if (group === undefined) groups.set(key, group = { members: [], all: 0 });
    return group;
  };
  const join = (id: number) => {
    const group = groupOf(groupKey(schedule, by, id));
    of.set(id, group);
    return group;
  };
  if (sight.sort !== undefined) for (const id of seen) join(id);
  for (const { id } of sheet === undefined ? [] : document.rows(sheet)) groupOf(id);
  for (const { id } of document.rows('devices')) (of.get(id) ?? join(id)).all += 1;
  for (const id of seen) of.get(id)!.members.push(id);
  const isNarrow = seen.length < document.rows('devices').length;
  const rest = groups.get(NO_ROW);
  groups.delete(NO_ROW);
  if (rest !== undefined) groups.set(NO_ROW, rest);
  return [...groups].flatMap(([key, { members, all }]): Line[] => {
    const [id, text] = typeof key === 'number' ? [key, ''] : [NO_ROW, key];
    if (members.length === 0 && (isNarrow || id < 0 || !SHOWN_EMPTY.has(by))) return [];
    const named = { by, id, text };
    const heading: HeadingLine = {
      ...named, kind: 'heading', sheet: sheet ?? 'devices', members, all, folded: folded.has(groupName(named)),
    };
    return [heading, ...heading.folded ? [] : members.map(rowLine)];
  });
}

function sameLines(some: readonly Line[], others: readonly Line[]): boolean {
  return some.length === others.length && some.every((line, index) => {
    const other = others[index]!;
    if (line.kind === 'heading') return other.kind === 'heading' && sameHeading(line, other);
    // A row has one line.
    return line === other || (line.kind === 'blank' && other.kind === 'blank');
  });
}

const sameHeading = (one: HeadingLine, other: HeadingLine): boolean =>
  groupName(one) === groupName(other) && one.all === other.all && one.folded === other.folded
  && one.members.length === other.members.length && one.members.every((id, at) => id === other.members[at]);

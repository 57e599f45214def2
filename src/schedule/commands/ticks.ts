import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import { inputColumns, SHEET_NAMES, type CellValue, type SheetName, type Tick } from '../schema/index.ts';
import type { Cells } from '../snapshot.ts';
import { setCells } from './set-cells.ts';

/** A tick of a sheet, with the key of its column. */
export interface KeyedTick extends Tick {
  readonly key: string;
}

const TICKS = new Map(SHEET_NAMES.map((sheet): [SheetName, readonly KeyedTick[]] =>
  [sheet, inputColumns(sheet).flatMap(({ key, tick }) => tick === undefined ? [] : [{ key, ...tick }])]));

/** The ticks of a sheet; none of most of them. */
export const ticksOf = (sheet: SheetName): readonly KeyedTick[] => TICKS.get(sheet)!;

/** What a tick says was carried out: what its cells hold, in their order, such as `F1:2 · F1 L+ · R1 · 1 · –`. */
export const recordOf = ({ of }: Tick, cells: Cells): string =>
  of.map((key) => cells[key] ?? null).map((value) => value === null || value === '' ? '–' : String(value)).join(' · ');

/** Whether a row is ticked and holds what it was ticked for. */
export const isTickedAsIs = (tick: KeyedTick, cells: Cells): boolean =>
  cells[tick.key] === true && cells[tick.as] === recordOf(tick, cells);

/** Whether a row is ticked and what it was ticked for is something else than it holds now. */
export const isTickedOtherwise = (tick: KeyedTick, cells: Cells): boolean => cells[tick.key] === true
  && typeof cells[tick.as] === 'string' && cells[tick.as] !== recordOf(tick, cells);

/** Who makes a tick, and when, YYYY-MM-DD. */
export interface TickedBy {
  readonly by: string;
  readonly on: string;
}

/** Changes that tick a row for what it holds now, anew where it was; `null` takes the tick back, with all of it. */
export function setTick(
  document: ScheduleDocument, sheet: SheetName, id: number, tick: KeyedTick, mark: TickedBy | null,
): Change[] {
  const cells = document.row(sheet, id)!.cells;
  const values: Readonly<Record<string, CellValue>> = mark === null
    ? { [tick.key]: null, [tick.by]: null, [tick.on]: null, [tick.as]: null }
    : { [tick.key]: true, [tick.by]: mark.by, [tick.on]: mark.on, [tick.as]: recordOf(tick, cells) };
  return setCells(document, Object.entries(values).map(([key, value]) => ({ sheet, id, key, value })));
}

/**
 * Changes in which each tick keeps what it was made for, and who and when go where it is taken back. What an action
 * fills in of these itself stays.
 */
export function withTicks(document: ScheduleDocument, changes: readonly Change[]): Change[] {
  const rows = new Map<SheetName, Map<number, Record<string, CellValue>>>();
  for (const change of changes) {
    if (change.op !== 'set' || ticksOf(change.sheet).length === 0) continue;
    let those = rows.get(change.sheet);
    if (those === undefined) rows.set(change.sheet, those = new Map<number, Record<string, CellValue>>());
    those.set(change.id, { ...those.get(change.id), [change.key]: change.value });
  }
  const more = [...rows].flatMap(([sheet, those]) => [...those].flatMap(([id, set]): Change[] => {
    const before = document.row(sheet, id)?.cells ?? {};
    return Object.entries(filledIn(sheet, before, set)).filter(([key, value]) => (before[key] ?? null) !== value)
      .map(([key, value]) => ({ op: 'set', sheet, id, key, value }));
  }));
  const done = changes.map((change): Change => {
    if (change.op !== 'insert' || ticksOf(change.sheet).length === 0) return change;
    const { sheet } = change;
    const rows = change.rows.map((row) => ({ ...row, cells: { ...row.cells, ...filledIn(sheet, {}, row.cells) } }));
    return { ...change, rows };
  });
  return [...done, ...more];
}

/** What an action that sets cells of a row has to set beside them. */
function filledIn(sheet: SheetName, before: Cells, set: Cells): Record<string, CellValue> {
  const cells = { ...before, ...set };
  const more: Record<string, CellValue> = {};
  for (const tick of ticksOf(sheet)) {
    if (!(tick.key in set) || set[tick.key] === (before[tick.key] ?? null)) continue;
    if (set[tick.key] === true) {
      if (typeof set[tick.as] !== 'string') more[tick.as] = recordOf(tick, cells);
    } else if (before[tick.key] === true) {
      for (const key of [tick.by, tick.on, tick.as]) if (!(key in set)) more[key] = null;
    }
  }
  return more;
}

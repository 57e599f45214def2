import { numberOf, panelOf, textOf } from '../../engine/index.ts';
import { rowsInFormulas, tagOf } from '../../schedule/index.ts';
import type { Figures, LeftOut, LeftOutCode, Placement, SharedSheet, ShareRow } from './sharing-problem.ts';

/** A device row on its way into a sharing. */
export interface DeviceRow {
  /** Place of the row in the sheet, from 0. */
  readonly row: number;
  readonly id: number;
  readonly ref: string | null;
  readonly area: string | null;
  readonly qty: number | null;
  /** A formula works on it, or works out its quantity, so that it is not split. */
  readonly inFormula: boolean;
  /** Id of what it is on now; -1 for nothing. */
  readonly on: number;
  /** The panel that it belongs to: of what is shared where it is on one, else of the other; `null` for none. */
  readonly panel: string | null;
}

/** Reads the rows of the devices, apart from those in which nothing is entered. */
export function deviceRows(schedule: Figures, by: 'branch' | 'rail'): DeviceRow[] {
  const panelBy = by === 'branch' ? ['branch', 'rail'] : ['rail', 'branch'];
  const inFormulas = rowsInFormulas(schedule.document);
  return schedule.rows('devices').flatMap(({ id, cells }, row): DeviceRow[] => {
    if (Object.keys(cells).length === 0) return [];
    return [{
      row, id, ref: textOf(schedule, 'devices', id, 'ref'), area: textOf(schedule, 'devices', id, 'area'),
      qty: atLeastNone(numberOf(schedule, 'devices', id, 'qty')),
      inFormula: inFormulas.has(id),
      on: schedule.target('devices', id, by),
      panel: panelOf(schedule, 'devices', id, panelBy),
    }];
  });
}

/** A quantity below 0, which a formula may come to, says nothing about how many there are. */
function atLeastNone(qty: number | null): number | null {
  return qty !== null && qty < 0 ? null : qty;
}

/** The row as one to be shared out. */
export function shareRow(device: DeviceRow, total: number, wholeRows: boolean, run: number | null): ShareRow {
  const { row, id, ref, area, inFormula } = device;
  const qty = device.qty!;
  return { row, id, ref, area, qty, each: total / qty, whole: wholeRows || inFormula || !Number.isInteger(qty), run };
}

/** The row as one that stays where it is. */
export function keptPlacement({ row, id, ref, qty }: DeviceRow, tag: string): Placement {
  return { row, id, ref, tag, qty: qty ?? 0 };
}

/** The row as one that is left out before any sharing. */
export function leftOut(
  { row, id, ref, qty }: DeviceRow, code: Exclude<LeftOutCode, 'too-large' | 'no-room'>
): LeftOut {
  return { row, id, ref, qty, code };
}

/** Ids and tags of rows that devices can be put on: those with a tag, of each tag the first. */
export function taggedRows(schedule: Figures, sheet: SharedSheet): { id: number; tag: string }[] {
  const seen = new Set<string>();
  return schedule.rows(sheet).flatMap((row) => {
    const tag = tagOf(sheet, row);
    if (tag === '' || seen.has(tag)) return [];
    seen.add(tag);
    return [{ id: row.id, tag }];
  });
}

/** Tags that rows bear, or that something names although no row bears it. */
export function takenTags(schedule: Figures, sheet: SharedSheet, by: 'branch' | 'rail'): string[] {
  const named = (['devices', 'runs'] as const).flatMap((name) => schedule.rows(name).map(({ cells }) => cells[by]));
  const own = schedule.rows(sheet).map((row) => tagOf(sheet, row));
  return [...new Set([...own, ...named])].filter((tag): tag is string => typeof tag === 'string' && tag !== '');
}

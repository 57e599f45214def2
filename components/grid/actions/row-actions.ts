import { insertRows, moveRows, removeRows, type Cells } from '../../../src/schedule/index.ts';
import { cellsOfGroup, idAt, type GridModel } from '../grid-model.ts';
import type { GridSelection } from '../grid-selection.ts';
import { counted, nothing, ROW_NOUNS, type Plan } from './plan.ts';

function selectedIds(model: GridModel, selection: GridSelection): number[] {
  return selection.lines.map((line) => idAt(model, line)).filter((id) => id >= 0);
}

/** As many blank rows as are selected, above or below them; in a grouped view they belong to the same group. */
export function insertBeside(model: GridModel, selection: GridSelection, side: 'above' | 'below'): Plan {
  const { schedule: { document }, sheet } = model;
  const ids = selectedIds(model, selection);
  const edge = side === 'above' ? ids[0] : ids.at(-1);
  const position = edge === undefined ? document.rows(sheet).length : document.position(sheet, edge) + (side === 'above' ? 0 : 1);
  const line = side === 'above' ? selection.lines[0] ?? 0 : selection.lines.at(-1) ?? 0;
  const count = Math.max(1, ids.length);
  const cells = cellsOfGroup(model, line);
  const rows = Array.from({ length: count }, (): Cells => ({ ...cells }));
  const select = { ids: document.freeIds(sheet, count) };
  return { kind: 'act', label: `Insertion of ${counted(count, 'row')}`, changes: insertRows(document, sheet, position, rows), select };
}

/** Deletes the selected rows. */
export function removeSelected(model: GridModel, selection: GridSelection): Plan {
  const { schedule: { document }, sheet } = model;
  const ids = selectedIds(model, selection);
  if (ids.length === 0) return nothing();
  const what = counted(ids.length, ROW_NOUNS[sheet]);
  return { kind: 'act', label: `Deletion of ${what}`, changes: removeRows(document, sheet, ids), message: `${what} deleted.` };
}

/** Moves the selected rows by one place; in a grouped view within their group. */
export function moveSelected(model: GridModel, selection: GridSelection, direction: 'up' | 'down'): Plan {
  const { schedule: { document }, sheet } = model;
  const ids = selectedIds(model, selection);
  if (ids.length === 0) return nothing();
  const neighbour = idAt(model, direction === 'up' ? selection.lines[0]! - 1 : selection.lines.at(-1)! + 1);
  if (neighbour < 0) return nothing(direction === 'up' ? 'There is no row above to change places with.' : 'There is no row below to change places with.');
  const moved = new Set(ids);
  const staying = document.rows(sheet).filter(({ id }) => !moved.has(id));
  const place = staying.findIndex(({ id }) => id === neighbour) + (direction === 'up' ? 0 : 1);
  const changes = moveRows(document, sheet, ids, place);
  return { kind: 'act', label: `Move of ${counted(ids.length, 'row')} ${direction}`, changes, select: { ids } };
}

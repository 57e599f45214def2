import { insertRows, moveRows, removeRows, type Cells } from '../../../src/schedule/index.ts';
import { cellsOfGroup, idAt, type GridModel } from '../grid-model.ts';
import type { GridSelection } from '../grid-selection.ts';
import { nothing, refused, type Plan } from './plan.ts';
import { ROW_ACTIONS } from './row-words.ts';

/** Ids of the selected rows. */
export function selectedIds(model: GridModel, selection: GridSelection): number[] {
  return selection.lines.map((line) => idAt(model, line)).filter((id) => id >= 0);
}

/** As many blank rows as are selected, above or below them; in a grouped view they belong to the same group. */
export function insertBeside(model: GridModel, selection: GridSelection, side: 'above' | 'below'): Plan {
  const { schedule: { document }, sheet, words } = model;
  const ids = selectedIds(model, selection);
  const edge = side === 'above' ? ids[0] : ids.at(-1);
  const position = edge === undefined
    ? document.rows(sheet).length : document.position(sheet, edge) + (side === 'above' ? 0 : 1);
  const line = side === 'above' ? selection.lines[0] ?? 0 : selection.lines.at(-1) ?? 0;
  const count = Math.max(1, ids.length);
  const cells = cellsOfGroup(model, line);
  const rows = Array.from({ length: count }, (): Cells => ({ ...cells }));
  const select = { ids: document.freeIds(sheet, count) };
  const label = words.say('Insertion of {n, plural, one {# row} other {# rows}}', { n: count });
  return { kind: 'act', label, changes: insertRows(document, sheet, position, rows), select };
}

/** Deletes the selected rows. */
export function removeSelected(model: GridModel, selection: GridSelection): Plan {
  const { schedule: { document }, sheet, words } = model;
  const ids = selectedIds(model, selection);
  if (ids.length === 0) return nothing();
  const n = ids.length;
  const { deletion, deleted } = ROW_ACTIONS[sheet];
  return {
    kind: 'act', label: words.say(deletion, { n }), changes: removeRows(document, sheet, ids),
    message: words.say(deleted, { n }),
  };
}

/** Moves the selected rows before a line, as they are dropped there; in a grouped view within their group. */
export function moveSelectedTo(model: GridModel, selection: GridSelection, line: number): Plan {
  const { schedule: { document }, sheet, words, lines } = model;
  if (model.sight.sort !== undefined) {
    return nothing(words.say('The rows are shown sorted, and have no place to move to. Show them in entry order first.'));
  }
  const ids = selectedIds(model, selection);
  const groupAt = (at: number) => lines.findLastIndex(({ kind }, index) => kind === 'heading' && index < at);
  const group = groupAt(line);
  if (selection.lines.some((each) => idAt(model, each) >= 0 && groupAt(each) !== group)) {
    return refused(words.say('Rows are dragged within their group. To put them on another rail or branch, enter its tag.'));
  }
  const moved = new Set(ids);
  const stays = (at: number) => idAt(model, at) >= 0 && !moved.has(idAt(model, at));
  const staying = document.rows(sheet).filter(({ id }) => !moved.has(id));
  const placeOf = (at: number) => staying.findIndex(({ id }) => id === idAt(model, at));
  const above = lines.findLastIndex((_line, at) => at < line && at > group && stays(at));
  const below = lines.findIndex((_line, at) => at >= line && stays(at));
  if (above < 0 && below < 0) return nothing();
  const changes = moveRows(document, sheet, ids, above >= 0 ? placeOf(above) + 1 : placeOf(below));
  if (changes.length === 0) return nothing();
  return {
    kind: 'act', label: words.say('Move of {n, plural, one {# row} other {# rows}}', { n: ids.length }), changes, select: { ids },
  };
}

/** Moves the selected rows by one place; in a grouped view within their group. */
export function moveSelected(model: GridModel, selection: GridSelection, direction: 'up' | 'down'): Plan {
  const { schedule: { document }, sheet, words } = model;
  const ids = selectedIds(model, selection);
  if (ids.length === 0) return nothing();
  if (model.sight.sort !== undefined) {
    return nothing(words.say('The rows are shown sorted, and have no place to move to. Show them in entry order first.'));
  }
  const neighbour = idAt(model, direction === 'up' ? selection.lines[0]! - 1 : selection.lines.at(-1)! + 1);
  if (neighbour < 0) {
    return nothing(
      direction === 'up'
        ? words.say('There is no row above to change places with.')
        : words.say('There is no row below to change places with.')
    );
  }
  const moved = new Set(ids);
  const staying = document.rows(sheet).filter(({ id }) => !moved.has(id));
  const place = staying.findIndex(({ id }) => id === neighbour) + (direction === 'up' ? 0 : 1);
  const changes = moveRows(document, sheet, ids, place);
  const n = ids.length;
  const label = direction === 'up' ? words.say('Move of {n, plural, one {# row} other {# rows}} up', { n })
    : words.say('Move of {n, plural, one {# row} other {# rows}} down', { n });
  return { kind: 'act', label, changes, select: { ids } };
}

import { isFormula, isNumeric, setCells, shiftFormula, type CellEdit, type InputColumn } from '../../../src/schedule/index.ts';
import { idAt, inputAt, type GridModel } from '../grid-model.ts';
import type { GridSelection } from '../grid-selection.ts';
import { nothing, type Plan } from './plan.ts';

/**
 * Fills the selected cells with those of the first selected row, or a single selected row with those of the row above.
 * Formulas move along; tags are left as they are, as no two rows may share one.
 */
export function fillDown(model: GridModel, selection: GridSelection): Plan {
  const rows = selection.lines.filter((line) => idAt(model, line) >= 0);
  if (rows.length > 1) return fillFrom(model, rows.slice(0, 1), rows.slice(1), selection.columns);
  const above = rowAbove(model, rows[0] ?? 0);
  if (rows.length === 0 || above === undefined) return nothing(model.words.say('There is no row above to fill from.'));
  return fillFrom(model, [above], rows, selection.columns);
}

function rowAbove(model: GridModel, line: number): number | undefined {
  for (let at = line - 1; at >= 0; at -= 1) if (idAt(model, at) >= 0) return at;
  return undefined;
}

/** Repeats the cells of some lines in others, in the order of both. */
export function fillFrom(
  model: GridModel, from: readonly number[], into: readonly number[], columns: readonly number[],
): Plan {
  const { schedule: { document }, sheet, words } = model;
  const filled = columns.map((index) => inputAt(model, index))
    .filter((column): column is InputColumn => column !== undefined);
  if (filled.length === 0) {
    return nothing(words.say('Computed figures cannot be filled: they follow from the cells that are filled in.'));
  }
  const keys = filled.filter((column) => column.tag !== true);
  if (keys.length === 0) return nothing(words.say('Tags are not filled down, as no two rows may share one.'));
  const sources = from.map((line) => idAt(model, line)).filter((id) => id >= 0);
  const edits: CellEdit[] = [];
  let turn = 0;
  for (const line of sources.length === 0 ? [] : into) {
    const id = idAt(model, line);
    if (id < 0) continue;
    const source = sources[turn % sources.length]!;
    turn += 1;
    const rowsDown = document.position(sheet, id) - document.position(sheet, source);
    for (const column of keys) {
      const own = document.row(sheet, source)?.cells[column.key] ?? null;
      const value = isNumeric(column) && isFormula(own) ? shiftFormula(own, sheet, rowsDown, document) : own;
      edits.push({ sheet, id, key: column.key, value });
    }
  }
  const changes = setCells(document, edits);
  if (changes.length === 0) return nothing();
  const n = changes.length;
  const message = [
    words.say('{n, plural, one {# cell} other {# cells}} filled.', { n }),
    ...(keys.length < filled.length ? [words.say('Tags are left as they are, as no two rows may share one.')] : []),
  ].join(' ');
  return { kind: 'act', label: words.say('Fill of {n, plural, one {# cell} other {# cells}}', { n }), changes, message };
}

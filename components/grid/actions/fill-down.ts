import { isFormula, isNumeric, setCells, shiftFormula, type CellEdit } from '../../../src/schedule/index.ts';
import { hidesRows, idAt, inputAt, type GridModel } from '../grid-model.ts';
import type { GridSelection } from '../grid-selection.ts';
import { nothing, type Plan } from './plan.ts';

/** Cells of some lines that are repeated in others, in the order of both. */
export interface Filling {
  readonly from: readonly number[];
  readonly into: readonly number[];
  readonly columns: readonly number[];
}

/**
 * Fills each selected block with its first row, or a single row with the one above. Formulas move along; tags are left
 * as they are, as no two rows may share one.
 */
export function fillDown(model: GridModel, selection: GridSelection): Plan {
  const fillings = selection.blocks.flatMap(({ lines, columns }): Filling[] => {
    const rows = lines.filter((line) => idAt(model, line) >= 0);
    if (rows.length > 1) return [{ from: rows.slice(0, 1), into: rows.slice(1), columns }];
    const above = rowAbove(model, rows[0] ?? 0);
    return rows.length === 0 || above === undefined ? [] : [{ from: [above], into: rows, columns }];
  });
  return fillings.length === 0
    ? nothing(model.words.say('There is no row above to fill from.')) : fillFrom(model, fillings);
}

function rowAbove(model: GridModel, line: number): number | undefined {
  for (let at = line - 1; at >= 0; at -= 1) if (idAt(model, at) >= 0) return at;
  return undefined;
}

/** Repeats the cells of some lines in others. */
export function fillFrom(model: GridModel, fillings: readonly Filling[]): Plan {
  const { schedule: { document }, words } = model;
  const filled = fillings.flatMap(({ columns }) => columns).flatMap((index) => inputAt(model, index) ?? []);
  if (filled.length === 0) {
    return nothing(words.say('Computed figures cannot be filled: they follow from the cells that are filled in.'));
  }
  if (filled.every(({ tag }) => tag === true)) {
    return nothing(words.say('Tags are not filled down, as no two rows may share one.'));
  }
  const edits = fillings.flatMap((filling) => editsOf(model, filling));
  const changes = setCells(document, edits);
  if (changes.length === 0) return nothing();
  const n = changes.length;
  const message = [
    words.say('{n, plural, one {# cell} other {# cells}} filled.', { n }),
    ...(filled.some(({ tag }) => tag === true) ? [
      words.say('Tags are left as they are, as no two rows may share one.'),
    ] : []),
    ...(hidesRows(model) ? [words.say('Rows out of sight were passed over.')] : []),
  ].join(' ');
  return {
    kind: 'act', label: words.say('Fill of {n, plural, one {# cell} other {# cells}}', { n }), changes, message,
  };
}

function editsOf(model: GridModel, { from, into, columns }: Filling): CellEdit[] {
  const { schedule: { document }, sheet } = model;
  const keys = columns.flatMap((index) => inputAt(model, index) ?? []).filter(({ tag }) => tag !== true);
  const sources = from.map((line) => idAt(model, line)).filter((id) => id >= 0);
  const targets = sources.length === 0 ? [] : into.map((line) => idAt(model, line)).filter((id) => id >= 0);
  return targets.flatMap((id, turn) => {
    const source = sources[turn % sources.length]!;
    const rowsDown = document.position(sheet, id) - document.position(sheet, source);
    return keys.map((column): CellEdit => {
      const own = document.row(sheet, source)?.cells[column.key] ?? null;
      const value = isNumeric(column) && isFormula(own) ? shiftFormula(own, sheet, rowsDown, document) : own;
      return { sheet, id, key: column.key, value };
    });
  });
}

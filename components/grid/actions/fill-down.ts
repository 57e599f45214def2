import { seriesOf, textsInDoubtSentence, type Series } from '../../../src/editing/index.ts';
import {
  checkCell, isFormula, isNumeric, renameTags, setCells, shiftFormula, type CellEdit, type CellValue, type InputColumn,
} from '../../../src/schedule/index.ts';
import { hidesRows, idAt, inputAt, type GridModel } from '../grid-model.ts';
import type { GridSelection } from '../grid-selection.ts';
import { nothing, refused, type Plan } from './plan.ts';

/** Cells of some lines that are repeated or go on in others, in the order of both. */
export interface Filling {
  readonly from: readonly number[];
  readonly into: readonly number[];
  readonly columns: readonly number[];
}

/**
 * Fills each selected block with its first row, or a single row with the one above. Formulas move along, tags go on.
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

/**
 * Repeats the cells of some lines in others. Two or more that differ by the same step go on by it (12, 20: 28), and so
 * does a tag alone (L1-001: L1-002), passing over those that are taken. Tags that stand are given anew only where
 * nothing but tags is filled; references to them follow.
 */
export function fillFrom(model: GridModel, fillings: readonly Filling[]): Plan {
  const { schedule: { document }, sheet, words } = model;
  const filled = fillings.flatMap(({ columns }) => columns).flatMap((index) => inputAt(model, index) ?? []);
  if (filled.length === 0) {
    return nothing(words.say('Computed figures cannot be filled: they follow from the cells that are filled in.'));
  }
  const tags = filled.every(({ tag }) => tag === true);
  const edits = fillings.flatMap((filling) => editsOf(model, filling, tags));
  for (const { key, value } of edits) {
    const column = filled.find((each) => each.key === key)!;
    const problem = isNumeric(column) && isFormula(value) ? undefined : checkCell(column, value, undefined, words);
    if (problem !== undefined) return refused(words.say('{column}: {problem}', { column: words.text(column.title), problem }));
  }
  const changes = tags
    ? renameTags(document, sheet, new Map(edits.map(({ id, value }) => [id, String(value)])))
    : setCells(document, edits);
  if (changes.length === 0) {
    return tags ? nothing(words.say('A tag goes on where it ends in a number, as L1-001 does: no two rows may share one.')) : nothing();
  }
  const n = tags ? edits.length : changes.length;
  const message = [
    words.say('{n, plural, one {# cell} other {# cells}} filled.', { n }),
    ...(hidesRows(model) ? [words.say('Rows out of sight were passed over.')] : []),
    textsInDoubtSentence(document, changes, words),
  ].filter((each) => each !== '').join(' ');
  return {
    kind: 'act', label: words.say('Fill of {n, plural, one {# cell} other {# cells}}', { n }), changes, message,
  };
}

function editsOf(model: GridModel, filling: Filling, tags: boolean): CellEdit[] {
  const ids = (lines: readonly number[]) => lines.map((line) => idAt(model, line)).filter((id) => id >= 0);
  const [sources, into] = [ids(filling.from), ids(filling.into)];
  if (sources.length === 0) return [];
  const back = filling.into[0]! < filling.from[0]!;
  // What lies nearest goes on first.
  const targets = back ? into.reverse() : into;
  return filling.columns.flatMap((index) => inputAt(model, index) ?? [])
    .flatMap((column) => columnEdits(model, column, { sources, targets, back, tags }));
}

interface ColumnFilling {
  readonly sources: readonly number[];
  readonly targets: readonly number[];
  readonly back: boolean;
  /** Nothing but tags is filled. */
  readonly tags: boolean;
}

function columnEdits(
  model: GridModel, column: InputColumn, { sources, targets, back, tags }: ColumnFilling,
): CellEdit[] {
  const { schedule: { document }, sheet } = model;
  const { key } = column;
  const own = (id: number): CellValue => document.row(sheet, id)?.cells[key] ?? null;
  const values = sources.map(own);
  const isPlain = !isNumeric(column) || !values.some(isFormula);
  const series = isPlain ? seriesOf(values, column.tag === true) : undefined;
  if (column.tag === true) {
    const open = targets.filter((id) => tags || own(id) === null);
    return series === undefined ? [] : tagEdits(model, key, open, series, back);
  }
  return targets.map((id, turn): CellEdit => {
    const source = sources[(back ? sources.length - 1 - (turn % sources.length) : turn % sources.length)]!;
    const value = own(source);
    const rowsDown = document.position(sheet, id) - document.position(sheet, source);
    const repeated = isNumeric(column) && isFormula(value) ? shiftFormula(value, sheet, rowsDown, document) : value;
    return { sheet, id, key, value: series?.(back ? -1 - turn : 1 + turn) ?? repeated };
  });
}

function tagEdits(
  { schedule: { document }, sheet }: GridModel, key: string, ids: readonly number[], series: Series, back: boolean,
): CellEdit[] {
  const open = new Set(ids);
  const taken = new Set(document.rows(sheet).filter(({ id }) => !open.has(id)).map(({ cells }) => cells[key]));
  let step = 0;
  return ids.flatMap((id) => {
    let value: CellValue;
    do value = series(step += back ? -1 : 1); while (value !== null && taken.has(value));
    return value === null ? [] : [{ sheet, id, key, value }];
  });
}

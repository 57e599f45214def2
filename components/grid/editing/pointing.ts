import { letterOf } from '../../../src/schedule/index.ts';
import type { GridModel } from '../grid-model.ts';
import { idAt } from '../grid-model.ts';

/** A cell by its line and column. */
export interface Spot {
  readonly line: number;
  readonly column: number;
}

/** The cells that a formula being typed is pointed at, and where their name stands in its text. */
export interface Pointed {
  readonly from: Spot;
  readonly to: Spot;
  readonly start: number;
  readonly end: number;
}

/** Whether the name of a cell may come next in a formula: it begins, or a sign or parenthesis stands before. */
export function awaitsCell(text: string, caret: number): boolean {
  const before = text.slice(0, caret);
  const isInText = (before.match(/"/g)?.length ?? 0) % 2 === 1;
  return before.startsWith('=') && !isInText && /[=+\-*/^&<>(;,:]\s*$/.test(before);
}

/** What a formula calls the cells between two, as D3 or D3:D5; `undefined` where a line is no row. */
export function nameOfCells(model: GridModel, { from, to }: Pick<Pointed, 'from' | 'to'>): string | undefined {
  const { schedule: { document }, sheet, columns } = model;
  const [first, last] = [from, to].map(({ line, column }) => {
    const id = idAt(model, line);
    return id < 0 ? undefined : `${letterOf(sheet, columns[column]!.key)}${document.position(sheet, id) + 1}`;
  });
  if (first === undefined || last === undefined) return undefined;
  return first === last ? first : `${first}:${last}`;
}

/** Whether a cell lies between those that are pointed at. */
export function isPointed({ from, to }: Pick<Pointed, 'from' | 'to'>, { line, column }: Spot): boolean {
  const isWithin = (at: number, one: number, other: number) => at >= Math.min(one, other) && at <= Math.max(one, other);
  return isWithin(line, from.line, to.line) && isWithin(column, from.column, to.column);
}

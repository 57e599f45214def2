import { SHEET_NAMES, type SheetName } from '../schema/index.ts';

/**
 * One cell that a formula refers to, by the row's id. A dollar sign before a part keeps it when the formula is copied.
 */
export interface CellReference {
  readonly key: string;
  readonly id: number;
  readonly fixedColumn: boolean;
  readonly fixedRow: boolean;
}

/** A cell, or with `to` all cells between two corners, of one sheet. */
export interface Reference {
  readonly sheet: SheetName;
  readonly from: CellReference;
  readonly to?: CellReference;
}

/** Where a reference stands in a kept formula, and `undefined` for one whose row has been deleted. */
const KEPT = /⟦(?:(\w+)#([^⟧]*)|missing)⟧/g;
const CORNER = /^(\$?)(\w+)(\$?)@(\d+)$/;

const corner = (cell: CellReference) =>
  `${cell.fixedColumn ? '$' : ''}${cell.key}${cell.fixedRow ? '$' : ''}@${cell.id}`;

/** The form in which a document keeps a reference inside a formula. */
export function keepReference(reference: Reference | undefined): string {
  if (reference === undefined) return '⟦missing⟧';
  const { sheet, from, to } = reference;
  return `⟦${sheet}#${corner(from)}${to === undefined ? '' : `:${corner(to)}`}⟧`;
}

function readCorner(text: string): CellReference | undefined {
  const found = CORNER.exec(text);
  if (found === null) return undefined;
  return { fixedColumn: found[1] === '$', key: found[2]!, fixedRow: found[3] === '$', id: Number(found[4]) };
}

function readKept(sheet: string | undefined, corners: string | undefined): Reference | undefined {
  if (sheet === undefined || corners === undefined) return undefined;
  const [from, to] = corners.split(':').map(readCorner);
  const name = SHEET_NAMES.find((each) => each === sheet);
  if (name === undefined || from === undefined) return undefined;
  return to === undefined ? { sheet: name, from } : { sheet: name, from, to };
}

/** A kept formula with each reference replaced by what `write` makes of it; `undefined` stands for a deleted row. */
export function mapReferences(formula: string, write: (reference: Reference | undefined) => string): string {
  return formula.replace(KEPT, (_all, sheet?: string, corners?: string) => write(readKept(sheet, corners)));
}

/**
 * A kept formula with its references given other rows.
 * @param idOf the id of the row that stands for one.
 * @param otherwise what becomes of a reference where a corner of it has none: it is missing, unless said otherwise.
 */
export function withOtherIds(
  formula: string, idOf: (sheet: SheetName, id: number) => number | undefined,
  otherwise: (reference: Reference) => Reference | undefined = () => undefined,
): string {
  return mapReferences(formula, (reference) => {
    if (reference === undefined) return keepReference(undefined);
    const { sheet, from, to } = reference;
    const [first, last] = [idOf(sheet, from.id), idOf(sheet, (to ?? from).id)];
    if (first === undefined || last === undefined) return keepReference(otherwise(reference));
    return keepReference({
      sheet, from: { ...from, id: first }, ...(to === undefined ? {} : { to: { ...to, id: last } }),
    });
  });
}

/** The references of a kept formula, in order; `undefined` for each one whose row has been deleted. */
export function referencesOf(formula: string): (Reference | undefined)[] {
  const found: (Reference | undefined)[] = [];
  mapReferences(formula, (reference) => {
    found.push(reference);
    return '';
  });
  return found;
}

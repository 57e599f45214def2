import {
  isFormula, isNumeric, mapReferences, SHEET_NAMES, showFormula, tagOf, type CellReference, type CellValue,
  type Column, type SheetName,
} from '../../../src/schedule/index.ts';
import type { GridModel } from '../grid-model.ts';

/** Type of the clipboard's entry that carries, beside the text that is shown, what was entered. */
export const ENTERED_TYPE = 'application/vnd.elv-load-schedule.cells+json';

/** The row of another sheet that a formula refers to: sheet, number from 1, tag. */
type NamedRow = readonly [sheet: SheetName, row: number, tag: string];

/** A formula by column letters and row numbers, as it reads in the row from which it was copied. */
interface EnteredFormula {
  readonly formula: string;
  readonly names: readonly NamedRow[];
}

/** Cells as they were entered: `null` for an empty one, which inherits, and for a figure that is worked out. */
export interface EnteredCells {
  readonly format: 'elv-load-schedule-cells';
  readonly version: 1;
  readonly sheet: SheetName;
  readonly keys: readonly string[];
  readonly rows: readonly { readonly number: number; readonly cells: readonly (CellValue | EnteredFormula)[] }[];
  /** The text that was put beside it, by which it is known to belong to what is pasted. */
  readonly text: string;
}

/** What was entered in cells that are copied. @param text what is shown of them. */
export function enteredCells(
  model: GridModel, ids: readonly number[], columns: readonly Column[], text: string
): EnteredCells {
  const { schedule: { document }, sheet } = model;
  const rows = ids.map((id) => ({
    number: document.position(sheet, id) + 1,
    cells: columns.map((column) => entered(model, column, document.row(sheet, id)?.cells[column.key] ?? null)),
  }));
  return { format: 'elv-load-schedule-cells', version: 1, sheet, keys: columns.map(({ key }) => key), rows, text };
}

function entered(
  { schedule: { document }, sheet }: GridModel, column: Column, own: CellValue
): CellValue | EnteredFormula {
  if (!isNumeric(column) || !isFormula(own)) return own;
  const names: NamedRow[] = [];
  mapReferences(own, (reference) => {
    for (const cell of [reference?.from, reference?.to]) {
      if (cell !== undefined && reference!.sheet !== sheet) names.push(rowNamed(reference!.sheet, cell));
    }
    return '';
  });
  return { formula: showFormula(own, sheet, document), names };

  function rowNamed(target: SheetName, { id }: CellReference): NamedRow {
    const row = document.row(target, id);
    return [target, document.position(target, id) + 1, row === undefined ? '' : tagOf(target, row)];
  }
}

const sameText = (one: string, other: string): boolean => one.replace(/\r\n?/g, '\n') === other.replace(/\r\n?/g, '\n');

/**
 * Reads the clipboard's entry.
 * @param text the text beside it.
 * @returns `undefined` when it is none of ours, belongs to another text or another sheet: the text counts then.
 */
export function readEntered(data: string, text: string, sheet: SheetName): EnteredCells | undefined {
  const found = parsed(data) as Partial<EnteredCells> | null | undefined;
  const isOurs = found?.format === 'elv-load-schedule-cells' && found.version === 1 && found.sheet === sheet
    && typeof found.text === 'string' && sameText(found.text, text)
    && Array.isArray(found.keys) && Array.isArray(found.rows) && found.rows.every(isRow);
  return isOurs ? found as EnteredCells : undefined;
}

function parsed(data: string): unknown {
  try {
    return JSON.parse(data);
  } catch {
    // What another page put there under our type: its text is all that can be taken.
    return undefined;
  }
}

function isRow(row: unknown): boolean {
  const { number, cells } = (row ?? {}) as Partial<EnteredCells['rows'][number]>;
  return Number.isSafeInteger(number) && Array.isArray(cells) && cells.every(isCell);
}

function isCell(cell: unknown): boolean {
  if (cell === null || typeof cell !== 'object') return cell !== undefined;
  const { formula, names } = cell as Partial<EnteredFormula>;
  return typeof formula === 'string' && formula.startsWith('=') && Array.isArray(names)
    && names.every((name: unknown) => Array.isArray(name) && SHEET_NAMES.includes(name[0] as SheetName));
}

import type { RawCellContent } from 'hyperformula';
import { columnLetters, SCHEMA, SHEET_NAMES, type SheetName } from '../schedule/index.ts';

/**
 * Sheet that holds a number for each range that formulas read, in the row of its place: it changes when a cell of the
 * range did.
 */
export const RANGES = 'ranges';

/** A cell of the formula engine: of a schedule, by row id, or the one of a range, whose key is not used. */
export interface EngineCell {
  readonly sheet: SheetName | typeof RANGES;
  readonly key: string;
  readonly id: number;
}

/** One cell to be given a content. */
export interface CellWrite extends EngineCell {
  readonly content: RawCellContent;
}

const COLUMNS = Object.fromEntries(SHEET_NAMES.map((sheet) =>
  [
    sheet, new Map(SCHEMA[sheet].columns.map(({ key }, place) => [key, place])),
  ])) as Record<SheetName, Map<string, number>>;

/** Column of a cell on its sheet of the formula engine, from 0. */
export const placeOf = ({ sheet, key }: EngineCell) => sheet === RANGES ? 0 : COLUMNS[sheet].get(key)!;

/** Address of a cell in a formula on any sheet. */
export function addressOf(cell: EngineCell): string {
  return `${cell.sheet}!$${columnLetters(placeOf(cell))}$${cell.id + 1}`;
}

/** The cell that tells of changes in the range with a number. */
export function cellOfRange(place: number): EngineCell {
  return { sheet: RANGES, key: '', id: place };
}

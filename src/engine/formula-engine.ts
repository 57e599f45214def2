import {
  DetailedCellError, ErrorType, HyperFormula, type ConfigParams, type ExportedChange, type RawCellContent,
} from 'hyperformula';
import { SCHEMA, SHEET_NAMES } from '../schedule/index.ts';
import { placeOf, RANGES, type CellWrite, type EngineCell } from './engine-cells.ts';
import type { FormulaFault } from './formula-fault.ts';
import { registerScheduleFunctions, type FunctionContext } from './formula-functions.ts';

/** Rows that one sheet may have; files reach their own limit of size long before. */
const MOST_ROWS = 1_000_000;

/**
 * Every option that changes a result is written down. The separators are those of OpenFormula (OASIS OpenDocument 1.3,
 * part 4): semicolon between arguments, point before decimals. Undo belongs to the document, rounding to whoever shows
 * a figure.
 */
const OPTIONS: Partial<ConfigParams> = {
  functionArgSeparator: ';', decimalSeparator: '.', thousandSeparator: '', arrayColumnSeparator: ';',
  arrayRowSeparator: '|',
  smartRounding: false, precisionRounding: 14, evaluateNullToZero: false, caseSensitive: false,
  useArrayArithmetic: false,
  maxRows: MOST_ROWS + 1, maxColumns: 64, undoLimit: 0, maxPendingLazyTransformations: 1_000_000, leapYear1900: false,
  nullDate: { year: 1899, month: 12, day: 30 }, useWildcards: true, matchWholeCell: true,
};

/**
 * The formula engine. It holds the formulas that persons typed and the single cells that these name, a sheet for each
 * sheet, the row with id n in its row n. Ranges it reads from outside, so that the first formula need not wait until
 * thousands of cells are taken in.
 */
export class FormulaEngine {
  readonly #engine: HyperFormula;
  readonly #ids = new Map<string, number>();

  constructor(licenseKey: string, context: FunctionContext) {
    registerScheduleFunctions();
    const sheets = [...SHEET_NAMES, RANGES];
    this.#engine = HyperFormula.buildFromSheets(
      Object.fromEntries(sheets.map((name) => [name, []])), { ...OPTIONS, licenseKey, context }
    );
    for (const name of sheets) this.#ids.set(name, this.#engine.getSheetId(name)!);
  }

  /** Gives cells their contents. @returns every cell of the schedule whose result changed. */
  write(writes: readonly CellWrite[]): EngineCell[] {
    if (writes.length === 0) return [];
    // Many cells one by one are quadratic, each followed by a calculation (hyperformula 3.5.0).
    this.#engine.suspendEvaluation();
    for (const { sheet, place, id, block } of blocksOf(writes)) {
      this.#engine.setCellContents({ sheet: this.#ids.get(sheet)!, col: place, row: id }, block);
    }
    return this.#engine.resumeEvaluation().flatMap((change) => this.#cellOf(change));
  }

  /** What a cell came to: a number, or why it has none; `undefined` for anything else. */
  value(cell: EngineCell): number | FormulaFault | undefined {
    return resultOf(
      this.#engine.getCellValue({ sheet: this.#ids.get(cell.sheet)!, col: placeOf(cell), row: cell.id })
    );
  }

  /** Whether a text is a formula that can be read. */
  isFormula(text: string): boolean {
    return this.#engine.validateFormula(text);
  }

  /** What a formula would come to, without keeping it. */
  tryFormula(formula: string): number | FormulaFault | undefined {
    return resultOf(this.#engine.calculateFormula(formula, this.#ids.get(RANGES)!));
  }

  /** Empties all cells. */
  clear(): void {
    for (const id of this.#ids.values()) this.#engine.clearSheet(id);
  }

  destroy(): void {
    this.#engine.destroy();
  }

  #cellOf(change: ExportedChange): EngineCell[] {
    if (!('address' in change)) return [];
    const sheet = SHEET_NAMES.find((name) => this.#ids.get(name) === change.address.sheet);
    return sheet === undefined
      ? []
      : [{ sheet, key: SCHEMA[sheet].columns[change.address.col]!.key, id: change.address.row }];
  }
}

interface Block {
  readonly sheet: string;
  readonly place: number;
  readonly id: number;
  readonly block: RawCellContent[][];
}

/** Writes below one another, gathered into blocks. */
function blocksOf(writes: readonly CellWrite[]): Block[] {
  const cells = writes.map((write) => (
    { sheet: write.sheet, place: placeOf(write), id: write.id, content: write.content }
  ))
    .sort((a, b) => a.sheet === b.sheet ? a.place - b.place || a.id - b.id : a.sheet < b.sheet ? -1 : 1);
  const blocks: Block[] = [];
  for (const { sheet, place, id, content } of cells) {
    const last = blocks.at(-1);
    if (last?.sheet === sheet && last.place === place && last.id + last.block.length === id) last.block.push([content]);
    else blocks.push({ sheet, place, id, block: [[content]] });
  }
  return blocks;
}

function resultOf(value: unknown): number | FormulaFault | undefined {
  if (typeof value === 'number') return value;
  if (!(value instanceof DetailedCellError)) return undefined;
  const { type, message } = value;
  const isNumber = type === ErrorType.NUM && message !== '' && !Number.isNaN(Number(message));
  return isNumber ? { type, message, value: Number(message) } : { type, message };
}

import { DetailedCellError, ErrorType, HyperFormula, type ConfigParams, type ExportedChange, type RawCellContent } from 'hyperformula';
import { SHEET_NAMES, type SheetName } from '../schedule/index.ts';
import { EMPTY_SHEET } from './cell-layout.ts';
import { registerScheduleFunctions } from './formula-functions.ts';

/** Rows that one sheet may have; files reach their own limit of size long before. */
const MOST_ROWS = 1_000_000;

/**
 * Every option that changes a result is written down. The separators are those of OpenFormula (OASIS OpenDocument 1.3,
 * part 4): semicolon between arguments, point before decimals. Undo belongs to the document, rounding to whoever shows
 * a figure.
 */
const OPTIONS: Partial<ConfigParams> = {
  functionArgSeparator: ';', decimalSeparator: '.', thousandSeparator: '', arrayColumnSeparator: ';', arrayRowSeparator: '|',
  smartRounding: false, precisionRounding: 14, evaluateNullToZero: false, caseSensitive: false, useArrayArithmetic: false,
  maxRows: MOST_ROWS + 1, maxColumns: 64, undoLimit: 0, maxPendingLazyTransformations: 1_000_000, leapYear1900: false,
  nullDate: { year: 1899, month: 12, day: 30 }, useWildcards: true, matchWholeCell: true,
};

/** Something that a cell came to. */
export interface CellResult {
  readonly sheet: SheetName;
  readonly place: number;
  readonly id: number;
  readonly value: unknown;
}

/** One cell to be given a content. */
export interface CellWrite {
  readonly sheet: SheetName;
  readonly place: number;
  readonly id: number;
  readonly content: RawCellContent;
}

/** From this many on, cells are written with calculation suspended, and gathered into blocks. */
const MANY = 24;

/** The formula engine: holds cells, takes contents, answers with every result that changed. */
export class FormulaEngine {
  readonly #engine: HyperFormula;
  readonly #sheetIds = {} as Record<SheetName, number>;
  readonly #names: SheetName[] = [];

  constructor(sheets: Readonly<Record<SheetName, RawCellContent[][]>>, licenseKey: string) {
    registerScheduleFunctions();
    this.#engine = HyperFormula.buildFromSheets({ ...sheets, [EMPTY_SHEET]: [] }, { ...OPTIONS, licenseKey });
    for (const name of SHEET_NAMES) {
      const id = this.#engine.getSheetId(name)!;
      this.#sheetIds[name] = id;
      this.#names[id] = name;
    }
    this.trim();
  }

  /** Gives back memory that the engine keeps in reserve. */
  trim(): void {
    trimEdges(this.#engine);
  }

  /** Everything that the cells of a sheet came to, by row and place. */
  values(sheet: SheetName): unknown[][] {
    return this.#engine.getSheetValues(this.#sheetIds[sheet]);
  }

  /** Gives cells their contents. @returns every cell whose result changed. */
  write(writes: readonly CellWrite[]): CellResult[] {
    if (writes.length === 0) return [];
    if (writes.length < MANY) {
      return this.#results(writes.flatMap(({ sheet, place, id, content }) =>
        this.#engine.setCellContents({ sheet: this.#sheetIds[sheet], col: place, row: id }, content)));
    }
    this.#engine.suspendEvaluation();
    for (const { sheet, place, id, block } of blocksOf(writes)) {
      this.#engine.setCellContents({ sheet: this.#sheetIds[sheet], col: place, row: id }, block);
    }
    return this.#results(this.#engine.resumeEvaluation());
  }

  /** Whether a text is a formula that can be read. */
  isFormula(text: string): boolean {
    return this.#engine.validateFormula(text);
  }

  /** What a formula would come to, without keeping it. */
  tryFormula(formula: string): unknown {
    return this.#engine.calculateFormula(formula, this.#sheetIds.devices);
  }

  destroy(): void {
    this.#engine.destroy();
  }

  #results(changes: readonly ExportedChange[]): CellResult[] {
    return changes.flatMap((change) => 'address' in change && this.#names[change.address.sheet] !== undefined
      ? [{ sheet: this.#names[change.address.sheet]!, place: change.address.col, id: change.address.row, value: change.newValue }]
      : []);
  }
}

/**
 * Gives back what the engine's lists of dependents keep in reserve: a list that has grown by `push` holds room for 17
 * entries and mostly has one or two, a third of the heap at 10,000 device rows (hyperformula 3.5.0). It reaches into
 * the engine's graph, and does nothing where that looks different.
 */
function trimEdges(engine: HyperFormula): void {
  const { graph } = engine.dependencyGraph as unknown as { graph?: { edgesSparseArray?: unknown } };
  const edges = graph?.edgesSparseArray;
  if (!Array.isArray(edges)) return;
  for (let node = 0; node < edges.length; node += 1) {
    const list: unknown = edges[node];
    if (Array.isArray(list)) edges[node] = list.slice();
  }
}

interface Block {
  readonly sheet: SheetName;
  readonly place: number;
  readonly id: number;
  readonly block: RawCellContent[][];
}

/** Writes gathered into runs of neighbouring places of a row; runs alike in rows below one another become one block. */
function blocksOf(writes: readonly CellWrite[]): Block[] {
  const sorted = [...writes].sort((a, b) => a.sheet === b.sheet ? a.id - b.id || a.place - b.place : a.sheet < b.sheet ? -1 : 1);
  const runs: Block[] = [];
  for (const { sheet, place, id, content } of sorted) {
    const last = runs.at(-1);
    const line = last?.sheet === sheet && last.id === id ? last.block[0]! : undefined;
    if (line !== undefined && last!.place + line.length === place) line.push(content);
    else runs.push({ sheet, place, id, block: [[content]] });
  }
  const open = new Map<string, Block>();
  const blocks: Block[] = [];
  for (const run of runs) {
    const shape = `${run.sheet} ${run.place} ${run.block[0]!.length}`;
    const above = open.get(shape);
    if (above !== undefined && above.id + above.block.length === run.id) above.block.push(run.block[0]!);
    else {
      open.set(shape, run);
      blocks.push(run);
    }
  }
  return blocks;
}

/** Why a formula has no result. */
export interface FormulaFault {
  readonly type: string;
  readonly message: string;
  /** The number that it comes to, where that cannot stand in its column. */
  readonly value?: number;
}

/** The error of a result, if it is one. */
export function errorOf(value: unknown): FormulaFault | undefined {
  if (!(value instanceof DetailedCellError)) return undefined;
  const { type, message } = value;
  const isNumber = type === ErrorType.NUM && message !== '' && !Number.isNaN(Number(message));
  return isNumber ? { type, message, value: Number(message) } : { type, message };
}

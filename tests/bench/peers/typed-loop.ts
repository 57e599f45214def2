import type { Cells, CellValue } from '../../../src/schedule/index.ts';
import { COMPARED, PASTE_KEYS, type Candidate, type Operation, type Results, type WorkSheet } from '../operation.ts';
import type { Workload } from '../workload.ts';
import { Judgement } from './typed-checks.ts';
import { calculate, type DeviceColumns } from './typed-figures.ts';
import { EMPTY, HIDDEN, isHidden, NAMES_NONE, REFERENCES, TABLES, taggedTable, type Tagged } from './typed-tables.ts';

const ROOM = 1_000;
const OWN: Readonly<Record<string, string>> = { unitDraw: 'ownDraw', diversity: 'ownDiversity' };
const NUMBERS = [
  'qty', 'ownDraw', 'ownDiversity', 'distance', 'unitDraw', 'diversity', 'connected', 'demand', 'share', 'nodes', 'busDemand',
  'terminalVoltage', 'voltageMargin',
];
const WORDS = ['ok', 'incomplete', 'near', 'over'];

/**
 * The least that the work can cost: numbers in typed arrays, references as places, and all figures and all checks of
 * the workload made again after each operation in plain loops. Whether device rows name a row of a sheet that is empty
 * here is asked, and what hangs on such rows is not worked out. There are no formulas of a person and no sentences, and
 * findings are counted by their rule and not kept by row.
 */
export class TypedLoop implements Candidate {
  readonly #tables: Readonly<Record<keyof typeof TABLES, Tagged>>;
  readonly #columns: Record<string, Float64Array | Int32Array> = {};
  readonly #texts: Record<string, CellValue[]> = { ref: [], area: [], note: [] };
  /** How many rows bear each ref; those that share theirs are counted as they come and go. */
  readonly #refs = new Map<CellValue, number>();
  readonly #judgement: Judgement;
  readonly #undo: (() => void)[] = [];
  #count = 0;

  constructor(sheets: Workload) {
    this.#tables = {
      types: taggedTable('types', sheets), supplies: taggedTable('supplies', sheets),
      branches: taggedTable('branches', sheets),
    };
    this.#judgement = new Judgement(this.#tables);
    const room = sheets.devices.length + ROOM;
    for (const key of NUMBERS) this.#columns[key] = new Float64Array(room).fill(NaN);
    for (const key in REFERENCES) this.#columns[key] = new Int32Array(room).fill(EMPTY);
    for (const column of Object.values(this.#texts)) for (const _ of sheets.devices) column.push(null);
    this.#count = sheets.devices.length;
    sheets.devices.forEach((cells, at) => this.#write(at, cells));
    this.#calculate();
  }

  apply(operation: Operation): void {
    this.#undo.push(this.#perform(operation));
    this.#calculate();
  }

  undo(): void {
    this.#undo.pop()!();
    this.#calculate();
  }

  results(): Results {
    const rows = (sheet: keyof Results, count: number) => Array.from({ length: count }, (_, at) =>
      COMPARED[sheet].map((key) => this.figure(sheet, at, key)!));
    return {
      devices: rows('devices', this.#count), supplies: rows('supplies', this.#tables.supplies.tags.length),
      branches: rows('branches', this.#tables.branches.tags.length),
    };
  }

  /** One figure; `null` when it is unknown, `undefined` when the loop has no such column. */
  figure(sheet: WorkSheet, at: number, key: string): CellValue | undefined {
    const value = (sheet === 'devices' ? this.#columns : this.#tables[sheet].columns)[key]?.[at];
    if (value === undefined) return undefined;
    return key === 'status' ? WORDS[value]! : Number.isFinite(value) ? value : null;
  }

  /** How often each check has found something. */
  get findings(): Readonly<Record<string, number>> {
    return this.#judgement.found;
  }

  #calculate(): void {
    const devices = this.#columns as unknown as DeviceColumns;
    calculate(devices, this.#count, this.#tables);
    this.#judgement.judge(devices, this.#count);
  }

  /** @returns what takes it back. */
  #perform(operation: Operation): () => void {
    switch (operation.op) {
      case 'set': {
        const { sheet, at, key, value } = operation;
        if (sheet === 'devices') return this.#overwrite(at, [{ [key]: value }]);
        const column = this.#tables[sheet].columns[key]!;
        const before = column[at]!;
        column[at] = Number(value ?? NaN);
        return () => { column[at] = before; };
      }
      case 'paste':
        return this.#overwrite(operation.at, operation.lines.map((line) =>
          Object.fromEntries(PASTE_KEYS.map((key, index) => [key, line[index]!]))));
      case 'insert': this.#insert(operation.at, operation.cells); return () => { this.#remove(operation.at); };
      case 'remove': {
        const cells = this.#remove(operation.at);
        return () => { this.#insert(operation.at, cells); };
      }
      case 'move': {
        this.#insert(operation.to, this.#remove(operation.from));
        return () => { this.#insert(operation.from, this.#remove(operation.to)); };
      }
    }
  }

  #overwrite(at: number, lines: readonly Cells[]): () => void {
    const before = lines.map((_, index) => this.#read(at + index));
    lines.forEach((cells, index) => this.#write(at + index, cells));
    return () => before.forEach((cells, index) => this.#write(at + index, cells));
  }

  #insert(at: number, cells: Cells): void {
    for (const column of Object.values(this.#columns)) column.copyWithin(at + 1, at, this.#count);
    for (const column of Object.values(this.#texts)) column.splice(at, 0, null);
    this.#count += 1;
    this.#write(at, { unitDraw: null, diversity: null, ...cells });
  }

  #remove(at: number): Cells {
    const cells = this.#read(at);
    this.#writeCell(at, 'ref', null);
    for (const column of Object.values(this.#columns)) column.copyWithin(at, at + 1, this.#count);
    for (const column of Object.values(this.#texts)) column.splice(at, 1);
    this.#count -= 1;
    return cells;
  }

  #write(at: number, cells: Cells): void {
    for (const key in cells) this.#writeCell(at, key, cells[key]!);
  }

  #writeCell(at: number, key: string, value: CellValue): void {
    if (key in REFERENCES) this.#columns[key]![at] = this.#placeOf(key, value);
    else if (key in this.#texts) {
      if (key === 'ref') this.#nameAnew(this.#texts.ref![at]!, value);
      this.#texts[key]![at] = value;
    } else this.#columns[OWN[key] ?? key]![at] = Number(value ?? NaN);
  }

  #placeOf(key: string, value: CellValue): number {
    if (value === null) return EMPTY;
    const sheet = REFERENCES[key] as keyof typeof TABLES | undefined;
    return (sheet && this.#tables[sheet].places.get(value)) ?? (isHidden(value) ? HIDDEN : NAMES_NONE);
  }

  #nameAnew(before: CellValue, after: CellValue): void {
    const found = this.#judgement.ofRefs;
    if (before !== null) {
      const left = this.#refs.get(before)! - 1;
      if (left === 0) this.#refs.delete(before);
      else this.#refs.set(before, left);
      if (left > 0) found.shared -= left === 1 ? 2 : 1;
      if (isHidden(before)) found.hidden -= 1;
    }
    if (after === null) return;
    const now = (this.#refs.get(after) ?? 0) + 1;
    this.#refs.set(after, now);
    if (now > 1) found.shared += now === 2 ? 2 : 1;
    if (isHidden(after)) found.hidden += 1;
  }

  #read(at: number): Cells {
    const own = (key: string) => Number.isNaN(this.#columns[key]![at]) ? null : this.#columns[key]![at]!;
    const tag = (key: string, sheet: keyof typeof TABLES) => this.#tables[sheet].tags[this.#columns[key]![at]!] ?? null;
    return {
      ...Object.fromEntries(Object.keys(this.#texts).map((key) => [key, this.#texts[key]![at]!])),
      type: tag('type', 'types'), rail: tag('rail', 'supplies'), branch: tag('branch', 'branches'),
      qty: own('qty'), unitDraw: own('ownDraw'), diversity: own('ownDiversity'), distance: own('distance'),
    };
  }
}

import type { Cells, CellValue } from '../../../src/schedule/index.ts';
import { COMPARED, PASTE_KEYS, type Candidate, type Operation, type Results, type WorkSheet } from '../operation.ts';
import type { Workload } from '../workload.ts';

type Column = Float64Array | Int32Array;
type Table = Record<string, Float64Array>;

const ROOM = 1_000;
const REFERENCES: Readonly<Record<string, WorkSheet>> = { type: 'types', rail: 'supplies', branch: 'branches' };
const OWN: Readonly<Record<string, string>> = { unitDraw: 'ownDraw', diversity: 'ownDiversity' };
const INPUTS = {
  types: ['draw', 'power', 'nodes', 'diversity'],
  supplies: ['voltage', 'rated', 'units', 'derating', 'target', 'fuse', 'efficiency'],
  branches: ['limit', 'reserve'],
} as const;

/**
 * The least that the work can cost: numbers in typed arrays, references as places, everything worked out again after
 * each operation in one plain loop. It has no formulas of a person, no findings and no unknown values.
 */
export class TypedLoop implements Candidate {
  readonly #places = {} as Record<WorkSheet, Map<CellValue, number>>;
  readonly #tags = {} as Record<WorkSheet, CellValue[]>;
  readonly #tables: Record<'types' | 'supplies' | 'branches', Table>;
  readonly #columns: Record<string, Column> = {};
  readonly #texts: Record<string, CellValue[]> = { ref: [], area: [], note: [] };
  readonly #undo: (() => void)[] = [];
  #count: number;

  constructor(sheets: Workload) {
    const tagKeys = { types: 'type', supplies: 'rail', branches: 'branch' } as const;
    const table = (sheet: keyof typeof tagKeys): Table => {
      this.#tags[sheet] = sheets[sheet].map((cells) => cells[tagKeys[sheet]]!);
      this.#places[sheet] = new Map(this.#tags[sheet].map((tag, index) => [tag, index]));
      const results = sheet === 'types' ? [] : COMPARED[sheet];
      const input = (key: string) => Float64Array.from(sheets[sheet], (cells) => Number(cells[key] ?? NaN));
      return Object.fromEntries([
        ...INPUTS[sheet].map((key) => [key, input(key)] as const),
        ...results.map((key) => [key, new Float64Array(sheets[sheet].length)] as const),
      ]);
    };
    this.#tables = { types: table('types'), supplies: table('supplies'), branches: table('branches') };
    this.#count = sheets.devices.length;
    const room = this.#count + ROOM;
    for (const key of ['qty', 'ownDraw', 'ownDiversity', ...COMPARED.devices]) {
      this.#columns[key] = new Float64Array(room).fill(NaN);
    }
    for (const key in REFERENCES) this.#columns[key] = new Int32Array(room);
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
    const words = ['ok', 'near', 'over'];
    const rows = (sheet: keyof Results, columns: Record<string, Column>, count: number) =>
      Array.from({ length: count }, (_, at) => COMPARED[sheet].map((key) =>
        key === 'status' ? words[columns[key]![at]!]! : columns[key]![at]!));
    return {
      devices: rows('devices', this.#columns, this.#count),
      supplies: rows('supplies', this.#tables.supplies, this.#tags.supplies.length),
      branches: rows('branches', this.#tables.branches, this.#tags.branches.length),
    };
  }

  /** @returns what takes it back. */
  #perform(operation: Operation): () => void {
    switch (operation.op) {
      case 'set': {
        const { sheet, at, key, value } = operation;
        if (sheet === 'devices') return this.#overwrite(at, [{ [key]: value }]);
        const column = this.#tables[sheet][key]!;
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
    for (const column of Object.values(this.#columns)) column.copyWithin(at, at + 1, this.#count);
    for (const column of Object.values(this.#texts)) column.splice(at, 1);
    this.#count -= 1;
    return cells;
  }

  #write(at: number, cells: Cells): void {
    for (const key in cells) this.#writeCell(at, key, cells[key]!);
  }

  #writeCell(at: number, key: string, value: CellValue): void {
    const sheet = REFERENCES[key];
    if (sheet !== undefined) this.#columns[key]![at] = this.#places[sheet].get(value)!;
    else if (key in this.#texts) this.#texts[key]![at] = value;
    else this.#columns[OWN[key] ?? key]![at] = Number(value ?? NaN);
  }

  #read(at: number): Cells {
    const own = (key: string) => Number.isNaN(this.#columns[key]![at]) ? null : this.#columns[key]![at]!;
    const tag = (key: string, sheet: WorkSheet) => this.#tags[sheet][this.#columns[key]![at]!]!;
    return {
      ...Object.fromEntries(Object.keys(this.#texts).map((key) => [key, this.#texts[key]![at]!])),
      ...Object.fromEntries(Object.entries(REFERENCES).map(([key, sheet]) => [key, tag(key, sheet)])),
      qty: own('qty'), unitDraw: own('ownDraw'), diversity: own('ownDiversity'),
    };
  }

  #calculate(): void {
    const { types, supplies, branches } = this.#tables;
    const { type, rail, branch, qty, ownDraw, ownDiversity, unitDraw, diversity, connected, demand, share, nodes } =
      this.#columns as Record<'type' | 'rail' | 'branch', Int32Array> & Record<string, Float64Array>;
    const { rated, units, derating, usable } = supplies;
    for (let at = 0; at < usable!.length; at += 1) usable![at] = rated![at]! * units![at]! * derating![at]!;
    for (const column of [supplies.connected, supplies.demand, branches.nodes]) column!.fill(0);
    for (let at = 0; at < this.#count; at += 1) {
      const [ofType, ofRail] = [type[at]!, rail[at]!];
      const typeDraw = types.draw![ofType]!;
      const draw = ownDraw![at]! >= 0 ? ownDraw![at]!
        : typeDraw >= 0 ? typeDraw : types.power![ofType]! / supplies.voltage![ofRail]! * 1000;
      const factor = ownDiversity![at]! >= 0 ? ownDiversity![at]! : types.diversity![ofType]!;
      const amps = qty![at]! * draw / 1000;
      unitDraw![at] = draw;
      diversity![at] = factor;
      connected![at] = amps;
      demand![at] = amps * factor;
      share![at] = amps * factor / usable![ofRail]!;
      nodes![at] = qty![at]! * types.nodes![ofType]!;
      supplies.connected![ofRail]! += amps;
      supplies.demand![ofRail]! += amps * factor;
      branches.nodes![branch[at]!]! += nodes![at]!;
    }
    this.#judgeSupplies(supplies);
    this.#judgeBranches(branches);
  }

  #judgeSupplies({ usable, connected, demand, target, fuse, voltage, efficiency, ...out }: Table): void {
    for (let at = 0; at < usable!.length; at += 1) {
      const [used, all, most] = [demand![at]!, connected![at]!, usable![at]!];
      out.loading![at] = used / most;
      out.spare![at] = most * target![at]! - used;
      out.limitDiversity![at] = most * target![at]! / all;
      out.fuseLoading![at] = used / fuse![at]!;
      out.loss![at] = voltage![at]! * used * (1 / efficiency![at]! - 1);
      const isNear = used / most > target![at]! || all > most || all > fuse![at]!;
      out.status![at] = used > most || used > fuse![at]! ? 2 : isNear ? 1 : 0;
    }
  }

  #judgeBranches({ limit, reserve, nodes, free, used, status }: Table): void {
    for (let at = 0; at < limit!.length; at += 1) {
      free![at] = Math.floor(limit![at]! * (1 - reserve![at]!) + 1e-9) - nodes![at]!;
      used![at] = nodes![at]! / limit![at]!;
      status![at] = nodes![at]! > limit![at]! ? 2 : free![at]! < 0 ? 1 : 0;
    }
  }
}

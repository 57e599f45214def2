import { HyperFormula, type RawCellContent } from 'hyperformula';
import type { Cells, CellValue } from '../../../src/schedule/index.ts';
import { COMPARED, PASTE_KEYS, type Candidate, type Operation, type Results, type WorkSheet } from '../operation.ts';
import type { Workload } from '../workload.ts';

/** Columns of each sheet, inputs first; the letter of a column follows from its place. */
const COLUMNS = {
  devices: [
    'ref', 'area', 'type', 'qty', 'rail', 'branch', 'ownDraw', 'ownDiversity', 'note',
    'unitDraw', 'diversity', 'connected', 'demand', 'share', 'nodes',
  ],
  types: ['type', 'draw', 'power', 'nodes', 'diversity'],
  supplies: [
    'rail', 'voltage', 'rated', 'units', 'derating', 'target', 'fuse', 'efficiency',
    'usable', 'connected', 'demand', 'loading', 'spare', 'limitDiversity', 'fuseLoading', 'loss', 'status',
  ],
  branches: ['branch', 'limit', 'reserve', 'nodes', 'free', 'used', 'status'],
} as const satisfies Record<WorkSheet, readonly string[]>;

const FIRST_DEVICE_FORMULA = COLUMNS.devices.indexOf('unitDraw');
const INPUT_NAMES: Readonly<Record<string, string>> = { unitDraw: 'ownDraw', diversity: 'ownDiversity' };

/** Place of an input column: what a row gives of its own stands apart from what holds for it. */
const place = (sheet: WorkSheet, key: string) =>
  (COLUMNS[sheet] as readonly string[]).indexOf(sheet === 'devices' ? INPUT_NAMES[key] ?? key : key);

/**
 * The same columns and totals as a spreadsheet user would write them, in the same formula engine: look-ups by `VLOOKUP`
 * and a `SUMIFS` for each total of each rail and branch.
 */
export class SumifsWorkbook implements Candidate {
  readonly #engine: HyperFormula;
  readonly #sheetIds = {} as Record<WorkSheet, number>;
  readonly #ranges: Ranges;

  constructor(sheets: Workload) {
    const { devices, types, supplies, branches } = sheets;
    this.#ranges = {
      types: `types!$A$1:$E$${types.length}`, supplies: `supplies!$A$1:$I$${supplies.length}`,
    };
    const last = devices.length;
    this.#engine = HyperFormula.buildFromSheets({
      devices: devices.map((cells, index) => deviceLine(cells, index + 1, this.#ranges)),
      types: types.map((cells) => COLUMNS.types.map((key) => cells[key] ?? null)),
      supplies: supplies.map((cells, index) => supplyLine(cells, index + 1, last)),
      branches: branches.map((cells, index) => branchLine(cells, index + 1, last)),
    }, { licenseKey: 'gpl-v3', maxRows: 200_000, smartRounding: false });
    for (const sheet of Object.keys(COLUMNS) as WorkSheet[]) this.#sheetIds[sheet] = this.#engine.getSheetId(sheet)!;
  }

  apply(operation: Operation): void {
    const { devices: sheet } = this.#sheetIds;
    switch (operation.op) {
      case 'set': {
        const { sheet: name, at: row, key, value } = operation;
        this.#engine.setCellContents({ sheet: this.#sheetIds[name], row, col: place(name, key) }, value);
        return;
      }
      case 'paste': { this.#paste(operation.at, operation.lines); return; }
      case 'insert':
        this.#engine.batch(() => {
          this.#engine.addRows(sheet, [operation.at, 1]);
          const line = deviceLine(operation.cells, operation.at + 1, this.#ranges);
          this.#engine.setCellContents({ sheet, row: operation.at, col: 0 }, [line]);
        });
        return;
      case 'remove': this.#engine.removeRows(sheet, [operation.at, 1]); return;
      case 'move': {
        const { from, to } = operation;
        this.#engine.moveRows(sheet, from, 1, to > from ? to + 1 : to);
      }
    }
  }

  undo(): void {
    this.#engine.undo();
  }

  results(): Results {
    const of = (sheet: keyof Results) => {
      const places = COMPARED[sheet].map((key) => (COLUMNS[sheet] as readonly string[]).indexOf(key));
      const lines = this.#engine.getSheetValues(this.#sheetIds[sheet]);
      return lines.map((line) => places.map((at) => line[at] as CellValue));
    };
    return { devices: of('devices'), supplies: of('supplies'), branches: of('branches') };
  }

  /** Two blocks, as the pasted columns leave the one between them alone. */
  #paste(at: number, lines: readonly (readonly CellValue[])[]): void {
    const sheet = this.#sheetIds.devices;
    const columns = PASTE_KEYS.map((key) => place('devices', key));
    const cut = columns.findIndex((column, index) => column !== index);
    this.#engine.batch(() => {
      this.#engine.setCellContents({ sheet, row: at, col: 0 }, lines.map((line) => line.slice(0, cut)));
      this.#engine.setCellContents({ sheet, row: at, col: columns[cut]! }, lines.map((line) => line.slice(cut)));
    });
  }
}

interface Ranges {
  readonly types: string;
  readonly supplies: string;
}

function deviceLine(cells: Cells, row: number, { types, supplies }: Ranges): RawCellContent[] {
  const inputs = COLUMNS.devices.slice(0, FIRST_DEVICE_FORMULA).map((key) =>
    cells[Object.keys(INPUT_NAMES).find((input) => INPUT_NAMES[input] === key) ?? key] ?? null);
  const ofType = (column: number) => `VLOOKUP(C${row},${types},${column},FALSE())`;
  const ofRail = (column: number) => `VLOOKUP(E${row},${supplies},${column},FALSE())`;
  return [
    ...inputs,
    `=IF(ISBLANK(G${row}),IF(${ofType(2)}>0,${ofType(2)},${ofType(3)}/${ofRail(2)}*1000),G${row})`,
    `=IF(ISBLANK(H${row}),${ofType(5)},H${row})`,
    `=D${row}*J${row}/1000`,
    `=L${row}*K${row}`,
    `=M${row}/${ofRail(9)}`,
    `=D${row}*${ofType(4)}`,
  ];
}

function supplyLine(cells: Cells, row: number, last: number): RawCellContent[] {
  const total = (column: string) => `=SUMIFS(devices!$${column}$1:$${column}$${last},devices!$E$1:$E$${last},A${row})`;
  return [
    ...COLUMNS.supplies.slice(0, 8).map((key) => cells[key] ?? null),
    `=C${row}*D${row}*E${row}`,
    total('L'),
    total('M'),
    `=K${row}/I${row}`,
    `=I${row}*F${row}-K${row}`,
    `=I${row}*F${row}/J${row}`,
    `=K${row}/G${row}`,
    `=B${row}*K${row}*(1/H${row}-1)`,
    `=IF(OR(K${row}>I${row},K${row}>G${row}),"over",IF(OR(L${row}>F${row},J${row}>I${row},J${row}>G${row}),"near","ok"))`,
  ];
}

function branchLine(cells: Cells, row: number, last: number): RawCellContent[] {
  return [
    ...COLUMNS.branches.slice(0, 3).map((key) => cells[key] ?? null),
    `=SUMIFS(devices!$O$1:$O$${last},devices!$F$1:$F$${last},A${row})`,
    `=FLOOR(B${row}*(1-C${row})+0.000000001,1)-D${row}`,
    `=D${row}/B${row}`,
    `=IF(D${row}>B${row},"over",IF(E${row}<0,"near","ok"))`,
  ];
}

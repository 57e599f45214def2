import type { LoadSchedule } from '../../load-schedule.ts';
import {
  inputColumns, isBlank, letterOf, SHEET_NAMES,
  type CellValue, type InputColumn, type Row, type SheetName,
} from '../../schedule/index.ts';
import { quoted } from './quoted.ts';
import { shownValue } from './shown-value.ts';

/** Rows at the end of each worksheet that are kept ready for what is added there. */
export const SPARE_ROWS = 20;
/** Sheets whose added rows are counted: what they come to hangs on nothing that a spreadsheet cannot follow. */
export const TAKES_ROWS: ReadonlySet<SheetName> = new Set(['devices', 'outputs']);
/** So many rows behind the spare ones are watched for what is entered there. */
const WATCHED_ROWS = 500;

/** What a change of a row has consequences for: any; the currents of runs; what no formula here follows. */
const [ANY, CIRCUIT, UNFOLLOWED] = [1, 10_000, 100_000_000] as const;

/** Inputs that say something to persons alone, and change no figure. */
const SAYS_NOTHING: ReadonlySet<string> = new Set([
  'description', 'aliases', 'note', 'source', 'partNumber', 'price', 'area', 'load',
]);

/** Inputs of which the formulas of the worksheets follow every consequence but what runs come to. */
const FOLLOWED: Partial<Record<SheetName, readonly string[]>> = {
  devices: ['qty', 'unitDraw', 'diversity', 'group', 'distance'],
  types: ['draw', 'power', 'nodes', 'busDraw', 'diversity', 'group'],
  supplies: [
    'rated', 'units', 'target', 'derating', 'fullUpTo', 'lessPerKelvin', 'peak', 'efficiency', 'offAt', 'standbyHours', 'battery',
    'inputPowerFactor', 'inputInrush',
  ],
  ways: ['rated', 'target'],
  branches: ['limit', 'reserve', 'busCurrent', 'maxCable'],
  runs: ['length', 'ambient', 'maxDrop', 'temperature', 'grouped'],
  conductors: ['resistance', 'maxCurrent', 'maxTemperature', 'baseTemperature'],
  modules: ['common', 'outputs'],
  outputs: ['qty', 'power', 'ratedCurrent', 'inrush', 'target', 'group', 'powerFactor', 'efficiency'],
  contacts: ['resistive', 'lamp', 'motor', 'coil', 'dc', 'dcCoil', 'maxVoltage', 'maxDcVoltage', 'inrush'],
  feeds: ['rated', 'diversity', 'target', 'pulseFactor'],
  enclosures: ['height', 'width', 'depth', 'transfer', 'topFactor', 'otherLoss', 'ambient', 'maxInside', 'reserve'],
  cases: ['hours', 'standby', 'together'],
  factors: ['factor', 'of'],
};
/** Inputs that change what runs of constant power draw beyond their demand, of those that are followed. */
const OF_CIRCUITS: Partial<Record<SheetName, readonly string[]>> = {
  devices: ['qty', 'unitDraw', 'diversity', 'group', 'distance'], types: ['draw', 'power', 'diversity', 'group'],
  runs: ['length', 'ambient', 'temperature', 'grouped'], conductors: ['resistance', 'maxCurrent', 'maxTemperature', 'baseTemperature'],
  cases: ['hours', 'standby', 'together'], factors: ['factor', 'of'],
};

/** Longest text that a formula is compared with; the format allows 255 signs. */
const LONGEST_TEXT = 200;
/** What programs write in formulas in ways of their own. */
const UNUSUAL = /[^\x20-\ud7ff\ue000-\ufffd]|_x[\da-f]{4}_/i;
/** Digits of a number that every spreadsheet reads back as it was written. */
const SURE_DIGITS = 15;

/** What the formulas of changed rows read. */
interface Places {
  /** The cells of a hidden column, spare rows included, as `Devices!$AB$2:$AB$90`. */
  flags(sheet: SheetName): string | undefined;
  /** A worksheet as formulas name it. */
  worksheet(sheet: SheetName): string;
  /** Whether the formula of an input that was not entered stands in its cell. */
  follows(sheet: SheetName, column: InputColumn, row: number): boolean;
  /** The cells of what runs draw beyond their demand, and the word by which they ask for recalculation. */
  readonly extra: string | undefined;
  readonly recalculate: string;
  /** The first worksheet, which counts what was changed. */
  readonly front: string;
}

/**
 * What differs on the worksheets from what was issued: each row has a hidden cell whose formula holds the inputs of the
 * row against what they were, so that it stays right when rows are sorted. The first worksheet counts the rows.
 */
export class ChangedRows {
  readonly #schedule: LoadSchedule;
  readonly #places: Places;

  constructor(schedule: LoadSchedule, places: Places) {
    this.#schedule = schedule;
    this.#places = places;
  }

  /** Whether any row differs from what was issued, as a condition. */
  get isAny(): string {
    return `${this.#places.front}$B$2>0`;
  }

  /** Whether a row differs in what no formula here follows, or came in where no formula counts it. */
  get isUnfollowed(): string {
    return `${this.#places.front}$B$3>0`;
  }

  /** Whether rows came in that no figure counts. */
  get isUncounted(): string {
    return `${this.#places.front}$B$4>0`;
  }

  /** Whether what any run draws beyond its demand waits for recalculation. */
  get anyWaits(): string {
    return `${this.#places.front}$B$5>0`;
  }

  /**
   * Numbers for the first worksheet: of rows that differ, that differ in what is not followed, that no figure counts,
   * and of runs that wait for recalculation.
   */
  counts(): readonly [any: string, unfollowed: string, uncounted: string, waiting: string] {
    const { extra, recalculate } = this.#places;
    const sheets = SHEET_NAMES.filter((sheet) => this.#schedule.rows(sheet).length > 0);
    if (sheets.length === 0) return ['0', '0', '0', '0'];
    const sum = (of: (sheet: SheetName, flags: string) => string) =>
      sheets.map((sheet) => of(sheet, this.#places.flags(sheet)!)).join('+');
    return [
      sum((sheet, flags) => `COUNTIF(${flags},">0")+${this.#cameOrWent(sheet, flags)}`),
      sum((sheet, flags) => `COUNTIF(${flags},">=${UNFOLLOWED}")+${this.#cameOrWent(sheet, flags)}`),
      sum((sheet, flags) => `${this.#behind(sheet)}${TAKES_ROWS.has(sheet) ? '' : `+COUNTIF(${this.#spare(sheet, flags)},">0")`}`),
      extra === undefined ? '0' : `COUNTIF(${extra},${quoted(recalculate)})`,
    ];
  }

  /**
   * How a row differs from what was issued, as a number: 0 where it does not.
   * @param at place of the row, from 0; from the number of rows on, one of the spare rows.
   */
  flag(sheet: SheetName, at: number): string {
    const row = this.#schedule.rows(sheet)[at];
    if (row === undefined || isBlank(row)) return this.#isFilled(sheet, at, UNFOLLOWED);
    const groups = new Map<number, string[]>();
    for (const column of inputColumns(sheet)) {
      if (SAYS_NOTHING.has(column.key)) continue;
      const weight = weightOf(sheet, column.key);
      groups.set(weight, [...groups.get(weight) ?? [], this.#isAsIssued(sheet, column, row, at)]);
    }
    const parts = [...groups].map(([weight, all]) => `IF(AND(${all.join(',')}),0,${weight})`);
    return parts.length === 0 ? '0' : `IFERROR(${parts.join('+')},${UNFOLLOWED})`;
  }

  /**
   * What a run of a tag draws beyond its demand hangs on its own row, on the devices on it and on what it is fed by.
   * @param own the cell that says how its row differs, and `devices` those of the devices with their runs.
   * @param count how many devices were on it when it was issued.
   * @returns whether none of them differs, and whether none does in what could make a steady load another.
   */
  circuit(
    tag: string, own: string, devices: { readonly run: string; readonly flags: string } | undefined, count: number,
  ): { readonly isSame: string; readonly isSteady: string } {
    const shared = (['types', 'conductors', 'supplies', 'ways', 'cases', 'factors'] as const)
      .flatMap((sheet) => this.#places.flags(sheet) ?? []);
    const all = [own, ...devices === undefined ? [] : [`SUMIF(${devices.run},${tag},${devices.flags})`],
      ...shared.map((flags) => `SUM(${flags})`)].join('+');
    const counted = devices === undefined ? 'TRUE()' : `COUNTIF(${devices.run},${tag})=${count}`;
    return { isSame: `AND(${all}<${CIRCUIT},${counted})`, isSteady: `AND(${all}<${UNFOLLOWED},${counted})` };
  }

  #isAsIssued(sheet: SheetName, column: InputColumn, row: Row, at: number): string {
    const cell = `$${letterOf(sheet, column.key)}${at + 2}`;
    const { id } = row;
    // A default that was worked out stands as a formula; a value in its place was entered.
    if (this.#places.follows(sheet, column, at)) return `_xlfn.ISFORMULA(${cell})`;
    const value = shownValue(column, this.#schedule.shown(sheet, id, column.key), this.#schedule.words);
    return isValue(cell, value);
  }

  /** A weight where anything is entered into a row, else 0. */
  #isFilled(sheet: SheetName, at: number, weight: number): string {
    const cells = inputColumns(sheet).filter((column) => column.derived === undefined && !SAYS_NOTHING.has(column.key))
      .map(({ key }) => `$${letterOf(sheet, key)}${at + 2}`);
    return `IF(${cells.join('&')}="",0,${weight})`;
  }

  /** How many rows came in between or behind others, or were deleted. */
  #cameOrWent(sheet: SheetName, flags: string): string {
    const count = this.#schedule.rows(sheet).length + SPARE_ROWS;
    return `${count}-COUNT(${flags})+MAX(0,ROWS(${flags})-${count})+${this.#behind(sheet)}`;
  }

  /** How many rows behind the spare ones begin with something. */
  #behind(sheet: SheetName): string {
    const first = this.#schedule.rows(sheet).length + SPARE_ROWS + 2;
    return `COUNTA(${this.#places.worksheet(sheet)}!$A$${first}:$C$${first + WATCHED_ROWS})`;
  }

  #spare(sheet: SheetName, flags: string): string {
    const first = this.#schedule.rows(sheet).length + 2;
    return flags.replace(/\$\d+:/, `$${first}:`);
  }
}

function weightOf(sheet: SheetName, key: string): number {
  if (FOLLOWED[sheet]?.includes(key) !== true) return UNFOLLOWED;
  return OF_CIRCUITS[sheet]?.includes(key) === true ? CIRCUIT : ANY;
}

/** Whether a cell holds a value, as a condition. */
function isValue(cell: string, value: CellValue): string {
  if (value === null || value === '') return `${cell}=""`;
  if (typeof value === 'number') {
    // An empty cell is as 0 for a spreadsheet.
    if (value === 0) return `AND(${cell}<>"",${cell}=0)`;
    const isSure = String(Math.abs(value)).replace(/e.*$|\D/g, '').replace(/^0+/, '').length <= SURE_DIGITS;
    return isSure ? `${cell}=${value}` : `ABS(${cell}-${value})<=1E-12*ABS(${cell})`;
  }
  if (typeof value === 'boolean') throw new TypeError('A worksheet says yes and no in words.');
  // Of what programs write in ways of their own only whether it is there is told.
  if (value.length > LONGEST_TEXT || UNUSUAL.test(value)) return `${cell}<>""`;
  return `EXACT(${cell},${quoted(value)})`;
}

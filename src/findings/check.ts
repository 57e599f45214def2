import type { CellValue, SheetName } from '../schedule/index.ts';
import type { Severity } from './finding.ts';
import type { RowReader } from './row-reader.ts';

/** What a check found in a row. */
export interface Found {
  readonly value: CellValue;
  readonly limit: CellValue;
  readonly message: string;
}

/** One rule that every row of a sheet is held against. */
export interface Check {
  readonly rule: string;
  readonly sheet: SheetName;
  /** Key of the column that the finding points to. */
  readonly key: string;
  readonly severity: Severity;
  /** What it finds counts in the status of the row. */
  readonly inStatus?: true;
  readonly find: (row: RowReader) => Found | undefined;
}

const decimals = (digits: number) =>
  new Intl.NumberFormat('en', { minimumFractionDigits: digits, maximumFractionDigits: digits, useGrouping: false });
const two = decimals(2);
const one = decimals(1);
const none = decimals(0);

/** A current in a sentence: «7.90 A». */
export function amps(value: number): string {
  return `${two.format(value)} A`;
}

/** A voltage in a sentence: «21.60 V». */
export function volts(value: number): string {
  return `${two.format(value)} V`;
}

/** A temperature in a sentence: «42.5 °C». */
export function degrees(value: number): string {
  return `${one.format(value)} °C`;
}

/** A share in a sentence: «79 %»; with a decimal where rounding would hide on which side of a limit it lies. */
export function percent(value: number, limit?: number): string {
  const hidden = limit !== undefined && none.format(value * 100) === none.format(limit * 100) && value !== limit;
  return `${(hidden ? two : none).format(value * 100)} %`;
}

/** A count with its noun: «1 row», «3 rows». */
export function count(number: number, noun: string): string {
  return `${number} ${noun}${number === 1 ? '' : 's'}`;
}

import { plural, type CellValue, type SheetName } from '../schedule/index.ts';
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

const decimals = (digits: number) => new Intl.NumberFormat('en', {
  minimumFractionDigits: digits, maximumFractionDigits: digits, useGrouping: false, signDisplay: 'negative',
});
const FORMATS = Array.from({ length: 10 }, (_format, digits) => decimals(digits));

/** A number with at least `least` decimals, and as many more as it takes to tell it from another one. */
function toldApart(value: number, other: number | undefined, least: number): string {
  const write = (number: number) => FORMATS[digits]!.format(number);
  let digits = least;
  if (other === undefined || other === value) return write(value);
  while (write(value) === write(other) && digits < FORMATS.length - 1) digits += 1;
  return write(value);
}

/** A current in a sentence: «7.90 A»; with more decimals where rounding would hide that it differs from `other`. */
export function amps(value: number, other?: number): string {
  return `${toldApart(value, other, 2)} A`;
}

/** A voltage in a sentence: «21.60 V»; with more decimals where rounding would hide that it differs from `other`. */
export function volts(value: number, other?: number): string {
  return `${toldApart(value, other, 2)} V`;
}

/**
 * A temperature in a sentence: «42.5 °C»; with more decimals where rounding would hide that it differs from `other`.
 */
export function degrees(value: number, other?: number): string {
  return `${toldApart(value, other, 1)} °C`;
}

/** A difference of temperatures in a sentence: «2.5 K»; with more decimals where rounding would make it nothing. */
export function kelvins(value: number): string {
  return `${toldApart(value, 0, 1)} K`;
}

/** A share in a sentence: «79 %»; with decimals where rounding would hide that it differs from `other`. */
export function percent(value: number, other?: number): string {
  return `${toldApart(value * 100, other === undefined ? undefined : other * 100, 0)} %`;
}

/** A number in a sentence without the noise of its last digits: «0.3», not «0.30000000000000004». */
export function plain(value: number): number {
  return Number(value.toPrecision(12));
}

/** A count with its noun: «1 row», «3 rows». */
export function count(number: number, noun: string): string {
  return `${plain(number)} ${number === 1 ? noun : plural(noun)}`;
}

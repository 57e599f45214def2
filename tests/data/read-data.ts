import { readFileSync } from 'node:fs';
import type { InputRow, InputSchedule } from '../support/independent.ts';

/** A schedule file of the data folder, parsed. */
export interface DataFile extends InputSchedule {
  readonly format: string;
  readonly version: number;
  readonly details: Readonly<Record<string, string>>;
}

/** Reads a file of the data folder by its name. */
export function readData(name: string): DataFile {
  return JSON.parse(readFileSync(new URL(`../../data/${name}`, import.meta.url), 'utf8')) as DataFile;
}

/** Rows of a sheet of a data file; a sheet that is not there has none. */
export function rowsOf(file: DataFile, sheet: string): readonly InputRow[] {
  return file.sheets[sheet] ?? [];
}

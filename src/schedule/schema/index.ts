import { branches } from './branches.ts';
import {
  isNumeric, SHEET_NAMES, type Column, type ComputedColumn, type InputColumn, type Sheet, type SheetName,
} from './column.ts';
import { cases } from './cases.ts';
import { conductors } from './conductors.ts';
import { contacts } from './contacts.ts';
import { devices } from './devices.ts';
import { enclosures } from './enclosures.ts';
import { factors } from './factors.ts';
import { feeds } from './feeds.ts';
import { modules } from './modules.ts';
import { outputs } from './outputs.ts';
import { runs } from './runs.ts';
import { supplies } from './supplies.ts';
import { terminals } from './terminals.ts';
import { types } from './types.ts';
import { ways } from './ways.ts';
import { ENGLISH, type Words } from '../../words/index.ts';

export * from './column.ts';
export { GONE } from './devices.ts';
export { NO_WORKING_VOLTAGE } from './run-circuit.ts';
export { PURPOSES } from './types.ts';

/** The schema: every sheet and every column of a schedule, each said once. */
export const SCHEMA: Readonly<Record<SheetName, Sheet>> = {
  devices, types, supplies, ways, branches, runs, conductors, modules, outputs, contacts, feeds, enclosures, terminals,
  cases, factors,
};

const byKey = Object.fromEntries(Object.values(SCHEMA).map(({ name, columns }) =>
  [name, new Map(columns.map((column) => [column.key, column]))])) as Record<SheetName, Map<string, Column>>;

/** The column of a sheet with this key, if there is one. */
export function findColumn(sheet: SheetName, key: string): Column | undefined {
  return byKey[sheet].get(key);
}

/**
 * The column of a sheet with this key.
 * @throws RangeError when the schema has no such column.
 */
export function columnOf(sheet: SheetName, key: string): Column {
  const column = findColumn(sheet, key);
  if (column === undefined) throw new RangeError(`The sheet ${sheet} has no column ${key}.`);
  return column;
}

/** The columns of a sheet that a person fills in, in order. */
export function inputColumns(sheet: SheetName): InputColumn[] {
  return SCHEMA[sheet].columns.filter((column): column is InputColumn => column.role === 'input');
}

const numeric = Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, inputColumns(sheet).filter(isNumeric)]));

/** The columns of a sheet in which a person enters numbers or formulas, in order. */
export function numericInputs(sheet: SheetName): readonly InputColumn[] {
  return numeric[sheet]!;
}

/** The columns of a sheet that are worked out, in order. */
export function computedColumns(sheet: SheetName): ComputedColumn[] {
  return SCHEMA[sheet].columns.filter((column): column is ComputedColumn => column.role === 'computed');
}

/** Heading with the unit in brackets, as files and print give it: `Rated (A)`. */
export function titleWithUnit(column: Column, words: Words = ENGLISH): string {
  const title = words.text(column.title);
  return column.unit === undefined ? title : `${title} (${column.unit})`;
}

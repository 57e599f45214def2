import { hiddenCharacters, SCHEMA, type Cells, type CellValue } from '../../../src/schedule/index.ts';
import type { WorkSheet } from '../operation.ts';
import type { Workload } from '../workload.ts';

/** Columns of numbers by key; NaN is unknown. Choices stand as their place in their list, booleans as 0 and 1. */
export type Table = Record<string, Float64Array>;

/** What a reference holds that means no row: it is empty, or names none, or holds what cannot be seen besides. */
export const EMPTY = -1;
export const NAMES_NONE = -2;
export const HIDDEN = -3;

/** Sheets whose rows device rows name, with their reference. */
export const TABLES = { types: 'type', supplies: 'rail', branches: 'branch' } as const;

/** Place of `retries` in the choices of what a supply does on overload. */
export const RETRIES = 1;

const COMPUTED = {
  types: ['bit', 'waitingForNodes', 'waitingForInrush', 'waitingForDraw', 'waitingForBus'],
  supplies: [
    'lowest', 'highest', 'usable', 'connected', 'demand', 'missing', 'loading', 'spare', 'limitDiversity',
    'fuseLoading', 'loss', 'batteryNeeded', 'start', 'startMissing', 'purposes', 'oversized', 'rows', 'misfits', 'misfit',
    'status',
  ],
  branches: ['nodes', 'missing', 'busDemand', 'busMissing', 'free', 'used', 'cables', 'cableLength', 'status'],
} as const satisfies Record<keyof typeof TABLES, readonly string[]>;

/** The rows of one sheet that device rows name. Nothing in the workload edits their tags. */
export interface Tagged {
  readonly tags: readonly CellValue[];
  readonly places: ReadonlyMap<CellValue, number>;
  /** Rows that share their tag, and those whose tag holds a character that cannot be seen: 1 where it is so. */
  readonly isShared: Uint8Array;
  readonly isHidden: Uint8Array;
  /** Either of them. */
  readonly isOdd: Uint8Array;
  /** Whether a row holds a number that its column does not allow, as the checks find. */
  readonly isOff: Uint8Array;
  readonly columns: Table;
}

/** The columns of one sheet, defaults filled in. */
export function taggedTable(sheet: keyof typeof TABLES, sheets: Workload): Tagged {
  const rows = sheets[sheet];
  const tags = rows.map((cells) => cells[TABLES[sheet]]!);
  const places = new Map<CellValue, number>();
  const isShared = new Uint8Array(rows.length);
  tags.forEach((tag, at) => {
    const first = places.get(tag);
    if (first === undefined) places.set(tag, at);
    else isShared[first] = isShared[at] = 1;
  });
  const columns: Table = {};
  for (const column of SCHEMA[sheet].columns) {
    if (column.role !== 'input' || column.kind === 'text' || column.kind === 'reference') continue;
    const { key, default: otherwise, choices } = column;
    columns[key] = Float64Array.from(rows, (cells: Cells) => {
      const value = cells[key] ?? otherwise ?? NaN;
      return typeof value === 'string' ? choices!.indexOf(value) : Number(value);
    });
  }
  for (const key of COMPUTED[sheet]) columns[key] = new Float64Array(rows.length);
  const hidden = Uint8Array.from(tags, (tag) => Number(isHidden(tag)));
  return {
    tags, places, isShared, isHidden: hidden, isOff: new Uint8Array(rows.length),
    isOdd: hidden.map((is, at) => is | isShared[at]!), columns,
  };
}

/** Whether a text holds a character that cannot be seen. */
export const isHidden = (text: CellValue) => typeof text === 'string' && hiddenCharacters(text).length > 0;

/** The references of device rows, and the sheet of each; there are no runs in the workload. */
export const REFERENCES: Readonly<Record<string, WorkSheet | undefined>> =
  { type: 'types', rail: 'supplies', branch: 'branches', run: undefined };

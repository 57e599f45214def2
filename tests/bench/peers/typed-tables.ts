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
    'fuseLoading', 'loss', 'power', 'standbyDemand', 'batteryNeeded', 'batteryLasts', 'start', 'startMissing', 'purposes',
    'oversized', 'rows', 'misfits', 'misfit', 'status',
  ],
  branches: ['nodes', 'missing', 'busDemand', 'busMissing', 'free', 'used', 'cables', 'cableLength', 'status'],
} as const satisfies Record<keyof typeof TABLES, readonly string[]>;

/** Numbers that are allowed, as the schema has them: least, more than, most, whole ones only. Others are not known. */
type Range = readonly [least: number, above: number, most: number, isWhole: boolean];
const NOT_NEGATIVE: Range = [0, -Infinity, Infinity, false];
const POSITIVE: Range = [-Infinity, 0, Infinity, false];
const SHARE: Range = [0, -Infinity, 1, false];
const POSITIVE_SHARE: Range = [-Infinity, 0, 1, false];
const MULTIPLE: Range = [1, -Infinity, 10, false];
const VOLTS: Range = [-Infinity, 0, 120, false];
export const RANGES: Readonly<Record<'types' | 'supplies' | 'branches', Readonly<Record<string, Range>>>> = {
  types: {
    voltage: VOLTS, draw: NOT_NEGATIVE, power: NOT_NEGATIVE, inrush: NOT_NEGATIVE, nodes: NOT_NEGATIVE,
    busDraw: NOT_NEGATIVE, diversity: SHARE, minVoltage: NOT_NEGATIVE, maxVoltage: POSITIVE,
  },
  supplies: {
    voltage: VOLTS, tolerance: [0, -Infinity, 0.5, false], seriesDrop: [0, -Infinity, 5, false], rated: POSITIVE,
    units: [1, -Infinity, Infinity, true], derating: POSITIVE_SHARE, target: POSITIVE_SHARE, fuse: POSITIVE,
    peak: MULTIPLE, maxOutput: MULTIPLE, innerResistance: [0, -Infinity, 10, false], efficiency: POSITIVE_SHARE,
  },
  branches: {
    limit: [1, -Infinity, Infinity, true], reserve: SHARE, terminators: [0, -Infinity, Infinity, true],
    maxCable: POSITIVE, busCurrent: POSITIVE,
  },
};

export const isOutside = (value: number, [least, above, most, isWhole]: Range) =>
  value < least || value <= above || value > most || (isWhole && value % 1 > 0);

/** The rows of one sheet that device rows name. Nothing in the workload edits their tags. */
export interface Tagged {
  readonly tags: readonly CellValue[];
  readonly places: ReadonlyMap<CellValue, number>;
  /** Rows that share their tag, and those whose tag holds a character that cannot be seen: 1 where it is so. */
  readonly isShared: Uint8Array;
  readonly isHidden: Uint8Array;
  /** Either of them. */
  readonly isOdd: Uint8Array;
  /** How many numbers of each row are none that their column allows. */
  readonly outside: Uint8Array;
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
  const outside = new Uint8Array(rows.length);
  for (const column of SCHEMA[sheet].columns) {
    if (column.role !== 'input' || column.kind === 'text' || column.kind === 'reference') continue;
    const { key, default: otherwise, choices } = column;
    const range = RANGES[sheet][key];
    columns[key] = Float64Array.from(rows, (cells: Cells, at) => {
      const value = cells[key] ?? otherwise ?? NaN;
      const number = typeof value === 'string' ? choices!.indexOf(value) : Number(value);
      if (range === undefined || !isOutside(number, range)) return number;
      outside[at]! += 1;
      return NaN;
    });
  }
  for (const key of COMPUTED[sheet]) columns[key] = new Float64Array(rows.length);
  const hidden = Uint8Array.from(tags, (tag) => Number(isHidden(tag)));
  return {
    tags, places, isShared, isHidden: hidden, outside,
    isOdd: hidden.map((is, at) => is | isShared[at]!), columns,
  };
}

/** Whether a text holds a character that cannot be seen. */
export const isHidden = (text: CellValue) => typeof text === 'string' && hiddenCharacters(text).length > 0;

/** The references of device rows, and the sheet of each; there are no runs in the workload. */
export const REFERENCES: Readonly<Record<string, WorkSheet | undefined>> =
  { type: 'types', rail: 'supplies', branch: 'branches', run: undefined };

import { readFileSync } from 'node:fs';
import { decodeText, type Encoding } from '../../src/exchange/index.ts';
import { expect } from 'vitest';
import {
  readTakeoff, type Takeoff, type TakeoffOptions, type TakeoffSource, type TakeoffTable,
} from '../../src/exchange/takeoff/index.ts';
import { openWorkbook } from '../../src/exchange/workbook/index.ts';
import type { Cells } from '../../src/schedule/index.ts';

/** The types of the data folder. */
export const TYPES = (JSON.parse(readData('device-types.json')) as { sheets: { types: Cells[] } }).sheets.types;

/** A file of the data folder. */
export function readData(name: string): string {
  return readFileSync(new URL(`../../data/${name}`, import.meta.url), 'utf8');
}

/** A list of the data folder in whatever encoding it is. */
export function readList(name: string): { readonly text: string; readonly encoding: Encoding } {
  const decoded = decodeText(readFileSync(new URL(`../../data/takeoffs/${name}`, import.meta.url)));
  if (!decoded.ok) throw new Error(JSON.stringify(decoded.problems));
  return decoded;
}

/** The sheets of a workbook that are shown, as lists. */
export async function tablesOfWorkbook(bytes: Uint8Array): Promise<TakeoffTable[]> {
  const workbook = openWorkbook(bytes);
  if (!workbook.ok) throw new Error(JSON.stringify(workbook.problems));
  return Promise.all(workbook.sheets.map(async (sheet) => {
    const read = await workbook.read(sheet);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const { rows: cells, hiddenRows, hiddenColumns, struckRows } = read;
    return { sheet, cells, hiddenRows, hiddenColumns, struckRows };
  }));
}

/** Reads a takeoff that can be read. */
export function read(source: TakeoffSource, options: Partial<TakeoffOptions> = {}): Takeoff {
  const takeoff = readTakeoff(source, { types: TYPES, ...options });
  expect(takeoff).toMatchObject({ ok: true });
  return takeoff as Takeoff;
}

/** A line in short: outcome, quantity, type. */
export function inShort({ lines }: Takeoff): Record<number, string> {
  return Object.fromEntries(lines.map(({ line, outcome, qty, type }) => [line, `${outcome} ${qty} ${type ?? '-'}`]));
}

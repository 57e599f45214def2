import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import {
  readTakeoff, type Takeoff, type TakeoffOptions, type TakeoffSource,
} from '../../src/exchange/takeoff/index.ts';
import type { Cells } from '../../src/schedule/index.ts';

/** The types of the data folder. */
export const TYPES = (JSON.parse(readData('device-types.json')) as { sheets: { types: Cells[] } }).sheets.types;

/** A file of the data folder. */
export function readData(name: string): string {
  return readFileSync(new URL(`../../data/${name}`, import.meta.url), 'utf8');
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

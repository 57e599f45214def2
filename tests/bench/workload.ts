import type { Cells, CellValue } from '../../src/schedule/index.ts';
import type { WorkSheet } from './operation.ts';

export interface Size {
  readonly rows: number;
  readonly rails: number;
  readonly branches: number;
}

/** Device rows with the rails and branches that a plant of that size has. */
export const SIZES: readonly Size[] = [
  { rows: 1_000, rails: 10, branches: 40 },
  { rows: 10_000, rails: 20, branches: 200 },
  { rows: 100_000, rails: 80, branches: 2_000 },
];

export type Workload = Readonly<Record<WorkSheet, readonly Cells[]>>;

const PURPOSES = ['lighting', 'field', 'control'] as const;
const TYPE_COUNT = 24;
/** Demand of one device row of this workload on average [A]; it only scales the ratings. */
const USUAL_DEMAND_AMPS = 0.225;
/** Nodes of one device row on average; it only scales the limits. */
const USUAL_NODES = 6.5;

const tag = (letter: string, index: number) => `${letter}${String(index + 1).padStart(4, '0')}`;
export const railTag = (index: number) => tag('L', index);
const branchTag = (index: number) => tag('B', index);
const typeTag = (index: number) => tag('T', index);

/** Cells of device row `index`; `variant` gives another row for the same place. */
export function deviceRow({ rails, branches }: Size, index: number, variant = 0): Cells {
  const mixed = index + variant * 7;
  const rail = mixed % rails;
  const cells: Cells = {
    ref: `${tag('D', index)}.${variant}`,
    area: `Floor ${mixed % 9}`,
    type: typeTag((Math.floor(mixed / rails) * PURPOSES.length + (rail % PURPOSES.length)) % TYPE_COUNT),
    qty: 1 + (mixed * 5) % 7,
    rail: railTag(rail),
    branch: branchTag((mixed * 3) % branches),
    note: `item ${mixed}`,
  };
  if (mixed % 8 === 0) cells.unitDraw = 20 + (mixed % 110);
  if (mixed % 4 === 0) cells.diversity = (30 + (mixed % 70)) / 100;
  return cells;
}

/** Everything that a schedule of this size holds; every input that a limit needs is known. */
export function workload(size: Size): Workload {
  const { rows, rails, branches } = size;
  const usable = (rows / rails) * USUAL_DEMAND_AMPS;
  const nodes = (rows / branches) * USUAL_NODES;
  return {
    devices: Array.from({ length: rows }, (_, index) => deviceRow(size, index)),
    types: Array.from({ length: TYPE_COUNT }, (_, index): Cells => ({
      type: typeTag(index), purpose: PURPOSES[index % PURPOSES.length]!, nodes: 1 + (index % 3),
      diversity: (50 + index * 2) / 100,
      // Every fourth type gives its power, as a data sheet of a lamp does.
      ...(index % 4 === 3 ? { power: 1.2 + index / 10 } : { draw: 30 + index * 5 }),
    })),
    supplies: Array.from({ length: rails }, (_, index): Cells => ({
      rail: railTag(index), purpose: PURPOSES[index % PURPOSES.length]!, voltage: 24, units: 1 + (index % 2),
      rated: Math.round(usable * (0.9 + (index % 7) / 10)) / (1 + (index % 2)), derating: 1, target: 0.8,
      fuse: Math.round(usable * 0.9), efficiency: 0.9,
    })),
    branches: Array.from({ length: branches }, (_, index): Cells => ({
      branch: branchTag(index), limit: Math.round(nodes * (0.8 + (index % 6) / 10)), reserve: (index % 3) / 10,
      terminated: true,
    })),
  };
}

/** A block of device rows to paste, with the keys that it fills. */
export function block(size: Size, count: number, keys: readonly string[], variant: number): (readonly CellValue[])[] {
  return Array.from({ length: count }, (_, index) => {
    const cells = deviceRow(size, index, variant);
    return keys.map((key) => cells[key] ?? (key === 'diversity' ? 0.65 : null));
  });
}

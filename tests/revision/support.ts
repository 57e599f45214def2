import {
  askedRows, reviseSchedule, revisionChanges, withAsked, type ListRevision, type RevisionOptions,
} from '../../src/exchange/revision/index.ts';
import { countedList, readTakeoff, type TakeoffSource, type TakeoffSums } from '../../src/exchange/takeoff/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { Cells } from '../../src/schedule/index.ts';

interface ReviseOptions extends RevisionOptions {
  readonly name?: string;
  /** Every row that is asked about is said to be new. */
  readonly allNew?: boolean;
}

interface Revised extends ListRevision {
  /** Quantities of the list by what becomes of them. */
  readonly sums: TakeoffSums;
  /** How many of its lines wait for a person, those without a quantity too. */
  readonly open: number;
  readonly take: () => void;
}

/** Reads a list and holds it against a schedule; `take` carries it out. */
export function revise(schedule: LoadSchedule, source: TakeoffSource, options: ReviseOptions = {}): Revised {
  const { name = 'list.csv', allNew = false, ...rest } = options;
  const tables = typeof source === 'string' ? { file: name, cells: source } : source;
  const takeoff = readTakeoff(tables, { types: schedule.rows('types').map(({ cells }) => cells) });
  if (!takeoff.ok) throw new Error(JSON.stringify(takeoff.problems));
  const list = countedList(takeoff);
  const asked = reviseSchedule(schedule, list, rest);
  const revision = !allNew ? asked : reviseSchedule(schedule, list, {
    ...rest, same: new Map([...rest.same ?? [], ...askedRows(asked).map(({ place }) => [place!, null] as const)]),
  });
  return {
    ...revision, sums: withAsked(takeoff, revision).sums, open: list.open.length,
    take: () => { schedule.act('revised', revisionChanges(schedule.document, takeoff, revision)); },
  };
}

/** Device rows in short: quantity, type, area and where they are, without what is empty. */
export function shortly(schedule: LoadSchedule, ...keys: string[]): string[] {
  return schedule.rows('devices').map(({ cells }) => keys.map((key) => cells[key] ?? '-').join(' '));
}

export function devicesOf(schedule: LoadSchedule): Cells[] {
  return schedule.rows('devices').map(({ cells }) => cells);
}

/** Quantity of all device rows, or of some. */
export function total(rows: readonly Cells[]): number {
  return rows.reduce((sum, { qty }) => sum + Number(qty ?? 0), 0);
}

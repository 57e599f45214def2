import type { LoadSchedule } from '../load-schedule.ts';
import {
  insertRows, nextWayTag, setCells, tagOf, type CellEdit, type Cells, type Change,
} from '../schedule/index.ts';
import { WAY_KEYS } from './belonging.ts';
import { cellsLike } from './rows-like.ts';

/** What becomes of a run of which only some device rows move: it moves whole, or they go on another run, by its tag. */
export type PartlyFate = 'whole' | { readonly run: string };

/** Which way of the target a run gets whose way stays: a new one of the same kind and rating, one by its tag, none. */
export type WayFate = 'new' | 'none' | { readonly way: string };

/** Rows that are to move to another supply or branch. */
export interface DeviceMove {
  /** Ids of device rows. */
  readonly devices: readonly number[];
  /** Ids of runs that move with all that is on them. */
  readonly runs?: readonly number[];
  readonly to: { readonly sheet: 'supplies' | 'branches'; readonly tag: string };
  /** By id of the run. */
  readonly partly?: ReadonlyMap<number, PartlyFate>;
  /** By id of the way. */
  readonly ways?: ReadonlyMap<number, WayFate>;
}

/** A run of which some device rows move and others stay. */
export interface PartlyMoved {
  readonly run: number;
  readonly moving: readonly number[];
  readonly staying: readonly number[];
  /** Tags of the runs of the target that the device rows may be put on. */
  readonly others: readonly string[];
}

/** A way of runs that move, which feeds others that stay. */
export interface SharedWay {
  readonly way: number;
  readonly moving: readonly number[];
  readonly staying: readonly number[];
}

/** What moves, and what has to be decided. */
export interface MovePlan {
  /** None while something is not decided. */
  readonly changes: readonly Change[];
  /** Ids of what moves. */
  readonly devices: readonly number[];
  readonly runs: readonly number[];
  readonly ways: readonly number[];
  /** Ids of what was asked for and stays, since it is on no supply or branch from which it would move. */
  readonly staying: { readonly devices: readonly number[]; readonly runs: readonly number[] };
  /** Every run and way that asks for a decision, decided or not. */
  readonly partly: readonly PartlyMoved[];
  readonly shared: readonly SharedWay[];
  readonly isDecided: boolean;
}

/**
 * Moves device rows to another supply or bus branch, with their runs and the ways of these. Rows and runs that are on
 * none stay.
 *
 * A run moves when all of its device rows do, and a way when all of its runs do; what is to become of others has to be
 * decided, nothing is guessed. Device rows that are put on another run lose their distance: it is not known there, and
 * they count at its end.
 */
export function moveDevices(schedule: LoadSchedule, move: DeviceMove): MovePlan {
  const { to: { sheet, tag }, partly: fates = new Map<number, PartlyFate>() } = move;
  const key = sheet === 'supplies' ? 'rail' : 'branch';
  const target = schedule.rows(sheet).find((row) => tagOf(sheet, row) === tag)?.id ?? -1;
  if (target < 0) throw new RangeError(`The sheet ${sheet} has no “${tag}”.`);
  const isOn = (id: number) => schedule.target('devices', id, key) >= 0;
  const isRunOn = (id: number) => schedule.target('runs', id, key) >= 0;
  const onRun = (run: number) => schedule.members('devices', 'run', run).filter(isOn);
  /** The run that a device row moves with: one that is itself on a supply, or on a branch. */
  const runOf = (id: number) => {
    const run = schedule.target('devices', id, 'run');
    return run >= 0 && isRunOn(run) ? run : -1;
  };

  const runs = new Set(move.runs?.filter(isRunOn));
  const devices = new Set([...move.devices.filter(isOn), ...[...runs].flatMap(onRun)]);
  const partly: PartlyMoved[] = [];
  const elsewhere = new Map<number, string>();
  for (const run of new Set([...devices].map(runOf))) {
    if (run < 0 || runs.has(run) || schedule.target('runs', run, key) === target) continue;
    const [all, fate] = [onRun(run), fates.get(run)];
    const [moving, staying] = [all.filter((id) => devices.has(id)), all.filter((id) => !devices.has(id))];
    if (staying.length > 0) partly.push({ run, moving, staying, others: runsThere(schedule, key, target, run) });
    if (staying.length === 0 || fate === 'whole') runs.add(run);
    else if (fate !== undefined) for (const id of moving) elsewhere.set(id, fate.run);
  }
  for (const run of runs) for (const id of onRun(run)) devices.add(id);

  const edits: CellEdit[] = [];
  const made: Cells[] = [];
  const own = (at: 'devices' | 'runs', id: number) => (schedule.document.row(at, id)!.cells[key] ?? null) !== null;
  const ways = new Set<number>();
  const shared: SharedWay[] = [];
  if (sheet === 'supplies') {
    const feeding = new Map<number, Set<number>>();
    for (const { id } of schedule.rows('runs')) {
      for (const each of WAY_KEYS) {
        const way = schedule.target('runs', id, each);
        if (way >= 0) feeding.set(way, (feeding.get(way) ?? new Set()).add(id));
      }
    }
    for (const [way, fed] of feeding) {
      const [moving, staying] = [[...fed].filter((id) => runs.has(id)), [...fed].filter((id) => !runs.has(id))];
      if (moving.length === 0 || schedule.target('ways', way, 'rail') === target) continue;
      if (staying.length > 0) shared.push({ way, moving, staying });
      else {
        ways.add(way);
        edits.push({ sheet: 'ways', id: way, key: 'rail', value: tag });
      }
    }
    for (const { way, moving } of shared) {
      const fate = move.ways?.get(way);
      if (fate === undefined) continue;
      const value = fate === 'none' ? null : fate === 'new' ? wayLike(schedule, way, tag, made) : fate.way;
      edits.push(...moving.flatMap((id) => WAY_KEYS.filter((each) => schedule.target('runs', id, each) === way)
        .map((each) => ({ sheet: 'runs' as const, id, key: each, value }))));
    }
  }
  for (const id of runs) {
    // A run whose rail is that of its way follows it, but not where it is left without one.
    const isFree = edits.some((edit) => edit.sheet === 'runs' && edit.id === id && edit.key === 'way'
      && edit.value === null);
    if (own('runs', id) || isFree) edits.push({ sheet: 'runs', id, key, value: tag });
  }
  for (const id of devices) {
    if (own('devices', id)) edits.push({ sheet: 'devices', id, key, value: tag });
    const run = elsewhere.get(id);
    if (run === undefined) continue;
    edits.push({ sheet: 'devices', id, key: 'run', value: run }, { sheet: 'devices', id, key: 'distance', value: null });
  }
  const { document } = schedule;
  const isDecided = partly.every(({ run }) => fates.has(run))
    && shared.every(({ way }) => move.ways?.has(way) === true);
  const changes = [...insertRows(document, 'ways', document.rows('ways').length, made), ...setCells(document, edits)];
  // What is on the target already stays where it is.
  const isMoving = (id: number) => schedule.target('devices', id, key) !== target || elsewhere.has(id);
  return {
    changes: isDecided ? changes : [], devices: [...devices].filter(isMoving), runs: [...runs], ways: [...ways],
    staying: {
      devices: move.devices.filter((id) => !isOn(id)), runs: move.runs?.filter((id) => !isRunOn(id)) ?? [],
    },
    partly, shared, isDecided,
  };
}

/** Tags of the runs of a supply or branch on which device rows of a run may be put: for a branch, those of its rail. */
function runsThere(schedule: LoadSchedule, key: 'rail' | 'branch', target: number, from: number): string[] {
  return schedule.rows('runs').filter(({ id }) => schedule.target('runs', id, key) === target && id !== from
    && (key === 'rail' || schedule.target('runs', id, 'rail') === schedule.target('runs', from, 'rail')))
    .map((row) => tagOf('runs', row)).filter((tag) => tag !== '');
}

/** Notes a way of the same kind on another rail as one to be made. @returns its tag. */
function wayLike(schedule: LoadSchedule, way: number, rail: string, made: Cells[]): string {
  const all = [...schedule.rows('ways').map(({ cells }) => cells), ...made];
  const tag = nextWayTag(all, rail);
  made.push({ ...cellsLike(schedule, 'ways', way), way: tag, rail });
  return tag;
}

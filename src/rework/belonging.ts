import type { LoadSchedule } from '../load-schedule.ts';
import { inputColumns, tagOf, type SheetName } from '../schedule/index.ts';
import { beginsWith } from './renamed.ts';

/** Sheets of which rows are duplicated, in the order in which they stand before a person. */
export const DUPLICATED = ['supplies', 'ways', 'branches', 'runs', 'devices', 'modules', 'outputs'] as const;
/** A sheet of which rows are duplicated. */
export type DuplicatedSheet = (typeof DUPLICATED)[number];

/** What is duplicated: rows of a sheet, or devices and outputs of an area, by how the areas begin: `Level 1`. */
export type DuplicateOf =
  | { readonly sheet: DuplicatedSheet; readonly ids: readonly number[] }
  | { readonly area: string };

/** Ids of rows by sheet, in their order. */
export type RowIds = Readonly<Record<DuplicatedSheet, readonly number[]>>;

/** Keys of a run that name ways. */
export const WAY_KEYS = inputColumns('runs').filter(({ to }) => to === 'ways').map(({ key }) => key);

/** Ids of the ways of a rail that have a tag, by which alone a run can name one. */
export const taggedWays = (schedule: LoadSchedule, rail: number): number[] =>
  schedule.members('ways', 'rail', rail).filter((id) => tagOf('ways', schedule.document.row('ways', id)!) !== '');

/** Ids of the runs that a way feeds, at their beginning or as their second way. */
export const runsOfWay = (schedule: LoadSchedule, way: number): number[] =>
  WAY_KEYS.flatMap((key) => schedule.members('runs', key, way));

/** Device rows and outputs that hang on a row. */
interface Loads {
  readonly devices: readonly number[];
  readonly outputs: readonly number[];
}

function loadsOf(schedule: LoadSchedule, sheet: DuplicatedSheet, id: number): Loads {
  const naming = (from: SheetName, key: string) => schedule.members(from, key, id);
  const onRuns = (runs: readonly number[]) => runs.flatMap((run) => schedule.members('devices', 'run', run));
  switch (sheet) {
    case 'supplies': return {
      devices: [...naming('devices', 'rail'), ...onRuns(naming('runs', 'rail'))], outputs: naming('outputs', 'rail'),
    };
    case 'ways': return { devices: onRuns(runsOfWay(schedule, id)), outputs: [] };
    case 'runs': return { devices: onRuns([id]), outputs: [] };
    case 'branches': return { devices: naming('devices', 'branch'), outputs: [] };
    case 'modules': return { devices: [], outputs: naming('outputs', 'module') };
    case 'devices': return { devices: [id], outputs: [] };
    case 'outputs': return { devices: [], outputs: [id] };
  }
}

/**
 * The rows that belong to what is duplicated: all device rows and outputs that hang on it, or are in its area, and the
 * supplies, ways, branches, runs and modules that have no others. Ways and runs with nothing on them yet belong to what
 * they name.
 */
export function belongingRows(schedule: LoadSchedule, of: DuplicateOf): RowIds {
  const seeds = 'area' in of ? undefined : of;
  const asked = new Set(seeds?.ids);
  const isInArea = (sheet: 'devices' | 'outputs', id: number) => {
    const area = schedule.value(sheet, id, 'area');
    return 'area' in of && typeof area === 'string' && beginsWith(area, of.area);
  };
  const found = {
    devices: new Set(schedule.rows('devices').map(({ id }) => id).filter((id) => isInArea('devices', id))),
    outputs: new Set(schedule.rows('outputs').map(({ id }) => id).filter((id) => isInArea('outputs', id))),
  };
  for (const id of asked) {
    const { devices, outputs } = loadsOf(schedule, seeds!.sheet, id);
    for (const each of devices) found.devices.add(each);
    for (const each of outputs) found.outputs.add(each);
  }
  const holding = (sheet: DuplicatedSheet, isEmptyPart: (id: number) => boolean): ReadonlySet<number> =>
    new Set(schedule.rows(sheet).map(({ id }) => id).filter((id) => {
      if (seeds?.sheet === sheet && asked.has(id)) return true;
      const { devices, outputs } = loadsOf(schedule, sheet, id);
      if (devices.length + outputs.length === 0) return isEmptyPart(id);
      return devices.every((each) => found.devices.has(each)) && outputs.every((each) => found.outputs.has(each));
    }));
  const none = () => false;
  const supplies = holding('supplies', none);
  const branches = holding('branches', none);
  const ways = holding('ways', (id) => supplies.has(schedule.target('ways', id, 'rail')));
  const runs = holding('runs', (id) => supplies.has(schedule.target('runs', id, 'rail'))
    || branches.has(schedule.target('runs', id, 'branch'))
    || WAY_KEYS.some((key) => ways.has(schedule.target('runs', id, key))));
  const inOrder = (sheet: 'devices' | 'outputs') =>
    schedule.rows(sheet).map(({ id }) => id).filter((id) => found[sheet].has(id));
  return {
    supplies: [...supplies], ways: [...ways], branches: [...branches], runs: [...runs], devices: inOrder('devices'),
    modules: [...holding('modules', none)], outputs: inOrder('outputs'),
  };
}

import { exceeds } from '../../electrical/index.ts';
import { tagOf } from '../../schedule/index.ts';
import type { Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';

/** What keeps the current of a device row from being known. */
function missingForCurrent(row: RowReader): { key: string; remedy: string } | undefined {
  if (row.number('connected') !== null && row.number('demand') !== null) return undefined;
  if (row.number('qty') === null) return { key: 'qty', remedy: 'Enter how many devices there are.' };
  if (row.number('unitDraw') === null) {
    if (row.own('type') === null) return { key: 'unitDraw', remedy: 'Choose a type, or enter the unit draw in mA.' };
    if (row.numberOf('type', 'types', 'power') !== null) {
      return { key: 'unitDraw', remedy: 'Its type gives a power: choose a rail, whose voltage makes it a current, or enter the unit draw here in mA.' };
    }
    return { key: 'unitDraw', remedy: 'Enter a draw or a power for its type, or the unit draw here in mA.' };
  }
  return { key: 'diversity', remedy: 'Correct its diversity.' };
}

function currentUnknown(rule: string, key: string): Check {
  return {
    rule, sheet: 'devices', key, severity: 'incomplete',
    find: (row) => {
      const missing = missingForCurrent(row);
      if (missing?.key !== key) return undefined;
      return { value: null, limit: null, message: `The current of ${lower(row.name)} is not known. ${missing.remedy}` };
    },
  };
}

const lower = (name: string) => name[0]!.toLowerCase() + name.slice(1);

/** What device rows are held against. */
export const deviceChecks: readonly Check[] = [
  currentUnknown('device-quantity-missing', 'qty'),
  currentUnknown('device-draw-missing', 'unitDraw'),
  currentUnknown('device-diversity-missing', 'diversity'),
  {
    rule: 'device-without-rail', sheet: 'devices', key: 'rail', severity: 'incomplete',
    find: (row) => row.own('rail') !== null ? undefined
      : { value: null, limit: null, message: `${row.name} has no rail, so its current counts in no supply. Choose a rail.` },
  },
  {
    rule: 'device-points-missing', sheet: 'devices', key: 'points', severity: 'incomplete',
    find: (row) => row.own('branch') === null || row.number('points') !== null ? undefined : {
      value: null, limit: null,
      message: `${row.name} takes an unknown number of points on branch ${row.own('branch')}. Enter its quantity and a type that says how many points one device takes.`,
    },
  },
  {
    rule: 'device-run-on-other-rail', sheet: 'devices', key: 'run', severity: 'incomplete',
    find: (row) => {
      const run = row.book.target('devices', row.row.id, 'run');
      if (run < 0 || row.own('rail') === null) return undefined;
      const rail = row.document.row('runs', run)?.cells.rail ?? null;
      if (rail === null || rail === row.own('rail')) return undefined;
      return {
        value: row.own('rail'), limit: rail,
        message: `${row.name} is on rail ${row.own('rail')} but its run ${tagOf('runs', row.document.row('runs', run)!)} is fed from rail ${rail}. Correct one of them.`,
      };
    },
  },
  {
    rule: 'device-beyond-run', sheet: 'devices', key: 'distance', severity: 'incomplete',
    find: (row) => {
      const [distance, length] = [row.number('distance'), row.numberOf('run', 'runs', 'length')];
      if (distance === null || length === null || !exceeds(distance, length)) return undefined;
      return {
        value: distance, limit: length,
        message: `${row.name} is ${distance} m along its run, which is ${length} m long. Correct one of them.`,
      };
    },
  },
];

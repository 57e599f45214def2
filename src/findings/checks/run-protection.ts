import { exceeds, outputLimit, tripMultiple, type WayKind } from '../../electrical/index.ts';
import { amps, message, roundedDown, roundedUp } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { guardOf, type Guard } from '../on-fuse.ts';
import type { RowReader } from '../row-reader.ts';
import { inItsCase, limitedBy } from '../worst-in.ts';
import { unknown, waitsFor } from './limit-checks.ts';
import { carriesOf } from './run-remedy.ts';

/** What protects the cable of a run; `undefined` where it has a way or nothing can be said. */
function withoutWay(row: RowReader): Unguarded | undefined {
  const carries = carriesOf(row);
  if (row.value('way') !== null || carries === null || row.isUnreadable('rail', 'fuse')) return undefined;
  const rail = (key: string) => row.numberOf('rail', key);
  const [rated, units, most, fuse] = [rail('rated'), rail('units'), rail('maxOutput'), rail('fuse')];
  if (rated === null || units === null || most === null) return undefined;
  const given = outputLimit(rated, units, most);
  return { ...guardOf(given, fuse, row.valueOf('rail', 'fuseKind') as WayKind | null, carries), carries, given, fuse };
}

interface Unguarded extends Guard {
  readonly carries: number;
  readonly given: number;
  readonly fuse: number | null;
}

/** A short circuit at the far end that does not make the supply's fuse act at once, where that protects the run. */
function fuseMayNotAct(row: RowReader) {
  const by = withoutWay(row)?.by;
  const [fault, usable, peak] = [row.number('faultCurrent'), row.numberOf('rail', 'usable'), row.numberOf('rail', 'peak')];
  if (by === undefined || fault === null || usable === null || peak === null) return undefined;
  const [trip, { fuse }] = [tripMultiple(by.kind)!, by];
  const [needed, most] = [fuse * trip, usable * peak];
  if (!exceeds(needed, fault)) return undefined;
  return { fuse, fault, needed, trip, isSupply: exceeds(needed, most), worst: limitedBy(row, fault) };
}

/** What runs without a way are held against. */
export const runProtectionChecks: readonly Check[] = [
  {
    rule: 'run-unprotected', sheet: 'runs', key: 'way', severity: 'over', inStatus: true,
    find: (row) => {
      const found = withoutWay(row);
      if (found?.is !== 'unsafe') return undefined;
      const { carries, given, fuse, late } = found;
      if (late !== undefined) {
        return {
          value: fuse, limit: late.most,
          message: row.say('{name} has no way, and the fuse of its supply, {fuse}, acts on overload at {k2} × its rating: its cable, which may carry {carries}, bears one of at most {most} of that kind. Give it a way, such as B 4, or a larger conductor.', {
            fuse: amps(fuse!, late.most), k2: late.k2, carries: roundedDown(amps(carries)),
            most: roundedDown(amps(late.most, fuse!)),
          }),
        };
      }
      const values = { most: roundedDown(amps(carries, given)), given: amps(given, carries) };
      return {
        value: fuse ?? given, limit: carries,
        message: fuse === null ? row.say(
          '{name} has no way, its cable may carry {most} and its supply feeds {given} for ever without a fuse: the cable may overheat. Give it a way, such as B 4, or a larger conductor.', values
        ) : row.say(
          '{name} has no way, its cable may carry {most} and the fuse of its supply, {fuse}, does not protect that: the cable may overheat. Give it a way, such as B 4, or a larger conductor.', { ...values, fuse: amps(fuse) }
        ),
      };
    },
  },
  {
    rule: 'run-fuse-may-not-act', sheet: 'runs', key: 'faultCurrent', severity: 'near', inStatus: true,
    find: (row) => {
      const found = fuseMayNotAct(row);
      if (found?.isSupply !== false) return undefined;
      const { fuse, fault, needed, trip, worst } = found;
      return {
        value: fault, limit: needed,
        message: inItsCase(row.say('{name} has no way, and a short circuit at its far end draws {fault}, where the fuse of its supply, {fuse}, needs {needed} ({trip} × its rating) to trip instantaneously. Give it a way that acts sooner, such as an electronic one, or a larger conductor or a shorter cable.', {
          fault: roundedDown(amps(fault, needed)), fuse: amps(fuse), needed: roundedUp(amps(needed, fault)), trip,
        }), row, worst),
      };
    },
  },
  {
    rule: 'run-fuse-never-acts', sheet: 'runs', key: 'faultCurrent', severity: 'near', inStatus: true, elsewhere: true,
    find: (row) => {
      const found = fuseMayNotAct(row);
      return found?.isSupply !== true ? undefined : {
        value: found.fault, limit: found.needed,
        message: row.say('{name}: a short circuit on it does not make the fuse of its supply trip instantaneously, as the supply gives too little.'),
      };
    },
  },
  waitsFor('run-fuse-fault-unknown', 'runs', 'faultCurrent', message(
    '{name}: whether a short circuit on it makes the fuse of its supply act is not wholly known, as not all that hangs on the supply is.'
  ), (row) => withoutWay(row)?.by !== undefined && (row.number('faultCurrent') === null || row.isPartial('available'))),
  {
    rule: 'run-fuse-kind-missing', sheet: 'runs', key: 'way', severity: 'incomplete', inStatus: true, elsewhere: true,
    find: (row) => {
      if (withoutWay(row)?.is !== 'unsure') return undefined;
      row.awaits('supplies', row.target('rail'), 'fuseKind');
      return unknown(row, message('{name} is protected by the fuse of its supply, of which the kind is not known.'));
    },
  },
  {
    rule: 'run-supply-unknown', sheet: 'runs', key: 'available', severity: 'incomplete', inStatus: true, elsewhere: true,
    find: (row) => {
      const isKnown = row.knows('rail', ...row.value('way') === null ? ['rated', 'units', 'maxOutput'] : ['rated'])
        && (row.value('way') !== null || !row.isUnreadable('rail', 'fuse'));
      return isKnown || !row.names('rail') ? undefined : unknown(row, message(
        '{name}: what its supply may feed is not known, so neither overload nor a short circuit is checked.'
      ));
    },
  },
];

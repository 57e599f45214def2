import {
  exceeds, mostProtection, operatingMultiple, outputLimit, tripMultiple, type WayKind,
} from '../../electrical/index.ts';
import { amps, message, roundedDown, roundedUp } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { reliesOnFuse } from '../on-fuse.ts';
import type { RowReader } from '../row-reader.ts';
import { unknown, waitsFor } from './limit-checks.ts';
import { carriesOf } from './run-remedy.ts';

/**
 * What protects the cable of a run that has no way, by IEC 60364-4-43, 433.1: the fuse of its supply, or the supply
 * itself where all its units together never give for ever what the cable does not carry.
 * @returns `undefined` where it has a way or nothing can be said; `unsure` where the kind of the fuse decides.
 */
function withoutWay(row: RowReader): Unguarded | undefined {
  const carries = carriesOf(row);
  if (row.value('way') !== null || carries === null) return undefined;
  const rail = (key: string) => row.numberOf('rail', key);
  const [rated, units, most, fuse] = [rail('rated'), rail('units'), rail('maxOutput'), rail('fuse')];
  if (rated === null || units === null || most === null) return undefined;
  const given = outputLimit(rated, units, most);
  if (!exceeds(given, carries)) return { carries, given, fuse, is: 'safe' };
  if (!reliesOnFuse(given, fuse, carries)) return { carries, given, fuse, is: 'unsafe' };
  const kind = row.valueOf('rail', 'fuseKind') as WayKind | null;
  const k2 = operatingMultiple(kind, fuse);
  if (kind === null || k2 === null) return { carries, given, fuse, is: 'unsure' };
  const bears = mostProtection(carries, k2)!;
  if (!exceeds(fuse, bears)) return { carries, given, fuse, is: 'safe', kind };
  return { carries, given, fuse, is: 'unsafe', late: { k2, most: bears } };
}

interface Unguarded {
  readonly carries: number;
  readonly given: number;
  readonly fuse: number | null;
  readonly is: 'safe' | 'unsafe' | 'unsure';
  /** Where the fuse is not too large for the cable but acts too late: its k2, and the most that would do [A]. */
  readonly late?: { readonly k2: number; readonly most: number };
  /** Kind of the fuse, where it is what makes the cable safe. */
  readonly kind?: WayKind;
}

/** A short circuit at the far end that does not make the fuse of the supply act at once, where that protects the run. */
function fuseMayNotAct(row: RowReader) {
  const { kind, fuse } = withoutWay(row) ?? {};
  const [fault, usable, peak] = [row.number('faultCurrent'), row.numberOf('rail', 'usable'), row.numberOf('rail', 'peak')];
  if (kind === undefined || fault === null || usable === null || peak === null) return undefined;
  const [trip, most] = [tripMultiple(kind)!, usable * peak];
  const needed = fuse! * trip;
  return exceeds(needed, fault) ? { fuse: fuse!, fault, needed, trip, isSupply: exceeds(needed, most) } : undefined;
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
          message: row.say('{name} has no way, and the fuse of its supply, {fuse}, acts on overload at {k2} × its rating: its cable, which may carry {carries}, bears one of at most {most} of that kind. Give it a way, such as B 4, or a thicker conductor.', {
            fuse: amps(fuse!, late.most), k2: late.k2, carries: roundedDown(amps(carries)),
            most: roundedDown(amps(late.most, fuse!)),
          }),
        };
      }
      const values = { most: roundedDown(amps(carries, given)), given: amps(given, carries) };
      return {
        value: fuse ?? given, limit: carries,
        message: fuse === null ? row.say(
          '{name} has no way, its cable may carry {most} and its supply feeds {given} for ever without a fuse: the cable may overheat. Give it a way, such as B 4, or a thicker conductor.', values
        ) : row.say(
          '{name} has no way, its cable may carry {most} and the fuse of its supply, {fuse}, does not protect that: the cable may overheat. Give it a way, such as B 4, or a thicker conductor.', { ...values, fuse: amps(fuse) }
        ),
      };
    },
  },
  {
    rule: 'run-fuse-may-not-act', sheet: 'runs', key: 'faultCurrent', severity: 'near', inStatus: true,
    find: (row) => {
      const found = fuseMayNotAct(row);
      if (found?.isSupply !== false) return undefined;
      const { fuse, fault, needed, trip } = found;
      return {
        value: fault, limit: needed,
        message: row.say('{name} has no way, and a short circuit at its far end draws {fault}, where the fuse of its supply, {fuse}, needs {needed} ({trip} × its rating) to act at once. Give it a way that acts sooner, such as an electronic one, or a thicker or shorter cable.', {
          fault: roundedDown(amps(fault, needed)), fuse: amps(fuse), needed: roundedUp(amps(needed, fault)), trip,
        }),
      };
    },
  },
  {
    rule: 'run-fuse-never-acts', sheet: 'runs', key: 'faultCurrent', severity: 'near', inStatus: true, elsewhere: true,
    find: (row) => {
      const found = fuseMayNotAct(row);
      return found?.isSupply !== true ? undefined : {
        value: found.fault, limit: found.needed,
        message: row.say('{name}: a short circuit on it does not make the fuse of its supply act at once, as the supply gives too little.'),
      };
    },
  },
  waitsFor('run-fuse-fault-unknown', 'runs', 'faultCurrent', message(
    '{name}: whether a short circuit on it makes the fuse of its supply act is not wholly known, as not all that hangs on the supply is.'
  ), (row) => withoutWay(row)?.kind !== undefined && (row.number('faultCurrent') === null || row.isPartial('available'))),
  {
    rule: 'run-fuse-kind-missing', sheet: 'runs', key: 'way', severity: 'incomplete', inStatus: true, elsewhere: true,
    find: (row) => withoutWay(row)?.is !== 'unsure' ? undefined : unknown(row, message(
      '{name} is protected by the fuse of its supply, of which the kind is not known.'
    )),
  },
  {
    rule: 'run-supply-unknown', sheet: 'runs', key: 'available', severity: 'incomplete', inStatus: true, elsewhere: true,
    find: (row) => !row.names('rail') || row.numberOf('rail', 'rated') !== null ? undefined : unknown(row, message(
      '{name}: what its supply may feed is not known, so neither overload nor a short circuit is checked.'
    )),
  },
];

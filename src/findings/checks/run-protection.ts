import { exceeds, mostProtection, operatingMultiple, outputLimit, type WayKind } from '../../electrical/index.ts';
import { amps, message, roundedDown } from '../../words/index.ts';
import type { Check } from '../check.ts';
import type { RowReader } from '../row-reader.ts';
import { unknown } from './limit-checks.ts';

/**
 * What protects the cable of a run that has no way, by IEC 60364-4-43, 433.1: the fuse of its supply, or the supply
 * itself where all its units together never give for ever what the cable does not carry.
 * @returns `undefined` where it has a way or nothing can be said; `unsure` where the kind of the fuse decides.
 */
function withoutWay(row: RowReader): Unguarded | undefined {
  const carries = row.number('carries');
  if (row.value('way') !== null || carries === null) return undefined;
  const rail = (key: string) => row.numberOf('rail', key);
  const [rated, units, most, fuse] = [rail('rated'), rail('units'), rail('maxOutput'), rail('fuse')];
  if (rated === null || units === null || most === null) return undefined;
  const given = outputLimit(rated, units, most);
  if (!exceeds(given, carries)) return { carries, given, fuse, is: 'safe' };
  if (fuse === null || exceeds(fuse, carries)) return { carries, given, fuse, is: 'unsafe' };
  const k2 = operatingMultiple(row.valueOf('rail', 'fuseKind') as WayKind | null, fuse);
  if (k2 === null) return { carries, given, fuse, is: 'unsure' };
  const bears = mostProtection(carries, k2)!;
  if (!exceeds(fuse, bears)) return { carries, given, fuse, is: 'safe' };
  return { carries, given, fuse, is: 'unsafe', late: { k2, most: bears } };
}

interface Unguarded {
  readonly carries: number;
  readonly given: number;
  readonly fuse: number | null;
  readonly is: 'safe' | 'unsafe' | 'unsure';
  /** Where the fuse is not too large for the cable but acts too late: its k2, and the most that would do [A]. */
  readonly late?: { readonly k2: number; readonly most: number };
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

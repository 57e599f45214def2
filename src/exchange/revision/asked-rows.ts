import type { Takeoff } from '../takeoff/index.ts';
import { sumsOf } from '../takeoff/sums.ts';
import type { ListRevision, RevisedRow } from './revise.ts';

/** The rows of a list of which a person is to say whether they are there already. */
export function askedRows({ rows }: Pick<ListRevision, 'rows'>): RevisedRow[] {
  return rows.filter(({ outcome }) => outcome === 'asked');
}

/** A takeoff as far as it is taken onto a schedule: lines of rows that are asked about are undecided, and say why. */
export function withAsked(takeoff: Takeoff, revision: Pick<ListRevision, 'rows'>): Takeoff {
  const asked = new Map(askedRows(revision).map(({ place, reason }) => [place, reason]));
  if (asked.size === 0) return takeoff;
  const lines = takeoff.lines.map((line) => {
    const why = line.row === undefined ? undefined : asked.get(line.row);
    return why === undefined ? line : { ...line, outcome: 'undecided' as const, reason: `${why} ${line.reason}` };
  });
  return { ...takeoff, lines, sums: sumsOf(lines) };
}

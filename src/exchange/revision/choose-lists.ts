import type { CountedList } from '../takeoff/index.ts';
import { fileOf } from '../takeoff/source-text.ts';
import { matchUnits } from './match-units.ts';
import { isGone, type Unit } from './units.ts';

/** A list that device rows of a schedule were counted in. */
export interface RevisedList {
  /** Empty where the schedule names no list for any of its rows. */
  readonly name: string;
  /** How many device rows it has there. */
  readonly rows: number;
  /** Whether the list that comes takes its place. */
  readonly isRevised: boolean;
}

interface ChosenLists {
  readonly lists: readonly RevisedList[];
  readonly isAsked: boolean;
  /** Whether the list that comes speaks of these rows: those that it no longer has went. */
  readonly isMeant: (unit: Unit) => boolean;
}

/**
 * Says of which earlier lists a list is a revision: of those that a person names; else of that of the same name; else
 * of the one of which it has rows. One that has rows of none is a further list, from which nothing went. Where several
 * files are possible, or less than half of the rows of one under another name come again, a person is asked, and the
 * one of which it has the most rows stands until then. Rows of a schedule that names no list at all count as one list.
 */
export function chooseLists(units: readonly Unit[], list: CountedList, named?: readonly string[]): ChosenLists {
  const present = units.filter((unit) => !isGone(unit));
  const known = [...new Set(present.flatMap(({ lists }) => lists))];
  const names = known.length === 0 && present.length > 0 ? [''] : known;
  const isOf = ({ lists, source }: Unit, name: string) => name === '' ? source === '' : lists.includes(name);
  const rowsOf = (of: readonly Unit[], name: string) =>
    of.filter((unit) => isOf(unit, name)).reduce((sum, { parts }) => sum + parts.length, 0);
  const same = names.filter((name) => list.names.includes(name));
  const matched = named === undefined && same.length === 0 ? matchedUnits() : [];
  const found = named ?? (same.length > 0 ? same : foundLists());
  const [files, coming] = [found, list.names].map((of) => [...new Set(of.map(fileOf))]) as [string[], string[]];
  const most = Math.max(1, coming.length);
  const isSeveral = named === undefined && same.length === 0 && files.length > most;
  const isSmall = matched.length > 0 && !names.includes('') && 2 * sumOf(matched, found) < sumOf(present, found);
  const isAsked = isSeveral || isSmall;
  const meant = new Set(isSeveral ? files.slice(0, most) : files);
  // Several sheets speak of the whole file: one that it no longer has went with all of its rows.
  const chosen = new Set(named === undefined && list.names.length > 1
    ? names.filter((name) => meant.has(fileOf(name))) : found.filter((name) => meant.has(fileOf(name))));
  return {
    lists: names.map((name) => ({ name, rows: rowsOf(present, name), isRevised: chosen.has(name) })),
    isAsked,
    isMeant: (unit) => unit.source !== '' && isGone(unit) || [...chosen].some((name) => isOf(unit, name)),
  };

  function matchedUnits(): Unit[] {
    const counted = present.filter((unit) => names.some((name) => isOf(unit, name)));
    return matchUnits(list, counted).matches.flatMap((match) => match.units);
  }

  function sumOf(of: readonly Unit[], lists: readonly string[]): number {
    return lists.reduce((sum, name) => sum + rowsOf(of, name), 0);
  }

  /** Those of which the list has rows, the one with the most of them first. */
  function foundLists(): string[] {
    return names.filter((name) => rowsOf(matched, name) > 0)
      .sort((one, other) => rowsOf(matched, other) - rowsOf(matched, one));
  }
}

import type { CountedList } from '../takeoff/index.ts';
import { fileOf } from '../takeoff/source-text.ts';
import { matchUnits, type MatchOptions, type Matches } from './match-units.ts';
import { isGone, type Unit } from './units.ts';

/** A list that device rows of a schedule were counted in. */
export interface RevisedList {
  /** Empty for the rows for which the schedule names no list. */
  readonly name: string;
  /** How many device rows it has there. */
  readonly rows: number;
  /** How many of these the list that comes has again. */
  readonly matched: number;
  /** Whether the list that comes takes its place. */
  readonly isRevised: boolean;
}

interface ChosenLists {
  readonly lists: readonly RevisedList[];
  readonly isAsked: boolean;
  /** How many of its rows no device row has. */
  readonly fresh: number;
  /** Whether the list that comes speaks of these rows: those that it no longer has went. */
  readonly isMeant: (unit: Unit) => boolean;
  /** Its rows held against those of which it speaks, and those of no list. */
  readonly matches: Matches;
}

/**
 * Says of which earlier lists a list is a revision: of those that a person names; else of that of the same name; else
 * of the one of which it has rows. One that has rows of none is a further list, from which nothing went. A person is
 * asked where several files are possible, where less than half of the rows of one under another name come again, and
 * where rows that name no list come again in part; the list of which it has the most rows stands until then.
 */
export function chooseLists(
  units: readonly Unit[], list: CountedList, named?: readonly string[], options: MatchOptions = {},
): ChosenLists {
  const present = units.filter((unit) => !isGone(unit));
  const known = [...new Set(present.flatMap(({ lists }) => lists))];
  const names = present.some(({ source }) => source === '') ? [...known, ''] : known;
  const isOf = ({ lists, source }: Unit, name: string) => name === '' ? source === '' : lists.includes(name);
  const rowsOf = (of: readonly Unit[], name: string) =>
    of.filter((unit) => isOf(unit, name)).reduce((sum, { parts }) => sum + parts.length, 0);
  const sumOf = (of: readonly Unit[], lists: readonly string[]) =>
    lists.reduce((sum, name) => sum + rowsOf(of, name), 0);

  const first = matchUnits(list, units, { ...options, isMeant: () => true });
  const matched = first.matches.flatMap((match) => match.units).filter((unit) => !isGone(unit));
  const same = known.filter((name) => list.names.includes(name));
  const found = named ?? (same.length > 0 ? same : foundLists());
  const [files, coming] = [found, list.names].map((of) => [...new Set(of.map(fileOf))]) as [string[], string[]];
  const most = Math.max(1, coming.length);
  const isSeveral = named === undefined && same.length === 0 && files.length > most;
  const isSmall = same.length === 0 && 2 * sumOf(matched, found) < sumOf(present, found);
  const fresh = first.matches.filter((match) => match.units.length === 0).length;
  const isNameless = found.includes('') && (rowsOf(matched, '') < rowsOf(present, '') || fresh > 0);
  const meant = new Set(isSeveral ? files.slice(0, most) : files);
  // Several sheets speak of the whole file: one that it no longer has went with all of its rows.
  const chosen = new Set(named === undefined && list.names.length > 1
    ? names.filter((name) => meant.has(fileOf(name))) : found.filter((name) => meant.has(fileOf(name))));
  // Of what a person calls a further list, no row is one that is there.
  const isFurther = named?.length === 0;
  const isMeant = (unit: Unit) => !isFurther && (unit.source !== '' && isGone(unit) || [...chosen].some((name) => isOf(unit, name)));
  return {
    lists: names.map((name) =>
      ({ name, rows: rowsOf(present, name), matched: rowsOf(matched, name), isRevised: chosen.has(name) })),
    isAsked: named === undefined && (isSeveral || isSmall || isNameless), fresh, isMeant,
    // Rows of lists of which it does not speak have nothing to do with it; those of no list may be meant.
    matches: first.matches.every((match) => match.units.every(isMeant))
      ? { ...first, left: first.left.filter(isMeantOrNone) }
      : matchUnits(list, units.filter(isMeantOrNone), { ...options, isMeant }),
  };

  function isMeantOrNone(unit: Unit): boolean {
    return isMeant(unit) || (unit.source === '' && !isFurther);
  }

  /**
   * Those of which the list has rows, the one with the most of them first; rows of no list only where no list has as
   * many.
   */
  function foundLists(): string[] {
    const [most, ...others] = names.filter((name) => rowsOf(matched, name) > 0)
      .sort((one, other) => rowsOf(matched, other) - rowsOf(matched, one));
    return most === undefined ? [] : [most, ...others.filter((name) => name !== '')];
  }
}

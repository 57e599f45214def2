import {
  columnOf, FileRows, grouped, identityOf, inputColumns, isFormula, isNumeric, nameOf, namingKeys, tagOf, writeKeyForm,
  type Cells, type CellValue, type ScheduleDocument, type SheetName,
} from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import { readAliases, withAliases } from '../takeoff/names/aliases.ts';
import { ListFormulas, type ListRows, type TakenRow } from './list-formulas.ts';

/** A cell of which a list says something else than the schedule; formulas as files write them. */
export interface CellUpdate {
  readonly key: string;
  readonly before: CellValue;
  readonly after: CellValue;
  /** What the cell is given: as `after`, a formula in the form that documents keep. */
  readonly value: CellValue;
  /** A person typed a formula there, which a list takes the place of only where somebody says so. */
  readonly isOwnFormula: boolean;
}

/** A row of the schedule of which a list says something else. */
export interface RowUpdate {
  /** What names it: its tag, or «evening, blinds». */
  readonly tag: string;
  readonly id: number;
  /** Its number in the sheet, from 1. */
  readonly row: number;
  readonly cells: readonly CellUpdate[];
}

/** A row of a list that cannot be taken, and why. */
export interface LeftOutRow {
  /** Its line in the file, or its number among the rows of a schedule; from 1. */
  readonly line: number;
  readonly tag: string;
  /** One sentence that begins with the place, and says what would put it right. */
  readonly reason: string;
}

/** What a list would change in the rows of its sheet, matched by what names them: each of its rows is in one. */
export interface ListUpdate {
  readonly sheet: SheetName;
  readonly changed: readonly RowUpdate[];
  /** Rows whose tag does not stand in the schedule; formulas in the form that documents keep. */
  readonly added: readonly Cells[];
  /** Rows that say the same as the schedule. */
  readonly same: number;
  readonly leftOut: readonly LeftOutRow[];
  /** What names the rows of the schedule that are not in the list; they stay as they are. None where it is a part. */
  readonly absent: readonly string[];
  /** The list says nothing of rows that it does not hold. */
  readonly isPart?: true;
}

/**
 * Holds a list against the rows of its sheet, by tag. What the list leaves empty says nothing; a cell that is empty in
 * the schedule and has the very default that the list states is the same. A row whose tag is missing, or stands more
 * than once in the list or in the schedule, is left out, since nobody can know which one is meant; so is a type under a
 * name that is an alias of another one there. Aliases of a list come to those that are there.
 * @param words the language of the reasons.
 */
export function compareWithList(document: ScheduleDocument, list: ListRows, words: Words = ENGLISH): ListUpdate {
  const { sheet, rows, lines } = list;
  const there = grouped(document.rows(sheet), (row) => identityOf(sheet, row) ?? '');
  const called = sheet === 'types' ? typesByAlias(document) : new Map<string, string>();
  const listed = grouped(rows, (cells) => identityOf(sheet, { cells }) ?? '');
  const leftOut: LeftOutRow[] = [];
  const leaveOut = (place: number, reason: string) => {
    const line = lines?.[place] ?? place + 1;
    const tag = nameOf(sheet, { cells: rows[place]! });
    const sentence = lines === undefined ? words.say('Row {row} of the list: {reason}', { row: line, reason })
      : words.say('Line {line}: {reason}', { line, reason });
    leftOut.push({ line, tag, reason: sentence });
  };
  const reasonOf = (cells: Cells): string | undefined => {
    const [tag, name] = [identityOf(sheet, { cells }), nameOf(sheet, { cells })];
    const titleOf = (keys: readonly string[]) => keys.map((key) => words.text(columnOf(sheet, key).title)).join(', ');
    const tagTitle = titleOf(namingKeys(sheet));
    if (tag === undefined) {
      const missing = namingKeys(sheet).filter((key) => (cells[key] ?? null) === null);
      return words.say('it has no {tag}, which would name its row. Enter one.', { tag: titleOf(missing) });
    }
    if (listed.get(tag)!.length > 1) {
      return words.say('“{name}” stands {count} times in the list. Leave one of them.',
        { name, count: listed.get(tag)!.length });
    }
    const known = there.get(tag)?.length ?? 0;
    const type = known > 0 ? undefined : called.get(tag.toLowerCase());
    if (type !== undefined) {
      return words.say('“{name}” is an alias of “{type}” in the schedule. Call it so in the list, or take the alias out there.',
        { name, type });
    }
    return known < 2 ? undefined : words.say(
      '{count} rows of the schedule are called “{name}”. Give each a {tag} of its own there.',
      { name, count: known, tag: tagTitle });
  };

  const taken = rows.map((cells, place) => ({ cells, place, tag: identityOf(sheet, { cells }) ?? '' }))
    .filter(({ cells }) => Object.keys(cells).length > 0)
    .filter(({ place, cells }) => {
      const reason = reasonOf(cells);
      if (reason !== undefined) leaveOut(place, reason);
      return reason === undefined;
    });
  const read = readFormulas(document, list, taken.map(({ place, tag }) => ({ place, id: there.get(tag)?.[0]?.id })),
    leaveOut, words);
  const fileRows = new FileRows((name) => document.rows(name), (name, id) => document.position(name, id));
  const written = (value: CellValue, row: number): CellValue =>
    (isFormula(value) ? writeKeyForm(value, { sheet, row, rows: fileRows }) : value);

  const changed: RowUpdate[] = [];
  const added: Cells[] = [];
  for (const { cells, place, tag } of taken) {
    const fresh = read.get(place);
    if (fresh === undefined) continue;
    const old = there.get(tag)?.[0];
    if (old === undefined) {
      added.push(fresh);
      continue;
    }
    const at = document.position(sheet, old.id);
    const differing = inputColumns(sheet).flatMap((column): CellUpdate[] => {
      const { key } = column;
      const before = old.cells[key] ?? null;
      const stated = fresh[key] ?? null;
      // What persons confirmed of a name stays: a list only adds to it.
      const isAdded = sheet === 'types' && key === 'aliases' && stated !== null;
      const value = isAdded ? withAliases(before, readAliases(stated)) : stated;
      const isDefault = before === null && column.derived === undefined && column.default === value;
      if (value === null || before === value || isDefault) return [];
      const isOwnFormula = isFormula(before) && isNumeric(column);
      const after = isAdded ? value : cells[key]!;
      return [{ key, before: isOwnFormula ? written(before, at) : before, after, value, isOwnFormula }];
    });
    if (differing.length > 0) changed.push({ tag: nameOf(sheet, old), id: old.id, row: at + 1, cells: differing });
  }
  const same = read.size - changed.length - added.length;
  const absent = list.isPart === true ? []
    : [...there].filter(([tag]) => tag !== '' && !listed.has(tag)).map(([, [row]]) => nameOf(sheet, row!));
  return {
    sheet, changed, added, same, leftOut: leftOut.sort((one, other) => one.line - other.line), absent,
    ...list.isPart === true ? { isPart: true as const } : {},
  };
}

/**
 * The cells of rows that are taken, by their place. A row with a formula that cannot be read is left out, and so is one
 * whose formula names it.
 */
function readFormulas(
  document: ScheduleDocument, list: ListRows, taken: readonly TakenRow[],
  leaveOut: (place: number, reason: string) => void, words: Words,
): ReadonlyMap<number, Cells> {
  const formulas = new ListFormulas(document, list, taken);
  const read = taken.map((row) => ({ row, ...formulas.read(row.place, words) }));
  const good = read.filter((each) => each.ok);
  if (good.length === read.length) return new Map(good.map(({ row, cells }) => [row.place, cells]));
  for (const each of read) if (!each.ok) leaveOut(each.row.place, each.problem);
  return readFormulas(document, list, good.map(({ row }) => row), leaveOut, words);
}

/** The types of the schedule by their aliases, in small letters; of two that share one the first. */
function typesByAlias(document: ScheduleDocument): ReadonlyMap<string, string> {
  return new Map([...document.rows('types')].reverse().filter((row) => tagOf('types', row) !== '').flatMap((row) =>
    readAliases(row.cells.aliases).map((alias): [string, string] => [alias.toLowerCase(), tagOf('types', row)])));
}

import {
  asEntered, insertRows, SCHEMA, setCells, type Change, type ScheduleDocument,
} from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import type { CellUpdate, ListUpdate, RowUpdate } from './compare-with-list.ts';

/** What of a list is taken. */
export interface UpdateOptions {
  /** Which cells; by default all but those in which a person typed a formula. */
  readonly takes?: (row: RowUpdate, cell: CellUpdate) => boolean;
  /** Whether rows that are new come behind the others; they do by default. */
  readonly adds?: boolean;
  /** The language in which kinds of ways may be named beside English. */
  readonly words?: Words;
}

/**
 * Changes that bring a list into the schedule against which it was held: one action for `LoadSchedule.act`. The
 * document must not have changed since.
 */
export function updateChanges(
  document: ScheduleDocument, { sheet, changed, added }: ListUpdate,
  { takes = (_row, cell) => !cell.isOwnFormula, adds = true, words = ENGLISH }: UpdateOptions = {},
): Change[] {
  const edits = changed.flatMap((row) => row.cells.filter((cell) => takes(row, cell))
    .map(({ key, value }) => ({ sheet, id: row.id, key, value })));
  const fresh = adds ? insertRows(document, sheet, document.rows(sheet).length, added) : [];
  return asEntered(document, [...setCells(document, edits), ...fresh], words);
}

/** What a list would change, in a few words: «3 changed, 1 new, 48 not in the list». */
export function updateCounts({ changed, added, absent, leftOut, isPart }: ListUpdate, words: Words = ENGLISH): string {
  const counts = isPart === true ? words.say('{changed} changed, {added} new', { changed: changed.length, added: added.length })
    : words.say('{changed} changed, {added} new, {absent} not in the list',
      { changed: changed.length, added: added.length, absent: absent.length });
  return leftOut.length === 0 ? counts
    : words.say('{counts}, {count} left out', { counts, count: leftOut.length });
}

/** Name of the action for a person: «Device types updated from office.csv: 3 changed, 1 new, 48 not in the list». */
export function updateLabel(update: ListUpdate, file: string, words: Words = ENGLISH): string {
  const sheet = words.text(SCHEMA[update.sheet].title);
  return words.say('{sheet} updated from {file}: {counts}', { sheet, file, counts: updateCounts(update, words) });
}

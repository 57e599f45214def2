import {
  insertRows, SCHEMA, setCells, withWays, type Change, type ScheduleDocument,
} from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import type { CellUpdate, ListUpdate, RowUpdate } from './compare-list.ts';

/** Whether a list takes the place of a formula that a person typed. */
export type FormulaChoice = (row: RowUpdate, cell: CellUpdate) => boolean;

/**
 * Changes that bring a list into the schedule against which it was held: one action for `LoadSchedule.act`. The
 * document must not have changed since.
 * @param replaces which formulas make way; by default none.
 */
export function updateChanges(
  document: ScheduleDocument, { sheet, changed, added }: ListUpdate, replaces: FormulaChoice = () => false,
  words: Words = ENGLISH,
): Change[] {
  const edits = changed.flatMap((row) => row.cells.filter((cell) => !cell.isOwnFormula || replaces(row, cell))
    .map(({ key, value }) => ({ sheet, id: row.id, key, value })));
  const changes = [
    ...setCells(document, edits), ...insertRows(document, sheet, document.rows(sheet).length, added),
  ];
  return sheet === 'runs' ? withWays(document, changes, words) : changes;
}

/** What a list would change, in a few words: «3 changed, 1 new, 48 not in the list». */
export function updateCounts({ changed, added, absent, leftOut }: ListUpdate, words: Words = ENGLISH): string {
  const counts = words.say('{changed} changed, {added} new, {absent} not in the list',
    { changed: changed.length, added: added.length, absent: absent.length });
  return leftOut.length === 0 ? counts
    : words.say('{counts}, {count} left out', { counts, count: leftOut.length });
}

/** Name of the action for a person: «Device types updated from office.csv: 3 changed, 1 new, 48 not in the list». */
export function updateLabel(update: ListUpdate, file: string, words: Words = ENGLISH): string {
  const sheet = words.text(SCHEMA[update.sheet].title);
  return words.say('{sheet} updated from {file}: {counts}', { sheet, file, counts: updateCounts(update, words) });
}

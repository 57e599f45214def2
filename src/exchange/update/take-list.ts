import { withRowsAdded, type Change, type Content, type ScheduleDocument } from '../../schedule/index.ts';
import { ENGLISH } from '../../words/index.ts';
import { compareWithList, type ListUpdate } from './compare-with-list.ts';
import type { ListRows } from './list-formulas.ts';
import type { ListWay } from './list-ways.ts';
import { listWords, replaceWithList, type ContentWithList } from './replace-list.ts';
import { updateChanges, updateLabel, type UpdateOptions } from './update-changes.ts';

/** A list as an action: changes for `LoadSchedule.act`, or a content for `LoadSchedule.load`. */
export type TakenList = ContentWithList | {
  readonly changes: readonly Change[];
  readonly label: string;
  readonly notes: readonly string[];
  readonly update: ListUpdate;
};

/**
 * Takes the rows of a list into their sheet, in one of the ways that there are; nothing is changed yet.
 * @param file what the list is called in the name of the action.
 * @param options what an update takes; the language of what is said.
 */
export function takeList(
  schedule: { readonly document: ScheduleDocument; content(): Content }, list: ListRows, file: string, how: ListWay,
  options: UpdateOptions = {},
): TakenList {
  const { words = ENGLISH } = options;
  if (how === 'update') {
    const update = compareWithList(schedule.document, list, words);
    return {
      update, changes: updateChanges(schedule.document, update, options), label: updateLabel(update, file, words),
      notes: update.leftOut.map(({ reason }) => reason),
    };
  }
  const content = schedule.content();
  return how === 'replace' ? replaceWithList(content, list, file, words) : {
    content: withRowsAdded(content, list.sheet, list.rows), notes: [],
    label: words.say('{sheet}: {n, plural, one {# row} other {# rows}} from {file} added to {before}',
      listWords(content, list, file, words)),
  };
}

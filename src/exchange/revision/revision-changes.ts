import { insertRows, removeRows, setCells, type Change, type ScheduleDocument } from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import { typeChanges, type Takeoff } from '../takeoff/index.ts';
import { countOutcomes, type ListRevision } from './revise.ts';

/**
 * Changes that take a list onto the schedule that it was held against, new types and aliases included: one action for
 * `LoadSchedule.act`, so that one undo takes it all back.
 */
export function revisionChanges(
  document: ScheduleDocument, takeoff: Takeoff, { edits, coming, deleted }: ListRevision, words: Words = ENGLISH,
): Change[] {
  return [
    ...typeChanges(document, takeoff, words),
    // Formulas that name what is deleted are rewritten first: a quantity of the list may take the place of one.
    ...removeRows(document, 'devices', deleted),
    ...setCells(document, edits),
    ...insertRows(document, 'devices', document.rows('devices').length - deleted.length, coming),
  ];
}

/** Name of the action for a person: «Revised list: 2 came, 3 changed, 1 went, 40 kept». */
export function revisionLabel(revision: ListRevision, words: Words = ENGLISH): string {
  return words.say('Revised list: {came} came, {changed} changed, {went} went, {kept} kept', countOutcomes(revision));
}

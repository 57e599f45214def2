import { insertRows, setCells, type Cells, type Change, type ScheduleDocument } from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import { typesWithVoltage } from '../types-with-voltage.ts';
import { countedList } from './counted-list.ts';
import { withAliases } from './names/aliases.ts';
import { newTypes } from './new-types.ts';
import { listsAfter } from './office-lists.ts';
import type { Takeoff } from './read-takeoff.ts';
import { fileOf, listsOf } from './source-text.ts';

/**
 * Changes that bring what is taken of a takeoff into a schedule: new types, confirmed names as aliases of theirs, and
 * the device rows behind those that are there, and what the office calls things. One action for `LoadSchedule.act`, so
 * that one undo takes it all back.
 * @param words the language of the notes of new types.
 * @param name what a list is called that is no file, for the source of its rows.
 */
export function takeoffChanges(
  document: ScheduleDocument, takeoff: Takeoff, words: Words = ENGLISH, name?: string,
): Change[] {
  return [
    ...typeChanges(document, takeoff, words),
    ...insertRows(document, 'devices', document.rows('devices').length, countedList(takeoff, name, filesIn(document)).rows),
  ];
}

/** The part of them that concerns no device row: types, their aliases, and what the office calls things. */
export function typeChanges(document: ScheduleDocument, takeoff: Takeoff, words: Words = ENGLISH): Change[] {
  const lists = listsAfter(document.lists, takeoff);
  // A new type is made for the rail that its devices hang on.
  const added = typesWithVoltage({
    types: newTypes(takeoff, words), devices: takeoff.rows, runs: [],
    supplies: document.rows('supplies').map(({ cells }) => cells),
  }, (cells: Cells) => cells, (cells, voltage) => ({ ...cells, voltage }));
  return [
    ...setCells(document, aliasEdits(document, takeoff)),
    ...insertRows(document, 'types', document.rows('types').length, added),
    ...(lists === document.lists ? [] : [{ op: 'lists' as const, lists }]),
  ];
}

/** The files, or whatever was pasted, that device rows were counted in. */
function filesIn(document: ScheduleDocument): Set<string> {
  return new Set(document.rows('devices').flatMap(({ cells: { source } }) =>
    typeof source === 'string' ? listsOf(source).map(fileOf) : []));
}

/** Name of the action for a person: «Takeoff of 40 devices in 12 rows». */
export function takeoffLabel({ sums, rows }: Takeoff, words: Words = ENGLISH): string {
  return words.say('Takeoff of {devices, plural, one {# device} other {# devices}} in {rows, plural, one {# row} other {# rows}}', {
    devices: sums.taken, rows: rows.length,
  });
}

function aliasEdits(document: ScheduleDocument, { names }: Takeoff) {
  const byType = new Map<string, string[]>();
  for (const { state, type, texts, match } of names) {
    if (state !== 'confirmed' || type === null || match.type === type) continue;
    byType.set(type, [...byType.get(type) ?? [], texts.join(', ')]);
  }
  return document.rows('types').flatMap(({ id, cells }) => {
    const added = typeof cells.type === 'string' ? byType.get(cells.type) : undefined;
    return added === undefined ? []
      : [{ sheet: 'types' as const, id, key: 'aliases', value: withAliases(cells.aliases, added) }];
  });
}

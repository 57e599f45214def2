import { grouped, insertRows, setCells, type Cells, type Change, type ScheduleDocument } from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import { typesWithVoltage } from '../types-with-voltage.ts';
import { countedList } from './counted-list.ts';
import { withAliases } from './names/aliases.ts';
import { TypeIndex } from './names/type-index.ts';
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
  const present = document.rows('types');
  const aliases = aliasesAfter([...present.map(({ cells }) => cells), ...added], takeoff);
  const aliasOfType = (cells: Cells) => withAliases(cells.aliases, aliases.get(String(cells.type)) ?? []);
  return [
    ...setCells(document, present.filter(({ cells }) => aliases.has(String(cells.type)))
      .map(({ id, cells }) => ({ sheet: 'types' as const, id, key: 'aliases', value: aliasOfType(cells) }))),
    ...insertRows(document, 'types', present.length,
      added.map((cells) => aliases.has(String(cells.type)) ? { ...cells, aliases: aliasOfType(cells) } : cells)),
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

/**
 * What is to be kept as an alias of each type: names that were confirmed, and those that would be asked about with the
 * types that there are then, as «K2, wall station» once another device made K2 a type.
 */
function aliasesAfter(types: readonly Cells[], { names, rows }: Takeoff): Map<string, string[]> {
  const index = new TypeIndex(types);
  const used = new Set(rows.map(({ type }) => type));
  const renamed = names.filter(({ state, type, texts }) =>
    type !== null && (state === 'confirmed' || used.has(type)) && index.match(texts).type !== type);
  return new Map([...grouped(renamed, ({ type }) => type!)].map(([type, of]) => [type, of.map(({ texts }) => texts.join(', '))]));
}

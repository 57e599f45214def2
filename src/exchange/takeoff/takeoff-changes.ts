import { insertRows, setCells, type Cells, type Change, type ScheduleDocument } from '../../schedule/index.ts';
import { ENGLISH, message, type Words } from '../../words/index.ts';
import { typesWithVoltage } from '../types-with-voltage.ts';
import { withAliases } from './names/aliases.ts';
import type { Takeoff } from './read-takeoff.ts';

/** What a new type says of itself until somebody completes it. */
const NEW_TYPE_NOTE = message('From a takeoff. Enter its draw or its power, and say where the figure comes from.');

/**
 * Changes that bring what is taken of a takeoff into a schedule: new types, confirmed names as aliases of theirs, and
 * the device rows behind those that are there. One action for `LoadSchedule.act`, so that one undo takes it all back.
 * @param words the language of the notes of new types.
 */
export function takeoffChanges(document: ScheduleDocument, takeoff: Takeoff, words: Words = ENGLISH): Change[] {
  const types = document.rows('types');
  // A new type is made for the rail that its devices hang on.
  const added = typesWithVoltage({
    types: newTypes(takeoff, words), devices: takeoff.rows, runs: [],
    supplies: document.rows('supplies').map(({ cells }) => cells),
  }, (cells: Cells) => cells, (cells, voltage) => ({ ...cells, voltage }));
  return [
    ...setCells(document, aliasEdits(document, takeoff)),
    ...insertRows(document, 'types', types.length, added),
    ...insertRows(document, 'devices', document.rows('devices').length, takeoff.rows),
  ];
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

function newTypes({ names, rows }: Takeoff, words: Words): Cells[] {
  const used = new Set(rows.map(({ type }) => type));
  const added = new Map<string, Cells>();
  for (const { state, type, texts } of names) {
    if (state !== 'new' || type === null || added.has(type) || !used.has(type)) continue;
    const cells: Cells = { type, note: words.say(NEW_TYPE_NOTE) };
    if (texts[1] !== undefined) cells.description = texts[1];
    added.set(type, cells);
  }
  return [...added.values()];
}

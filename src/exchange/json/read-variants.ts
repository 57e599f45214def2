import {
  columnOf, ScheduleDocument, SHEET_NAMES, toContent, toSnapshot, type Variant, type VariantPart,
} from '../../schedule/index.ts';
import { ENGLISH } from '../../words/index.ts';
import { readAccepted } from './read-accepted.ts';
import { placedInRow, readSheets } from './read-sheets.ts';
import { Reading } from './reading.ts';
import { isHarmful } from './unknown-keys.ts';

/** Reads what is kept beside a schedule to be tried out; keys that are not known stay with it. */
export function readVariants(value: unknown, reading: Reading): Variant[] {
  const { words } = reading;
  const names = new Set<string>();
  return reading.array(value, '/variants', words.say('“{text}”', { text: 'variants' })).map((item, index) => {
    const path = `/variants/${index}`;
    const called = words.say('Variant {number}', { number: index + 1 });
    const entry = reading.object(item, path, called);
    for (const [key, isNeeded] of [['name', true], ['note', false], ['date', false]] as const) {
      if (typeof entry[key] === 'string' || (entry[key] === undefined && !isNeeded)) continue;
      reading.wrongKind(
        entry[key] ?? null, `${path}/${key}`, words.say('{name}: “{key}” must be a text', { name: called, key }), 'string'
      );
    }
    const name = typeof entry.name === 'string' ? entry.name.trim() : '';
    if (typeof entry.name === 'string' && (name === '' || names.has(name))) {
      reading.list.add('value-refused', `${path}/name`, name === ''
        ? words.say('{name} has an empty name. Give it one.', { name: called })
        : words.say('{name}: there is another variant “{text}”. Give each a name of its own.', { name: called, text: name }),
      { received: JSON.stringify(entry.name) });
    }
    names.add(name);
    const [base, tried] = (['base', 'tried'] as const).map((key) =>
      readPart(entry[key], reading, `${path}/${key}`, words.say('{name}, “{key}”', { name: called, key })));
    for (const sheet of SHEET_NAMES) {
      if ((base!.sheets[sheet] === undefined) === (tried!.sheets[sheet] === undefined)) continue;
      const key = base!.sheets[sheet] === undefined ? 'base' : 'tried';
      reading.list.add('value-refused', `${path}/${key}`, words.say(
        '{name}: “{key}” has no sheet “{sheet}”, which the other part has. Both state the same sheets: add it, or take it out there.',
        { name: called, key, sheet }));
    }
    const others = Object.fromEntries(Object.entries(entry).filter(([key]) => !isHarmful(key)));
    return { ...others, name, base: base!, tried: tried! };
  });
}

/** Whether what is kept as variants, of whatever shape, could be read from a file. */
export function areVariants(value: unknown): value is readonly Variant[] {
  const reading = new Reading(ENGLISH);
  readVariants(value, reading);
  return reading.list.total === 0;
}

function readPart(value: unknown, outer: Reading, path: string, name: string): VariantPart {
  const { words } = outer;
  if (value === undefined) {
    outer.wrongKind(null, path, words.say('{name} is missing: it must be an object', { name }), 'object');
  }
  const part = outer.object(value, path, name);
  const reading = new Reading(words);
  const { known, unknown } = readSheets(part.sheets ?? {}, reading);
  const stated = SHEET_NAMES.filter((sheet) => Object.hasOwn(Object(part.sheets) as object, sheet));
  const accepted = readAccepted(part.accepted, reading);
  // Its formulas name nothing but rows of its own sheets.
  const { snapshot, problems } = toSnapshot({ details: {}, sheets: known, accepted }, words);
  for (const { sheet, row, key, text, problem } of problems) {
    reading.list.add('formula-unreadable', `/sheets/${sheet}/${row - 1}/${key}`,
      placedInRow(sheet, row, columnOf(sheet, key), problem, words), { received: text });
  }
  outer.take(reading, path, name);
  const content = toContent(new ScheduleDocument(snapshot));
  const others = Object.fromEntries(Object.entries(part).filter(([key]) => key !== 'accepted' && !isHarmful(key)));
  return {
    ...others, ...(content.accepted!.length === 0 ? {} : { accepted: content.accepted! }),
    sheets: { ...unknown, ...Object.fromEntries(stated.map((sheet) => [sheet, content.sheets[sheet]])) },
  };
}

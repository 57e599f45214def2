import { SHEET_NAMES, type Acceptance } from '../../schedule/index.ts';
import type { Reading } from './reading.ts';

const TEXTS = ['sheet', 'tag', 'rule', 'reason', 'name', 'date'] as const;

/** Reads the findings that somebody accepted; keys that are not known stay with them. */
export function readAccepted(value: unknown, reading: Reading): Acceptance[] {
  const { words } = reading;
  return reading.array(value, '/accepted', words.say('“{text}”', { text: 'accepted' })).map((item, index) => {
    const path = `/accepted/${index}`;
    const name = words.say('Accepted finding {number}', { number: index + 1 });
    const entry = reading.object(item, path, name);
    const { sheet, value: accepted = null, limit, key: column } = entry;
    for (const key of TEXTS) {
      if (typeof entry[key] === 'string') continue;
      reading.wrongKind(
        entry[key] ?? null, `${path}/${key}`, words.say('{name}: “{key}” must be a text', { name, key }), 'string'
      );
    }
    if (typeof sheet === 'string' && !(SHEET_NAMES as readonly string[]).includes(sheet)) {
      const message = words.say('{name}: there is no sheet “{sheet}”; there are {sheets}. Write one of these.', {
        name, sheet, sheets: SHEET_NAMES.join(', '),
      });
      reading.list.add('value-refused', `${path}/sheet`, message, { received: sheet });
    }
    for (const [key, item] of [['value', accepted], ['limit', limit]] as const) {
      if (typeof item !== 'object' || item === null) continue;
      reading.wrongKind(
        item, `${path}/${key}`, words.say('{name}: “{key}” must be a single value', { name, key }), 'value'
      );
    }
    if (column !== undefined && typeof column !== 'string') {
      reading.wrongKind(
        column, `${path}/key`, words.say('{name}: “{key}” must be a text', { name, key: 'key' }), 'string'
      );
    }
    for (const key of ['row', 'waiting'] as const) {
      const number = entry[key];
      if (number === undefined || (Number.isInteger(number) && (number as number) >= 0)) continue;
      reading.wrongKind(
        number, `${path}/${key}`, words.say('{name}: “{key}” must be a whole number, 0 or more', { name, key }), 'integer'
      );
    }
    return { ...entry, value: accepted } as unknown as Acceptance;
  });
}

import { DETAIL_KEYS, type DetailKey, type Details } from '../../schedule/index.ts';
import type { Reading } from './reading.ts';
import { isHarmful } from './unknown-keys.ts';

/** Reads the details of a schedule file; a number, such as a revision, is taken as text. */
export function readDetails(value: unknown, reading: Reading): { known: Details; unknown: Record<string, unknown> } {
  const known: Details = {};
  const unknown: Record<string, unknown> = {};
  const { words } = reading;
  const name = words.say('“{text}”', { text: 'details' });
  for (const [key, item] of Object.entries(reading.object(value, '/details', name))) {
    if (isHarmful(key)) continue;
    if (!(DETAIL_KEYS as readonly string[]).includes(key)) {
      unknown[key] = item;
      reading.kept.add(
        words.say('“{name}” has the unknown key “{key}”; it is kept and written back.', { name: 'details', key })
      );
    } else if (typeof item === 'string' || typeof item === 'number') {
      if (item !== '') known[key as DetailKey] = String(item);
    } else if (item !== null) {
      reading.wrongKind(item, `/details/${key}`, words.say('The detail “{key}” must be a text', { key }), 'string');
    }
  }
  return { known, unknown };
}

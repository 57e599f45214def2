import { DETAIL_KEYS, type DetailKey, type Details } from '../../schedule/index.ts';
import type { Reading } from './reading.ts';
import { isHarmful } from './unknown-keys.ts';

/** Reads the details of a schedule file; a number, such as a revision, is taken as text. */
export function readDetails(value: unknown, reading: Reading): { known: Details; unknown: Record<string, unknown> } {
  const known: Details = {};
  const unknown: Record<string, unknown> = {};
  for (const [key, item] of Object.entries(reading.object(value, '/details', '“details”'))) {
    if (isHarmful(key)) continue;
    if (!(DETAIL_KEYS as readonly string[]).includes(key)) {
      unknown[key] = item;
      reading.unknownKeys.add(`“details” has the unknown key “${key}”`);
    } else if (typeof item === 'string' || typeof item === 'number') {
      if (item !== '') known[key as DetailKey] = String(item);
    } else if (item !== null) {
      reading.wrongKind(item, `/details/${key}`, `The detail “${key}” must be a text`, 'string');
    }
  }
  return { known, unknown };
}

import { SHEET_NAMES, type Acceptance } from '../../schedule/index.ts';
import type { Reading } from './reading.ts';

const TEXTS = ['sheet', 'tag', 'rule', 'reason', 'name', 'date'] as const;

/** Reads the findings that somebody accepted; keys that are not known stay with them. */
export function readAccepted(value: unknown, reading: Reading): Acceptance[] {
  return reading.array(value, '/accepted', '“accepted”').map((item, index) => {
    const path = `/accepted/${index}`;
    const name = `Accepted finding ${index + 1}`;
    const entry = reading.object(item, path, name);
    const { sheet, value: accepted = null, limit, key: column } = entry;
    for (const key of TEXTS) {
      if (typeof entry[key] === 'string') continue;
      reading.wrongKind(entry[key] ?? null, `${path}/${key}`, `${name}: “${key}” must be a text`, 'string');
    }
    if (typeof sheet === 'string' && !(SHEET_NAMES as readonly string[]).includes(sheet)) {
      const message = `${name}: there is no sheet “${sheet}”; there are ${SHEET_NAMES.join(', ')}. Write one of these.`;
      reading.list.add('value-refused', `${path}/sheet`, message, { received: sheet });
    }
    for (const [key, item] of [['value', accepted], ['limit', limit]] as const) {
      if (typeof item !== 'object' || item === null) continue;
      reading.wrongKind(item, `${path}/${key}`, `${name}: “${key}” must be a single value`, 'value');
    }
    if (column !== undefined && typeof column !== 'string') {
      reading.wrongKind(column, `${path}/key`, `${name}: “key” must be a text`, 'string');
    }
    return { ...entry, value: accepted } as unknown as Acceptance;
  });
}

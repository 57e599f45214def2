import type { Revision } from '../../schedule/index.ts';
import type { Reading } from './reading.ts';

/** Reads the issues of a schedule; keys that are not known stay with them, and a text that is left out is empty. */
export function readRevisions(value: unknown, reading: Reading): Revision[] {
  const { words } = reading;
  return reading.array(value, '/revisions', words.say('“{text}”', { text: 'revisions' })).map((item, index) => {
    const path = `/revisions/${index}`;
    const name = words.say('Revision {number}', { number: index + 1 });
    const entry = reading.object(item, path, name);
    const { revision = '' } = entry;
    const texts = {
      revision: typeof revision === 'number' ? String(revision) : revision, date: '', name: '', text: '',
    };
    const read: Record<string, unknown> = { ...texts, ...entry, revision: texts.revision };
    for (const key of Object.keys(texts)) {
      if (typeof read[key] === 'string') continue;
      reading.wrongKind(
        read[key] ?? null, `${path}/${key}`, words.say('{name}: “{key}” must be a text', { name, key }), 'string'
      );
    }
    return read as unknown as Revision;
  });
}

import { ISSUE_STATES, type Revision } from '../../schedule/index.ts';
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
    checkIssued(entry, path, name, reading);
    return read as unknown as Revision;
  });
}

/** What it was issued for and the digest of it, of a revision that is issued. */
function checkIssued(entry: Readonly<Record<string, unknown>>, path: string, name: string, reading: Reading): void {
  const { words } = reading;
  const { state, digest } = entry;
  if (state !== undefined && !ISSUE_STATES.some((each) => each === state)) {
    const expected = ISSUE_STATES.map((each) => `“${each}”`).join(', ');
    reading.list.add('value-refused', `${path}/state`, words.say('{name}: “state” must be one of {expected}. Put that right.',
      { name, expected }), { expected });
  }
  if (digest !== undefined && !(typeof digest === 'string' && /^[0-9a-f]{64}$/.test(digest))) {
    reading.list.add('value-refused', `${path}/digest`, words.say(
      '{name}: “digest” must be 64 hexadecimal digits in small letters. Put that right, or leave it out.', { name }));
  }
}

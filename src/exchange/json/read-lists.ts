import type { OfficeLists } from '../../schedule/index.ts';
import type { Reading } from './reading.ts';
import { isHarmful } from './unknown-keys.ts';

/** Reads what an office calls things; `undefined` where a file says nothing of it. Keys that are not known are kept. */
export function readLists(value: unknown, reading: Reading): OfficeLists | undefined {
  if (value === undefined) return undefined;
  const name = (text: string) => reading.words.say('“{text}”', { text });
  const lists = Object.entries(reading.object(value, '/lists', name('lists'))).filter(([key]) => !isHarmful(key));
  return Object.fromEntries(lists.map(([list, entries]) => {
    if (list !== 'headings' && list !== 'names') return [list, entries];
    const texts = reading.object(entries, `/lists/${list}`, name(list));
    for (const [key, text] of Object.entries(texts)) {
      if (typeof text === 'string') continue;
      reading.wrongKind(
        text, `/lists/${list}`, reading.words.say('{name}: “{key}” must be a text', { name: name(list), key }), 'string'
      );
    }
    return [list, Object.fromEntries(Object.entries(texts).filter(([key]) => !isHarmful(key)))];
  }));
}

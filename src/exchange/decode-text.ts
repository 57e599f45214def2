import { ENGLISH, type Words } from '../words/index.ts';
import { tooLarge, unreadable, type Unreadable } from './problem.ts';

/**
 * Turns the bytes of a file into text: UTF-8, or UTF-16 when it begins with the mark of it. A byte order mark is left
 * out.
 * @returns the text; else the problem of a file that is too large or not in one of these encodings.
 */
export function decodeText(
  bytes: Uint8Array, words: Words = ENGLISH,
): { readonly ok: true; readonly text: string } | Unreadable {
  const large = tooLarge(bytes.length, words);
  if (large !== undefined) return large;
  const [first, second] = bytes;
  const mark = `${first} ${second}`;
  const encoding = mark === '255 254' ? 'utf-16le' : mark === '254 255' ? 'utf-16be' : 'utf-8';
  try {
    return { ok: true, text: new TextDecoder(encoding, { fatal: true }).decode(bytes) };
  } catch {
    return unreadable('not-text', '', words.say(
      'The file is not text in UTF-8. Save it as UTF-8, as «CSV UTF-8» for example.'
    ), {
      expected: 'UTF-8',
    });
  }
}

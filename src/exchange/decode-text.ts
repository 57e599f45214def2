import { ENGLISH, type Words } from '../words/index.ts';
import { tooLarge, unreadable, type Unreadable } from './problem.ts';

/** Encodings in which files of text are read. */
export type Encoding = 'UTF-8' | 'UTF-16 LE' | 'UTF-16 BE' | 'Windows-1252';

/** A file as text, and the encoding that it was found to be in. */
export interface DecodedText {
  readonly ok: true;
  readonly text: string;
  readonly encoding: Encoding;
}

/** How much of a file shows its encoding [bytes]. */
const SAMPLE = 4096;
/** Control characters that no text holds, and what Windows-1252 leaves free. */
// eslint-disable-next-line no-control-regex
const NO_TEXT = /[\u0000-\u0008\u000e-\u001f\u007f\u0081\u008d\u008f\u0090\u009d]/;

/**
 * Turns the bytes of a file into text. A byte order mark tells the encoding and is left out; without one it is UTF-16
 * where every other byte is empty, else UTF-8, else Windows-1252, in which older programs write.
 * @returns the text and its encoding; else the problem of a file that is too large or no text.
 */
export function decodeText(bytes: Uint8Array, words: Words = ENGLISH): DecodedText | Unreadable {
  const large = tooLarge(bytes.length, words);
  if (large !== undefined) return large;
  const wide = wideEncoding(bytes);
  const text = decoded(bytes, wide ?? 'UTF-8');
  if (text !== undefined) return { ok: true, text, encoding: wide ?? 'UTF-8' };
  const western = wide === undefined ? decoded(bytes, 'Windows-1252')?.replace(/[\u0080-\u009f]/g, westernSign) : undefined;
  if (western !== undefined && !NO_TEXT.test(western)) return { ok: true, text: western, encoding: 'Windows-1252' };
  return unreadable('not-text', '', words.say(
    'The file is no text in UTF-8, UTF-16 or Windows-1252. Save it as UTF-8, as “CSV UTF-8” for example.'
  ), {
    expected: 'UTF-8',
  });
}

/** What is to be said of a text that was not in UTF-8; `undefined` for nothing. */
export function encodingNote(encoding: Encoding, words: Words = ENGLISH): string | undefined {
  if (encoding === 'UTF-8') return undefined;
  return words.say('It was read as {encoding}. Where letters with accents look wrong, save it as UTF-8.', { encoding });
}

function decoded(bytes: Uint8Array, encoding: Encoding): string | undefined {
  try {
    return new TextDecoder(encoding.toLowerCase().replace(' ', ''), { fatal: true }).decode(bytes);
  } catch {
    // Only bytes that do not belong to the encoding make it fail.
    return undefined;
  }
}

/**
 * A sign that Windows-1252 has where ISO 8859-1 has none (WHATWG encoding standard, index windows-1252): some engines
 * decode the one as the other.
 */
function westernSign(sign: string): string {
  const known = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';
  return known[sign.charCodeAt(0) - 0x80]!;
}

function wideEncoding(bytes: Uint8Array): Encoding | undefined {
  const mark = `${bytes[0]} ${bytes[1]}`;
  if (mark === '255 254') return 'UTF-16 LE';
  if (mark === '254 255') return 'UTF-16 BE';
  const sample = bytes.subarray(0, Math.min(SAMPLE, bytes.length - bytes.length % 2));
  const empty = [0, 0];
  for (const [place, byte] of sample.entries()) if (byte === 0) empty[place % 2]! += 1;
  // Nearly all signs of Western texts are in the first 256.
  const most = sample.length / 2 * 0.75;
  if (sample.length < 4 || Math.min(...empty) > 0) return undefined;
  return empty[1]! > most ? 'UTF-16 LE' : empty[0]! > most ? 'UTF-16 BE' : undefined;
}

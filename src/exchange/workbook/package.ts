import type { Words } from '../../words/index.ts';
import { megabytes, unreadable, type Unreadable } from '../problem.ts';
import { MOST_UNPACKED, Unpacker } from './unpack.ts';
import { zipEntries } from './zip-entries.ts';

/** Parts of a package by their paths. */
export type Parts = Record<string, Uint8Array>;

/** A package of files, as a workbook is one, of which nobody knows whether it is sound. */
export class Package {
  readonly #bytes: Uint8Array;
  readonly #words: Words;

  constructor(bytes: Uint8Array, words: Words) {
    this.#bytes = bytes;
    this.#words = words;
  }

  /**
   * Unpacks the parts that are wanted, to at most 64 MB together.
   * @returns the parts; else that the package is damaged or becomes too large.
   */
  unpack(wanted: (path: string) => boolean): Parts | Unreadable {
    const words = this.#words;
    const parts: Parts = {};
    const unpacker = new Unpacker();
    try {
      for (const entry of zipEntries(this.#bytes)) {
        if (!wanted(entry.name)) continue;
        const bytes = unpacker.unpack(entry);
        if (bytes === undefined) {
          return unreadable('file-too-large', '', words.say(
            'The workbook becomes larger than {most} MB when it is unpacked, and is not read. Copy the list and paste it, or save it as CSV.',
            { most: megabytes(MOST_UNPACKED) }));
        }
        parts[entry.name] = bytes;
      }
    } catch {
      // Only damage makes it fail.
      return unreadable(
        'not-a-workbook', '',
        words.say('The workbook is damaged: a part of it is cut off or cannot be unpacked. Take another copy of it.')
      );
    }
    return parts;
  }
}

export function isRefused(parts: Parts | Unreadable): parts is Unreadable {
  return 'ok' in parts && parts.ok === false;
}

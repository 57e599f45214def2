import path from 'node:path';
import { freeName, readListFile, type TakeoffTable } from '../exchange/takeoff/index.ts';
import { isWorkbookFile } from '../exchange/workbook/is-workbook-file.ts';
import type { Words } from '../words/index.ts';
import { problemLines, readBytes } from './files.ts';
import { Refusal } from './refusal.ts';

/** A file that holds a takeoff. */
export interface TakeoffFile {
  readonly name: string;
  /** Its list, or one for each of its sheets or tables. */
  readonly tables: readonly TakeoffTable[];
  /** Sentences on how it was read. */
  readonly notes: readonly string[];
}

/**
 * Reads a file with a takeoff: text, the tables of a page in HTML, or the sheets of a workbook.
 * @param sheetNames the sheets; by default all that are shown.
 * @param words the language of what is wrong with it.
 * @param names of the files that were read before it, without folders; it is added.
 * @throws Refusal when it is not there, cannot be read in all its parts, or has no such sheet.
 */
export async function readTakeoffFile(
  name: string, sheetNames: readonly string[], words: Words, names: Set<string>,
): Promise<TakeoffFile> {
  const bytes = await readBytes(name);
  if (sheetNames.length > 0 && !isWorkbookFile(name, bytes)) {
    throw new Refusal([`--sheet-name ${sheetNames[0]!}: ${name} is text and has no sheets. Leave it out.`]);
  }
  const read = await readListFile(freeName(path.basename(name), names), bytes, words, sheetNames);
  if (!read.ok) throw new Refusal(problemLines(name, read));
  const [refused] = read.refused;
  if (refused !== undefined) throw new Refusal(problemLines(name, refused.why));
  return { name, tables: read.tables, notes: read.notes };
}

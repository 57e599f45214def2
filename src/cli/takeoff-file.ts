import { decodeText } from '../exchange/index.ts';
import type { TakeoffSource } from '../exchange/takeoff/index.ts';
import { isWorkbookFile } from '../exchange/workbook/is-workbook-file.ts';
import type { Words } from '../words/index.ts';
import { problemLines, readBytes } from './files.ts';
import { Refusal } from './refusal.ts';

/** A file that holds a takeoff. */
export interface TakeoffFile {
  readonly name: string;
  readonly source: TakeoffSource;
  /** Sentences on how it was read. */
  readonly notes: readonly string[];
}

/**
 * Reads a file with a takeoff: text, or a sheet of a workbook.
 * @param sheetName the sheet; by default the first that is shown.
 * @param words the language of what is wrong with it.
 * @throws Refusal when it is not there, cannot be read, or has no such sheet.
 */
export async function readTakeoffFile(name: string, sheetName: string | undefined, words: Words): Promise<TakeoffFile> {
  const bytes = await readBytes(name);
  if (isWorkbookFile(name, bytes)) return readWorkbook(name, bytes, sheetName, words);
  if (sheetName !== undefined) {
    throw new Refusal([`--sheet-name ${sheetName}: ${name} is text and has no sheets. Leave it out.`]);
  }
  const decoded = decodeText(bytes, words);
  if (!decoded.ok) throw new Refusal(problemLines(name, decoded));
  return { name, source: decoded.text, notes: [] };
}

async function readWorkbook(
  name: string, bytes: Uint8Array, sheetName: string | undefined, words: Words,
): Promise<TakeoffFile> {
  const { openWorkbook } = await import('../exchange/workbook/index.ts');
  const workbook = openWorkbook(bytes, words);
  if (!workbook.ok) throw new Refusal(problemLines(name, workbook));
  const { sheets, read } = workbook;
  const sheet = await read(sheetName ?? sheets[0]!);
  if (!sheet.ok) throw new Refusal(problemLines(name, sheet));
  const isGuessed = sheetName === undefined && sheets.length > 1;
  const notes = isGuessed ? [words.say('The sheet “{sheet}” is read; the sheets are {sheets}. Another is chosen with --sheet-name.', {
    sheet: sheets[0]!, sheets: sheets.join(', '),
  })] : [];
  return { name, source: sheet.rows, notes };
}

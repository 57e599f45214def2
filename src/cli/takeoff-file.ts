import path from 'node:path';
import { decodeText, encodingNote, isHtml, readHtmlTables } from '../exchange/index.ts';
import type { TakeoffTable } from '../exchange/takeoff/index.ts';
import { isWorkbookFile } from '../exchange/workbook/is-workbook-file.ts';
import type { SheetRows, Workbook } from '../exchange/workbook/index.ts';
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
 * @throws Refusal when it is not there, cannot be read, or has no such sheet.
 */
export async function readTakeoffFile(name: string, sheetNames: readonly string[], words: Words): Promise<TakeoffFile> {
  const bytes = await readBytes(name);
  if (isWorkbookFile(name, bytes)) return readWorkbook(name, bytes, sheetNames, words);
  if (sheetNames.length > 0) {
    throw new Refusal([`--sheet-name ${sheetNames[0]!}: ${name} is text and has no sheets. Leave it out.`]);
  }
  const decoded = decodeText(bytes, words);
  if (!decoded.ok) throw new Refusal(problemLines(name, decoded));
  const { text, encoding } = decoded;
  const note = encodingNote(encoding, words);
  const file = path.basename(name);
  const pages = isHtml(text) ? readHtmlTables(text).filter(({ cells }) => cells.length > 0) : [];
  const tables = pages.length === 0 ? [{ file, cells: text }]
    : pages.map((table, place) => ({ file, ...(pages.length > 1 ? { sheet: String(place + 1) } : {}), ...table }));
  return { name, tables, notes: note === undefined ? [] : [note] };
}

async function readWorkbook(
  name: string, bytes: Uint8Array, sheetNames: readonly string[], words: Words,
): Promise<TakeoffFile> {
  const { openWorkbook } = await import('../exchange/workbook/index.ts');
  const workbook = openWorkbook(bytes, words);
  if (!workbook.ok) throw new Refusal(problemLines(name, workbook));
  const { sheets, hiddenSheets, read } = workbook;
  const tables: TakeoffTable[] = [];
  for (const sheet of sheetNames.length > 0 ? sheetNames : sheets) {
    const { rows, ...marks } = await readSheet(name, sheet, read);
    tables.push({ file: path.basename(name), sheet, cells: rows, ...marks });
  }
  const hidden = hiddenSheets.join(', ');
  return {
    name, tables, notes: hidden === '' ? [] : [words.say('Hidden sheets are not read: {sheets}. Show them if they count.', { sheets: hidden })],
  };
}

async function readSheet(name: string, sheet: string, read: Workbook['read']): Promise<SheetRows> {
  const rows = await read(sheet);
  if (!rows.ok) throw new Refusal(problemLines(name, rows));
  return rows;
}

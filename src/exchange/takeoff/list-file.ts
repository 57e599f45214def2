import type { Words } from '../../words/index.ts';
import { decodeText, encodingNote } from '../decode-text.ts';
import { isHtml, readHtmlTables } from '../html/index.ts';
import type { Unreadable } from '../problem.ts';
import { isWorkbookFile } from '../workbook/is-workbook-file.ts';
import type { TakeoffTable } from './source.ts';

/** A file with lists. */
export interface ListFile {
  readonly ok: true;
  /** Its list, or one for each of its sheets or tables. */
  readonly tables: readonly TakeoffTable[];
  /** Sentences on how it was read. */
  readonly notes: readonly string[];
  /** Sheets of a workbook that cannot be read. */
  readonly refused: readonly { readonly sheet: string; readonly why: Unreadable }[];
}

/**
 * Reads a file with a takeoff: text, the tables of a page in HTML, or the sheets of a workbook, the reader of which is
 * loaded when it is needed.
 * @param file its name, without folders.
 * @param sheetNames the sheets of a workbook; by default all that are shown.
 */
export async function readListFile(
  file: string, bytes: Uint8Array, words: Words, sheetNames: readonly string[] = [],
): Promise<ListFile | Unreadable> {
  if (isWorkbookFile(file, bytes)) return readWorkbook(file, bytes, words, sheetNames);
  const decoded = decodeText(bytes, words);
  if (!decoded.ok) return decoded;
  const { text, encoding } = decoded;
  const note = encodingNote(encoding, words);
  const tables = isHtml(text) ? htmlTables(text) : [];
  return {
    ok: true, refused: [], notes: note === undefined ? [] : [note],
    tables: tables.length === 0 ? [{ file, cells: text }] : tables.map((table) => ({ file, ...table })),
  };
}

/** The tables of a page, or of cells that were copied, as lists; those of several bear their numbers as sheets. */
export function htmlTables(page: string): TakeoffTable[] {
  const tables = readHtmlTables(page).filter(({ cells }) => cells.length > 0);
  return tables.map((table, place) => ({ ...(tables.length > 1 ? { sheet: String(place + 1) } : {}), ...table }));
}

async function readWorkbook(
  file: string, bytes: Uint8Array, words: Words, sheetNames: readonly string[],
): Promise<ListFile | Unreadable> {
  const { openWorkbook } = await import('../workbook/index.ts');
  const workbook = openWorkbook(bytes, words);
  if (!workbook.ok) return workbook;
  const { sheets, hiddenSheets } = workbook;
  const tables: TakeoffTable[] = [];
  const refused: { sheet: string; why: Unreadable }[] = [];
  for (const sheet of sheetNames.length > 0 ? sheetNames : sheets) {
    const read = await workbook.read(sheet);
    if (!read.ok) refused.push({ sheet, why: read });
    else {
      const { rows, ok: _ok, ...marks } = read;
      tables.push({ file, sheet, cells: rows, ...marks });
    }
  }
  const hidden = hiddenSheets.join(', ');
  return {
    ok: true, tables, refused,
    notes: hidden === '' ? [] : [words.say('Hidden sheets are not read: {sheets}. Show them if they count.', { sheets: hidden })],
  };
}

/**
 * A name for a file beside others: its own, or one with a number where another is called so already.
 * @param names those that are taken; it is added to them.
 */
export function freeName(file: string, names: Set<string>): string {
  let name = file;
  for (let number = 2; names.has(name); number += 1) name = file.replace(/(?:\.[^.]*)?$/, (ending) => ` (${number})${ending}`);
  names.add(name);
  return name;
}

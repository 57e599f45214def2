import { decodeText, tooLarge, type Unreadable } from '../../src/exchange/index.ts';
import type { TakeoffTable } from '../../src/exchange/takeoff/index.ts';
import { isWorkbookFile } from '../../src/exchange/workbook/is-workbook-file.ts';
import type { Words } from '../../src/words/index.ts';
import type { RefusedList } from './take-source.ts';

/** The lists in a file, at least one, and which of its sheets cannot be read; else what keeps it from being read. */
export type ListFile = Unreadable | {
  readonly ok: true;
  readonly tables: readonly TakeoffTable[];
  readonly refused: readonly RefusedList[];
};

/**
 * Reads a file with lists: text, or the sheets of a workbook that can be read. What reads workbooks is loaded with the
 * first one.
 */
export async function openList(file: File, words: Words): Promise<ListFile> {
  const large = tooLarge(file.size, words);
  if (large !== undefined) return large;
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (!isWorkbookFile(file.name, bytes)) {
    const decoded = decodeText(bytes, words);
    return decoded.ok ? { ok: true, tables: [{ cells: decoded.text, file: file.name }], refused: [] } : decoded;
  }
  const { openWorkbook } = await import('../../src/exchange/workbook/index.ts');
  const workbook = openWorkbook(bytes, words);
  if (!workbook.ok) return workbook;
  const read = await Promise.all(workbook.sheets.map(async (sheet) => ({ sheet, read: await workbook.read(sheet) })));
  const tables = read.flatMap(({ sheet, read: list }): TakeoffTable[] =>
    list.ok && list.rows.some(isFilled) ? [{ cells: list.rows, file: file.name, sheet }] : []);
  const refused = read.flatMap(({ sheet, read: list }) =>
    list.ok ? [] : [{ name: `${file.name}, ${sheet}`, problems: list.problems }]);
  if (tables.length > 0) return { ok: true, tables, refused };
  return read.map(({ read: list }) => list).find((list) => !list.ok) ?? { ok: true, tables: [{ cells: '' }], refused };
}

function isFilled(cells: readonly unknown[]): boolean {
  return cells.some((cell) => cell !== null && cell !== undefined && cell !== '');
}

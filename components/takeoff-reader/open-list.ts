import { decodeText, tooLarge, type Unreadable } from '../../src/exchange/index.ts';
import type { TakeoffSource } from '../../src/exchange/takeoff/index.ts';
import { isWorkbookFile } from '../../src/exchange/workbook/is-workbook-file.ts';
import type { Workbook } from '../../src/exchange/workbook/index.ts';
import type { Words } from '../../src/words/index.ts';

/** A workbook and which of its sheets is read. */
export interface OpenSheet {
  readonly name: string;
  readonly workbook: Workbook;
  readonly sheet: string;
}

interface ListFile {
  readonly read: { readonly ok: true; readonly source: TakeoffSource } | Unreadable;
  /** The workbook that the list comes from; kept also when its first sheet cannot be read, as another one may be. */
  readonly from?: OpenSheet;
}

/**
 * Reads a file with a list: text, or the first sheet of a workbook. What reads workbooks is loaded with the first one.
 */
export async function openList(file: File, words: Words): Promise<ListFile> {
  const large = tooLarge(file.size, words);
  if (large !== undefined) return { read: large };
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (!isWorkbookFile(file.name, bytes)) {
    const decoded = decodeText(bytes, words);
    return { read: decoded.ok ? { ok: true, source: decoded.text } : decoded };
  }
  const { openWorkbook } = await import('../../src/exchange/workbook/index.ts');
  const workbook = openWorkbook(bytes, words);
  return workbook.ok ? openSheet({ name: file.name, workbook, sheet: workbook.sheets[0]! }) : { read: workbook };
}

/** Reads a sheet of a workbook. */
export async function openSheet(from: OpenSheet): Promise<ListFile> {
  const read = await from.workbook.read(from.sheet);
  return { read: read.ok ? { ok: true, source: read.rows } : read, from };
}

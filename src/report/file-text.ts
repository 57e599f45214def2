import { decodeText, encodingNote, type Unreadable } from '../exchange/index.ts';
import { isWorkbookFile } from '../exchange/workbook/is-workbook-file.ts';
import type { Words } from '../words/index.ts';

/** A file as text. */
export interface FileText {
  readonly ok: true;
  readonly name: string;
  readonly text: string;
  /** Sentences on how it was read, as in which encoding. */
  readonly notes: readonly string[];
  /** What was changed on the worksheets of a load table and is not in the schedule that it carries, place by place. */
  readonly edits: readonly string[];
}

/**
 * The text of a file: its own, or the schedule that a load table in a workbook carries. What reads workbooks is loaded
 * with the first one.
 * @param words the language of what is said.
 */
export async function fileText(name: string, bytes: Uint8Array, words: Words): Promise<FileText | Unreadable> {
  if (isWorkbookFile(name, bytes)) {
    const { readLoadTable } = await import('./xlsx/index.ts');
    const read = await readLoadTable(bytes, words);
    return read.ok ? { ...read, name, notes: [] } : read;
  }
  const decoded = decodeText(bytes, words);
  if (!decoded.ok) return decoded;
  const note = encodingNote(decoded.encoding, words);
  return { ok: true, text: decoded.text, name, edits: [], notes: note === undefined ? [] : [note] };
}

/** Says what the edits of a file are, above their list. */
export function editsTitle(name: string, words: Words): string {
  return words.say(
    '{file}: the schedule is as it was issued. What was changed on its worksheets since is not in it; enter it again where it is meant:',
    { file: name }
  );
}

import { decodeText, embeddedSchedule, encodingNote, isHtml, type Unreadable } from '../exchange/index.ts';
import { isWorkbookFile } from '../exchange/workbook/is-workbook-file.ts';
import type { CarriedSchedule } from './xlsx/index.ts';
import type { Verification } from './verify/verification.ts';
import type { Words } from '../words/index.ts';

/** A file as text. */
export interface FileText {
  readonly ok: true;
  readonly name: string;
  readonly text: string;
  /** Sentences on how it was read, as in which encoding. */
  readonly notes: readonly string[];
  /**
   * What a load table shows otherwise than the schedule that it carries, place by place, and why a part of it was not
   * compared.
   */
  readonly edits: readonly string[];
  /** Edits of a load table that rows bring into the schedule by tag, and sentences on those that none brings. */
  readonly edited?: CarriedSchedule['edited'];
  /** Whether it is a load table, which shows something that can be compared. */
  readonly isLoadTable: boolean;
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
    if (!read.ok) return read;
    const edited = read.edited === undefined ? {} : { edited: read.edited };
    return { ok: true, name, text: read.text, notes: [], ...ofLoadTable(read.verification), ...edited };
  }
  const decoded = decodeText(bytes, words);
  if (!decoded.ok) return decoded;
  const note = encodingNote(decoded.encoding, words);
  const { text } = decoded;
  const verification = await verificationOf(text, words);
  return { ok: true, text, name, notes: note === undefined ? [] : [note], ...ofLoadTable(verification) };
}

const ofLoadTable = (verification: Verification | undefined) => ({
  edits: verification === undefined ? [] : [...verification.differs, ...verification.unverified],
  isLoadTable: verification !== undefined,
});

/** How a page that carries a schedule compares with it; there is nothing to compare in other texts. */
async function verificationOf(text: string, words: Words): Promise<Verification | undefined> {
  if (!isHtml(text) || embeddedSchedule(text) === undefined) return undefined;
  const { verifyHtml } = await import('./verify/index.ts');
  return verifyHtml(text, words);
}

/** Says what the edits of a file are, above their list. */
export function editsTitle(name: string, words: Words): string {
  return words.say(
    '{file}: the schedule that it carries is opened. What the file shows otherwise is not in it; enter it again where it is meant, and ask where it comes from where it is not:',
    { file: name }
  );
}

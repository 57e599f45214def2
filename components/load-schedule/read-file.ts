import { readSchedule, type Unreadable } from '../../src/exchange/index.ts';
import { fileText, type FileText } from '../../src/report/file-text.ts';
import type { Content, SheetName } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import type { readDraftFile } from '../drafts/read-draft-file.ts';
import type { OfferedRows } from '../rows-offer/offered-rows.ts';
import type { ElvProblem } from './events.ts';
import type { NamedText } from './files.ts';

/** A file as text, perhaps with sentences on how it was read. */
export type ReadText = NamedText & { readonly notes?: readonly string[] };

/** What came of reading a file: the content that the schedule would have, or why it has none. */
export type FileReading =
  | {
    readonly ok: true;
    readonly content: Content;
    /** Name of the action that takes it over. */
    readonly label: string;
    readonly notes: readonly string[];
    readonly sheet?: SheetName;
    /** The rows of that sheet, for a person who wants something else done with them. */
    readonly offer?: Omit<OfferedRows, 'name'>;
    /** It is a draft, and so not yet kept as a schedule file. */
    readonly isDraft?: true;
  }
  | { readonly ok: false; readonly problems: readonly ElvProblem[]; readonly total: number };

/** Takes the text out of a file: that of the file itself, or the schedule that a load table in a workbook carries. */
export async function readText(file: File, words: Words): Promise<FileText | Unreadable> {
  return fileText(file.name, new Uint8Array(await file.arrayBuffer()), words);
}

/** Reads a schedule, which replaces everything. */
export function readScheduleFile({ name, text, notes = [] }: ReadText, words: Words): FileReading {
  const read = readSchedule(text, words);
  return read.ok
    ? { ok: true, content: read.content, label: words.say('{file} opened', { file: name }), notes: [...notes, ...read.notes] }
    : read;
}

/** What came of a draft that was saved as a file. @param read what its reader made of it. */
export function readDraft(name: string, read: ReturnType<typeof readDraftFile>, words: Words): FileReading {
  return read.ok
    ? {
      ok: true, content: read.content, label: words.say('{file}: draft restored', { file: name }), notes: read.notes,
      isDraft: true,
    }
    : read;
}

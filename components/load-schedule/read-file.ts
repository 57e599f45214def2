import {
  isScheduleText, railVoltages, readSchedule, unreadable, type Problem, type Unreadable,
} from '../../src/exchange/index.ts';
import { readList } from '../../src/exchange/update/read-list.ts';
import { replaceWithList } from '../../src/exchange/update/replace-list.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { fileText, type FileText } from '../../src/report/file-text.ts';
import { SCHEMA, type Content, type SheetName } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import type { readDraftFile } from '../drafts/read-draft-file.ts';
import type { OfferedRows } from '../rows-offer/offered-rows.ts';
import type { ElvProblem } from './events.ts';
import type { NamedText } from './files.ts';

/** A file as text, perhaps with sentences on how it was read. */
type ReadText = NamedText & { readonly notes?: readonly string[] };

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

/** Reads a file that a person opens: a schedule or a sheet as CSV. */
export function readAnyFile(named: ReadText, schedule: LoadSchedule): FileReading {
  return isScheduleText(named) ? readScheduleFile(named, schedule.words) : readSheetFile(named, schedule);
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

/**
 * Reads a CSV file, or that sheet of a schedule, whose rows replace those of its sheet.
 * @param sheet the sheet that it holds; by default the one whose headings it has.
 */
export function readSheetFile(
  file: ReadText, schedule: LoadSchedule, sheet?: SheetName,
): FileReading {
  const { words } = schedule;
  const content = schedule.content();
  const read = readList(file, sheet, railVoltages(content.sheets.supplies ?? []), words);
  if (!read.ok) return { ...read, problems: read.problems.map((problem) => withTakeoff(problem, words)) };
  const [list] = read.lists;
  if (list === undefined) {
    return unreadable('csv-empty', '', words.say('It has no rows on the sheet {sheet}. Choose another file.',
      { sheet: words.text(SCHEMA[sheet!].title) }));
  }
  const notes = [...file.notes ?? [], ...read.notes];
  const replaced = replaceWithList(content, list, file.name, words);
  return {
    ok: true, offer: { lists: [list], notes }, sheet: list.sheet, ...replaced, notes: [...notes, ...replaced.notes],
  };
}

/** Whoever has a takeoff may not know yet that it is read in a place of its own. */
function withTakeoff(problem: Problem, words: Words): Problem {
  return problem.code !== 'sheet-unrecognised' ? problem : {
    ...problem,
    message: words.say(
      '{problem} If it is a list of counts off drawings, read it with Takeoff.', { problem: problem.message }
    ),
  };
}

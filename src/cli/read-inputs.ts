import { goneNotes, isScheduleText, railVoltages, readCsv, readSchedule, type Unreadable } from '../exchange/index.ts';
import { withRowsReplaced, type Cells, type Content, type SheetName } from '../schedule/index.ts';
import { editsTitle, type FileText } from '../report/index.ts';
import { ENGLISH, type Words } from '../words/index.ts';
import { problemLines, readText } from './files.ts';
import { Refusal } from './refusal.ts';

/** What the files hold, taken together. */
export interface Inputs {
  readonly content: Content;
  /** Lines that say what a person should know about how the files were read. */
  readonly notes: readonly string[];
  /** Name of the file that holds a sheet. */
  readonly nameOf: (sheet: SheetName) => string;
}

/**
 * Reads a schedule, sheets in CSV, or both, in which case a sheet takes the place of that of the schedule.
 * @param words the language of the problems of files, and of headings and values beside English ones.
 * @throws Refusal with every problem of every file.
 */
export async function readInputs(names: readonly string[], words: Words = ENGLISH): Promise<Inputs> {
  const files = await Promise.all(names.map((name) => readText(name, words)));
  const schedules = files.filter(isScheduleText);
  if (schedules.length > 1) {
    throw new Refusal(
      [`${schedules[1]!.name}: is a second schedule. Give one schedule, with sheets in CSV if need be.`]
    );
  }
  const refused: string[] = [];
  const base = schedules[0] && readOne(schedules[0], ({ text }) => readSchedule(text, words), refused);
  const sheets = files.filter((file) => !isScheduleText(file));
  const voltageOf = railVoltages(suppliesIn(sheets, words) ?? base?.content.sheets.supplies ?? []);
  const read = sheets.flatMap((file) => {
    const sheet = readOne(file, ({ text }) => readCsv(text, undefined, voltageOf, words), refused);
    return sheet === undefined ? [] : [{ ...sheet, name: file.name }];
  });
  const bySheet = new Map<SheetName, (typeof read)[number]>();
  for (const each of read) {
    const before = bySheet.get(each.sheet);
    if (before !== undefined) {
      refused.push(`${each.name}: holds ${each.sheet}, as ${before.name} does. Put the rows of both into one file.`);
    }
    bySheet.set(each.sheet, each);
  }
  if (refused.length > 0) throw new Refusal(refused);
  let content: Content = base?.content ?? { details: {}, sheets: {} };
  const lost = read.flatMap(({ name, sheet, rows }) => {
    const replaced = withRowsReplaced(content, sheet, rows);
    content = replaced.content;
    return goneNotes(replaced.gone, words).map((note) => `${name}: ${note}`);
  });
  return {
    content,
    notes: [
      ...files.flatMap((file) => file.notes.map((note) => `${file.name}: ${note}`)),
      ...(base?.notes ?? []).map((note) => `${schedules[0]!.name}: ${note}`),
      ...schedules.flatMap(({ name, edits }) => edits.length === 0 ? [] : [
        editsTitle(name, words), ...edits.map((edit) => `${name}: ${edit}`)
      ]),
      ...read.flatMap(({ name, notes }) => notes.map((note) => `${name}: ${note}`)),
      ...lost,
    ],
    nameOf: (sheet) => bySheet.get(sheet)?.name ?? schedules[0]?.name ?? '',
  };
}

/** Rows of the supplies among sheets in CSV: their voltages, at which watts become a draw, are needed by the others. */
function suppliesIn(files: readonly FileText[], words: Words): readonly Cells[] | undefined {
  for (const { text } of files) {
    const read = readCsv(text, undefined, undefined, words);
    if (read.ok && read.sheet === 'supplies') return read.rows;
  }
  return undefined;
}

function readOne<Result extends { readonly ok: true }>(
  file: FileText, read: (file: FileText) => Result | Unreadable, refused: string[],
): Result | undefined {
  const result = read(file);
  if (result.ok) return result;
  refused.push(...problemLines(file.name, result));
  return undefined;
}

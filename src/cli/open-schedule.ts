import { LoadSchedule } from '../load-schedule.ts';
import { columnOf, titleWithUnit, type FormulaProblem, type SheetName } from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import { readInputs } from './read-inputs.ts';
import { Refusal } from './refusal.ts';
import type { Streams } from './streams.ts';

/**
 * Reads files and works out the schedule that they make together.
 * @param words the language that it speaks, and in which files are read beside English.
 * @throws Refusal with every problem of every file.
 */
export async function openSchedule(
  names: readonly string[], warn: Streams['warn'], words: Words
): Promise<LoadSchedule> {
  const { content, notes, nameOf } = await readInputs(names, words);
  for (const note of notes) warn(note);
  const schedule = new LoadSchedule(content, { words });
  refuseFormulas(schedule.formulaProblems, words, nameOf);
  return schedule;
}

/** A formula may refer to a sheet of another file, so that only the whole schedule shows whether its rows are there. */
export function refuseFormulas(
  problems: readonly FormulaProblem[], words: Words, nameOf: (sheet: SheetName) => string,
): void {
  if (problems.length === 0) return;
  throw new Refusal(problems.map(({ sheet, row, key, problem }) =>
    `${nameOf(sheet)}: ${sheet}, row ${row}, ${titleWithUnit(columnOf(sheet, key), words)}: ${problem}`));
}

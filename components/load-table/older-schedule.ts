import { isScheduleText } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf, SCHEMA } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import { readScheduleFile, readText } from '../load-schedule/read-file.ts';

/** A schedule to compare with, and the file that it came from. */
export interface OlderSchedule {
  readonly name: string;
  readonly schedule: LoadSchedule;
  /** What was changed on its worksheets and is not in it. */
  readonly edits: readonly string[];
}

/** Reads a schedule, or the load table that carries it. @returns the schedule, or what is wrong with the file. */
export async function readOlder(file: File, words: Words): Promise<OlderSchedule | readonly string[]> {
  const named = await readText(file, words);
  if (!named.ok) return named.problems.map(({ message }) => message);
  if (!isScheduleText(named)) {
    return [words.say('It holds one sheet or none. Choose a schedule (.json) or a load table (.html, .xlsx).')];
  }
  const reading = readScheduleFile(named, words);
  if (!reading.ok) return reading.problems.map(({ message }) => message);
  const schedule = new LoadSchedule(reading.content, { words });
  if (schedule.formulaProblems.length === 0) {
    await schedule.formulasReady();
    return { name: file.name, schedule, edits: named.edits };
  }
  schedule.dispose();
  return schedule.formulaProblems.map(({
    sheet, row, key, problem,
  }) => words.say('{sheet}, row {row}, {column}: {problem}', {
    sheet: words.text(SCHEMA[sheet].title), row, column: words.text(columnOf(sheet, key).title), problem,
  }));
}

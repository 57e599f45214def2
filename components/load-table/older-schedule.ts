import { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf, SCHEMA } from '../../src/schedule/index.ts';
import { isScheduleFile, readScheduleFile, readText } from '../load-schedule/read-file.ts';

/** A schedule to compare with, and the file that it came from. */
export interface OlderSchedule {
  readonly name: string;
  readonly schedule: LoadSchedule;
}

/** Reads a schedule, or the load table that carries it. @returns the schedule, or what is wrong with the file. */
export async function readOlder(file: File): Promise<OlderSchedule | readonly string[]> {
  const named = await readText(file);
  if (!named.ok) return named.problems.map(({ message }) => message);
  if (!isScheduleFile(named)) return ['It holds one sheet or none. Choose a schedule (.json) or a load table (.html, .xlsx).'];
  const reading = readScheduleFile(named);
  if (!reading.ok) return reading.problems.map(({ message }) => message);
  const schedule = new LoadSchedule(reading.content);
  if (schedule.formulaProblems.length === 0) return { name: file.name, schedule };
  schedule.dispose();
  return schedule.formulaProblems.map(({ sheet, row, key, problem }) =>
    `${SCHEMA[sheet].title}, row ${row}, ${columnOf(sheet, key).title}: ${problem}`);
}

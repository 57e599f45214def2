import type { SheetName } from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import { readCsv } from '../csv/index.ts';
import { isScheduleText } from '../is-schedule-text.ts';
import { readSchedule } from '../json/index.ts';
import type { Unreadable } from '../problem.ts';
import type { ListRows } from './list-formulas.ts';

/** The sheets that an office keeps as lists: those that are read of a schedule file unless one is named. */
export const LIST_SHEETS: readonly SheetName[] = ['types', 'conductors', 'contacts', 'supplies'];

/** The lists of a file, each of another sheet; `notes` says in sentences how it was read. */
export interface ReadList {
  readonly ok: true;
  readonly lists: readonly ListRows[];
  readonly notes: readonly string[];
}

/**
 * Reads the lists of an office: a sheet as CSV, or a schedule file, of which the sheets that have rows are taken.
 * @param sheet the sheet that is wanted; by default that of the CSV, and every list of a schedule.
 * @param voltageOf voltage [V] of a rail, for draws in watts.
 * @param words the language of what is said, and of headings and values beside English ones.
 */
export function readList(
  file: { readonly name: string; readonly text: string }, sheet?: SheetName,
  voltageOf?: (rail: unknown) => number | undefined, words: Words = ENGLISH,
): ReadList | Unreadable {
  if (!isScheduleText(file)) {
    const read = readCsv(file.text, sheet, voltageOf, words);
    return read.ok ? { ok: true, lists: [read], notes: read.notes } : read;
  }
  const read = readSchedule(file.text, words);
  if (!read.ok) return read;
  const { sheets } = read.content;
  const lists = (sheet === undefined ? LIST_SHEETS : [sheet]).flatMap((name): ListRows[] => {
    const rows = sheets[name] ?? [];
    return rows.length === 0 ? [] : [{ sheet: name, rows }];
  });
  return { ok: true, lists, notes: read.notes };
}

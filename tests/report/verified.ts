import { writeSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { buildReport, loadTableHtml, loadTableXlsx, type LoadTableOptions } from '../../src/report/index.ts';
import { readLoadTable } from '../../src/report/xlsx/index.ts';
import { loadWords } from '../../src/words/index.ts';
import { demoContent } from './demo.ts';

/** What a load table that was not changed is found to be. */
export const AGREES = { differs: [], unverified: [] };

export const demo = async (lang = 'en') => new LoadSchedule(demoContent(), { words: await loadWords(lang) });

export const pageOf = (schedule: LoadSchedule, options: Partial<LoadTableOptions> = {}): string =>
  loadTableHtml(buildReport(schedule, { generated: '2026-11-25', ...options }), {
    paper: 'A4-landscape', schedule: writeSchedule(schedule.content()),
  });

export const written = async (schedule: LoadSchedule) =>
  loadTableXlsx(schedule, buildReport(schedule, { generated: '2026-11-25' }));

/** What a workbook is found to be that is read. */
export async function verified(bytes: Uint8Array) {
  const read = await readLoadTable(bytes);
  if (!read.ok) throw new Error(read.problems[0]!.message);
  return read.verification;
}

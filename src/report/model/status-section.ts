import { STANDINGS } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { isStatus, SCHEMA, SHEET_NAMES, type SheetName } from '../../schedule/index.ts';
import { numberCell, textCell } from './cells.ts';
import type { ReportSection } from './report.ts';
import { filledRows } from './sheet-section.ts';
import { STATE_WORDS } from './state-words.ts';

/** The sheets whose rows have a status, in the order in which they are printed. */
export const SHEETS_WITH_STATUS: readonly SheetName[] = SHEET_NAMES.filter((sheet) =>
  SCHEMA[sheet].columns.some(isStatus));

/** How many rows of each sheet stand how. */
export function statusSection(schedule: LoadSchedule): ReportSection {
  const { words } = schedule;
  const rows = SHEETS_WITH_STATUS.flatMap((sheet) => {
    const statuses = filledRows(schedule, sheet).map(({ id }) => schedule.standing(sheet, id));
    if (statuses.length === 0) return [];
    const counts = STANDINGS.map((status) => statuses.filter((each) => each === status).length);
    const figures = [...counts, statuses.length].map((count) => numberCell(String(count)));
    return [{ cells: [textCell(words.text(SCHEMA[sheet].title)), ...figures] }];
  });
  const columns = [
    { title: words.say('Sheet'), kind: 'text' as const },
    ...STANDINGS.map((status) => ({ title: words.say(STATE_WORDS[status]), kind: 'number' as const })),
    { title: words.say('total'), kind: 'number' as const },
  ];
  const section = { name: 'summary', title: words.say('Summary') };
  return rows.length === 0 ? { ...section, sentences: [words.say('No row has a status.')], tables: [] }
    : { ...section, sentences: [], tables: [{ columns, rows }] };
}

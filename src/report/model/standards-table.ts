import type { LoadSchedule } from '../../load-schedule.ts';
import { SCHEMA, SHEET_NAMES, type Column, type SheetName } from '../../schedule/index.ts';
import { textCell, textColumns } from './cells.ts';
import type { ReportTable } from './report.ts';
import { filledRows } from './sheet-section.ts';
import { STANDARDS } from './standards.ts';

/** Everything that a column says about where it comes from. */
export function sourcesOf(column: Column): string[] {
  if (column.role === 'computed') {
    return [column.rule?.source, column.total?.source, column.solved?.source].filter((source) => source !== undefined);
  }
  const suggested = column.suggestions?.map(({ source }) => source) ?? [];
  return [column.source, column.derived?.source, ...suggested].filter((source) => source !== undefined);
}

/** What a column says of where the values of its rows come from: of what it suggests, only what somebody entered. */
function sourcesUsed(schedule: LoadSchedule, sheet: SheetName, column: Column): string[] {
  if (column.role === 'computed' || column.suggestions === undefined) return sourcesOf(column);
  const values = new Set(filledRows(schedule, sheet).map(({ id }) => schedule.value(sheet, id, column.key)));
  return sourcesOf({ ...column, suggestions: column.suggestions.filter(({ value }) => values.has(value)) });
}

/** Whether a text names a standard by its number; IEC 60947-4-1 is not IEC 60947. */
export function namesStandard(text: string, number: string): boolean {
  return text.split(number).slice(1).some((rest) => !/^(-?\d|-\d)/.test(rest));
}

/** The standards by number and year that the printed columns rest on, and what for. */
export function standardsTable(schedule: LoadSchedule): ReportTable {
  const { words } = schedule;
  const columns = SHEET_NAMES.filter((sheet) => filledRows(schedule, sheet).length > 0)
    .flatMap(
      (sheet) => SCHEMA[sheet].columns
        .map((column) => ({ sheet, title: column.title, sources: sourcesUsed(schedule, sheet, column) })),
    );
  const rows = STANDARDS.flatMap(({ number, edition, title }) => {
    const used = columns.filter(({ sources }) => sources.some((source) => namesStandard(source, number)));
    const uses = [...new Set(used.map(({ sheet }) => sheet))].map((sheet) => {
      const titles = used.filter((each) => each.sheet === sheet).map((each) => words.within(each.title));
      return words.say('{title}: {text}', { title: words.text(SCHEMA[sheet].title), text: titles.join(', ') });
    });
    return uses.length === 0
      ? []
      : [{ cells: [number, words.say(edition), words.say(title), uses.join(words.say('; '))].map(textCell) }];
  });
  return {
    title: words.say('Standards'), sentence: words.say(
      'Editions are for orientation; the one that applies to the job decides.'
    ),
    columns: textColumns(words.say('Standard'), words.say('Edition'), words.say('Title'), words.say('Used for')), rows,
  };
}

import { explainCell } from '../../explanations.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { SCHEMA, SHEET_NAMES, tagOf, type Column, type SheetName } from '../../schedule/index.ts';
import { textCell, textColumns } from './cells.ts';
import type { ReportRow, ReportSection } from './report.ts';
import { filledRows } from './sheet-section.ts';

/** How each figure comes about: one example of every computed column, with its source. */
export function explanationsSection(schedule: LoadSchedule, only?: SheetName): ReportSection | undefined {
  const { words } = schedule;
  const columns = textColumns(
    words.say('Figure'), words.say('Row'), words.say('Rule'), words.say('With its numbers'), words.say('Result'),
    words.say('Source'),
  );
  const tables = SHEET_NAMES.filter((sheet) => only === undefined || sheet === only).flatMap((sheet) => {
    const rows = SCHEMA[sheet].columns.filter(isWorkedOut).flatMap((column) => example(schedule, sheet, column));
    if (rows.length === 0) return [];
    return [{ title: words.text(SCHEMA[sheet].title), columns, rows }];
  });
  if (tables.length === 0) return undefined;
  return {
    name: 'explanations', title: words.say('How the figures are calculated'),
    sentences: [
      words.say('One example of every figure that is calculated; all others in its column follow the same rule.'),
    ], tables,
  };
}

function isWorkedOut(column: Column): boolean {
  return column.role === 'computed' || column.derived !== undefined;
}

/** The first row in which a figure is known and was not entered. */
function example(schedule: LoadSchedule, sheet: SheetName, { key }: Column): ReportRow[] {
  const row = filledRows(schedule, sheet)
    .find(({ id }) => schedule.value(sheet, id, key) !== null && !schedule.isOwn(sheet, id, key));
  const explanation = row && explainCell(schedule, sheet, row.id, key);
  if (row === undefined || explanation === undefined) return [];
  const { title, words, numbers = '', result, source } = explanation;
  const name = tagOf(sheet, row) || String(schedule.document.position(sheet, row.id) + 1);
  return [{ cells: [title, name, words, numbers, result, source].map((text) => textCell(text)) }];
}

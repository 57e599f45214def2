import type { Explanation } from '../../engine/index.ts';
import { explainCell } from '../../explanations.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import {
  formatCell, inputColumns, SCHEMA, SHEET_NAMES, type InputColumn, type Row, type SheetName,
} from '../../schedule/index.ts';
import { numberCell, textCell, textColumns } from './cells.ts';
import type { ReportRow, ReportSection, ReportTable } from './report.ts';
import { filledRows } from './sheet-section.ts';
import { standardsTable } from './standards-table.ts';

/** Every default and factor that the figures rest on, and the standards behind them. */
export function assumptionsSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words } = schedule;
  const rows = SHEET_NAMES.flatMap((sheet) => {
    const filled = filledRows(schedule, sheet);
    if (filled.length === 0) return [];
    return inputColumns(sheet).filter(isAssumption).flatMap((column) => linesOf(schedule, sheet, column, filled));
  });
  if (rows.length === 0) return undefined;
  const factors: ReportTable = {
    title: words.say('Defaults and factors in use'),
    columns: [
      ...textColumns(words.say('Sheet'), words.say('Column')), { title: words.say('Value'), kind: 'number' },
      { title: words.say('Rows'), kind: 'number' }, ...textColumns(words.say('From'), words.say('Source')),
    ],
    rows,
  };
  return {
    name: 'assumptions', title: words.say('Assumptions'),
    sentences: [words.say('The sources of device types, conductors and contacts stand in their sheets.')],
    tables: [factors, standardsTable(schedule)],
  };
}

/** Columns whose empty cells have a value, and shares, which are factors. */
function isAssumption({ default: value, derived, kind }: InputColumn): boolean {
  return value !== undefined || derived !== undefined || kind === 'ratio';
}

interface Line {
  readonly value: string;
  readonly origin: string;
  readonly source: string;
  count: number;
}

/**
 * A line for each value that a column has in some rows, and where it came from. Single draws stand in their own sheets.
 */
function linesOf(schedule: LoadSchedule, sheet: SheetName, column: InputColumn, rows: readonly Row[]): ReportRow[] {
  const { words } = schedule;
  const { key, title, unit, derived, kind, source = '' } = column;
  const isListed = derived === undefined || kind === 'ratio';
  const lines = new Map<string, Line>();
  for (const { id } of rows) {
    const isOwn = schedule.isOwn(sheet, id, key);
    const value = schedule.value(sheet, id, key);
    if (value === null || (isOwn && !isListed)) continue;
    const text = isListed ? formatCell(column, value, words, 'show') : '';
    const origin = isOwn ? words.say('entered') : derived
      === undefined ? words.say('default') : inGeneral(explainCell(schedule, sheet, id, key)!);
    const line = lines.get(`${origin} ${text}`) ?? {
      value: text === '' || unit === undefined ? text : `${text}\u00a0${unit}`, origin,
      source: isOwn ? '' : words.text(derived?.source ?? source), count: 0,
    };
    line.count += 1;
    lines.set(`${origin} ${text}`, line);
  }
  return [...lines.values()].map(({ value, origin, source: from, count }) => ({
    cells: [
      textCell(words.text(SCHEMA[sheet].title)), textCell(words.text(title)), numberCell(value),
      numberCell(String(count)),
      textCell(origin), textCell(from),
    ],
  }));
}

/** A rule in words without the tags of single rows. */
function inGeneral({ words, parts }: Explanation): string {
  return parts.reduce((rule, { label, labelInGeneral }) => rule.replace(label, () => labelInGeneral), words);
}

import type { Status } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, formatCell, tagOf, type Column, type Row } from '../../schedule/index.ts';
import { numberCell, textCell } from './cells.ts';
import type { ReportCell, ReportRow, ReportSection, ReportTable } from './report.ts';
import { filledRows, printedColumns, rowsTable } from './sheet-section.ts';
import { STATE_WORDS } from './state-words.ts';
import type { Words } from '../../words/index.ts';

/** How devices are gathered: by the reference to a sheet, with the columns that are not repeated and those added up. */
interface Grouping {
  readonly by: 'rail' | 'branch';
  readonly sheet: 'supplies' | 'branches';
  readonly name: string;
  readonly title: string;
  readonly without: readonly string[];
  readonly totals: readonly string[];
  readonly sentence: (figure: (key: string) => string) => string;
}

const BY_RAIL: Grouping = {
  by: 'rail', sheet: 'supplies', name: 'devices-per-rail', title: 'Devices per rail',
  without: ['rail', 'points'], totals: ['qty', 'connected', 'demand', 'share'],
  sentence: (figure) => `${figure('demand')} of ${figure('usable')} usable, ${figure('loading')}; target ${figure('target')}`,
};

const BY_BRANCH: Grouping = {
  by: 'branch', sheet: 'branches', name: 'devices-per-branch', title: 'Devices per branch',
  without: ['branch', 'distance', 'unitDraw', 'diversity', 'connected', 'demand', 'share', 'terminalVoltage', 'note'],
  totals: ['qty', 'points'],
  sentence: (figure) => `${figure('points')} of ${figure('limit')} points, ${figure('used')}; free ${figure('free')}`,
};

/** Devices gathered by the rail that feeds them, with subtotals; those on none come last. */
export function devicesPerRail(schedule: LoadSchedule, words: Words): ReportSection | undefined {
  return devicesPer(BY_RAIL, schedule, filledRows(schedule, 'devices'), words);
}

/** Devices that take places on a bus branch, gathered by it, with subtotals. */
export function devicesPerBranch(schedule: LoadSchedule, words: Words): ReportSection | undefined {
  const rows = filledRows(schedule, 'devices').filter(({ id }) => schedule.target('devices', id, 'branch') >= 0);
  return devicesPer(BY_BRANCH, schedule, rows, words);
}

function devicesPer(grouping: Grouping, schedule: LoadSchedule, rows: readonly Row[], words: Words): ReportSection | undefined {
  if (rows.length === 0) return undefined;
  const { by, sheet, name, title, without } = grouping;
  const columns = printedColumns(schedule, 'devices', rows).filter(({ key }) => !without.includes(key));
  const groups = filledRows(schedule, sheet).map((owner) => ({ owner, rows: schedule.members('devices', by, owner.id) }));
  const byId = new Map(rows.map((row) => [row.id, row]));
  const tables = groups.filter(({ rows: ids }) => ids.length > 0).map(({ owner, rows: ids }): ReportTable => ({
    ...table(grouping, schedule, ids.flatMap((id) => byId.get(id) ?? []), columns, words),
    ...heading(grouping, schedule, owner, words),
  }));
  const others = rows.filter(({ id }) => schedule.target('devices', id, by) < 0);
  if (others.length > 0) tables.push({ title: `On no ${by}`, ...table(grouping, schedule, others, columns, words) });
  return { name, title, sentences: [], tables };
}

function heading({ sheet, sentence }: Grouping, schedule: LoadSchedule, owner: Row, words: Words): { title: string; sentence: string } {
  const figure = (key: string) => {
    const column = columnOf(sheet, key);
    const text = formatCell(column, schedule.value(sheet, owner.id, key), words, 'show');
    const whole = `${schedule.partialSign(sheet, owner.id, key)}${text}`;
    return text === '' ? 'not known' : column.unit === undefined ? whole : `${whole}\u00a0${column.unit}`;
  };
  const status = schedule.value(sheet, owner.id, 'status') as Status;
  const purpose = sheet === 'supplies' ? schedule.value(sheet, owner.id, 'purpose') : null;
  return {
    title: [tagOf(sheet, owner), ...(typeof purpose === 'string' ? [purpose] : [])].join(', '),
    sentence: `${sentence(figure)}; ${STATE_WORDS[status]}.`,
  };
}

function table(
  { totals }: Grouping, schedule: LoadSchedule, rows: readonly Row[], columns: readonly Column[], words: Words,
): ReportTable {
  const listed = rowsTable(schedule, 'devices', rows, columns, words);
  const isFirstText = columns.findIndex(({ key }) => !totals.includes(key));
  const cells = columns.map((column, index): ReportCell => {
    if (index === isFirstText) return textCell('Total');
    return totals.includes(column.key) ? totalCell(schedule, rows, column, words) : textCell('');
  });
  const total: ReportRow = { isTotal: true, cells: [textCell(''), ...cells] };
  return { ...listed, rows: [...listed.rows, total] };
}

/** The known figures of a column added up; at least that when some are not known. */
function totalCell(schedule: LoadSchedule, rows: readonly Row[], column: Column, words: Words): ReportCell {
  const values = rows.map(({ id }) => schedule.value('devices', id, column.key)).filter((value) => typeof value === 'number');
  if (values.length === 0) return numberCell('');
  const sum = values.reduce((total, value) => total + value, 0);
  return numberCell((values.length < rows.length ? '≥' : '') + formatCell({ ...column, role: 'computed' }, sum, words, 'show'));
}

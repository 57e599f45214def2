import { loadingRatio } from '../../electrical/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, formatCell, tagOf, type CellValue, type Column, type Row, type SheetName } from '../../schedule/index.ts';
import { numberCell, textCell } from './cells.ts';
import type { ReportCell, ReportRow, ReportSection, ReportTable } from './report.ts';
import { filledRows, printedColumns, rowsTable } from './sheet-section.ts';
import { STATE_WORDS } from './state-words.ts';
import { message } from '../../words/index.ts';

/** How devices are gathered: by the reference to a sheet, with the columns that are not repeated and those added up. */
interface Grouping {
  readonly by: 'rail' | 'branch';
  readonly sheet: 'supplies' | 'branches';
  readonly name: string;
  readonly title: string;
  /** Heading of the devices that name no row of the sheet. */
  readonly onNone: string;
  readonly without: readonly string[];
  readonly totals: readonly string[];
  /** What stands beside the tag: the figures of the row by their keys, and its status. */
  readonly sentence: string;
  /** What stands there instead where no limit is entered. */
  readonly withoutLimit?: string;
  readonly figures: readonly string[];
}

const BY_RAIL: Grouping = {
  by: 'rail', sheet: 'supplies', name: 'devices-per-rail', title: message('Devices per rail'),
  onNone: message('On no rail'),
  without: ['rail', 'nodes'], totals: ['qty', 'connected', 'demand', 'share'],
  sentence: message(
    '{demand} of {usable} usable, {loading}; target {target}; {status}.'
  ), figures: ['demand', 'usable', 'loading', 'target'],
};

const BY_BRANCH: Grouping = {
  by: 'branch', sheet: 'branches', name: 'devices-per-branch', title: message('Devices per branch'),
  onNone: message('On no branch'),
  without: ['branch', 'distance', 'unitDraw', 'diversity', 'connected', 'demand', 'share', 'terminalVoltage', 'note'],
  totals: ['qty', 'nodes'],
  sentence: message(
    '{nodes} of {limit} nodes, {used}; reserve {reserve}; {status}.'
  ), figures: ['nodes', 'limit', 'used', 'reserve'],
  withoutLimit: message('{nodes} nodes, limit not known; {status}.'),
};

/** Devices gathered by the rail that feeds them, with subtotals; those on none come last. */
export function devicesPerRail(schedule: LoadSchedule): ReportSection | undefined {
  return devicesPer(BY_RAIL, schedule, filledRows(schedule, 'devices'));
}

/** Devices that take places on a bus branch, gathered by it, with subtotals. */
export function devicesPerBranch(schedule: LoadSchedule): ReportSection | undefined {
  const rows = filledRows(schedule, 'devices').filter(({ id }) => schedule.target('devices', id, 'branch') >= 0);
  return devicesPer(BY_BRANCH, schedule, rows);
}

function devicesPer(grouping: Grouping, schedule: LoadSchedule, rows: readonly Row[]): ReportSection | undefined {
  if (rows.length === 0) return undefined;
  const { by, sheet, name, title, onNone, without } = grouping;
  const { words } = schedule;
  const columns = printedColumns(schedule, 'devices', rows).filter(({ key }) => !without.includes(key));
  const groups = filledRows(schedule, sheet)
    .map((owner) => ({ owner, rows: schedule.members('devices', by, owner.id) }));
  const byId = new Map(rows.map((row) => [row.id, row]));
  const tables = groups.filter(({ rows: ids }) => ids.length > 0).map(({ owner, rows: ids }): ReportTable => ({
    ...table(grouping, schedule, ids.flatMap((id) => byId.get(id) ?? []), columns, owner),
    ...heading(grouping, schedule, owner),
  }));
  const others = rows.filter(({ id }) => schedule.target('devices', id, by) < 0);
  if (others.length > 0) tables.push({ title: words.say(onNone), ...table(grouping, schedule, others, columns) });
  return { name, title: words.say(title), sentences: [], tables };
}

function heading(
  { sheet, sentence, withoutLimit, figures }: Grouping, schedule: LoadSchedule, owner: Row,
): { title: string; sentence: string } {
  const { words } = schedule;
  const figure = (key: string) => {
    const column = columnOf(sheet, key);
    const text = formatCell(column, schedule.value(sheet, owner.id, key), words, 'show');
    const whole = `${schedule.partialSign(sheet, owner.id, key)}${text}`;
    return text === '' ? words.say('not known') : column.unit === undefined ? whole : `${whole}\u00a0${column.unit}`;
  };
  const status = words.say(STATE_WORDS[schedule.standing(sheet, owner.id)!]);
  const isLimited = withoutLimit === undefined || schedule.value(sheet, owner.id, 'limit') !== null;
  const purpose = sheet !== 'supplies' ? ''
    : formatCell(columnOf(sheet, 'purpose'), schedule.value(sheet, owner.id, 'purpose'), words, 'show');
  return {
    title: [tagOf(sheet, owner), purpose].filter((part) => part !== '').join(', '),
    sentence: words.say(
      isLimited ? sentence : withoutLimit, { ...Object.fromEntries(figures.map((key) => [key, figure(key)])), status }
    ),
  };
}

/** What counts on a rail beside its devices, with both figures that it adds to. */
const BESIDE_DEVICES = [
  ['runs', 'extra', message('More that its runs draw')], ['outputs', 'current', message('Relay outputs on it')],
] as const;

/** @param owner the rail or branch; none for the devices that are on none. */
function table(
  { by, totals }: Grouping, schedule: LoadSchedule, rows: readonly Row[], columns: readonly Column[], owner?: Row,
): ReportTable {
  const listed = rowsTable(schedule, 'devices', rows, columns);
  const firstText = columns.findIndex(({ key }) => !totals.includes(key));
  const line = (title: string, cellOf: (column: Column) => ReportCell): ReportRow => ({
    isTotal: true,
    cells: [textCell(''), ...columns.map((column, index) => index === firstText ? textCell(title) : cellOf(column))],
  });
  const beside = owner === undefined || by !== 'rail' ? [] : BESIDE_DEVICES.flatMap(([sheet, key, title]) => {
    const ids = schedule.members(sheet, 'rail', owner.id);
    const sumOf = (figure: (id: number) => CellValue) => ids.map(figure)
      .reduce<number>((sum, value) => sum + (typeof value === 'number' ? value : 0), 0);
    const amps: Readonly<Record<string, number>> = {
      connected: sumOf((id) => schedule.value(sheet, id, key)),
      demand: sumOf((id) => byOwnDiversity(schedule, sheet, id, key)),
    };
    return amps.connected === 0 ? [] : [line(schedule.words.say(title), (column) => {
      const own = amps[column.key];
      return numberCell(own === undefined ? '' : figureText(schedule, column, own));
    })];
  });
  const whole: Readonly<Record<string, string>> = { connected: 'connected', demand: 'demand', share: 'loading' };
  const ofSupply = (key: string): CellValue => {
    const [demand, usable] = ['demand', 'usable'].map((of) => byOwnDiversity(schedule, 'supplies', owner!.id, of));
    return key !== 'loading' ? byOwnDiversity(schedule, 'supplies', owner!.id, key)
      : typeof demand === 'number' && typeof usable === 'number' ? loadingRatio(demand, usable) : null;
  };
  const total = line(schedule.words.say('Total'), (column) => {
    if (!totals.includes(column.key)) return textCell('');
    const key = whole[column.key];
    const value = beside.length === 0 || key === undefined ? null : ofSupply(key);
    return typeof value !== 'number' ? totalCell(schedule, rows, column)
      : numberCell(schedule.partialSign('supplies', owner!.id, key!) + figureText(schedule, column, value));
  });
  const worst = by === 'rail' && owner !== undefined ? schedule.value('supplies', owner.id, 'worstCase') : null;
  const inWorst = worst === null ? [] : [line(
    schedule.words.say('{title}: {text}', { title: schedule.words.text(columnOf('supplies', 'worstCase').title), text: String(worst) }),
    (column) => {
      const value = ['demand', 'share'].includes(column.key) ? schedule.value('supplies', owner!.id, whole[column.key]!) : null;
      return typeof value !== 'number' ? textCell('')
        : numberCell(schedule.partialSign('supplies', owner!.id, whole[column.key]!) + figureText(schedule, column, value));
    },
  )];
  return { ...listed, rows: [...listed.rows, ...beside, total, ...inWorst] };
}

/** A figure as device rows add up to it, by their own diversity, which cases may go beyond. */
function byOwnDiversity(schedule: LoadSchedule, sheet: SheetName, id: number, key: string): CellValue {
  const own = schedule.cases.cases.length === 0 ? null : schedule.inCase(sheet, id, key, -1);
  return own ?? schedule.value(sheet, id, key);
}

const figureText = (schedule: LoadSchedule, column: Column, value: number) =>
  formatCell({ ...column, role: 'computed' }, value, schedule.words, 'show');

/** The known figures of a column added up; at least that when some are not known. */
function totalCell(schedule: LoadSchedule, rows: readonly Row[], column: Column): ReportCell {
  const values = rows.map(({ id }) => schedule.value('devices', id, column.key))
    .filter((value) => typeof value === 'number');
  if (values.length === 0) return numberCell('');
  const sum = values.reduce((total, value) => total + value, 0);
  return numberCell(
    (values.length < rows.length ? '≥' : '') + figureText(schedule, column, sum)
  );
}

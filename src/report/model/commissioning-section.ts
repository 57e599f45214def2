import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, SCHEMA, type Row } from '../../schedule/index.ts';
import { scheduleCell, scheduleColumn, TO_FILL, textCell, textColumns } from './cells.ts';
import type { ReportCell, ReportSection, ReportTable } from './report.ts';
import { filledRows } from './sheet-section.ts';

/** What is worked out and what is measured, side by side. */
const COMPARED = {
  supplies: ['rail', 'voltage', 'measuredVoltage', 'connected', 'demand', 'measuredCurrent'],
  runs: ['run', 'rail', 'current', 'measuredCurrent', 'minVoltage', 'endVoltage', 'measuredVoltage'],
} as const;

/** What is measured of every supply and run, filled in or to be filled in, and who signs for it. */
export function commissioningSection(schedule: LoadSchedule): ReportSection | undefined {
  const { words } = schedule;
  const tables = (['supplies', 'runs'] as const).flatMap((sheet) => {
    const rows = filledRows(schedule, sheet);
    return rows.length === 0 ? [] : [measuredTable(schedule, sheet, rows)];
  });
  if (tables.length === 0) return undefined;
  const signatures = [words.say('Installed'), words.say('Tested'), words.say('Handed over')]
    .map((what) => ({ cells: [textCell(what), TO_FILL, TO_FILL, TO_FILL] }));
  return {
    name: 'commissioning', title: words.say('Commissioning'),
    sentences: [
      words.say('Voltages of supplies at their outputs, of runs at their far ends; all with the devices switched on.'),
      ...schedule.rows('runs').some(({ cells }) => (cells.secondWay ?? null) !== null)
        ? [words.say('Of runs with two ways both currents together, and the voltage where it is lowest.')] : [],
    ],
    tables: [...tables, {
      title: words.say('Signatures'), rows: signatures,
      columns: textColumns(words.say('Step'), words.say('Name'), words.say('Date'), words.say('Signature')),
    }],
  };
}

function measuredTable(schedule: LoadSchedule, sheet: 'supplies' | 'runs', rows: readonly Row[]): ReportTable {
  const { words } = schedule;
  const columns = COMPARED[sheet].map((key) => columnOf(sheet, key));
  return {
    title: words.text(SCHEMA[sheet].title),
    columns: [...columns.map((column) => scheduleColumn(column, words)), ...textColumns(words.say('Verdict'))],
    rows: rows.map(({ id }) => {
      const measured = columns.map((column): ReportCell => {
        const cell = scheduleCell(schedule, sheet, id, column);
        return cell.text === '' && column.key.startsWith('measured') ? { ...TO_FILL, kind: 'number' } : cell;
      });
      return { cells: [...measured, verdict(schedule, sheet, id)] };
    }),
  };
}

/** What comparing comes to; to be filled in as long as nothing is measured. */
function verdict(schedule: LoadSchedule, sheet: 'supplies' | 'runs', id: number): ReportCell {
  const measured = ['measuredCurrent', 'measuredVoltage'].filter((key) => schedule.value(sheet, id, key) !== null);
  if (measured.length === 0) return TO_FILL;
  const found = schedule.findingsOf(sheet, id).filter(({ key }) => measured.includes(key))
    .map(({ message }) => message);
  return textCell(found.length === 0 ? schedule.words.say('as calculated') : found.join(' '));
}

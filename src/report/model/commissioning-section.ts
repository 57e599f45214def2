import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, SCHEMA, type Row } from '../../schedule/index.ts';
import { scheduleCell, scheduleColumn, TO_FILL, textCell, textColumns } from './cells.ts';
import type { ReportCell, ReportSection, ReportTable } from './report.ts';
import { filledRows } from './sheet-section.ts';
import type { Words } from '../../words/index.ts';

/** What is worked out and what is measured, side by side. */
const COMPARED = {
  supplies: ['rail', 'voltage', 'measuredVoltage', 'connected', 'demand', 'measuredCurrent'],
  runs: ['run', 'rail', 'current', 'measuredCurrent', 'minVoltage', 'endVoltage', 'measuredVoltage'],
} as const;

/** What is measured of every supply and run, filled in or to be filled in, and who signs for it. */
export function commissioningSection(schedule: LoadSchedule, words: Words): ReportSection | undefined {
  const tables = (['supplies', 'runs'] as const).flatMap((sheet) => {
    const rows = filledRows(schedule, sheet);
    return rows.length === 0 ? [] : [measuredTable(schedule, sheet, rows, words)];
  });
  if (tables.length === 0) return undefined;
  const signatures = ['Installed', 'Tested', 'Handed over'].map((what) => ({ cells: [textCell(what), TO_FILL, TO_FILL, TO_FILL] }));
  return {
    name: 'commissioning', title: 'Commissioning',
    sentences: ['Voltages of supplies at their outputs, of runs at their far ends; all with the devices switched on.'],
    tables: [...tables, { title: 'Signatures', columns: textColumns('Step', 'Name', 'Date', 'Signature'), rows: signatures }],
  };
}

function measuredTable(schedule: LoadSchedule, sheet: 'supplies' | 'runs', rows: readonly Row[], words: Words): ReportTable {
  const columns = COMPARED[sheet].map((key) => columnOf(sheet, key));
  return {
    title: SCHEMA[sheet].title,
    columns: [...columns.map(scheduleColumn), ...textColumns('Verdict')],
    rows: rows.map(({ id }) => {
      const measured = columns.map((column): ReportCell => {
        const cell = scheduleCell(schedule, sheet, id, column, words);
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
  const found = schedule.findingsOf(sheet, id).filter(({ key }) => measured.includes(key)).map(({ message }) => message);
  return textCell(found.length === 0 ? 'as worked out' : found.join(' '));
}

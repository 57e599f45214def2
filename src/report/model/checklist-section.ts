import type { LoadSchedule } from '../../load-schedule.ts';
import { tagOf } from '../../schedule/index.ts';
import { TO_FILL, textCell, textColumns } from './cells.ts';
import type { ReportSection } from './report.ts';
import { filledRows } from './sheet-section.ts';

/** What is checked before energising: common practice, no source. */
const CHECKS: readonly string[] = [
  'Every mains and ELV way that feeds the panel is isolated, locked off and proved dead with a tester that was proved before and after.',
  'Insulation and polarity of every field cable are measured, with electronics disconnected.',
  'Fuses and breakers fitted have the ratings of this table.',
  'End plates are fitted on fuse holders and on every open side of a terminal row.',
  'Bridges are fitted only where terminals are meant to be commoned.',
];

const LAST: readonly string[] = [
  'The output of every supply is measured before its loads are connected.',
  'Guards are back in place, tools and offcuts are out of the panel.',
];

/** The list to be ticked off and signed before energising. */
export function checklistSection(schedule: LoadSchedule): ReportSection {
  const branches = filledRows(schedule, 'branches').map((row) =>
    `${tagOf('branches', row)} (${row.cells.terminated === true ? 'marked as terminated' : 'not marked as terminated'})`);
  const ends = branches.length === 0 ? [] : [`Both ends of every bus branch are terminated: ${branches.join(', ')}.`];
  const rows = [...CHECKS, ...ends, ...LAST].map((text) => ({ cells: [{ ...TO_FILL, text: '☐' }, textCell(text), TO_FILL, TO_FILL] }));
  return {
    name: 'checklist', title: 'Before energising',
    sentences: ['By a competent person. Local rules and the makers’ instructions may ask for more.'],
    tables: [{ columns: textColumns('Done', 'Check', 'Reading or remark', 'Name, date'), rows }],
  };
}

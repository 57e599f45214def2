import type { LoadSchedule } from '../../load-schedule.ts';
import { tagOf } from '../../schedule/index.ts';
import { TO_FILL, textCell, textColumns } from './cells.ts';
import type { ReportSection } from './report.ts';
import { filledRows } from './sheet-section.ts';
import { message } from '../../words/index.ts';

/** What is checked before energising: common practice, no source. */
const CHECKS: readonly string[] = [
  message(
    'Every mains and ELV way that feeds the panel is isolated, locked off and proved dead with a tester that was proved before and after.'
  ),
  message('Insulation and polarity of every field cable are measured, with electronics disconnected.'),
  message('Fuses and breakers fitted have the ratings of this table.'),
  message('End plates are fitted on fuse holders and on every open side of a terminal row.'),
  message('Bridges are fitted only where terminals are meant to be commoned.'),
];

/** What the figures leave to others, to be checked all the same: the parts that `notJudgedSection` names. */
const OF_OTHERS: readonly string[] = [
  message('Fault loop and residual-current protection of every mains feed are measured.'),
  message('The short-circuit rating of the panel is not below the fault current where it is connected.'),
  message('Surge protection is fitted and its indicators are sound, or it is written down that none is needed.'),
  message('PELV circuits are earthed at one point, which is marked; SELV circuits are earthed nowhere.'),
  message('Circuits on 24 V AC, which this table does not count, are checked on their own, and kept apart from those on direct current.'),
];

const LAST: readonly string[] = [
  message('The output of every supply is measured before its loads are connected.'),
  message('Guards are back in place, tools and offcuts are out of the panel.'),
];

/** The list to be ticked off and signed before energising. */
export function checklistSection(schedule: LoadSchedule): ReportSection {
  const { words } = schedule;
  const branches = filledRows(schedule, 'branches').map((row) => {
    const branch = tagOf('branches', row);
    const { terminated, terminators } = row.cells;
    return (terminators ?? (terminated === true ? 2 : 0)) === 2 ? words.say('{branch} (marked as terminated)', { branch })
      : words.say('{branch} (not marked as terminated)', { branch });
  });
  const ends = branches.length === 0 ? []
    : [words.say('Both ends of every bus branch are terminated: {branches}.', { branches: branches.join(', ') })];
  const twice = filledRows(schedule, 'runs').filter(({ cells }) => (cells.secondWay ?? null) !== null)
    .map((row) => tagOf('runs', row)).join(', ');
  const both = twice === '' ? [] : [words.say(
    'Runs that are fed from two ways are marked so at both, and were measured with either of them open: {runs}.', { runs: twice }
  )];
  const said = (some: readonly string[]) => some.map((check) => words.say(check));
  const checks = [...said(CHECKS), ...ends, ...both, ...said(OF_OTHERS), ...said(LAST)];
  const columns =
    textColumns(words.say('Done'), words.say('Check'), words.say('Reading or remark'), words.say('Name, date'));
  return {
    name: 'checklist', title: words.say('Before energising'),
    sentences: [words.say('By a competent person. Local rules and the makers’ instructions may ask for more.')],
    tables: [{
      columns, rows: checks.map((text) => ({ cells: [{ ...TO_FILL, text: '☐' }, textCell(text), TO_FILL, TO_FILL] })),
    }],
  };
}

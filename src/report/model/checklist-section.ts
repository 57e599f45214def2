import type { LoadSchedule } from '../../load-schedule.ts';
import { grouped, tagOf } from '../../schedule/index.ts';
import { BUS_ENDS, type WiredTerminal } from '../../terminals/index.ts';
import { TO_FILL, textCell, textColumns } from './cells.ts';
import type { ReportSection } from './report.ts';
import { filledRows } from './sheet-section.ts';
import { inRanges, lastPart, shownTerminals } from './wiring-sections.ts';
import { message } from '../../words/index.ts';

/** What is checked before energising: common practice, no source. */
const CHECKS: readonly string[] = [
  message(
    'Every mains and ELV way that feeds the panel is isolated, locked off and proved dead with a tester that was proved before and after.'
  ),
  message('Insulation and polarity of every field cable are measured, with electronics disconnected.'),
  message('Fuses and breakers fitted have the ratings of this table.'),
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

/** What is checked where no terminals are entered that could be named. */
const OF_TERMINALS: readonly string[] = [
  message('End plates are fitted on fuse holders and on every open side of a terminal row.'),
  message('Bridges are fitted only where terminals are meant to be commoned.'),
];

/** The list to be ticked off and signed before energising. */
export function checklistSection(schedule: LoadSchedule): ReportSection {
  const { words } = schedule;
  const terminals = shownTerminals(schedule);
  const branches = filledRows(schedule, 'branches').map((row) => {
    const branch = tagOf('branches', row);
    const { terminated, terminators } = row.cells;
    const marked = (terminators ?? (terminated === true ? BUS_ENDS : 0)) === BUS_ENDS ? words.say('{branch} (marked as terminated)', { branch })
      : words.say('{branch} (not marked as terminated)', { branch });
    const here = terminals.filter(({ inside }) => [`${branch}:R1`, `${branch}:R2`].includes(inside)).map(({ terminal }) => terminal);
    return here.length === 0 ? marked : words.say('{branch}, one of them on {terminals}', { branch: marked, terminals: here.join(', ') });
  });
  const ends = branches.length === 0 ? []
    : [words.say('Both ends of every bus branch are terminated: {branches}.', { branches: branches.join(', ') })];
  const twice = filledRows(schedule, 'runs').filter(({ cells }) => (cells.secondWay ?? null) !== null)
    .map((row) => tagOf('runs', row)).join(', ');
  const both = twice === '' ? [] : [words.say(
    'Runs that are fed from two ways are marked so at both, and were measured with either of them open: {runs}.', { runs: twice }
  )];
  const said = (some: readonly string[]) => some.map((check) => words.say(check));
  const checks = [
    ...said(CHECKS), ...terminals.length === 0 ? said(OF_TERMINALS) : terminalChecks(schedule, terminals),
    ...supplyChecks(schedule), ...ends, ...both, ...said(OF_OTHERS), ...said(LAST),
  ];
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

/** Bridges, partitions and end plates, strip by strip as the list has them. */
function terminalChecks(schedule: LoadSchedule, terminals: readonly WiredTerminal[]): string[] {
  const { words } = schedule;
  const strips = [...grouped(terminals, ({ strip }) => strip)]
    .map(([strip, those]) => ({ strip: strip === '' ? '–' : strip, those }));
  const numbers = (those: readonly WiredTerminal[]) =>
    inRanges(those.map(({ terminal, strip }) => lastPart(terminal, strip)));
  const bridges = strips.flatMap(({ strip, those }) => {
    const named = [...grouped(those.filter(({ bridge }) => bridge !== ''), ({ bridge }) => bridge)]
      .filter(([, joined]) => joined.length > 1).map(([bridge, joined]) => `${bridge} (${numbers(joined)})`);
    return named.length === 0 ? [words.say('No bridge is fitted on {strip}.', { strip })]
      : [words.say('On {strip} {n, plural, one {# bridge is} other {# bridges are}} fitted as listed, and no others: {bridges}.', { strip, n: named.length, bridges: named.join('; ') })];
  });
  const parted = strips.flatMap(({ strip, those }) => {
    const behind = those.filter(({ hasPartition }) => hasPartition);
    return behind.length === 0 ? [] : [words.say('{strip}: {n, plural, one {#, behind} other {#, behind}} {terminals}', { strip, n: behind.length, terminals: numbers(behind) })];
  });
  const fuses = filledRows(schedule, 'ways').filter(({ id }) => FUSES.includes(schedule.value('ways', id, 'kind')))
    .map((row) => tagOf('ways', row));
  return [
    ...bridges,
    parted.length === 0 ? words.say('No partition plate is entered; strips with mains and with extra-low voltage stand apart from each other.')
      : words.say('Partition plates are fitted: {strips}.', { strips: parted.join('; ') }),
    words.say('End plates are fitted at the open side of every row of terminals: {strips}.', { strips: strips.map(({ strip }) => strip).join(', ') }),
    ...fuses.length === 0 ? [] : [words.say('End plates are fitted at the open side of the fuse holders: {ways}.', { ways: fuses.join(', ') })],
  ];
}

/** Kinds of ways that are fuses, in holders that are open at one side. */
const FUSES: readonly unknown[] = ['gG', 'fast', 'slow'];

/** Polarity, and supplies in parallel: common practice, no source. */
function supplyChecks(schedule: LoadSchedule): string[] {
  const { words } = schedule;
  const rows = filledRows(schedule, 'supplies').filter((row) => tagOf('supplies', row) !== '');
  if (rows.length === 0) return [];
  const rails = [...grouped(rows, (row) => tagOf('supplies', row))];
  const several = rails.flatMap(([rail, those]) => {
    const units = schedule.value('supplies', those[0]!.id, 'units');
    return those.length === 1 && typeof units === 'number' && units > 1
      ? [words.say('{rail} with {n, plural, one {# unit} other {# units}}', { rail, n: units })] : [];
  });
  const twice = rails.filter(([, those]) => those.length > 1).map(([rail]) => rail);
  return [
    words.say('Plus and minus are right way round at the supplies and behind every way: {rails}.', { rails: rails.map(([rail]) => rail).join(', ') }),
    several.length === 0 ? words.say('No supply is in parallel with another: each feeds its rail alone.')
      : words.say('No supply is in parallel with another, but units of one supply: {rails}.', { rails: several.join(', ') }),
    ...twice.length === 0 ? [] : [words.say('Two supplies that are not units of one are entered for {rails}: they are not in parallel, or are entered as units.', { rails: twice.join(', ') })],
  ];
}

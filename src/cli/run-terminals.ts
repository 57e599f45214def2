import { writeSchedule } from '../exchange/index.ts';
import { leftOutSentence, WIRING_LISTS, wiringCsv, wiringList } from '../report/index.ts';
import { panelRails, placeParts, placingChanges } from '../mounting/index.ts';
import { partName, proposalSentences } from '../report/index.ts';
import { layOutTerminals, layoutChanges } from '../terminals/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import { tagOf } from '../schedule/index.ts';
import { command, oneOf, oneOrNone, refuseNone } from './command.ts';
import { writeText } from './files.ts';
import { INPUT, type Help } from './help-text.ts';
import { openSchedule } from './open-schedule.ts';

const HELP: Help = {
  name: 'terminals', does: 'Lays out the terminals of a schedule, or writes the lists that a panel is wired from.',
  forms: ['INPUT… [--use-spares] [--rails [--anew]] --output FILE', 'INPUT… --list wiring|inside|cables|labels [--format json|csv] [--output FILE]'],
  words: {
    INPUT,
    '--use-spares': 'new cables take spare terminals of their strip first; without it they come at its end',
    '--rails': 'puts the parts of each enclosure whole on its mounting rails too, and says what an enclosure needs',
    '--anew': 'with --rails: parts that have a rail may get another one; without it they stay there',
    '--list NAME': 'wiring: each terminal with both of its conductors, strip by strip. inside: conductors from part to part and from '
      + 'part to terminal. cables: each cable with its cores, ends, length and current. labels: texts for a printer, with '
      + 'how many of each',
    '--format': 'of a list: json (default) or csv',
  },
  said: 'what could not be laid out', output: 'write the schedule with its terminals, or the list',
  about: [
    'Terminals that stand keep their numbers. New cables come at the end of their strip, what is asked for no more becomes '
      + 'spare. Prints JSON: came, changed, gone, reused (designations), kept (how many), leftOut (rows without a tag, with one '
      + 'that stands twice, or without a rail); with --rails also rails: for each enclosure the parts of each rail and its '
      + 'width used [mm], those without a rail, and whether that is decided (fits, none, unknown).',
  ],
};

const OPTIONS = {
  'use-spares': { type: 'boolean', default: false }, rails: { type: 'boolean', default: false },
  anew: { type: 'boolean', default: false }, list: { type: 'string' }, format: { type: 'string', default: 'json' },
} as const;

/** The command `terminals`: lays terminals out, and writes the lists that follow from them. */
export const runTerminals = command(HELP, OPTIONS, async ({ values, positionals, words }, { out, warn }) => {
  refuseNone(positionals, HELP.name);
  const name = oneOrNone('list', values.list, WIRING_LISTS);
  const format = oneOf('format', values.format, ['json', 'csv']);
  const schedule = await openSchedule(positionals, warn, words);
  if (name !== undefined) {
    const list = wiringList(schedule, name);
    const objects = () => list.rows.map((row) => Object.fromEntries(list.keys.map((key, place) => [key, row[place]])));
    await writeText(format === 'csv' ? wiringCsv(list, name === 'labels') : `${JSON.stringify(objects(), null, 2)}\n`, values.output, out);
    return 0;
  }
  const layout = layOutTerminals(schedule.document, schedule.figures, { useSpares: values['use-spares'] });
  const designations = (ids: readonly { readonly id: number }[]) =>
    ids.map(({ id }) => tagOf('terminals', schedule.document.row('terminals', id)!));
  const told = {
    came: layout.came.map(({ terminal }) => terminal), changed: designations(layout.changed),
    gone: designations(layout.gone),
    reused: designations(layout.reused), kept: layout.kept,
    leftOut: layout.leftOut.map(({ sheet, id, why }) =>
      ({ sheet, row: schedule.document.position(sheet, id) + 1, why })),
  };
  for (const each of layout.leftOut) warn(leftOutSentence(schedule, each));
  schedule.act('Terminals', layoutChanges(schedule.document, layout));
  if (values.rails) {
    schedule.act('Rails', placingChanges(schedule.document, placeParts(schedule.document, schedule.figures, { anew: values.anew })));
    proposalSentences(schedule, schedule.rows('enclosures').map(({ id }) => id)).forEach(warn);
  }
  if (values.output !== undefined) {
    await writeText(writeSchedule(schedule.content(), { pretty: true }), values.output, out);
  }
  out(`${JSON.stringify(values.rails ? { ...told, rails: railsOf(schedule) } : told, null, 2)}\n`);
  return 0;
});

/** What stands on the mounting rails of each enclosure of which number and length are known. */
function railsOf(schedule: LoadSchedule) {
  return panelRails(schedule.document, schedule.figures).map(({ enclosure, length, outcome, rails, unplaced }) => ({
    enclosure, length, outcome,
    rails: rails.map(({ parts, used }) =>
      ({ used: Math.round(used * 1000) / 1000, parts: parts.map((part) => partName(schedule, part)) })),
    without: unplaced.map((part) => partName(schedule, part)),
  }));
}

import type { LoadSchedule } from '../../load-schedule.ts';
import { branchesPicture, pictureText, runPicture, suppliesPicture } from '../pictures/index.ts';
import type { ReportSection } from './report.ts';
import { filledRows } from './sheet-section.ts';

/** Pictures of the loading of supplies and the fill of branches, of those that there are. */
export function summaryPictures(schedule: LoadSchedule): string[] {
  return [
    ...(filledRows(schedule, 'supplies').length === 0 ? [] : [suppliesPicture(schedule)]),
    ...(filledRows(schedule, 'branches').length === 0 ? [] : [branchesPicture(schedule)]),
  ].map((picture) => pictureText(picture));
}

/**
 * A picture of the voltage along every run whose drop is known or that has no working voltage; `undefined` when there
 * is none.
 * @param all draws those within their limits too, of which there is else how many they are.
 */
export function runPicturesSection(schedule: LoadSchedule, all: boolean): ReportSection | undefined {
  const { words } = schedule;
  const drawn = filledRows(schedule, 'runs').filter(({ id }) =>
    schedule.value('runs', id, 'drop') !== null || schedule.findingsOf('runs', id).some(({ rule }) =>
      rule === 'run-no-working-voltage'));
  if (drawn.length === 0) return undefined;
  const shown = all ? drawn : drawn.filter(({ id }) => schedule.standing('runs', id) !== 'ok');
  const within = drawn.length - shown.length;
  return {
    name: 'run-pictures', title: words.say('Voltage along the runs'), tables: [],
    sentences: [
      ...shown.length === 0 ? [] : [words.say('Drawn to scale, each with its own axes.')],
      ...within === 0 ? [] : [words.say('{n, plural, one {# run that is within its limits is not drawn.} other {# runs that are within their limits are not drawn.}}', { n: within })],
    ],
    pictures: shown.map(({ id }) => pictureText(runPicture(schedule, id))),
  };
}

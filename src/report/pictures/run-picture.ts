import { STATE_WORDS, type Standing } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { NO_WORKING_VOLTAGE } from '../../schedule/index.ts';
import { picture, WIDTH } from './picture.ts';
import { placeLabels } from './place-labels.ts';
import { axes, runFrame, type RunFrame } from './run-frame.ts';
import { curve, legend, marks, placeText } from './run-marks.ts';
import { runPlaces, type RunPlace } from './run-places.ts';
import { label, line, shape, type Shape } from './shape.ts';
import { statusMark } from './status-mark.ts';
import { figureText, nameOf, numberAt, shortened, valueText, wrapped } from './words.ts';
import type { Words } from '../../words/index.ts';

/** One run, as its picture reads it. */
interface DrawnRun {
  readonly schedule: LoadSchedule;
  readonly id: number;
  readonly name: string;
  readonly places: readonly RunPlace[];
  readonly status: Standing | null;
  readonly collapses: boolean;
  /** A figure of the run with its unit. */
  readonly text: (key: string) => string;
  /** A figure of the run; `null` when it is unknown. */
  readonly number: (key: string) => number | null;
  readonly words: Words;
}

/**
 * Draws the voltage along a run: at each place with devices the voltage there and the least that they need, and the
 * line of the most drop, with both axes true to scale.
 * @param id row of `runs`
 */
export function runPicture(schedule: LoadSchedule, id: number): Shape {
  const { words } = schedule;
  const run: DrawnRun = {
    schedule, id, words, name: nameOf(schedule, 'runs', id), places: runPlaces(schedule, id),
    status: schedule.standing('runs', id),
    collapses: schedule.outcome('runs', id) === NO_WORKING_VOLTAGE,
    text: (key) => figureText(schedule, 'runs', id, key),
    number: (key) => numberAt(schedule, 'runs', id, key),
  };
  const { bottom, children } = plot(run);
  return picture({
    title: words.say('Voltage along run {run}', { run: run.name }), description: description(run), height: bottom,
    children: [...heading(run), ...children],
  });
}

/** Everything that the picture shows, in words and figures. */
function description({ status, collapses, text, places, words }: DrawnRun): string {
  return [
    ...(status === null ? [] : [words.say('The run is {status}.', { status: words.say(STATE_WORDS[status]) })]),
    collapses ? words.say('It has no stable operating point.')
      : words.say('The lowest voltage is {voltage}, a drop of {drop} where {most} is allowed.',
        { voltage: text('endVoltage'), drop: text('dropRatio'), most: text('maxDrop') }),
    words.say('Its devices need {least}.', { least: text('minVoltage') }),
    places.length === 0 ? words.say('No devices are on it.')
      : `${places.map((place) => placeText(place, words)).join(words.say('; '))}.`,
  ].join(' ');
}

function heading({ schedule, id, name, status, collapses, text, words }: DrawnRun): Shape[] {
  const named = (key: string, most: number) => shortened(String(schedule.value('runs', id, key) ?? ''), most);
  const known = (key: string) => schedule.value('runs', id, key) === null ? 'no' : 'yes';
  const cable = words.say(
    '{length} of {knowsConductor, select, yes {{conductor}} other {unknown conductor}} on {knowsRail, select, yes {rail {rail}} other {unknown rail}}',
    {
      length: text('length'), knowsConductor: known('conductor'), conductor: named('conductor', 24),
      knowsRail: known('rail'), rail: named('rail', 16),
    },
  );
  const least = text('minVoltage');
  const second = schedule.value('runs', id, 'secondWay') === null ? [] : [words.say(
    'fed again by {way} after {length} more', { way: named('secondWay', 16), length: text('secondLength') }
  )];
  const ends = collapses ? words.say('no stable operating point, needed {least}', { least })
    : words.say('lowest {voltage}, needed {least}', { voltage: text('endVoltage'), least });
  return [
    label('heading', 60, 22, words.say('Run {run}', { run: shortened(name, 48) })),
    label('quiet', 60, 40, [cable, ...second, ends].join(words.say('; '))),
    ...(status === null ? [] : statusMark(status, markPlace(words.say(STATE_WORDS[status])), 22, words)),
  ];
}

/** Where the word of a status begins, so that all of it is in the picture. */
function markPlace(word: string): number {
  return Math.min(WIDTH - 104, WIDTH - word.length * 6.9 - 4);
}

function plot(run: DrawnRun): { bottom: number; children: Shape[] } {
  const { schedule, id, places, number, words } = run;
  const rail = schedule.target('runs', id, 'rail');
  const ofRail = (key: string) => rail < 0 ? null : numberAt(schedule, 'supplies', rail, key);
  const [nominalVolts, supplyVolts] = [ofRail('voltage'), ofRail('lowest')];
  const [length, maxDrop] = [number('length'), number('maxDrop')];
  const fedAgain = number('wholeLength');
  if (nominalVolts === null || supplyVolts === null || length === null) {
    return { bottom: 150, children: note(run, 320, 100) };
  }

  const limitVolts = maxDrop === null ? null : supplyVolts - nominalVolts * maxDrop;
  const voltages = [supplyVolts, limitVolts, ...places.flatMap(({ volts, leastVolts }) => [volts, leastVolts])];
  const frame = runFrame(fedAgain ?? length, places, voltages.filter((volts) => volts !== null));
  const { left, right, top, bottom, x, y } = frame;
  const at = (place: RunPlace) => ({ x: x(place.metres), y: y(place.volts ?? place.leastVolts ?? supplyVolts) });
  const names = placeLabels(places, at, left, right, top);
  const isSolved = number('endVoltage') !== null;
  return {
    bottom: bottom + 84,
    children: [
      ...axes(frame, words), line('end', x(length), top, x(length), bottom),
      ...(limitVolts === null ? [] : [
        line('limit', left, y(limitVolts), right, y(limitVolts)),
        label('near haloed', left + 5, y(limitVolts) + 14, limitText(run, limitVolts)),
      ]),
      ...names.shapes, ...(isSolved ? [curve(frame, supplyVolts, length, places, fedAgain)] : []),
      ...marks(frame, places, words),
      ...(isSolved ? lowest(run, frame, length) : note(run, left + 370, (top + bottom) / 2)),
      ...legend(frame, places.length - names.count, words),
    ],
  };
}

/** The lowest voltage, written beside its place. */
function lowest({ places, number, text }: DrawnRun, { x, y }: RunFrame, length: number): Shape[] {
  const known = places.filter((place) => place.volts !== null);
  const metres = known.findLast((place) => known.every(({ volts }) => volts! >= place.volts!))?.metres ?? length;
  return [label('strong haloed', x(metres) + 8, y(number('endVoltage')!) + 17, text('endVoltage'))];
}

/** The line of the most drop in words. */
function limitText({ text, words }: DrawnRun, limitVolts: number): string {
  const voltage = valueText('runs', 'endVoltage', limitVolts, words, 'up');
  return words.say('maximum voltage drop {share}: {voltage}', { share: text('maxDrop'), voltage });
}

/** Why there is no curve. */
function note({ collapses, words }: DrawnRun, x: number, y: number): Shape[] {
  const lines = wrapped(collapses
    ? words.say(
      'No stable operating point: the devices draw constant power, and the cable cannot deliver what they ask for at any voltage.'
    )
    : words.say('The voltage along this run is not known yet. Its findings say which entries are missing.'), 44);
  const height = lines.length * 19 + 16;
  return [
    shape('rect', { class: 'note', x: x - 175, y: y - height / 2, width: 350, height }),
    ...lines.map((text, index) => label('strong', x, y - height / 2 + 22 + index * 19, text, 'middle')),
  ];
}

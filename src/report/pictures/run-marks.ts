import { path } from './path.ts';
import type { RunFrame } from './run-frame.ts';
import type { RunPlace } from './run-places.ts';
import { label, line, shape, type Shape } from './shape.ts';
import { axisNumber, valueText } from './words.ts';
import type { Words } from '../../words/index.ts';

/** More lines from voltages down to what is needed would be a grey field. */
const MOST_WITH_STEMS = 40;

/**
 * Between two places the current is the same, so the voltage falls evenly; behind the last it stays, or rises to where
 * the run is fed again.
 */
export function curve(
  { x, y }: RunFrame, supplyVolts: number, length: number, places: readonly RunPlace[], fedAgain: number | null,
): Shape {
  const points: [number, number][] = [[0, supplyVolts]];
  for (const { metres, volts } of places) if (volts !== null) points.push([metres, volts]);
  const [end, volts] = points.at(-1)!;
  if (fedAgain !== null) points.push([fedAgain, supplyVolts]);
  else if (end < length) points.push([length, volts]);
  return shape('path', { class: 'curve', d: path(points.map(([metres, here]) => [x(metres), y(here)])) });
}

/** At each place its voltage, the least that its devices need, and what they lack between the two. */
export function marks(frame: RunFrame, places: readonly RunPlace[], words: Words): Shape[] {
  return places.map((place) => {
    const { volts, leastVolts, isLacking, devices } = place;
    const x = frame.x(place.metres);
    const isPower = devices.some((device) => device.isConstantPower);
    const withStem = volts !== null && (isLacking || places.length <= MOST_WITH_STEMS);
    return shape(
      'g', { class: 'place' }, shape('title', {}, placeText(place, words)),
      ...(leastVolts === null ? [] : [
        ...(withStem ? [line(isLacking ? 'lacking' : 'leader', x, frame.y(volts), x, frame.y(leastVolts))] : []),
        line(isLacking ? 'lacking' : 'least', x - 5, frame.y(leastVolts), x + 5, frame.y(leastVolts)),
      ]),
      ...(volts === null ? [] : [
        shape(
          'circle', { class: isPower ? 'device power' : 'device', cx: x, cy: frame.y(volts), r: isPower ? 3.5 : 4 }
        ),
      ]),
    );
  });
}

/** A place in words: «D-01, D-02: 23.10 V at 12.0 m, needed 21.6 V». */
export function placeText({ devices, metres, volts, leastVolts, isLacking }: RunPlace, words: Words): string {
  const here = {
    devices: devices.map(({ name }) => name).join(', '),
    voltage: valueText('runs', 'endVoltage', volts, words), distance: valueText('runs', 'length', metres, words),
  };
  if (leastVolts === null) return words.say('{devices}: {voltage} at {distance}', here);
  const needed = { ...here, least: valueText('types', 'minVoltage', leastVolts, words) };
  return isLacking ? words.say('{devices}: {voltage} at {distance}, needed {least}, too little', needed)
    : words.say('{devices}: {voltage} at {distance}, needed {least}', needed);
}

/** Room that a text of the legend takes, up to the sign behind it [units]. */
const roomFor = (text: string): number => text.length * 6.7 + 14;

/** What the signs mean, and the scales in millimetres of paper. */
export function legend({ left, bottom, across, up }: RunFrame, unnamed: number, words: Words): Shape[] {
  const row = bottom + 46;
  const centimetre = ({ perCentimetre: value }: RunFrame['up'], unit: string) =>
    `${axisNumber(value, String(value).split('.')[1]?.length ?? 0, words)}\u00a0${unit}`;
  const scales = { across: centimetre(across, 'm'), up: centimetre(up, 'V') };
  const notes = [
    words.say('On paper at full size 10 mm are {across} across and {up} up.', scales),
    ...(unnamed === 0 ? [] : [words.say(
      '{count, plural, one {# more place is drawn without its name.} other {# more places are drawn without their names.}}', { count: unnamed },
    )]),
  ];
  const [currentText, powerText] = [words.say('constant current'), words.say('constant power')];
  const [leastText, lackText] = [words.say('minimum voltage of the devices'), words.say('what they lack')];
  const current = left + 4;
  const power = Math.max(left + 136, current + 10 + roomFor(currentText));
  const least = Math.max(left + 258, power + 10 + roomFor(powerText));
  const lack = Math.max(left + 458, least + 16 + roomFor(leastText));
  return [
    shape('circle', { class: 'device', cx: current, cy: row - 4, r: 4 }),
    label('quiet', current + 10, row, currentText),
    shape('circle', { class: 'device power', cx: power, cy: row - 4, r: 3.5 }),
    label('quiet', power + 10, row, powerText),
    line('least', least, row - 4, least + 10, row - 4), label('quiet', least + 16, row, leastText),
    line('lacking', lack, row - 9, lack, row + 1), line('lacking', lack - 5, row - 9, lack + 5, row - 9),
    label('quiet', lack + 12, row, lackText),
    label('quiet', left, row + 22, notes.join(' ')),
  ];
}

import { WIDTH } from './picture.ts';
import type { RunPlace } from './run-places.ts';
import { scaleFor, type Scale } from './scale.ts';
import { label, line, type Shape } from './shape.ts';
import { axisNumber } from './words.ts';
import type { Words } from '../../words/index.ts';

const LEFT = 60;
const RIGHT = WIDTH - 84;
const TOP = 140;
const MOST_HEIGHT = 280;

/** The field in which the voltage along a run is drawn, with its two scales. */
export interface RunFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Where a distance [m] is. */
  readonly x: (metres: number) => number;
  /** Where a voltage [V] is. */
  readonly y: (volts: number) => number;
  readonly across: Scale;
  readonly up: Scale;
}

/**
 * The field that holds the whole run, and every voltage that is drawn.
 * @param length of the run [m], above 0
 * @param voltages all that are drawn [V], at least one
 */
export function runFrame(length: number, places: readonly RunPlace[], voltages: readonly number[]): RunFrame {
  const [lowest, highest] = [Math.min(...voltages), Math.max(...voltages)];
  const across = scaleFor(0, Math.max(length, ...places.map(({ metres }) => metres)), RIGHT - LEFT, 44);
  const full = scaleFor(axisBegin(lowest, highest), highest, MOST_HEIGHT, 24);
  const topTick = full.ticks.find((volts) => volts >= highest) ?? highest;
  const up = { ...full, ticks: full.ticks.filter((volts) => volts <= topTick) };
  const bottom = TOP + up.at(topTick);
  return {
    left: LEFT, right: RIGHT, top: TOP, bottom, across, up,
    x: (metres) => LEFT + across.at(metres), y: (volts) => bottom - up.at(volts),
  };
}

/** A round voltage a little below the lowest figure, at which the axis begins. */
function axisBegin(lowest: number, highest: number): number {
  const range = Math.max(highest - lowest, 0.01 * highest);
  const step = 10 ** Math.floor(Math.log10(range)) / 2;
  return Math.max(0, Math.floor((lowest - 0.08 * range) / step) * step);
}

/** The axes of the field, in metres and volts, with ticks at round numbers. */
export function axes({ left, right, top, bottom, x, y, across, up }: RunFrame, words: Words): Shape[] {
  return [
    ...up.ticks.flatMap((volts) => [
      line('grid', left, y(volts), right, y(volts)),
      label('volts quiet', left - 8, y(volts) + 4, axisNumber(volts, up.decimals, words), 'end'),
    ]),
    ...across.ticks.flatMap((metres) => [
      line('axis', x(metres), bottom, x(metres), bottom + 5),
      label('metres quiet', x(metres), bottom + 18, axisNumber(metres, across.decimals, words), 'middle'),
    ]),
    line('axis', left, bottom, right, bottom), line('axis', left, top, left, bottom),
    label('strong', left - 8, top - 14, 'V', 'end'), label('strong', right + 10, bottom + 18, 'm'),
  ];
}

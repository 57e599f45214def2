import { PER_MM } from './picture.ts';

/** Millimetres on paper for one unit of a scale, apart from powers of ten; each divides 10 into a short number. */
const STEPS = [1, 1.25, 2, 2.5, 4, 5, 8] as const;
const TICKS = [1, 2, 5] as const;

/** An axis that is true to scale, so that a ruler reads it. */
export interface Scale {
  /** What 10 mm on paper stand for, a short number. */
  readonly perCentimetre: number;
  /** Values of the ticks, round numbers, in order. */
  readonly ticks: readonly number[];
  /** Decimals that the ticks need. */
  readonly decimals: number;
  /** Distance of a value from the beginning of the axis, in units of the picture. */
  readonly at: (value: number) => number;
}

/**
 * The largest scale of round millimetres at which a range fits.
 * @param from value at the beginning of the axis
 * @param to greatest value that has to fit, above `from`
 * @param room length of the axis [units]
 * @param apart least distance of two ticks [units]
 */
export function scaleFor(from: number, to: number, room: number, apart: number): Scale {
  const fitting = room / PER_MM / (to - from);
  const power = 10 ** Math.floor(Math.log10(fitting));
  const millimetres = STEPS.map((step) => step * power).findLast((each) => each <= fitting * (1 + 1e-9)) ?? power;
  const units = millimetres * PER_MM;
  const step = tickStep(apart / units);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor((from + room / units) / step + 1e-9);
  const ticks = Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step);
  const perCentimetre = Number((10 / millimetres).toPrecision(6));
  return { perCentimetre, ticks, decimals, at: (value) => (value - from) * units };
}

/** Least round number that is not below another. */
function tickStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return (TICKS.find((each) => each * power >= least * (1 - 1e-9)) ?? 10) * power;
}

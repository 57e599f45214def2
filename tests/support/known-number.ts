import { evaluateArithmetic } from './arithmetic.ts';

export type Cell = string | number | boolean | null | undefined;
export type InputRow = Readonly<Record<string, Cell>>;
/** A number, or `null` where it is unknown. */
export type Known = number | null;

/** Whether anything was typed in a cell. */
export function isGiven(cell: Cell): boolean {
  return cell !== undefined && cell !== null && cell !== '';
}

/** What a number in a cell must be: within bounds, and whole where things are counted. */
interface Range {
  readonly above?: number;
  readonly min?: number;
  readonly max?: number;
  readonly whole?: true;
}

const AT_LEAST_0: Range = { min: 0 };
const ABOVE_0: Range = { above: 0 };
const SHARE: Range = { min: 0, max: 1 };
const SHARE_ABOVE_0: Range = { above: 0, max: 1 };
const COUNT: Range = { min: 1, whole: true };

const RANGES: Readonly<Record<string, Range>> = {
  qty: { min: 0, whole: true }, units: COUNT, limit: COUNT, tolerance: { min: 0, max: 0.5 },
  unitDraw: AT_LEAST_0, draw: AT_LEAST_0, power: AT_LEAST_0, nodes: AT_LEAST_0,
  voltage: ABOVE_0, rated: ABOVE_0, fuse: ABOVE_0, resistive: ABOVE_0, lamp: ABOVE_0, motor: ABOVE_0, coil: ABOVE_0,
  inrush: AT_LEAST_0, diversity: SHARE, reserve: SHARE, factor: SHARE, hours: { min: 0, max: 24 },
  height: ABOVE_0, width: ABOVE_0, depth: ABOVE_0, transfer: ABOVE_0, otherLoss: AT_LEAST_0,
  ambient: { min: -40, max: 70 }, around: { min: -40, max: 120 }, maxInside: { min: -40, max: 120 },
  fullUpTo: { min: -40, max: 120 }, lessPerKelvin: SHARE, offAt: { min: -40, max: 120 }, peak: { min: 1, max: 10 },
  topFactor: { min: 1, max: 3 }, rails: COUNT, mountedOn: COUNT, railLength: ABOVE_0,
  standbyHours: { min: 0, max: 1000 },
  battery: ABOVE_0,
  terminators: { min: 0, whole: true }, maxCable: ABOVE_0, busCurrent: ABOVE_0, busDraw: AT_LEAST_0, length: ABOVE_0,
  distance: AT_LEAST_0, pairs: COUNT, grouped: COUNT, temperature: { min: -40, max: 120 }, resistance: ABOVE_0,
  maxCurrent: ABOVE_0, maxTemperature: { above: 55, max: 250 }, baseTemperature: { min: 0, max: 55 },
  seriesDrop: { min: 0, max: 5 }, trip: { min: 1, max: 100 },
  measuredCurrent: AT_LEAST_0, measuredVoltage: { min: -1000, max: 1000 },
  currentTolerance: SHARE_ABOVE_0, voltageTolerance: SHARE_ABOVE_0,
  ratedCurrent: ABOVE_0, maxOnB16: COUNT, inputPowerFactor: SHARE_ABOVE_0, inputInrush: AT_LEAST_0,
  dc: ABOVE_0, dcCoil: ABOVE_0, maxVoltage: ABOVE_0, maxDcVoltage: ABOVE_0, pulseFactor: { min: 1, max: 20 },
  common: ABOVE_0, outputs: COUNT,
  minVoltage: AT_LEAST_0, price: AT_LEAST_0, size: ABOVE_0, maxDrop: SHARE_ABOVE_0, k2: { min: 1, max: 5 },
  maxOutput: { min: 1, max: 10 }, innerResistance: { min: 0, max: 10 }, secondLength: ABOVE_0,
  derating: SHARE_ABOVE_0, target: SHARE_ABOVE_0, efficiency: SHARE_ABOVE_0, powerFactor: SHARE_ABOVE_0,
};

function isWithin(value: number, { above = -Infinity, min = -Infinity, max = Infinity, whole }: Range): boolean {
  return value > above && value >= min && value <= max && (whole === undefined || Number.isInteger(value));
}

/**
 * Number in a cell; `ifEmpty` where nothing was typed, `null` where what was typed is no number. A number, and the
 * result of a formula, must be within the range of its column: what was meant by another is not known.
 */
export function number(row: InputRow | undefined, key: string, ifEmpty: Known = null): Known {
  const cell = row?.[key];
  if (!isGiven(cell)) return ifEmpty;
  const value = typeof cell === 'number' ? finite(cell)
    : typeof cell === 'string' && cell.startsWith('=') ? evaluateArithmetic(cell) : null;
  return value !== null && isWithin(value, RANGES[key]!) ? value : null;
}

/** Whether a formula of a row has no result, or a number is none that its column allows: nobody knows what is meant. */
export function hasFault(row: InputRow): boolean {
  return Object.entries(RANGES).some(([key, range]) => typeof row[key] === 'number' ? !isWithin(row[key], range)
    : typeof row[key] === 'string' && row[key].startsWith('=') && number(row, key) === null);
}

function finite(value: number): Known {
  return Number.isFinite(value) ? value : null;
}

/** Product; unknown where a factor is, or beyond what a number can hold. */
export function times(a: Known, b: Known): Known {
  return a === null || b === null ? null : finite(a * b);
}

/** Quotient; unknown where a part is, or on a division by zero. */
export function over(a: Known, b: Known): Known {
  return a === null || b === null || b === 0 ? null : finite(a / b);
}

/** Sum; unknown where a part is. */
export function plus(a: Known, b: Known): Known {
  return a === null || b === null ? null : finite(a + b);
}

/** Difference; unknown where a part is. */
export function minus(a: Known, b: Known): Known {
  return a === null || b === null ? null : finite(a - b);
}

/** Rounding of the arithmetic, as a share of the larger number. */
const ROUNDING = 1e-9;

/** Whole part, in which a number that rounding left just below a whole one counts as that. */
export function wholePart(a: Known): Known {
  return a === null ? null : Math.floor(a + ROUNDING * Math.abs(a));
}

/** Whether a number is above another by more than rounding; never where one is unknown. */
export function exceeds(a: Known, b: Known): boolean {
  return a !== null && b !== null && a - b > ROUNDING * Math.max(Math.abs(a), Math.abs(b));
}

import {
  carriedCurrent, faultCurrent, longestRun, loopResistancePerMetre, smallestConductor, solveRun,
  type CandidateConductor, type RunLimits, type RunProtection, type Tap,
} from '../../electrical/index.ts';
import { message } from '../../words/index.ts';
import type { CellValue, Path, Solution, Solved } from './column.ts';

/** Outcome of a run on which no voltage above zero gives the devices what they ask for. */
export const NO_WORKING_VOLTAGE = message('no working voltage');

/** What is read of the run. */
const RUN = [
  'rail.voltage', 'rail.rated', 'rail.units', 'rail.peak', 'conductor.resistance', 'carries',
  'pairs', 'length', 'ambient', 'grouped', 'temperature', 'basis', 'way.rated', 'way.trip', 'maxDrop',
] as const satisfies Path[];

/** What is read of each device row on it. */
const DEVICE = [
  'qty', 'unitDraw', 'diversity', 'distance', 'rail.voltage', 'type.load', 'type.power', 'type.draw', 'type.minVoltage',
] as const satisfies Path[];

/** What is read of each conductor that it could be made of. */
const CONDUCTOR = ['conductor', 'resistance', 'maxCurrent', 'maxTemperature', 'baseTemperature'] as const;

/** Values by path; a number that is unknown, and every text, is `null` to `number`. */
class Line<Key extends string> {
  readonly #keys: readonly Key[];
  readonly #cells: readonly CellValue[];

  constructor(keys: readonly Key[], cells: readonly CellValue[]) {
    this.#keys = keys;
    this.#cells = cells;
  }

  value(key: Key): CellValue {
    return this.#cells[this.#keys.indexOf(key)] ?? null;
  }

  number(key: Key): number | null {
    const value = this.value(key);
    return typeof value === 'number' ? value : null;
  }
}

type RunLine = Line<(typeof RUN)[number]>;
type DeviceLine = Line<(typeof DEVICE)[number]>;
type ConductorLine = Line<(typeof CONDUCTOR)[number]>;

/** Without these nothing can be said of a run but which voltage its devices need. */
interface Essentials {
  readonly supplyVolts: number;
  readonly pairs: number;
  readonly lengthMetres: number;
  readonly temperature: number;
}

function essentials(run: RunLine): Essentials | null {
  const [supplyVolts, pairs] = [run.number('rail.voltage'), run.number('pairs')];
  const [lengthMetres, temperature] = [run.number('length'), run.number('temperature')];
  if (supplyVolts === null || pairs === null || lengthMetres === null || temperature === null) return null;
  return { supplyVolts, pairs, lengthMetres, temperature };
}

/** Current or power of a device row, at its distance or else at the far end; `null` when it is not known. */
function tapOf(device: DeviceLine, { supplyVolts, lengthMetres }: Essentials, onDemand: boolean): Tap | null {
  const [qty, draw] = [device.number('qty'), device.number('unitDraw')];
  const diversity = onDemand ? device.number('diversity') : 1;
  if (qty === null || draw === null || diversity === null) return null;
  const distanceMetres = device.number('distance') ?? lengthMetres;
  if (device.value('type.load') !== 'power') return { distanceMetres, amps: qty * diversity * draw / 1000 };
  return { distanceMetres, watts: qty * diversity * unitPower(device, draw, supplyVolts) };
}

/**
 * The power of the type, unless the row has a draw of its own: then that draw at the nominal voltage. Both are those of
 * the row's own rail, which by mistake may not be that of the run.
 */
function unitPower(device: DeviceLine, draw: number, supplyVolts: number): number {
  const nominalVolts = device.number('rail.voltage') ?? supplyVolts;
  const atNominal = draw / 1000 * nominalVolts;
  const power = device.number('type.power');
  if (power === null) return atNominal;
  const typical = device.number('type.draw') ?? power / nominalVolts * 1000;
  const isOwn = Math.abs(draw - typical) > 1e-9 * Math.max(1, typical);
  return isOwn ? atNominal : power;
}

/** Highest voltage that a device on the run needs; `null` when none says. */
function neededVoltage(devices: readonly DeviceLine[]): number | null {
  const needs = devices.filter((device) => device.number('qty') !== 0)
    .map((device) => device.number('type.minVoltage')).filter((volts) => volts !== null);
  return needs.length === 0 ? null : Math.max(...needs);
}

/** What the run has to keep to, as far as it is known. What the conductors carry is left to the caller. */
function limitsOf(run: RunLine, minVolts: number | null): RunLimits {
  const maxDrop = run.number('maxDrop');
  const protection = protectionOf(run);
  return {
    ...(minVolts === null ? {} : { minVolts }), ...(maxDrop === null ? {} : { maxDrop }),
    ...(protection === null ? {} : { protection }),
  };
}

function protectionOf(run: RunLine): RunProtection | null {
  const [protectionAmps, trip] = [run.number('way.rated'), run.number('way.trip')];
  if (protectionAmps === null) return null;
  const availableAmps = available(run);
  return { protectionAmps, ...(trip === null ? {} : { trip }), ...(availableAmps === null ? {} : { availableAmps }) };
}

/** What the supply gives into a short circuit [A]; `null` when that is not known. */
function available(run: RunLine): number | null {
  const [rated, units, peak] = [run.number('rail.rated'), run.number('rail.units'), run.number('rail.peak')];
  return rated === null || units === null || peak === null ? null : rated * units * peak;
}

/** What a conductor would carry where the run lies [A]; `null` when that is not known. */
function wouldCarry(conductor: ConductorLine, run: RunLine, pairs: number): number | null {
  const maxAmps = conductor.number('maxCurrent');
  const [highest, base] = [conductor.number('maxTemperature'), conductor.number('baseTemperature')];
  const [ambient, grouped] = [run.number('ambient'), run.number('grouped')];
  if (maxAmps === null || highest === null || base === null || ambient === null || grouped === null) return null;
  return carriedCurrent(maxAmps, pairs, ambient, grouped, highest, base);
}

/**
 * Name of the conductor of highest resistance with which the run does not fail; `null` when none does. One of which it
 * is not known what it carries is none.
 */
function smallestName(
  whole: readonly CellValue[][], run: RunLine, known: Essentials, taps: readonly Tap[], limits: RunLimits,
): string | null {
  const names: string[] = [];
  const candidates: CandidateConductor[] = [];
  for (const cells of whole) {
    const conductor: ConductorLine = new Line(CONDUCTOR, cells);
    const [name, ohmPerKm] = [conductor.value('conductor'), conductor.number('resistance')];
    const carriesAmps = wouldCarry(conductor, run, known.pairs);
    if (typeof name !== 'string' || ohmPerKm === null || carriesAmps === null) continue;
    names.push(name);
    candidates.push({ ohmPerKm, carriesAmps });
  }
  const place = smallestConductor({ ...known, taps }, limits, candidates);
  return place === null ? null : names[place]!;
}

function solve(own: readonly CellValue[], each: readonly CellValue[][], whole: readonly CellValue[][]): Solved {
  const run: RunLine = new Line(RUN, own);
  const devices: DeviceLine[] = each.map((cells) => new Line(DEVICE, cells));
  const minVoltage = neededVoltage(devices);
  const known = essentials(run);
  if (known === null) return { figures: { minVoltage }, missing: 0 };

  const { supplyVolts, pairs, lengthMetres, temperature } = known;
  const allTaps = devices.map((device) => tapOf(device, known, run.value('basis') === 'demand'));
  const taps = allTaps.filter((tap) => tap !== null);
  const missing = allTaps.length - taps.length;
  const limits = limitsOf(run, minVoltage);
  const chosen = { minVoltage, smallestConductor: smallestName(whole, run, known, taps, limits) };
  const ohmPerKm = run.number('conductor.resistance');
  const loopOhmPerMetre = ohmPerKm === null ? null : loopResistancePerMetre(ohmPerKm, temperature, pairs);
  if (loopOhmPerMetre === null) return { figures: chosen, missing };

  const circuit = { supplyVolts, loopOhmPerMetre, taps };
  const carriesAmps = run.number('carries');
  const itsLimits = carriesAmps === null ? limits : { ...limits, carriesAmps };
  const availableAmps = available(run);
  const figures = {
    ...chosen,
    faultCurrent: availableAmps === null ? null
      : faultCurrent(supplyVolts, loopOhmPerMetre, lengthMetres, 0, availableAmps),
    maxLength: longestRun(circuit, lengthMetres, itsLimits),
  };
  const solution = solveRun(circuit);
  if (!solution.working) return { figures, missing, outcome: NO_WORKING_VOLTAGE };
  let next = 0;
  return {
    figures: { ...figures, current: solution.currentAmps, drop: solution.dropVolts, endVoltage: solution.endVolts },
    each: { terminalVoltage: allTaps.map((tap) => tap === null ? null : solution.tapVolts[next++]!) },
    missing,
  };
}

/** Volt drop, voltages, fault current, longest run and smallest conductor of a run with its devices. */
export const runSolution: Solution = {
  from: 'devices', by: 'run',
  of: RUN, each: DEVICE, whole: { sheet: 'conductors', of: CONDUCTOR },
  gives: ['current', 'drop', 'endVoltage', 'minVoltage', 'faultCurrent', 'maxLength', 'smallestConductor'],
  givesEach: ['terminalVoltage'],
  solve,
};

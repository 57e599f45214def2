import {
  faultCurrent, longestRun, loopResistancePerMetre, smallestConductor, solveRun,
  type CandidateConductor, type RunLimits, type RunProtection, type Tap,
} from '../../electrical/index.ts';
import type { CellValue, Solution, Solved } from './column.ts';

const number = (value: CellValue | undefined): number | null => typeof value === 'number' ? value : null;

/** Outcome of a run on which no voltage above zero gives the devices what they ask for. */
export const NO_WORKING_VOLTAGE = 'no working voltage';

interface RunInputs {
  readonly supplyVolts: number;
  readonly ohmPerKm: number;
  readonly pairs: number;
  readonly length: number;
  readonly temperature: number;
}

/** Currents and powers of the devices on a run; `null` for a device row that is not known. */
function tapsOf(each: readonly CellValue[][], length: number, supplyVolts: number, onDemand: boolean): (Tap | null)[] {
  return each.map(([qtyCell, drawCell, diversityCell, distanceCell, load, powerCell, typeDrawCell]) => {
    const [qty, draw, diversity] = [number(qtyCell), number(drawCell), number(diversityCell)];
    if (qty === null || draw === null || (onDemand && diversity === null)) return null;
    const count = qty * (onDemand ? diversity! : 1);
    const distanceMetres = number(distanceCell) ?? length;
    if (load !== 'power') return { distanceMetres, amps: count * draw / 1000 };
    // The power of the type holds unless the row has a draw of its own, which then is that at the nominal voltage.
    const power = number(powerCell);
    const typical = number(typeDrawCell) ?? (power === null ? null : power / supplyVolts * 1000);
    const own = power === null || typical === null || Math.abs(draw - typical) > 1e-9 * Math.max(1, typical);
    return { distanceMetres, watts: count * (own ? draw / 1000 * supplyVolts : power) };
  });
}

function candidates(whole: readonly CellValue[][]): { names: string[]; conductors: CandidateConductor[] } {
  const names: string[] = [];
  const conductors: CandidateConductor[] = [];
  for (const [name, resistance, maxCurrent] of whole) {
    const [ohmPerKm, maxAmps] = [number(resistance), number(maxCurrent)];
    if (typeof name !== 'string' || ohmPerKm === null) continue;
    names.push(name);
    conductors.push(maxAmps === null ? { ohmPerKm } : { ohmPerKm, maxAmps });
  }
  return { names, conductors };
}

function limitsOf(own: readonly CellValue[], minVolts: number | null): RunLimits {
  const [maxDrop, protectionAmps, trip, ratedAmps, units, peak] = own.slice(6).map(number);
  const known = [protectionAmps, trip, ratedAmps, units, peak].every((value) => typeof value === 'number');
  const protection: RunProtection | undefined = known
    ? { protectionAmps: protectionAmps!, trip: trip!, ratedAmps: ratedAmps!, units: units!, peak: peak! } : undefined;
  return {
    ...(minVolts === null ? {} : { minVolts }), ...(typeof maxDrop === 'number' ? { maxDrop } : {}),
    ...(protection === undefined ? {} : { protection }),
  };
}

function solve(own: readonly CellValue[], each: readonly CellValue[][], whole: readonly CellValue[][]): Solved {
  const [supplyVolts, ohmPerKm, pairs, length, temperature] = own.slice(0, 5).map(number);
  const needs = each.map((line) => number(line[0]) === 0 ? null : number(line[7])).filter((value) => value !== null);
  const minVolts = needs.length === 0 ? null : Math.max(...needs);
  const unknown: Solved = { figures: { minVoltage: minVolts }, missing: 0 };
  if (typeof supplyVolts !== 'number' || typeof length !== 'number' || typeof temperature !== 'number' || typeof pairs !== 'number') return unknown;
  const taps = tapsOf(each, length, supplyVolts, own[5] === 'demand');
  const known = taps.filter((tap) => tap !== null);
  const missing = taps.length - known.length;
  const limits = limitsOf(own, minVolts);
  const { names, conductors } = candidates(whole);
  const smallest = smallestConductor({ supplyVolts, lengthMetres: length, temperature, pairs, taps: known }, limits, conductors);
  const chosen = { minVoltage: minVolts, smallestConductor: smallest === null ? null : names[smallest]! };
  const loopOhmPerMetre = typeof ohmPerKm === 'number' ? loopResistancePerMetre(ohmPerKm, temperature, pairs) : null;
  if (loopOhmPerMetre === null) return { figures: chosen, missing };
  return withConductor({ supplyVolts, ohmPerKm: ohmPerKm!, pairs, length, temperature }, loopOhmPerMetre, taps, limits, own, { figures: chosen, missing });
}

function withConductor(
  { supplyVolts, length }: RunInputs, loopOhmPerMetre: number, taps: readonly (Tap | null)[], limits: RunLimits,
  own: readonly CellValue[], base: Solved,
): Solved {
  const known = taps.filter((tap) => tap !== null);
  const run = { supplyVolts, loopOhmPerMetre, taps: known };
  const [ratedAmps, units, peak] = own.slice(9).map(number);
  const fault = typeof ratedAmps === 'number' && typeof units === 'number' && typeof peak === 'number'
    ? faultCurrent(supplyVolts, loopOhmPerMetre, length, ratedAmps, units, peak) : null;
  const figures = { ...base.figures, faultCurrent: fault, maxLength: longestRun(run, length, limits) };
  const solution = solveRun(run);
  if (!solution.working) return { ...base, figures, outcome: NO_WORKING_VOLTAGE };
  let next = 0;
  return {
    ...base,
    figures: { ...figures, current: solution.currentAmps, drop: solution.dropVolts, endVoltage: solution.endVolts },
    each: { terminalVoltage: taps.map((tap) => tap === null ? null : solution.tapVolts[next++]!) },
  };
}

/** Volt drop, voltages, fault current, longest run and smallest conductor of a run with its devices. */
export const runSolution: Solution = {
  from: 'devices', by: 'run',
  of: ['rail.voltage', 'conductor.resistance', 'pairs', 'length', 'temperature', 'basis', 'maxDrop', 'protection', 'trip', 'rail.rated', 'rail.units', 'rail.peak'],
  each: ['qty', 'unitDraw', 'diversity', 'distance', 'type.load', 'type.power', 'type.draw', 'type.minVoltage'],
  whole: { sheet: 'conductors', of: ['conductor', 'resistance', 'maxCurrent'] },
  gives: ['current', 'drop', 'endVoltage', 'minVoltage', 'faultCurrent', 'maxLength', 'smallestConductor'],
  givesEach: ['terminalVoltage'],
  solve,
};

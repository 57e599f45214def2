import { loopResistancePerMetre, solveRun, startCurrent, type Run } from '../../electrical/index.ts';
import { message } from '../../words/index.ts';
import type { CellValue, Path, Solution, Solved } from './column.ts';
import { DEVICE, essentials, Line, needOf, tapOf, type DeviceLine, type DeviceTap } from './run-lines.ts';

/** Outcome of a run on which no voltage above zero gives the devices what they ask for. */
export const NO_WORKING_VOLTAGE = message('no stable operating point');

/** What is read of the run. */
const RUN = [
  'rail.voltage', 'rail.lowest', 'conductor.resistance', 'pairs', 'length', 'temperature', 'basis',
] as const satisfies Path[];

function solve(own: readonly CellValue[], each: readonly CellValue[][]): Solved {
  const run = new Line(RUN, own);
  const devices: DeviceLine[] = each.map((cells) => new Line(DEVICE, cells));
  const needs = devices.map(needOf).filter((volts) => volts !== null);
  // What draws a constant current draws no more at the end of any cable.
  const isSteady = devices.every((device) => device.value('type.load') !== 'power');
  const drawing = devices.flatMap((device) => {
    const [quantity, draw] = [device.number('qty'), device.number('unitDraw')];
    return quantity === 0 || draw === null ? [] : [{ quantity, drawAmps: draw / 1000, device }];
  });
  // What is not known to draw more when it starts counts with what it draws.
  const starting = drawing.flatMap(({ quantity, drawAmps, device }) =>
    quantity === null ? [] : [{ quantity, drawAmps, inrushAmps: device.number('type.inrush') ?? 0 }]);
  const always = {
    minVoltage: needs.length === 0 ? null : Math.max(...needs), extra: isSteady ? 0 : null,
    largest: Math.max(0, ...drawing.map(({ drawAmps }) => drawAmps)), start: startCurrent(starting),
  };
  const sure = isSteady ? ['extra'] : [];
  const known = essentials(run);
  if (known === null) return { figures: always, missing: 0, sure };
  const onDemand = run.value('basis') === 'demand';
  const taps = devices.map((device) => tapOf(device, known, onDemand));
  const missing = taps.filter((tap) => tap === null).length;
  const ohmPerKm = run.number('conductor.resistance');
  const loopOhmPerMetre = ohmPerKm === null ? null : loopResistancePerMetre(ohmPerKm, known.temperature, known.pairs);
  if (loopOhmPerMetre === null) return { figures: always, missing, sure };

  const circuit = { supplyVolts: known.supplyVolts, loopOhmPerMetre, taps: taps.filter((tap) => tap !== null) };
  const extra = isSteady ? 0 : extraOf({
    ...circuit, taps: devices.map((device) => tapOf(device, known, true)).filter((tap) => tap !== null),
  });
  const nominal = solveRun(circuit);
  if (!nominal.working) return { figures: { ...always, extra }, missing, sure, outcome: NO_WORKING_VOLTAGE };
  const figures = { ...always, extra, current: nominal.currentAmps, drop: nominal.dropVolts };

  const lowestVolts = run.number('rail.lowest');
  if (lowestVolts === null) return { figures, missing, sure };
  const lowest = lowestVolts === known.supplyVolts ? nominal : solveRun({ ...circuit, supplyVolts: lowestVolts });
  if (!lowest.working) return { figures, missing, sure, outcome: NO_WORKING_VOLTAGE };
  let next = 0;
  const terminalVoltage = taps.map((tap) => tap === null ? null : lowest.tapVolts[next++]!);
  const margins = taps.flatMap((tap, place) => tap === null || needOf(devices[place]!) === null ? []
    : [terminalVoltage[place]! - tap.leastVolts!]);
  return {
    figures: {
      ...figures, endVoltage: lowest.endVolts, voltageMargin: margins.length === 0 ? null : Math.min(...margins),
    },
    each: { terminalVoltage }, missing, sure,
  };
}

interface DiversifiedRun extends Run {
  readonly taps: readonly DeviceTap[];
}

/**
 * What a run draws more than its devices at their nominal voltage [A]; `null` where it has no working voltage. Types of
 * less power than their draw says take nothing off.
 */
function extraOf(run: DiversifiedRun): number | null {
  const solution = solveRun(run);
  const nominalAmps = run.taps.reduce((sum, tap) => sum + tap.nominalAmps, 0);
  return solution.working ? Math.max(0, solution.currentAmps - nominalAmps) : null;
}

/** Current, volt drop and voltages of a run with its devices. */
export const runCircuit: Solution = {
  from: 'devices', by: 'run', of: RUN, each: DEVICE,
  gives: ['current', 'drop', 'endVoltage', 'minVoltage', 'voltageMargin', 'extra', 'largest', 'start'],
  givesEach: ['terminalVoltage'],
  solve,
};

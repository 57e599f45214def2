import { loopResistancePerMetre, solveRun, startCurrent, type Run, type RunSolution, type Tap } from '../../electrical/index.ts';
import { message } from '../../words/index.ts';
import type { CellValue, Path, Solution, Solved } from './column.ts';
import {
  DEVICE, essentials, Line, needOf, tapByShare, type DeviceLine, type DeviceTap, type Essentials,
} from './run-lines.ts';

/** Outcome of a run on which no voltage above zero gives the devices what they ask for. */
export const NO_WORKING_VOLTAGE = message('no stable operating point');

/** What is read of the run. */
const RUN = [
  'rail.voltage', 'rail.lowest', 'conductor.resistance', 'pairs', 'length', 'temperature', 'basis', 'secondWay',
  'wholeLength',
] as const satisfies Path[];

/**
 * Works out once what of a run is the same whatever is on.
 * @returns what works it out for the shares of its device rows that are on at their demand
 */
function solver(own: readonly CellValue[], each: readonly CellValue[][]): (shares: readonly CellValue[]) => Solved {
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
  if (known === null) return () => ({ figures: always, missing: 0, sure });

  const byShare = devices.map((device) => tapByShare(device, known));
  const together = byShare.map((tap) => tap(1));
  const isOnDemand = run.value('basis') === 'demand';
  const { fedAgainMetres } = known;
  const ohmPerKm = run.number('conductor.resistance');
  const loopOhmPerMetre = ohmPerKm === null ? null
    : loopResistancePerMetre(ohmPerKm, known.temperature, known.pairs);
  const working = (taps: Taps) => workingOf(taps, known, loopOhmPerMetre!, run.number('rail.lowest'));
  let atOnce: Working | undefined;
  return (shares) => {
    const onDemand = byShare.map((tap, place) => tap(shares[place] as number | null));
    const taps = isOnDemand ? onDemand : together;
    // What is drawn beyond the nominal currents hangs on the diversity, whatever the basis is.
    const missing = Math.max(lacking(taps), isSteady ? 0 : lacking(onDemand));
    if (loopOhmPerMetre === null) return { figures: always, missing, sure };
    // What is calculated with everything at once is the same in all cases.
    const found = isOnDemand ? working(taps) : atOnce ??= working(taps);
    const drawn = onDemand.filter((tap) => tap !== null);
    const diversified = isSteady && fedAgainMetres === undefined ? IDLE
      : isOnDemand ? found.nominal : solveRun({ ...cable(known, loopOhmPerMetre), taps: drawn });
    const extra = isSteady ? 0 : extraOf(diversified, drawn);
    const split = fedAgainMetres === undefined ? {}
      : sharesOf(fedAgainMetres, together.filter((tap) => tap !== null), drawn, diversified, extra);
    const { figures, outcome, terminalVoltage } = found;
    return {
      figures: { ...always, extra, ...split, ...figures }, missing, sure,
      ...outcome === undefined ? {} : { outcome },
      ...terminalVoltage === undefined ? {} : { each: { terminalVoltage } },
    };
  };
}

const solve = (own: readonly CellValue[], each: readonly CellValue[][]): Solved =>
  solver(own, each)(each.map((cells) => new Line(DEVICE, cells).value('diversity')));

/** A run on which nothing is. */
const IDLE: RunSolution = { working: true, dropVolts: 0, endVolts: 0, tapVolts: [], currentAmps: 0, secondAmps: 0 };

/** Device rows that are on; `null` for those of which it is not known what they draw. */
type Taps = readonly (DeviceTap | null)[];

const lacking = (taps: Taps) => taps.filter((tap) => tap === null).length;

/** How a run works with what is on. */
interface Working {
  readonly nominal: RunSolution;
  readonly figures: Solved['figures'];
  readonly terminalVoltage?: readonly (number | null)[];
  readonly outcome?: string;
}

/** What a run comes to with these devices, from the voltage of its rail and from the lowest that it may have. */
function workingOf(taps: Taps, known: Essentials, loopOhmPerMetre: number, lowestVolts: number | null): Working {
  const circuit = { ...cable(known, loopOhmPerMetre), taps: taps.filter((tap) => tap !== null) };
  const { supplyVolts, fedAgainMetres } = known;
  const nominal = solveRun(circuit);
  if (!nominal.working) return { nominal, figures: {}, outcome: NO_WORKING_VOLTAGE };
  const figures = { current: nominal.currentAmps + nominal.secondAmps, drop: nominal.dropVolts };

  if (lowestVolts === null) return { nominal, figures };
  const lowest = lowestVolts === supplyVolts ? nominal : solveRun({ ...circuit, supplyVolts: lowestVolts });
  if (!lowest.working) return { nominal, figures, outcome: NO_WORKING_VOLTAGE };
  let next = 0;
  const terminalVoltage = taps.map((tap) => tap === null ? null : lowest.tapVolts[next++]!);
  const openMargin = fedAgainMetres === undefined ? null
    : leastOpenMargin({ ...circuit, supplyVolts: lowestVolts }, fedAgainMetres);
  return {
    nominal, terminalVoltage,
    figures: {
      ...figures, endVoltage: lowest.endVolts, voltageMargin: leastMargin(circuit.taps, lowest), openMargin,
    },
  };
}

const cable = ({ supplyVolts, fedAgainMetres }: Essentials, loopOhmPerMetre: number) =>
  ({ supplyVolts, loopOhmPerMetre, ...fedAgainMetres === undefined ? {} : { fedAgainMetres } });

const sum = (amps: readonly number[]) => amps.reduce((all, each) => all + each, 0);
const nominalOf = (taps: readonly DeviceTap[]) => sum(taps.map(({ nominalAmps }) => nominalAmps));

/** Least that a tap has above what it needs [V]; where no voltage works it has none. */
function leastMargin(taps: readonly Tap[], solution: RunSolution): number | null {
  const margins = taps.flatMap(({ leastVolts }, place) =>
    leastVolts === undefined ? [] : [(solution.working ? solution.tapVolts[place]! : 0) - leastVolts]);
  return margins.length === 0 ? null : Math.min(...margins);
}

/** The least margin with one of the ways open, whichever leaves less. */
function leastOpenMargin({ supplyVolts, loopOhmPerMetre, taps }: Run, fedAgainMetres: number): number | null {
  const turned = taps.map((tap) => ({ ...tap, distanceMetres: fedAgainMetres - tap.distanceMetres }));
  const [one, other] = [taps, turned].map((fed) =>
    leastMargin(fed, solveRun({ supplyVolts, loopOhmPerMetre, taps: fed }))) as [number | null, number | null];
  return one === null || other === null ? null : Math.min(one, other);
}

/** What a run takes through its way and through its second one, of all at once and of its demand [A]. */
function sharesOf(
  fedAgainMetres: number, all: readonly DeviceTap[], diversified: readonly DeviceTap[], solution: RunSolution,
  extra: number | null,
): Readonly<Record<string, number>> {
  if (!solution.working || extra === null) return {};
  const [connected, demand] = [nominalOf(all), nominalOf(diversified)];
  const { currentAmps, secondAmps } = solution;
  const moments = sum(all.map(({ nominalAmps, distanceMetres }) => nominalAmps * distanceMetres));
  const share = (part: number, whole: number) => whole === 0 ? 0 : part / whole;
  const secondDemand = share(secondAmps, currentAmps + secondAmps) * (demand + extra);
  const secondConnected = share(moments, fedAgainMetres * connected) * (connected + extra);
  return {
    firstConnected: connected + extra - secondConnected, secondConnected,
    firstDemand: demand + extra - secondDemand, secondDemand,
  };
}

/**
 * What a run draws more than its devices at their nominal voltage [A]; `null` where it has no working voltage. Types of
 * less power than their draw says take nothing off.
 */
const extraOf = (solution: RunSolution, taps: readonly DeviceTap[]): number | null =>
  solution.working ? Math.max(0, solution.currentAmps + solution.secondAmps - nominalOf(taps)) : null;

/** Current, volt drop and voltages of a run with its devices. */
export const runCircuit: Solution = {
  from: 'devices', by: 'run', of: RUN, each: DEVICE,
  gives: [
    'current', 'drop', 'endVoltage', 'minVoltage', 'voltageMargin', 'openMargin', 'extra', 'largest', 'start',
    'firstConnected', 'firstDemand', 'secondConnected', 'secondDemand',
  ],
  givesEach: ['terminalVoltage'],
  // Else it gives what it gives with everything at once, and what is steady has no extra.
  diversity: {
    key: 'diversity',
    matters: (own, each) => new Line(RUN, own).value('basis') === 'demand' || new Line(RUN, own).value('secondWay') !== null
      || each.some((cells) => new Line(DEVICE, cells).value('type.load') === 'power'),
    inCases: (own, each, shares) => shares.map(solver(own, each)),
  },
  solve,
};

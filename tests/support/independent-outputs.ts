import {
  exceeds, isGiven, minus, number, over, plus, times, type Cell, type InputRow, type Known,
} from './known-number.ts';
import { highestOf } from './independent-voltage.ts';

/**
 * Outputs, modules, feeds and what supplies take from these, worked out a second time in plain arithmetic. Nothing of
 * the product is imported.
 */

/** Rows that an output or a supply names, where they are there. */
export interface Behind {
  readonly contact?: InputRow | undefined;
  readonly feed?: InputRow | undefined;
  readonly rail?: InputRow | undefined;
}

type Verdict = readonly [over: boolean, near: boolean, incomplete: boolean];

const KINDS: ReadonlySet<Cell> = new Set(['resistive', 'lamp', 'motor', 'coil', 'dc', 'dcCoil']);
const isDirect = ({ kind }: InputRow) => kind === 'dc' || kind === 'dcCoil';
const isHeavy = ({ kind }: InputRow) => kind === 'lamp' || kind === 'motor';
/** Entered, and yet without a result. */
const isFaulty = (row: InputRow, key: string) => isGiven(row[key]) && number(row, key) === null;

function voltageOf(row: InputRow, { rail, feed }: Behind): Known {
  if (isGiven(row.voltage)) return number(row, 'voltage');
  if (isGiven(row.rail) || isDirect(row)) return rail === undefined ? null : number(rail, 'voltage', 24);
  return feed === undefined ? 230 : number(feed, 'voltage', 230);
}

/** Least power factors of lamps, EU 2019/2020, read on a secondary page. */
function powerFactorOf(row: InputRow): Known {
  if (isGiven(row.powerFactor)) return number(row, 'powerFactor');
  if (!KINDS.has(row.kind) || row.kind === 'motor') return null;
  if (row.kind !== 'lamp') return 1;
  const watts = number(row, 'power');
  return watts === null ? null : [0.5, 0.7, 0.9][Number(watts > 10) + Number(watts > 25)]!;
}

function efficiencyOf(row: InputRow): Known {
  if (isGiven(row.efficiency)) return number(row, 'efficiency');
  return KINDS.has(row.kind) && row.kind !== 'motor' ? 1 : null;
}

function currentOf(row: InputRow, voltage: Known): Known {
  const qty = number(row, 'qty', 1);
  if (isGiven(row.ratedCurrent)) return times(qty, number(row, 'ratedCurrent'));
  const watts = times(qty, number(row, 'power'));
  if (number(row, 'power') === 0) return watts;
  return over(watts, times(times(voltage, powerFactorOf(row)), efficiencyOf(row)));
}

/** Lower ends of the bands of IEC 60898-1, and how many more drivers than on B a breaker stands: 5 ÷ 3 from C on. */
const CURVES: Readonly<Record<string, readonly [band: number, drivers: number]>> = {
  B: [3, 1], C: [5, 5 / 3], D: [10, 5 / 3],
};

/** Peak that the breaker of a feed stands [A]; `null` where it is not known. */
function standing(feed: InputRow | undefined): Known {
  if (feed === undefined || !isGiven(feed.curve)) return null;
  return times(times(1.41 * CURVES[String(feed.curve)]![0], number(feed, 'rated')), number(feed, 'pulseFactor', 1));
}

/** What a start adds to the steady current: by the number of them that a breaker B 16 stands, else by the peak. */
function surgeOf(row: InputRow, qty: Known, running: Known, peak: Known, feed: InputRow | undefined): Known {
  let most = peak;
  if (isGiven(row.maxOnB16) && feed !== undefined && isGiven(feed.rated) && isGiven(feed.curve)) {
    const whole = times(over(number(feed, 'rated'), 16 / CURVES[String(feed.curve)]![1]), number(row, 'maxOnB16'));
    most = times(over(qty, whole), standing(feed));
  }
  const surge = minus(most, running);
  return surge === null ? null : surge < 0 ? 0 : surge;
}

const differs = (value: Known, from: Known) => value !== null && from !== null
  && exceeds(value > from ? value - from : from - value, from / 10);

export interface OutputFigures {
  voltage: Known; powerFactor: Known; efficiency: Known; current: Known; rating: Known; loading: Known; headroom: Known;
  inrushTotal: Known; inrushHeadroom: Known; surge: Known;
}

/** Figures of an output, and what its limits say. */
export function outputOf(row: InputRow, behind: Behind): { figures: OutputFigures; verdict: Verdict } {
  const { contact, feed, rail } = behind;
  const voltage = voltageOf(row, behind);
  const current = currentOf(row, voltage);
  const rating = KINDS.has(row.kind) ? number(contact, row.kind as string) : null;
  const target = number(row, 'target', 0.8);
  const loading = over(current, rating);
  const inrushTotal = times(number(row, 'qty', 1), number(row, 'inrush'));
  const making = number(contact, 'inrush');
  const inrushHeadroom = minus(making, inrushTotal);
  const usual = KINDS.has(row.kind) && !isHeavy(row) ? times(current, row.kind === 'coil' ? 10 : 1) : null;
  const mostVolts = contact === undefined || !KINDS.has(row.kind) ? null
    : isDirect(row) ? number(contact, 'maxDcVoltage') : number(contact, 'maxVoltage', 250);
  // A contact opens what the rail may give; a charged battery gives more than the load is made for.
  const switched = isDirect(row) && isGiven(row.rail) ? (rail === undefined ? null : highestOf(rail)) : voltage;
  const isSpare = number(row, 'power') === 0 && !isGiven(row.ratedCurrent);
  const ofRail = isGiven(row.rail) && rail !== undefined && differs(voltage, number(rail, 'voltage', 24));
  // A share of the outputs may be off together, and no part of one output.
  const [share, most] = feed === undefined ? [null, null] : [number(feed, 'diversity', 1), number(feed, 'rated')];
  const isMoreThanFeed = !isGiven(row.rail) && share !== null && share < 1 && exceeds(current, most);
  const ofFeed = !isGiven(row.rail) && !isDirect(row) && feed !== undefined
    && differs(voltage, number(feed, 'voltage', 230));
  return {
    figures: {
      voltage, powerFactor: powerFactorOf(row), efficiency: efficiencyOf(row),
      current, rating, loading, headroom: minus(rating, current), inrushTotal, inrushHeadroom,
      surge: surgeOf(row, number(row, 'qty', 1), current, isGiven(row.inrush) ? inrushTotal : usual, feed),
    },
    verdict: [
      exceeds(current, rating) || exceeds(inrushTotal, making) || exceeds(switched, mostVolts) || ofRail || ofFeed
        || isMoreThanFeed || (isDirect(row) && isGiven(row.feed)),
      exceeds(loading, target),
      current === null || rating === null || target === null || mostVolts === null || (switched === null && !isSpare)
        || ['qty', 'power', 'voltage', 'powerFactor', 'efficiency'].some((key) => isFaulty(row, key))
        || (isGiven(row.rail) && KINDS.has(row.kind) && !isDirect(row))
        || (isGiven(row.inrush) ? inrushHeadroom === null : isHeavy(row) && !isSpare),
    ],
  };
}

/** What a supply takes from its feed [A], what its start adds, and whether something of it is asked for. */
export function inputOf(
  row: InputRow, demand: Known, feed: InputRow | undefined,
): { inputCurrent: Known; surge: Known; isAsked: boolean } {
  const watts = times(number(row, 'voltage', 24), demand);
  const volts = times(times(number(row, 'efficiency'), number(row, 'inputPowerFactor')),
    feed === undefined ? null : number(feed, 'voltage', 230));
  const inputCurrent = over(watts, volts);
  const units = number(row, 'units', 1);
  const surge = surgeOf(row, units, inputCurrent, times(units, number(row, 'inputInrush')), feed);
  const isAsked = isGiven(row.feed) && (inputCurrent === null || (isGiven(feed?.curve) && surge === null));
  return { inputCurrent, surge, isAsked };
}

/** A total, and whether it lacks something. */
export interface Sum {
  readonly sum: number;
  readonly partial: boolean;
}

export interface ModuleFigures {
  current: number; headroom: Known; used: number; free: Known; partial: { current: boolean };
}

/** Figures of a module, and what its limits say. */
export function moduleOf(
  row: InputRow, current: Sum, used: number, isFedTwice: boolean,
): { figures: ModuleFigures; verdict: Verdict } {
  const [common, outputs] = [number(row, 'common'), number(row, 'outputs')];
  return {
    figures: {
      current: current.sum, headroom: minus(common, current.sum), used, free: minus(outputs, used),
      partial: { current: current.partial },
    },
    verdict: [
      exceeds(current.sum, common) || exceeds(used, outputs) || (common !== null && isFedTwice), false,
      isGiven(row.common) && current.partial,
    ],
  };
}

export interface FeedFigures {
  connected: number; drawn: number; demand: Known; loading: Known; spare: Known; supplySurge: number;
  outputSurge: number; inrush: Known;
  partial: { connected: boolean; drawn: boolean; supplySurge: boolean; outputSurge: boolean };
}

/**
 * Figures of a feed, and what its limits say.
 * @param demand what is asked of it [A]; what is drawn by its own diversity unless said otherwise
 */
export function feedOf(
  row: InputRow, connected: Sum, drawn: Sum, supplySurge: Sum, outputSurge: Sum,
  demand = times(drawn.sum, number(row, 'diversity', 1)),
): { figures: FeedFigures; verdict: Verdict } {
  const [rated, target] = [number(row, 'rated'), number(row, 'target', 0.8)];
  const loading = over(demand, rated);
  const inrush = plus(connected.sum, supplySurge.sum > outputSurge.sum ? supplySurge.sum : outputSurge.sum);
  return {
    figures: {
      connected: connected.sum, drawn: drawn.sum, demand, loading, spare: minus(times(rated, target), demand),
      supplySurge: supplySurge.sum, outputSurge: outputSurge.sum, inrush,
      partial: {
        connected: connected.partial, drawn: drawn.partial, supplySurge: supplySurge.partial,
        outputSurge: outputSurge.partial,
      },
    },
    verdict: [
      exceeds(demand, rated),
      exceeds(loading, target) || exceeds(inrush, standing(row)),
      demand === null || rated === null || target === null || connected.partial || isFaulty(row, 'pulseFactor')
        || (isGiven(row.curve) && (supplySurge.partial || outputSurge.partial)),
    ],
  };
}

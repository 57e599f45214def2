import {
  carriedCurrent, exceeds, FAULT_TEMPERATURE, longestRun, loopResistancePerMetre, operatingMultiple, outputLimit,
  smallestConductor, tripMultiple, type CandidateConductor, type RunLimits, type RunProtection, type Tap, type WayKind,
} from '../../electrical/index.ts';
import type { CellValue, Path, Solution, Solved } from './column.ts';
import { DEVICE, essentials, Line, tapByShare, type Essentials } from './run-lines.ts';
import { temperatureByLoad } from './run-temperature.ts';

/** What is read of the run. */
const RUN = [
  'rail.voltage', 'rail.lowest', 'rail.innerResistance', 'available', 'conductor.resistance', 'conductor.maxCurrent',
  'conductor.maxTemperature', 'conductor.baseTemperature', 'carries', 'pairs', 'length', 'ambient', 'grouped',
  'temperature', 'basis', 'connected', 'demand', 'way.rated', 'way.trip', 'way.k2', 'rail.rated', 'rail.units',
  'rail.maxOutput', 'rail.fuse', 'rail.fuseKind', 'maxDrop', 'secondWay.rated', 'secondWay.trip', 'secondWay.k2',
  'way', 'secondWay', 'wholeLength', 'largest',
] as const satisfies Path[];

/** What is read of each conductor that it could be made of. */
const CONDUCTOR = ['conductor', 'resistance', 'maxCurrent', 'maxTemperature', 'baseTemperature'] as const;

type RunLine = Line<(typeof RUN)[number]>;
type ConductorLine = Line<(typeof CONDUCTOR)[number]>;

/**
 * Of what is available for a short circuit it only matters whether it makes the protection act: it changes with every
 * device on the rail. 0 where it does not, else nothing.
 */
function heed(own: readonly CellValue[]): CellValue[] {
  const run: RunLine = new Line(RUN, own);
  const [available, ...both] = [run.number('available'), protectionOf(run), secondOf(run)];
  const needed = both.map((each) => each?.trip === undefined ? 0 : each.trip * each.protectionAmps);
  // Two ways share it until one of them has opened.
  const isTooLittle = available !== null && exceeds(needed[0]! + needed[1]!, available);
  return own.map((value, place) => RUN[place] !== 'available' ? value : isTooLittle ? 0 : null);
}

/** What the run has to keep to, as far as it is known. What the conductors carry is left to the caller. */
function limitsOf(run: RunLine, lowestVolts: number): RunLimits {
  const maxDrop = run.number('maxDrop');
  const protection = protectionOf(run);
  const [rated, units, most] = [run.number('rail.rated'), run.number('rail.units'), run.number('rail.maxOutput')];
  const isOnItsOwn = run.value('way') === null && rated !== null && units !== null && most !== null;
  const second = secondOf(run);
  return {
    lowestVolts, largestAmps: run.number('largest') ?? 0, ...(maxDrop === null ? {} : { maxDrop }), ...(protection === null ? {} : { protection }),
    ...(second === null ? {} : { secondProtection: second }),
    ...(isOnItsOwn ? { givenAmps: outputLimit(rated, units, most) } : {}),
  };
}

/** What protects it at its second feed, if it has one. */
function secondOf(run: RunLine): RunProtection | null {
  return run.value('secondWay') === null ? null
    : protectionBy(run, run.number('secondWay.rated'), run.number('secondWay.trip'), run.number('secondWay.k2'));
}

/** Its way, or without one the fuse of its supply, which protects nothing while its kind is not known. */
function protectionOf(run: RunLine): RunProtection | null {
  const [fuse, kind] = [run.number('rail.fuse'), run.value('rail.fuseKind') as WayKind | null];
  const [protectionAmps, trip, k2] = run.value('way') !== null
    ? [run.number('way.rated'), run.number('way.trip'), run.number('way.k2')]
    : kind === null || fuse === null ? [null, null, null] : [fuse, tripMultiple(kind), operatingMultiple(kind, fuse)];
  return protectionBy(run, protectionAmps, trip, k2);
}

function protectionBy(
  run: RunLine, protectionAmps: number | null, trip: number | null, k2: number | null,
): RunProtection | null {
  const [availableAmps, innerOhm] = [run.number('available'), run.number('rail.innerResistance')];
  if (protectionAmps === null) return null;
  return {
    protectionAmps, ...(k2 === null ? {} : { operatingMultiple: k2 }), ...(trip === null ? {} : { trip }),
    ...(availableAmps === null ? {} : { availableAmps }), ...(innerOhm === null ? {} : { innerOhm }),
  };
}

/** Temperature by load of a conductor where the run lies [°C]. */
function warmth(run: RunLine, maxAmps: number | null, highest: number | null, base: number | null): number | null {
  return temperatureByLoad(run.number(run.value('basis') === 'demand' ? 'demand' : 'connected'), maxAmps,
    run.number('pairs'), run.number('ambient'), run.number('grouped'), highest, base);
}

/**
 * Name of the conductor of highest resistance with which the run does not fail in any case; `null` when none does. One
 * of which it is not known what it carries is none.
 */
function smallestName(
  whole: readonly CellValue[][], run: RunLine, known: Essentials, [taps = [], ...others]: readonly (readonly Tap[])[],
  limits: RunLimits,
): string | null {
  const own = warmth(run, run.number('conductor.maxCurrent'), run.number('conductor.maxTemperature'),
    run.number('conductor.baseTemperature'));
  // One that was entered holds for any conductor.
  const entered = own !== null && Math.abs(known.temperature - own) < 1e-9 ? null : known.temperature;
  const [ambient, grouped] = [run.number('ambient'), run.number('grouped')];
  const names: string[] = [];
  const candidates: CandidateConductor[] = [];
  for (const cells of whole) {
    const conductor: ConductorLine = new Line(CONDUCTOR, cells);
    const [name, ohmPerKm] = [conductor.value('conductor'), conductor.number('resistance')];
    const [maxAmps, highest] = [conductor.number('maxCurrent'), conductor.number('maxTemperature')];
    const base = conductor.number('baseTemperature');
    if (maxAmps === null || highest === null || base === null || ambient === null || grouped === null) continue;
    const carriesAmps = carriedCurrent(maxAmps, known.pairs, ambient, grouped, highest, base);
    const temperature = entered ?? warmth(run, maxAmps, highest, base);
    if (typeof name !== 'string' || ohmPerKm === null || carriesAmps === null || temperature === null) continue;
    if (exceeds(temperature, highest)) continue;
    names.push(name);
    candidates.push({ ohmPerKm, carriesAmps, temperature });
  }
  const place = smallestConductor({ ...known, taps }, limits, candidates, others);
  return place === null ? null : names[place]!;
}

/** What keeps to the limits in each case; it is asked with the share of each device row that is on. */
function solveAll(
  own: readonly CellValue[], each: readonly CellValue[][], shares: readonly (readonly CellValue[])[],
  whole: readonly CellValue[][],
): Solved {
  const run: RunLine = new Line(RUN, own);
  const known = essentials(run);
  const lowestVolts = run.number('rail.lowest');
  if (known === null || lowestVolts === null) return { figures: {}, missing: 0 };
  const byShare = each.map((cells) => tapByShare(new Line(DEVICE, cells), known));
  const isOnDemand = run.value('basis') === 'demand';
  const all = shares.map((of) => byShare.map((tap, place) => tap(isOnDemand ? of[place] as number | null : 1)));
  const cases = all.map((taps) => taps.filter((tap) => tap !== null));
  const limits = limitsOf(run, lowestVolts);
  const ohmPerKm = run.number('conductor.resistance');
  const loop = (temperature: number) => ohmPerKm === null ? null
    : loopResistancePerMetre(ohmPerKm, temperature, known.pairs);
  const [loopOhmPerMetre, faultOhmPerMetre] = [loop(known.temperature), loop(FAULT_TEMPERATURE)];
  const carriesAmps = run.number('carries');
  // No length makes up for conductors that are warmer than they may get.
  const isTooWarm = exceeds(known.temperature, run.number('conductor.maxTemperature') ?? Infinity);
  return {
    figures: {
      smallestConductor: smallestName(whole, run, known, cases, limits),
      maxLength: loopOhmPerMetre === null || faultOhmPerMetre === null ? null : isTooWarm ? 0 : longestRun(
        { ...known, loopOhmPerMetre, taps: cases[0] ?? [] }, known.lengthMetres,
        carriesAmps === null ? limits : { ...limits, carriesAmps }, faultOhmPerMetre, cases.slice(1),
      ),
    },
    missing: Math.max(...all.map((taps, at) => taps.length - cases[at]!.length)),
  };
}

const solve: Solution['solve'] = (own, each, whole) =>
  solveAll(own, each, [each.map((cells) => new Line(DEVICE, cells).value('diversity'))], whole);

/** Longest run and smallest conductor with which a run and its devices keep to their limits. */
export const runChoices: Solution = {
  from: 'devices', by: 'run', of: RUN, heed, each: DEVICE, whole: { sheet: 'conductors', of: CONDUCTOR },
  gives: ['maxLength', 'smallestConductor'], givesEach: [],
  diversity: {
    key: 'diversity', matters: (own) => new Line(RUN, own).value('basis') === 'demand', once: true,
    inCases: (own, each, shares, whole) => [solveAll(own, each, shares, whole)],
  },
  solve,
};

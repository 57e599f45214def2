import type { FiguresInCases } from './independent-cases.ts';
import { runGaps } from './independent-run-checks.ts';
import { recalculateRuns, type RunFault } from './independent-runs.ts';
import { misplacedOn } from './independent-places.ts';
import { wayStatus } from './independent-ways.ts';
import type { InputRow, InputSchedule, Status } from './independent.ts';
import { exceeds, isGiven, number, times, type Known } from './known-number.ts';

/**
 * Statuses of ways and runs of a schedule with cases, from what they come to in each: a limit that is passed in any
 * case that counts is passed. Runs have one way, and all that is protected without one is protected by its supply
 * itself. Nothing of the product is imported.
 */

const OVER: ReadonlySet<RunFault> = new Set<RunFault>([
  'device voltage', 'no working voltage', 'conductor current', 'conductor protection', 'measured over', 'too warm',
]);

const first = (rows: readonly InputRow[], key: string, tag: unknown) =>
  isGiven(tag as string) ? rows.find((row) => row[key] === tag) : undefined;

/** The status of each way, in their order. */
export function wayStatuses(schedule: InputSchedule, { sheets, inCases, devices }: FiguresInCases): Status[] {
  const sheet = (name: string): readonly InputRow[] => schedule.sheets[name] ?? [];
  const misplaced = misplacedOn({
    supplies: sheet('supplies'), ways: sheet('ways'), runs: sheet('runs'), devices: sheet('devices'),
  });
  return sheet('ways').map((way, at) => {
    const { demand, available: worst, togetherDemand } = sheets.ways![at] as Record<string, Known>;
    const { each, countsOwn } = inCases.ways![at]!.available!;
    const counting = countsOwn ? each : each.slice(1);
    const runs = sheet('runs').flatMap((run, place) =>
      first(sheet('ways'), 'way', run.way) === way ? [{ run, place }] : []);
    const on = devices.filter(({ run }) => runs.some((each) => each.run === run));
    const extras = runs.map(({ place }) => (sheets.runs![place] as { extra: Known }).extra);
    const sum = (values: readonly Known[]) => values.reduce((total: number, value) => total + (value ?? 0), 0);
    const supplies = sheet('supplies').filter(({ rail }) => isGiven(rail) && rail === way.rail);
    const supplyAt = supplies[0] === undefined ? -1 : sheet('supplies').indexOf(supplies[0]);
    const { partial } = supplyAt < 0 ? { partial: undefined }
      : sheets.supplies![supplyAt] as { partial: { usable: boolean; demand: boolean } };
    const status = wayStatus(way, supplies[0], {
      demand: demand!, connected: sum(on.map(({ connected }) => connected)) + sum(extras),
      largest: Math.max(0, ...on.map(({ row, unitDraw }) => number(row, 'qty') === 0 ? 0 : (unitDraw ?? 0) / 1000)),
      start: sum(on.map(({ row, unitDraw, inrush }) =>
        times(number(row, 'qty'), Math.max((unitDraw ?? 0) / 1000, inrush ?? 0)))),
      available: worst!, most: counting.includes(null) ? null : Math.max(...counting as number[]),
      isCovered: togetherDemand !== null, isStartUnread: false,
    });
    const isDemandUnsure = on.some(({ connected, demands, isUnsure }) =>
      connected === null || isUnsure || demands.includes(null));
    const isUnsure = isDemandUnsure || extras.includes(null) || misplaced.has(way) || supplies.length > 1
      || partial?.usable === true || partial?.demand === true
      || sheet('ways').filter((other) => other.way === way.way).length > 1;
    return status === 'ok' && isUnsure ? 'incomplete' : status;
  });
}

/** The status of each run, in their order. */
export function runStatuses(schedule: InputSchedule, found: FiguresInCases): Status[] {
  const sheet = (name: string): readonly InputRow[] => schedule.sheets[name] ?? [];
  const [faults, gaps] = [found.plain.map(recalculateRuns), found.plain.map(runGaps)];
  return sheet('runs').map((run, at) => {
    const { countsOwn } = found.inCases.runs![at]!.demand!;
    const counting = faults.slice(countsOwn ? 0 : 1).map((runs) => runs[at]!);
    const all = new Set(counting.flatMap((each) => each.faults));
    const way = first(sheet('ways'), 'way', run.way);
    const { carries, shortCircuit, actsAt } = counting[0]!;
    const { available } = found.sheets.runs![at] as { available: Known };
    const supply = first(sheet('supplies'), 'rail', run.rail ?? way?.rail);
    const given = times(times(number(supply, 'rated'), number(supply, 'units', 1)), number(supply, 'maxOutput', 1.5));
    const fuse = number(supply, 'fuse');
    const isUnprotected = !isGiven(run.way) && exceeds(given, carries) && (fuse === null || exceeds(fuse, carries));
    if (isUnprotected || [...all].some((fault) => OVER.has(fault))) return 'over';
    if (all.has('drop') || all.has('measured near')) return 'near';
    if (available !== null && exceeds(actsAt, Math.min(available, shortCircuit))) return 'near';
    // How warm it gets follows from what is on: that of a run at everything at once waits for its demand too, which is
    // more than has to be.
    const isUnsure = (run.basis === 'demand' || !isGiven(run.temperature))
      && found.devices.some((device) => device.run === run && (device.isUnsure || device.demands.includes(null)));
    return isUnsure || gaps.some((each, place) => (place > 0 || countsOwn) && each[at]!.length > 0) ? 'incomplete' : 'ok';
  });
}

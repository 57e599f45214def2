import { exceeds } from '../electrical/index.ts';
import type { Workbook } from '../engine/index.ts';
import { grouped, type SheetName } from '../schedule/index.ts';
import type { Gathering } from './facts.ts';

/*
 * What several measurements say together, or one with what hangs on the row: a cause that a practitioner looks for
 * first. Common practice, no source.
 */

/** More runs that differ are no two that were changed over. */
const MOST_COMPARED = 100;

const numbersOf = (book: Workbook, sheet: SheetName, ...keys: readonly string[]): Float64Array[] =>
  keys.map((key) => book.columns(sheet).numbers.get(key)!);

const isNear = (measured: number, worked: number, share: number): boolean =>
  !exceeds(Math.abs(measured - worked), share * worked);

/**
 * The run, by its tag, that a run may have been changed over with: each was measured with what is calculated for the
 * other, and not with its own. None where several may be.
 */
export const CHANGED_OVER: Gathering<string> = {
  sheet: 'runs', reads: ['run', 'measuredCurrent', 'current', 'currentTolerance'].map((key): readonly [SheetName, string] => ['runs', key]),
  gather: (document, book) => {
    const [measured, worked, share] = numbersOf(book, 'runs', 'measuredCurrent', 'current', 'currentTolerance') as
      [Float64Array, Float64Array, Float64Array];
    const is = (id: number, as: number) => isNear(measured[id]!, worked[as]!, share[as]!);
    const others = document.rows('runs').map(({ id }) => id).filter((id) => measured[id]! > 0 && worked[id]! > 0 && !is(id, id));
    if (others.length > MOST_COMPARED) return new Map();
    return new Map(others.flatMap((id): [number, string][] => {
      const partners = others.filter((other) => other !== id && is(id, other) && is(other, id));
      const tag = partners.length === 1 ? book.value('runs', partners[0]!, 'run') : null;
      return typeof tag === 'string' ? [[id, tag]] : [];
    }));
  },
};

/** A type of which so many draw as much as what was measured of a run lacks. */
export interface Lacking {
  readonly type: string;
  readonly count: number;
  /** Current [A] that each of them draws. */
  readonly each: number;
}

/** Counts up to which devices are likely to be missed. */
const FEW = 3;

/** The devices of a run, of one type, of which a few draw what was measured less than is calculated. */
export const NOT_FITTED: Gathering<Lacking> = {
  sheet: 'runs',
  reads: [
    ...(['measuredCurrent', 'current', 'currentTolerance'] as const).map((key): readonly [SheetName, string] => ['runs', key]),
    ...(['run', 'type', 'qty', 'unitDraw', 'diversity'] as const).map((key): readonly [SheetName, string] => ['devices', key]),
  ],
  gather: (document, book) => {
    const [measured, worked, share] = numbersOf(book, 'runs', 'measuredCurrent', 'current', 'currentTolerance') as
      [Float64Array, Float64Array, Float64Array];
    const [draws, counts, diversities] = numbersOf(book, 'devices', 'unitDraw', 'qty', 'diversity') as
      [Float64Array, Float64Array, Float64Array];
    const runs = book.targets('devices', 'run');
    const onRuns = grouped(document.rows('devices').filter(({ id }) => runs[id]! >= 0), ({ id }) => runs[id]!);
    return new Map(document.rows('runs').flatMap(({ id: run }): [number, Lacking][] => {
      const less = worked[run]! - measured[run]!;
      if (!(less > share[run]! * worked[run]!)) return [];
      const types = new Map<string, Lacking>();
      for (const { id } of onRuns.get(run) ?? []) {
        const [type, each] = [book.value('devices', id, 'type'), draws[id]! * diversities[id]! / 1000];
        const count = Math.round(less / each);
        if (typeof type !== 'string' || !(each > 0) || count < 1 || count > Math.min(FEW, counts[id]!)) continue;
        if (isNear(less, count * each, share[run]!)) types.set(type, { type, count, each });
      }
      // One type, and not all that hangs there: a run without any is told otherwise.
      return types.size === 1 && measured[run]! > 0 ? [[run, [...types.values()][0]!]] : [];
    }));
  },
};

/** A feed of which all supplies that were measured are low. */
export interface LowFeed {
  readonly feed: string;
  readonly count: number;
}

/** For each supply that was measured low or dead: its feed, where all of at least two that were measured there are. */
export const LOW_FEED: Gathering<LowFeed> = {
  sheet: 'supplies',
  reads: ['feed', 'measuredVoltage', 'voltage', 'tolerance', 'seriesDrop', 'voltageTolerance']
    .map((key): readonly [SheetName, string] => ['supplies', key]),
  gather: (document, book) => {
    const isLow = lowVoltage(book);
    const volts = book.columns('supplies').numbers.get('measuredVoltage')!;
    const measured = document.rows('supplies').map(({ id }) => ({ id, feed: book.value('supplies', id, 'feed') }))
      .filter(({ id, feed }) => typeof feed === 'string' && !Number.isNaN(volts[id]!));
    return new Map([...grouped(measured, ({ feed }) => feed as string)]
      .filter(([, those]) => those.length > 1 && those.every(({ id }) => isLow(id)))
      .flatMap(([feed, those]) => those.map(({ id }): [number, LowFeed] => [id, { feed, count: those.length }])));
  },
};

function lowVoltage(book: Workbook): (id: number) => boolean {
  const [volts, nominal, tolerance, drop, share] = numbersOf(
    book, 'supplies', 'measuredVoltage', 'voltage', 'tolerance', 'seriesDrop', 'voltageTolerance') as
    [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];
  return (id) => {
    const least = nominal[id]! * (1 - tolerance[id]!) - (Number.isNaN(drop[id]!) ? 0 : drop[id]!);
    return volts[id]! >= 0 && exceeds(least - volts[id]!, share[id]! * nominal[id]!);
  };
}

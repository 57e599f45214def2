import { exceeds, MOST_VOLTAGE_DIFFERENCE } from '../electrical/index.ts';
import type { Workbook } from '../engine/index.ts';
import { tagOf, type ScheduleDocument } from '../schedule/index.ts';
import type { Gathering } from './facts.ts';

/** What is wrong with the voltage of a rail for a device: too high, too low, or another than it is made for. */
export const MISFITS = ['over', 'under', 'other'] as const;
export type Misfit = typeof MISFITS[number];

/** Whether a device is made for another voltage than its rail has [V]. */
export const isOther = (own: number, rail: number): boolean =>
  exceeds(Math.abs(own - rail), MOST_VOLTAGE_DIFFERENCE * rail);

/** As many types are named, and rows of each. */
const NAMED = 3;

/** What the voltages of rails are for the types of devices, by id of both; `undefined` where all suit all. */
function misfitOf(
  document: ScheduleDocument, book: Workbook,
): ((type: number, rail: number) => Misfit | undefined) | undefined {
  const of = (sheet: 'types' | 'supplies', key: string) => book.columns(sheet).numbers.get(key)!;
  const [least, most, own] = [of('types', 'minVoltage'), of('types', 'maxVoltage'), of('types', 'voltage')];
  const [lowest, highest, nominal] = [of('supplies', 'lowest'), of('supplies', 'highest'), of('supplies', 'voltage')];
  const [types, rails] = [document.capacity('types'), document.capacity('supplies')];
  const found = new Uint8Array(types * rails);
  let isAny = false;
  for (let type = 0; type < types; type += 1) {
    const isBounded = !Number.isNaN(least[type]! + most[type]!);
    for (let rail = 0; rail < rails; rail += 1) {
      const place = exceeds(highest[rail]!, most[type]!) ? 1 : exceeds(least[type]!, lowest[rail]!) ? 2
        : !isBounded && isOther(own[type]!, nominal[rail]!) ? 3 : 0;
      if (place === 0) continue;
      found[type * rails + rail] = place;
      isAny = true;
    }
  }
  return isAny ? (type, rail) => MISFITS[found[type * rails + rail]! - 1] : undefined;
}

interface Rows {
  /** Device rows on the rail, and those of them that do not bear its voltage. */
  readonly of: number;
  readonly misfits: readonly { readonly id: number; readonly type: number; readonly is: Misfit }[];
}

/** Device rows on each rail that do not bear its voltage, in their order. */
function misfitsByRail(document: ScheduleDocument, book: Workbook): Map<number, Rows> {
  const found = new Map<number, { of: number; misfits: { id: number; type: number; is: Misfit }[] }>();
  const judge = misfitOf(document, book);
  if (judge === undefined) return found;
  const { numbers, targets } = book.columns('devices');
  const [quantities, rails, types] = [numbers.get('qty')!, targets.get('rail')!, targets.get('type')!];
  const counts = new Int32Array(document.capacity('supplies'));
  for (const { id } of document.rows('devices')) {
    const [rail, type] = [rails[id]!, types[id]!];
    if (rail < 0 || quantities[id] === 0) continue;
    counts[rail]! += 1;
    const is = type < 0 ? undefined : judge(type, rail);
    if (is === undefined) continue;
    const before = found.get(rail);
    if (before === undefined) found.set(rail, { of: 0, misfits: [{ id, type, is }] });
    else before.misfits.push({ id, type, is });
  }
  for (const [rail, rows] of found) rows.of = counts[rail]!;
  return found;
}

/** Rows of one type that do not bear the voltage of their rail. */
export interface MisfitType {
  readonly type: string;
  readonly is: Misfit;
  /** What it stands at the most, needs at the least, or is made for [V]. */
  readonly volts: number;
  /** Tags of the first rows, as far as they have one, and how many there are. */
  readonly refs: readonly string[];
  readonly rows: number;
}

/** Device rows that do not bear the voltage of their rail, told together. */
export interface MisfitRows {
  readonly rows: number;
  readonly of: number;
  /** What is wrong for the first of them, and the tightest bound of those for which that is wrong [V]. */
  readonly is: Misfit;
  readonly volts: number;
  readonly types: readonly MisfitType[];
  readonly moreTypes: number;
}

const BOUND = { over: 'maxVoltage', under: 'minVoltage', other: 'voltage' } as const;

function told({ of, misfits }: Rows, document: ScheduleDocument, book: Workbook): MisfitRows {
  const byType = new Map<number, MisfitType & { refs: string[]; rows: number }>();
  for (const { id, type, is } of misfits) {
    const ref = tagOf('devices', document.row('devices', id)!);
    let each = byType.get(type);
    if (each === undefined) {
      const tag = tagOf('types', document.row('types', type)!);
      byType.set(type, each = { type: tag, is, volts: book.number('types', type, BOUND[is]), refs: [], rows: 0 });
    }
    each.rows += 1;
    if (ref !== '' && each.refs.length < NAMED) each.refs.push(ref);
  }
  const types = [...byType.values()];
  const { is } = types[0]!;
  const bounds = types.filter((each) => each.is === is).map(({ volts }) => volts);
  return {
    rows: misfits.length, of, is, volts: is === 'under' ? Math.max(...bounds) : Math.min(...bounds), types: types.slice(0, NAMED),
    moreTypes: Math.max(0, types.length - NAMED),
  };
}

/** Whether the rail is what is wrong, and not where the rows were put. */
const isRail = ({ of, misfits }: Rows) => misfits.length > 1 && 2 * misfits.length > of;

const READS: Gathering<unknown>['reads'] = [
  ['devices', 'rail'], ['devices', 'type'], ['devices', 'qty'], ['devices', 'ref'], ['types', 'type'],
  ...(['minVoltage', 'maxVoltage', 'voltage'] as const).map((key) => ['types', key] as const),
  ...(['lowest', 'highest', 'voltage'] as const).map((key) => ['supplies', key] as const),
];

const ofSupplies: Gathering<MisfitRows & { readonly isRail: boolean }> = {
  sheet: 'supplies', reads: READS,
  gather: (document, book) => new Map([...misfitsByRail(document, book)].map(([rail, rows]) =>
    [rail, { ...told(rows, document, book), isRail: isRail(rows) }])),
};

const ofDevices: Gathering<MisfitRows> = {
  sheet: 'devices', reads: READS,
  gather: (document, book) => new Map([...misfitsByRail(document, book).values()].flatMap((rows) =>
    isRail(rows) ? [] : [[rows.misfits[0]!.id, told(rows, document, book)] as const])),
};

const ofRuns: Gathering<true> = {
  sheet: 'runs', reads: [...READS, ['devices', 'run']],
  gather: (document, book) => {
    const runs = book.targets('devices', 'run');
    return new Map([...misfitsByRail(document, book).values()].flatMap(({ misfits }) => misfits.flatMap(({ id }) =>
      runs[id]! < 0 ? [] : [[runs[id]!, true] as const])));
  },
};

/**
 * Device rows that do not bear the voltage of their rail. The rail is the cause where most of its rows do not, and told
 * there; else they are told together at the first of them. What feeds them is over.
 */
export const MISFIT = { supplies: ofSupplies, devices: ofDevices, runs: ofRuns };

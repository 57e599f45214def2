import type { Workbook } from '../engine/index.ts';
import type { ScheduleDocument } from '../schedule/index.ts';
import type { Gathering } from './facts.ts';

type Fed = 'supplies' | 'runs' | 'ways';

/** Whether something of a type cannot be read: one of its cells holds a formula without a result, or no such number. */
type Unsure = (lacks: (key: string) => boolean, isUnreadable: (key: string) => boolean) => boolean;

/** Types of which that is so, by id. */
function unsureTypes(document: ScheduleDocument, book: Workbook, isUnsure: Unsure): ReadonlySet<number> {
  return new Set(document.rows('types').filter(({ id, cells }) => {
    const lacks = (key: string) => Number.isNaN(book.number('types', id, key));
    return isUnsure(lacks, (key) => lacks(key) && (cells[key] ?? null) !== null);
  }).map(({ id }) => id));
}

const on = (sheet: Fed, keys: readonly string[], isUnsure: Unsure): Gathering<true> => ({
  sheet, reads: [
    ['devices', sheet === 'supplies' ? 'rail' : 'run'], ['devices', 'type'], ['devices', 'qty'],
    ...sheet !== 'ways' ? [] : [['runs', 'way'], ['runs', 'secondWay']] as const,
    ...keys.map((key) => ['types', key] as const),
  ],
  gather: (document, book) => {
    const [found, unsure] = [new Map<number, true>(), unsureTypes(document, book, isUnsure)];
    if (unsure.size === 0) return found;
    const { numbers, targets } = book.columns('devices');
    const [types, quantities] = [targets.get('type')!, numbers.get('qty')!];
    const ways = ['way', 'secondWay'].map((by) => book.targets('runs', by));
    const fedBy = targets.get(sheet === 'supplies' ? 'rail' : 'run')!;
    for (const { id } of document.rows('devices')) {
      if (!unsure.has(types[id]!) || quantities[id] === 0) continue;
      const fed = fedBy[id]!;
      const behind = sheet !== 'ways' ? [fed] : fed < 0 ? [] : ways.map((each) => each[fed]!);
      for (const target of behind) if (target >= 0) found.set(target, true);
    }
    return found;
  },
});

const VOLTAGES = ['minVoltage', 'maxVoltage', 'voltage'];

/** What a device is made for counts only where its limits are not both known. */
const isVoltageUnsure: Unsure = (lacks, isUnreadable) => isUnreadable('minVoltage') || isUnreadable('maxVoltage')
  || (isUnreadable('voltage') && (lacks('minVoltage') || lacks('maxVoltage')));

/**
 * What feeds devices of types with a cell that holds something and tells nothing: it is not as if it were empty, where
 * nothing is asked.
 */
export const UNSURE = {
  voltage: { supplies: on('supplies', VOLTAGES, isVoltageUnsure), runs: on('runs', VOLTAGES, isVoltageUnsure) },
  inrush: on('ways', ['inrush'], (_lacks, isUnreadable) => isUnreadable('inrush')),
};

import { exceeds } from '../electrical/index.ts';
import type { Workbook } from '../engine/index.ts';
import type { ScheduleDocument } from '../schedule/index.ts';
import type { Gathering } from './facts.ts';

/** What may be given to one device, and where: usable of its rail, or what the cable of its run carries [A]. */
const GIVEN = { rail: ['supplies', 'usable'], run: ['runs', 'carries'] } as const;

/** Device rows of which one device draws more than it may be given, by what feeds them. */
function oversized(document: ScheduleDocument, book: Workbook, by: keyof typeof GIVEN): Map<number, number[]> {
  const [sheet, given] = GIVEN[by];
  const { numbers } = book.columns('devices');
  const [draws, quantities] = [numbers.get('unitDraw')!, numbers.get('qty')!];
  const [most, fedBy] = [book.columns(sheet).numbers.get(given)!, book.targets('devices', by)];
  const found = new Map<number, number[]>();
  const size = document.capacity('devices');
  for (let id = 0; id < size; id += 1) {
    const target = fedBy[id]!;
    if (target < 0 || !(quantities[id]! > 0) || !exceeds(draws[id]! / 1000, most[target]!)) continue;
    const others = found.get(target);
    if (others === undefined) found.set(target, [id]);
    else others.push(id);
  }
  return found;
}

/** Such rows of a supply or a run. */
export interface OversizedRows {
  readonly rows: number;
  /** The most that one device of them draws [A]. */
  readonly draw: number;
}

const on = (by: keyof typeof GIVEN) => {
  const reads = [['devices', by], ['devices', 'unitDraw'], ['devices', 'qty'], GIVEN[by]] as const;
  const rows: Gathering<OversizedRows> = {
    sheet: GIVEN[by][0], reads,
    gather: (document, book) => new Map([...oversized(document, book, by)].map(([target, ids]) => [target, {
      rows: ids.length,
      draw: ids.reduce((most, id) => Math.max(most, book.number('devices', id, 'unitDraw') / 1000), 0),
    }])),
  };
  const alone: Gathering<true> = {
    sheet: 'devices', reads,
    gather: (document, book) => new Map([...oversized(document, book, by).values()]
      .flatMap(([id, ...others]) => others.length === 0 ? [[id!, true] as const] : [])),
  };
  return { rows, alone };
};

/**
 * Devices that draw more than they may be given, whatever the diversity. One row alone is the cause, and told there;
 * several have one cause together, what feeds them.
 */
export const OVERSIZED = { rail: on('rail'), run: on('run') };

import { exceeds } from '../electrical/index.ts';
import type { Workbook } from '../engine/index.ts';
import { tagOf, type ScheduleDocument } from '../schedule/index.ts';
import { Gathered } from './gathered.ts';

/** The device rows on a run that get less voltage than they need. */
export interface LackingRows {
  /** Tag of the one that lacks most, the first of equals; empty where it has none. */
  readonly tag: string;
  /** How many rows lack some besides. */
  readonly others: number;
}

/** The device rows that lack voltage, by the run that they hang on. */
export const lackingVoltage = (document: ScheduleDocument, book: Workbook) => new Gathered<LackingRows>(
  [['devices', 'run'], ['devices', 'voltageMargin'], ['devices', 'ref']], () => gather(document, book)
);

function gather(document: ScheduleDocument, book: Workbook): ReadonlyMap<number, LackingRows> {
  const worst = new Map<number, { id: number; margin: number; others: number }>();
  const { numbers, targets } = book.columns('devices');
  const [margins, volts, runs] = [numbers.get('voltageMargin')!, numbers.get('terminalVoltage')!, targets.get('run')!];
  const position = (id: number) => document.position('devices', id);
  for (let id = 0; id < margins.length; id += 1) {
    const margin = margins[id]!;
    if (!(margin < 0) || runs[id]! < 0 || !exceeds(volts[id]! - margin, volts[id]!)) continue;
    const run = runs[id]!;
    const before = worst.get(run);
    const isWorse = before === undefined || margin < before.margin
      || (margin === before.margin && position(id) < position(before.id));
    worst.set(run, { ...isWorse ? { id, margin } : before, others: before === undefined ? 0 : before.others + 1 });
  }
  return new Map([...worst].map(([run, { id, others }]) =>
    [run, { tag: tagOf('devices', document.row('devices', id)!), others }]));
}

import { exceeds } from '../electrical/index.ts';
import { tagOf } from '../schedule/index.ts';
import type { Gathering } from './facts.ts';

/** Rows of a kind, one of which is named. */
export interface NamedRows {
  /** Tag of the worst, the first of equals; empty where it has none. */
  readonly tag: string;
  /** How many rows there are besides. */
  readonly others: number;
}

/**
 * The device rows on each run that get less voltage than they need, as the cable loses too much of what their rail has
 * for them; that which lacks most is named.
 */
export const LACKING_VOLTAGE: Gathering<NamedRows> = {
  sheet: 'runs',
  reads: [
    ['devices', 'run'], ['devices', 'voltageMargin'], ['devices', 'ref'], ['devices', 'rail'], ['supplies', 'lowest'],
  ],
  gather: (document, book) => {
    const worst = new Map<number, { id: number; margin: number; others: number }>();
    const { numbers, targets } = book.columns('devices');
    const [margins, volts] = [numbers.get('voltageMargin')!, numbers.get('terminalVoltage')!];
    const [runs, rails] = [targets.get('run')!, targets.get('rail')!];
    const lowest = book.columns('supplies').numbers.get('lowest')!;
    const position = (id: number) => document.position('devices', id);
    for (let id = 0; id < margins.length; id += 1) {
      const margin = margins[id]!;
      const needed = volts[id]! - margin;
      if (!(margin < 0) || runs[id]! < 0 || !exceeds(needed, volts[id]!)) continue;
      if (exceeds(needed, lowest[rails[id]!]!)) continue;
      const run = runs[id]!;
      const before = worst.get(run);
      const isWorse = before === undefined || margin < before.margin
        || (margin === before.margin && position(id) < position(before.id));
      worst.set(run, { ...isWorse ? { id, margin } : before, others: before === undefined ? 0 : before.others + 1 });
    }
    return new Map([...worst].map(([run, { id, others }]) =>
      [run, { tag: tagOf('devices', document.row('devices', id)!), others }]));
  },
};

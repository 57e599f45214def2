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

/** The device rows on each run that get less voltage than they need; that which lacks most is named. */
export const LACKING_VOLTAGE: Gathering<NamedRows> = {
  sheet: 'runs', reads: [['devices', 'run'], ['devices', 'voltageMargin'], ['devices', 'ref']],
  gather: (document, book) => {
    const worst = new Map<number, { id: number; margin: number; others: number }>();
    const margins = book.columns('devices').numbers.get('voltageMargin')!;
    const volts = book.columns('devices').numbers.get('terminalVoltage')!;
    const runs = book.targets('devices', 'run');
    for (const { id } of document.rows('devices')) {
      const [run, margin] = [runs[id]!, margins[id]!];
      if (run < 0 || !(margin < 0) || !exceeds(volts[id]! - margin, volts[id]!)) continue;
      const before = worst.get(run);
      if (before === undefined) worst.set(run, { id, margin, others: 0 });
      else worst.set(run, { ...margin < before.margin ? { id, margin } : before, others: before.others + 1 });
    }
    return new Map([...worst].map(([run, { id, others }]) =>
      [run, { tag: tagOf('devices', document.row('devices', id)!), others }]));
  },
};

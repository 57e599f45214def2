import { exceeds } from '../electrical/index.ts';
import type { Touched, Workbook } from '../engine/index.ts';
import { tagOf, type ScheduleDocument } from '../schedule/index.ts';

/** The device rows on a run that get less voltage than they need. */
export interface LackingRows {
  /** Tag of the one that lacks most, the first of equals; empty where it has none. */
  readonly tag: string;
  /** How many rows lack some besides. */
  readonly others: number;
}

/** What is read of device rows. */
const READ = ['run', 'voltageMargin', 'ref'] as const;

/** The device rows on each run that lack voltage, gathered in one pass. */
export class LackingVoltage {
  readonly #document: ScheduleDocument;
  readonly #book: Workbook;
  #runs: ReadonlyMap<number, LackingRows>;

  constructor(document: ScheduleDocument, book: Workbook) {
    this.#document = document;
    this.#book = book;
    this.#runs = this.#gather();
  }

  /** Which device rows on a run lack voltage; `undefined` where none does. */
  of(run: number): LackingRows | undefined {
    return this.#runs.get(run);
  }

  /** Gathers again what a change concerns. @returns the runs of which something else is said than before. */
  update(touched: Touched): number[] {
    // Of equals the first is named, and which it is changes when rows move.
    if (!touched.rearranged.has('devices') && !READ.some((key) => touched.concerns('devices', key))) return [];
    const before = this.#runs;
    this.#runs = this.#gather();
    return [...new Set([...before.keys(), ...this.#runs.keys()])].filter((id) => {
      const [one, other] = [before.get(id), this.#runs.get(id)];
      return one?.tag !== other?.tag || one?.others !== other?.others;
    });
  }

  #gather(): ReadonlyMap<number, LackingRows> {
    const worst = new Map<number, { id: number; margin: number; others: number }>();
    const margins = this.#book.columns('devices').numbers.get('voltageMargin')!;
    const volts = this.#book.columns('devices').numbers.get('terminalVoltage')!;
    const runs = this.#book.targets('devices', 'run');
    const position = (id: number) => this.#document.position('devices', id);
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
      [run, { tag: tagOf('devices', this.#document.row('devices', id)!), others }]));
  }
}

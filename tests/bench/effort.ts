import { KINDS, type Family } from './kinds.ts';
import type { CandidateName } from './peers/index.ts';

/** How often one process calls a kind of operation, and whether it takes the calls back. */
export interface CallCount {
  readonly times: number;
  readonly undo: boolean;
}

/** Calls by kind of operation; a kind that is not named is left out. */
export type Calls = Readonly<Record<string, CallCount>>;

/** Processes that one candidate is given at one size, and what each does. */
export interface Effort {
  readonly rounds: number;
  readonly calls: Calls;
  /** A process that takes longer is ended; what it has reported until then counts. */
  readonly capSeconds: number;
}

const FULL: Readonly<Record<Family, number>> = { edit: 20, paste: 3, row: 200 };

/** Operations of the workbook whose undo takes it a minute at 10,000 rows. */
const SLOW_TO_UNDO = ['delete a row', 'move a row'];
/** What the workbook is asked at 50,000 rows, where each takes it a minute. */
const FEW = ['diversity edit', 'quantity edit', 'rail edit', 'insert a row'];

const callsOf = (names: readonly string[], count: (name: string) => CallCount): Calls =>
  Object.fromEntries(names.map((name) => [name, count(name)]));

const everyKind = KINDS.map(({ name }) => name);
const fullCalls: Calls = Object.fromEntries(KINDS.map(({ name, family }) =>
  [name, { times: FULL[family], undo: true }]));

/** What is measured of a candidate at a size, within some minutes, or within one for a `brief` run. */
export function effortOf(candidate: CandidateName, rows: number, brief: boolean): Effort {
  if (candidate !== 'workbook') {
    return { rounds: brief ? 2 : rows > 10_000 ? 3 : 5, calls: fullCalls, capSeconds: 300 };
  }
  if (rows <= 1_000) {
    return {
      rounds: brief ? 1 : 3, capSeconds: 120,
      calls: callsOf(everyKind, (name) => ({ times: brief ? 2 : 3, undo: !SLOW_TO_UNDO.includes(name) })),
    };
  }
  if (rows <= 10_000) {
    const calls = brief ? callsOf([...FEW.slice(0, 2), 'paste 1,000 × 8'], () => ({ times: 1, undo: false }))
      : callsOf(everyKind, (name) => ({ times: 2, undo: !SLOW_TO_UNDO.includes(name) }));
    return { rounds: brief ? 1 : 3, calls, capSeconds: brief ? 40 : 240 };
  }
  return { rounds: 0, calls: {}, capSeconds: 1 };
}


import { compare } from './compare.ts';
import type { Calls } from './effort.ts';
import { KINDS } from './kinds.ts';
import { firstFormula } from './figures.ts';
import { PASTE_KEYS } from './operation.ts';
import { BUILD, type CandidateName } from './peers/index.ts';
import { Reference } from './reference.ts';
import { block, SIZES, workload } from './workload.ts';

/** What one process is to measure. */
export interface Task {
  readonly candidate: CandidateName;
  readonly rows: number;
  readonly calls: Calls;
  /** Times the first formula of a session only, right after a paste of so many rows. */
  readonly formulaAfter?: number;
}

/** One line of what a process reports. Times in milliseconds, in the order of the calls. */
export type Report =
  | {
    readonly kind: 'build'; readonly time: number; readonly heapBytes: number;
    /** Until the figures are known, and how long it takes to make ready for formulas. */
    readonly firstFigures: number; readonly formulasStart: number;
  }
  | { readonly kind: string; readonly times: readonly number[]; readonly undoTimes: readonly number[] };

const collect = globalThis.gc ?? (() => { throw new Error('Start node with --expose-gc.'); });

/** Bytes held after a collection, the contents of typed arrays among them. */
function heapBytes(): number {
  collect();
  collect();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}

function timed(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

const report = (line: Report) => process.stdout.write(`${JSON.stringify(line)}\n`);

const task = JSON.parse(process.argv[2]!) as Task;
const size = SIZES.find(({ rows }) => rows === task.rows)!;
const sheets = workload(size);
const before = heapBytes();
const start = performance.now();
const candidate = BUILD[task.candidate](sheets);
const firstFigures = performance.now() - start;
const formulasStart = timed(() => candidate.prepare?.());
const time = performance.now() - start;
report({ kind: 'build', time, heapBytes: heapBytes() - before, firstFigures, formulasStart });

if (task.formulaAfter !== undefined) {
  if (task.formulaAfter > 0) {
    candidate.apply({ op: 'paste', at: 0, lines: block(size, task.formulaAfter, PASTE_KEYS, 1) });
  }
  report({ kind: firstFormula(task.formulaAfter), times: [timed(() => candidate.typeFormula!())], undoTimes: [] });
  process.exit(0);
}
const reference = new Reference(sheets);
const check = (when: string) => compare(`${task.candidate} ${when}`, candidate.results(), reference.results());
check('after the build');

for (const { name, operation, listsFindings } of KINDS) {
  const { times: calls, undo } = task.calls[name] ?? { times: 0, undo: false };
  if (calls === 0 || (listsFindings && candidate.listFindings === undefined)) continue;
  const operations = Array.from({ length: calls }, (_, call) => operation(size, call));
  collect();
  const times = operations.map((each) => timed(() => {
    candidate.apply(each);
    if (listsFindings) candidate.listFindings!();
  }));
  for (const each of operations) reference.apply(each);
  check(`after ${name}`);
  if (!undo) {
    report({ kind: name, times, undoTimes: [] });
    continue;
  }
  collect();
  const undoTimes = operations.map(() => timed(() => {
    candidate.undo();
    if (listsFindings) candidate.listFindings!();
  }));
  for (const _ of operations) reference.undo();
  check(`after undo of ${name}`);
  report({ kind: name, times, undoTimes });
}

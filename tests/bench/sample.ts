import { compare } from './compare.ts';
import type { Calls } from './effort.ts';
import { KINDS } from './kinds.ts';
import type { Candidate } from './operation.ts';
import { BUILD, type CandidateName } from './peers/index.ts';
import { Reference } from './reference.ts';
import { SIZES, workload } from './workload.ts';

/** What one process is to measure. */
export interface Task {
  readonly candidate: CandidateName;
  readonly rows: number;
  readonly calls: Calls;
  /** Make ready in steps, as a page does while it is idle, instead of at once. */
  readonly inSteps?: true;
}

/** One line of what a process reports. Times in milliseconds, in the order of the calls. */
export type Report =
  | {
    readonly kind: 'build'; readonly time: number; readonly heapBytes: number;
    /** Until the figures are known, and the longest that a page was busy afterwards. */
    readonly firstFigures: number; readonly longestStep: number;
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

/** @returns the time of the longest step. */
function makeReady(candidate: Candidate): number {
  if (!task.inSteps) return timed(() => candidate.prepare?.());
  let longest = 0;
  for (;;) {
    const start = performance.now();
    const ready = candidate.prepareStep!();
    longest = Math.max(longest, performance.now() - start);
    if (ready) return longest;
  }
}

/** What a page does between two actions of a person: it lets a candidate catch up with what it put off. Not timed. */
function rest(): void {
  while (candidate.prepareStep?.() === false);
  collect();
}

const report = (line: Report) => process.stdout.write(`${JSON.stringify(line)}\n`);

const task = JSON.parse(process.argv[2]!) as Task;
const size = SIZES.find(({ rows }) => rows === task.rows)!;
const sheets = workload(size);
const before = heapBytes();
const start = performance.now();
const candidate = BUILD[task.candidate](sheets);
const firstFigures = performance.now() - start;
const longestStep = makeReady(candidate);
const time = performance.now() - start;
report({ kind: 'build', time, heapBytes: heapBytes() - before, firstFigures, longestStep });

const reference = new Reference(sheets);
const check = (when: string) => compare(`${task.candidate} ${when}`, candidate.results(), reference.results());
check('after the build');

for (const { name, operation, listsFindings } of KINDS) {
  const { times: calls, undo } = task.calls[name] ?? { times: 0, undo: false };
  if (calls === 0 || (listsFindings && candidate.listFindings === undefined)) continue;
  const operations = Array.from({ length: calls }, (_, call) => operation(size, call));
  rest();
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
  rest();
  const undoTimes = operations.map(() => timed(() => {
    candidate.undo();
    if (listsFindings) candidate.listFindings!();
  }));
  for (const _ of operations) reference.undo();
  check(`after undo of ${name}`);
  report({ kind: name, times, undoTimes });
}

import { availableParallelism, loadavg, totalmem } from 'node:os';
import { isMet, type Budget } from './budgets.ts';
import {
  FIRST_FIGURES, firstFormula, firstOf, FORMULAS_START, FORMULA_AFTER, HEAP, longestOf, undoOf, type Figures,
} from './figures.ts';
import { KINDS } from './kinds.ts';

/** Heading of the table of one size. */
export const HEADING = ['', 'schedule', 'SUMIFS workbook', 'part', 'plain loop', 'times'];

/** Names of the figures, in the order of the tables. */
const NAMES = [
  FIRST_FIGURES, FORMULAS_START,
  ...KINDS.flatMap(({ name, family }) =>
    [firstOf(name), name, ...family === 'row' ? [longestOf(name)] : [], undoOf(name)]),
  ...FORMULA_AFTER.map(firstFormula), HEAP,
];

/** A time [ms] with three digits. */
export function time(milliseconds: number): string {
  if (milliseconds >= 10_000) return `${(milliseconds / 1000).toFixed(1)} s`;
  return `${milliseconds.toFixed(milliseconds < 10 ? 2 : milliseconds < 100 ? 1 : 0)} ms`;
}

/** Where and when the figures were measured, without a name. */
export function machine(): string {
  const gigabytes = Math.round(totalmem() / 2 ** 30);
  return `${availableParallelism()} cores, ${gigabytes} GB, ${process.platform}, Node ${process.versions.node}, `
    + `load average ${loadavg()[0]!.toFixed(1)}, ${new Date().toISOString().slice(0, 10)}`;
}

/** A warning where other work keeps the machine busy: ratios bear it, times and their longest do not. */
export function busyLine(): string | undefined {
  const load = loadavg()[0]!;
  return load <= availableParallelism() ? undefined
    : `The machine is busy (load average ${load.toFixed(1)}): times in ms come out too long, the longest above all.`;
}

/** The figures of one size: the schedule, then each peer with the ratio to it. */
export function sizeLines(figures: Figures): string[][] {
  return NAMES.filter((name) => figures.get(name)?.has('schedule')).map((name) => {
    const of = figures.get(name)!;
    const [own, workbook, loop] = [of.get('schedule')!, of.get('workbook'), of.get('loop')];
    const show = (value: number | undefined) =>
      value === undefined ? '–' : name === HEAP ? `${value.toFixed(2)} KB` : time(value);
    return [
      name, show(own),
      show(workbook), workbook === undefined ? '–' : part(own / workbook),
      show(loop), loop === undefined ? '–' : times(own / loop),
    ];
  });
}

const twoDigits = (ratio: number) => ratio.toFixed(ratio < 1 ? 2 : ratio < 10 ? 1 : 0);
export const times = (ratio: number) => `× ${twoDigits(ratio)}`;

/** A ratio as a part of the whole: «1/33», or «× 1.2» when it is more. */
function part(ratio: number): string {
  return ratio < 1 ? `1/${twoDigits(1 / ratio)}` : times(ratio);
}

/** One line for each budget: met, missed, or not measured in this run. */
export function budgetLines(budgets: readonly Budget[]): string[] {
  return budgets.map((budget) => {
    const { text, value, limit, unit } = budget;
    if (value === undefined) return `not measured  ${text}`;
    const show = (number: number) => unit === '' ? part(number)
      : unit === 'ms' ? time(number) : unit
        === '×' ? times(number) : `${number.toFixed(unit === 'KB' ? 2 : 0)} ${unit}`;
    return `${isMet(budget) ? 'met   ' : 'MISSED'}        ${text}: ${show(value)}, at most ${show(limit)}`;
  });
}

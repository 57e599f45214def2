import { KINDS } from './kinds.ts';
import type { CandidateName } from './peers/index.ts';
import type { Report } from './sample.ts';

/** Measured figures of one size: by name of the figure, then by candidate. Times in ms, heap in KB a row. */
export type Figures = ReadonlyMap<string, ReadonlyMap<CandidateName, number>>;

export const BUILD = 'build';
export const FIRST_FIGURES = 'build, until figures are known';
export const FORMULAS_START = 'start of the formula engine, once on a page, while it is idle';
export const HEAP = 'heap per row';
export const FORMULA_AFTER = [0, 1_000, 10_000];
export const firstFormula = (pasted: number) =>
  pasted === 0 ? 'first typed formula' : `first typed formula after a paste of ${pasted.toLocaleString('en')} rows`;
export const firstOf = (kind: string) => `first ${kind} of a session`;
const LONGEST = ', longest';
export const longestOf = (kind: string) => `${kind}${LONGEST}`;
export const undoOf = (kind: string) => `undo of ${kind}`;

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

const isLongest = (name: string) => name.endsWith(LONGEST);
const middle = (name: string, values: readonly number[]) => isLongest(name) ? Math.min(...values) : median(values);

/**
 * Gathers what processes reported: a figure is the median over the processes of the median within each. Of the longest
 * calls the shortest counts: what the code itself is slow at shows in every process, what else ran on the machine does
 * not.
 */
export class FigureGatherer {
  readonly #rows: number;
  readonly #values = new Map<string, Map<CandidateName, number[]>>();

  constructor(rows: number) {
    this.#rows = rows;
  }

  add(contestant: CandidateName, reports: readonly Report[]): void {
    for (const report of reports) {
      if ('heapBytes' in report) this.#addBuild(contestant, report);
      else this.#addKind(contestant, report);
    }
  }

  figures(): Figures {
    return new Map([...this.#values].map(([name, byContestant]) =>
      [name, new Map([...byContestant].map(([contestant, values]) => [contestant, middle(name, values)]))]));
  }

  #addBuild(contestant: CandidateName, report: Extract<Report, { kind: 'build' }>): void {
    this.#put(FIRST_FIGURES, contestant, report.firstFigures);
    if (contestant === 'schedule') this.#put(FORMULAS_START, contestant, report.formulasStart);
    else this.#put(BUILD, contestant, report.time);
    this.#put(HEAP, contestant, report.heapBytes / 1024 / this.#rows);
  }

  #addKind(
    contestant: CandidateName, { kind, times, undoTimes }: Exclude<Report, { kind: 'build'; time: number }>
  ): void {
    this.#put(kind, contestant, median(times));
    if (FORMULA_AFTER.map(firstFormula).includes(kind)) return;
    this.#put(longestOf(kind), contestant, Math.max(...times));
    if (kind === KINDS[0]!.name || KINDS.find(({ name }) => name === kind)!.family === 'paste') {
      this.#put(firstOf(kind), contestant, times[0]!);
    }
    if (undoTimes.length > 0) this.#put(undoOf(kind), contestant, median(undoTimes));
  }

  #put(name: string, contestant: CandidateName, value: number): void {
    const byContestant = this.#values.get(name) ?? new Map<CandidateName, number[]>();
    this.#values.set(name, byContestant);
    byContestant.set(contestant, [...byContestant.get(contestant) ?? [], value]);
  }
}

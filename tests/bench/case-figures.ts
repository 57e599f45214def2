import { fileURLToPath } from 'node:url';
import type { Budget } from './budgets.ts';
import { CASE_EDITS, OPENING, VARIANT, type CaseTask } from './case-kinds.ts';
import { median } from './figures.ts';
import { measure } from './measure.ts';
import { time, times } from './report.ts';

const SAMPLE = fileURLToPath(new URL('case-sample.ts', import.meta.url));
const ROWS = 10_000;
const CASES = 24;
/** Runs that the devices are on, none or so many. */
const RUNS = [0, 500];

type Times = ReadonlyMap<string, number>;

/** Milliseconds by what was done, of a schedule without cases and of the same with them. */
export interface CaseFigures {
  readonly runs: number;
  readonly plain: Times;
  readonly cases: Times;
}

/** Measures both in fresh processes, one after the other, so that what else the machine does concerns both. */
export async function measureCases(isQuick: boolean): Promise<CaseFigures[]> {
  const all: CaseFigures[] = [];
  for (const runs of RUNS) {
    const gathered = [new Map<string, number[]>(), new Map<string, number[]>()];
    for (let round = 0; round < (isQuick ? 1 : 3); round += 1) {
      for (const place of round % 2 === 0 ? [0, 1] : [1, 0]) {
        process.stderr.write(`cases, ${runs} runs, round ${round + 1}: ${place === 0 ? 'without' : 'with'}\n`);
        const task: CaseTask = { rows: ROWS, runs, cases: place === 0 ? 0 : CASES, calls: 20 };
        const { reports, capped } = await measure(task, 300, SAMPLE);
        if (capped) throw new Error('A process for cases took longer than 300 s.');
        for (const report of reports) {
          if (!('times' in report)) continue;
          const values = gathered[place]!.get(report.kind) ?? [];
          gathered[place]!.set(report.kind, [...values, median(report.times)]);
        }
      }
    }
    const [plain, cases] = gathered.map((of) => new Map([...of].map(([kind, values]) => [kind, median(values)])));
    all.push({ runs, plain: plain!, cases: cases! });
  }
  return all;
}

const titled = ({ runs }: CaseFigures) => runs === 0 ? '' : `, ${runs} runs`;
const KINDS = [OPENING, ...CASE_EDITS.map(({ kind }) => kind), 'factor edit', ...VARIANT];

export const CASE_HEADING = [`${ROWS.toLocaleString('en')} device rows`, 'without cases', `${CASES} cases`, 'times'];

export const caseLines = (all: readonly CaseFigures[]): string[][] => all.flatMap((figures) => KINDS.map((kind) => {
  const [plain, cases] = [figures.plain.get(kind), figures.cases.get(kind)];
  return [
    `${kind}${titled(figures)}`, plain === undefined ? '–' : time(plain), cases === undefined ? '–' : time(cases),
    plain === undefined || cases === undefined ? '–' : times(cases / plain),
  ];
}));

/** An edit with all cases current takes at most four times as long as without cases. */
export const caseBudgets = (all: readonly CaseFigures[]): Budget[] => all.flatMap((figures) =>
  CASE_EDITS.map(({ kind }): Budget => ({
    text: `${ROWS.toLocaleString('en')} rows${titled(figures)}: ${kind} with ${CASES} cases, times that without`,
    value: figures.cases.get(kind)! / figures.plain.get(kind)!, limit: 4, unit: '×',
  })));

import { parseArgs } from 'node:util';
import { browserBudgets, browserLines } from './browser/browser-report.ts';
import { budgets, isMet, type Budget } from './budgets.ts';
import { CASE_HEADING, caseBudgets, caseLines, measureCases } from './case-figures.ts';
import { effortOf } from './effort.ts';
import { FigureGatherer, FORMULA_AFTER, type Figures } from './figures.ts';
import { measure } from './measure.ts';
import { CANDIDATES } from './peers/index.ts';
import { budgetLines, busyLine, HEADING, machine, sizeLines } from './report.ts';
import type { Task } from './sample.ts';
import { markdownTable, plainTable } from './table.ts';
import { SIZES } from './workload.ts';

const HELP = `npm run bench -- [options]
  --quick       1,000 and 10,000 rows only, with fewer rounds
  --rows N,…    only these sizes (${SIZES.map(({ rows }) => rows).join(', ')})
  --markdown    tables in Markdown
  --browser     the element in a browser instead: start, edit to paint
  --cases       cases and variants beside a schedule without them, and nothing else
  --check       exit with 1 when a budget is missed`;

/** Measures one size: fresh processes, one round after the other, every second round in reverse order. */
async function measureSize(rows: number, quick: boolean): Promise<Figures> {
  const gatherer = new FigureGatherer(rows);
  const efforts = CANDIDATES.map((contestant) => ({ contestant, ...effortOf(contestant, rows, quick) }));
  for (let round = 0; round < (quick ? 2 : 3); round += 1) {
    for (const formulaAfter of FORMULA_AFTER) {
      const { reports } = await measure({ candidate: 'schedule', rows, calls: {}, formulaAfter }, 300);
      gatherer.add('schedule', reports.slice(1));
    }
  }
  const mostRounds = Math.max(...efforts.map(({ rounds }) => rounds));
  for (let round = 0; round < mostRounds; round += 1) {
    for (const { contestant, rounds, calls, capSeconds } of round % 2 === 0 ? efforts : efforts.toReversed()) {
      if (round >= rounds) continue;
      process.stderr.write(`${rows} rows, round ${round + 1}: ${contestant}\n`);
      const task: Task = { candidate: contestant, rows, calls };
      const { reports, capped } = await measure(task, capSeconds);
      if (capped) console.log(`${contestant} at ${rows} rows: ended after ${capSeconds} s, what it had done counts.`);
      gatherer.add(contestant, reports);
    }
  }
  return gatherer.figures();
}

const { values: options } = parseArgs({
  options: {
    quick: { type: 'boolean', default: false }, rows: { type: 'string' }, markdown: { type: 'boolean', default: false },
    browser: { type: 'boolean', default: false }, cases: { type: 'boolean', default: false }, check: { type: 'boolean', default: false },
    help: { type: 'boolean', default: false },
  },
});
if (options.help) {
  console.log(HELP);
  process.exit(0);
}
const table = options.markdown ? markdownTable : plainTable;

async function measureEngine(): Promise<Budget[]> {
  const chosen = options.rows?.split(',').map(Number);
  const sizes = SIZES.filter(({ rows }) => chosen?.includes(rows) ?? (!options.quick || rows <= 10_000));
  if (sizes.length === 0) {
    throw new RangeError(`--rows ${options.rows}: the sizes are ${SIZES.map(({ rows }) => rows).join(', ')}.`);
  }
  console.log(
    'Medians of fresh processes; every figure is held against a plain recalculation after each kind of operation.'
  );
  const bySize = new Map<number, Figures>();
  for (const { rows } of sizes) {
    const figures = await measureSize(rows, options.quick);
    bySize.set(rows, figures);
    console.log(`\n${options.markdown ? '### ' : ''}${rows.toLocaleString('en')} device rows\n`);
    console.log(table(HEADING, sizeLines(figures)));
  }
  return [...budgets(bySize), ...sizes.some(({ rows }) => rows === 10_000) ? await measureWithCases() : []];
}

async function measureWithCases(): Promise<Budget[]> {
  const figures = await measureCases(options.quick);
  console.log(`\n${table(CASE_HEADING, caseLines(figures))}`);
  return caseBudgets(figures);
}

async function measureScreen(): Promise<Budget[]> {
  // The browser and its build are only needed here.
  const { drive } = await import('./browser/drive.ts');
  const chosen = options.rows?.split(',').map(Number);
  // The smallest is what the others are held against.
  const sizes = SIZES.map(({ rows }) => rows).filter((rows) =>
    rows === 1_000 || (chosen?.includes(rows) ?? (!options.quick || rows <= 10_000)));
  const loads = await drive(sizes, options.quick ? 3 : 5);
  const { heading, lines } = browserLines(loads);
  console.log(`Medians of fresh page loads.\n\n${table(heading, lines)}`);
  return browserBudgets(loads);
}

console.log(machine());
const list = options.browser ? await measureScreen() : options.cases ? await measureWithCases() : await measureEngine();
const busy = busyLine();
if (busy !== undefined) console.log(`\n${busy}`);
const missed = list.filter((budget) => !isMet(budget)).length;
const lines = budgetLines(list).map((line) => options.markdown ? `- ${line}` : line);
console.log(`\nBudgets\n\n${lines.join('\n')}\n\n${list.length} budgets, ${missed} missed.`);
if (options.check && missed > 0) process.exitCode = 1;

import { parseArgs } from 'node:util';
import { budgets, isMet } from './budgets.ts';
import { effortOf } from './effort.ts';
import { FigureGatherer, type Contestant, type Figures } from './figures.ts';
import { measure } from './measure.ts';
import { CANDIDATES } from './peers/index.ts';
import { budgetLines, busyLine, machine, sizeTable } from './report.ts';
import type { Task } from './sample.ts';
import { SIZES } from './workload.ts';

const HELP = `npm run bench -- [options]
  --quick       1,000 and 10,000 rows only, with fewer rounds
  --rows N,…    only these sizes (${SIZES.map(({ rows }) => rows).join(', ')})
  --markdown    tables in Markdown
  --check       exit with 1 when a budget is missed`;

/** Measures one size: fresh processes, one round after the other, every second round in reverse order. */
async function measureSize(rows: number, quick: boolean): Promise<Figures> {
  const gatherer = new FigureGatherer(rows);
  const contestants: Contestant[] = ['schedule', 'steps', ...CANDIDATES.filter((name) => name !== 'schedule')];
  const efforts = contestants.map((contestant) =>
    ({ contestant, ...effortOf(contestant === 'steps' ? 'schedule' : contestant, rows, quick) }));
  const mostRounds = Math.max(...efforts.map(({ rounds }) => rounds));
  for (let round = 0; round < mostRounds; round += 1) {
    for (const { contestant, rounds, calls, capSeconds } of round % 2 === 0 ? efforts : efforts.toReversed()) {
      if (round >= rounds) continue;
      process.stderr.write(`${rows} rows, round ${round + 1}: ${contestant}\n`);
      const task: Task = contestant === 'steps'
        ? { candidate: 'schedule', rows, calls: {}, inSteps: true } : { candidate: contestant, rows, calls };
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
    check: { type: 'boolean', default: false }, help: { type: 'boolean', default: false },
  },
});
if (options.help) {
  console.log(HELP);
  process.exit(0);
}
const chosen = options.rows?.split(',').map(Number);
const sizes = SIZES.filter(({ rows }) => chosen?.includes(rows) ?? (!options.quick || rows <= 10_000));
if (sizes.length === 0) {
  throw new RangeError(`--rows ${options.rows}: the sizes are ${SIZES.map(({ rows }) => rows).join(', ')}.`);
}

console.log(machine());
console.log('Medians of fresh processes; every figure is compared with a plain recalculation after each kind of operation.');
const bySize = new Map<number, Figures>();
for (const { rows } of sizes) {
  const figures = await measureSize(rows, options.quick);
  bySize.set(rows, figures);
  console.log(`\n${options.markdown ? '### ' : ''}${rows.toLocaleString('en')} device rows\n`);
  console.log(sizeTable(figures, options.markdown));
}
const busy = busyLine();
if (busy !== undefined) console.log(`\n${busy}`);
const list = budgets(bySize);
const missed = list.filter((budget) => !isMet(budget)).length;
const lines = budgetLines(list).map((line) => options.markdown ? `- ${line}` : line);
console.log(`\nBudgets\n\n${lines.join('\n')}\n\n${list.length} budgets, ${missed} missed.`);
if (options.check && missed > 0) process.exitCode = 1;

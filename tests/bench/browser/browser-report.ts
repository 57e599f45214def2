import type { Budget } from '../budgets.ts';
import { median } from '../figures.ts';
import { time } from '../report.ts';
import type { PageLoad } from './drive.ts';

const START = 'start, until rows are painted';
const BARE = 'bare render of the grid';
const rendered = (kind: string) => `${kind}, until rendered`;
const painted = (kind: string) => `${kind}, until the second frame`;

/** Names of the kinds of edit, as the loads have them. */
const kindsOf = (loads: readonly PageLoad[]) => Object.keys(loads[0]!.edits);

/** Medians over the page loads, by name of the figure [ms]. */
export function browserFigures(loads: readonly PageLoad[]): Map<string, number> {
  const over = (of: (load: PageLoad) => number) => median(loads.map(of));
  const figures = new Map([
    [START, over(({ start }) => start)],
    ['longest pause between frames after it', over(({ longestPause }) => longestPause)],
    [rendered('first edit'), over(({ first }) => first.rendered)],
    [BARE, over(({ bareRenders }) => median(bareRenders))],
    ['two frames without an edit', over(({ twoFrames }) => median(twoFrames))],
  ]);
  for (const kind of Object.keys(loads[0]!.turns)) {
    figures.set(rendered(kind), over(({ turns }) => median(turns[kind]!.map((each) => each.rendered))));
  }
  for (const kind of kindsOf(loads)) {
    figures.set(rendered(kind), over(({ edits }) => median(edits[kind]!.map((each) => each.rendered))));
    figures.set(painted(kind), over(({ edits }) => median(edits[kind]!.map((each) => each.painted))));
  }
  return figures;
}

/** The table: a line for each figure, a column for each size. */
export function browserLines(
  bySize: ReadonlyMap<number, readonly PageLoad[]>,
): { heading: string[]; lines: string[][] } {
  const columns = [...bySize].map(([rows, loads]) => ({ rows, figures: browserFigures(loads) }));
  return {
    heading: ['', ...columns.map(({ rows }) => `${rows.toLocaleString('en')} rows`)],
    lines: [...columns[0]!.figures.keys()].map((name) =>
      [name, ...columns.map(({ figures }) => time(figures.get(name)!))]),
  };
}

/** The budgets of the screen. */
export function browserBudgets(bySize: ReadonlyMap<number, readonly PageLoad[]>): Budget[] {
  const few = browserFigures(bySize.get(1_000)!);
  return [...bySize].filter(([rows]) => rows > 1_000).flatMap(([rows, loads]) => {
    const many = browserFigures(loads);
    const size = `${rows.toLocaleString('en')} rows`;
    const ofKinds = kindsOf(loads).filter((kind) => !kind.startsWith('paste')).flatMap((kind): Budget[] => [
      {
        text: `${size}: ${rendered(kind)}, times a bare render`, unit: '×', limit: 2.5,
        value: many.get(rendered(kind))! / many.get(BARE)!,
      },
      {
        text: `${size}: ${kind}, not shown by the second frame`, unit: 'edits', limit: 0,
        value: loads.flatMap(({ edits }) => edits[kind]!).filter(({ shown }) => !shown).length,
      },
      ...rows > 10_000 ? [{
        text: `${size}: ${rendered(kind)}, times that with 1,000`, unit: '×', limit: 1.2,
        value: many.get(rendered(kind))! / few.get(rendered(kind))!,
      }] : [],
    ]);
    const start = many.get(START)! / few.get(START)!;
    const ofTurns = Object.keys(loads[0]!.turns).map((kind): Budget => ({
      text: `${size}: ${rendered(kind)}, times a bare render`, unit: '×', limit: 3,
      value: many.get(rendered(kind))! / many.get(BARE)!,
    }));
    return [...ofKinds, ...ofTurns, { text: `${size}: start, times that with 1,000`, unit: '×', limit: 1.2, value: start }];
  });
}

import type { CellValue, Solution, Solved } from './column.ts';

/** The least of rating × trip multiple of the ways; unknown where one of them is. */
function solve(_own: readonly CellValue[], each: readonly CellValue[][]): Solved {
  const needed = each.map(([rated, trip]) =>
    typeof rated === 'number' && typeof trip === 'number' ? rated * trip : null);
  const known = needed.filter((amps) => amps !== null);
  const isWhole = known.length > 0 && known.length === needed.length;
  return { figures: { leastTrip: isWhole ? Math.min(...known) : null }, missing: 0 };
}

/** Current that makes the first of the ways of a supply act at once. */
export const supplySolution: Solution = {
  from: 'ways', by: 'rail', of: [], each: ['rated', 'trip'], gives: ['leastTrip'], givesEach: [], solve,
};

import loadHighs from 'highs';

/** Items of one size; `whole`: all of them in one bin. */
export interface MilpRow {
  readonly each: number;
  readonly qty: number;
  readonly whole: boolean;
}

/** A bin that may be used, and what using it costs. */
export interface MilpBin {
  readonly capacity: number;
  readonly cost: number;
}

const highs = loadHighs();

/**
 * The least cost of bins that hold all items, by mixed-integer linear programming with an independent solver.
 * @returns the cost; `undefined` when the items do not fit
 */
export async function leastCost(rows: readonly MilpRow[], bins: readonly MilpBin[]): Promise<number | undefined> {
  const variable = (row: number, bin: number) => `x${row}_${bin}`;
  const sum = (terms: readonly string[]) => terms.join(' + ');
  const all = rows.flatMap((_, row) => bins.map((__, bin) => variable(row, bin)));
  const programme = [
    'Minimize', ` cost: ${sum(bins.map(({ cost }, bin) => `${cost} y${bin}`))}`, 'Subject To',
    // Of a row that stays whole, x is 1 where it is; of another, the number of items.
    ...rows.map((
      { qty, whole }, row
    ) => ` all${row}: ${sum(bins.map((_, bin) => variable(row, bin)))} = ${whole ? 1 : qty}`),
    ...bins.map(({ capacity }, bin) => ` room${bin}: ${sum(rows.map(({ each, qty, whole }, row) =>
      `${whole ? each * qty : each} ${variable(row, bin)}`))} - ${capacity} y${bin} <= 0`),
    'Bounds', ...rows.flatMap((
      { qty, whole }, row
    ) => bins.map((_, bin) => ` 0 <= ${variable(row, bin)} <= ${whole ? 1 : qty}`)),
    'General', ` ${all.join(' ')}`, 'Binary', ` ${bins.map((_, bin) => `y${bin}`).join(' ')}`, 'End',
  ].join('\n');
  const solved = (await highs).solve(programme, { mip_rel_gap: 0, mip_abs_gap: 0 });
  if (solved.Status === 'Infeasible') return undefined;
  if (solved.Status !== 'Optimal') throw new Error(`The solver says ${solved.Status}.`);
  return Math.round(solved.ObjectiveValue);
}

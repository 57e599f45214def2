import type { GridModel } from './grid-model.ts';
import type { GridSelection } from './grid-selection.ts';

/** What the selected cells come to. */
export interface SelectionStatistics {
  /** Cells that are not empty. */
  readonly count: number;
  /** How many of them are numbers. */
  readonly numbers: number;
  /** Their sum; 0 when there is none. */
  readonly sum: number;
  /** The unit that they share: `%` for shares, which are summed as 0 to 1. Empty when they differ or have none. */
  readonly unit: string;
}

/** Counts and adds up the cells of rows within a selection; headings do not count. */
export function selectionStatistics(model: GridModel, selection: GridSelection): SelectionStatistics {
  const { schedule, sheet, lines } = model;
  const columns = selection.columns.map((index) => model.columns[index]!);
  const units = new Set<string>();
  let [count, numbers, sum] = [0, 0, 0];
  for (const index of selection.lines) {
    const line = lines[index];
    if (line?.kind !== 'row') continue;
    for (const column of columns) {
      const value = schedule.value(sheet, line.id, column.key);
      if (value === null) continue;
      count += 1;
      if (typeof value !== 'number') continue;
      numbers += 1;
      sum += value;
      units.add(column.kind === 'ratio' ? '%' : column.unit ?? '');
    }
  }
  return { count, numbers, sum, unit: units.size === 1 ? [...units][0]! : '' };
}

import type { SafeSide } from '../../src/words/index.ts';
import type { GridModel } from './grid-model.ts';
import { columnsByLine, type GridSelection } from './grid-selection.ts';

/** What the selected cells come to. */
export interface SelectionStatistics {
  /** Cells that are not empty. */
  readonly count: number;
  /** How many of them are numbers. */
  readonly numbers: number;
  /**
   * Their sum; 0 when there is none, `null` when they are not of one unit. Numbers without a unit are of one in one
   * column.
   */
  readonly sum: number | null;
  /** The unit that they share: `%` for shares, which are summed as 0 to 1. Empty when they differ or have none. */
  readonly unit: string;
  /** The side to which their columns round, where they round to the same one. */
  readonly safeSide: SafeSide | undefined;
}

/** Counts and adds up the cells of rows within a selection, each once; headings do not count. */
export function selectionStatistics(model: GridModel, selection: GridSelection): SelectionStatistics {
  const { schedule, sheet, lines } = model;
  const kinds = new Set<string>();
  const units = new Set<string>();
  const sides = new Set<SafeSide | undefined>();
  let [count, numbers, sum] = [0, 0, 0];
  for (const [index, columns] of columnsByLine(selection)) {
    const line = lines[index];
    if (line?.kind !== 'row') continue;
    for (const place of columns) {
      const column = model.columns[place]!;
      const value = schedule.value(sheet, line.id, column.key);
      if (value === null) continue;
      count += 1;
      if (typeof value !== 'number') continue;
      numbers += 1;
      sum += value;
      const unit = column.kind === 'ratio' ? '%' : column.unit ?? '';
      units.add(unit);
      // Counts of different things, as of devices and of places, are no more alike than metres and amperes.
      kinds.add(unit === '' ? `count of ${column.key}` : unit);
      sides.add(column.safeSide);
    }
  }
  const isOne = kinds.size <= 1;
  return {
    count, numbers, sum: isOne ? sum : null, unit: isOne ? [...units][0]
      ?? '' : '', safeSide: sides.size === 1 ? [...sides][0] : undefined,
  };
}

import type { SelectionStatistics } from '../grid/selection-statistics.ts';
import type { Words } from '../../src/words/index.ts';

/** Count and sum of the selected cells in words; empty for a single cell. */
export function selectionSum({ count, numbers, sum, unit }: SelectionStatistics, words: Words): string {
  if (count < 2) return '';
  const cells = `${count} cells`;
  if (numbers === 0) return cells;
  const share = unit === '%';
  const format = new Intl.NumberFormat(words.locale, { maximumFractionDigits: share ? 0 : 2, useGrouping: false });
  const figure = format.format(share ? sum * 100 : sum);
  return `${cells}, sum ${figure}${unit === '' ? '' : `\u00a0${unit}`}`;
}

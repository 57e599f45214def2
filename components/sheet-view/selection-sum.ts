import type { SelectionStatistics } from '../grid/selection-statistics.ts';
import type { Words } from '../../src/words/index.ts';

/** Count and sum of the selected cells in words; empty for a single cell. */
export function selectionSum({ count: n, numbers, sum, unit }: SelectionStatistics, words: Words): string {
  if (n < 2) return '';
  if (numbers === 0) return words.say('{n, plural, one {# cell} other {# cells}}', { n });
  const figure = words.number(unit === '%' ? Math.round(sum * 100) : Math.round(sum * 100) / 100);
  return words.say('{n, plural, one {# cell} other {# cells}}, sum {sum}', { n, sum: unit === '' ? figure : `${figure}\u00a0${unit}` });
}

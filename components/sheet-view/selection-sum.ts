import type { SelectionStatistics } from '../grid/selection-statistics.ts';
import { fixed, type Words } from '../../src/words/index.ts';

/** Count and sum of the selected cells in words; empty for a single cell. What is not of one unit has no sum. */
export function selectionSum({ count: n, numbers, sum, unit, safeSide }: SelectionStatistics, words: Words): string {
  if (n < 2) return '';
  if (numbers === 0) return words.say('{n, plural, one {# cell} other {# cells}}', { n });
  if (sum === null) {
    return words.say('{n, plural, one {# cell} other {# cells}}; no sum, as they are not of one unit', { n });
  }
  const figure = words.number(Number(unit === '%' ? fixed(sum * 100, 0, safeSide) : fixed(sum, 2, safeSide)));
  return words.say(
    '{n, plural, one {# cell} other {# cells}}, sum {sum}', { n, sum: unit === '' ? figure : `${figure}\u00a0${unit}` }
  );
}

import { NO_WORKING_VOLTAGE } from '../schedule/index.ts';
import type { Gathering } from './facts.ts';

const on = (sheet: 'ways' | 'supplies', by: 'way' | 'rail'): Gathering<number> => ({
  sheet, reads: [['runs', by], ['runs', 'current'], ['runs', 'extra']],
  gather: (document, book) => {
    const counts = new Map<number, number>();
    const [targets, extra] = [book.targets('runs', by), book.columns('runs').numbers.get('extra')!];
    for (const { id } of document.rows('runs')) {
      const target = targets[id]!;
      if (target < 0 || !Number.isNaN(extra[id]) || book.outcome('runs', id) !== NO_WORKING_VOLTAGE) continue;
      counts.set(target, (counts.get(target) ?? 0) + 1);
    }
    return counts;
  },
});

/** How many runs on it have no working voltage at their demand, so that what they draw is not known. */
export const COLLAPSED = { ways: on('ways', 'way'), supplies: on('supplies', 'rail') };

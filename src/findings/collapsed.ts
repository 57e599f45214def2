import { NO_WORKING_VOLTAGE } from '../schedule/index.ts';
import type { Gathering } from './facts.ts';

const on = (sheet: 'ways' | 'supplies', ...references: ('way' | 'secondWay' | 'rail')[]): Gathering<number> => ({
  sheet, reads: [...references.map((by) => ['runs', by] as const), ['runs', 'current'], ['runs', 'extra']],
  gather: (document, book) => {
    const counts = new Map<number, number>();
    const [targets, extra] = [references.map((by) => book.targets('runs', by)), book.columns('runs').numbers.get('extra')!];
    for (const { id } of document.rows('runs')) {
      if (!Number.isNaN(extra[id]) || book.outcome('runs', id) !== NO_WORKING_VOLTAGE) continue;
      for (const target of targets.map((of) => of[id]!).filter((each) => each >= 0)) {
        counts.set(target, (counts.get(target) ?? 0) + 1);
      }
    }
    return counts;
  },
});

/** How many runs on it have no working voltage at their demand, so that what they draw is not known. */
export const COLLAPSED = { ways: on('ways', 'way', 'secondWay'), supplies: on('supplies', 'rail') };

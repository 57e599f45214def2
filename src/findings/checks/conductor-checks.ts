import { isFormula } from '../../schedule/index.ts';
import { message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { MADE_OF_IT } from '../waiting.ts';
import { unknown } from './limit-checks.ts';

const CURRENT_MISSING = message(
  '{name}: what it carries is not known, and {waiting, plural, one {# run waits} other {# runs wait}} for it. Enter it, with the source that says so, or use a conductor of which it is known.'
);

/** What conductors are held against. */
export const conductorChecks: readonly Check[] = [
  {
    rule: 'conductor-current-missing', sheet: 'conductors', key: 'maxCurrent', severity: 'incomplete',
    find: (row) => {
      // A formula without a result has a check of its own.
      if (row.value('maxCurrent') !== null || isFormula(row.own('maxCurrent'))) return undefined;
      const waiting = row.waiting(MADE_OF_IT);
      return waiting === 0 ? undefined : { ...unknown(row, CURRENT_MISSING, { waiting }), waiting };
    },
  },
];

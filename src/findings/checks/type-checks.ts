import { isFormula } from '../../schedule/index.ts';
import { message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { ON_A_BRANCH } from '../waiting.ts';
import { unknown } from './limit-checks.ts';

const NODES_MISSING = message(
  '{name}: how many nodes one device counts on a branch is not known, and {waiting, plural, one {# device row waits} other {# device rows wait}} for it. Enter it; 0 if it is no bus participant.'
);

/** What device types are held against. */
export const typeChecks: readonly Check[] = [
  {
    rule: 'type-nodes-missing', sheet: 'types', key: 'nodes', severity: 'incomplete',
    find: (row) => {
      // A formula without a result has a check of its own.
      if (row.value('nodes') !== null || isFormula(row.own('nodes'))) return undefined;
      const waiting = row.waiting(ON_A_BRANCH);
      return waiting === 0 ? undefined : { ...unknown(row, NODES_MISSING, { waiting }), waiting };
    },
  },
];

import { exceeds } from '../../electrical/index.ts';
import { message, percent } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { missingInput, overLimit, partialTotal } from './limit-checks.ts';

/** What bus branches are held against. */
export const branchChecks: readonly Check[] = [
  overLimit({
    rule: 'branch-over-limit', sheet: 'branches', key: 'nodes', limit: (row) => row.number('limit'),
    message: message(
      '{name} carries {value, plural, one {# node} other {# nodes}} and may carry {limit}: {excess} too many. Move devices to another branch.'
    ),
    write: (value, limit) => ({ value, limit, excess: value - limit }),
  }),
  {
    rule: 'branch-over-reserve', sheet: 'branches', key: 'free', severity: 'near', inStatus: true,
    find: (row) => {
      const [free, nodes, limit, reserve] = [
        row.number('free'), row.number('nodes'), row.number('limit'), row.number('reserve'),
      ];
      if (free === null || nodes === null || limit === null || reserve === null) return undefined;
      if (!exceeds(nodes, nodes + free) || exceeds(nodes, limit)) return undefined;
      return {
        value: free, limit: 0,
        message: row.say('{name} carries {nodes, plural, one {# node} other {# nodes}} of {limit}, {into} into its reserve of {reserve}. Move devices to another branch, or give up part of the reserve.', {
          nodes, limit, into: -free, reserve: percent(reserve),
        }),
      };
    },
  },
  missingInput(
    'branch-limit-missing', 'branches', 'limit',
    message(
      '{name} has no limit, so whether it carries too many nodes is not known. Enter the most nodes that the bus may carry, or its standard, such as TIA-485-A.'
    )
  ),
  partialTotal(
    'branch-nodes-partial', 'branches', 'nodes',
    message(
      '{name} carries at least {value, plural, one {# node} other {# nodes}}: {missing, plural, one {# device row on it is not wholly known. Complete it, or its type,} other {# device rows on it are not wholly known. Complete them, or their types,}} to know the rest.'
    ),
    (value) => value
  ),
  {
    rule: 'branch-not-terminated', sheet: 'branches', key: 'terminated', severity: 'note',
    find: (row) => row.own('terminated') === true ? undefined : {
      value: row.own('terminated'), limit: true,
      message: row.say(
        '{name} is not marked as terminated. Fit the terminating resistors at both ends of the line and mark it.'
      ),
    },
  },
];

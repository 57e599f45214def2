import { exceeds } from '../../electrical/index.ts';
import { count, percent, plain, type Check } from '../check.ts';
import { overLimit, partialTotal } from './limit-checks.ts';

/** What bus branches are held against. */
export const branchChecks: readonly Check[] = [
  overLimit({
    rule: 'branch-over-limit', sheet: 'branches', key: 'points', limit: (row) => row.number('limit'),
    message: (row, points, limit) =>
      `${row.name} carries ${count(points, 'point')} and may carry ${limit}: ${plain(points - limit)} too many. Move devices to another branch.`,
  }),
  {
    rule: 'branch-over-reserve', sheet: 'branches', key: 'free', severity: 'near', inStatus: true,
    find: (row) => {
      const [free, points, limit, reserve] = [row.number('free'), row.number('points'), row.number('limit'), row.number('reserve')];
      if (free === null || points === null || limit === null || reserve === null) return undefined;
      if (!exceeds(points, points + free) || exceeds(points, limit)) return undefined;
      return {
        value: free, limit: 0,
        message: `${row.name} carries ${count(points, 'point')} of ${limit}, ${plain(-free)} into its reserve of ${percent(reserve)}. Move devices to another branch, or give up part of the reserve.`,
      };
    },
  },
  partialTotal('branch-points-partial', 'branches', 'points', 'device row', 'points'),
  {
    rule: 'branch-not-terminated', sheet: 'branches', key: 'terminated', severity: 'note',
    find: (row) => row.own('terminated') === true ? undefined : {
      value: row.own('terminated'), limit: true,
      message: `${row.name} is not marked as terminated. Fit the terminating resistors at both ends of the line and mark it.`,
    },
  },
];

import { freePoints, loadingRatio } from '../../electrical/index.ts';
import type { Sheet } from './column.ts';

const ARITHMETIC = 'arithmetic of the load schedule';

/** The branches of the field bus. */
export const branches: Sheet = {
  name: 'branches',
  title: 'Branches',
  rowName: 'bus branch',
  help: 'One row for each bus branch: how many devices it may carry and how many it does.',
  tag: 'branch',
  columns: [
    { role: 'input', key: 'branch', title: 'Branch', kind: 'text', tag: true, help: 'Tag of the branch, as device rows give it.' },
    { role: 'input', key: 'limit', title: 'Limit', kind: 'integer', min: 1, default: 50, help: 'Most points that the branch may carry.', source: 'common practice, no source' },
    { role: 'input', key: 'reserve', title: 'Reserve', kind: 'ratio', min: 0, max: 1, default: 0, help: 'Share of the limit kept free for later.' },
    { role: 'input', key: 'terminated', title: 'Terminated', kind: 'boolean', help: 'Both ends of the line carry their terminating resistors.' },
    { role: 'input', key: 'note', title: 'Note', kind: 'text', help: 'Anything worth saying.' },
    { role: 'computed', key: 'points', title: 'Points', kind: 'number', decimals: 0, whenPartial: '≥', help: 'Places taken by its devices.', total: { from: 'devices', by: 'branch', sum: 'points', words: 'sum of points over the device rows that name it', source: ARITHMETIC } },
    { role: 'computed', key: 'free', title: 'Free', kind: 'number', safeSide: 'down', decimals: 0, whenPartial: '≤', help: 'Places left below the limit less the reserve.', rule: { of: ['limit', 'reserve', 'points'], by: freePoints, words: '{limit} × (1 − {reserve}), rounded down, − {points}', source: ARITHMETIC } },
    { role: 'computed', key: 'used', title: 'Used', kind: 'ratio', whenPartial: '≥', help: 'Points as a share of the limit.', rule: { of: ['points', 'limit'], by: loadingRatio, words: '{points} ÷ {limit}', source: ARITHMETIC } },
    { role: 'computed', key: 'cables', title: 'Cables', kind: 'number', decimals: 0, help: 'Runs that belong to the branch.', total: { from: 'runs', by: 'branch', words: 'number of runs that name it', source: ARITHMETIC } },
    { role: 'computed', key: 'status', title: 'Status', kind: 'text', status: true, help: 'The worst that the limits of this branch say.' },
  ],
};

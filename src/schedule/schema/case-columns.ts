import { message } from '../../words/index.ts';
import type { ComputedColumn } from './column.ts';

/** The case in which the demand of a row is highest. */
export const worstCase: ComputedColumn = {
  role: 'computed', key: 'worstCase', rare: true, title: 'Worst case', kind: 'text', worstOf: 'demand',
  help: 'Case in which its demand is highest; nothing where that is so by the diversity of its rows.',
};

/** What a case in which most comes together asks of a row, where it says of all that is on it how much is on. */
export const togetherDemand: ComputedColumn = {
  role: 'computed', key: 'togetherDemand', rare: true, title: 'Demand together', kind: 'number', unit: 'A', decimals: 2,
  whenPartial: '≥',
  help: 'Demand in a case marked “together” that has a factor for every group on it; it stands for everything connected.',
  inMarkedCase: {
    of: 'demand', marked: 'together', covering: true,
    words: message('{demand} in the case marked “together” that has a factor for every group on it, the highest of several'),
    source: 'arithmetic of the load schedule',
  },
};

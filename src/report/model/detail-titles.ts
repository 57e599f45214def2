import type { DetailKey } from '../../schedule/index.ts';

/** What the details are called in the title block. */
export const DETAIL_TITLES: Readonly<Record<DetailKey, string>> = {
  project: 'Project', panel: 'Panel', revision: 'Revision', date: 'Date', preparedBy: 'Prepared by', checkedBy: 'Checked by',
  remarks: 'Remarks',
};

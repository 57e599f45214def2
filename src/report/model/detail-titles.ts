import type { DetailKey } from '../../schedule/index.ts';
import { message } from '../../words/index.ts';

/** What the details are called in the title block. */
export const DETAIL_TITLES: Readonly<Record<DetailKey, string>> = {
  project: message('Project'), panel: message('Panel'), revision: message('Revision'), date: message('Date'),
  preparedBy: message('Prepared by'), checkedBy: message('Checked by'), remarks: message('Remarks'),
};

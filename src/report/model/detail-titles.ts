import type { CellValue, DetailKey } from '../../schedule/index.ts';
import { message, type Words } from '../../words/index.ts';

/** What the details are called in the title block. */
export const DETAIL_TITLES: Readonly<Record<DetailKey, string>> = {
  project: message('Project'), panel: message('Panel'), revision: message('Revision'), date: message('Date'),
  client: message('Client'), documentNumber: message('Document no.'),
  preparedBy: message('Prepared by'), checkedBy: message('Checked by'), remarks: message('Remarks'),
};

/** A detail as it is read: the date as the language has it, nothing as «–». */
export function detailText(key: DetailKey, detail: CellValue, words: Words): string {
  const text = String(detail ?? '–');
  return key === 'date' ? words.date(text) : text;
}

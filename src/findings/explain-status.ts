import type { Explanation } from '../engine/index.ts';
import { columnOf, SCHEMA, type SheetName } from '../schedule/index.ts';
import type { Finding, Status } from './finding.ts';
import { STATE_WORDS } from './state-words.ts';

/**
 * Explains the status of a row.
 * @param deciding the findings that make it what it is; none where it is within limits.
 */
export function explainStatus(sheet: SheetName, status: Status, deciding: readonly Finding[]): Explanation {
  return {
    title: columnOf(sheet, 'status').title,
    words: `the worst that the limits of this ${SCHEMA[sheet].rowName} say`,
    numbers: deciding.length === 0 ? 'no limit is passed and no entry is missing' : deciding.map(({ message }) => message).join(' '),
    result: STATE_WORDS[status],
    source: 'the findings of the row; the limits are those of its columns',
    parts: deciding.map(({ key, id, value }) => ({
      path: key, label: columnOf(sheet, key).title.toLowerCase(), sheet, id, key, text: value === null ? 'not known' : String(value),
    })),
  };
}

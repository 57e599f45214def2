import type { Explanation } from '../engine/index.ts';
import { columnOf, SCHEMA, type SheetName } from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import type { Finding, Status } from './finding.ts';
import { STATE_WORDS } from './state-words.ts';

/**
 * Explains the status of a row.
 * @param deciding the findings that make it what it is; none where it is within limits.
 */
export function explainStatus(
  sheet: SheetName, status: Status, deciding: readonly Finding[], words: Words,
): Explanation {
  return {
    title: words.text(columnOf(sheet, 'status').title),
    words: words.say('the worst that the limits of this {row} say', { row: words.text(SCHEMA[sheet].rowName) }),
    numbers: deciding.length === 0
      ? words.say('no limit is passed and no entry is missing')
      : deciding.map(({ message }) => message).join(' '),
    result: words.say(STATE_WORDS[status]),
    source: words.say('the findings of the row; the limits are those of its columns'),
    parts: deciding.map(({ key, id, value }) => {
      const label = words.within(columnOf(sheet, key).title);
      return { path: key, label, labelInGeneral: label, sheet, id, key, text: valueText(value, words) };
    }),
  };
}

function valueText(value: Finding['value'], words: Words): string {
  if (value === null) return words.say('not known');
  return typeof value === 'number' ? words.number(value) : String(value);
}

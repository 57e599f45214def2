import { formatCell, isStatus, type CellValue, type Column } from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import type { Standing } from './finding.ts';
import { STATE_WORDS } from './state-words.ts';

/** What a cell holds, as a table shows it: a status as it is called. */
export function shownText(column: Column, value: CellValue, words: Words): string {
  return isStatus(column) && value !== null ? words.say(STATE_WORDS[value as Standing]) : formatCell(column, value, words, 'show');
}

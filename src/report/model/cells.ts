import type { Severity, Standing } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { formatCell, isNumeric, isStatus, titleWithUnit, type Column, type SheetName } from '../../schedule/index.ts';
import { STATE_WORDS } from './state-words.ts';
import type { ReportCell, ReportColumn } from './report.ts';
import type { Words } from '../../words/index.ts';

/**
 * A cell of text. A tag such as L2-W4 must not break at its hyphen, nor «20 A contact» at a space; a long text must be
 * able to.
 */
export function textCell(text: string): ReportCell {
  return { text, kind: /^(?:\S{1,16}|.{1,13})$/.test(text) ? 'tag' : 'text' };
}

/** A cell of a figure that is written already. */
export function numberCell(text: string): ReportCell {
  return { text, kind: 'number' };
}

/** A cell that says how something stands. */
export function stateCell(state: Standing | Severity, words: Words): ReportCell {
  return { text: words.say(STATE_WORDS[state]), kind: 'tag', state };
}

/** A cell to write in on paper. */
export const TO_FILL: ReportCell = { text: '', kind: 'text', toFill: true };

/** A cell of the schedule, as it is read: the sign of a partial figure first, defaults marked. */
export function scheduleCell(schedule: LoadSchedule, sheet: SheetName, id: number, column: Column): ReportCell {
  const value = schedule.shown(sheet, id, column.key);
  if (isStatus(column) && value !== null) return stateCell(value as Standing, schedule.words);
  const sign = value === null ? '' : schedule.partialSign(sheet, id, column.key);
  const text = sign + formatCell(column, value, schedule.words, 'show');
  const cell = isNumeric(column) ? numberCell(text) : textCell(text);
  const inherited = text !== '' && column.role === 'input' && !schedule.isOwn(sheet, id, column.key);
  return inherited ? { ...cell, inherited: true } : cell;
}

/** The heading of a column of the schedule. */
export function scheduleColumn(column: Column, words: Words): ReportColumn {
  return { title: titleWithUnit(column, words), kind: isNumeric(column) ? 'number' : 'text' };
}

/** Columns of text with these titles. */
export function textColumns(...titles: readonly string[]): ReportColumn[] {
  return titles.map((title) => ({ title, kind: 'text' }));
}

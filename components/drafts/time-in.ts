import { today } from '../look/today.ts';
import type { Words } from '../../src/words/index.ts';

const TIME = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' } as const;

/** A time as a person reads it: the time of day, with the date where it was not today. */
export function timeIn(words: Words, at: number): string {
  const day = today(new Date(at));
  const time = new Intl.DateTimeFormat(words.locale, TIME).format(at);
  return day === today() ? time : `${words.date(day)}, ${time}`;
}

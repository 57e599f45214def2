import type { Words } from '../../src/words/index.ts';

const TIME = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' } as const;
const DATE = { day: 'numeric', month: 'short', year: 'numeric' } as const;

/** A time as a person reads it: the time of day, with the date where it was not today. */
export function timeIn(words: Words, at: number): string {
  const isToday = new Date(at).toDateString() === new Date().toDateString();
  return new Intl.DateTimeFormat(words.locale, isToday ? TIME : { ...DATE, ...TIME }).format(at);
}

import type { Words } from '../../src/words/index.ts';

/** A time as a person reads it: the time of day, with the date where it was not today. */
export function timeIn(words: Words, at: number): string {
  const isToday = new Date(at).toDateString() === new Date().toDateString();
  return new Intl.DateTimeFormat(words.locale, isToday ? { timeStyle: 'short' } : { dateStyle: 'medium', timeStyle: 'short' }).format(at);
}

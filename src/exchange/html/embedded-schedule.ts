import { unescaped } from './unescaped.ts';

/** Name of the element that holds the schedule in a load table in HTML. */
export const EMBEDDED_ID = 'elv-load-schedule';

/** Whether a text is a page in HTML, or a piece of one that begins with a table, rather than JSON or a list. */
export function isHtml(text: string): boolean {
  return /^\ufeff?\s*<(?:!doctype|html|\?xml|!--|(?:head|meta|title|style|body|div|table|center)\b)/i.test(text);
}

/**
 * The schedule, as JSON, that a load table in HTML carries.
 * @returns `undefined` when the page carries none.
 */
export function embeddedSchedule(page: string): string | undefined {
  const start = new RegExp(`<template id=["']?${EMBEDDED_ID}["']?[^>]*>`, 'i').exec(page);
  if (start === null) return undefined;
  const from = start.index + start[0].length;
  const end = page.indexOf('</template>', from);
  if (end < 0) return undefined;
  return unescaped(page.slice(from, end));
}

import { isHtml } from './html/index.ts';

/**
 * Whether a file holds a whole schedule rather than one sheet: it begins as one does, whatever its name is, or its name
 * says so and what is wrong with it is to be said as of a schedule.
 */
export function isScheduleText({ name, text }: { readonly name: string; readonly text: string }): boolean {
  return /^\s*\{/.test(text) || isHtml(text) || /\.(?:json|html?|xls[xm]?)$/i.test(name);
}

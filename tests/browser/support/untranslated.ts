import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { outside } from '../../support/pseudo-words.ts';
import { dataOf, nameOf, readTexts, withoutData } from './read-texts.ts';

const UNITS = /(?<!\p{L})(?:mA|Ah|A|V|W|kWh|h|mm²?|m|K|°C|Ω\/km|Ω|m²|W\/\(m²K\))(?!\p{L})/gu;

/**
 * Every text inside an element that speaks the pseudo language and was not said through its words: those on the screen
 * and those in attributes that a person reads or hears. Data of the schedule, figures and their units do not count.
 * @param within the shadow root to look through; the whole element unless said otherwise.
 */
export function untranslated(element: LoadScheduleElement, within: ShadowRoot = element.shadowRoot!): string[] {
  const data = dataOf(element);
  const found = new Set<string>();
  // A sentence may be parted by elements, so that its brackets stand in different texts.
  let depth = 0;
  for (const { text, place, inline } of readTexts(within)) {
    const read = outside(text, inline ? depth : 0);
    if (inline) depth = read.depth;
    if (!/\p{L}/u.test(read.left)) continue;
    const rest = withoutData(read.left, data).replace(UNITS, ' ');
    if (/\p{L}/u.test(rest)) found.add(`${nameOf(place)}: ${read.left.trim()}`);
  }
  if (depth !== 0) found.add('a bracket has no other');
  return [...found];
}

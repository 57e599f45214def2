import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { dataOf, nameOf, readTexts, withoutData } from './read-texts.ts';

/** Words that no German or French sentence has, and hardly an English one is without. */
const WORDS = [
  'the', 'of', 'and', 'is', 'are', 'with', 'not', 'row', 'rows', 'this', 'that', 'from', 'to', 'by', 'may', 'its',
  'has', 'have', 'where',
  'unknown', 'target', 'near', 'limit', 'incomplete', 'yes', 'no', 'all', 'supply', 'branch', 'run', 'output', 'feed',
  'device', 'demand',
  'loading',
];
const ENGLISH_WORDS = new RegExp(`(?<!\\p{L})(?:${WORDS.join('|')})(?!\\p{L})`, 'iu');

/**
 * Every text inside an element that still has an English word, in whatever language it should speak. Data do not count.
 */
export function englishLeft(element: LoadScheduleElement, within: ShadowRoot = element.shadowRoot!): string[] {
  const data = dataOf(element);
  const found = new Set<string>();
  for (const { text, place } of readTexts(within)) {
    if (ENGLISH_WORDS.test(text) && ENGLISH_WORDS.test(withoutData(text, data))) {
      found.add(`${nameOf(place)}: ${text.trim()}`);
    }
  }
  return [...found];
}

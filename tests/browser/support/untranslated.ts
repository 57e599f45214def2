import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { SHEET_NAMES } from '../../../src/schedule/index.ts';
import { outside } from '../../support/pseudo-words.ts';

const READ_ATTRIBUTES = ['title', 'aria-label', 'aria-description', 'aria-roledescription', 'aria-valuetext', 'placeholder', 'alt', 'data-title'];
const UNITS = /(?<!\p{L})(?:mA|A|V|W|mm²?|m|K|°C|Ω\/km|m²|W\/\(m²K\))(?!\p{L})/gu;

/**
 * Every text inside an element that speaks the pseudo language and was not said through its words: those on the screen and
 * those in attributes that a person reads or hears. Data of the schedule, figures and their units do not count.
 * @param within the shadow root to look through; the whole element unless said otherwise.
 */
export function untranslated(element: LoadScheduleElement, within: ShadowRoot = element.shadowRoot!): string[] {
  const data = dataOf(element);
  const found = new Set<string>();
  const keep = (text: string, place: Element): void => {
    if (!/\p{L}/u.test(text)) return;
    let rest = text;
    for (const each of data) rest = rest.replaceAll(each, ' ');
    rest = rest.replace(UNITS, ' ');
    if (/\p{L}/u.test(rest)) found.add(`${nameOf(place)}: ${text.trim()}`);
  };
  // A sentence may be parted by elements, so that its brackets stand in different text nodes.
  let depth = 0;
  const visit = (node: Node): void => {
    if (node instanceof Text) {
      const parent = node.parentElement ?? (node.getRootNode() as ShadowRoot).host;
      const text = outside(node.data, depth);
      depth = text.depth;
      keep(text.left, parent);
      return;
    }
    if (node instanceof Element) {
      // The letter by which formulas call a column is no word.
      if (node.matches('style, script, .letter')) return;
      for (const name of READ_ATTRIBUTES) keep(outside(node.getAttribute(name) ?? '').left, node);
      if (node.shadowRoot !== null) visit(node.shadowRoot);
    }
    node.childNodes.forEach(visit);
  };
  visit(within);
  if (depth !== 0) found.add('a bracket has no other');
  return [...found];
}

/** Every text that a person or a file put in, the longest first. */
function dataOf({ schedule }: LoadScheduleElement): string[] {
  const cells = SHEET_NAMES.flatMap((sheet) => schedule.rows(sheet).flatMap(({ cells: of }) => Object.values(of)));
  const texts = [...cells, ...Object.values(schedule.document.details)].filter((value): value is string => typeof value === 'string' && value !== '');
  return [...new Set(texts)].sort((one, other) => other.length - one.length);
}

function nameOf(element: Element): string {
  return `${(element.getRootNode() as ShadowRoot).host.localName} ${element.localName}.${element.getAttribute('class') ?? ''}`;
}

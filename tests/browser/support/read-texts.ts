import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { SHEET_NAMES } from '../../../src/schedule/index.ts';

const READ_ATTRIBUTES = [
  'title', 'aria-label', 'aria-description', 'aria-roledescription', 'aria-valuetext', 'placeholder', 'alt',
  'data-title',
];

/** A text that a person reads or hears, and the element that bears it. */
export interface ReadText {
  readonly text: string;
  readonly place: Element;
  /** It stands in the page, beside others; else in an attribute, by itself. */
  readonly inline: boolean;
}

/** Every text below a node, in order, through shadow roots: those on the screen and those in attributes. */
export function* readTexts(node: Node): Generator<ReadText> {
  if (node instanceof Text) {
    yield { text: node.data, place: node.parentElement ?? (node.getRootNode() as ShadowRoot).host, inline: true };
    return;
  }
  if (node instanceof Element) {
    // The letter by which formulas call a column is no word.
    if (node.matches('style, script, .letter')) return;
    for (const name of READ_ATTRIBUTES) yield { text: node.getAttribute(name) ?? '', place: node, inline: false };
    if (node.shadowRoot !== null) yield* readTexts(node.shadowRoot);
  }
  for (const child of node.childNodes) yield* readTexts(child);
}

/** Every text that a person or a file put in the schedule of an element, the longest first. */
export function dataOf({ schedule }: LoadScheduleElement): string[] {
  const cells = SHEET_NAMES.flatMap((sheet) => schedule.rows(sheet).flatMap(({ cells: of }) => Object.values(of)));
  const texts = [...cells, ...Object.values(schedule.document.details)]
    .filter((value): value is string => typeof value === 'string' && value !== '');
  return [...new Set(texts)].sort((one, other) => other.length - one.length);
}

/** A text without the data that it holds. */
export function withoutData(text: string, data: readonly string[]): string {
  return data.reduce((rest, each) => rest.replaceAll(each, ' '), text);
}

export function nameOf(element: Element): string {
  return `${(element.getRootNode() as ShadowRoot).host.localName} ${element.localName}.${element.getAttribute('class') ?? ''}`;
}

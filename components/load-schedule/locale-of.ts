import { isWellFormed } from '../../src/words/index.ts';

/** Language tag of an element: its own `lang` or that of what it stands in, across shadow roots; else the browser's. */
export function localeOf(element: Element): string {
  for (const each of placesOf(element)) {
    const holder = each.closest('[lang]:not([lang=""])');
    const tag = holder?.getAttribute('lang') ?? '';
    if (tag !== '') return isWellFormed(tag) ? tag : 'en';
  }
  return navigator.language;
}

/** The roots of the trees that an element stands in, the innermost first: those of shadow roots, and the document. */
export function rootsOf(element: Element): Node[] {
  return placesOf(element).map((each) => each.getRootNode());
}

/** The element, and the hosts of the shadow roots that it stands in, from the inside. */
function placesOf(element: Element): Element[] {
  const root = element.getRootNode();
  return [element, ...root instanceof ShadowRoot ? placesOf(root.host) : []];
}

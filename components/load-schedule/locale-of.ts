import { isWellFormed } from '../../src/words/index.ts';

/** Language tag of an element: its own `lang` or that of what it stands in, across shadow roots; else the browser's. */
export function localeOf(element: Element): string {
  let at: Element | null = element;
  while (at !== null) {
    const holder: Element | null = at.closest('[lang]:not([lang=""])');
    const tag = holder?.getAttribute('lang') ?? '';
    if (tag !== '') return isWellFormed(tag) ? tag : 'en';
    const root = at.getRootNode();
    at = root instanceof ShadowRoot ? root.host : null;
  }
  return navigator.language;
}

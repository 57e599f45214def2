import { html, render } from 'lit';
import { unsafeHTML } from 'lit/directives/unsafe-html.js';

/** Whether the empty page of a frame is there; before that the frame has a page that is thrown away. */
export function isReady({ contentDocument }: HTMLIFrameElement): boolean {
  return contentDocument !== null && contentDocument.URL.startsWith('about:srcdoc')
    && contentDocument.readyState === 'complete';
}

/**
 * Shows a load table in a frame that has an empty page, as a browser shows the saved file. Its styles are put in as a
 * sheet that a page's policy allows, and its elements by the same way as all others of the element.
 * @param page the load table in HTML, every text in it escaped.
 * @param language that the load table is in.
 */
export function showPage(frame: HTMLIFrameElement, page: string, language: string): void {
  const [document, window] = [frame.contentDocument!, frame.contentWindow as Window & typeof globalThis];
  const sheet = new window.CSSStyleSheet();
  sheet.replaceSync(between(page, '<style>', '</style>'));
  document.adoptedStyleSheets = [sheet];
  document.documentElement.lang = language;
  document.title = frame.title;
  render(html`${unsafeHTML(between(page, '<body>', '</body>'))}`, document.body);
  // A link within the page would otherwise be one to the page around the frame.
  for (const link of document.querySelectorAll<HTMLAnchorElement>('a[href^="#"]')) link.href =
    `${document.URL.replace(/#.*/, '')}${link.hash}`;
}

function between(text: string, opening: string, closing: string): string {
  const at = text.indexOf(opening);
  if (at < 0) throw new Error(`The page has no ${opening}.`);
  const start = at + opening.length;
  return text.slice(start, text.indexOf(closing, start));
}

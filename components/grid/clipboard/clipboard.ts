import type { Copied } from './copy-text.ts';
import { ENTERED_TYPE } from './entered-cells.ts';

/** What the grid does with the clipboard. */
export interface ClipboardHost {
  /** Whether keys and the clipboard are the grid's now: it has the focus, and no cell is being edited. */
  readonly takesClipboard: boolean;
  /** What is selected; `undefined` leaves the clipboard as it is. */
  copied(): Copied | undefined;
  cutDone(): void;
  /**
   * @param entered what a schedule put beside the text, and the same as a page; empty where there is none.
   */
  pasteText(text: string, entered: string, page: string): void;
}

/**
 * Listens for copy, cut and paste while the grid has the focus. HTML is not written, and only what reads takeoffs reads
 * it, as text: parsed by the browser, a strict content security policy would report it. What was entered travels as an
 * entry of our own beside the plain text, which browsers hand on to pages of the same browser.
 * @returns a function that takes the listeners away.
 */
export function listenToClipboard(element: HTMLElement, host: ClipboardHost): () => void {
  const ended = new AbortController();
  const options = { signal: ended.signal, capture: true };
  // A cell that has been drawn anew has lost the focus to the body, and WebKit names the outermost host of shadow
  // roots.
  const mine = (event: ClipboardEvent): boolean => host.takesClipboard
    && (event.composedPath().includes(element) || (event.target instanceof Node && isAround(event.target, element)));
  const copy = (event: ClipboardEvent): void => {
    if (!mine(event)) return;
    event.preventDefault();
    event.stopPropagation();
    const copied = host.copied();
    if (copied === undefined) return;
    give(event, copied);
    if (event.type === 'cut') host.cutDone();
  };
  document.addEventListener('copy', copy, options);
  document.addEventListener('cut', copy, options);
  document.addEventListener('paste', (event) => {
    if (!mine(event)) return;
    event.preventDefault();
    event.stopPropagation();
    const [text, entered, page] = ['text/plain', ENTERED_TYPE, 'text/html'].map((type) => event.clipboardData?.getData(type) ?? '');
    host.pasteText(text!, entered!, page!);
  }, options);
  return () => { ended.abort(); };
}

/** Whether a node holds an element, across shadow roots. */
function isAround(node: Node, element: Element): boolean {
  let at: Node | null = element;
  while (at !== null && at !== node) at = at instanceof ShadowRoot ? at.host : at.parentNode;
  return at === node;
}

function give(event: ClipboardEvent, { text, entered }: Copied): void {
  event.clipboardData?.setData('text/plain', text);
  event.clipboardData?.setData(ENTERED_TYPE, entered);
}

/**
 * Puts cells on the clipboard, from a button. The clipboard that is written to by calls takes no entry of our own in
 * every browser, so that the browser's own copying is asked for first; where it refuses, what is shown goes alone.
 * @returns whether the browser allowed it.
 */
export async function writeClipboard(copied: Copied): Promise<boolean> {
  const { text } = copied;
  const done = new AbortController();
  let isGiven = false as boolean;
  addEventListener('copy', (event) => {
    event.preventDefault();
    event.stopImmediatePropagation();
    give(event, copied);
    isGiven = true;
  }, { capture: true, signal: done.signal });
  // The one call that hands the page a clipboard of the event's own kind (Clipboard API and events, 6.1).
  // eslint-disable-next-line @typescript-eslint/no-deprecated -- nothing came in its place for a page's own entries
  const isTaken = document.execCommand('copy');
  done.abort();
  if (isTaken && isGiven) return true;
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    // Refused by the page's permissions policy, or absent without a secure context.
    return false;
  }
}

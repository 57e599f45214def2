/** What the grid does with the clipboard. */
export interface ClipboardHost {
  /** Whether keys and the clipboard are the grid's now: it has the focus, and no cell is being edited. */
  readonly takesClipboard: boolean;
  copiedText(): string;
  cutDone(): void;
  pasteText(text: string): void;
}

/**
 * Listens for copy, cut and paste while the grid has the focus. Only plain text is read and written: HTML from a
 * clipboard would have to be parsed, which a strict content security policy reports.
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
    event.clipboardData?.setData('text/plain', host.copiedText());
    if (event.type === 'cut') host.cutDone();
  };
  document.addEventListener('copy', copy, options);
  document.addEventListener('cut', copy, options);
  document.addEventListener('paste', (event) => {
    if (!mine(event)) return;
    event.preventDefault();
    event.stopPropagation();
    host.pasteText(event.clipboardData?.getData('text/plain') ?? '');
  }, options);
  return () => { ended.abort(); };
}

/** Whether a node holds an element, across shadow roots. */
function isAround(node: Node, element: Element): boolean {
  let at: Node | null = element;
  while (at !== null && at !== node) at = at instanceof ShadowRoot ? at.host : at.parentNode;
  return at === node;
}

/** Puts a text on the clipboard, from a button. @returns whether the browser allowed it. */
export async function writeClipboard(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    // Refused by the page's permissions policy, or absent without a secure context.
    return false;
  }
}

import type Handsontable from 'handsontable/base';

/**
 * What grid library 18.1.1 needs in a shadow root. Each part can go when a release has the fix named beside it.
 * @returns a function that takes the listeners away.
 */
export function fixShadowRoot(hot: Handsontable, box: HTMLElement): () => void {
  const ended = new AbortController();
  const { signal } = ended;
  let leaving = false;

  // Tabbing in selects no cell, as the library's listener on the window sees the host: its pull request 13499.
  box.addEventListener('keydown', (event) => {
    leaving = event.key === 'Tab';
  }, { capture: true, signal });
  box.addEventListener('focusin', (event) => {
    const target = event.target as HTMLElement;
    if (!target.classList.contains('htFocusCatcher')) {
      leaving = false;
      if (!hot.isListening()) hot.listen();
      return;
    }
    if (leaving) return;
    const range = hot.getSelectedRangeActive()?.highlight;
    hot.selectCell(Math.max(0, range?.row ?? 0), Math.max(0, range?.col ?? 0));
    hot.listen();
  }, { signal });

  // The library goes on listening when the focus has left by key, so that Delete on a button would empty cells.
  box.addEventListener('focusout', (event) => {
    const root = box.getRootNode() as ShadowRoot;
    const to = event.relatedTarget;
    if (to instanceof Node && !root.contains(to)) hot.unlisten();
    if (to === null) leaving = false;
  }, { signal });

  // A tap selects nothing, as the target is asked for after the event has been retargeted to the host: no issue known.
  box.addEventListener('touchstart', (event) => {
    Object.defineProperty(event, 'target', { configurable: true, value: event.composedPath()[0] });
  }, { capture: true, passive: true, signal });

  // A cell of the columns that stay in view, half out of it, is brought into view by the browser when it takes the
  // focus: only these columns would be scrolled, and tags would stand beside figures of other rows. No issue known.
  box.addEventListener('scroll', ({ target }) => {
    if (!(target instanceof HTMLElement) || !target.matches('.ht_clone_inline_start > .wtHolder')) return;
    const rows = box.querySelector('.ht_master > .wtHolder');
    if (rows !== null && target.scrollTop !== rows.scrollTop) target.scrollTop = rows.scrollTop;
  }, { capture: true, passive: true, signal });

  // The holder is a tab stop inside an element with role treegrid, which may only own rows.
  for (const holder of hot.rootElement.querySelectorAll('.wtHolder[tabindex]')) holder.removeAttribute('tabindex');

  return () => { ended.abort(); };
}

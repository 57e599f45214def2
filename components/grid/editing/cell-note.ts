import { zoomOf } from '../../look/index.ts';

/** What is said beside a cell, until the next key or click; it takes no focus and is spoken elsewhere. */
export class CellNote {
  readonly #element = document.createElement('div');
  #shown: AbortController | undefined;

  /** @param layer where it is put: inside the shadow root, outside the grid. */
  constructor(layer: HTMLElement) {
    this.#element.className = 'note';
    this.#element.popover = 'manual';
    this.#element.setAttribute('aria-hidden', 'true');
    layer.append(this.#element);
  }

  /** @param beside the box of the cell, as it is seen. */
  show(text: string, beside: DOMRect): void {
    const element = this.#element;
    this.hide();
    element.textContent = text;
    element.showPopover();
    const zoom = zoomOf(element);
    const { width, height } = element.getBoundingClientRect();
    // The list of an editor opens below: above the cell, the note covers neither.
    const top = beside.top - height >= 0 ? beside.top - height : beside.bottom;
    element.style.top = `${top / zoom}px`;
    element.style.left = `${Math.max(0, Math.min(beside.left, innerWidth - width)) / zoom}px`;
    this.#shown = new AbortController();
    const { signal } = this.#shown;
    const hide = (event: Event): void => {
      // A key that is held for another is none yet.
      if (!(event instanceof KeyboardEvent) || !['Control', 'Shift', 'Alt', 'Meta'].includes(event.key)) this.hide();
    };
    // The key or click that called it up is still on its way.
    setTimeout(() => {
      if (signal.aborted) return;
      for (const name of ['keydown', 'mousedown', 'wheel'] as const) {
        document.addEventListener(name, hide, { capture: true, passive: true, signal });
      }
    });
  }

  hide(): void {
    this.#shown?.abort();
    if (this.#element.matches(':popover-open')) this.#element.hidePopover();
  }
}

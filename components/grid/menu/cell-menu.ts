import { html, nothing, render } from 'lit';
import type { Words } from '../../../src/words/index.ts';
import { zoomOf } from '../../look/index.ts';
import type { MenuCommand, MenuEntry } from './menu-entries.ts';

export { menuEntries } from './menu-entries.ts';

/** Where a menu opens, in pixels of the window. */
export interface MenuPoint {
  readonly x: number;
  readonly y: number;
}

/** What a menu asks of the grid. */
export interface MenuHost {
  /** Where it is put: inside the shadow root, outside the grid. */
  readonly layer: HTMLElement;
  /** Gives the cells the focus again. */
  leave(): void;
  take(command: MenuCommand): void;
}

/** The menu of commands on cells, rows and headings: arrows go through it, Escape and a click elsewhere close it. */
export class CellMenu {
  readonly #element: HTMLElement;
  readonly #host: MenuHost;
  #open: AbortController | undefined;

  constructor(host: MenuHost) {
    this.#host = host;
    this.#element = document.createElement('div');
    this.#element.className = 'cell-menu';
    this.#element.popover = 'manual';
    this.#element.setAttribute('role', 'menu');
    this.#element.addEventListener('keydown', (event) => { this.#onKeydown(event); });
    // No cell is selected, nor another menu opened, by what is done here.
    for (const name of ['mousedown', 'contextmenu'] as const) {
      this.#element.addEventListener(name, (event) => {
        event.preventDefault();
        event.stopPropagation();
      });
    }
    host.layer.append(this.#element);
  }

  open(groups: readonly (readonly MenuEntry[])[], at: MenuPoint, words: Words): void {
    this.#open?.abort();
    this.#open = new AbortController();
    const { signal } = this.#open;
    const element = this.#element;
    element.setAttribute('aria-label', words.say('Commands'));
    render(groups.map((group, place) => html`${place > 0 ? html`<div role="separator"></div>` : nothing}
      ${group.map(({ command, title, keys, disabled }) => html`<button type="button" role="menuitem" tabindex="-1" data-entry=${command}
        aria-disabled=${disabled} @click=${() => { if (!disabled) this.#take(command); }}>
        <span>${words.say(title)}</span><kbd>${words.say(keys)}</kbd></button>`)}`), element);
    element.showPopover();
    this.#position(at);
    this.#entries[0]?.focus();
    document.addEventListener('mousedown', (event) => {
      if (!event.composedPath().includes(element)) this.#close();
    }, { capture: true, signal });
    for (const name of ['resize', 'blur'] as const) addEventListener(name, () => { this.#close(); }, { signal });
  }

  #take(command: MenuCommand): void {
    this.#close();
    this.#host.leave();
    this.#host.take(command);
  }

  #close(): void {
    this.#open?.abort();
    this.#open = undefined;
    if (this.#element.matches(':popover-open')) this.#element.hidePopover();
  }

  get #entries(): HTMLElement[] {
    return [...this.#element.querySelectorAll<HTMLElement>('[role=menuitem]')];
  }

  #onKeydown(event: KeyboardEvent): void {
    const entries = this.#entries;
    const { length } = entries;
    const at = entries.indexOf((this.#element.getRootNode() as ShadowRoot).activeElement as HTMLElement);
    // The grid hears nothing of keys that are meant for the menu.
    event.stopPropagation();
    if (event.key === 'Escape' || event.key === 'Tab') {
      this.#close();
      this.#host.leave();
    } else if (event.key === 'ArrowDown') entries[(at + 1) % length]!.focus();
    else if (event.key === 'ArrowUp') entries[(at - 1 + length) % length]!.focus();
    else if (event.key === 'Home') entries[0]!.focus();
    else if (event.key === 'End') entries.at(-1)!.focus();
    else if (event.key === 'Enter' || event.key === ' ') entries[at]?.click();
    else if (event.key.length === 1) {
      const begins = (entry: HTMLElement) => entry.textContent.trim().toLowerCase().startsWith(event.key.toLowerCase());
      [...entries.slice(at + 1), ...entries.slice(0, at + 1)].find(begins)?.focus();
    } else return;
    event.preventDefault();
  }

  #position({ x, y }: MenuPoint): void {
    const { style } = this.#element;
    const zoom = zoomOf(this.#element);
    const { width, height } = this.#element.getBoundingClientRect();
    style.left = `${Math.max(0, Math.min(x, innerWidth - width)) / zoom}px`;
    style.top = `${Math.max(0, y + height <= innerHeight ? y : y - height) / zoom}px`;
  }
}

import type Handsontable from 'handsontable/base';
import { html, nothing, render } from 'lit';
import { loadingBar, statusMark } from '../../look/index.ts';
import type { GridModel } from '../grid-model.ts';
import type { HeadingLine } from '../lines/index.ts';
import { groupFigures } from './heading-text.ts';

/** A heading and the place of its line. */
interface Placed {
  readonly line: HeadingLine;
  readonly index: number;
}

/**
 * Draws the headings of groups over their lines, and keeps the one of the first visible row in view until the next
 * pushes it out. It lies over the grid, takes no pointer, and is hidden from screen readers, which read the cell behind
 * each heading.
 */
export class HeadingLayer {
  readonly #hot: Handsontable;
  readonly #box: HTMLElement;
  readonly #holder: HTMLElement;
  readonly #elements = new Map<HeadingLine, HTMLElement>();
  #model: GridModel | undefined;
  #headings: readonly Placed[] = [];

  constructor(hot: Handsontable, box: HTMLElement) {
    this.#hot = hot;
    this.#box = box;
    this.#holder = hot.rootElement.querySelector<HTMLElement>('.ht_master .wtHolder')!;
    this.#holder.addEventListener('scroll', this.#place, { passive: true });
  }

  /** Height [px] of the heading that is kept in view; 0 without headings. */
  get height(): number {
    return this.#headings.length === 0 ? 0 : this.#rowHeight;
  }

  /** Draws the headings of a model again, with their figures. */
  draw(model: GridModel): void {
    if (this.#model?.lines !== model.lines) {
      this.#headings = model.lines.flatMap((line, index) => (line.kind === 'heading' ? [{ line, index }] : []));
      for (const element of this.#elements.values()) element.remove();
      this.#elements.clear();
    }
    this.#model = model;
    this.#box.hidden = this.#headings.length === 0;
    for (const [line, element] of this.#elements) this.#fill(line, element);
    this.#place();
  }

  destroy(): void {
    this.#holder.removeEventListener('scroll', this.#place);
    this.#box.replaceChildren();
    this.#box.hidden = true;
  }

  get #rowHeight(): number {
    return this.#hot.stylesHandler.getDefaultRowHeight() ?? 0;
  }

  #fill(line: HeadingLine, element: HTMLElement): void {
    const { title, purpose, sentence, rows, loading, target, status } = groupFigures(this.#model!, line);
    render(html`
      <b class=${line.folded ? 'folded' : 'open'}>${title}</b>
      <span class="quiet purpose">${purpose}</span>
      ${loading === null && status === undefined ? nothing : html`<span class="gauge">${loadingBar(loading, target, status ?? 'note')}</span>`}
      <bdi class="sentence">${sentence}</bdi>
      ${status === undefined ? nothing : statusMark(status, this.#model!.words)}
      <bdi class="quiet rows">${rows}</bdi>
    `, element);
  }

  /** Puts the headings that are in view where their lines are. */
  readonly #place = (): void => {
    if (this.#headings.length === 0) return;
    const head = this.#hot.rootElement.querySelector<HTMLElement>('.ht_clone_top .htCore thead');
    const top = head?.offsetHeight ?? 0;
    const height = this.#rowHeight;
    this.#box.style.insetBlockStart = `${top}px`;
    this.#box.style.inlineSize = `${this.#holder.clientWidth}px`;
    this.#box.style.blockSize = `${Math.max(0, this.#holder.clientHeight - top)}px`;
    const scrolled = this.#holder.scrollTop;
    const shown = new Map<HeadingLine, number>();
    let pinned: Placed | undefined;
    let next = Infinity;
    for (const placed of this.#headings) {
      const at = placed.index * height - scrolled;
      if (at <= 0) pinned = placed;
      else if (next === Infinity) next = at;
      if (at > 0 && at < this.#holder.clientHeight) shown.set(placed.line, at);
    }
    if (pinned !== undefined) shown.set(pinned.line, Math.min(0, next - height));
    this.#show(shown, height);
  };

  #show(shown: ReadonlyMap<HeadingLine, number>, height: number): void {
    for (const [line, element] of this.#elements) {
      if (shown.has(line)) continue;
      element.remove();
      this.#elements.delete(line);
    }
    for (const [line, at] of shown) {
      let element = this.#elements.get(line);
      if (element === undefined) {
        element = document.createElement('div');
        element.className = 'group';
        this.#fill(line, element);
        this.#elements.set(line, element);
        this.#box.append(element);
      }
      element.style.transform = `translateY(${at}px)`;
      element.style.blockSize = `${height}px`;
    }
  }
}

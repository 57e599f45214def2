import { zoomOf } from '../../look/index.ts';
import { aliasFor, matching, type Suggested } from './suggestions.ts';

/** Most words drawn at a time; typing narrows the list down. */
const MOST_SHOWN = 200;

let lists = 0;

/**
 * The list under an editor, from which a word may be taken. It lies in the top layer, so that nothing cuts it off and
 * it is not inert beside a modal dialog of the page.
 */
export class SuggestionList {
  readonly element: HTMLUListElement;
  readonly #input: HTMLInputElement | HTMLTextAreaElement;
  readonly #take: (word: string) => void;
  #words: readonly Suggested[] = [];
  #shown: readonly Suggested[] = [];
  #at = -1;
  #closed = false;

  /** @param take called with the word that a person chose with the pointer. */
  constructor(input: HTMLInputElement | HTMLTextAreaElement, take: (word: string) => void) {
    this.#input = input;
    this.#take = take;
    lists += 1;
    this.element = document.createElement('ul');
    this.element.id = `suggestions-${lists}`;
    this.element.className = 'suggestions';
    this.element.popover = 'manual';
    this.element.setAttribute('role', 'listbox');
    // The editor keeps the focus; the word is taken before the grid sees a click outside its cells.
    this.element.addEventListener('mousedown', (event) => {
      event.preventDefault();
      event.stopPropagation();
      const index = [...this.element.children].indexOf((event.target as Element).closest('li')!);
      const shown = this.#shown[index];
      if (shown !== undefined) this.#take(shown.word);
    });
  }

  get isOpen(): boolean {
    return this.element.isConnected && this.element.matches(':popover-open');
  }

  /** The word that is highlighted, by typing or by the arrow keys. */
  get chosen(): string | undefined {
    return this.#shown[this.#at]?.word;
  }

  /**
   * Shows the list under a box, with the word that the cell holds reached.
   * @param closed only these words are allowed, so that the beginning of one is enough.
   */
  open(words: readonly Suggested[], held: string, under: DOMRect, closed: boolean): void {
    this.#words = words;
    this.#closed = closed;
    this.#fill(words, '');
    this.#reach(words.findIndex(({ word }) => word === held));
    if (this.#shown.length === 0) return;
    this.element.showPopover();
    this.#position(under);
    const input = this.#input;
    input.setAttribute('role', 'combobox');
    input.setAttribute('aria-autocomplete', 'list');
    input.setAttribute('aria-controls', this.element.id);
    input.setAttribute('aria-expanded', 'true');
    this.#scrollToReached();
  }

  /**
   * Narrows the list down to the words that hold what is typed, by name or alias. A word that equals it is highlighted.
   * Else it is the first one that begins so, or of whose aliases one does, where only words of the list are allowed,
   * and elsewhere the only one, where two letters or more are typed: with digits, R1 may be meant beside R10.
   */
  narrow(typed: string): void {
    const text = typed.trim().toLowerCase();
    this.#fill(matching(this.#words, typed), text);
    const names = ({ word, aliases }: Suggested) => [word, ...aliases].map((name) => name.toLowerCase());
    const same = this.#shown.findIndex((each) => names(each).includes(text));
    const begun = this.#shown.flatMap((each, place) =>
      (names(each).some((name) => name.startsWith(text)) ? [place] : []));
    const isMeant = this.#closed || (begun.length === 1 && /^\P{N}{2,}$/u.test(text));
    this.#reach(text === '' ? -1 : same >= 0 ? same : isMeant ? begun[0] ?? -1 : -1);
    this.element.toggleAttribute('data-empty', this.#shown.length === 0);
  }

  /** Goes on by a number of words; from the end it goes no further. */
  step(by: number): void {
    this.#reach(Math.min(this.#shown.length - 1, Math.max(0, this.#at + by)));
    this.#scrollToReached();
  }

  close(): void {
    if (this.isOpen) this.element.hidePopover();
    this.#at = -1;
    for (const name of ['role', 'aria-autocomplete', 'aria-controls', 'aria-expanded', 'aria-activedescendant']) {
      this.#input.removeAttribute(name);
    }
  }

  #fill(words: readonly Suggested[], typed: string): void {
    this.#shown = words.slice(0, MOST_SHOWN);
    this.element.replaceChildren(...this.#shown.map((shown, index) => {
      const item = document.createElement('li');
      item.id = `${this.element.id}-${index}`;
      item.setAttribute('role', 'option');
      item.textContent = shown.word;
      const alias = aliasFor(shown, typed);
      if (alias !== undefined) item.append(Object.assign(document.createElement('small'), { textContent: ` (${alias})` }));
      return item;
    }));
  }

  #reach(index: number): void {
    this.#at = index;
    [...this.element.children].forEach((item, place) => item.setAttribute('aria-selected', String(place === index)));
    if (index < 0) this.#input.removeAttribute('aria-activedescendant');
    else this.#input.setAttribute('aria-activedescendant', `${this.element.id}-${index}`);
  }

  #scrollToReached(): void {
    this.element.children[this.#at]?.scrollIntoView({ block: 'nearest' });
  }

  #position(under: DOMRect): void {
    const { style } = this.element;
    // Boxes are measured as they are seen, and styles are in pixels of the page's zoom.
    const zoom = zoomOf(this.element);
    style.minInlineSize = `${under.width / zoom}px`;
    const { width, height } = this.element.getBoundingClientRect();
    const fitsBelow = under.bottom + height <= innerHeight || under.top < height;
    style.top = `${(fitsBelow ? under.bottom : under.top - height) / zoom}px`;
    style.left = `${Math.max(0, Math.min(under.left, innerWidth - width)) / zoom}px`;
  }
}

/** So much of texts is remembered [characters]: a page that keeps values has few of them on the way at a time. */
const MOST_CHARACTERS = 8_000_000;

/** A state of the schedule, named by the action after which it was so; by none where nothing was done. */
export interface ReadState {
  readonly after: object | undefined;
}

/** Remembers the values that a page read, so that it can say which of them it has kept. */
export class ReadValues {
  #read: (ReadState & { readonly text: string })[] = [];

  /** @param after the last action. */
  note(text: string, after: object | undefined): void {
    this.#read = [...this.#read.filter((each) => each.text !== text), { text, after }];
    const isTooMuch = () => this.#read.reduce((sum, each) => sum + each.text.length, 0) > MOST_CHARACTERS;
    while (this.#read.length > 1 && isTooMuch()) this.#read.shift();
  }

  /** The state that was kept; those before it are forgotten. @returns `undefined` where the text is not known. */
  kept(text: string): ReadState | undefined {
    const index = this.#read.findIndex((each) => each.text === text);
    return index === -1 ? undefined : this.#read.splice(0, index + 1).at(-1);
  }

  /** All of what there is was kept. */
  keptNow(after: object | undefined): ReadState {
    this.forget();
    return { after };
  }

  forget(): void {
    this.#read = [];
  }
}

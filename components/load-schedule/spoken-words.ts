import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { ENGLISH, languageOf, loadWords, makeWords, type Words } from '../../src/words/index.ts';

/** The language in which an element speaks: loads its words, and has the element wait for them before it shows anything. */
export class SpokenWords implements ReactiveController {
  words: Words = ENGLISH;
  /** Settled as soon as the words asked for last are there; absent while nothing is waited for. */
  ready: Promise<void> | undefined;
  readonly #host: ReactiveControllerHost;
  readonly #spoken: (words: Words) => void;
  readonly #failed: () => void;
  #locale = 'en';

  /**
   * @param spoken called when other words are there.
   * @param failed called when words could not be loaded, and English takes their place.
   */
  constructor(host: ReactiveControllerHost, spoken: (words: Words) => void, failed: () => void) {
    this.#host = host;
    this.#spoken = spoken;
    this.#failed = failed;
    host.addController(this);
  }

  hostConnected(): void { /* the element says which language its place has */ }

  /** Speaks the language of a locale from now on. */
  speak(locale: string): void {
    if (locale === this.#locale) return;
    this.#locale = locale;
    if (languageOf(locale) === 'en') this.#take(makeWords(locale));
    else {
      const ready: Promise<void> = this.#load(locale).finally(() => {
        if (this.ready === ready) this.ready = undefined;
      });
      this.ready = ready;
    }
  }

  async #load(locale: string): Promise<void> {
    let words: Words;
    try {
      words = await loadWords(locale);
    } catch {
      // Without a network the page has no catalogue, and the figures matter more than the language.
      if (locale === this.#locale) {
        this.#take(makeWords(locale));
        this.#failed();
      }
      return;
    }
    if (locale === this.#locale) this.#take(words);
  }

  #take(words: Words): void {
    this.words = words;
    this.#spoken(words);
    this.#host.requestUpdate();
  }
}

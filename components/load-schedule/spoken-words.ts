import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { ENGLISH, languageOf, loadWords, makeWords, type Words } from '../../src/words/index.ts';
import { localeOf, rootsOf } from './locale-of.ts';
import { WORDS_NOT_LOADED } from './words-not-loaded.ts';

/**
 * The language in which an element speaks, that of its place on the page: heeds the place, loads the words, and has the
 * element wait for them before it shows anything.
 */
export class SpokenWords implements ReactiveController {
  words: Words = ENGLISH;
  /** Settled as soon as the words asked for last are there; absent while nothing is waited for. */
  ready: Promise<void> | undefined;
  readonly #host: ReactiveControllerHost & Element;
  readonly #spoken: (words: Words) => void;
  readonly #failed: (sentence: string) => void;
  #observer: MutationObserver | undefined;
  #locale = 'en';

  /**
   * @param spoken called when other words are there.
   * @param failed called when words could not be loaded, and English takes their place, with what a person is to be
   * told.
   */
  constructor(
    host: ReactiveControllerHost & Element, spoken: (words: Words) => void, failed: (sentence: string) => void
  ) {
    this.#host = host;
    this.#spoken = spoken;
    this.#failed = failed;
    host.addController(this);
  }

  hostConnected(): void {
    this.moved();
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }

  /** Heeds another place on the page. */
  moved(): void {
    this.#observer?.disconnect();
    const observer = this.#observer = new MutationObserver(() => { this.heed(); });
    for (const root of rootsOf(this.#host)) observer.observe(root, { attributeFilter: ['lang'], subtree: true });
    this.heed();
  }

  /** Speaks the language that the element's place has now. */
  heed(): void {
    const locale = localeOf(this.#host);
    if (locale === this.#locale) return;
    this.#locale = locale;
    const language = languageOf(locale);
    if (language === 'en') this.#take(makeWords(locale));
    else {
      const ready: Promise<void> = this.#load(locale, WORDS_NOT_LOADED[language]).finally(() => {
        if (this.ready === ready) this.ready = undefined;
      });
      this.ready = ready;
    }
  }

  async #load(locale: string, whenNotLoaded: string): Promise<void> {
    let words: Words;
    try {
      words = await loadWords(locale);
    } catch {
      // Without a network the page has no catalogue, and the figures matter more than the language.
      if (locale === this.#locale) {
        this.#take(makeWords(locale));
        this.#failed(whenNotLoaded);
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

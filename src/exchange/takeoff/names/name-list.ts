import type { Words } from '../../../words/index.ts';
import { decisionOf, type TakeoffDecisions } from '../decisions.ts';
import { deviceName } from './device-name.ts';
import { TypeIndex, type TypeMatch } from './type-index.ts';

/** A name that devices are called by in a takeoff, and what it means. */
export interface TakeoffName {
  /** Stays the same as long as the name does, but for case, spaces and punctuation; decisions are kept by it. */
  readonly key: string;
  /** What the devices are called; then, where it stands apart, what describes them. */
  readonly texts: readonly string[];
  readonly match: TypeMatch;
  /** `undecided`: a person must say which type it means. */
  readonly state: 'matched' | 'confirmed' | 'new' | 'left-out' | 'undecided';
  /** Tag of its device type; for `new` that of the type to be added; `null` where there is none yet. */
  readonly type: string | null;
  /** Why, in one sentence. */
  readonly reason: string;
}

/** The names of a takeoff, each matched once. */
export class NameList {
  readonly #index: TypeIndex;
  readonly #decisions: TakeoffDecisions;
  readonly #words: Words;
  readonly #bySpelling = new Map<string, TakeoffName>();
  /** Tags of new types by the key of what devices of that type are called. */
  readonly #newTypes = new Map<string, string>();

  constructor(index: TypeIndex, decisions: TakeoffDecisions, words: Words) {
    this.#index = index;
    this.#decisions = decisions;
    this.#words = words;
  }

  /** Every name that was asked for, in that order, spellings that are the same to a reader once. */
  get all(): TakeoffName[] {
    const byKey = new Map<string, TakeoffName>();
    for (const name of this.#bySpelling.values()) if (!byKey.has(name.key)) byKey.set(name.key, name);
    return [...byKey.values()];
  }

  /** What a device that is called so is. */
  find(texts: readonly string[]): TakeoffName {
    const spelling = JSON.stringify(texts);
    const known = this.#bySpelling.get(spelling);
    if (known !== undefined) return known;
    const key = texts.map((text) => deviceName(text).key).join(' | ');
    const match = this.#index.match(texts);
    const name: TakeoffName = { key, texts, match, ...this.#meaning(key, texts, match) };
    this.#bySpelling.set(spelling, name);
    return name;
  }

  #meaning(key: string, texts: readonly string[], match: TypeMatch): Pick<TakeoffName, 'state' | 'type' | 'reason'> {
    const words = this.#words;
    const name = texts.join(', ');
    const decision = decisionOf(this.#decisions.names, key);
    if (decision === 'leave-out') {
      return { state: 'left-out', type: null, reason: words.say('“{name}” is left out by decision.', { name }) };
    }
    if (decision === 'new') return this.#newType(texts);
    if (decision !== undefined) {
      const { type } = decision;
      if (this.#index.has(type)) {
        return { state: 'confirmed', type, reason: words.say('“{name}” was confirmed to be {type}.', { name, type }) };
      }
      return {
        state: 'undecided', type: null,
        reason: words.say('There is no type {type}. Choose another one for “{name}”.', { name, type }),
      };
    }
    const { by, type, candidates } = match;
    if (by === 'exact') {
      const isSame = texts.includes(type!);
      return {
        state: 'matched', type,
        reason: isSame
          ? words.say('It has the name of its type.')
          : words.say('“{name}” is the name of {type}.', { name, type: type! }),
      };
    }
    if (by === 'alias') {
      return { state: 'matched', type, reason: words.say('“{name}” is an alias of {type}.', { name, type: type! }) };
    }
    if (by === 'none') return this.#newType(texts);
    const types = candidates.map((each) => `${each.type} (${words.number(each.score, 2)})`).join(', ');
    return {
      state: 'undecided', type: null,
      reason: words.say('“{name}” is like {types}. Confirm the type, or make it a new one.', { name, types }),
    };
  }

  #newType(texts: readonly string[]): Pick<TakeoffName, 'state' | 'type' | 'reason'> {
    const { key } = deviceName(texts[0]!);
    const type = this.#newTypes.get(key) ?? this.#free(texts[0]!);
    this.#newTypes.set(key, type);
    const reason =
      this.#words.say('“{name}” becomes a new type; of it nothing is known but what the list says.', { name: texts.join(', ') });
    return { state: 'new', type, reason };
  }

  /** A tag that no type bears, as a decision may ask for a new type under the name of one. */
  #free(text: string): string {
    let tag = text;
    for (let number = 2; this.#index.has(tag); number += 1) tag = `${text} (${number})`;
    return tag;
  }
}

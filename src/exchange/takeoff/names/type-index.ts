import type { Cells } from '../../../schedule/index.ts';
import { aliasOf, readAliases } from './aliases.ts';
import { deviceName, type DeviceName } from './device-name.ts';
import { isContained, likeness } from './likeness.ts';

/** A device type that a name may mean, and how like their names are, 0 to 1. */
export interface Candidate {
  readonly type: string;
  readonly score: number;
}

/** How a name was matched: `type` is known for `exact` and `alias`; the others have candidates or none. */
export interface TypeMatch {
  readonly by: 'exact' | 'alias' | 'likeness' | 'none';
  readonly type: string | null;
  /** The likest types, the best first. */
  readonly candidates: readonly Candidate[];
}

/** From here on a name may be a type. Below it, words such as «detector» or «module» alone make two names alike. */
export const LEAST_LIKENESS = 0.55;
/** What a name counts that only contains the words of an alias, or is contained in one. */
const CONTAINED = 0.6;
const MOST_CANDIDATES = 3;

/** The device types of a schedule, to be found by name. */
export class TypeIndex {
  readonly #byName = new Map<string, Set<string>>();
  readonly #byAlias = new Map<string, Set<string>>();
  readonly #names: { readonly type: string; readonly name: DeviceName }[] = [];
  readonly #types = new Set<string>();

  constructor(types: readonly Cells[]) {
    for (const { type, aliases } of types) {
      if (typeof type !== 'string' || type.trim() === '') continue;
      this.#types.add(type);
      this.#add(this.#byName, type, type);
      for (const alias of readAliases(aliases)) this.#add(this.#byAlias, alias, type);
    }
  }

  /** Whether there is a type with this tag. */
  has(type: string): boolean {
    return this.#types.has(type);
  }

  /**
   * Finds the type that a device is called by.
   * @param texts its names, the first one first: what stands as its type and what describes it.
   */
  match(texts: readonly string[]): TypeMatch {
    const names = texts.map((text) => deviceName(text));
    // What was confirmed for both texts together goes before what each of them may mean.
    for (const keys of [[deviceName(aliasOf(texts.join(', '))).key], names.map(({ key }) => key)]) {
      const exact = this.#named(this.#byName, keys);
      const all = new Set([...exact, ...this.#named(this.#byAlias, keys)]);
      const [type] = all;
      if (type === undefined) continue;
      if (all.size === 1) return { by: exact.size === 1 ? 'exact' : 'alias', type, candidates: [] };
      return { by: 'likeness', type: null, candidates: [...all].map((each) => ({ type: each, score: 1 })) };
    }
    const candidates = this.#likest(names);
    return { by: candidates.length > 0 ? 'likeness' : 'none', type: null, candidates };
  }

  #named(index: ReadonlyMap<string, ReadonlySet<string>>, keys: readonly string[]): ReadonlySet<string> {
    return new Set(keys.flatMap((key) => [...index.get(key) ?? []]));
  }

  #add(index: Map<string, Set<string>>, text: string, type: string): void {
    const name = deviceName(text);
    index.set(name.key, (index.get(name.key) ?? new Set()).add(type));
    this.#names.push({ type, name });
  }

  #likest(names: readonly DeviceName[]): Candidate[] {
    const scores = new Map<string, number>();
    for (const { type, name } of this.#names) {
      const score = Math.max(0, ...names.map((each) =>
        Math.max(likeness(each, name), isContained(each, name) ? CONTAINED : 0)));
      if (score >= LEAST_LIKENESS && score > (scores.get(type) ?? 0)) scores.set(type, score);
    }
    const candidates = [...scores].map(([type, score]) => ({ type, score }));
    return candidates.sort((a, b) => b.score - a.score).slice(0, MOST_CANDIDATES);
  }
}

import type { Cells } from '../../schedule/index.ts';
import { isSameData } from '../../schedule/compare/index.ts';

/** What a person says where both sides differ; `both`: these are two things, and each keeps its own. */
export type JoinChoice = 'mine' | 'theirs' | 'both';

/** What has to be decided: both sides changed it, each to something else. Values as in files, `null` for none. */
export interface JoinConflict {
  /** Names it in what a person decides: `supplies/L1/rated`. */
  readonly name: string;
  /**
   * `cell`, `detail`, `revision`, `acceptance`, `list` (a heading or a name of takeoffs), `variant`, `other` (a key
   * that this version does not know): two values. `removed`: a
   * row that one side changed, or reads, and the other removed. `parts`: device rows that were one row, such as shared
   * out ones, whose quantities both changed: those of one side count together, and the values are its rows. `tag`: a
   * row of theirs with a tag that another row of mine has.
   */
  readonly kind: 'cell' | 'removed' | 'parts' | 'tag' | 'detail' | 'revision' | 'acceptance' | 'list' | 'variant' | 'other';
  /** Sheet, tag and key where it is about those; empty else. */
  readonly sheet: string;
  readonly tag: string;
  readonly key: string;
  /** Numbers of its row in both, from 1, and what it holds, where it is about a row; `null` where one has none. */
  readonly row?: { readonly mine: number | null; readonly theirs: number | null; readonly holds: Cells };
  readonly base: unknown;
  readonly mine: unknown;
  readonly theirs: unknown;
  readonly choices: readonly JoinChoice[];
  /** What was decided; `null` where nothing was: then mine stands. */
  readonly choice: JoinChoice | null;
}

/** What a conflict comes to where one side is to count throughout: never nothing in the place of something. */
export function throughout({ kind, base, mine, theirs, choices }: JoinConflict, side: 'mine' | 'theirs'): JoinChoice {
  if (kind === 'cell' && base === null && (mine === null) !== (theirs === null)) return mine === null ? 'theirs' : 'mine';
  return choices.includes(side) ? side : 'mine';
}

/** What the joining of one thing came to. */
export type Joined = 'mine' | 'theirs' | 'conflict';

/**
 * Joins two values against the one that both began with: whichever changed it counts.
 * @param base `undefined` where there is none; then a value counts against nothing at all.
 */
export function joinValues(base: unknown, mine: unknown, theirs: unknown): Joined {
  if (same(mine, theirs)) return 'mine';
  const start = base === undefined ? null : base;
  if (same(start, theirs)) return 'mine';
  return same(start, mine) ? 'theirs' : 'conflict';
}

const same = (one: unknown, other: unknown) => one === other || isSameData(one, other);

/** Gathers what has to be decided, and tells what was. */
export class Decisions {
  readonly conflicts: JoinConflict[] = [];
  readonly #choices: Readonly<Record<string, JoinChoice>>;

  constructor(choices: Readonly<Record<string, JoinChoice>>) {
    this.#choices = choices;
  }

  /** What was decided under a name. */
  of(name: string): JoinChoice | undefined {
    return Object.hasOwn(this.#choices, name) ? this.#choices[name] : undefined;
  }

  /** Whether a cell of the row with a name was decided to be two things. */
  isBoth(name: string): boolean {
    return Object.entries(this.#choices).some(([each, choice]) => choice === 'both' && each.slice(0, each.lastIndexOf('/')) === name);
  }

  /** Asks a person. @param otherwise what stands until something is decided. @returns what was decided, or that. */
  ask(conflict: Omit<JoinConflict, 'choice'>, otherwise: JoinChoice = 'mine'): JoinChoice {
    const decided = this.of(conflict.name);
    const choice = decided !== undefined && conflict.choices.includes(decided) ? decided : null;
    this.conflicts.push({ ...conflict, choice });
    return choice ?? otherwise;
  }
}

/**
 * Joins two lists of things by name, in the order of mine; what only theirs has stands behind.
 * @param conflictOf says what is asked where both sides changed one.
 * @param took told the name of each that is taken from theirs.
 */
export function joinByName<Thing>(
  base: ReadonlyMap<string, Thing> | undefined, mine: ReadonlyMap<string, Thing>, theirs: ReadonlyMap<string, Thing>,
  decisions: Decisions, conflictOf: (name: string) => Pick<JoinConflict, 'name' | 'kind' | 'sheet' | 'tag' | 'key'>,
  took: (name: string) => void = () => undefined,
): Map<string, Thing> {
  const joined = new Map<string, Thing>();
  for (const name of new Set([...mine.keys(), ...theirs.keys()])) {
    // Without a base it is not known what was, which is another thing than that nothing was.
    const was = base === undefined ? undefined : base.get(name) ?? null;
    const [own, other] = [mine.get(name) ?? null, theirs.get(name) ?? null];
    const outcome = joinValues(was, own, other);
    const isTheirs = outcome === 'theirs' || (outcome === 'conflict' && decisions.ask({
      ...conflictOf(name), base: was ?? null, mine: own, theirs: other, choices: ['mine', 'theirs'],
    }) === 'theirs');
    if (isTheirs) took(name);
    const value = isTheirs ? other : own;
    if (value !== null) joined.set(name, value);
  }
  return joined;
}

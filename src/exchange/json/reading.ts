import { message, type Words } from '../../words/index.ts';
import { firstHints } from '../first-hints.ts';
import { MOST_ROWS, ProblemList } from '../problem.ts';

/** What is gathered while a file is read. */
export class Reading {
  readonly words: Words;
  readonly list = new ProblemList();
  /** Sentences about what is kept and means nothing here, each once. */
  readonly kept = new Set<string>();
  readonly hints: string[] = [];

  constructor(words: Words) {
    this.words = words;
  }

  /** Checks that a value is an object; reports it otherwise. An absent one counts as empty. */
  object(value: unknown, path: string, name: string): Readonly<Record<string, unknown>> {
    if (value === undefined) return {};
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Record<string, unknown>;
    // Braces in quotes are no value, which the type of `say` cannot tell.
    this.wrongKind(value, path, this.words.say<string>("{name} must be an object: '{…}'", { name }), 'object');
    return {};
  }

  /** Checks that a value is a list; reports it otherwise. An absent one counts as empty. */
  array(value: unknown, path: string, name: string): readonly unknown[] {
    if (value === undefined) return [];
    if (Array.isArray(value)) {
      if (value.length <= MOST_ROWS) return value;
      const sentence = this.words.say(
        '{name} has {count} rows; at most {most} are read. Split it.', { name, count: value.length, most: MOST_ROWS }
      );
      this.list.add('too-many-rows', path, sentence, { received: String(value.length), expected: String(MOST_ROWS) });
      return [];
    }
    this.wrongKind(value, path, this.words.say('{name} must be a list: […]', { name }), 'array');
    return [];
  }

  /** @param must what should stand there, as a clause without its end. */
  wrongKind(value: unknown, path: string, must: string, expected: string): void {
    const received = KINDS[kindOf(value)];
    const sentence =
      this.words.say('{must}; it is {found}. Put that right.', { must, found: this.words.say(received) });
    this.list.add('wrong-kind', path, sentence, { received, expected });
  }

  /** Takes what was gathered of a part of the file, which stands at `path` and is called `name`. */
  take({ list, kept, hints }: Reading, path: string, name: string): void {
    const placed = (sentence: string) => this.words.say('{name}: {sentence}', { name, sentence });
    for (const { code, path: within, message, received, expected } of list.problems) {
      this.list.add(code, path + within, placed(message), {
        ...(received === undefined ? {} : { received }), ...(expected === undefined ? {} : { expected }),
      });
    }
    this.list.total += list.total - list.problems.length;
    for (const sentence of kept) this.kept.add(placed(sentence));
    this.hints.push(...hints.map(placed));
  }

  get notes(): string[] {
    return [...firstHints(this.hints, this.words), ...this.kept];
  }
}

const KINDS = {
  null: message('null'), list: message('a list'), object: message('an object'), text: message('a text'),
  number: message('a number'), boolean: message('true or false'),
};

function kindOf(value: unknown): keyof typeof KINDS {
  if (value === null) return 'null';
  if (Array.isArray(value)) return 'list';
  switch (typeof value) {
    case 'object': return 'object';
    case 'string': return 'text';
    case 'number': return 'number';
    default: return 'boolean';
  }
}

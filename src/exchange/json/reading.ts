import { firstHints } from '../first-hints.ts';
import { ProblemList } from '../problem.ts';

/** What is gathered while a file is read. */
export class Reading {
  readonly list = new ProblemList();
  /** Sentences about keys that are not known, each once, without their end. */
  readonly unknownKeys = new Set<string>();
  readonly hints: string[] = [];

  /** Checks that a value is an object; reports it otherwise. An absent one counts as empty. */
  object(value: unknown, path: string, name: string): Readonly<Record<string, unknown>> {
    if (value === undefined) return {};
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Record<string, unknown>;
    this.wrongKind(value, path, `${name} must be an object: {…}`, 'object');
    return {};
  }

  /** Checks that a value is a list; reports it otherwise. An absent one counts as empty. */
  array(value: unknown, path: string, name: string): readonly unknown[] {
    if (value === undefined) return [];
    if (Array.isArray(value)) return value;
    this.wrongKind(value, path, `${name} must be a list: […]`, 'array');
    return [];
  }

  wrongKind(value: unknown, path: string, message: string, expected: string): void {
    const received = kindOf(value);
    this.list.add('wrong-kind', path, `${message}; it is ${received}. Put that right.`, { received, expected });
  }

  get notes(): string[] {
    return [...firstHints(this.hints), ...[...this.unknownKeys].map((text) => `${text}; it is kept and written back.`)];
  }
}

function kindOf(value: unknown): string {
  if (value === null) return 'null';
  if (Array.isArray(value)) return 'a list';
  switch (typeof value) {
    case 'object': return 'an object';
    case 'string': return 'a text';
    case 'number': return 'a number';
    default: return 'true or false';
  }
}

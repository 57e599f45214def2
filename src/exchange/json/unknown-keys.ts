import type { Content } from '../../schedule/index.ts';

/**
 * What a file holds beyond what this version knows, by place. Unknown keys of a row stay in its cells, so that they go
 * wherever the row goes.
 */
export interface UnknownKeys {
  readonly file: Readonly<Record<string, unknown>>;
  readonly details: Readonly<Record<string, unknown>>;
  readonly sheets: Readonly<Record<string, unknown>>;
}

const NONE: UnknownKeys = { file: {}, details: {}, sheets: {} };

/** The unknown keys that a content carries. */
export function unknownOf(content: Content): UnknownKeys {
  return { ...NONE, ...content.unknown };
}

/** Keys that reach the prototype of an object when they are assigned; they have no business in a schedule. */
export function isHarmful(key: string): boolean {
  return key === '__proto__';
}

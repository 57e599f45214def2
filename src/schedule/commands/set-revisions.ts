import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import type { Revision } from '../snapshot.ts';

const KEYS = ['revision', 'date', 'name', 'text'] as const satisfies readonly (keyof Revision)[];

/**
 * Changes that put another history of issues in the place of the present one; none where it is the same. Texts are
 * trimmed.
 * @param revisions the issues, the first one first.
 */
export function setRevisions(document: ScheduleDocument, revisions: readonly Revision[]): Change[] {
  const trimmed =
    revisions.map((each) => ({ ...each, ...Object.fromEntries(KEYS.map((key) => [key, each[key].trim()])) }));
  const isSame = trimmed.length === document.revisions.length
    && trimmed.every((each, index) => KEYS.every((key) => each[key] === document.revisions[index]![key]));
  return isSame ? [] : [{ op: 'revisions', revisions: trimmed }];
}

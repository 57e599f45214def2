import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import type { Revision } from '../snapshot.ts';

const KEYS = ['revision', 'date', 'name', 'text'] as const satisfies readonly (keyof Revision)[];

/**
 * Changes that put another history of issues in the place of the present one; none where it is the same. Texts are
 * trimmed.
 * @param revisions the issues, the first one first.
 * @throws RangeError when one that is issued would be changed or removed.
 */
export function setRevisions(document: ScheduleDocument, revisions: readonly Revision[]): Change[] {
  const trimmed =
    revisions.map((each) => ({ ...each, ...Object.fromEntries(KEYS.map((key) => [key, each[key].trim()])) }));
  const lost = document.revisions.find((issued) => issued.digest !== undefined
    && !trimmed.some((each) => isSame(issued, each) && each.digest === issued.digest && each.state === issued.state));
  if (lost !== undefined) throw new RangeError(`Revision ${lost.revision} is issued, and stays as it is.`);
  const stays = trimmed.length === document.revisions.length
    && trimmed.every((each, index) => isSame(each, document.revisions[index]!));
  return stays ? [] : [{ op: 'revisions', revisions: trimmed }];
}

function isSame(a: Revision, b: Revision): boolean {
  return KEYS.every((key) => a[key] === b[key]);
}

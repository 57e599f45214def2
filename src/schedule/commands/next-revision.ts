import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import type { Details, Revision } from '../snapshot.ts';

/** What a schedule says of its issues. */
interface Issued {
  readonly details: Details;
  readonly revisions: readonly Revision[];
}

/** The issue that the schedule is, as long as nothing was changed since; `undefined` where it is being worked on. */
export function presentIssue({ details, revisions }: Issued): Revision | undefined {
  const last = revisions.findLast(({ digest }) => digest !== undefined);
  return last?.revision === details.revision ? last : undefined;
}

/**
 * What an action changes besides what it is about: the first one after an issue begins the next revision, whose date
 * is open.
 * @returns no change where nothing is issued, or the action is about the history, variants or the look alone.
 */
export function beginRevision(document: ScheduleDocument, changes: readonly Change[]): Change[] {
  const issue = presentIssue(document);
  if (issue === undefined || changes.every(({ op }) => op === 'revisions' || op === 'variants')) return [];
  const details = changes.findLast((change) => change.op === 'details')?.details ?? document.details;
  if (details.revision !== issue.revision) return [];
  const { date, ...others } = details;
  // A date that comes with the action is that of the next revision.
  const dated = date === document.details.date ? others : details;
  return [{ op: 'details', details: { ...dated, revision: nextRevision(document.revisions) } }];
}

/** The name of the revision after those of a history: B after A, 03 after 02, AA after Z; A is the first. */
export function nextRevision(revisions: readonly Revision[]): string {
  let name = revisions.at(-1)?.revision ?? '';
  do {
    name = nextName(name);
  } while (revisions.some(({ revision }) => revision === name));
  return name;
}

function nextName(name: string): string {
  const number = /\d+$/.exec(name)?.[0];
  if (number !== undefined) {
    return name.slice(0, -number.length) + String(Number(number) + 1).padStart(number.length, '0');
  }
  if (name === '') return 'A';
  const [before, last] = [name.slice(0, -1), name.slice(-1)];
  if (last === 'Z' || last === 'z') {
    const first = last === 'Z' ? 'A' : 'a';
    return (/[A-Za-z]$/.test(before) ? nextName(before) : before + first) + first;
  }
  return /[A-Ya-y]/.test(last) ? before + String.fromCharCode(last.charCodeAt(0) + 1) : `${name}2`;
}

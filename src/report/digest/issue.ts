import { presentIssue, type Change, type Content, type IssueState, type Revision } from '../../schedule/index.ts';
import { scheduleDigest } from './schedule-digest.ts';

/** What a person says of an issue. */
export interface Issue {
  readonly revision: string;
  /** Date as ISO 8601, YYYY-MM-DD. */
  readonly date: string;
  readonly name: string;
  /** What is different from the issue before. */
  readonly text: string;
  readonly state: IssueState;
}

/**
 * Changes that issue a schedule as it is: its details take the revision and the date, and the history gets an entry
 * that stays, with the digest of the schedule without that entry. The next action begins the next revision.
 * @param content what a file of the schedule holds.
 * @throws RangeError when the revision has no name, or the history has one of that name that is issued.
 */
export function issueSchedule(content: Content, issue: Issue): Change[] {
  const trimmed = { ...issue, revision: issue.revision.trim(), name: issue.name.trim(), text: issue.text.trim() };
  const { revision, date } = trimmed;
  if (revision === '') throw new RangeError('An issue needs the name of its revision.');
  const { revisions = [] } = content;
  if (revisions.some((each) => each.revision === revision && each.digest !== undefined)) {
    throw new RangeError(`Revision ${revision} is issued already.`);
  }
  // A line that was written by hand for it becomes the entry.
  const before = revisions.filter((each) => each.revision !== revision);
  const details = { ...content.details, revision, date };
  const digest = scheduleDigest({ ...content, details, revisions: before });
  return [{ op: 'details', details }, { op: 'revisions', revisions: [...before, { ...trimmed, digest }] }];
}

/**
 * The issue that a schedule says it is, and whether it is that to the last value.
 * @returns `undefined` where it says that it is none.
 */
export function checkIssue(content: Content): { readonly issue: Revision; readonly isUnchanged: boolean } | undefined {
  const { details, revisions = [] } = content;
  const issue = presentIssue({ details, revisions });
  return issue && { issue, isUnchanged: issuedDigest(content) === issue.digest };
}

/** The digest of a schedule without the entry of its last issue and what was written in the history since. */
export function issuedDigest(content: Content): string | undefined {
  const { revisions = [] } = content;
  const last = revisions.findLastIndex(({ digest }) => digest !== undefined);
  return last < 0 ? undefined : scheduleDigest({ ...content, revisions: revisions.slice(0, last) });
}

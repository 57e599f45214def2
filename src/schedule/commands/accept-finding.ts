import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import type { Acceptance } from '../snapshot.ts';

/** What tells a finding from all others: its place and its rule. A finding has these keys. */
export type FindingPlace = Pick<Acceptance, 'sheet' | 'tag' | 'rule'> & { readonly key: string };

/** Whether an acceptance is meant for a finding. */
export function isAcceptanceOf({ sheet, tag, rule, key }: Acceptance, finding: FindingPlace): boolean {
  return sheet === finding.sheet && tag === finding.tag && rule === finding.rule && (key ?? finding.key) === finding.key;
}

/**
 * Changes that accept a finding as it is now, with its value and limit; what was accepted of it before is replaced.
 * @param by who accepts it, why, and the date as YYYY-MM-DD.
 * @throws RangeError when name or reason is blank or the date is none: nobody could answer for it.
 */
export function acceptFinding(
  document: ScheduleDocument, finding: FindingPlace & Required<Pick<Acceptance, 'value' | 'limit'>>,
  by: Pick<Acceptance, 'reason' | 'name' | 'date'>,
): Change[] {
  const [reason, name] = [by.reason.trim(), by.name.trim()];
  if (reason === '' || name === '') throw new RangeError('A finding is accepted with a reason and a name.');
  if (!/^\d{4}-\d\d-\d\d$/.test(by.date)) throw new RangeError(`A finding is accepted with a date, YYYY-MM-DD; found “${by.date}”.`);
  const { sheet, tag, rule, key, value, limit } = finding;
  const others = document.accepted.filter((each) => !isAcceptanceOf(each, finding));
  return [{ op: 'accept', accepted: [...others, { sheet, tag, rule, key, reason, name, date: by.date, value, limit }] }];
}

/** Changes that take the acceptance of a finding back; none where it was not accepted. */
export function withdrawAcceptance(document: ScheduleDocument, finding: FindingPlace): Change[] {
  const accepted = document.accepted.filter((each) => !isAcceptanceOf(each, finding));
  return accepted.length === document.accepted.length ? [] : [{ op: 'accept', accepted }];
}

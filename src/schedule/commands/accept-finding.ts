import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import type { RowAcceptance } from '../snapshot.ts';
import type { SheetName } from '../schema/index.ts';

/** What tells a finding from all others: its row, its rule and its column. A finding has these keys. */
export interface FindingPlace {
  readonly sheet: SheetName;
  readonly id: number;
  readonly rule: string;
  readonly key: string;
}

/** Whether an acceptance of a row is meant for one of its findings. */
export function isAcceptanceOf({ rule, key }: RowAcceptance, finding: Pick<FindingPlace, 'rule' | 'key'>): boolean {
  return rule === finding.rule && (key ?? finding.key) === finding.key;
}

/**
 * Changes that accept a finding as it is now, with its value, its limit and how many rows wait; what was accepted of it
 * before is replaced.
 * @param by who accepts it, why, and the date as YYYY-MM-DD.
 * @throws RangeError when name or reason is blank or the date is none: nobody could answer for it.
 */
export function acceptFinding(
  document: ScheduleDocument, finding: FindingPlace & Required<Pick<RowAcceptance, 'value' | 'limit'>> & Pick<RowAcceptance, 'waiting'>,
  by: Pick<RowAcceptance, 'reason' | 'name' | 'date'>,
): Change[] {
  const [reason, name] = [by.reason.trim(), by.name.trim()];
  if (reason === '' || name === '') throw new RangeError('A finding is accepted with a reason and a name.');
  if (!/^\d{4}-\d\d-\d\d$/.test(by.date)) {
    throw new RangeError(`A finding is accepted with a date, YYYY-MM-DD; found “${by.date}”.`);
  }
  const { sheet, id, rule, key, value, limit, waiting } = finding;
  const others = acceptedIn(document, finding).filter((each) => !isAcceptanceOf(each, finding));
  const accepted: RowAcceptance = {
    rule, key, reason, name, date: by.date, value, limit, ...(waiting === undefined ? {} : { waiting }),
  };
  return [{ op: 'accept', sheet, id, accepted: [...others, accepted] }];
}

/** Changes that take the acceptance of a finding back; none where it was not accepted. */
export function withdrawAcceptance(document: ScheduleDocument, finding: FindingPlace): Change[] {
  const { sheet, id } = finding;
  const before = acceptedIn(document, finding);
  const accepted = before.filter((each) => !isAcceptanceOf(each, finding));
  return accepted.length === before.length ? [] : [{ op: 'accept', sheet, id, accepted }];
}

function acceptedIn(document: ScheduleDocument, { sheet, id }: FindingPlace): readonly RowAcceptance[] {
  return document.row(sheet, id)?.accepted ?? [];
}

import type { Finding, Severity } from '../../findings/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { SHEET_NAMES, type SheetName } from '../../schedule/index.ts';
import type { MatchedRows } from '../../schedule/compare/index.ts';

/** A finding that one of two schedules has, or that has another severity than before. */
export interface FindingChange {
  readonly kind: 'came' | 'went' | 'changed';
  readonly sheet: SheetName;
  readonly tag: string;
  /** Number of the row, from 1: in the old schedule for a finding that went, else in the new one. */
  readonly row: number;
  /** The check, and the column that it points to. */
  readonly rule: string;
  readonly key: string;
  /** Severity before; `null` for a finding that came. */
  readonly before: Severity | null;
  /** Severity now; `null` for one that went. */
  readonly after: Severity | null;
  /** What it says, or said. */
  readonly message: string;
}

/** Which findings came, went or are of another severity; one is the same while its row, check and column are. */
export function compareFindings(
  before: LoadSchedule, after: LoadSchedule, matched: Readonly<Record<SheetName, MatchedRows>>,
): FindingChange[] {
  const ids = new Map(SHEET_NAMES.flatMap((sheet) =>
    matched[sheet].pairs.map((pair) => [`${sheet} ${pair.before.id}`, pair.after.id] as const)));
  const nameOf = ({ sheet, rule, key }: Finding, id: number | undefined) => [sheet, id, rule, key].join(' ');
  const left = new Map(before.findings.map((finding) =>
    [nameOf(finding, ids.get(`${finding.sheet} ${finding.id}`) ?? -1 - finding.id), finding]));
  const change = (
    kind: FindingChange['kind'], { sheet, tag, row, rule, key, message }: Finding, was: Severity | null, is: Severity
      | null,
  ): FindingChange => ({ kind, sheet, tag, row, rule, key, before: was, after: is, message });
  const there = after.findings.flatMap((finding) => {
    const name = nameOf(finding, finding.id);
    const old = left.get(name);
    left.delete(name);
    if (old === undefined) return [change('came', finding, null, finding.severity)];
    return old.severity === finding.severity ? [] : [change('changed', finding, old.severity, finding.severity)];
  });
  return [...there, ...[...left.values()].map((finding) => change('went', finding, finding.severity, null))];
}

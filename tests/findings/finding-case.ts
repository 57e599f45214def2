import { expect } from 'vitest';
import type { Finding } from '../../src/findings/index.ts';
import type { CellValue, Content, SheetName } from '../../src/schedule/index.ts';
import { findingsAt, scheduleOf, valueAt } from '../support/schedules.ts';

/** One rule: a schedule in which the first row of its sheet is found to break it, and schedules in which it is not. */
export interface FindingCase {
  readonly rule: string;
  readonly sheet: SheetName;
  readonly sheets: Content['sheets'];
  readonly severity: Finding['severity'];
  readonly key: string;
  readonly value: CellValue;
  readonly limit?: CellValue;
  readonly message: string;
  /** Whether the status of the row suffers. */
  readonly inStatus: boolean;
  /** Schedules about which the rule is silent: exactly at the limit, and put right. */
  readonly silent: readonly Content['sheets'][];
}

const found = (sheets: Content['sheets'], { sheet, rule, key }: FindingCase) =>
  findingsAt(scheduleOf(sheets), sheet).filter((finding) => finding.rule === rule && finding.key === key);

/** Holds a case: what is found and what it says, once; its effect on the status; and the silence. */
export function expectFinding(each: FindingCase): void {
  const { rule, sheet, sheets, severity, key, value, limit = null, message, inStatus, silent } = each;
  const close = (number: CellValue): unknown => typeof number === 'number' ? expect.closeTo(number, 9) : number;
  expect(found(sheets, each)).toEqual([
    expect.objectContaining({ rule, severity, sheet, key, row: 1, value: close(value), limit: close(limit), message }),
  ]);
  if (inStatus) expect(valueAt(scheduleOf(sheets), sheet, 0, 'status')).toBe(severity);
  silent.forEach((other, index) => expect([index, found(other, each)]).toEqual([index, []]));
}

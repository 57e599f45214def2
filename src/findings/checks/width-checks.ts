import type { SheetName } from '../../schedule/index.ts';
import type { Check } from '../check.ts';
import { missingInput } from './limit-checks.ts';

/** A check that a part says how wide it is where the mounting rails of its enclosure are known. */
export function widthMissing(rule: string, sheet: SheetName, message: string): Check {
  const { inStatus: _inStatus, ...check } = missingInput(rule, sheet, 'width', message, (row) =>
    row.numberOf('enclosure', 'rails') !== null && row.numberOf('enclosure', 'railLength') !== null);
  return check;
}

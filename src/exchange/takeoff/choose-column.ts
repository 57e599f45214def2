import type { TakeoffColumn } from './columns.ts';
import { JOINED_FIELDS, type TakeoffField } from './field.ts';
import type { RememberedColumns } from './remembered-columns.ts';

/**
 * What the columns hold after a person chose for one of them: another column that held the same is not read any more,
 * unless several may hold it. Headings that occur twice are told apart by number.
 */
export function chooseColumn(
  columns: readonly TakeoffColumn[], index: number, field: TakeoffField | undefined,
): RememberedColumns {
  return Object.fromEntries(columns.map((column) => {
    const displaced = field !== undefined && column.field === field && !JOINED_FIELDS.has(field);
    const holds = column.index === index ? field : displaced ? undefined : column.field;
    const unique = column.heading !== '' && columns.filter(({ heading }) => heading === column.heading).length === 1;
    return [unique ? column.heading : String(column.index + 1), holds ?? 'ignore'];
  }));
}

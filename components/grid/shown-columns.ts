import { tellsMore, type Touched } from '../../src/engine/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { isAsked, isStatus, SCHEMA, type Column, type SheetName } from '../../src/schedule/index.ts';
import { isOpen } from './look/cell-look.ts';

/**
 * The columns of a sheet that are shown, in the order of the schema but for the status, after the tag. A rare one is
 * out of sight until it is asked for, something stands in it, or something was found there; one that a person hid is
 * until they show it again, or go to a cell of it.
 * @param before what is shown already: nothing vanishes while a person works on the sheet. It is given back where
 * nothing comes to it.
 * @param touched what changed since; everything where it is left out.
 */
export function shownColumns(
  schedule: LoadSchedule, sheet: SheetName, before: readonly Column[] = [], touched?: Touched,
): readonly Column[] {
  const { columns } = SCHEMA[sheet];
  const look = schedule.look(sheet);
  const rare = columns.filter((column) =>
    column.rare !== undefined && !isAsked(look, column) && !before.includes(column));
  const hidden = new Set(rare.map(({ key }) => key));
  if (hidden.size > 0) for (const found of schedule.findings) {
    if (found.sheet === sheet && isOpen(found)) hidden.delete(found.key);
  }
  for (const { key, role } of rare) {
    if (!hidden.has(key) || touched?.concerns(sheet, key) === false) continue;
    const stands = schedule.rows(sheet).some(({ id, cells }) =>
      role === 'input' ? (cells[key] ?? null) !== null : tellsMore(schedule, sheet, id, key));
    if (stands) hidden.delete(key);
  }
  for (const key of look.hidden) if (!before.some((column) => column.key === key)) hidden.add(key);
  const shown = columns.filter((column) => !hidden.has(column.key) && !isStatus(column));
  const all = [
    shown[0]!, ...columns.filter((column) => isStatus(column) && !hidden.has(column.key)), ...shown.slice(1),
  ];
  return all.length === before.length && all.every((column, place) => column === before[place]) ? before : all;
}

import type { LoadSchedule } from '../../../src/load-schedule.ts';
import type { SheetName } from '../../../src/schedule/index.ts';
import type { Grouping } from '../../events/index.ts';
import type { HeadingLine, Line } from './line.ts';

/**
 * The lines of a sheet: its rows as entered, or the device rows under a heading for each supply or branch, in the order
 * of that sheet, and last those that name none.
 * @param canAdd whether a blank line ends the list, in which a person adds a row.
 */
export function buildLines(schedule: LoadSchedule, sheet: SheetName, grouping: Grouping, canAdd: boolean): Line[] {
  const lines: Line[] = grouping === 'entered' || sheet !== 'devices'
    ? schedule.document.rows(sheet).map(({ id }): Line => ({ kind: 'row', id }))
    : groupedLines(schedule, grouping);
  if (canAdd) lines.push({ kind: 'blank' });
  return lines;
}

function groupedLines(schedule: LoadSchedule, by: 'rail' | 'branch'): Line[] {
  const { document } = schedule;
  const sheet: SheetName = by === 'rail' ? 'supplies' : 'branches';
  const members = new Map<number, number[]>(document.rows(sheet).map(({ id }) => [id, []]));
  const others: number[] = [];
  for (const { id } of document.rows('devices')) (members.get(schedule.target('devices', id, by)) ?? others).push(id);
  const headings: HeadingLine[] = [...members].map(([id, ids]) => ({ kind: 'heading', sheet, id, members: ids }));
  if (others.length > 0) headings.push({ kind: 'heading', sheet, id: -1, members: others });
  return headings.flatMap((heading): Line[] => [heading, ...heading.members.map((id): Line => ({ kind: 'row', id }))]);
}

/**
 * The lines after an action: the very list given when it still holds, so that a grid need only be drawn again.
 * @param before lines of the same sheet and grouping.
 */
export function linesAfter(
  before: readonly Line[], schedule: LoadSchedule, sheet: SheetName, grouping: Grouping, canAdd: boolean,
): readonly Line[] {
  // Rows as entered are compared without a list of them, as this happens at every edit.
  if (grouping === 'entered' || sheet !== 'devices') {
    const rows = schedule.document.rows(sheet);
    const same = before.length === rows.length + (canAdd ? 1 : 0)
      && rows.every(({ id }, index) => (before[index] as { id?: number }).id === id);
    return same ? before : buildLines(schedule, sheet, grouping, canAdd);
  }
  const lines = buildLines(schedule, sheet, grouping, canAdd);
  return sameLines(before, lines) ? before : lines;
}

function sameLines(some: readonly Line[], others: readonly Line[]): boolean {
  return some.length === others.length && some.every((line, index) => {
    const other = others[index]!;
    return line.kind === other.kind && (line.kind === 'blank' || line.id === (other as { id: number }).id);
  });
}

import type { LoadSchedule } from '../../src/load-schedule.ts';
import { isBlank, type CellValue } from '../../src/schedule/index.ts';

/** A group of loads as the matrix shows it. */
export interface CaseGroup {
  readonly name: string;
  /** Device rows and outputs that belong to it. */
  readonly rows: number;
  /** Least and greatest share by which these count where a case gives no factor; `null` where there are none. */
  readonly own: readonly [least: number, greatest: number] | null;
}

/** The groups that types, device rows, outputs and factors name, by their names. */
export function groupsOf(schedule: LoadSchedule): CaseGroup[] {
  const { cases } = schedule;
  const found = new Map<string, { rows: number; own: [number, number] | null }>();
  const of = (name: CellValue | undefined) => {
    if (typeof name !== 'string' || name === '') return undefined;
    let group = found.get(name);
    if (group === undefined) found.set(name, group = { rows: 0, own: null });
    return group;
  };
  const names = cases.groups;
  for (const sheet of ['devices', 'outputs'] as const) {
    const groupOf = cases.groupOf(sheet);
    for (const row of schedule.rows(sheet)) {
      const group = isBlank(row) ? undefined : of(names[groupOf[row.id]!]);
      if (group === undefined) continue;
      const share = sheet === 'outputs' ? 1 : schedule.value('devices', row.id, 'diversity');
      group.rows += 1;
      if (typeof share !== 'number') continue;
      group.own = group.own === null ? [share, share] : [Math.min(group.own[0], share), Math.max(group.own[1], share)];
    }
  }
  for (const { cells } of [...schedule.rows('types'), ...schedule.rows('factors')]) of(cells.group);
  return [...found].map(([name, group]) => ({ name, ...group }))
    .sort((one, other) => one.name.localeCompare(other.name, schedule.words.locale, { numeric: true }));
}

/** A type of which rows belong to no group. */
export interface TypeWithout {
  readonly id: number;
  readonly rows: number;
}

/** Types without a group that device rows without one of their own use, those of most rows first. */
export function typesWithoutGroup(schedule: LoadSchedule): TypeWithout[] {
  const groupOf = schedule.cases.groupOf('devices');
  const rows = new Map<number, number>();
  for (const { id } of schedule.rows('devices')) {
    const type = schedule.target('devices', id, 'type');
    if (type >= 0 && groupOf[id] === 0) rows.set(type, (rows.get(type) ?? 0) + 1);
  }
  return [...rows].map(([id, count]) => ({ id, rows: count })).sort((one, other) => other.rows - one.rows);
}

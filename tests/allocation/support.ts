import { readSharing, shareChanges, shareOut, type ShareRequest, type Sharing } from '../../src/allocation/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { tagOf } from '../../src/schedule/index.ts';

/** Shares out and carries it out as one action. */
export async function shareAndApply(schedule: LoadSchedule, request: ShareRequest): Promise<Sharing> {
  const sharing = await shareOut(readSharing(schedule, request));
  schedule.act('Sharing out', shareChanges(schedule.document, sharing));
  return sharing;
}

/** Number of devices of each row of a sheet, of those on it. */
export function quantitiesOn(schedule: LoadSchedule, sheet: 'branches' | 'supplies'): Record<string, number> {
  const by = sheet === 'branches' ? 'branch' : 'rail';
  return Object.fromEntries(schedule.rows(sheet).map((row) => [
    tagOf(sheet, row),
    schedule.members('devices', by, row.id).reduce((sum, id) => sum + Number(schedule.value('devices', id, 'qty')), 0),
  ]));
}

/** Number of devices in all. */
export function quantity(schedule: LoadSchedule): number {
  return schedule.rows('devices').reduce((sum, { id }) => sum + Number(schedule.value('devices', id, 'qty') ?? 0), 0);
}

import { panelOf } from '../engine/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import { SHEET_NAMES } from '../schedule/index.ts';
import { Refusal } from './refusal.ts';

/**
 * Refuses the name of a panel that nothing belongs to.
 * @throws Refusal that names those that there are.
 */
export function refuseUnknownPanel(schedule: LoadSchedule, panel: string | undefined): void {
  if (panel === undefined) return;
  const known = new Set(SHEET_NAMES.flatMap((sheet) =>
    schedule.rows(sheet).flatMap(({ id }) => panelOf(schedule, sheet, id) ?? [])));
  if (known.has(panel)) return;
  const names = known.size === 0 ? 'The schedule names no enclosure' : `Give one of ${[...known].join(', ')}`;
  throw new Refusal([`--panel ${panel} is not known. ${names}.`]);
}

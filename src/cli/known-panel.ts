import { panelNames } from '../engine/index.ts';
import type { LoadSchedule } from '../load-schedule.ts';
import { Refusal } from './refusal.ts';

/**
 * Refuses the name of a panel that nothing belongs to.
 * @throws Refusal that names those that there are.
 */
export function refuseUnknownPanel(schedule: LoadSchedule, panel: string | undefined): void {
  if (panel === undefined) return;
  const known = panelNames(schedule);
  if (known.includes(panel)) return;
  const names = known.length === 0 ? 'The schedule names no enclosure' : `Give one of ${known.join(', ')}`;
  throw new Refusal([`--panel ${panel} is not known. ${names}.`]);
}

import { readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { DraftBody } from './draft-store.ts';

/**
 * Makes the schedule of a draft, with its actions to undo.
 * @param body what the store gave, of whatever shape.
 * @returns `undefined` when it is damaged: its actions do not fit, or what they lead to is no schedule.
 */
export function readDraft(body: DraftBody): LoadSchedule | undefined {
  let schedule: LoadSchedule;
  try {
    schedule = new LoadSchedule(undefined, { session: body });
  } catch {
    // A draft has no promised shape: whatever this throws says that it is damaged.
    return undefined;
  }
  if (isWhole(schedule)) return schedule;
  schedule.dispose();
  return undefined;
}

/** Whether the file of a schedule can be read: the reader knows what each cell may hold. */
function isWhole(schedule: LoadSchedule): boolean {
  try {
    return readSchedule(writeSchedule(schedule.content())).ok;
  } catch {
    // As above: cells that are no cells cannot even be written.
    return false;
  }
}

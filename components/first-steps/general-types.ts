import { insertRows, type Cells } from '../../src/schedule/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';

/** The device types that come with the software, fetched when they are asked for first. */
export async function generalTypes(): Promise<readonly Cells[]> {
  const { default: content } = await import('../../data/device-types.json');
  return content.sheets.types as readonly unknown[] as readonly Cells[];
}

/** Puts general device types on the sheet of types, as one action. */
export function addGeneralTypes(schedule: LoadSchedule, types: readonly Cells[]): void {
  const label = schedule.words.say(
    'General device types: {count, plural, one {# row} other {# rows}}', { count: types.length }
  );
  schedule.act(label, insertRows(schedule.document, 'types', schedule.rows('types').length, types));
}

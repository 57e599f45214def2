import { insertRows, type Cells } from '../../src/schedule/index.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';

/** Puts the device types that come with the software on the sheet of types, as one action. */
export async function addGeneralTypes(schedule: LoadSchedule): Promise<void> {
  const { default: content } = await import('../../data/device-types.json');
  const types = content.sheets.types as readonly unknown[] as readonly Cells[];
  const label = schedule.words.say(
    'General device types: {count, plural, one {# row} other {# rows}}', { count: types.length }
  );
  schedule.act(label, insertRows(schedule.document, 'types', schedule.rows('types').length, types));
}

import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Place } from '../look/index.ts';

/** Columns of a device row in which it is of interest how many more of its type fit where it stands. */
const ITS_PLACE = new Set([
  'type', 'qty', 'rail', 'run', 'branch', 'nodes', 'unitDraw', 'diversity', 'connected', 'demand', 'share',
]);

const BY = { supplies: 'rail', runs: 'run', branches: 'branch' } as const;

/** The device type of most rows that name a row; -1 when there is none. */
function commonType(schedule: LoadSchedule, by: 'rail' | 'run' | 'branch', id: number): number {
  const numbers = new Map<number, number>();
  for (const device of schedule.members('devices', by, id)) {
    const type = schedule.target('devices', device, 'type');
    if (type >= 0) numbers.set(type, (numbers.get(type) ?? 0) + 1);
  }
  return [...numbers].reduce((most, each) => each[1] > most[1] ? each : most, [-1, 0])[0];
}

/**
 * How many more fit: of its own load on an output; on a supply, run or branch of the type of the device row selected
 * last, else of the type that most of its rows have; for a device row, of its type where it stands. Empty where that is
 * not known.
 * @param lastType id of the type of the device row selected last, -1 for none.
 */
export function roomWords(schedule: LoadSchedule, { sheet, id, key }: Place, lastType: number): string {
  if (sheet === 'outputs') return schedule.room('outputs', id)?.sentence ?? '';
  if (sheet === 'supplies' || sheet === 'runs' || sheet === 'branches') {
    const type = lastType >= 0 ? lastType : commonType(schedule, BY[sheet], id);
    return type < 0 ? '' : schedule.room(sheet, id, type)?.sentence ?? '';
  }
  return sheet === 'devices' && ITS_PLACE.has(key) ? schedule.room('devices', id)?.sentence ?? '' : '';
}

import type { LoadSchedule } from '../../src/load-schedule.ts';
import { rowName, type Place } from '../look/index.ts';

/** Columns of a device row in which the room on its branch is of interest; in the others it is that on its rail. */
const OF_BRANCH = new Set(['branch', 'nodes']);
const OF_RAIL = new Set(['type', 'qty', 'rail', 'unitDraw', 'diversity', 'connected', 'demand', 'share']);

/** The device type of most rows that name a row; -1 when there is none. */
function commonType(schedule: LoadSchedule, by: 'rail' | 'branch', id: number): number {
  const numbers = new Map<number, number>();
  for (const device of schedule.members('devices', by, id)) {
    const type = schedule.target('devices', device, 'type');
    if (type >= 0) numbers.set(type, (numbers.get(type) ?? 0) + 1);
  }
  return [...numbers].reduce((most, each) => each[1] > most[1] ? each : most, [-1, 0])[0];
}

/**
 * How many more fit: of its own load on an output; outputs in a module; on a supply or branch of the type of the device row selected last,
 * else of the type that most of its rows have; for a device row, of its type on its rail or branch. Empty where that is
 * not known.
 * @param lastType id of the type of the device row selected last, -1 for none.
 */
export function roomWords(schedule: LoadSchedule, { sheet, id, key }: Place, lastType: number): string {
  if (sheet === 'outputs' || sheet === 'modules') return schedule.room(sheet, id)?.sentence ?? '';
  if (sheet === 'supplies' || sheet === 'branches') {
    const type = lastType >= 0 ? lastType : commonType(schedule, sheet === 'supplies' ? 'rail' : 'branch', id);
    return type < 0 ? '' : schedule.room(sheet, id, type)?.sentence ?? '';
  }
  const by = sheet !== 'devices' ? undefined : OF_BRANCH.has(key) ? 'branch' : OF_RAIL.has(key) ? 'rail' : undefined;
  if (by === undefined) return '';
  const [type, target] = [schedule.target('devices', id, 'type'), schedule.target('devices', id, by)];
  const to = by === 'rail' ? 'supplies' : 'branches';
  const room = type < 0 || target < 0 ? undefined : schedule.room(to, target, type);
  return room === undefined ? ''
    : schedule.words.say('{row}: {room}', { row: rowName(schedule, { sheet: to, id: target }), room: room.sentence });
}

import { roomFor } from '../../src/explanations.ts';
import { runsOfWay } from '../../src/rework/belonging.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { Place } from '../look/index.ts';

/** Columns of a device row in which it is of interest how many more of its type fit where it stands. */
const ITS_PLACE = new Set([
  'type', 'qty', 'rail', 'run', 'branch', 'nodes', 'unitDraw', 'diversity', 'connected', 'demand', 'share',
]);

const BY = { supplies: 'rail', ways: 'way', runs: 'run', branches: 'branch' } as const;

/** The device type of most rows that name a row, or its runs; -1 when there is none. */
function commonType(schedule: LoadSchedule, by: 'rail' | 'way' | 'run' | 'branch', id: number): number {
  const numbers = new Map<number, number>();
  const devices = by !== 'way' ? schedule.members('devices', by, id)
    : runsOfWay(schedule, id).flatMap((run) => schedule.members('devices', 'run', run));
  for (const device of devices) {
    const type = schedule.target('devices', device, 'type');
    if (type >= 0) numbers.set(type, (numbers.get(type) ?? 0) + 1);
  }
  return [...numbers].reduce((most, each) => each[1] > most[1] ? each : most, [-1, 0])[0];
}

/**
 * How many more fit: of its own load on an output; outputs in a module; on a supply, way, run or branch of the type of
 * the device row selected last, else of the type that most of its rows have; for a device row, of its type where it
 * stands. Empty where that is not known.
 * @param lastType id of the type of the device row selected last, -1 for none.
 */
export function roomWords(schedule: LoadSchedule, { sheet, id, key }: Place, lastType: number): string {
  if (sheet === 'outputs' || sheet === 'modules') return roomFor(schedule, sheet, id)?.sentence ?? '';
  if (sheet === 'supplies' || sheet === 'ways' || sheet === 'runs' || sheet === 'branches') {
    const type = lastType >= 0 ? lastType : commonType(schedule, BY[sheet], id);
    return type < 0 ? '' : roomFor(schedule, sheet, id, type)?.sentence ?? '';
  }
  return sheet === 'devices' && ITS_PLACE.has(key) ? roomFor(schedule, 'devices', id)?.sentence ?? '' : '';
}

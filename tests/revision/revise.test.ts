import { afterEach, describe, expect, it } from 'vitest';
import { countOutcomes } from '../../src/exchange/revision/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { devicesOf, revise, shortly, total } from './support.ts';

const TYPES: Cells[] = [{ type: 'Router', draw: 100 }, { type: 'Sensor', draw: 10 }, { type: 'Flap drive', draw: 50 }];
const schedules: LoadSchedule[] = [];

function scheduleOf(devices: readonly Cells[], more: Record<string, readonly Cells[]> = {}): LoadSchedule {
  const schedule = new LoadSchedule({ details: {}, sheets: { types: TYPES, devices, ...more } });
  schedules.push(schedule);
  return schedule;
}

afterEach(() => { for (const schedule of schedules.splice(0)) schedule.dispose(); });

/** A schedule that was counted in a list, all of it on branch B1. */
function counted(list: string, name = 'list.csv'): LoadSchedule {
  const schedule = scheduleOf([]);
  revise(schedule, list, { name }).take();
  return schedule;
}

describe('a list that comes again', () => {
  const A = 'Ref;Device;Room;Qty\nE1;Router;Hall;3\nE2;Sensor;Hall;2\nE3;Sensor;Bar;4';

  it('comes as a whole where nothing is there, each row with its source', () => {
    expect(shortly(counted(A), 'ref', 'type', 'area', 'qty', 'source')).toEqual([
      'E1 Router Hall 3 list.csv: 2', 'E2 Sensor Hall 2 list.csv: 3', 'E3 Sensor Bar 4 list.csv: 4',
    ]);
  });

  it('changes nothing when it is the same', () => {
    const schedule = counted(A);
    const before = schedule.content();
    const revision = revise(schedule, A);
    expect(countOutcomes(revision)).toEqual({ came: 0, changed: 0, went: 0, kept: 3 });
    revision.take();
    expect(schedule.content()).toEqual(before);
  });

  it('changes what the list says, keeps what is known of the row, marks what went and adds what came', () => {
    const schedule = counted(A);
    const own = { rail: 'P1', branch: 'B1', run: 'R1', distance: 12, diversity: 0.5, note: 'over the door' };
    const [first] = schedule.rows('devices');
    schedule.act('own', Object.entries(own)
      .map(([key, value]) => ({ op: 'set', sheet: 'devices', id: first!.id, key, value })));
    const revision = revise(schedule, 'Ref;Device;Room;Qty\nE1;Router;Foyer;5\nE3;Sensor;Bar;4\nE4;Flap drive;Bar;1', {
      name: 'revision B.csv',
    });
    expect(revision.rows.map(({ outcome, ref, before, after }) => [outcome, ref, before, after])).toEqual([
      ['changed', 'E1', 3, 5], ['kept', 'E3', 4, 4], ['came', 'E4', null, 1], ['went', 'E2', 2, null],
    ]);
    expect(revision.rows[0]!.reason).toBe('Its area was Hall.');
    revision.take();
    expect(devicesOf(schedule)).toEqual([
      { ref: 'E1', type: 'Router', area: 'Foyer', qty: 5, source: 'revision B.csv: 2', ...own },
      { ref: 'E2', type: 'Sensor', area: 'Hall', qty: 2, source: 'list.csv: 3', state: 'gone' },
      { ref: 'E3', type: 'Sensor', area: 'Bar', qty: 4, source: 'revision B.csv: 3' },
      { ref: 'E4', type: 'Flap drive', area: 'Bar', qty: 1, source: 'revision B.csv: 4' },
    ]);
    schedule.undo();
    expect(total(devicesOf(schedule))).toBe(9);
  });
});

import { afterEach, describe, expect, it } from 'vitest';
import { takeoffChanges, takeoffLabel, type TakeoffDecisions } from '../../src/exchange/takeoff/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { inShort, read, readData } from './support.ts';

const TYPES: Cells[] = [
  { type: 'Router', power: 6, aliases: 'Gateway box' }, { type: 'Light sensor', draw: 10 },
];
const SOURCE =
  'Device;Room;Qty\nRouters;Hall;3\nRouters, large;Hall;1\nLight sensor;Hall;2\nFlap drive;Bar;1\nflap drive;Bar;4';
const schedules: LoadSchedule[] = [];

function scheduleWith(types: readonly Cells[], devices: readonly Cells[] = []): LoadSchedule {
  const schedule = new LoadSchedule({ details: {}, sheets: { types, devices } });
  schedules.push(schedule);
  return schedule;
}

afterEach(() => { for (const schedule of schedules.splice(0)) schedule.dispose(); });

const typesOf = (schedule: LoadSchedule) => schedule.rows('types').map(({ cells }) => cells);

describe('a takeoff with what a person decided on it', () => {
  const [routers, large] = read(SOURCE, { types: TYPES }).names;
  const decisions: TakeoffDecisions = {
    names: { [routers!.key]: { type: 'Router' }, [large!.key]: { type: 'Router' } },
  };
  const takeoff = read(SOURCE, { types: TYPES, decisions });

  it('comes in as one action: devices behind those that are there, new types, and confirmed names as aliases', () => {
    const schedule = scheduleWith(TYPES, [{ ref: 'A', type: 'Router', qty: 1 }]);
    schedule.act(takeoffLabel(takeoff), takeoffChanges(schedule.document, takeoff));
    expect(schedule.rows('devices').map(({ cells }) => cells)).toEqual([
      { ref: 'A', type: 'Router', qty: 1 },
      { type: 'Router', area: 'Hall', qty: 4 },
      { type: 'Light sensor', area: 'Hall', qty: 2 },
      { type: 'Flap drive', area: 'Bar', qty: 5 },
    ]);
    expect(typesOf(schedule)).toEqual([
      { type: 'Router', power: 6, aliases: 'Gateway box; Routers; Routers, large' },
      { type: 'Light sensor', draw: 10 },
      { type: 'Flap drive', note: expect.stringContaining('Enter its draw') as string },
    ]);
    expect(schedule.undoLabel).toBe('Takeoff of 11 devices in 3 rows');
  });

  it('goes out again with one undo', () => {
    const schedule = scheduleWith(TYPES);
    const before = schedule.content();
    schedule.act(takeoffLabel(takeoff), takeoffChanges(schedule.document, takeoff));
    const after = schedule.content();
    schedule.undo();
    expect(schedule.content()).toEqual(before);
    schedule.redo();
    expect(schedule.content()).toEqual(after);
  });

  it('is read without a question the next time', () => {
    const schedule = scheduleWith(TYPES);
    schedule.act('Takeoff', takeoffChanges(schedule.document, takeoff));
    const again = read(SOURCE, { types: typesOf(schedule) });
    expect(inShort(again)).toMatchObject({ 2: 'taken 3 Router', 3: 'merged 1 Router', 5: 'taken 1 Flap drive' });
    expect(takeoffChanges(schedule.document, again).map(({ op }) => op)).toEqual(['insert']);
  });

  it('leaves devices of new types incomplete, the draw being unknown', () => {
    const schedule = scheduleWith(TYPES);
    schedule.act('Takeoff', takeoffChanges(schedule.document, takeoff));
    const { id } = schedule.rows('devices').at(-1)!;
    expect(schedule.value('devices', id, 'connected')).toBeNull();
    // It is told at the type.
    expect(schedule.findings).toContainEqual(
      expect.objectContaining({ rule: 'type-draw-missing', severity: 'incomplete', tag: 'Flap drive', waiting: 1 }));
  });

  it('makes a new type for the voltage of the rail that its devices hang on, where these agree', () => {
    const source = 'Device;Rail;Qty\nPump;L12;1\nPump;L12;2\nBuzzer;L12;1\nBuzzer;L24;1\nLamp;L24;1\nHorn;L99;1';
    const schedule = new LoadSchedule({
      details: {}, sheets: { supplies: [{ rail: 'L12', voltage: 12 }, { rail: 'L24' }] },
    });
    schedules.push(schedule);
    schedule.act('Takeoff', takeoffChanges(schedule.document, read(source, { types: [] })));
    // Of the others it stays empty, which is 24 V.
    expect(typesOf(schedule).map(({ type, voltage = null }) => [type, voltage]))
      .toEqual([['Pump', 12], ['Buzzer', null], ['Lamp', null], ['Horn', null]]);
    expect(schedule.findings.filter(({ rule }) => rule === 'device-other-voltage').map(({ limit }) => limit)).toEqual([12]);
  });

  it('lets a name with a semicolon be one alias', () => {
    const types = [{ type: 'Light sensor' }];
    const source = 'Device\tQty\nLight sensors; white\t1';
    const { key } = read(source, { types }).names[0]!;
    const decided = read(source, { types, decisions: { names: { [key]: { type: 'Light sensor' } } } });
    const schedule = scheduleWith(types);
    schedule.act('Takeoff', takeoffChanges(schedule.document, decided));
    expect(typesOf(schedule)).toEqual([{ type: 'Light sensor', aliases: 'Light sensors, white' }]);
    expect(inShort(read(source, { types: typesOf(schedule) }))[2]).toBe('taken 1 Light sensor');
  });
});

it('remembers a symbol together with its description, as symbols mean other things in other jobs', () => {
  const takeoff = 'Symbol;Description;Qty\nS1;Light sensors;1';
  const { key } = read(takeoff, { types: TYPES }).names[0]!;
  const decided = read(takeoff, { types: TYPES, decisions: { names: { [key]: { type: 'Light sensor' } } } });
  const schedule = scheduleWith(TYPES);
  schedule.act('Takeoff', takeoffChanges(schedule.document, decided));
  const types = typesOf(schedule);
  expect(inShort(read(takeoff, { types }))[2]).toBe('taken 1 Light sensor');
  expect(inShort(read('Symbol;Description;Qty\nS1;Sounder;1', { types }))[2]).toBe('taken 1 S1');
});

it('brings the 2,000 lines of the hotel in and takes them out again', () => {
  const schedule =
    scheduleWith((JSON.parse(readData('device-types.json')) as { sheets: { types: Cells[] } }).sheets.types);
  const takeoff = read(readData('takeoffs/hotel.csv'), { types: typesOf(schedule) });
  schedule.act(takeoffLabel(takeoff), takeoffChanges(schedule.document, takeoff));
  expect(schedule.rows('devices')).toHaveLength(1736);
  expect(schedule.undo()).toBe('Takeoff of 3720 devices in 1736 rows');
  expect(schedule.rows('devices')).toHaveLength(0);
});

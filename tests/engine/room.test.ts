import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roomFor } from '../../src/explanations.ts';
import type { Cells, SheetName } from '../../src/schedule/index.ts';
import { enter, idAt, scheduleOf, valueAt } from '../support/schedules.ts';
import { panelSheets, somePanel, type Panel } from './random-panel.ts';

const CONTACT = { contact: 'relay', resistive: 16, lamp: 10, inrush: 165 };

function output(cells: Cells, contact: Cells = CONTACT) {
  const schedule =
    scheduleOf({
      contacts: [contact], outputs: [{ output: 'K1', contact: 'relay', kind: 'lamp', powerFactor: 1, ...cells }],
    });
  return roomFor(schedule, 'outputs', idAt(schedule, 'outputs'));
}

describe('room on an output, by hand', () => {
  test.each<{
    why: string;
    cells: Cells;
    contact?: Cells;
    count: number | null;
    within: number | null;
    sentence: string
  }>([
    {
      // 230 W at 230 V is 1 A each: 4 A of 10 A, 8 A to the target.
      why: 'steady current', cells: { qty: 4, power: 230 }, contact: {
        contact: 'relay', lamp: 10,
      }, count: 6, within: 4,
      sentence: 'Capacity left for 6 more of this load up to the rating, 4 up to the target. Its inrush is not known and not taken into account.',
    },
    {
      // 4 × 30 A of 165 A: 45 A left, room for one.
      why: 'inrush, the smaller', cells: { qty: 4, power: 230, inrush: 30 }, count: 1, within: 1,
      sentence: 'Capacity left for 1 more of this load up to the making capacity of the contact.',
    },
    {
      // 7 A of 10 A: 3 before the rating, 1 before the target; 7 × 5 A of 165 A leave 26.
      why: 'steady current, the smaller', cells: { qty: 7, power: 230, inrush: 5 }, count: 3, within: 1,
      sentence: 'Capacity left for 3 more of this load up to the rating, 1 up to the target.',
    },
    {
      // 0.1 A each: (1 − 0.4) ÷ 0.1 is 5.999999999999999 in binary.
      why: 'exactly up to the rating, in spite of rounding', cells: {
        qty: 4, power: 23, target: 1, inrush: 0,
      }, contact: { ...CONTACT, lamp: 1 },
      count: 6, within: 6, sentence: 'Capacity left for 6 more of this load up to the rating.',
    },
    {
      why: 'beyond the target', cells: { qty: 9, power: 230, inrush: 1 }, count: 1, within: 0,
      sentence: 'Capacity left for 1 more of this load up to the rating, none up to the target.',
    },
    {
      why: 'beyond the rating', cells: { qty: 11, power: 230, inrush: 1 }, count: 0, within: 0,
      sentence: 'No capacity left for more of this load up to the rating.',
    },
    {
      why: 'none yet', cells: { qty: 0, power: 230, inrush: 1 }, count: 10, within: 8,
      sentence: 'Capacity left for 10 more of this load up to the rating, 8 up to the target.',
    },
    {
      why: 'a load that takes nothing', cells: { qty: 1, power: 0, inrush: 0 }, count: null, within: null,
      sentence: 'One more of this load takes nothing: any number fits.',
    },
  ])('$why', ({ cells, contact, count, within, sentence }) => {
    expect(output(cells, contact)).toEqual({ count, withinTarget: within, sentence });
  });

  test.each<[string, Cells, number, number, string]>([
    // 2 A on it; 6 A × 80 % are 4.8 A.
    ['target', { rated: 6 }, 4, 2, 'Capacity left for 4 more of this load up to the rating of its feed, 2 up to the target of its feed.'],
    // A D 10 stands 1.41 × 10 A × 10 = 141 A for sure: four of 30 A start, five do not.
    ['breaker', { rated: 10, curve: 'D' }, 8, 2, 'Capacity left for 8 more of this load up to the rating, 2 until the breaker of its feed may trip when it starts.'],
  ])('its feed has a %s too, and agrees with adding them', (_name, feed, count, within, sentence) => {
    const filled = (qty: number) => scheduleOf({
      contacts: [{ contact: 'relay', lamp: 10, inrush: 500 }], feeds: [{ feed: 'X', ...feed }],
      outputs: [{ output: 'K1', contact: 'relay', kind: 'lamp', powerFactor: 1, power: 230, inrush: 30, feed: 'X', qty }],
    });
    const two = filled(2);
    expect(roomFor(two, 'outputs', idAt(two, 'outputs'))).toEqual({ count, withinTarget: within, sentence });
    expect([2 + within, 3 + within].map((qty) => valueAt(filled(qty), 'feeds', 0, 'status'))).toEqual(['ok', 'near']);
  });

  test('says that there may be less where something else on its feed is not known, and takes the start of a coil', () => {
    const coils = scheduleOf({
      contacts: [{ contact: 'relay', coil: 6 }], feeds: [{ feed: 'X', rated: 6, curve: 'B' }],
      supplies: [{ rail: 'A', rated: 10, feed: 'X' }],
      // A B 6 stands 25.38 A for sure: ten times 0.5 A each start, five of them, not six.
      outputs: [{ output: 'K1', contact: 'relay', kind: 'coil', power: 115, qty: 3, feed: 'X' }],
    });
    expect(roomFor(coils, 'outputs', idAt(coils, 'outputs'))?.sentence).toBe('Capacity left for 9 more of this load up to the rating, 2 until the breaker of its feed may trip when it starts. Not all that hangs on its feed, module or rail is known, so that there may be less.');
  });

  test('is not known without power or rating', () => {
    expect(output({ qty: 4 })).toBeUndefined();
    expect(output({ qty: 4, power: 230 }, { contact: 'relay', resistive: 16 })).toBeUndefined();
  });
});

describe('room for devices of a type, by hand', () => {
  const types: Cells[] = [
    {
      type: 'driver', power: 12, diversity: 0.8, nodes: 1,
    }, { type: 'switch', draw: 100, nodes: 3 }, { type: 'unknown' },
    { type: 'passive', draw: 0, nodes: 0 },
  ];
  const schedule = scheduleOf({
    types,
    // 4 A of 10 A; a driver takes 0.5 A × 0.8: 10 to the target of 8 A, 15 to 10 A, 7 to a fuse of 7 A.
    supplies: [
      { rail: 'A', rated: 10 }, { rail: 'B', rated: 10, fuse: 7 }, { rail: 'C', rated: 10 }, { rail: 'D' },
      { rail: 'E', rated: 10, fullUpTo: 50, lessPerKelvin: 0.025, enclosure: 'X' },
    ],
    enclosures: [{ enclosure: 'X', height: 600, width: 400, depth: 200, mounting: 'wall', otherLoss: 0, ambient: 20 }],
    branches: [{ branch: 'P', limit: 50, reserve: 0.2 }, { branch: 'Q', limit: 50 }, { branch: 'R' }],
    devices: [
      { type: 'switch', qty: 40, rail: 'A' }, { type: 'switch', qty: 40, rail: 'B' },
      { type: 'switch', qty: 40, rail: 'C' }, { type: 'unknown', qty: 1, rail: 'C' },
      // 30 nodes of 50, 40 less the reserve.
      { type: 'switch', qty: 10, branch: 'P' }, { type: 'nowhere', qty: 1, branch: 'Q' },
    ],
  });
  const sentence = (sheet: 'supplies' | 'branches', at: number, type: number) =>
    roomFor(schedule, sheet, idAt(schedule, sheet, at), idAt(schedule, 'types', type))?.sentence;

  test.each([
    {
      sheet: 'supplies' as const, at: 0, type: 0,
      says: 'Capacity left for 15 more of the type driver up to the usable current, 10 up to the target.',
    },
    {
      sheet: 'supplies' as const, at: 0, type: 1,
      says: 'Capacity left for 60 more of the type switch up to the usable current, 40 up to the target.',
    },
    {
      sheet: 'supplies' as const, at: 1, type: 0,
      // At once 4 A and 0.5 A each: 6 to the fuse of 7 A.
      says: 'Capacity left for 7 more of the type driver up to the rating of its fuse, 6 until all of it at the same time is too much.',
    },
    {
      sheet: 'supplies' as const, at: 2, type: 0,
      says: 'Capacity left for at most 15 more of the type driver up to the usable current, at most 10 up to the target.',
    },
    {
      sheet: 'supplies' as const, at: 0, type: 3, says: 'One more of the type passive takes nothing: any number fits.',
    },
    {
      sheet: 'supplies' as const, at: 4, type: 0,
      says: 'Capacity left for 25 more of the type driver up to the usable current, 20 up to the target. That more load makes its enclosure warmer is not taken into account.',
    },
    {
      sheet: 'branches' as const, at: 0, type: 1,
      says: 'Capacity left for 6 more of the type switch up to the limit, 3 up to the reserve.',
    },
    {
      sheet: 'branches' as const, at: 0, type: 0,
      says: 'Capacity left for 20 more of the type driver up to the limit, 10 up to the reserve.',
    },
    {
      sheet: 'branches' as const, at: 1, type: 0, says: 'Capacity left for at most 50 more of the type driver up to the limit.',
    },
  ])('$says', ({ sheet, at, type, says }) => {
    expect(sentence(sheet, at, type)).toBe(says);
  });

  test.each([
    // 20 switches of 0.1 A: 2 A. The rail of 20 A has room for 180, a way of 6 A for 40, 28 to its target of 4.8 A.
    // 63 nodes of 120 leave 57, room for 19.
    ['the branch', 120, 6, 'Capacity left for 19 more of the type switch up to the limit of its branch.'],
    [
      'the way', 1000, 6,
      'Capacity left for 40 more of the type switch up to the rating of its way, 28 up to the target of its way.',
    ],
    // 10 A in free air at 30 °C, alone: carries 10 A, of which 2 A are taken.
    ['the cable', 1000, 10, 'Capacity left for 80 more of the type switch up to what its cable carries, 60 up to the target of its way.'],
  ])('the place of a device row counts every limit: %s', (_which, limit, rated, says) => {
    const place = scheduleOf({
      types: [{ type: 'switch', draw: 100, nodes: 3 }], supplies: [{ rail: 'A', rated: 20, target: 1 }],
      branches: [{ branch: 'P', limit }], conductors: [{ conductor: 'c', size: '1', resistance: 18, maxCurrent: 10 }],
      ways: [{ way: 'F', rail: 'A', kind: 'B', rated }],
      runs: [{ run: 'W', way: 'F', conductor: 'c', length: 1, ambient: 30 }],
      devices: [{ type: 'switch', qty: 20, rail: 'A', run: 'W', branch: 'P' }, { type: 'switch', qty: 1, branch: 'P' }],
    });
    const room = (sheet: SheetName, at = 0) =>
      roomFor(place, sheet, idAt(place, sheet, at), idAt(place, 'types'))?.sentence ?? '';
    expect(room('devices')).toBe(says);
    // Of the row without a rail, nothing but the branch counts.
    expect(room('devices', 1)).toBe(`Capacity left for ${limit === 120 ? 19 : 312} more of the type switch up to the limit.`);
    expect(room('runs')).toContain(rated === 6
      ? 'Capacity left for 40 more of the type switch up to the rating of its way, 28 up to the target of its way.'
      : 'Capacity left for 80 more of the type switch up to what its cable carries, 60 up to the target of its way.');
    expect(room('ways')).toBe(rated === 6
      ? 'Capacity left for 40 more of the type switch up to the rating, 28 up to the target.'
      // 10 A leave 8, 8 A to the target 6.
      : 'Capacity left for 80 more of the type switch up to the rating, 60 up to the target.');
  });

  // 2 A over 1 Ω (10 Ω/km, 50 m there and back) leave 22 V; a breaker of 16 A does not protect what carries 10 A.
  test.each<[string, Cells, Cells]>([
    ['by the voltage of a device', { minVoltage: 22.5 }, {}], ['by its protection', {}, { rated: 16 }],
    ['as no voltage works', { power: 200, load: 'power', draw: null }, {}],
  ])('a run that is over %s has no room, nor has a device row on it', (_why, type, way) => {
    const place = (each: Cells, behind: Cells) => scheduleOf({
      types: [{ type: 'T', draw: 2000, ...each }], supplies: [{ rail: 'A', rated: 20 }],
      conductors: [{ conductor: 'c', resistance: 10, maxCurrent: 10, baseTemperature: 20 }],
      ways: [{ way: 'F', rail: 'A', kind: 'electronic', rated: 10, ...behind }],
      runs: [{ run: 'W', way: 'F', conductor: 'c', length: 50, ambient: 20, temperature: 20 }],
      devices: [{ type: 'T', qty: 1, run: 'W' }],
    });
    const room = (schedule: ReturnType<typeof place>, sheet: SheetName) =>
      roomFor(schedule, sheet, idAt(schedule, sheet), idAt(schedule, 'types'));
    expect(room(place({}, {}), 'runs')?.count).toBe(4);
    for (const sheet of ['runs', 'devices'] as const) {
      expect(room(place(type, way), sheet)).toMatchObject({ count: 0, withinTarget: 0 });
      expect(room(place(type, way), sheet)?.sentence).toMatch(/^No capacity left(: what it hangs on is over a limit\.| for more of the type T)/);
    }
  });

  test('a way takes more by their diversity, is known without the run, and in part where a run on it is', () => {
    const place = scheduleOf({
      types: [{ type: 'switch', draw: 100, diversity: 0.5 }, { type: 'unknown' }], supplies: [{ rail: 'A', rated: 20 }],
      ways: [{ way: 'F', rail: 'A', kind: 'B', rated: 6 }, { way: 'G', rail: 'A', kind: 'B' }],
      runs: [{ run: 'W', way: 'F' }, { run: 'X', way: 'F' }, { run: 'Y', way: 'G' }],
      devices: [{ type: 'switch', qty: 20, run: 'W' }, { type: 'unknown', qty: 1, run: 'X' }],
    });
    const [switches, unknown] = [0, 1].map((at) => idAt(place, 'types', at));
    // 20 × 0.1 A × 0.5 = 1 A of 6 A, 0.05 A more each: 100, and 76 to 4.8 A. At once 2 A, 0.1 A more each: 40.
    expect(roomFor(place, 'ways', idAt(place, 'ways'), switches)).toEqual({
      count: 100, withinTarget: 40,
      sentence: 'Capacity left for at most 100 more of the type switch up to the rating, '
        + 'at most 40 until all of it at the same time is too much.',
    });
    expect(roomFor(place, 'ways', idAt(place, 'ways'), unknown)).toBeUndefined();
    expect(roomFor(place, 'ways', idAt(place, 'ways', 1), switches)).toBeUndefined();
  });

  test('there is none for one that alone is too much, whatever its diversity', () => {
    // 8 A × 0.1 = 0.8 A: of 10 A there is room, of a way of 6 A there is none, nor on a cable that carries 5 A.
    const place = scheduleOf({
      types: [{ type: 'door', draw: 8000, diversity: 0.1 }], supplies: [{ rail: 'A', rated: 10 }, { rail: 'B', rated: 6 }],
      ways: [{ way: 'F', rail: 'A', kind: 'B', rated: 6 }, { way: 'G', rail: 'A', kind: 'B', rated: 10 }],
      conductors: [{ conductor: 'c', size: '1', resistance: 18, maxCurrent: 5 }],
      runs: [{ run: 'W', way: 'G', conductor: 'c', length: 1, ambient: 30, basis: 'demand' }],
    });
    const counts = (sheet: SheetName, at: number) => {
      const room = roomFor(place, sheet, idAt(place, sheet, at), idAt(place, 'types'));
      return [room?.count, room?.withinTarget];
    };
    // 0.8 A each: 12 to 10 A, but one at once is all that 10 A give.
    expect([counts('supplies', 0), counts('ways', 1)]).toEqual([[12, 1], [12, 1]]);
    expect([counts('supplies', 1), counts('ways', 0), counts('runs', 0)]).toEqual([[0, 0], [0, 0], [0, 0]]);
  });

  test('the place of a device row counts the reserve of its branch as well as the target of its rail', () => {
    // 2 A of 20 A: 140 to the target of 16 A. 60 nodes of 120, 84 less the reserve: 8.
    const place = scheduleOf({
      types: [{ type: 'switch', draw: 100, nodes: 3 }], supplies: [{ rail: 'A', rated: 20 }],
      branches: [{ branch: 'P', limit: 120, reserve: 0.3 }],
      devices: [{ type: 'switch', qty: 20, rail: 'A', branch: 'P' }],
    });
    expect(roomFor(place, 'devices', idAt(place, 'devices'))).toEqual({
      count: 20, withinTarget: 8,
      sentence: 'Capacity left for 20 more of the type switch up to the limit of its branch, 8 up to the reserve.',
    });
  });

  test('on a branch heeds what the supply of its bus gives: 250 mA for 2 mA each, IEC 62386', () => {
    // 100 mA of 250: 75 more, and 12 to the reserve of 50 %; 14 nodes of 64 by the limit, and none of the half of them.
    const branch = (reserve: number, limit: number) => {
      const schedule = scheduleOf({
        types: [{ type: 'gear', nodes: 1, busDraw: 2 }], branches: [{ branch: 'P', limit, reserve, busCurrent: 0.25 }],
        devices: [{ type: 'gear', qty: 50, branch: 'P' }],
      });
      return roomFor(schedule, 'branches', idAt(schedule, 'branches'), idAt(schedule, 'types'));
    };
    expect(branch(0.5, 900)).toMatchObject({ count: 75, withinTarget: 12 });
    expect(branch(0, 64)).toMatchObject({ count: 14, withinTarget: 14 });
    expect(branch(0, 900)!.sentence).toBe('Capacity left for 75 more of the type gear up to what the supply of the bus gives.');
  });

  test.each<[string, Cells]>([
    ['stands 15 V', { minVoltage: 10, maxVoltage: 15 }], ['needs 30 V', { minVoltage: 30, maxVoltage: 60 }],
    ['is made for 12 V', { voltage: 12 }],
  ])('there is none on a rail of 24 V for a type that %s', (_name, cells) => {
    const sheets = {
      types: [{ type: 'T', draw: 100, ...cells }], supplies: [{ rail: 'A', rated: 10 }],
      conductors: [{ conductor: 'c', resistance: 1, maxCurrent: 16 }],
      ways: [{ way: 'F', rail: 'A', kind: 'electronic', rated: 4 }],
      runs: [{ run: 'W', way: 'F', conductor: 'c', length: 1 }], devices: [{ type: 'T', qty: 0, run: 'W' }],
    };
    const empty = scheduleOf(sheets);
    for (const sheet of ['supplies', 'ways', 'runs', 'devices'] as const) {
      expect(roomFor(empty, sheet, idAt(empty, sheet), idAt(empty, 'types'))).toMatchObject({ count: 0, withinTarget: 0 });
    }
    expect(roomFor(empty, 'supplies', idAt(empty, 'supplies'), idAt(empty, 'types'))!.sentence)
      .toBe('No capacity left for more of the type T at the voltage of its rail.');
    const one = scheduleOf({ ...sheets, devices: [{ type: 'T', qty: 1, run: 'W' }] });
    expect(valueAt(one, 'supplies', 0, 'status')).toBe('over');
  });

  test('is not known without what one takes, without a rating, or without a type', () => {
    expect(sentence('supplies', 0, 2)).toBeUndefined();
    expect(sentence('supplies', 3, 0)).toBeUndefined();
    expect(sentence('branches', 0, 2)).toBeUndefined();
    expect(sentence('branches', 2, 0)).toBeUndefined();
    expect(roomFor(schedule, 'supplies', idAt(schedule, 'supplies'))).toBeUndefined();
    expect(roomFor(schedule, 'feeds', 0, 0)).toBeUndefined();
  });

  test('agrees with adding them: as many as there is room for leave the status, one more does not', () => {
    const statusWith = (qty: number) => {
      const filled = scheduleOf({
        types, supplies: [{ rail: 'A', rated: 10 }],
        devices: [{ type: 'switch', qty: 40, rail: 'A' }, { type: 'driver', qty, rail: 'A' }],
      });
      return filled.value('supplies', idAt(filled, 'supplies'), 'status');
    };
    expect([10, 11, 15, 16].map(statusWith)).toEqual(['ok', 'near', 'near', 'over']);
  });

  test('agrees with adding them to a way too, where everything at once is what is near first', () => {
    // 0.1 A × 0.5: 60 at once are 6 A, 120 expected are 6 A.
    const filled = (qty: number) => scheduleOf({
      types: [{ type: 'switch', draw: 100, diversity: 0.5 }], supplies: [{ rail: 'A', rated: 40 }],
      conductors: [{ conductor: 'c', size: '1', resistance: 1, maxCurrent: 30 }],
      ways: [{ way: 'F', rail: 'A', kind: 'electronic', rated: 6 }],
      runs: [{ run: 'W', way: 'F', conductor: 'c', length: 1 }], devices: [{ type: 'switch', qty, run: 'W' }],
    });
    const empty = filled(0);
    expect(roomFor(empty, 'ways', idAt(empty, 'ways'), idAt(empty, 'types')))
      .toMatchObject({ count: 120, withinTarget: 60 });
    expect([60, 61, 120, 121].map((qty) => valueAt(filled(qty), 'ways', 0, 'status')))
      .toEqual(['ok', 'near', 'near', 'over']);
  });
});

describe('room on a run counts what is not in proportion, and what others need, by hand', () => {
  test('converters draw more as the voltage falls: 12 W each over 1 Ω', () => {
    const place = (qty: number) => scheduleOf({
      types: [{ type: 'T', power: 12, load: 'power' }], supplies: [{ rail: 'A', rated: 20 }],
      conductors: [{ conductor: 'c', resistance: 10, maxCurrent: 3.2, baseTemperature: 20 }],
      ways: [{ way: 'F', rail: 'A', kind: 'electronic', rated: 3 }],
      runs: [{ run: 'W', way: 'F', conductor: 'c', length: 50, ambient: 20, temperature: 20, maxDrop: 0.9 }],
      devices: [{ type: 'T', qty, run: 'W' }],
    });
    // 60 W: U = (24 + √(24² − 4 × 60)) ÷ 2 = 21.17 V, 2.83 A; 72 W: 20.49 V, 3.51 A of 3 A. At 24 V six would take 3 A.
    const one = place(1);
    expect(roomFor(one, 'devices', idAt(one, 'devices'))?.count).toBe(4);
    expect([5, 6].map((qty) => [valueAt(place(qty), 'runs', 0, 'status'), valueAt(place(qty), 'ways', 0, 'status')]))
      .toEqual([['ok', 'near'], ['over', 'over']]);
    const byPlace = (sheet: SheetName) => roomFor(one, sheet, idAt(one, sheet), idAt(one, 'types'))!.sentence;
    expect(byPlace('runs')).toMatch(/^Capacity left for 4 more .* They are taken to be at the far end of the run\.$/);
    for (const sheet of ['supplies', 'ways'] as const) {
      expect(byPlace(sheet)).toMatch(/What they draw more as the voltage falls along a cable is not taken into account\.$/);
    }
    // With a way that carries it, what the cable carries is the limit.
    enter(one, 'ways', 0, { rated: 3.2 });
    expect(roomFor(one, 'devices', idAt(one, 'devices'))).toMatchObject({ count: 4, sentence: expect.stringContaining('up to what its cable carries') as string });
  });

  test('another way of the rail still has to act: 7.5 × 1 A of 10 A less what is on the rail', () => {
    const place = (qty: number) => scheduleOf({
      types: [{ type: 'T', draw: 100 }], supplies: [{ rail: 'A', rated: 10 }],
      conductors: [{ conductor: 'c', resistance: 1, maxCurrent: 16 }],
      ways: [{ way: 'F', rail: 'A', kind: 'electronic', rated: 6 }, { way: 'G', rail: 'A', kind: 'B', rated: 1 }],
      runs: [{ run: 'W', way: 'F', conductor: 'c', length: 1 }], devices: [{ type: 'T', qty, run: 'W' }],
    });
    const twenty = place(20);
    const said = 'Capacity left for 40 more of the type T up to the rating of its way, 5 until another way of its rail may not act on a short circuit any more.';
    expect(roomFor(twenty, 'devices', idAt(twenty, 'devices'))).toEqual({ count: 40, withinTarget: 5, sentence: said });
    expect([25, 26].map((qty) => valueAt(place(qty), 'ways', 1, 'status'))).toEqual(['ok', 'near']);
  });
});

describe('room that is said is there', () => {
  const STATES = ['ok', 'incomplete', 'near', 'over'];
  const PLACES = ['supplies', 'ways', 'runs', 'branches'] as const;
  const worst = (panel: Panel, more: number) => {
    const schedule = scheduleOf(panelSheets(panel, more));
    const found = PLACES.flatMap((sheet) => schedule.rows(sheet).map(({ id }) => schedule.value(sheet, id, 'status') as string));
    schedule.dispose();
    return found.reduce((one, other) => STATES.indexOf(other) > STATES.indexOf(one) ? other : one);
  };

  test('so many more are within limits where they stand, and one more is not', () => {
    const met = { ok: 0, near: 0, voltage: 0, drop: 0, start: 0 };
    fc.assert(fc.property(somePanel, (panel) => {
      const before = worst(panel, 0);
      fc.pre(before === 'ok' || before === 'near');
      const schedule = scheduleOf(panelSheets(panel, 0));
      const room = roomFor(schedule, 'devices', idAt(schedule, 'devices'))!;
      schedule.dispose();
      if (room.sentence.includes('too little voltage')) met.voltage += 1;
      if (room.sentence.includes('the drop that')) met.drop += 1;
      if (room.sentence.includes('starts no more')) met.start += 1;
      const { count, withinTarget } = room as { count: number; withinTarget: number };
      expect(worst(panel, count)).not.toBe('over');
      expect(worst(panel, count + 1)).toBe('over');
      met.near += 1;
      if (before !== 'ok') return;
      met.ok += 1;
      expect(worst(panel, withinTarget)).toBe('ok');
      expect(worst(panel, withinTarget + 1)).not.toBe('ok');
    }), { numRuns: 100 });
    for (const times of Object.values(met)) expect(times).toBeGreaterThan(3);
  });
});

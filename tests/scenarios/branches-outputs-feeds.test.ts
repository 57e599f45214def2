import { describe, expect, test } from 'vitest';
import { inputColumns, parseCell, type Cells } from '../../src/schedule/index.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { findingsAt, scheduleOf, valueAt } from '../support/schedules.ts';

describe('a branch that may carry 50 nodes', () => {
  const branch = (cells: Cells, qty: number, nodes = 1) => scheduleOf({
    types: [{ type: 'T', draw: 10, nodes }], branches: [{ branch: 'B1', limit: 50, terminated: true, ...cells }],
    devices: [{ ref: 'D1', type: 'T', qty, branch: 'B1' }],
  });
  test.each<[Cells, number, number, number, string]>([
    [{}, 50, 1, 0, 'ok'],
    [{}, 51, 1, -1, 'over'],
    [{}, 25, 2, 0, 'ok'], // devices that take two places
    [{}, 26, 2, -2, 'over'],
    [{}, 400, 0, 50, 'ok'], // that take none
    [{ limit: 30 }, 31, 1, -1, 'over'],
    [{ reserve: 0.2 }, 40, 1, 0, 'ok'], // 50 × 0.8
    [{ reserve: 0.2 }, 41, 1, -1, 'near'],
    [{ reserve: 0.2 }, 50, 1, -10, 'near'],
    [{ reserve: 0.2 }, 51, 1, -11, 'over'],
    [{ reserve: 0.25 }, 37, 1, 0, 'ok'], // 37.5, rounded down
    [{ reserve: 0.25 }, 38, 1, -1, 'near'],
    [{ reserve: 0.9 }, 5, 1, 0, 'ok'], // 50 × 0.1 is 4.999… in binary
    [{ reserve: 1 }, 1, 1, -1, 'near'],
  ])('%o with %d devices of %s nodes has %d free and is %s', (cells, qty, nodes, free, status) => {
    const schedule = branch(cells, qty, nodes);
    expect([valueAt(schedule, 'branches', 0, 'free'), valueAt(schedule, 'branches', 0, 'status')])
      .toEqual([free, status]);
  });

  test('places that are parts of one add up without the noise of binary fractions', () => {
    const schedule = scheduleOf({
      types: [{ type: 'T', draw: 10, nodes: 0.1 }], branches: [{ branch: 'B1', limit: 3, reserve: 0.1 }],
      devices: [7, 9, 4].map((qty) => ({ type: 'T', qty, branch: 'B1' })),
    });
    // 0.7 + 0.9 + 0.4 of 2
    expect(valueAt(schedule, 'branches', 0, 'nodes')).toEqual(closeTo(2, EXACT));
    expect(valueAt(schedule, 'branches', 0, 'status')).toBe('ok');
  });

  test('a branch that is not marked as terminated is noted, and its status does not suffer', () => {
    const schedule = branch({ terminated: null }, 50);
    expect(findingsAt(schedule, 'branches').map(({ rule, severity }) => [rule, severity]))
      .toEqual([['branch-not-terminated', 'note']]);
    expect(valueAt(schedule, 'branches', 0, 'status')).toBe('ok');
  });

  test('without a limit it is incomplete, whatever it carries', () => {
    const schedule = branch({ limit: null, reserve: 0.2 }, 500);
    expect(['nodes', 'free', 'used', 'status'].map((key) => valueAt(schedule, 'branches', 0, key)))
      .toEqual([500, null, null, 'incomplete']);
  });

  test.each([['TIA-485-A', 32], ['IEC 62386', 64], ['en 50090', 64], ['CiA 301', 127], ['EN 13757-2', 250]])(
    'a limit typed as %s is %i, and says where from', (name, limit) => {
      expect(parseCell(inputColumns('branches').find(({ key }) => key === 'limit')!, name))
        .toMatchObject(
          { ok: true, value: limit, hint: expect.stringMatching(new RegExp(`${name}.*\\b${limit} `, 'i')) as string }
        );
    });

  // IEC 62386: 250 mA on a line, 2 mA for each control gear, 64 of which have addresses.
  test.each<[gear: number, sensors: number, demand: number, status: string]>([
    [64, 0, 0.128, 'ok'], [60, 4, 0.24, 'ok'], [50, 10, 0.4, 'over'],
  ])('%i control gear and %i sensors of 30 mA take %d A of the 250 mA of their line: %s', (gear, sensors, demand, status) => {
    const schedule = scheduleOf({
      types: [{ type: 'Gear', nodes: 1, busDraw: 2 }, { type: 'Sensor', nodes: 1, busDraw: 30 }],
      branches: [{ branch: 'B1', limit: 64, busCurrent: 0.25, terminated: true }],
      devices: [{ type: 'Gear', qty: gear, branch: 'B1' }, { type: 'Sensor', qty: sensors, branch: 'B1' }],
    });
    expect([valueAt(schedule, 'branches', 0, 'busDemand'), valueAt(schedule, 'branches', 0, 'status')])
      .toEqual([closeTo(demand, EXACT), status]);
  });

  test.each([['branches', 'busCurrent', 0.25], ['types', 'busDraw', 2]] as const)(
    '%s.%s by IEC 62386 is %d', (sheet, key, value) => {
      expect(parseCell(inputColumns(sheet).find((column) => column.key === key)!, 'IEC 62386')).toMatchObject({ ok: true, value });
    });

  test('a device row whose nodes are not known makes it partial', () => {
    const schedule =
      scheduleOf({ branches: [{ branch: 'B1', limit: 50 }], devices: [{ ref: 'D1', qty: 2, branch: 'B1' }] });
    expect(
      [
        valueAt(schedule, 'branches', 0, 'nodes'), schedule.partialSign('branches', 0, 'nodes'),
        schedule.partialSign('branches', 0, 'free'), valueAt(schedule, 'branches', 0, 'status'),
      ]
    )
      .toEqual([0, '≥', '≤', 'incomplete']);
  });
});

describe('relay contacts of 5 A and 16 A (common practice, no source)', () => {
  const contacts: Cells[] = [
    {
      contact: '5 A', resistive: 5, lamp: 1, motor: 1, coil: 1, inrush: 30,
    }, { contact: '16 A', resistive: 16, lamp: 6, inrush: 120 },
  ];
  const output = (cells: Cells) => scheduleOf({ contacts, outputs: [{ output: 'Q1', kind: 'resistive', powerFactor: 1, efficiency: 1, ...cells }] });
  test.each<[Cells, number | null, string]>([
    // I = P ÷ 230 V; 80 % of 5 A is 4 A
    [{ contact: '5 A', power: 920 }, 4, 'ok'],
    [{ contact: '5 A', power: 943 }, 4.1, 'near'],
    [{ contact: '5 A', power: 1150 }, 5, 'near'],
    [{ contact: '5 A', power: 1173 }, 5.1, 'over'],
    [{ contact: '16 A', power: 1173 }, 5.1, 'ok'],
    [{ contact: '16 A', power: 2944 }, 12.8, 'ok'],
    [{ contact: '16 A', power: 3703 }, 16.1, 'over'],
    [{ contact: '5 A', power: 230, qty: 4 }, 4, 'ok'],
    [{ contact: '5 A', power: 460, powerFactor: 0.5 }, 4, 'ok'],
    [{ contact: '5 A', power: 96, voltage: 24 }, 4, 'ok'],
    [{ contact: '5 A', kind: 'lamp', power: 230 }, 1, 'near'], // the same contact carries less of another kind
    [{ contact: '5 A', kind: 'lamp', power: 253 }, 1.1, 'over'],
    [{ contact: '16 A', kind: 'motor', power: 230 }, 1, 'incomplete'], // no rating for motors
    [{ contact: '5 A', kind: 'lamp', power: 23, qty: 6, inrush: 5 }, 0.6, 'ok'], // 30 A may be made
    [{ contact: '5 A', kind: 'lamp', power: 23, qty: 6, inrush: 5.1 }, 0.6, 'over'],
    [{ contact: '5 A' }, null, 'incomplete'],
    [{ contact: '5 A', power: 0 }, 0, 'ok'], // a spare output
    [{ contact: '10 A', power: 230 }, 1, 'incomplete'], // a contact that is not listed
    [{ power: 230 }, 1, 'incomplete'],
  ])('%o takes %s A and is %s', (cells, current, status) => {
    const schedule = output(cells);
    expect(valueAt(schedule, 'outputs', 0, 'current')).toEqual(current === null ? null : closeTo(current, EXACT));
    expect(valueAt(schedule, 'outputs', 0, 'status')).toBe(status);
  });
});

describe('rated diversity factors of IEC 61439 on a feed of circuits of 16 A', () => {
  // 2 and 3 circuits 0.9, 4 and 5 0.8, 6 to 9 0.7, 10 or more 0.6: table as reprinted in Electricity + Control, 2019
  test.each(
    [[3, 0.9, 43.2], [5, 0.8, 64], [9, 0.7, 100.8], [10, 0.6, 96]]
  )('%d circuits at %d ask for %d A', (circuits, diversity, demand) => {
    const schedule = scheduleOf({
      feeds: [{ feed: 'F1', rated: demand, target: 1, diversity }],
      outputs: Array.from({ length: circuits }, () => ({ feed: 'F1', kind: 'resistive', power: 16 * 230 })),
    });
    expect(valueAt(schedule, 'feeds', 0, 'connected')).toEqual(closeTo(16 * circuits, EXACT));
    expect(valueAt(schedule, 'feeds', 0, 'demand')).toEqual(closeTo(demand, EXACT));
    expect(valueAt(schedule, 'feeds', 0, 'status')).toBe('ok');
  });

  test('one output without a power makes the feed partial', () => {
    const schedule = scheduleOf(
      { feeds: [{ feed: 'F1', rated: 10 }], outputs: [{ feed: 'F1', kind: 'resistive', power: 1150 }, { output: 'Q2', feed: 'F1' }] }
    );
    expect(
      [
        valueAt(schedule, 'feeds', 0, 'demand'), schedule.partialSign('feeds', 0, 'demand'),
        schedule.partialSign('feeds', 0, 'spare'), valueAt(schedule, 'feeds', 0, 'status'),
      ]
    )
      .toEqual([5, '≥', '≤', 'incomplete']);
  });
});

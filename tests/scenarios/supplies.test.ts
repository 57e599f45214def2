import { describe, expect, test } from 'vitest';
import type { Cells, Content } from '../../src/schedule/index.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { enter, findingsAt, scheduleOf, valueAt } from '../support/schedules.ts';

const near = (value: number) => closeTo(value, EXACT);

/** A schedule with one rail, L1, and these device rows on it. */
function rail(supply: Cells, devices: Cells[], more: Content['sheets'] = {}) {
  return scheduleOf({
    ...more, supplies: [{ rail: 'L1', ...supply }], devices: devices.map((device) => ({ rail: 'L1', ...device })),
  });
}

/** One row that draws this many amperes. */
const load = (amps: number): Cells => ({ ref: `D${amps}`, qty: 1, unitDraw: amps * 1000 });

const rules = (schedule: ReturnType<typeof rail>) =>
  findingsAt(schedule, 'supplies').filter(({ severity }) => severity !== 'note').map(({ rule }) => rule);

describe('a 10 A supply behind a 10 A fuse, aimed at 80 % (common practice, no source)', () => {
  test.each<[amps: number, status: string, found: string[]]>([
    [8, 'ok', []],
    [8.01, 'near', ['supply-over-target']],
    [10, 'near', ['supply-over-target']],
    [10.01, 'over', ['supply-over-usable']],
  ])('with %d A is %s', (amps, status, found) => {
    const schedule = rail({ rated: 10, fuse: 10 }, [load(amps)]);
    expect(valueAt(schedule, 'supplies', 0, 'status')).toBe(status);
    expect(rules(schedule)).toEqual(found);
  });

  test('a smaller fuse is the first limit, a larger one none', () => {
    expect(rules(rail({ rated: 10, fuse: 6 }, [load(7)]))).toEqual(['supply-over-fuse']);
    // It gives 10 A at the most.
    expect(rules(rail({ rated: 10, fuse: 16 }, [load(8)]))).toEqual(['supply-fuse-never-acts']);
  });
});

describe('redundant units, N + 1 (common practice, no source)', () => {
  test.each<[Cells, number, string]>([
    [{ rated: 10, units: 2 }, 20, 'ok'], // both carry
    [{ rated: 10, units: 2, redundant: true }, 10, 'near'], // one is the spare
    [{ rated: 10, units: 3, redundant: true, seriesDrop: 0 }, 20, 'ok'],
    [{ rated: 10, units: 3, redundant: true, derating: 0.5 }, 10, 'near'], // 10 × 2 × 0.5
    [{ rated: 10, units: 1, redundant: true }, 0, 'over'], // the only one is the spare
  ])('%o may be used for %d A and is %s with 9 A', (supply, usable, status) => {
    const schedule = rail(supply, [load(9)]);
    expect([valueAt(schedule, 'supplies', 0, 'usable'), valueAt(schedule, 'supplies', 0, 'status')])
      .toEqual([usable, status]);
  });
});

describe('diversity: the row’s own, else the type’s, else 1 (common practice, no source)', () => {
  const types: Cells[] = [{ type: 'fan', draw: 1000, diversity: 0.5 }, { type: 'lamp', draw: 1000 }];
  test.each<[Cells, number, number, boolean]>([
    [{ type: 'fan', qty: 4, diversity: 0.25 }, 0.25, 1, true],
    [{ type: 'fan', qty: 4 }, 0.5, 2, false],
    [{ type: 'lamp', qty: 4 }, 1, 4, false],
    [{ qty: 4, unitDraw: 1000 }, 1, 4, false],
    [{ type: 'fan', qty: 4, diversity: 0 }, 0, 0, true],
  ])('%o: %d gives %d A', (device, diversity, demand, own) => {
    const schedule = rail({ rated: 10 }, [device], { types });
    expect(valueAt(schedule, 'devices', 0, 'diversity')).toBe(diversity);
    expect(valueAt(schedule, 'devices', 0, 'demand')).toBe(demand);
    expect(valueAt(schedule, 'supplies', 0, 'demand')).toBe(demand);
    expect(schedule.isOwn('devices', 0, 'diversity')).toBe(own);
  });

  test('emptying the cell brings the default back, and a change of the type follows', () => {
    const schedule = rail({ rated: 10 }, [{ type: 'fan', qty: 4, diversity: 1 }], { types });
    enter(schedule, 'devices', 0, { diversity: null });
    expect(valueAt(schedule, 'supplies', 0, 'demand')).toBe(2);
    enter(schedule, 'types', 0, { diversity: 0.75 });
    expect(valueAt(schedule, 'supplies', 0, 'demand')).toBe(3);
    enter(schedule, 'devices', 0, { type: 'lamp' });
    expect(valueAt(schedule, 'supplies', 0, 'demand')).toBe(4);
  });

  test('the limit diversity is that at which the target is just met', () => {
    const schedule = rail({ rated: 10 }, [{ ...load(8), qty: 2 }]);
    // 10 A × 0.8 ÷ 16 A
    expect(valueAt(schedule, 'supplies', 0, 'limitDiversity')).toBe(0.5);
    enter(schedule, 'devices', 0, { diversity: 0.5 });
    expect([valueAt(schedule, 'supplies', 0, 'loading'), valueAt(schedule, 'supplies', 0, 'status')])
      // It stays at its target, and lives on diversity: 16 A at once.
      .toEqual([0.8, 'near']);
  });
});

describe('draw from a power, P ÷ U', () => {
  const types: Cells[] = [{ type: 'panel', power: 12 }, { type: 'both', power: 12, draw: 400 }];
  test.each<[Cells, Cells, number]>([
    [{}, { type: 'panel' }, 500], // 12 W ÷ 24 V
    [{ voltage: 12 }, { type: 'panel' }, 1000],
    [{ voltage: 48 }, { type: 'panel' }, 250],
    [{ voltage: 48 }, { type: 'both' }, 400], // a draw goes before a power
    [{ voltage: 48 }, { type: 'panel', unitDraw: 300 }, 300], // and the row’s own before both
  ])('on %o, %o draws %d mA', (supply, device, milliamps) => {
    const schedule = rail({ rated: 10, ...supply }, [{ qty: 2, ...device }], { types });
    expect(valueAt(schedule, 'devices', 0, 'unitDraw')).toEqual(near(milliamps));
    expect(valueAt(schedule, 'supplies', 0, 'demand')).toEqual(near(2 * milliamps / 1000));
  });

  test('without a rail it is not known, and the finding says what to choose', () => {
    const schedule = scheduleOf({ types, devices: [{ ref: 'D1', type: 'panel', qty: 2 }] });
    expect(valueAt(schedule, 'devices', 0, 'unitDraw')).toBeNull();
    expect(findingsAt(schedule, 'devices').map(({ message }) => message)).toContain(
      'The current of ref D1 is not known. Its type gives a power: choose a rail, whose voltage makes it a current, or enter the unit draw here in mA.');
  });
});

describe('a total that lacks rows is partial', () => {
  const unknown: Cells = { ref: 'X', qty: 3 };
  test.each<[number, string]>([[5, 'incomplete'], [8, 'incomplete'], [8.5, 'near'], [10.5, 'over']])(
    'with at least %d A of 10 A it is %s, and never ok', (amps, status) => {
      const schedule = rail({ rated: 10 }, [load(amps), unknown]);
      expect(valueAt(schedule, 'supplies', 0, 'status')).toBe(status);
      const sign = (key: string) => schedule.partialSign('supplies', 0, key);
      expect(['connected', 'demand', 'loading', 'fuseLoading'].map(sign)).toEqual(['≥', '≥', '≥', '≥']);
      expect(['spare', 'limitDiversity', 'usable', 'rated'].map(sign)).toEqual(['≤', '≤', '', '']);
      // What is missing is told at the row.
      expect(schedule.rulesAgainst('supplies', 0)).toContain('supply-demand-partial');
      expect(rules(schedule)).not.toContain('supply-demand-partial');
      expect(findingsAt(schedule, 'devices', 1)).toMatchObject([{ rule: 'device-draw-missing', waiting: 1 }]);
    });

  test('a row that is completed makes it whole', () => {
    const schedule = rail({ rated: 10 }, [load(5), unknown]);
    enter(schedule, 'devices', 1, { unitDraw: 100 });
    expect([valueAt(schedule, 'supplies', 0, 'demand'), valueAt(schedule, 'supplies', 0, 'status')])
      .toEqual([5.3, 'ok']);
    expect(schedule.partialSign('supplies', 0, 'demand')).toBe('');
  });

  test('a row whose diversity is not known is known when connected', () => {
    const schedule = rail({ rated: 10 }, [{ ...load(5), diversity: '=1/0' }]);
    expect([schedule.partialSign('supplies', 0, 'connected'), schedule.partialSign('supplies', 0, 'demand')])
      .toEqual(['', '≥']);
    expect([valueAt(schedule, 'supplies', 0, 'connected'), valueAt(schedule, 'supplies', 0, 'demand')]).toEqual([5, 0]);
  });
});

test('an empty rail carries 0 A and is ok', () => {
  const schedule = rail({ rated: 10, efficiency: 0.9 }, []);
  expect(Object.fromEntries(['connected', 'demand', 'loading', 'spare', 'limitDiversity', 'loss', 'status']
    .map((key) => [key, valueAt(schedule, 'supplies', 0, key)])))
    .toEqual({ connected: 0, demand: 0, loading: 0, spare: 8, limitDiversity: null, loss: 0, status: 'ok' });
});

test('a rail without a rating is incomplete, whatever it carries', () => {
  const schedule = rail({}, [load(5)]);
  expect(
    [
      valueAt(schedule, 'supplies', 0, 'demand'), valueAt(schedule, 'supplies', 0, 'loading'),
      valueAt(schedule, 'supplies', 0, 'status'),
    ]
  )
    .toEqual([5, null, 'incomplete']);
});

test('lighting, field and control on one rail are noted (common practice, no source)', () => {
  const types = ['lighting', 'field', 'control', 'other'].map((purpose) => ({ type: purpose, draw: 10, purpose }));
  const mixed = (supply: Cells, ...kinds: string[]) => findingsAt(
    rail({ rated: 10, ...supply }, kinds.map((type) => ({ type, qty: 1 })), { types }), 'supplies')
    .find(({ rule }) => rule === 'supply-purposes-mixed');
  expect(mixed({ purpose: 'lighting' }, 'lighting', 'lighting')).toBeUndefined();
  expect(mixed({}, 'lighting', 'other')).toBeUndefined();
  expect(mixed({ purpose: 'lighting' }, 'control')).toMatchObject({ severity: 'note', value: 'lighting, control' });
  expect(mixed({}, 'lighting', 'field', 'control')?.message).toBe(
    'Rail L1 serves lighting, field and control together. Common practice is a separate supply for each: move the devices of the other purposes.');
});

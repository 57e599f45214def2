import { expect, test } from 'vitest';
import type { Cells } from '../../src/schedule/index.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { enter, scheduleOf, valueAt } from '../support/schedules.ts';

// Panels on which a verdict would be wrong that looks at one limit only.

/** 24 W at the end of 30 m on a rail of 10 A, with three conductors to choose from. */
const lamp = (run: Cells, supply: Cells = {}) => scheduleOf({
  types: [{ type: 'T', draw: 1000, minVoltage: 21.5 }], supplies: [{ rail: 'L1', rated: 10, ...supply }],
  conductors: [
    { conductor: 'thin', resistance: 25, maxCurrent: 6 }, { conductor: 'middle', resistance: 12, maxCurrent: 12 },
    { conductor: 'thick', resistance: 5, maxCurrent: 20 },
  ],
  ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 2 }],
  runs: [{ run: 'W1', rail: 'L1', conductor: 'thin', length: 30, temperature: 30, ...run }],
  devices: [{ ref: 'D1', type: 'T', qty: 1, run: 'W1' }],
});
const of = (schedule: ReturnType<typeof lamp>, sheet: 'runs' | 'supplies', ...keys: string[]) =>
  keys.map((key) => valueAt(schedule, sheet, 0, key));
const rules = (schedule: ReturnType<typeof lamp>) =>
  schedule.findings.filter(({ severity }) => severity !== 'note').map(({ rule }) => rule);

test('a run without a way is given no conductor that its supply would overload, and the one it is given puts it right',
  () => {
    // 1.5 × 10 A for ever: of 6, 12 and 20 A only the last carries it.
    const bare = lamp({});
    expect(of(bare, 'runs', 'status', 'maxLength', 'smallestConductor')).toEqual(['over', 0, 'thick']);
    enter(bare, 'runs', 0, { conductor: 'thick' });
    expect(of(bare, 'runs', 'status')).toEqual(['ok']);
    // Behind a way the thinnest does that loses no more than 5 %: 1 A × 2 × 12 Ω/km × 30 m = 0.72 V.
    const guarded = lamp({ way: 'F1' });
    expect(of(guarded, 'runs', 'status', 'smallestConductor')).toEqual(['near', 'middle']);
    enter(guarded, 'runs', 0, { conductor: 'middle' });
    expect(of(guarded, 'runs', 'status')).toEqual(['ok']);
    // A gG of 5 A on the supply acts at 1.9 × 5 A, within 1.45 × 12; at once at 35 A, which 40 A give and 30 m of the
    // middle one let through: 24 ÷ (0.72 × 1.1965 + 0.3) = 20.7 A do not, so it needs the thick one, 36.4 A.
    const fused = lamp({}, { rated: 40, fuse: 5, fuseKind: 'gG' });
    expect(of(fused, 'runs', 'smallestConductor')).toEqual(['thick']);
    enter(fused, 'runs', 0, { conductor: 'thick' });
    expect(of(fused, 'runs', 'faultCurrent', 'status')).toEqual([closeTo(24 / (0.3 * 1.1965 + 0.3), EXACT), 'ok']);
  });

test('no cable is blamed for what its way does not let through', () => {
  // 21 × 0.1 A through 2 A; over 30 m of 25 Ω/km 2.1 A lose 3.15 V and more of 24 V, where 1.2 V may be.
  const schedule = lamp({ way: 'F1' });
  enter(schedule, 'devices', 0, { qty: 21, unitDraw: 100, type: null });
  expect(rules(schedule)).toEqual(['way-over-rated', 'run-over-drop']);
  expect(schedule.findings.find(({ rule }) => rule === 'run-over-drop')!.message.replaceAll('\u00a0', ' '))
    .toMatch(/ No conductor and no length puts it right: it draws 2\.10 A through a way of 2\.00 A\.$/);
});

test('what devices of constant power draw more at the end of their cable is asked of their rail too', () => {
  // 216 W are 9 A at 24 V. Over 28 m of 7.41 Ω/km, 0.41496 Ω, I = (24 − √(24² − 4 × 0.41496 × 216)) ÷ (2 × 0.41496).
  const ohm = 2 * 7.41 / 1000 * 28;
  const amps = (24 - Math.sqrt(576 - 4 * ohm * 216)) / (2 * ohm);
  expect(amps.toFixed(2)).toBe('11.15');
  const schedule = scheduleOf({
    types: [{ type: 'T', power: 216, load: 'power' }], supplies: [{ rail: 'L1', rated: 10 }],
    conductors: [{ conductor: 'C', resistance: 7.41, maxCurrent: 23 }],
    ways: [{ way: 'F1', rail: 'L1', kind: 'B', rated: 16 }],
    runs: [{ run: 'W1', way: 'F1', conductor: 'C', length: 28, ambient: 20, temperature: 20 }],
    devices: [{ ref: 'D1', type: 'T', qty: 1, run: 'W1' }],
  });
  expect(of(schedule, 'runs', 'connected', 'current', 'extra'))
    .toEqual([9, closeTo(amps, EXACT), closeTo(amps - 9, EXACT)]);
  expect(of(schedule, 'supplies', 'demand', 'status')).toEqual([closeTo(amps, EXACT), 'over']);
});

test('a rail that bridges a standby is judged on its battery before the capacity of that is known', () => {
  const rail = (supply: Cells) => lamp({ way: 'F1', conductor: 'thick' }, supply);
  expect(of(rail({}), 'supplies', 'lowest', 'highest')).toEqual([24, 24]);
  // 1.75 V and 2.3 V for each of twelve cells.
  const buffered = rail({ standbyHours: 4 });
  expect(of(buffered, 'supplies', 'lowest', 'highest', 'status')).toEqual([21, closeTo(27.6, EXACT), 'over']);
  expect(of(buffered, 'runs', 'status')).toEqual(['over']);
  expect(rules(buffered)).toEqual(['device-under-voltage', 'supply-battery-missing']);
  expect(of(rail({ standbyHours: 0 }), 'supplies', 'lowest', 'status')).toEqual([24, 'ok']);
});

test('one wrong voltage is one cause: no cable is blamed for it', () => {
  const schedule = lamp({ way: 'F1', conductor: 'thick' }, { voltage: 12 });
  expect(rules(schedule)).toEqual(['device-under-voltage']);
  expect([of(schedule, 'runs', 'status'), of(schedule, 'supplies', 'status')]).toEqual([['over'], ['over']]);
});

test('a way without a rail is told once, and not at its run and each device behind it', () => {
  const schedule = lamp({ way: 'F1', rail: null });
  enter(schedule, 'types', 0, { draw: null, power: 24 });
  enter(schedule, 'ways', 0, { rail: null });
  expect(rules(schedule).filter((rule) => /rail|draw/.test(rule))).toEqual(['way-rail-missing']);
  expect(of(schedule, 'runs', 'status')).toEqual(['incomplete']);
});

test('a device of another rail on a run leaves neither run, way nor rail within limits, and is told once', () => {
  const schedule = lamp({ way: 'F1', conductor: 'thick' }, {});
  expect(of(schedule, 'runs', 'status')).toEqual(['ok']);
  const { sheets } = schedule.content();
  const astray = scheduleOf({
    ...sheets, supplies: [...sheets.supplies!, { rail: 'P1', rated: 5 }],
    devices: [...sheets.devices!, { ref: 'D2', type: 'T', qty: 1, unitDraw: 500, run: 'W1', rail: 'P1' }],
  });
  expect([valueAt(astray, 'runs', 0, 'status'), valueAt(astray, 'ways', 0, 'status'), valueAt(astray, 'supplies', 0, 'status')])
    .toEqual(['incomplete', 'incomplete', 'incomplete']);
  expect(rules(astray)).toEqual(['device-run-on-other-rail']);
});

test('what switches itself off in the warmth is told as that, and not as giving nothing besides', () => {
  const schedule = scheduleOf({
    supplies: [{
      rail: 'L1', rated: 10, efficiency: 0.9, enclosure: 'E1', fullUpTo: 50, lessPerKelvin: 0.1, offAt: 65,
    }],
    enclosures: [{
      enclosure: 'E1', height: 1000, width: 1000, depth: 1000, mounting: 'free', ambient: 68, otherLoss: 0, maxInside: 90,
    }],
  });
  expect(rules(schedule)).toEqual(['supply-over-off']);
  expect(of(schedule, 'supplies', 'usable', 'status')).toEqual([0, 'over']);
});

test('one output that takes more than its feed is over, whatever the diversity of the feed', () => {
  const output = (power: number) => scheduleOf({
    contacts: [{ contact: 'K', resistive: 20 }], feeds: [{ feed: 'Q1', rated: 10, diversity: 0.5 }],
    outputs: [{ output: 'K1', contact: 'K', kind: 'resistive', power, feed: 'Q1' }],
  });
  const status = (power: number) => valueAt(output(power), 'outputs', 0, 'status');
  expect([status(2300), status(2323)]).toEqual(['ok', 'over']); // 10 A and 10.1 A
});

test('a branch whose cables nobody entered is not within its limit of cable', () => {
  const branch = (runs: Cells[]) => scheduleOf({
    types: [{ type: 'T', draw: 10, nodes: 1 }], branches: [{ branch: 'B1', limit: 32, maxCable: 500, terminators: 2 }],
    runs, devices: [{ ref: 'D1', type: 'T', qty: 3, branch: 'B1', rail: 'L1' }], supplies: [{ rail: 'L1', rated: 5 }],
  });
  const status = (runs: Cells[]) => valueAt(branch(runs), 'branches', 0, 'status');
  expect([status([]), status([{ run: 'W1', branch: 'B1', length: 500 }])]).toEqual(['incomplete', 'ok']);
});

test('a way is told to be smaller only where that helps', () => {
  // 1.8 × 2 A, and 10 A less what the others draw.
  const told = (unitDraw: number) => {
    const { sheets } = lamp({ way: 'F1', conductor: 'thick' }).content();
    const schedule = scheduleOf({ ...sheets, devices: [...sheets.devices!, { ref: 'D2', qty: 1, unitDraw, rail: 'L1' }] });
    const found = schedule.findings.find(({ rule }) => rule === 'way-may-not-act');
    return found && [found.value, found.limit, found.message.includes('lower-rated or faster')];
  };
  expect([told(6400), told(7000), told(10_000)])
    .toEqual([undefined, [closeTo(3, EXACT), closeTo(3.6, EXACT), true], [0, closeTo(3.6, EXACT), false]]);
});

import { describe, expect, test } from 'vitest';
import { explainCell } from '../../src/explanations.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { insertRows, type Cells } from '../../src/schedule/index.ts';
import { inItsWorstCase } from '../data/demo-in-its-worst-case.ts';
import { readData } from '../data/read-data.ts';
import { closeTo } from '../support/close-to.ts';
import { recalculateRuns } from '../support/independent-runs.ts';
import { enter, findingsAt, scheduleOf, typeFormula, valueAt } from '../support/schedules.ts';

const NEAR = { absolute: 1e-9, relative: 1e-9 };

describe('enclosures and what their warmth leaves of a supply, by hand', () => {
  // 20 A of 24 V at 92 %: 480 × (1 ÷ 0.92 − 1) = 41.739 W; with 8.261 W of other devices 50 W.
  // Free, 0.8 × 0.6 × 0.25 m: 1.434 m² (IEC TR 60890 factors); 50 ÷ (5.5 × 1.434) = 6.3395 K.
  const warm = (enclosure: Cells = {}, supply: Cells = {}) => scheduleOf({
    supplies: [
      { rail: 'A', rated: 25, efficiency: 0.92, enclosure: 'E', fullUpTo: 40, lessPerKelvin: 0.025, ...supply },
    ],
    enclosures: [{
      enclosure: 'E', height: 800, width: 600, depth: 250, mounting: 'free', otherLoss: 50 - 480 * (1 / 0.92 - 1),
      ambient: 40,
      maxInside: 55, ...enclosure,
    }],
    devices: [{ rail: 'A', qty: 200, unitDraw: 100 }],
  });
  const RISE = 50 / (5.5 * 1.434);
  /** At the top, where the supply sits, the rise is 1.3 times that. */
  const TOP = 1.3 * RISE;

  test('loss, area, rise and inside temperature', () => {
    const schedule = warm();
    const keys = ['supplyLoss', 'loss', 'area', 'rise', 'inside', 'top'];
    const values = [480 * (1 / 0.92 - 1), 50, 1.434, RISE, 40 + RISE, 40 + 1.3 * RISE];
    expect(keys.map((key) => valueAt(schedule, 'enclosures', 0, key)))
      .toEqual(values.map((value) => closeTo(value, NEAR)));
  });

  test('the supply gives 2.5 % less for each kelvin above 40 °C, and loading, spare and status follow', () => {
    const schedule = warm();
    const usable = 25 * (1 - 0.025 * TOP);
    expect(['usable', 'loading', 'spare', 'status'].map((key) => valueAt(schedule, 'supplies', 0, key)))
      .toEqual([closeTo(usable, NEAR), closeTo(20 / usable, NEAR), closeTo(usable * 0.8 - 20, NEAR), 'over']);
    // At 20 °C it gives all: 20 A of 25 A are exactly the target.
    enter(schedule, 'enclosures', 0, { ambient: 20 });
    expect(['usable', 'loading', 'status'].map((key) => valueAt(schedule, 'supplies', 0, key)))
      .toEqual([25, 0.8, 'ok']);
    // At 65 °C around it, it gives 25 × (1 − 0.025 × (25 + 8.24)), 4.2 A.
    enter(schedule, 'enclosures', 0, { ambient: 65 });
    expect(valueAt(schedule, 'supplies', 0, 'usable')).toEqual(closeTo(25 * (1 - 0.025 * (25 + TOP)), NEAR));
    expect(valueAt(schedule, 'supplies', 0, 'status')).toBe('over');
    schedule.undo();
    schedule.undo();
    expect(valueAt(schedule, 'supplies', 0, 'usable')).toEqual(closeTo(usable, NEAR));
  });

  test('the line and the derating as a number are multiplied', () => {
    expect(valueAt(warm({}, { derating: 0.9 }), 'supplies', 0, 'usable'))
      .toEqual(closeTo(25 * 0.9 * (1 - 0.025 * TOP), NEAR));
  });

  test('the explanation of what may be used names the line, and its numbers', () => {
    const schedule = warm();
    const { words, numbers, parts } = explainCell(schedule, 'supplies', 0, 'usable')!;
    expect(words).toBe(
      'rated × units × derating × (1 − derating per K for each kelvin of temperature at the top of the enclosure E above full output to)'
    );
    expect(numbers!.replaceAll(/[\u00a0\u202f]/g, ' '))
      .toBe('25.00 A × 1 × 100 % × (1 − 2.5 % for each kelvin of 48.2 °C above 40 °C)');
    expect(parts.map(({ sheet, key }) => `${sheet}.${key}`)).toContain('enclosures.top');
  });

  test('status: over, near, within limits and incomplete, exactly at the limits too', () => {
    const statusOf = (enclosure: Cells, supply: Cells = {}) =>
      valueAt(warm(enclosure, supply), 'enclosures', 0, 'status');
    expect(statusOf({ maxInside: 46 })).toBe('over');
    expect(statusOf({ maxInside: 40 + TOP })).toBe('near');
    expect(statusOf({ maxInside: 45 + TOP })).toBe('near');
    expect(statusOf({ maxInside: 45.01 + TOP })).toBe('ok');
    expect(statusOf({ maxInside: null })).toBe('incomplete');
    expect(statusOf({ height: null })).toBe('incomplete');
    expect(statusOf({}, { efficiency: null })).toBe('incomplete');
    // What is known is already too warm: over, though the rest is not known.
    expect(statusOf({ maxInside: 39 }, { efficiency: null })).toBe('over');
  });

  test('a loss that is known in part makes the whole enclosure so: what is shown is the least that it can be', () => {
    const schedule = warm();
    expect(schedule.partialSign('enclosures', 0, 'supplyLoss')).toBe('');
    schedule.act('add', insertRows(schedule.document, 'devices', 1, [{ rail: 'A', qty: 1 }]));
    // The supply has its efficiency; its demand lacks the draw of the new row.
    expect(valueAt(schedule, 'enclosures', 0, 'supplyLoss')).toEqual(closeTo(480 * (1 / 0.92 - 1), NEAR));
    for (const key of ['supplyLoss', 'loss', 'rise', 'inside', 'top']) {
      expect([key, schedule.partialSign('enclosures', 0, key)]).toEqual([key, '≥']);
    }
    expect(schedule.partialSign('enclosures', 0, 'area')).toBe('');
    // The device row tells what is missing; the enclosure only explains its status by it.
    expect(findingsAt(schedule, 'enclosures')).toEqual([]);
    expect(explainCell(schedule, 'enclosures', 0, 'status')!.numbers).toContain('loss of the supplies in it');
    expect(valueAt(schedule, 'enclosures', 0, 'status')).toBe('incomplete');
    enter(schedule, 'devices', 1, { unitDraw: 0 });
    expect(schedule.partialSign('enclosures', 0, 'inside')).toBe('');
    expect(valueAt(schedule, 'enclosures', 0, 'status')).toBe('ok');
  });

  test.each([['no formula is typed', undefined], ['a formula is typed', '=100+100']])(
    'a supply follows its enclosure from when it has a temperature up to which it gives all, until it has none: %s',
      (_when, formula) => {
      const schedule = warm({}, { fullUpTo: null });
      if (formula !== undefined) expect(typeFormula(schedule, 'devices', 0, 'qty', formula)).toBeUndefined();
      const usable = () => valueAt(schedule, 'supplies', 0, 'usable');
      expect(usable()).toBe(25);
      enter(schedule, 'supplies', 0, { fullUpTo: 40 });
      expect(usable()).toEqual(closeTo(25 * (1 - 0.025 * TOP), NEAR));
      enter(schedule, 'enclosures', 0, { ambient: 50 });
      expect(usable()).toEqual(closeTo(25 * (1 - 0.025 * (10 + TOP)), NEAR));
      enter(schedule, 'supplies', 0, { fullUpTo: null });
      expect(usable()).toBe(25);
      schedule.undo();
      expect(usable()).toEqual(closeTo(25 * (1 - 0.025 * (10 + TOP)), NEAR));
    });

  test('a supply whose enclosure is not complete has no usable current, and waits for what is told there', () => {
    const schedule = warm({ height: null });
    expect(['usable', 'status'].map((key) => valueAt(schedule, 'supplies', 0, key))).toEqual([null, 'incomplete']);
    expect(schedule.findings.filter(({ severity }) => severity !== 'note').map(({ rule }) => rule))
      .toEqual(['enclosure-height-missing']);
    enter(schedule, 'supplies', 0, { enclosure: null });
    expect(findingsAt(schedule, 'supplies').map(({ rule }) => rule)).toContain('supply-warm-derating-unknown');
  });
});

describe('the runs of the demo', () => {
  const demo = readData('demo.schedule.json');
  const schedule = new LoadSchedule(demo);
  const statusesOf = (of: LoadSchedule) =>
    of.rows('runs').map(({ cells }, at): [string, unknown] => [String(cells.run), valueAt(of, 'runs', at, 'status')]);

  test('each has its status, for the reason that its note tells', () => {
    // What L2-W8 draws is not known, as no voltage satisfies it, so what L2 has left for a short circuit is not. P2
    // waits for the draw of a device on P2-W3.
    const own = new Map([
      ['L1-W5', 'near'], ['L2-W2', 'near'], ['L2-W4', 'over'], ['L2-W7', 'over'], ['L2-W8', 'over'],
      ['P1-W2', 'over'],
    ]);
    expect(statusesOf(schedule)).toEqual(schedule.rows('runs').map(({ cells: { run } }) =>
      [run, own.get(String(run)) ?? (/^(L2|P2)/.test(String(run)) ? 'incomplete' : 'ok')]));
  });

  test('where these two are known, all others are within limits', () => {
    const known = new LoadSchedule(demo);
    const at = (sheet: 'runs' | 'devices', key: string, tag: string) =>
      known.rows(sheet).findIndex(({ cells }) => cells[key] === tag);
    enter(known, 'runs', at('runs', 'run', 'L2-W8'), { conductor: '6 mm² solid' });
    enter(known, 'devices', at('devices', 'ref', 'P2-035'), { unitDraw: 100 });
    expect(statusesOf(known).filter(([, status]) => status !== 'ok'))
      .toEqual([['L1-W5', 'near'], ['L2-W2', 'near'], ['L2-W4', 'over'], ['L2-W7', 'over'], ['P1-W2', 'over']]);
  });

  test('each figure is what settles hop by hop from the supply', () => {
    const settled = recalculateRuns(inItsWorstCase(demo));
    expect(schedule.rows('runs').map(({ id }) => [
      'current', 'endVoltage', 'faultCurrent', 'drop', 'dropRatio',
    ].map((key) => schedule.value('runs', id, key))))
      .toEqual(settled.map(({ current, endVoltage, faultCurrent, drop }) => [
        current, endVoltage, faultCurrent, drop, drop === null ? null : drop / 24,
      ].map((value) => value === null ? null : closeTo(value, NEAR))));
  });

  test('each device on one has the voltage there, between the end and the start', () => {
    schedule.rows('devices').forEach(({ id }) => {
      const run = schedule.target('devices', id, 'run');
      const volts = schedule.value('devices', id, 'terminalVoltage') as number | null;
      const end = run < 0 ? null : schedule.value('runs', run, 'endVoltage') as number | null;
      if (run < 0 || end === null) expect(volts).toBeNull();
      else if (volts !== null) expect(volts >= end && volts <= 24).toBe(true);
    });
  });
});

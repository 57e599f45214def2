import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { insertRows, setCells, type Cells, type Content } from '../../src/schedule/index.ts';
import { closeTo } from '../support/close-to.ts';
import { settle, type Load } from '../support/independent-circuit.ts';
import { settleFromBoth } from '../support/independent-second-feed.ts';
import { idAt, scheduleOf, valueAt } from '../support/schedules.ts';

const NEAR = { absolute: 1e-8, relative: 1e-8 };
const typed = (min: number, max: number) =>
  fc.integer({ min: min * 100, max: max * 100 }).map((hundredths) => hundredths / 100);

/** One run between two electronic ways of a rail, another on the first of them, and what hangs on them. */
const someSchedule = fc.record({
  supply: fc.record({
    rated: fc.constantFrom(5, 10, 40), peak: fc.constantFrom(1, 1.5, 4), tolerance: fc.constantFrom(0, 0.05),
  }),
  ratings: fc.tuple(fc.constantFrom(1, 2, 4, 10), fc.constantFrom(1, 2, 4, 10)),
  run: fc.record({
    length: typed(5, 90), secondLength: typed(0.5, 90), pairs: fc.constantFrom(1, 2),
    temperature: fc.constantFrom(30, 45), basis: fc.constantFrom('connected', 'demand'), maxDrop: fc.constantFrom(0.03, 0.08, 0.3),
  }),
  conductor: fc.record({
    resistance: fc.constantFrom<number>(7.41, 12.1, 36), maxCurrent: fc.constantFrom<number>(3, 8, 20),
  }),
  types: fc.tuple(...['power', 'current'].map((load) => fc.record({
    load: fc.constant(load), minVoltage: fc.constantFrom(null, 18, 22), inrush: fc.constantFrom(null, 2),
    power: fc.oneof({ weight: 12, arbitrary: typed(0.5, 12) }, { weight: 1, arbitrary: fc.constant(90) }),
  }))),
  devices: fc.array(fc.record({
    type: fc.constantFrom('T0', 'T1'), qty: fc.integer({ min: 0, max: 4 }),
    share: fc.option(fc.integer({ min: 0, max: 10 })),
    diversity: fc.constantFrom(1, 0.5), run: fc.constantFrom('W1', 'W1', 'W1', 'W2'),
  }), { minLength: 1, maxLength: 9 }),
});
type Drawn = typeof someSchedule extends fc.Arbitrary<infer Value> ? Value : never;

const contentOf = ({ supply, ratings, run, conductor, types, devices }: Drawn): Content['sheets'] => ({
  supplies: [{ rail: 'L1', ...supply }],
  ways: ratings.map((rated, at) => ({ way: `F${at + 1}`, rail: 'L1', kind: 'electronic', rated, target: 1 })),
  conductors: [{ conductor: 'C', ...conductor }],
  runs: [
    { run: 'W1', way: 'F1', secondWay: 'F2', conductor: 'C', ...run },
    { run: 'W2', way: 'F1', conductor: 'C', length: 5, temperature: 30 },
  ],
  types: types.map((type, at) => ({ type: `T${at}`, voltage: 24, ...type })),
  devices: devices.map(({ share, ...row }, at) => ({
    ref: `D${at}`, ...row, distance: share === null || row.run === 'W2' ? null : run.length * share / 10,
  })),
});

/** All that is claimed of the run and its ways, by letting voltages settle; nothing of the product is asked. */
function independent({ supply, ratings, run, conductor, types, devices }: Drawn) {
  const [total, pairs] = [run.length + run.secondLength, run.pairs];
  const cold = 2 * conductor.resistance / 1000 / pairs;
  const ohms = cold * (1 + 0.00393 * (run.temperature - 20));
  const of = (name: string) => devices.filter((device) => device.run === name).map((device) => {
    const type = types[device.type === 'T0' ? 0 : 1]!;
    const each = type.power / 24;
    return {
      ...device, each, needs: device.qty === 0 ? null : type.minVoltage, isPower: type.load === 'power',
      power: type.power, starts: Math.max(each, type.inrush ?? 0),
    };
  });
  const loadsOf = (name: string, onDemand: boolean): Load[] => of(name).map((device) => {
    const count = device.qty * (onDemand ? device.diversity : 1);
    const metres = name === 'W2' ? 5 : device.share === null ? run.length : run.length * device.share / 10;
    return device.isPower ? { metres, amps: 0, watts: count * device.power }
      : { metres, amps: count * device.each, watts: 0 };
  });
  const sum = (each: readonly number[]) => each.reduce((all, one) => all + one, 0);
  const amps = (name: string, onDemand: boolean) =>
    sum(of(name).map((device) => device.qty * device.each * (onDemand ? device.diversity : 1)));
  const onDemand = run.basis === 'demand';
  const demanded = settleFromBoth(loadsOf('W1', true), 24, ohms, total);
  const nominal = settleFromBoth(loadsOf('W1', onDemand), 24, ohms, total);
  const lowest = 24 * (1 - supply.tolerance);
  const least = settleFromBoth(loadsOf('W1', onDemand), lowest, ohms, total);
  const other = settle(loadsOf('W2', true), 24, 2 * conductor.resistance / 1000 * (1 + 0.00393 * 10));
  if (demanded === null || nominal === null || least === null || other === null) return undefined;
  const [connected, demand] = [amps('W1', false), amps('W1', true)];
  const extra = Math.max(0, demanded.first + demanded.second - demand);
  const shareOf = (part: number, whole: number) => whole === 0 ? 0 : part / whole;
  const secondDemand = (demand + extra) * shareOf(demanded.second, demanded.first + demanded.second);
  const moments = sum(loadsOf('W1', false).map(({ metres, amps: steady, watts }) => metres * (steady + watts / 24)));
  const secondConnected = (connected + extra) * shareOf(moments, total * connected);
  const otherExtra = Math.max(0, other.current - amps('W2', true));
  const demands = [demand + extra - secondDemand + amps('W2', true) + otherExtra, secondDemand] as const;
  const railDemand = demands[0] + demands[1];
  const usable = supply.rated * supply.peak;
  const available = demands.map((own) => Math.max(0, usable - (railDemand - own)));
  const mostAvailable = Math.min(...available);
  const hot = cold * (1 + 0.00393 * 50);
  const fault = Math.min(mostAvailable, lowest / (hot * total + 0.3));
  const margins = (volts: readonly number[]) =>
    of('W1').flatMap(({ needs }, at) => needs === null ? [] : [volts[at]! - needs]);
  const open = [loadsOf('W1', onDemand), loadsOf('W1', onDemand).map((load) => ({ ...load, metres: total - load.metres }))]
    .flatMap((loads) => margins(settle(loads, lowest, ohms)?.volts ?? loads.map(() => 0)));
  const needed = ratings.map((rated) => rated * 1.8) as [number, number];
  // The place where neither gets a larger share of what it needs, found by trying places.
  const shares = Array.from({ length: 20_001 }, (_each, place) => {
    const x = total * place / 20_000;
    const all = Math.min(mostAvailable, lowest / (hot * x * (total - x) / total + 0.3));
    return Math.max(all * (total - x) / total / needed[0], all * x / total / needed[1]);
  });
  const carries = conductor.maxCurrent * pairs * (pairs === 2 ? 0.8 : 1);
  const largest = Math.max(0, ...of('W1').map(({ qty, each }) => qty === 0 ? 0 : each));
  const both = nominal.first + nominal.second;
  const isOver = Math.max(...ratings) > carries || both > carries || largest > carries
    || margins(least.volts).some((margin) => margin < -1e-9);
  const isNear = 24 - nominal.endVoltage > run.maxDrop * 24 + 1e-9 || fault < Math.max(...needed) - 1e-9;
  const starts = ['W1', 'W2'].map((name) => sum(of(name).map(({ qty, starts: each }) => qty * each))) as [number, number];
  return {
    run: {
      current: both, drop: 24 - nominal.endVoltage, endVoltage: least.endVoltage, extra, faultCurrent: fault,
      available: mostAvailable, wholeLength: total, secondConnected,
      firstConnected: connected + extra - secondConnected,
      firstDemand: demand + extra - secondDemand, secondDemand,
      voltageMargin: margins(least.volts).length === 0 ? null : Math.min(...margins(least.volts)),
      openMargin: open.length === 0 ? null : Math.min(...open),
    },
    volts: least.volts,
    ways: [
      { connected: connected + extra - secondConnected + amps('W2', false) + otherExtra, start: starts[0] + starts[1] },
      { connected: secondConnected, start: starts[0] },
    ].map((way, at) => ({ ...way, demand: demands[at]!, available: available[at]! })),
    railDemand, leastShare: Math.min(...shares), isOver, isNear,
  };
}

const close = (value: unknown): unknown => typeof value === 'number' ? closeTo(value, NEAR)
  : Array.isArray(value) ? value.map(close)
  : value === null ? null
  : Object.fromEntries(Object.entries(value as object).map(([key, each]) => [key, close(each)]));

describe('a run between two ways of a rail, on random schedules', () => {
  test('comes to what an independent calculation gives, in every figure of run, ways and rail, and in its status', () => {
    const seen = { over: 0, near: 0, shared: 0, ok: 0, collapsed: 0, open: 0 };
    fc.assert(fc.property(someSchedule, (drawn) => {
      const schedule = scheduleOf(contentOf(drawn));
      const expected = independent(drawn);
      if (expected === undefined) {
        expect(schedule.findings.map(({ rule }) => rule)).toContain('run-no-working-voltage');
        seen.collapsed += 1;
        return;
      }
      const figures = (sheet: 'runs' | 'ways', at: number, of: object) =>
        Object.fromEntries(Object.keys(of).map((key) => [key, valueAt(schedule, sheet, at, key)]));
      expect(figures('runs', 0, expected.run)).toEqual(close(expected.run));
      expect(schedule.members('devices', 'run', idAt(schedule, 'runs'))
        .map((id) => schedule.value('devices', id, 'terminalVoltage'))).toEqual(close(expected.volts));
      expected.ways.forEach((way, at) => { expect(figures('ways', at, way)).toEqual(close(way)); });
      expect(valueAt(schedule, 'supplies', 0, 'demand')).toEqual(closeTo(expected.railDemand, NEAR));
      const found = schedule.findingsOf('runs', idAt(schedule, 'runs')).map(({ rule }) => rule);
      const isShared = found.includes('run-ways-share-fault');
      if (Math.abs(expected.leastShare - 1) > 1e-3) expect(isShared).toBe(expected.leastShare < 1);
      const status = expected.isOver ? 'over' : expected.isNear || isShared ? 'near' : 'ok';
      expect([drawn, valueAt(schedule, 'runs', 0, 'status')]).toEqual([drawn, status]);
      seen[status] += 1;
      if (isShared) seen.shared += 1;
      if (found.includes('run-one-way-open')) seen.open += 1;
    }), { numRuns: 300 });
    for (const [kind, count] of Object.entries(seen)) expect([kind, count > 3]).toEqual([kind, true]);
  });

  test('the longest that it may be with what is behind as it is: a little less works, a little more does not', () => {
    let tried = 0;
    const fails = (drawn: Drawn, factor: number) => {
      const length = drawn.run.length * factor;
      const schedule = scheduleOf(contentOf({ ...drawn, run: { ...drawn.run, length } }));
      const value = (sheet: 'runs' | 'ways', key: string, at = 0) => Number(valueAt(schedule, sheet, at, key));
      const isBeyondWay = value('runs', 'current') > 0 && [0, 1].some((at) => {
        const through = drawn.run.basis === 'demand' ? ['firstDemand', 'secondDemand'] : [];
        return through.length > 0 && value('runs', through[at]!) > drawn.ratings[at]! * (1 + 1e-9);
      });
      const rules = schedule.findingsOf('runs', idAt(schedule, 'runs')).filter(({ severity }) => severity !== 'note').map(({ rule }) => rule);
      return isBeyondWay || rules.length > 0;
    };
    fc.assert(fc.property(someSchedule, (drawn) => {
      // All at once two ways may carry more than they are rated, which their own checks tell by their demand.
      fc.pre(drawn.run.basis === 'demand');
      const schedule = scheduleOf(contentOf(drawn));
      const longest = valueAt(schedule, 'runs', 0, 'maxLength');
      if (typeof longest !== 'number' || longest === 0) return;
      const isToldElsewhere = schedule.findings.some(({ sheet, severity }) => sheet === 'ways' && severity === 'near');
      fc.pre(!isToldElsewhere);
      tried += 1;
      expect(fails(drawn, longest / drawn.run.length * 1.000_01)).toBe(true);
      expect(fails(drawn, longest / drawn.run.length * 0.999_99)).toBe(false);
    }), { numRuns: 80 });
    expect(tried).toBeGreaterThan(10);
  });
});

describe('edits', () => {
  const sheets = contentOf({
    supply: { rated: 10, peak: 4, tolerance: 0 }, ratings: [4, 4], // 0.02 Ω/m at 30 °C.
    conductor: { resistance: 10 / 1.0393, maxCurrent: 16 },
    run: { length: 50, secondLength: 50, pairs: 1, temperature: 30, basis: 'connected', maxDrop: 0.3 },
    types: [
      { load: 'power', power: 24, minVoltage: 18, inrush: null }, { load: 'current', power: 24, minVoltage: 18, inrush: null },
    ],
    devices: [{ type: 'T1', qty: 2, share: null, diversity: 1, run: 'W1' }],
  });
  const edit = (key: string, value: Cells[string]) => {
    const schedule = scheduleOf(sheets);
    schedule.act('edit', setCells(schedule.document, [{ sheet: 'runs', id: idAt(schedule, 'runs'), key, value }]));
    return schedule;
  };
  const demands = (schedule: ReturnType<typeof edit>) => [0, 1].map((at) => valueAt(schedule, 'ways', at, 'demand'));

  test('2 A in the middle of two ways come half through each; without the second all through the first', () => {
    expect(demands(scheduleOf(sheets))).toEqual([closeTo(1, NEAR), closeTo(1, NEAR)]);
    const alone = edit('secondWay', null);
    expect(demands(alone)).toEqual([2, 0]);
    expect(valueAt(alone, 'runs', 0, 'drop')).toEqual(closeTo(2, NEAR));
    alone.undo();
    expect(demands(alone)).toEqual([closeTo(1, NEAR), closeTo(1, NEAR)]);
    expect(valueAt(alone, 'runs', 0, 'drop')).toEqual(closeTo(1, NEAR));
  });

  test('a longer way back takes less: 25 m more leave the second 2 A × 50 ÷ 125', () => {
    expect(demands(edit('secondLength', 75))).toEqual([closeTo(1.2, NEAR), closeTo(0.8, NEAR)]);
  });

  test.each<[string, Cells[string]]>([['secondLength', null], ['secondWay', 'F1'], ['secondWay', 'F9'], ['way', null]])(
    'with %s %s nothing is claimed of either way', (key, value) => {
      const schedule = edit(key, value);
      for (const figure of ['current', 'drop', 'endVoltage', 'firstDemand', 'secondDemand', 'maxLength']) {
        expect([figure, valueAt(schedule, 'runs', 0, figure)]).toEqual([figure, null]);
      }
      expect(['incomplete', 'over', 'near']).toContain(valueAt(schedule, 'runs', 0, 'status'));
      // What comes through it is at least what is shown: nothing.
      expect(valueAt(schedule, 'ways', 0, 'demand')).toBe(0);
    });

  test('a way whose tag stands twice leaves what comes through it in doubt', () => {
    const schedule = scheduleOf(sheets);
    schedule.act('edit', insertRows(schedule.document, 'ways', 2, [{ way: 'F2', rail: 'L1', kind: 'electronic', rated: 4 }]));
    expect(schedule.isPartial('runs', idAt(schedule, 'runs'), 'secondDemand')).toBe(true);
  });
});

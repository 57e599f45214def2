import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { moveRows, setCells, type Cells, type Content } from '../../src/schedule/index.ts';
import { closeTo } from '../support/close-to.ts';
import { independentRun, someRunSchedule } from './random-runs.ts';

const FIGURES = [
  'current', 'drop', 'dropRatio', 'endVoltage', 'minVoltage', 'voltageMargin', 'extra', 'temperature', 'faultCurrent',
  'carries',
] as const;

/** Near the point of collapse a voltage is as uncertain as the root of the last digit. */
const toleranceFor = (endVolts: number, supplyVolts: number) =>
  ({ absolute: endVolts < 0.65 * supplyVolts ? 1e-6 : 1e-9, relative: 1e-9 });

/** Figures of every run, and of every device on one, as the software gives them. */
function figuresOf(schedule: LoadSchedule) {
  return schedule.rows('runs').map(({ id }) => ({
    ...Object.fromEntries(FIGURES.map((key) => [key, schedule.value('runs', id, key)])),
    collapses: schedule.outcome('runs', id) !== undefined, isPartial: schedule.partialSign('runs', id, 'drop') !== '',
    volts: schedule.members('devices', 'run', id).map((member) => schedule.value('devices', member, 'terminalVoltage')),
    margins: schedule.members('devices', 'run', id).map((member) => schedule.value('devices', member, 'voltageMargin')),
  }));
}

/** The same, worked out independently. */
function expectedOf(content: Content) {
  return content.sheets.runs!.map((cells) => {
    const {
      run, lowest, isPartial, minVoltage, extra, temperature, faultCurrent, carries, margins,
    } = independentRun(content, cells);
    const close = (working: typeof run) => (value: number | null) =>
      value === null || !working ? value : closeTo(value, toleranceFor(working.endVoltage, working.supplyVolts));
    const [near, low] = [close(run), close(lowest)];
    const always = (value: number | null) => value === null ? null : closeTo(value, { absolute: 1e-9, relative: 1e-9 });
    const drop = run ? run.supplyVolts - run.endVoltage : null;
    const rows = content.sheets.devices!.filter((row) => row.run === cells.run);
    const known = margins.filter((margin) => margin !== null);
    return {
      current: near(run?.current ?? null), drop: near(drop), dropRatio: near(run ? drop! / run.supplyVolts : null),
      endVoltage: low(lowest?.endVoltage ?? null), minVoltage,
      voltageMargin: low(known.length === 0 ? null : Math.min(...known)),
      // Near collapse the current is as uncertain as the voltage.
      extra: extra === null ? null : closeTo(extra, { absolute: 1e-5, relative: 1e-6 }),
      temperature: always(temperature),
      faultCurrent: faultCurrent === null ? null : closeTo(faultCurrent, { absolute: 1e-5, relative: 1e-9 }),
      carries: always(carries), collapses: run === null || lowest === null, isPartial,
      volts: lowest ? lowest.volts.map(low) : rows.map(() => null), margins: margins.map(low),
    };
  });
}

test('200 random schedules: every figure of every run is what nodal analysis gives', () => {
  const seen = { working: 0, collapsed: 0, unknown: 0, partial: 0, mixed: 0, hot: 0 };
  fc.assert(fc.property(someRunSchedule, (content) => {
    const schedule = new LoadSchedule(content);
    expect(figuresOf(schedule)).toEqual(expectedOf(content));
    for (const [at, cells] of content.sheets.runs!.entries()) {
      const { run, missing, taps, carries } = independentRun(content, cells);
      const named = content.sheets.conductors!.find(({ conductor }) => conductor === cells.conductor);
      const hottest = named?.maxTemperature ?? 70;
      if (cells.conductor && Number(cells.temperature ?? -40) > Number(hottest)) {
        seen.hot += 1;
        expect(schedule.value('runs', schedule.rows('runs')[at]!.id, 'status')).toBe('over');
      }
      if (carries === null) expect(schedule.value('runs', schedule.rows('runs')[at]!.id, 'status')).not.toBe('ok');
      seen[run === undefined ? 'unknown' : run === null ? 'collapsed' : 'working'] += 1;
      if (missing > 0) seen.partial += 1;
      if (taps.some((tap) => (tap?.watts ?? 0) > 0) && taps.some((tap) => (tap?.amps ?? 0) > 0)) seen.mixed += 1;
    }
    schedule.dispose();
  }), { numRuns: 200 });
  // Every kind of run was among them.
  for (const [kind, count] of Object.entries(seen)) expect([kind, count > 20]).toEqual([kind, true]);
});

test('edits of anything that a run depends on are followed, as if the schedule were built afresh', () => {
  const edits = [
    ['types', 'power', 3], ['types', 'load', 'power'], ['types', 'draw', null], [
      'types', 'minVoltage', 11,
    ], ['supplies', 'voltage', 48],
    ['supplies', 'rated', 7], ['supplies', 'peak', 2], ['supplies', 'tolerance', 0.15], ['supplies', 'seriesDrop', 0.5],
    ['supplies', 'battery', 12],
    ['supplies', 'redundant', true], ['supplies', 'innerResistance', 0.8], ['runs', 'temperature', null], [
      'conductors', 'resistance', 3.08,
    ], ['conductors', 'maxCurrent', 4],
    ['conductors', 'maxTemperature', 90], [
      'conductors', 'baseTemperature', 40,
    ], ['runs', 'ambient', 45], ['runs', 'grouped', 6],
    ['runs', 'pairs', 3], ['runs', 'length', 33], [
      'runs', 'temperature', 55,
    ], ['runs', 'basis', 'demand'], ['runs', 'conductor', 'C1'],
    ['devices', 'qty', 4], ['devices', 'run', 'W1'], ['devices', 'distance', 7.5], ['devices', 'unitDraw', 44], [
      'devices', 'diversity', 0.5,
    ],
  ] as const;
  const someEdits = fc.array(fc.tuple(fc.constantFrom(...edits), fc.nat()), { minLength: 1, maxLength: 6 });
  fc.assert(fc.property(someRunSchedule, someEdits, (content, chosen) => {
    const schedule = new LoadSchedule(content);
    for (const [[sheet, key, value], at] of chosen) {
      const rows = schedule.rows(sheet);
      if (rows.length === 0) continue;
      schedule.act('Edit', setCells(schedule.document, [{ sheet, id: rows[at % rows.length]!.id, key, value }]));
    }
    expect(figuresOf(schedule)).toEqual(expectedOf(schedule.content()));
    schedule.dispose();
  }), { numRuns: 60 });
});

const withoutVolts = (figures: ReturnType<typeof figuresOf>) =>
  figures.map(({ volts: _volts, margins: _margins, ...rest }) => rest);
/** Figures of runs but for their last digits. */
const near = (figures: ReturnType<typeof figuresOf>) => withoutVolts(figures).map((figure) => Object.fromEntries(
  Object.entries(figure).map(([key, value]) =>
    [key, typeof value === 'number' ? closeTo(value, { absolute: 1e-6, relative: 1e-9 }) : value]),
));

describe('what makes no difference', () => {
  test('the order of rows', () => {
    fc.assert(fc.property(someRunSchedule, fc.nat(), fc.nat(), (content, from, to) => {
      const schedule = new LoadSchedule(content);
      const before = near(figuresOf(schedule));
      const rows = schedule.rows('devices');
      if (rows.length === 0) return;
      schedule.act('Move', moveRows(schedule.document, 'devices', [rows[from % rows.length]!.id], to % rows.length));
      expect(withoutVolts(figuresOf(schedule))).toEqual(before);
      schedule.dispose();
    }), { numRuns: 60 });
  });

  test('whether devices stand in one row or in two', () => {
    fc.assert(fc.property(someRunSchedule, fc.nat(), fc.integer({ min: 0, max: 6 }), (content, at, part) => {
      const devices = content.sheets.devices!;
      const row = devices[at % Math.max(1, devices.length)];
      if (typeof row?.qty !== 'number') return;
      const first = Math.min(part, row.qty);
      const rest = row.qty - first;
      const split = devices.flatMap(
        (each): Cells[] => each === row ? [{ ...row, qty: first }, { ...row, qty: rest }] : [each],
      );
      const [one, two] = [
        new LoadSchedule(content), new LoadSchedule({ ...content, sheets: { ...content.sheets, devices: split } }),
      ];
      expect(withoutVolts(figuresOf(two))).toEqual(near(figuresOf(one)));
    }), { numRuns: 60 });
  });
});

describe('more is never better', () => {
  const grown: Readonly<Record<string, (content: Content) => Content['sheets']>> = {
    'more devices': ({ sheets }) =>
      ({ devices: sheets.devices!.map((row) => typeof row.qty === 'number' ? { ...row, qty: row.qty + 1 } : row) }),
    'a longer run': ({ sheets }) => ({
      runs: sheets.runs!.map((row) => typeof row.length === 'number' ? { ...row, length: row.length * 1.2 } : row),
      devices: sheets.devices!.map((row) => typeof row.distance === 'number' ? {
        ...row, distance: row.distance * 1.2,
      } : row),
    }),
    'more resistance': ({ sheets }) => ({
      conductors: sheets.conductors!.map((row) => typeof row.resistance === 'number' ? {
        ...row, resistance: row.resistance * 1.2,
      } : row),
    }),
    'a warmer cable': ({ sheets }) =>
      // By its load none gets warmer than the 90 °C that its conductor may have.
      ({ runs: sheets.runs!.map((row) => ({ ...row, temperature: (row.temperature as number | null ?? 90) + 10 })) }),
  };

  test.each(Object.keys(grown))('%s: no voltage rises', (name) => {
    fc.assert(fc.property(someRunSchedule, (content) => {
      const more = { ...content, sheets: { ...content.sheets, ...grown[name]!(content) } };
      const [before, after] = [new LoadSchedule(content), new LoadSchedule(more)].map((schedule) =>
        schedule.rows('runs').map(({ id }) => schedule.outcome('runs', id) === undefined ? schedule.value(
          'runs', id, 'endVoltage'
        ) as number | null : -Infinity));
      before!.forEach((volts, at) => {
        if (volts !== null) expect(after![at]!).toBeLessThanOrEqual(volts + 1e-9);
      });
    }), { numRuns: 60 });
  });
});

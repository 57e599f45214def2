import { describe, expect, test } from 'vitest';
import type { Cells, Content } from '../../src/schedule/index.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { enter, findingsAt, scheduleOf, valueAt } from '../support/schedules.ts';

/** Hand arithmetic to four digits or more. */
const near = (value: number) => closeTo(value, { absolute: 0, relative: 1e-4 });
const exact = (value: number) => closeTo(value, EXACT);

/** 10 Ω/km: with two conductors 0.02 Ω/m at 20 °C, 0.02393 Ω/m at 70 °C; it carries 16 A in air of 20 °C. */
const CONDUCTOR: Cells = { conductor: 'C', resistance: 10, maxCurrent: 16, baseTemperature: 20 };

interface Given {
  readonly supply?: Cells;
  readonly way?: Cells;
  readonly run?: Cells;
  readonly conductor?: Cells;
  readonly types?: Cells[];
  readonly devices: Cells[];
}

/** A rail L1 of 24 V, one run R1 at 20 °C, in air as cool, on an electronic way F1 of 2 A, and devices on it. */
function panel({ supply, way, run, conductor, types = [], devices }: Given) {
  const sheets: Content['sheets'] = {
    supplies: [{ rail: 'L1', rated: 10, ...supply }], ways: [{ way: 'F1', rail: 'L1', kind: 'electronic', rated: 2, ...way }],
    conductors: [{ ...CONDUCTOR, ...conductor }], types,
    runs: [{ run: 'R1', way: 'F1', conductor: 'C', length: 50, ambient: 20, temperature: 20, ...run }],
    devices: devices.map((device) => ({ rail: 'L1', qty: 1, ...device })),
  };
  return scheduleOf(sheets);
}

const rules = (schedule: ReturnType<typeof panel>, sheet: 'supplies' | 'runs' | 'devices') =>
  findingsAt(schedule, sheet).filter(({ severity }) => severity !== 'note').map(({ rule }) => rule);

describe('what the supply still has for a short circuit', () => {
  test('10 A × 1.2 with 7 A on other devices leaves 5 A, and a redundant unit adds nothing', () => {
    const supplies: Cells[] = [{ peak: 1.2 }, { peak: 1.2, units: 2, redundant: true, seriesDrop: 0 }];
    for (const supply of supplies) {
      const schedule = panel({ supply, devices: [{ unitDraw: 7000 }, { unitDraw: 0, run: 'R1' }] });
      // The cable would let 24 ÷ (0.02393 × 50 + 0.3) = 16.04 A through.
      expect([valueAt(schedule, 'runs', 0, 'available'), valueAt(schedule, 'runs', 0, 'faultCurrent')])
        .toEqual([exact(5), exact(5)]);
    }
  });

  test('the cable counts at 70 °C, behind 0.3 Ω: 24 ÷ (0.02393 × 200 + 0.3)', () => {
    const schedule = panel({ run: { length: 200 }, devices: [{ unitDraw: 0, run: 'R1' }] });
    expect(valueAt(schedule, 'runs', 0, 'faultCurrent')).toEqual(near(4.7188));
  });
});

describe('constant power draws more at the end of a cable, and the supply gives it', () => {
  const types = [{ type: 'P', power: 24, load: 'power', diversity: 1 }];
  // 24 W behind 1 Ω: U = (24 + √(24² − 4 × 24)) ÷ 2 = 22.954451 V, I = 1.0455488 A.
  test.each<[number, string]>([[1.02, 'over'], [1.4, 'ok']])('1.0455 A of a supply of %d A is %s', (rated, status) => {
    const schedule = panel({ supply: { rated, target: 1 }, types, devices: [{ type: 'P', run: 'R1' }] });
    expect(valueAt(schedule, 'runs', 0, 'extra')).toEqual(near(0.0455488));
    expect(valueAt(schedule, 'supplies', 0, 'demand')).toEqual(near(1.0455488));
    expect(valueAt(schedule, 'supplies', 0, 'connected')).toEqual(near(1.0455488));
    expect(rules(schedule, 'supplies').includes('supply-over-usable')).toBe(status === 'over');
  });

  test('extra follows the diversity, whatever the basis: 12 W behind 1 Ω', () => {
    const schedule = panel({ types, devices: [{ type: 'P', run: 'R1', diversity: 0.5 }] });
    // U = (24 + √(24² − 4 × 12)) ÷ 2 = 23.489125 V, I = 0.5108747 A.
    expect(valueAt(schedule, 'runs', 0, 'extra')).toEqual(near(0.0108747));
    expect(valueAt(schedule, 'runs', 0, 'current')).toEqual(near(1.0455488));
  });
});

describe('each device is judged at its own place', () => {
  const types: Cells[] = [{ type: 'near', draw: 100, minVoltage: 21.6 }, { type: 'far', draw: 1000, minVoltage: 10 }];
  const devices: Cells[] = [{ type: 'near', run: 'R1', distance: 5 }, { type: 'far', run: 'R1' }];

  test('a 21.6 V device near the supply and a 10 V device at the end', () => {
    // 1.1 A × 0.1 Ω to the first, 1 A × 2.9 Ω on to the second: 23.89 V and 20.99 V.
    const schedule = panel({ types, devices, run: { length: 150, maxDrop: 0.5 } });
    expect([0, 1].map((at) => valueAt(schedule, 'devices', at, 'voltageMargin'))).toEqual([exact(2.29), exact(10.99)]);
    expect(valueAt(schedule, 'runs', 0, 'voltageMargin')).toEqual(exact(2.29));
    expect(valueAt(schedule, 'runs', 0, 'status')).toBe('ok');
    // A short circuit of 1.8 × 2 A is the first limit: (24 ÷ 3.6 − 0.3) ÷ 0.02393 = 266.05 m.
    expect(valueAt(schedule, 'runs', 0, 'maxLength')).toEqual(near(266.0537));
  });

  test('one that lacks voltage is over, said once, at the run, by its name', () => {
    // From 22 V 21.39 V are left 5 m on, where 21.6 V are needed.
    const schedule = panel({ types, devices, supply: { tolerance: 1 / 12 }, run: { length: 150, maxDrop: 0.5 } });
    expect(valueAt(schedule, 'devices', 0, 'voltageMargin')).toEqual(exact(0.29));
    const worse = panel({ types, devices: [{ ...devices[0], ref: 'D1' }, devices[1]!], supply: { tolerance: 0.1 }, run: { length: 150, maxDrop: 0.5 } });
    expect(valueAt(worse, 'devices', 0, 'voltageMargin')).toEqual(exact(-0.11));
    expect([valueAt(worse, 'runs', 0, 'status'), rules(worse, 'runs'), rules(worse, 'devices')])
      .toEqual(['over', ['run-under-voltage'], []]);
    expect(findingsAt(worse, 'runs')[0]!.message).toContain('ref D1 gets 0.11 V less than it needs at its place.');
    expect(valueAt(worse, 'runs', 0, 'drop')).toEqual(exact(3.01));
  });
});

describe('everything at once', () => {
  test('38 motors, 30.4 A on 10 A at a diversity of 0.25, shut the supply down in a wind alarm', () => {
    const schedule = panel({ devices: [{ qty: 38, unitDraw: 800, diversity: 0.25 }] });
    expect([valueAt(schedule, 'supplies', 0, 'connected'), valueAt(schedule, 'supplies', 0, 'demand')])
      .toEqual([exact(30.4), exact(7.6)]);
    expect([valueAt(schedule, 'supplies', 0, 'status'), rules(schedule, 'supplies')])
      .toEqual(['near', ['supply-lives-on-diversity-usable']]);
    expect(findingsAt(schedule, 'supplies')[0]!.message).toContain('wind alarm');
  });

  test('25 A through a fuse of 10 A at exactly 100 %', () => {
    const schedule = panel({
      supply: { rated: 40, fuse: 10, fuseKind: 'gG' }, devices: [{ qty: 25, unitDraw: 1000, diversity: 0.4 }],
    });
    expect([valueAt(schedule, 'supplies', 0, 'status'), rules(schedule, 'supplies')])
      .toEqual(['near', ['supply-lives-on-diversity-fuse']]);
  });

  test('one device beyond what may be used is over whatever its diversity', () => {
    const schedule = panel({ devices: [{ unitDraw: 12_000, diversity: 0.1 }] });
    expect(rules(schedule, 'devices')).toEqual(['device-over-supply']);
  });

  test('one device beyond what its cable carries is over whatever its diversity', () => {
    const schedule = panel({
      supply: { rated: 40 }, run: { basis: 'demand' }, devices: [{ unitDraw: 17_000, diversity: 0.05, run: 'R1' }],
    });
    expect(rules(schedule, 'devices')).toEqual(['device-over-run']);
    // 0.85 A of demand would be no matter; the device is told once, at its row.
    expect([valueAt(schedule, 'runs', 0, 'status'), rules(schedule, 'runs')]).toEqual(['over', []]);
  });
});

describe('voltage of supplies and devices', () => {
  test('24 V ± 5 % behind a diode of 0.5 V: 22.3 V to 25.2 V', () => {
    const schedule = panel({
      supply: { tolerance: 0.05, seriesDrop: 0.5, units: 2, redundant: true }, devices: [{ unitDraw: 0 }],
    });
    expect([valueAt(schedule, 'supplies', 0, 'lowest'), valueAt(schedule, 'supplies', 0, 'highest')])
      .toEqual([exact(22.3), exact(25.2)]);
  });

  // Twelve cells: 1.75 V each when empty, 2.3 V when charged (from memory); 21 − 0.5 and 27.6 V.
  test('a battery makes it 20.5 V to 27.6 V behind the same diode: a device that needs 21 V, or stands 27 V, says so', () => {
    const given = { tolerance: 0.05, seriesDrop: 0.5, units: 2, redundant: true, battery: 12 };
    const schedule = panel({
      supply: given, types: [{ type: 'A', minVoltage: 21, maxVoltage: 27 }], devices: [{ unitDraw: 1, type: 'A', run: 'R1' }],
    });
    expect([valueAt(schedule, 'supplies', 0, 'lowest'), valueAt(schedule, 'supplies', 0, 'highest')])
      .toEqual([exact(20.5), exact(27.6)]);
    // No cable is the cause: it is told at the device, too much first, and neither rail nor run is within limits.
    const states = () => (['supplies', 'runs'] as const).map((sheet) => valueAt(schedule, sheet, 0, 'status'));
    expect([rules(schedule, 'runs'), rules(schedule, 'devices')]).toEqual([[], ['device-over-voltage']]);
    enter(schedule, 'types', 0, { maxVoltage: 28 });
    expect([rules(schedule, 'runs'), rules(schedule, 'devices'), states()])
      .toEqual([[], ['device-under-voltage'], ['over', 'over']]);
    enter(schedule, 'supplies', 0, { battery: null });
    expect([rules(schedule, 'runs'), rules(schedule, 'devices'), states()]).toEqual([[], [], ['ok', 'ok']]);
    // What is regulated worse than that counts.
    enter(schedule, 'supplies', 0, { battery: 12, tolerance: 0.2 });
    expect([valueAt(schedule, 'supplies', 0, 'lowest'), valueAt(schedule, 'supplies', 0, 'highest')])
      .toEqual([exact(18.7), exact(28.8)]);
  });

  test('where the supply itself gives less than a device needs, no cable is named as the remedy', () => {
    // 24 V × 0.88 = 21.12 V, of which the other one lacks 0.1 V for its 21.1 V at the end of 1.2 Ω.
    const schedule = panel({
      supply: { tolerance: 0.12 },
      types: [{ type: 'T', draw: 100, minVoltage: 21.6 }, { type: 'U', draw: 0, minVoltage: 21.1 }],
      devices: [{ type: 'T', run: 'R1' }, { type: 'U', run: 'R1' }],
    });
    expect(rules(schedule, 'devices')).toEqual(['device-under-voltage']);
    expect(findingsAt(schedule, 'runs').find(({ rule }) => rule === 'run-under-voltage')?.message).toContain(
      ' No cable puts it right: its supply may give 21.12 V, and a device on it needs 21.60 V. Use a supply that holds its voltage higher, or a type that needs less.');
  });

  test('what decouples redundant units is asked for once, at the supply; 0 may be', () => {
    const redundant = { units: 2, redundant: true };
    const open = panel({ supply: redundant, devices: [{ unitDraw: 100, run: 'R1' }] });
    expect([valueAt(open, 'supplies', 0, 'status'), valueAt(open, 'runs', 0, 'status'), rules(open, 'runs')])
      .toEqual(['incomplete', 'incomplete', []]);
    expect(findingsAt(open, 'supplies').find(({ rule }) => rule === 'supply-series-drop-missing')?.waiting).toBe(1);
    const closed = panel({ supply: { ...redundant, seriesDrop: 0 }, devices: [{ unitDraw: 100, run: 'R1' }] });
    expect([valueAt(closed, 'supplies', 0, 'status'), valueAt(closed, 'runs', 0, 'status')]).toEqual(['ok', 'ok']);
  });

  test.each<[volts: number, type: Cells, found: string[]]>([
    [12, { minVoltage: 21.6 }, ['device-under-voltage']],
    [12, { minVoltage: 20, maxVoltage: 30 }, ['device-under-voltage']],
    [48, { minVoltage: 21.6 }, ['device-other-voltage']],
    [48, {}, ['device-other-voltage']],
    [26, {}, []],
    [48, { minVoltage: 10, maxVoltage: 60 }, []],
    [48, { voltage: 48 }, []],
    [24, { maxVoltage: 23 }, ['device-over-voltage']],
    [24, { maxVoltage: 24 }, []],
  ])('on a rail of %d V a type with %o', (voltage, type, found) => {
    const schedule = panel({ supply: { voltage }, types: [{ type: 'T', draw: 100, ...type }], devices: [{ type: 'T' }] });
    expect(rules(schedule, 'devices')).toEqual(found);
    expect(valueAt(schedule, 'supplies', 0, 'status')).toBe(found.length === 0 ? 'ok' : 'over');
  });

  test('a rail of 12 V behind devices for 24 V is one finding, at the rail, however many rows and runs it has', () => {
    const types = [{ type: 'T', draw: 100, minVoltage: 21.6, maxVoltage: 26.4 }];
    const schedule = panel({
      supply: { voltage: 12 }, types, devices: [{ type: 'T', run: 'R1' }, { type: 'T', run: 'R1' }, { type: 'T' }],
    });
    expect(schedule.findings.filter(({ severity }) => severity === 'over').map(({ rule }) => rule))
      .toEqual(['supply-wrong-voltage']);
    expect((['supplies', 'runs'] as const).map((sheet) => valueAt(schedule, sheet, 0, 'status'))).toEqual(['over', 'over']);
    enter(schedule, 'supplies', 0, { voltage: 24 });
    expect((['supplies', 'runs'] as const).map((sheet) => valueAt(schedule, sheet, 0, 'status'))).toEqual(['ok', 'ok']);
  });

  test('24 V + 10 % are 26.4 V, too much for what stands 26 V', () => {
    const types = [{ type: 'T', draw: 100, maxVoltage: 26 }];
    expect(rules(panel({ supply: { tolerance: 0.1 }, types, devices: [{ type: 'T' }] }), 'devices'))
      .toEqual(['device-over-voltage']);
  });
});

describe('conductors are as warm as their load makes them (BS 7671, Appendix 4, 6.1)', () => {
  const conductor = { resistance: 7.41, maxCurrent: 27, baseTemperature: 30 };
  // 16 A in what carries 27 A alone: 70 − (1 − (16 ÷ 27)²) × 40 = 44.05 °C, 9.45 % more resistance than at 20 °C.
  // 0.01482 Ω/m × 5 m × 16 A are 1.1856 V at 20 °C and 1.2977 V then; 5 % of 24 V are 1.2 V.
  test.each<[Cells, number, number, boolean]>([
    [{ temperature: null, ambient: 30 }, 44.0466392, 1.2976527, true], [{ temperature: 20 }, 20, 1.1856, false],
  ])('with %o', (run, celsius, drop, isNear) => {
    const schedule = panel({
      supply: { rated: 40 }, way: { rated: 16 }, conductor, run: { length: 5, ...run }, devices: [{ unitDraw: 16_000, run: 'R1' }],
    });
    expect([valueAt(schedule, 'runs', 0, 'temperature'), valueAt(schedule, 'runs', 0, 'drop')])
      .toEqual([near(celsius), near(drop)]);
    expect(rules(schedule, 'runs').includes('run-over-drop')).toBe(isNear);
  });

  test('as warm as they may get where it is not known what they carry', () => {
    const schedule = panel({
      conductor: { maxCurrent: null, maxTemperature: 90 }, run: { temperature: null }, devices: [{ unitDraw: 100, run: 'R1' }],
    });
    expect(valueAt(schedule, 'runs', 0, 'temperature')).toBe(90);
  });
});

describe('a run without a way (IEC 60364-4-43, 433.1)', () => {
  // A supply of 10 A never feeds more than 15 A for ever; 13.1 A × 1.45 ÷ 1.9 = 9.997 A for gG fuses above 4 A. At its
  // end a short circuit finds 24 V ÷ (0.02393 Ω/m × 50 m + 0.3 Ω) = 16.04 A; the supply gives 10 A, or 5 times as much.
  const [GIVES, FOLDS] = [{ peak: 5 }, { peak: 1 }];
  test.each<[why: string, supply: Cells, maxCurrent: number, status: string, run: string[], asked: string[]]>([
    ['the supply gives less than the cable carries', {}, 16, 'ok', [], []],
    ['the same, whatever its fuse', { fuse: 6, fuseKind: 'D' }, 16, 'ok', [], []],
    ['nothing protects it', {}, 13.1, 'over', ['run-unprotected'], []],
    ['its fuse acts too late', { fuse: 10, fuseKind: 'gG' }, 13.1, 'over', ['run-unprotected'], []],
    // 2 A × 7 = 14 A at once
    ['its fuse protects it', { fuse: 2, fuseKind: 'gG', ...GIVES }, 13.1, 'ok', [], []],
    // 2.14 A × 7.5 = 16.05 A, and 2.13 A × 7.5 = 15.98 A
    ['its breaker acts too late at its end', { fuse: 2.14, fuseKind: 'B', ...GIVES }, 13.1, 'near', ['run-fuse-may-not-act'], []],
    ['its breaker just acts at its end', { fuse: 2.13, fuseKind: 'B', ...GIVES }, 13.1, 'ok', [], []],
    // 2 A × 7.5 = 15 A of 10 A: told once, where the supply is
    ['its supply folds back before', { fuse: 2, fuseKind: 'B', ...FOLDS }, 13.1, 'near', [], ['supply-trips-no-fuse']],
    ['an electronic channel acts in spite of that', { fuse: 2, fuseKind: 'electronic', ...FOLDS }, 13.1, 'ok', [], []],
    ['the kind decides', { fuse: 10 }, 13.1, 'incomplete', [], ['supply-fuse-kind-missing']],
  ])('%s', (_why, supply, maxCurrent, status, run, asked) => {
    const schedule = panel({
      supply, conductor: { maxCurrent }, run: { way: null, rail: 'L1' }, devices: [{ unitDraw: 100, run: 'R1' }],
    });
    expect([valueAt(schedule, 'runs', 0, 'status'), rules(schedule, 'runs')]).toEqual([status, run]);
    expect(rules(schedule, 'supplies')).toEqual(asked);
  });
});

describe('a run as it was measured', () => {
  /** 0.02 Ω/m: 3 A over 5 m and 2 A over 95 m lose 0.3 V and 3.8 V: 23.7 V for what needs 21.6 V, 19.9 V at the end. */
  const measured = (volts: number, rail: Cells = {}) => panel({
    supply: rail, way: { rated: 4 }, run: { length: 100, maxDrop: 0.2, measuredVoltage: volts },
    types: [{ type: 'A', minVoltage: 21.6 }, { type: 'B', minVoltage: 10 }],
    devices: [
      { type: 'A', unitDraw: 1000, run: 'R1', distance: 5 }, { type: 'B', unitDraw: 2000, run: 'R1', distance: 100 },
    ],
  });
  const UNDER = 'run-measured-under-voltage';

  test('is not too low at its end for a device that stands at its start', () => {
    for (const schedule of [measured(19.9), measured(19.5, { measuredVoltage: 24 })]) {
      expect(rules(schedule, 'runs')).not.toContain(UNDER);
    }
    // 2.2 V more than worked out may be lost before it, which has 2.1 V to spare.
    expect(rules(measured(17.7, { measuredVoltage: 24 }), 'runs')).toContain(UNDER);
    // 3.8 V lost from 21.8 V is less than worked out, and the 2.2 V that the rail lacks are too many.
    expect(rules(measured(18, { measuredVoltage: 21.8 }), 'runs')).toContain(UNDER);
    expect(rules(measured(18.5, { measuredVoltage: 22.5 }), 'runs')).not.toContain(UNDER);
  });
});

test('two blinds of 0.8 A that start with 2 A each do not come up on an electronic channel of 3 A, and do on a slow fuse', () => {
  const way = (kind: string, inrush: number | null) => panel({
    way: { kind, rated: 3, k2: 1.45, trip: 2 }, types: [{ type: 'Blind', draw: 800, inrush }],
    devices: [{ type: 'Blind', qty: 2, run: 'R1' }],
  });
  const told = (schedule: ReturnType<typeof panel>) => [
    valueAt(schedule, 'ways', 0, 'start'), findingsAt(schedule, 'ways').map(({ rule }) => rule),
  ];
  expect(told(way('electronic', 2))).toEqual([exact(4), ['way-over-start']]);
  expect(told(way('electronic', 1.5))).toEqual([exact(3), []]);
  expect(told(way('slow', 2))).toEqual([exact(4), []]);
  // What is not known of a start is asked for only where the supply tries again and again: 2 × 0.8 A count.
  expect(told(way('electronic', null))).toEqual([exact(1.6), []]);
});

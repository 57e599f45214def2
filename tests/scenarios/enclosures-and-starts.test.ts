import { describe, expect, test } from 'vitest';
import { explainCell } from '../../src/explanations.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf, formatCell, parseCell, type Cells, type Content, type InputColumn } from '../../src/schedule/index.ts';
import { ENGLISH } from '../../src/words/index.ts';
import { closeTo, EXACT } from '../support/close-to.ts';
import { enter, findingsAt, idAt, scheduleOf, valueAt, withWays } from '../support/schedules.ts';

const near = (value: number) => closeTo(value, EXACT);
const told = (sheets: Content['sheets'], sheet: 'supplies' | 'enclosures' | 'branches' | 'types' | 'runs') => {
  const schedule = scheduleOf(sheets);
  const rules = findingsAt(schedule, sheet).filter(({ severity }) => severity !== 'note').map(({ rule }) => rule);
  return [valueAt(schedule, sheet, 0, 'status'), rules];
};

/** 600 × 400 × 200 mm on a wall: 1.4 × 0.4 × 0.2 + (0.9 + 0.5) × 0.4 × 0.6 + 1.8 × 0.2 × 0.6 = 0.664 m². */
const BOX = { enclosure: 'E1', height: 600, width: 400, depth: 200, mounting: 'wall', otherLoss: 20, ambient: 35 };
const AREA = 0.664;

describe('an enclosure in the sun of its own losses', () => {
  /** 24 V × 8 A × (1 ÷ 0.8 − 1) = 48 W and 20 W of the rest. */
  const panel = (supply: Cells = {}, enclosure: Cells = {}) => ({
    enclosures: [{ ...BOX, ...enclosure }],
    supplies: [{ rail: 'L1', rated: 20, efficiency: 0.8, enclosure: 'E1', ...supply }],
    devices: [{ ref: 'D1', qty: 8, unitDraw: 1000, rail: 'L1' }],
  });
  const RISE = 68 / (5.5 * AREA);

  test('is 18.6 K warmer in the mean and 24.2 K at its top, where the supply sits', () => {
    const schedule = scheduleOf(panel());
    const figures = ['rise', 'inside', 'top'].map((key) => valueAt(schedule, 'enclosures', 0, key));
    expect(figures).toEqual([near(RISE), near(35 + RISE), near(35 + 1.3 * RISE)]);
    expect(explainCell(schedule, 'enclosures', idAt(schedule, 'enclosures'), 'top')).toMatchObject({
      numbers: '35.0\u00a0°C + 18.6\u00a0K × 1.30', result: '59.2\u00a0°C',
    });
  });

  test('is never within limits without a highest temperature, and its supply not without a derating', () => {
    expect(told(panel(), 'enclosures')).toEqual(['incomplete', ['enclosure-temperature-missing']]);
    expect(told(panel(), 'supplies')).toEqual(['incomplete', ['supply-derating-missing']]);
    expect(told(panel({ derating: 1 }, { maxInside: 65 }), 'supplies')).toEqual(['ok', []]);
    expect(told(panel({ derating: 1 }, { maxInside: 65 }), 'enclosures')).toEqual(['ok', []]);
    expect(told(panel({ derating: 1 }, { maxInside: 59 }), 'enclosures')).toEqual(['over', ['enclosure-over-temperature']]);
  });

  test('shuts a supply off whose own limit it reaches, whatever its derating', () => {
    expect(told(panel({ derating: 1, offAt: 60 }), 'supplies')).toEqual(['ok', []]);
    expect(told(panel({ derating: 1, offAt: 59 }), 'supplies')).toEqual(['over', ['supply-over-off']]);
  });

  test('of plastic gives off less: its name may be typed', () => {
    const schedule = scheduleOf(panel());
    expect(parseCell(columnOf('enclosures', 'transfer') as InputColumn, 'plastic'))
      .toMatchObject({ ok: true, value: 3.5 });
    enter(schedule, 'enclosures', 0, { transfer: 3.5 });
    expect(valueAt(schedule, 'enclosures', 0, 'rise')).toEqual(near(68 / (3.5 * AREA)));
  });

  test('let into a wall gives off heat by its front alone, an allowance on the safe side: 0.9 × 0.4 × 0.6 = 0.216 m²', () => {
    const schedule = scheduleOf(panel({ derating: 1 }, { mounting: 'flush', maxInside: 90 }));
    // 68 W ÷ (5.5 × 0.216) = 57.2 K, where on the wall it is 18.6 K.
    const rise = 68 / (5.5 * 0.216);
    expect(['area', 'inside', 'top', 'status'].map((key) => valueAt(schedule, 'enclosures', 0, key)))
      .toEqual([near(0.216), near(35 + rise), near(35 + 1.3 * rise), 'over']);
    expect(explainCell(schedule, 'enclosures', idAt(schedule, 'enclosures'), 'area')).toMatchObject({
      numbers: '0.9 × 600\u00a0mm × 400\u00a0mm, its front alone, as it is let into a wall: an allowance on the safe side',
      source: expect.stringMatching(/no source/) as string,
    });
  });

  test('waits for the efficiency of one supply: told once, and neither enclosure nor neighbour is within limits', () => {
    const { enclosures, supplies, devices } = panel({ derating: 1, offAt: 90 }, { maxInside: 90 });
    const schedule = scheduleOf({
      enclosures, devices, supplies: [...supplies, { rail: 'L2', rated: 5, derating: 1, enclosure: 'E1' }],
    });
    const status = [valueAt(schedule, 'supplies', 0, 'status'), valueAt(schedule, 'enclosures', 0, 'status')];
    expect(status).toEqual(['incomplete', 'incomplete']);
    expect(schedule.findings.filter(({ severity }) => severity !== 'note').map(({ tag, rule }) => [tag, rule]))
      .toEqual([['L2', 'supply-efficiency-missing']]);
    enter(schedule, 'supplies', 1, { efficiency: 0.9 });
    expect([valueAt(schedule, 'supplies', 0, 'status'), valueAt(schedule, 'enclosures', 0, 'status')])
      .toEqual(['ok', 'ok']);
  });

  test('has room for three units of 110 mm and a coupler of 36 mm on 500 mm less a fifth, and not for a fourth', () => {
    const parts = (units: number): Content['sheets'] => ({
      ...panel({ width: 110, units, derating: 1 }, { maxInside: 70, rails: 1, railLength: 500 }),
      branches: [{ branch: 'B1', limit: 9, terminated: true, enclosure: 'E1', width: 36 }],
    });
    const schedule = scheduleOf(parts(3));
    expect(['usedWidth', 'freeWidth', 'status'].map((key) => valueAt(schedule, 'enclosures', 0, key)))
      .toEqual([366, near(34), 'ok']);
    expect(told(parts(4), 'enclosures')).toEqual(['near', ['enclosure-near-width']]);
    expect(told(parts(5), 'enclosures')).toEqual(['over', ['enclosure-over-width']]);
  });
});

describe('what is mounted on the rails of an enclosure', () => {
  const box = { ...BOX, maxInside: 70, rails: 1, railLength: 500 };
  /** 110 of the supply + 12 + 0 of its channels + 18 of a way elsewhere entered + 144 + 36 + 18. */
  const parts: Content['sheets'] = {
    enclosures: [box], supplies: [{ rail: 'L1', rated: 10, efficiency: 0.9, derating: 1, enclosure: 'E1', width: 110 }],
    ways: [
      { way: 'F1', rail: 'L1', kind: 'electronic', rated: 2, width: 12 },
      { way: 'F2', rail: 'L1', kind: 'electronic', rated: 2, width: 0 },
      { way: 'F3', rail: 'L2', kind: 'B', rated: 1, enclosure: 'E1', width: 18 },
      { way: 'F4', rail: 'L1', kind: 'B', rated: 1, enclosure: 'E2', width: 18 },
    ],
    modules: [{ module: 'K1', enclosure: 'E1', width: 144 }], feeds: [{ feed: 'Q1', rated: 10, enclosure: 'E1', width: 18 }],
    branches: [{ branch: 'B1', limit: 9, terminated: true, enclosure: 'E1', width: 36 }],
  };

  test('counts ways where their supply stands, modules, couplers and breakers of feeds', () => {
    const schedule = scheduleOf(parts);
    expect(['usedWidth', 'freeWidth', 'status'].map((key) => valueAt(schedule, 'enclosures', 0, key)))
      .toEqual([338, near(62), 'ok']);
  });

  test.each(['supplies', 'ways', 'modules', 'feeds', 'branches'] as const)(
    'waits for a width of %s, which is told once, there', (sheet) => {
      const schedule = scheduleOf(parts);
      enter(schedule, sheet, 0, { width: null });
      expect(valueAt(schedule, 'enclosures', 0, 'status')).toBe('incomplete');
      expect(schedule.findings.filter(({ rule }) => rule.includes('width')).map(({ sheet: at, key }) => [at, key]))
        .toEqual([[sheet, 'width']]);
    });
});

describe('everything starts at once after a failure of the mains', () => {
  /** 6 × 3 A of motors and 4 × 0.5 A of others, on 10 A that give 1.2 times that for a moment. */
  const rail = (supply: Cells, motor: Cells = { inrush: 3 }): Content['sheets'] => ({
    types: [{ type: 'Motor', draw: 800, ...motor }, { type: 'Lamp', draw: 500, inrush: 0 }],
    supplies: [{ rail: 'L1', rated: 10, peak: 1.2, ...supply }],
    devices: [
      { ref: 'D1', type: 'Motor', qty: 6, rail: 'L1', diversity: 0.25 }, { ref: 'D2', type: 'Lamp', qty: 4, rail: 'L1' },
    ],
  });

  const overStart = (schedule: LoadSchedule) =>
    findingsAt(schedule, 'supplies').find(({ rule }) => rule === 'supply-over-start');

  test('a supply that tries again and again may never come up with 20 A on 12 A; one that holds does', () => {
    const finding = overStart(scheduleOf(rail({ overload: 'retries' })));
    expect(finding).toMatchObject({ severity: 'near', value: 20, limit: 12 });
    // The motors by themselves are 18 A; one after the other 2.2 A come on top of 6.8 A that run.
    expect(finding!.message).toContain('Let its devices start one after the other');
    expect(told(rail({ overload: 'holds' }), 'supplies')).toEqual(['ok', []]);
    expect(told(rail({}), 'supplies')).toEqual(['ok', []]);
  });

  test('what a type draws when it starts is asked for once, and only there', () => {
    const schedule = scheduleOf(rail({ overload: 'retries' }, {}));
    expect(valueAt(schedule, 'supplies', 0, 'status')).toBe('incomplete');
    expect(schedule.findings.filter(({ severity }) => severity !== 'note'))
      .toMatchObject([{ rule: 'type-inrush-missing', sheet: 'types', tag: 'Motor', key: 'inrush', waiting: 1 }]);
    enter(schedule, 'types', 0, { inrush: 0 });
    expect(valueAt(schedule, 'supplies', 0, 'status')).toBe('ok');
    enter(schedule, 'devices', 0, { qty: 20 });
    expect(overStart(schedule)).toMatchObject({ value: 18 });
    enter(schedule, 'supplies', 0, { overload: null });
    expect(overStart(schedule)).toBeUndefined();
  });

  /** 4 × 2.25 A at the start, 4 A when they run; a contact switches 72 W at 24 V, 3 A: 12 A on 10 A, 7 A of demand. */
  const switched = (output: Cells, supply: Cells = {}): Content['sheets'] => ({
    types: [{ type: 'Motor', draw: 1000, inrush: 2.25 }],
    supplies: [{ rail: 'L1', rated: 10, overload: 'retries', ...supply }],
    devices: [{ ref: 'D1', type: 'Motor', qty: 4, rail: 'L1' }],
    contacts: [{ contact: 'C', dc: 10, maxDcVoltage: 30 }],
    outputs: [{ output: 'K1', contact: 'C', kind: 'dc', power: 72, rail: 'L1', ...output }],
  });

  test('what relay outputs switch on it starts with the rest', () => {
    const schedule = scheduleOf(switched({}));
    expect(valueAt(schedule, 'supplies', 0, 'demand')).toBe(7);
    expect(valueAt(schedule, 'supplies', 0, 'status')).toBe('near');
    expect(overStart(schedule)).toMatchObject({ value: 12, limit: 10 });
    // The devices together, after the output, would be 9 + 3 A; one after the other 3 × 1 + 3 + 2.25 A.
    expect(overStart(schedule)!.message).toContain('Let its devices start one after the other');
    enter(schedule, 'outputs', 0, { power: 24 });
    expect([valueAt(schedule, 'supplies', 0, 'status'), overStart(schedule)]).toEqual(['ok', undefined]);
    enter(schedule, 'outputs', 0, { power: 72, rail: null });
    expect([valueAt(schedule, 'supplies', 0, 'status'), overStart(schedule)]).toEqual(['ok', undefined]);
    // What it switches is told there to be missing, and the supply waits.
    expect(told(switched({ power: null }), 'supplies')).toEqual(['incomplete', []]);
  });

  test('of a supply that gives nothing it is not told that it does not come up', () => {
    expect(told(switched({}, { redundant: true, seriesDrop: 0 }), 'supplies')).toEqual(['over', ['supply-gives-nothing']]);
  });
});

// BS 5839-1: 1.25 × 1.75 × 2 A × 4 h = 17.5 Ah; 1.25 × 2 × 4 = 10 Ah of a battery that bears it for 20 h.
test.each<[Cells, number | null, string]>([
  [{ standbyHours: 4 }, 17.5, 'incomplete'], [{ standbyHours: 4, battery: 17 }, 17.5, 'over'],
  [{ standbyHours: 4, battery: 17.5 }, 17.5, 'ok'], [{ standbyHours: 4, battery: 40 }, 10, 'ok'], [{}, null, 'ok'],
])('a battery for 2 A: %o needs %d Ah and is %s', (supply, needed, status) => {
  const schedule = scheduleOf({
    supplies: [{ rail: 'L1', rated: 5, ...supply }], devices: [{ qty: 2, unitDraw: 1000, rail: 'L1' }],
  });
  expect([valueAt(schedule, 'supplies', 0, 'batteryNeeded'), valueAt(schedule, 'supplies', 0, 'status')])
    .toEqual([needed, status]);
});

describe('how long a battery lasts', () => {
  // 2 A of lighting and 1 A of control: on a failure of the mains the lights are off.
  const bridged = (battery: number, cases: Content['sheets'] = {}) => scheduleOf({
    supplies: [{ rail: 'L1', rated: 5, standbyHours: 4, battery }],
    devices: [
      { qty: 2, unitDraw: 1000, rail: 'L1', group: 'lighting' }, { qty: 1, unitDraw: 1000, rail: 'L1', group: 'control' },
    ], ...cases,
  });
  const mainsFail: Content['sheets'] = {
    cases: [{ case: 'evening' }, { case: 'mains fail', standby: true }],
    factors: [
      { case: 'evening', group: 'lighting', factor: 1 }, { case: 'evening', group: 'control', factor: 1 },
      { case: 'mains fail', group: 'lighting', factor: 0 }, { case: 'mains fail', group: 'control', factor: 1 },
    ],
  };
  const figures = (schedule: LoadSchedule) => ['standbyDemand', 'batteryNeeded', 'batteryLasts', 'status']
    .map((key) => valueAt(schedule, 'supplies', 0, key));

  // BS 5839-1: 17.5 Ah ÷ (1.25 × 1.75 × 3 A) = 2.66… h; of 1 A alone 17.5 ÷ (1.25 × 1.75) = 8 h, and of 20 Ah, which
  // bears 1 A for 20 h, 20 ÷ 1.25 = 16 h.
  test('counts what is on in the case marked standby, and without one the worst of all', () => {
    expect(figures(bridged(17.5))).toEqual([3, 26.25, expect.closeTo(8 / 3, 9), 'over']);
    expect(figures(bridged(17.5, mainsFail))).toEqual([1, 8.75, 8, 'ok']);
    expect(figures(bridged(20, mainsFail))).toEqual([1, 5, 16, 'ok']);
    // The entered battery is too small by the same measure as it lasts too short.
    expect(figures(bridged(8, mainsFail))).toEqual([1, 8.75, expect.closeTo(8 / 2.1875, 9), 'over']);
  });

  test('nothing is said where nothing is drawn; at most so long where a draw is not known; never more than it is', () => {
    const schedule = bridged(17.5, mainsFail);
    enter(schedule, 'devices', 1, { qty: 0 });
    expect(valueAt(schedule, 'supplies', 0, 'batteryLasts')).toBeNull();
    enter(schedule, 'devices', 1, { qty: 1 });
    enter(schedule, 'devices', 0, { unitDraw: null });
    expect([valueAt(schedule, 'supplies', 0, 'batteryLasts'), schedule.partialSign('supplies', idAt(schedule, 'supplies'), 'batteryLasts')])
      .toEqual([8, '≤']);
    expect(formatCell(columnOf('supplies', 'batteryLasts'), 8 / 3, ENGLISH, 'show')).toBe('2.6');
  });
});

describe('a bus branch is more than its nodes', () => {
  const branch = (cells: Cells, length: number | null = 150): Content['sheets'] => ({
    branches: [{ branch: 'B1', limit: 32, terminated: true, ...cells }],
    runs: [{ run: 'W1', branch: 'B1', length: 160 }, { run: 'W2', branch: 'B1', length }],
  });

  test.each<[Cells, number | null, unknown]>([
    [{}, 150, ['ok', []]],
    [{ maxCable: 310 }, 150, ['ok', []]],
    [{ maxCable: 300 }, 150, ['over', ['branch-over-cable']]],
    // What is missing is told at the run.
    [{ maxCable: 300 }, null, ['incomplete', []]],
    [{ terminators: 2, terminated: null }, 150, ['ok', []]],
    [{ terminators: 1 }, 150, ['near', ['branch-under-terminators']]],
    [{ terminators: 3 }, 150, ['over', ['branch-over-terminators']]],
  ])('%o with 160 m and %d m: %o', (cells, length, expected) => {
    expect(told(branch(cells, length), 'branches')).toEqual(expected);
  });

  test('the standard of its bus may be typed', () => {
    expect(parseCell(columnOf('branches', 'maxCable') as InputColumn, 'IEC 62386'))
      .toMatchObject({ ok: true, value: 300 });
  });
});

describe('what was measured is judged with what was worked out', () => {
  const supply = (measured: Cells): Content['sheets'] => ({
    supplies: [{ rail: 'L1', rated: 10, ...measured }], devices: [{ qty: 5, unitDraw: 1000, rail: 'L1' }],
  });
  test.each<[number, number, string, string[]]>([
    [0, 0, 'over', ['supply-measured-dead']],
    [1, 10.4, 'over', ['supply-measured-short-circuit']],
    [4, 0.5, 'over', ['supply-measured-short-circuit']],
    [-24, 0, 'over', ['supply-measured-reversed']],
    [21, 10.5, 'over', ['supply-measured-over-usable', 'supply-measured-under-voltage']],
    [23, 5, 'over', ['supply-measured-under-voltage']],
    [24, 0, 'near', ['supply-measured-open']],
    [24, 5, 'ok', []],
  ])('a supply of 24 V, 10 A with 5 A on it, at %d V and %d A', (measuredVoltage, measuredCurrent, status, rules) => {
    expect(told(supply({ measuredVoltage, measuredCurrent }), 'supplies')).toEqual([status, rules]);
  });

  // 2 A over 16 m there and back of 10 Ω/km: 0.64 V.
  const run = (cells: Cells, rail: Cells = { measuredVoltage: 24 }): Content['sheets'] => withWays({
    supplies: [{ rail: 'L1', rated: 10, peak: 10, ...rail }], types: [{ type: 'T', draw: 2000, minVoltage: 20 }],
    conductors: [{ conductor: 'C', resistance: 10, maxCurrent: 6, baseTemperature: 20 }],
    runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 16, ambient: 20, temperature: 20, protection: 3, trip: 5, ...cells }],
    devices: [{ ref: 'D1', qty: 1, type: 'T', run: 'W1' }],
  });
  test.each<[Cells, string, string[]]>([
    [{ measuredVoltage: 22.5 }, 'near', ['run-measured-drop-differs']],
    [{ measuredVoltage: 23.2, measuredCurrent: 2 }, 'ok', []],
    [{ measuredVoltage: 0, measuredCurrent: 0 }, 'over', ['run-measured-dead']],
    [{ measuredVoltage: 0.5, measuredCurrent: 3 }, 'over', ['run-measured-short-circuit']],
    [{ measuredVoltage: -22.9 }, 'over', ['run-measured-reversed']],
    [{ measuredVoltage: 24, measuredCurrent: 0 }, 'near', ['run-measured-open']],
    [{ measuredCurrent: 5 }, 'over', ['run-measured-over-protection']],
    [{ measuredCurrent: 7, protection: 8 }, 'over', ['run-measured-over-carries']],
  ])('a run that loses 0.64 V of 24 V, with %o', (cells, status, rules) => {
    const [found, measured] = told(run(cells), 'runs') as [string, string[]];
    expect([found, measured.filter((rule) => rule.includes('measured'))]).toEqual([status, rules]);
  });
});

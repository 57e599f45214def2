import fc from 'fast-check';
import { expect, test } from 'vitest';
import { outOfRange } from '../../src/engine/index.ts';
import { ENGLISH } from '../../src/words/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import {
  columnOf, inputColumns, isBlank, isFormula, isNumeric, SHEET_NAMES, type Cells, type CellValue, type Content,
  type InputColumn, type SheetName,
} from '../../src/schedule/index.ts';
import { inItsWorstCase } from '../data/demo-in-its-worst-case.ts';
import { readData } from '../data/read-data.ts';
import { evaluateArithmetic } from '../support/arithmetic.ts';
import { closeTo } from '../support/close-to.ts';
import { runGaps } from '../support/independent-run-checks.ts';
import { recalculateRuns, type RunFault } from '../support/independent-runs.ts';
import { recalculate } from '../support/independent.ts';
import { actualRow, expectedRow, expectInCases } from './expect-in-cases.ts';
import { someAction, someContent } from './random-actions.ts';
import { someWarmEdit, someWarmSchedule } from './random-warmth.ts';

const TOLERANCE = { absolute: 1e-9, relative: 1e-9 };
const CHECKED = ['devices', 'supplies', 'branches', 'modules', 'outputs', 'feeds', 'enclosures'] as const;

/** A run is within limits only where each of its checks was made, and waits only where one was not. */
function expectGaps(schedule: LoadSchedule, gaps: readonly (readonly string[])[]): void {
  schedule.rows('runs').forEach((row, at) => {
    if (isBlank(row)) return;
    const status = schedule.value('runs', row.id, 'status');
    if (status === 'ok') expect([at, status, gaps[at]]).toEqual([at, 'ok', []]);
    if (gaps[at]!.length === 0) expect([at, status]).not.toEqual([at, 'incomplete']);
  });
}

function expectSame(schedule: LoadSchedule, content: Content): void {
  expectInCases(schedule, content);
  if (schedule.cases.cases.length > 0) return;
  const figures = recalculate(content);
  expectGaps(schedule, runGaps(content));
  for (const sheet of CHECKED) {
    schedule.rows(sheet).forEach((row, at) => {
      const expected = expectedRow(sheet, figures[sheet][at]!);
      if (isBlank(row)) expect(schedule.findingsOf(sheet, row.id)).toEqual([]);
      else expect([sheet, at, actualRow(schedule, sheet, row.id, expected)]).toEqual([sheet, at, expected]);
    });
  }
}

/**
 * Whether the independent calculation knows a cell: formulas of plain arithmetic, with results that the column allows.
 */
function isPlain(sheet: SheetName, key: string, value: CellValue): boolean {
  if (!isFormula(value)) return true;
  if (!/^=[\d.+*/() -]+$/.test(value)) return false;
  const result = evaluateArithmetic(value);
  return result === null || outOfRange(columnOf(sheet, key) as InputColumn, result, ENGLISH) === undefined;
}

function isAllPlain(content: Content): boolean {
  return SHEET_NAMES.every((sheet) => (content.sheets[sheet] ?? [])
    .every((cells) => Object.entries(cells).every(([key, value]) => isPlain(sheet, key, value))));
}

test('after any actions, every figure, status and sign is what an independent calculation gives', () => {
  let held = 0;
  let passedOver = 0;
  fc.assert(fc.property(someContent, fc.array(someAction, { minLength: 1, maxLength: 12 }), (content, actions) => {
    const schedule = new LoadSchedule(content);
    for (const action of actions) {
      action(schedule);
      const after = schedule.content();
      if (isAllPlain(after)) {
        expectSame(schedule, after);
        held += 1;
      } else passedOver += 1;
    }
    schedule.dispose();
  }), { numRuns: Number(process.env.RUNS ?? 100) });
  expect(held).toBeGreaterThan(passedOver);
});

test('supplies in enclosures that get warm: every figure, status and sign is what it gives too, after edits', () => {
  const seen = { full: 0, less: 0, nothing: 0, unknown: 0, partial: 0 };
  fc.assert(fc.property(someWarmSchedule, fc.array(someWarmEdit, { maxLength: 4 }), (content, edits) => {
    const schedule = new LoadSchedule(content);
    for (const edit of [undefined, ...edits]) {
      edit?.(schedule);
      expectSame(schedule, schedule.content());
      const figures = recalculate(schedule.content());
      if (figures.enclosures.some(({ partial }) => partial.supplyLoss)) seen.partial += 1;
      schedule.rows('supplies').forEach(({ cells }, at) => {
        const { usable } = figures.supplies[at]!;
        if (typeof cells.fullUpTo !== 'number' || typeof cells.rated !== 'number') return;
        seen[usable === null ? 'unknown' : usable === 0 ? 'nothing' : usable < cells.rated ? 'less' : 'full'] += 1;
      });
    }
    schedule.dispose();
  }), { numRuns: 100 });
  for (const [kind, count] of Object.entries(seen)) expect([kind, count > 10]).toEqual([kind, true]);
});

test.each([
  [
    '=1/0', 'supplies', 'derating',
  ], ['=1/0', 'supplies', 'target'], ['=1/0', 'supplies', 'units'], ['=1/0', 'supplies', 'voltage'],
  ['=1/0', 'branches', 'limit'], [
    '=1/0', 'branches', 'reserve',
  ], ['=1/0', 'outputs', 'qty'], ['=1/0', 'outputs', 'voltage'],
  [
    '=1/0', 'outputs', 'powerFactor',
  ], ['=1/0', 'outputs', 'target'], ['=1/0', 'feeds', 'diversity'], ['=1/0', 'feeds', 'target'],
  ['=1/0', 'feeds', 'voltage'], ['=1/0', 'devices', 'qty'], ['=1/0', 'devices', 'unitDraw'], [
    '=1/0', 'devices', 'diversity',
  ],
  ['=2*3', 'devices', 'qty'], [
    '=1/4', 'devices', 'diversity',
  ], ['=3*4', 'types', 'power'], ['=1/0', 'types', 'diversity'],
  ['=1/0', 'types', 'draw'], ['=1/0', 'types', 'nodes'], ['=1/0', 'contacts', 'lamp'], ['=1/0', 'contacts', 'inrush'],
  ...(['height', 'width', 'depth', 'transfer', 'otherLoss', 'ambient', 'maxInside'] as const)
    .map((key) => ['=1/0', 'enclosures', key] as const),
  ...(['inputPowerFactor', 'inputInrush', 'maxOnB16'] as const).map((key) => ['=1/0', 'supplies', key] as const),
  ...(['efficiency', 'ratedCurrent', 'inrush', 'maxOnB16', 'power'] as const)
    .map((key) => ['=1/0', 'outputs', key] as const),
  ['=1/0', 'feeds', 'pulseFactor'], ['=1/0', 'feeds', 'rated'], ['=1/0', 'modules', 'common'],
  ['=1/0', 'modules', 'outputs'], ['=1/0', 'contacts', 'maxVoltage'],
  ['=1/0', 'supplies', 'lessPerKelvin'], ['=1/0', 'supplies', 'efficiency'], ['=30+7.5', 'enclosures', 'ambient'],
] as const)('the formula %s in %s.%s tells on the figures and the status as it does there', (formula, sheet, key) => {
  const sheets = {
    types: [{ type: 'T', power: 12, diversity: 0.5, nodes: 1 }],
    supplies: [{
      rail: 'L1', rated: 10, fuse: 12, efficiency: 0.9, enclosure: 'E', fullUpTo: 30, lessPerKelvin: 0.02, feed: 'F1',
      inputPowerFactor: 0.9, inputInrush: 20, maxOnB16: 8,
    }],
    enclosures: [
      {
        enclosure: 'E', height: 600, width: 400, depth: 200, mounting: 'wall', otherLoss: 10, ambient: 35,
        maxInside: 50,
      },
    ],
    branches: [{ branch: 'B1', limit: 32 }],
    devices: [{ type: 'T', qty: 2, rail: 'L1', branch: 'B1' }],
    contacts: [{ contact: 'K', lamp: 5, inrush: 80, maxVoltage: 250 }], modules: [{ module: 'M', common: 16, outputs: 8 }],
    outputs: [
      {
        output: 'Q1', module: 'M', contact: 'K', kind: 'lamp', power: 100, inrush: 3, feed: 'F1', voltage: 230,
        efficiency: 0.9, ratedCurrent: 0.5, maxOnB16: 20,
      },
    ],
    feeds: [{ feed: 'F1', rated: 10, curve: 'B', pulseFactor: 2 }],
  } as const;
  const content = { details: {}, sheets: { ...sheets, [sheet]: [{ ...sheets[sheet][0], [key]: formula }] } };
  const schedule = new LoadSchedule(content);
  expectSame(schedule, content);
});

test('cells that a file holds as null are empty cells', () => {
  const content: Content = { details: {}, sheets: {
    types: [{ type: 'T', draw: 100, diversity: null }], supplies: [{ rail: 'L1', rated: 10, units: null }],
    devices: [{ type: 'T', qty: 2, rail: 'L1', unitDraw: null, diversity: null }, { ref: null }],
  } };
  const schedule = new LoadSchedule(content);
  expectSame(schedule, content);
  expect(schedule.value('devices', 0, 'demand')).toBe(0.2);
});

/** Runs with every kind of protection, all of them within limits and each with what its checks need. */
const WHOLE: Record<'types' | 'supplies' | 'ways' | 'branches' | 'conductors' | 'runs' | 'devices', Cells[]> = {
  types: [
    { type: 'T', voltage: 24, draw: 100, load: 'current', inrush: 0.1, nodes: 1, minVoltage: 19.2, maxVoltage: 30 },
    { type: 'P', voltage: 24, power: 3, load: 'power', inrush: 0.2, nodes: 1, minVoltage: 19.2, maxVoltage: 30 },
  ],
  supplies: [
    {
      rail: 'L1', voltage: 24, tolerance: 0.01, seriesDrop: 0, rated: 40, units: 1, derating: 1, peak: 1, maxOutput: 1.5,
      innerResistance: 0.3,
    },
    { rail: 'L2', voltage: 24, rated: 3, units: 1, maxOutput: 1.5 },
    { rail: 'L3', voltage: 24, rated: 40, units: 1, maxOutput: 1.5, fuse: 4, fuseKind: 'fast', peak: 1, derating: 1 },
  ],
  ways: [
    { way: 'F1', rail: 'L1', kind: 'electronic', rated: 4 }, { way: 'F2', rail: 'L1', kind: 'electronic', rated: 4 },
    { way: 'F3', rail: 'L1', kind: 'B', rated: 2, trip: 7, k2: 1.45 },
  ],
  branches: [{ branch: 'B1', limit: 32, terminated: true }],
  conductors: [{ conductor: 'C', size: '2.5', resistance: 7.41, maxCurrent: 20, maxTemperature: 70, baseTemperature: 30 }],
  runs: ([
    { run: 'W1', way: 'F1', branch: 'B1', pairs: 1, ambient: 30, grouped: 2, maxDrop: 0.05 },
    { run: 'W2', way: 'F1', secondWay: 'F2', secondLength: 10 }, { run: 'W3', rail: 'L2', temperature: 60 },
    { run: 'W4', rail: 'L3' }, { run: 'W5', rail: 'L1', way: 'F3', basis: 'demand' },
  ] as Cells[]).map((run) => ({ ...run, conductor: 'C', length: 20 })),
  devices: [1, 2, 3, 4, 5].flatMap((at): Cells[] => [
    { type: 'T', qty: 2, run: `W${at}`, distance: 10, diversity: 0.5 }, { type: 'P', qty: 1, run: `W${at}`, unitDraw: 120 },
  ]),
};

/** Takes something from one row: a cell is emptied, or holds what cannot be read, or its row stands there twice. */
const someLoss = fc.constantFrom(...Object.keys(WHOLE) as (keyof typeof WHOLE)[])
  .chain((sheet) => fc.record({
    sheet: fc.constant(sheet), at: fc.nat(), key: fc.constantFrom(...inputColumns(sheet).map(({ key }) => key)),
    value: fc.constantFrom(null, null, '=1/0', -1e9, 'nowhere'), isTwice: fc.integer({ min: 0, max: 9 }).map((each) => each === 0),
  }));

test('no run is within limits while one of its checks was not made, and none waits while all were', () => {
  const seen = new Map<string, number>();
  const count = (what: string) => seen.set(what, (seen.get(what) ?? 0) + 1);
  fc.assert(fc.property(fc.array(someLoss, { maxLength: 2 }), (losses) => {
    const sheets = structuredClone(WHOLE);
    for (const { sheet, at, key, value, isTwice } of losses) {
      const rows = sheets[sheet];
      const row = at % rows.length;
      const column = columnOf(sheet, key);
      if (isTwice) rows.push(rows[row]!);
      else if (value === null || (isNumeric(column) ? value !== 'nowhere' : value === 'nowhere' && (column as InputColumn).to !== undefined)) {
        rows[row] = { ...rows[row], [key]: value };
      }
    }
    const content: Content = { details: {}, sheets };
    const schedule = new LoadSchedule(content);
    const gaps = runGaps(content);
    expectGaps(schedule, gaps);
    for (const [at, { id }] of schedule.rows('runs').entries()) {
      count(String(schedule.value('runs', id, 'status')));
      for (const gap of gaps[at]!) count(gap);
    }
    schedule.dispose();
  }), { numRuns: 300 });
  // Runs of either kind were among them, and many kinds of gaps.
  expect([seen.get('ok')! > 500, seen.get('incomplete')! > 100, seen.size > 18]).toEqual([true, true, true]);
});

const FAULT_STATUS: Readonly<Record<RunFault, string>> = {
  'device voltage': 'over', 'no working voltage': 'over', 'conductor current': 'over', 'conductor protection': 'over',
  drop: 'near', 'short circuit': 'near', 'measured over': 'over', 'measured near': 'near', 'too warm': 'over',
};

test('the whole demo comes to what the independent calculation gives', () => {
  const demo = readData('demo.schedule.json');
  const schedule = new LoadSchedule(demo);
  expectSame(schedule, demo);
  expect(recalculate(demo).devices.length).toBeGreaterThan(120);
  const runs = schedule.rows('runs')
    .map(({ id }) => Object.fromEntries(['current', 'endVoltage', 'faultCurrent', 'carries', 'status']
    .map((key) => [key, schedule.value('runs', id, key)])));
  const neither = expect.stringMatching(/^(ok|incomplete)$/) as string;
  const settled = recalculateRuns(inItsWorstCase(demo));
  expect(runs).toEqual(settled.map(({ current, endVoltage, faultCurrent, carries, faults }) => ({
    current: current === null ? null : closeTo(current, TOLERANCE),
    endVoltage: endVoltage === null ? null : closeTo(endVoltage, TOLERANCE),
    faultCurrent: closeTo(faultCurrent, TOLERANCE),
    carries: carries === Infinity ? null : closeTo(carries, TOLERANCE),
    status: faults.map((fault) => FAULT_STATUS[fault]).sort().at(-1) ?? neither,
  })));
});

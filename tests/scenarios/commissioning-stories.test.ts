import { expect, test } from 'vitest';
import type { Finding } from '../../src/findings/index.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { scheduleOf } from '../support/schedules.ts';

/*
 * What is measured at commissioning, in twelve stories, and what is told to be looked at first. The measurements are
 * those of a circuit that is reckoned here: a source of 24 V, cables of 2 × length × ohms per metre, and lamps that
 * draw what they are entered with. The advice is common practice, no source.
 */

/** Conductor of 1.5 mm² at 20 °C: 12.1 Ω/km, IEC 60228 class 1. */
const OHMS = 12.1e-3;

interface Run {
  readonly run: string;
  readonly length: number;
  /** Lamps at its far end, and what each draws [A]. */
  readonly count: number;
  readonly each: number;
  readonly type: string;
}
const RUNS: readonly Run[] = [
  { run: 'W1', length: 20, count: 5, each: 0.3, type: 'Lamp' },
  { run: 'W2', length: 30, count: 2, each: 0.4, type: 'Spot' },
  { run: 'W3', length: 10, count: 1, each: 2, type: 'Panel' },
];

const currentOf = ({ count, each }: Run): number => count * each;
/** Voltage at the far end of a run [V]. */
const endOf = ({ length }: Run, amps: number, start = 24, ohms = 0): number =>
  start - amps * (2 * length * OHMS + ohms);

/** What was measured: of supplies, runs and branches, by tag. */
interface Measured {
  readonly supplies: Record<string, Cells>;
  readonly runs: Record<string, Cells>;
  readonly branches: Record<string, Cells>;
}

/** All as it was calculated. */
const well = (): Measured => ({
  supplies: {
    L1: { measuredVoltage: 24, measuredCurrent: RUNS.reduce((sum, run) => sum + currentOf(run), 0) },
    L2: { measuredVoltage: 24, measuredCurrent: 1 },
  },
  runs: Object.fromEntries(RUNS.map((run) =>
    [run.run, { measuredVoltage: endOf(run, currentOf(run)), measuredCurrent: currentOf(run) }])),
  branches: { B1: { terminators: 2 } },
});

/** A run that carries another current than its own, through a cable that may have a bad joint. */
const carrying = (at: number, amps: number, ohms = 0): Cells =>
  ({ measuredVoltage: endOf(RUNS[at]!, amps, 24, ohms), measuredCurrent: amps });

function findingsOf(measured: Measured): Finding[] {
  const schedule = scheduleOf({
    enclosures: [{ enclosure: 'E' }], feeds: [{ feed: 'F1', rated: 16, curve: 'C' }],
    supplies: ['L1', 'L2'].map((rail) => ({ rail, rated: 10, enclosure: 'E', feed: 'F1', derating: 1, ...measured.supplies[rail] })),
    conductors: [{ conductor: '1.5', size: 1.5, resistance: OHMS * 1000, maxCurrent: 16 }],
    types: [
      ...RUNS.map(({ type, each }) => ({ type, draw: each * 1000, minVoltage: 20, maxVoltage: 30 })),
      { type: 'Coupler', draw: 1000, nodes: 1 },
    ],
    branches: [{ branch: 'B1', limit: 32, terminated: true, ...measured.branches.B1 }],
    ways: RUNS.map(({ run }, at) => ({ way: `F${at + 1}`, rail: 'L1', kind: 'electronic', rated: 4, note: run })),
    runs: RUNS.map(({ run, length }, at) => ({
      run, rail: 'L1', way: `F${at + 1}`, conductor: '1.5', length, temperature: 20, ...measured.runs[run],
    })),
    devices: [
      ...RUNS.map(({ run, count, type }) => ({ ref: `D-${run}`, type, qty: count, rail: 'L1', run })),
      { ref: 'C1', type: 'Coupler', qty: 1, rail: 'L2', branch: 'B1' },
    ],
  });
  const found = schedule.findings.filter(({ rule }) => /measured|terminat/.test(rule));
  schedule.dispose();
  return found;
}

/** The rows that are told of, each with what is told. */
const told = (change: (measured: Measured) => void): [tag: string, message: string][] => {
  const measured = well();
  change(measured);
  return findingsOf(measured).map(({ tag, message }) => [tag, message]);
};

test('all well: nothing is told', () => {
  expect(told(() => undefined)).toEqual([]);
});

test.each<[story: string, change: (measured: Measured) => void, tag: string, first: RegExp]>([
  ['dead: the way of a run is open', (it) => { it.runs.W1 = { measuredVoltage: 0, measuredCurrent: 0 }; },
    'W1', /it is dead\. See whether its rail has voltage and its protection is closed, then/],
  ['short: an electronic way holds its current into a short circuit', (it) => { it.runs.W2 = { measuredVoltage: 0.9, measuredCurrent: 4 }; },
    'W2', /as much current as feeds a short circuit\. Switch it off/],
  ['open: the far terminal is loose', (it) => { it.runs.W3 = { measuredVoltage: 24, measuredCurrent: 0 }; },
    'W3', /where 2\.00 A are calculated\. See whether the devices are switched on and fitted, then look for an open terminal/],
  ['reversed: plus and minus at the far end', (it) => { it.runs.W1 = { measuredVoltage: -23.3, measuredCurrent: 0 }; },
    'W1', /plus and minus are changed over\. Switch it off, look at the leads of the meter first/],
  ['missing device: four lamps of five', (it) => { it.runs.W1 = carrying(0, 4 * 0.3); },
    'W1', /0\.30 A less, where 0\.15 A may differ\. One Lamp draws as much: see first whether one is missing, not connected or switched off\./],
  ['bad joint: 0.8 Ω more than the cable has', (it) => { it.runs.W3 = carrying(2, 2, 0.8); },
    'W3', /loses 2\.08 V as measured, where 0\.48 V are calculated .* Look for a joint or a terminal of high resistance first/],
  ['wrong type: spots of 0.7 A in the place of 0.4 A', (it) => { it.runs.W2 = carrying(1, 2 * 0.7); },
    'W2', /0\.60 A more, where 0\.08 A may differ\. Usually a device is missing in the schedule, draws more than entered/],
  ['overloaded: more than the way is rated for', (it) => { it.runs.W3 = carrying(2, 4.6); },
    'W3', /through a protection of 4\.00 A: 0\.60 A too much\. Switch devices off until it holds, find the one that draws too much/],
])('%s', (_story, change, tag, first) => {
  const found = told(change);
  expect(found.map(([of]) => of)).toEqual([tag]);
  expect(found[0]![1]).toMatch(first);
});

test('swapped runs: each is told of, and to look at the terminals before anything else', () => {
  const found = told((it) => {
    it.runs.W1 = carrying(0, currentOf(RUNS[1]!));
    it.runs.W2 = carrying(1, currentOf(RUNS[0]!));
  });
  expect(found.map(([tag]) => tag).sort()).toEqual(['W1', 'W2']);
  for (const [tag, message] of found) {
    expect(message).toContain(`What ${tag === 'W1' ? 'W2' : 'W1'} has is measured here, and what this run has is measured there: see first whether their cables are changed over`);
  }
});

test('low mains: all supplies of the feed are low, and mains are measured before a supply is set or replaced', () => {
  const found = told((it) => {
    for (const rail of ['L1', 'L2']) it.supplies[rail] = { measuredVoltage: 21.5 };
    for (const run of RUNS) {
      it.runs[run.run] = { measuredCurrent: currentOf(run), measuredVoltage: endOf(run, currentOf(run), 21.5) };
    }
  });
  expect(found.map(([tag]) => tag).sort()).toEqual(['L1', 'L2']);
  for (const [, message] of found) {
    expect(message).toMatch(/all 2 supplies that were measured on feed F1 are low\. Measure the mains at F1 under load, and look at its protection, before anything else\.$/);
  }
  // One of them alone is low by itself.
  expect(told((it) => { it.supplies.L2 = { measuredVoltage: 21.5 }; }).map(([tag, message]) => [tag, message.includes('Disconnect its load')]))
    .toEqual([['L2', true]]);
});

test('missing terminator: one of two was found on the line', () => {
  const found = told((it) => { it.branches.B1 = { terminators: 1 }; });
  expect(found.map(([tag]) => tag)).toEqual(['B1']);
  expect(found[0]![1]).toMatch(/terminat/);
});

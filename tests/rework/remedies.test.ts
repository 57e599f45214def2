import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { mayHaveRemedies, triedRemedies } from '../../src/rework/index.ts';
import type { Content } from '../../src/schedule/index.ts';
import { readData } from '../data/read-data.ts';
import { someRunSchedule } from '../engine/random-runs.ts';
import { findingsAt, scheduleOf } from '../support/schedules.ts';

/** Presses every remedy of everything that was found, each on the schedule as it was. @returns how many. */
function pressAll(content: Content): number {
  const schedule = new LoadSchedule(content);
  const names = ({ findings }: LoadSchedule) => findings.filter(({ severity }) => severity === 'over')
    .map(({ sheet, id, rule }) => `${sheet} ${id} ${rule}`);
  const [before, found] = [schedule.content(), schedule.findings];
  const overBefore = new Set(names(schedule));
  let pressed = 0;
  for (const finding of found) {
    for (const { label, changes } of triedRemedies(schedule, finding)) {
      schedule.act(label, changes);
      const after = schedule.findingsOf(finding.sheet, finding.id).map(({ rule }) => rule);
      expect([label, after]).toEqual([label, expect.not.arrayContaining([finding.rule])]);
      expect(names(schedule).filter((name) => !overBefore.has(name))).toEqual([]);
      expect(schedule.undo()).toBe(label);
      expect(schedule.content()).toEqual(before);
      pressed += 1;
    }
  }
  schedule.dispose();
  return pressed;
}

test('every remedy of the demo takes its finding away and brings none that is over, and one undo takes it back', () => {
  expect(pressAll(readData('demo.schedule.json'))).toBeGreaterThan(2);
});

test('so do those of random schedules', () => {
  let pressed = 0;
  fc.assert(fc.property(someRunSchedule, (content) => { pressed += pressAll(content); }), { numRuns: 60 });
  expect(pressed).toBeGreaterThan(40);
});

/** 2 A at the end of 60 m of 18.1 Ω/km: 2 × 60 × 0.0362 Ω = 4.3 V at 20 °C, and a lamp that needs 21 V. */
const LOW: Content['sheets'] = {
  supplies: [{ rail: 'L1', rated: 10, peak: 5 }, { rail: 'L2', rated: 10 }],
  // It acts at once from 4 A on, where 24 V ÷ (120 m × 0.0433 Ω/m + 0.3 Ω) are 4.4 A.
  ways: [{ way: 'L1-F1', rail: 'L1', kind: 'electronic', rated: 4, trip: 1 }],
  conductors: [
    { conductor: '1 mm²', resistance: 18.1, maxCurrent: 13 }, { conductor: '2.5 mm²', resistance: 7.41, maxCurrent: 23 },
  ],
  runs: [{ run: 'W1', way: 'L1-F1', conductor: '1 mm²', length: 60, maxDrop: 0.2 }],
  types: [{ type: 'Lamp', draw: 1000, minVoltage: 21, maxVoltage: 30 }],
  devices: [{ ref: 'D1', type: 'Lamp', qty: 2, run: 'W1' }],
};
const labels = (schedule: LoadSchedule, sheet: 'runs' | 'ways' | 'supplies', rule: string) =>
  triedRemedies(schedule, findingsAt(schedule, sheet).find((each) => each.rule === rule)!).map(({ label }) => label);

describe('what is offered', () => {
  test('of a run that ends too low: a thicker conductor, a second feed from a new way like its own', () => {
    expect(labels(scheduleOf(LOW), 'runs', 'run-under-voltage')).toEqual([
      'W1 with 2.5 mm²', 'W1 fed from L1-F2 too, over 60.0 m more of its cable',
    ]);
  });

  test('not what does not put it right: where it is four times as long, neither does', () => {
    const long = { ...LOW, runs: [{ ...LOW.runs![0], length: 240 }] };
    expect(labels(scheduleOf(long), 'runs', 'run-under-voltage')).toEqual([]);
  });

  test('of a way that is asked for too much: a larger one where the cable bears it, a run on a new way', () => {
    // Two runs of 2 A each on a way of 3 A; the cable of 1 mm² carries 13 A.
    const sheets = {
      ...LOW, ways: [{ way: 'L1-F1', rail: 'L1', kind: 'electronic', rated: 3, target: 1 }],
      runs: ['W1', 'W2'].map((run) => ({ run, way: 'L1-F1', conductor: '1 mm²', length: 5 })),
      devices: ['W1', 'W2'].map((run) => ({ ref: run, type: 'Lamp', qty: 2, run })),
    };
    expect(labels(scheduleOf(sheets), 'ways', 'way-over-rated')).toEqual(['L1-F1 rated 4.00 A', 'W1 on a new way L1-F2']);
    // A cable of 3 A bears no larger way.
    const thin = { ...sheets, conductors: [{ conductor: '1 mm²', resistance: 18.1, maxCurrent: 3 }] };
    expect(labels(scheduleOf(thin), 'ways', 'way-over-rated')).toEqual(['W1 on a new way L1-F2']);
  });

  test('of a rail that is asked for too much: a larger supply, or a way with its runs on a rail that has room', () => {
    const sheets: Content['sheets'] = {
      ...LOW, supplies: [{ rail: 'L1', rated: 2.5, peak: 8, target: 1 }, { rail: 'L2', rated: 10, peak: 2 }],
      ways: ['L1-F1', 'L1-F2'].map((way) => ({ way, rail: 'L1', kind: 'electronic', rated: 3, target: 1 })),
      runs: ['W1', 'W2'].map((run, at) => ({ run, way: `L1-F${at + 1}`, conductor: '1 mm²', length: 5 })),
      devices: ['W1', 'W2'].map((run) => ({ ref: run, type: 'Lamp', qty: 2, run })),
    };
    expect(labels(scheduleOf(sheets), 'supplies', 'supply-over-usable')).toEqual([
      'L1 rated 5.00 A', 'L1-F1 with its runs on L2',
    ]);
  });

  test('a run without protection gets a way', () => {
    const sheets = {
      ...LOW, supplies: [{ rail: 'L1', rated: 20 }], ways: [], runs: [{ run: 'W1', rail: 'L1', conductor: '1 mm²', length: 10 }],
    };
    expect(labels(scheduleOf(sheets), 'runs', 'run-unprotected')).toEqual([
      'W1 on a new way L1-F1, electronic 3.00 A',
    ]);
  });

  test('nothing for what waits for an input, and nothing of other sheets', () => {
    const schedule = scheduleOf({ ...LOW, runs: [{ run: 'W1', way: 'L1-F1', conductor: '1 mm²' }] });
    for (const finding of schedule.findings.filter(({ severity }) => severity === 'incomplete')) {
      expect([mayHaveRemedies(finding), triedRemedies(schedule, finding)]).toEqual([false, []]);
    }
  });
});

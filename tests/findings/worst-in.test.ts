import { describe, expect, test } from 'vitest';
import { explainCell } from '../../src/explanations.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { removeRows, renameTag, type Cells, type Content, type SheetName } from '../../src/schedule/index.ts';
import { loadWords } from '../../src/words/index.ts';
import { enter, findingsAt, idAt, scheduleOf, valueAt } from '../support/schedules.ts';

type Sheets = Content['sheets'];

/** A case in which a group is all on beside one in which it is off; rows have a quarter by themselves. */
const CASES = (group = 'blinds'): Sheets => ({
  cases: [{ case: 'calm' }, { case: 'wind alarm' }],
  factors: [{ case: 'calm', group, factor: 0 }, { case: 'wind alarm', group, factor: 1 }],
});

/** Ten blinds of 0.5 A on a run of 40 m behind a way. */
const PANEL = (more: Partial<Record<'type' | 'supply' | 'way' | 'run' | 'device', Cells>> = {}): Sheets => ({
  types: [{ type: 'Blind', draw: 500, load: 'current', nodes: 0, diversity: 0.25, group: 'blinds', ...more.type }],
  supplies: [{ rail: 'P1', rated: 40, ...more.supply }],
  ways: [{ way: 'F1', rail: 'P1', kind: 'electronic', rated: 6, ...more.way }],
  conductors: [{ conductor: 'c', resistance: 7.41, maxCurrent: 24 }],
  runs: [{ run: 'W1', way: 'F1', conductor: 'c', length: 40, basis: 'demand', ...more.run }],
  devices: [{ ref: 'D1', type: 'Blind', qty: 10, run: 'W1', ...more.device }],
  ...CASES(),
});

const said = (schedule: LoadSchedule, sheet: SheetName, rule: string, at = 0) =>
  findingsAt(schedule, sheet, at).find((each) => each.rule === rule)?.message;

const NAMED = /^In the case “wind alarm”: /;

/** What is worst in the wind alarm alone, by sheet and rule. */
const WORST: readonly (readonly [sheet: SheetName, rule: string, sheets: Sheets])[] = [
  ['supplies', 'supply-over-usable', PANEL({ supply: { rated: 4 } })],
  ['supplies', 'supply-over-fuse', PANEL({ supply: { fuse: 4, fuseKind: 'gG' } })],
  ['supplies', 'supply-over-target', PANEL({ supply: { rated: 6 } })],
  ['supplies', 'supply-over-battery', PANEL({ supply: { standbyHours: 4, battery: 17 } })],
  ['supplies', 'supply-measured-current-differs', PANEL({ supply: { measuredCurrent: 2, currentTolerance: 0.1 } })],
  ['ways', 'way-over-rated', PANEL({ way: { rated: 4 } })],
  ['ways', 'way-over-target', PANEL({ way: { rated: 6 } })],
  ['runs', 'run-over-carries', PANEL({ run: { ambient: 69 } })],
  ['runs', 'run-over-drop', PANEL()],
  ['runs', 'run-under-voltage', PANEL({ type: { minVoltage: 22 } })],
  ['runs', 'run-measured-current-differs', PANEL({ run: { measuredCurrent: 2, currentTolerance: 0.1 } })],
  ['runs', 'run-no-working-voltage', PANEL({ type: { draw: null, power: 12, load: 'power' }, run: { length: 300 } })],
];

describe('what is worst in a case is said to be so there', () => {
  test.each(WORST)('%s: %s', (sheet, rule, sheets) => {
    const schedule = scheduleOf(sheets);
    expect(said(schedule, sheet, rule)).toMatch(NAMED);
    // By the diversity of its rows alone nothing of it is told, or as it was before.
    const plain = said(scheduleOf({ ...sheets, cases: [], factors: [] }), sheet, rule);
    expect(plain ?? '').not.toMatch(/case/);
  });

  test('of a way and a run what other loads of the supply take from a short circuit', () => {
    const sheets = (fuse: Cells): Sheets => ({
      types: [{ type: 'Blind', draw: 500, nodes: 0, diversity: 0.25, group: 'blinds' }],
      supplies: [{ rail: 'P1', rated: 12, peak: 1, ...fuse }], conductors: [{ conductor: 'c', resistance: 7.41, maxCurrent: 17 }],
      ways: [{ way: 'F1', rail: 'P1', kind: 'electronic', rated: 4 }],
      runs: [{ run: 'W1', way: 'F1', conductor: 'c', length: 5 }, { run: 'W2', rail: 'P1', conductor: 'c', length: 5 }],
      devices: [{ ref: 'D1', type: 'Blind', qty: 14, rail: 'P1' }],
      ...CASES(),
    });
    // 12 A less 7 A of the blinds: 5 A, and 1.8 × 4 A are needed.
    expect(said(scheduleOf(sheets({})), 'ways', 'way-may-not-act')).toMatch(NAMED);
    // The fuse of 2.5 A needs four times that; the supply alone has 12 A.
    const onFuse = scheduleOf(sheets({ fuse: 2.5, fuseKind: 'fast' }));
    expect(valueAt(onFuse, 'runs', 1, 'faultCurrent')).toBeCloseTo(5, 9);
    expect(said(onFuse, 'runs', 'run-fuse-may-not-act', 1)).toMatch(NAMED);
  });

  test('where the cable alone limits a short circuit no case is named', () => {
    const schedule = scheduleOf(PANEL({ way: { kind: 'C', rated: 4 }, run: { length: 200 }, supply: { rated: 100 } }));
    expect(said(schedule, 'runs', 'run-may-not-clear')).toMatch(/^Run W1: a short circuit at its far end/);
  });

  test('of a feed', () => {
    const schedule = (rated: number) => scheduleOf({
      feeds: [{ feed: 'N1', rated }], ...CASES('heaters'),
      outputs: [{ output: 'K1', feed: 'N1', kind: 'resistive', power: 2300, group: 'heaters' }],
    });
    // All of it is on in the wind alarm, and by itself as well: that is then no matter of the case.
    expect(said(schedule(8), 'feeds', 'feed-over-rated')).toMatch(/^In the case “wind alarm”: /);
    expect(said(schedule(11), 'feeds', 'feed-over-target')).toMatch(NAMED);
  });

  test('of an enclosure and what stands in it', () => {
    const schedule = (maxInside: number, supply: Cells = {}) => scheduleOf({
      ...PANEL({ supply: { efficiency: 0.8, enclosure: 'E', ...supply } }),
      enclosures: [{
        enclosure: 'E', height: 400, width: 300, depth: 150, mounting: 'wall', otherLoss: 0, ambient: 30, maxInside,
      }],
    });
    const top = valueAt(schedule(100), 'enclosures', 0, 'top') as number;
    expect(said(schedule(top - 1), 'enclosures', 'enclosure-over-temperature')).toMatch(NAMED);
    expect(said(schedule(top + 1), 'enclosures', 'enclosure-near-temperature')).toMatch(NAMED);
    expect(said(schedule(100, { offAt: Math.floor(top) }), 'supplies', 'supply-over-off')).toMatch(NAMED);
    expect(said(schedule(100), 'supplies', 'supply-derating-missing')).toMatch(NAMED);
    expect(said(schedule(100, { fullUpTo: 30, lessPerKelvin: 1 }), 'supplies', 'supply-gives-nothing')).toMatch(NAMED);
  });

  test('a battery is needed for the case that is marked', () => {
    const schedule = scheduleOf(PANEL({ supply: { standbyHours: 40, battery: 17 }, device: { qty: 20 } }));
    enter(schedule, 'cases', 0, { standby: true });
    enter(schedule, 'factors', 0, { factor: 0.5 });
    expect(valueAt(schedule, 'supplies', 0, 'worstCase')).toBe('wind alarm');
    expect(said(schedule, 'supplies', 'supply-over-battery')).toMatch(/^In the case “calm”: /);
    enter(schedule, 'cases', 0, { standby: null });
    expect(said(schedule, 'supplies', 'supply-over-battery')).toMatch(NAMED);
  });
});

describe('no case is named for what is the same in all of them', () => {
  test('a run that is calculated with everything at once', () => {
    const schedule = scheduleOf(PANEL({ run: { basis: 'connected' } }));
    expect(valueAt(schedule, 'runs', 0, 'worstCase')).toBe('wind alarm');
    expect(said(schedule, 'runs', 'run-over-drop')).toMatch(/^Run W1 loses/);
    // Nor where the only case names all that is on it, so that the diversity of rows does not count.
    schedule.act('drop', removeRows(schedule.document, 'cases', [idAt(schedule, 'cases', 0)]));
    expect(said(schedule, 'runs', 'run-over-drop')).toMatch(/^Run W1 loses/);
    expect(explainCell(schedule, 'runs', idAt(schedule, 'runs'), 'drop')!.words).not.toMatch(/case/);
  });

  test('a run without a working voltage, whatever is on', () => {
    const type = { draw: null, power: 12, load: 'power' };
    const schedule = scheduleOf(PANEL({ type, run: { length: 300, basis: 'connected' } }));
    expect(said(schedule, 'runs', 'run-no-working-voltage')).toMatch(/^Run W1 has no stable/);
  });
});

describe('a breaker of the supply may act with that of a way where most is left for a short circuit', () => {
  // B 16 acts from 4 × 16 A at the soonest; the supply has 80 A less what other loads take.
  const sheets: Sheets = {
    types: [{ type: 'Blind', draw: 500, nodes: 0, group: 'blinds' }],
    supplies: [{ rail: 'P1', rated: 16, peak: 5, fuse: 16, fuseKind: 'B' }],
    ways: [{ way: 'F1', rail: 'P1', kind: 'B', rated: 6 }],
    devices: [{ ref: 'D1', type: 'Blind', qty: 40, rail: 'P1' }],
    cases: [{ case: 'all' }, { case: 'calm' }],
    factors: [{ case: 'all', group: 'blinds', factor: 1 }, { case: 'calm', group: 'blinds', factor: 0.5 }],
  };
  const rules = (of: Sheets) => findingsAt(scheduleOf(of), 'ways').map(({ rule }) => rule);

  test('which is the case in which least is on', () => {
    // 80 A less 20 A: 60 A are less than 64 A; less 10 A they are not.
    expect(rules({ ...sheets, factors: [{ case: 'all', group: 'blinds', factor: 1 }, { case: 'calm', group: 'blinds', factor: 1 }] }))
      .toEqual([]);
    expect(rules(sheets)).toEqual(['way-not-discriminating']);
    expect(said(scheduleOf(sheets), 'ways', 'way-not-discriminating')).toMatch(/^In the case “calm”: Way F1, B 6\.00 A, does not/);
  });

  test('no case is named where the ratings alone are too close', () => {
    const close = scheduleOf({ ...sheets, ways: [{ way: 'F1', rail: 'P1', kind: 'B', rated: 10 }] });
    expect(said(close, 'ways', 'way-not-discriminating')).toMatch(/^Way F1, B 10\.00 A, does not/);
  });
});

test('a sentence follows the name of the case, and its place', () => {
  const schedule = scheduleOf(PANEL({ way: { rated: 4 } }));
  expect(said(schedule, 'runs', 'run-over-drop')).toMatch(NAMED);
  schedule.act('rename', renameTag(schedule.document, 'cases', idAt(schedule, 'cases', 1), 'storm'));
  for (const [sheet, rule] of [['runs', 'run-over-drop'], ['ways', 'way-over-rated']] as const) {
    expect(said(schedule, sheet, rule)).toMatch(/^In the case “storm”: /);
  }
  // With both factors changed over, the other case is the worst with the same figures.
  enter(schedule, 'factors', 0, { factor: 1 });
  enter(schedule, 'factors', 1, { factor: 0 });
  expect(said(schedule, 'runs', 'run-over-drop')).toMatch(/^In the case “calm”: /);
});

test.each([
  ['de', /^Im Lastfall „wind alarm“: /], ['fr', /^Dans le cas «\swind alarm\s»\s: /],
] as const)('it is said in %s', async (language, named) => {
  const schedule = scheduleOf(PANEL({ way: { rated: 4 } }));
  schedule.speak(await loadWords(language));
  expect(said(schedule, 'runs', 'run-over-drop')).toMatch(named);
  expect(said(schedule, 'ways', 'way-over-rated')).toMatch(named);
});

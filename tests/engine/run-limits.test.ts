import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exceeds } from '../../src/electrical/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { setCells, type Cells, type Content } from '../../src/schedule/index.ts';
import { panelSheets, somePanel } from './random-panel.ts';
import { someRunSchedule } from './random-runs.ts';

/** Rules by which a run fails. */
const FAILURES = new Set([
  'run-no-working-voltage', 'run-over-carries', 'run-protection-over-carries', 'run-over-drop',
  'run-protection-acts-late', 'run-unprotected', 'run-fuse-may-not-act', 'run-temperature-over-conductor',
]);

/** Whether a run keeps to its limits, by what is found in it. */
function works(schedule: LoadSchedule, at: number): boolean {
  const { id } = schedule.rows('runs')[at]!;
  if (schedule.findingsOf('runs', id).some(({ rule }) => FAILURES.has(rule))) return false;
  const way = schedule.target('runs', id, 'way');
  const ofWay = (key: string) => way < 0 ? null : schedule.value('ways', way, key) as number | null;
  const ofRun = (key: string) => schedule.value('runs', id, key) as number | null;
  // What a rail lacks before any cable is told there.
  if ((ofRun('voltageMargin') ?? 0) < -1e-9) return false;
  const [rated, trip, current, fault] = [ofWay('rated'), ofWay('trip'), ofRun('current'), ofRun('faultCurrent')];
  // That its way is too small, or never acts, is told at the way or at the supply.
  if (rated !== null && current !== null && exceeds(current, rated)) return false;
  // One device that is too large is told at its row.
  if (exceeds(ofRun('largest') ?? 0, ofRun('carries') ?? Infinity)) return false;
  // Where it is as warm as the conductor may get, that is what is told.
  const isOnItsOwn = schedule.value('runs', id, 'way') === null
    && schedule.value('supplies', schedule.target('runs', id, 'rail'), 'rated') !== null;
  if (ofRun('carries') === 0 && (rated !== null || isOnItsOwn || (current ?? 0) > 0)) return false;
  return rated === null || trip === null || fault === null || !exceeds(rated * trip, fault);
}

/** The same schedule with every length and distance times a factor. */
function scaled(content: Content, factor: number): LoadSchedule {
  const times = (key: string) => (row: Readonly<Record<string, unknown>>) =>
    typeof row[key] === 'number' ? { ...row, [key]: row[key] * factor } : row;
  const { runs, devices } = content.sheets;
  return new LoadSchedule({
    ...content,
    sheets: {
      ...content.sheets, runs: runs!.map(times('length')) as never, devices: devices!.map(times('distance')) as never,
    },
  });
}

const isAble = (schedule: LoadSchedule, at: number) =>
  schedule.value('runs', schedule.rows('runs')[at]!.id, 'faultCurrent') !== null;

/** Lengths that are scanned, as shares of the length as it is. */
const FACTORS = Array.from({ length: 50 }, (_, index) => 0.02 * 1.12 ** index);

describe('by brute force, on random schedules', () => {
  test('the longest run: every length that is scanned works below it and fails above it', () => {
    const limited = { between: 0, never: 0, always: 0 };
    fc.assert(fc.property(someRunSchedule, (content) => {
      const schedule = new LoadSchedule(content);
      const scan = FACTORS.map((factor) => [factor, scaled(content, factor)] as const);
      schedule.rows('runs').forEach(({ id }, at) => {
        const length = schedule.value('runs', id, 'length');
        if (typeof length !== 'number' || !isAble(schedule, at)) return;
        const longest = schedule.value('runs', id, 'maxLength') as number | null ?? Infinity;
        limited[longest === 0 ? 'never' : longest === Infinity ? 'always' : 'between'] += 1;
        for (const [factor, other] of scan) {
          const ratio = factor * length / longest;
          if (Math.abs(ratio - 1) > 1e-6) expect([factor, works(other, at)]).toEqual([factor, ratio < 1]);
        }
      });
    }), { numRuns: 25 });
    for (const [kind, count] of Object.entries(limited)) expect([kind, count > 0 || kind === 'always'])
      .toEqual([kind, true]);
  });

  test('it is met to a millionth', () => {
    fc.assert(fc.property(someRunSchedule, (content) => {
      const schedule = new LoadSchedule(content);
      schedule.rows('runs').forEach(({ id }, at) => {
        const [length, longest] = ['length', 'maxLength'].map((key) => schedule.value('runs', id, key));
        if (typeof length !== 'number' || typeof longest !== 'number' || longest === 0 || !isAble(schedule, at)) return;
        expect(works(scaled(content, longest / length * (1 - 1e-6)), at)).toBe(true);
        expect(works(scaled(content, longest / length * (1 + 1e-6)), at)).toBe(false);
      });
    }), { numRuns: 60 });
  });

  test('the smallest conductor: of all on the sheet with which nothing fails, that of highest resistance', () => {
    const found = { some: 0, none: 0 };
    fc.assert(fc.property(someRunSchedule, (content) => {
      const schedule = new LoadSchedule(content);
      schedule.rows('runs').forEach(({ id, cells }, at) => {
        const supply = schedule.target('runs', id, 'rail');
        if (typeof cells.length !== 'number' || schedule.value('supplies', supply, 'rated') === null) return;
        if (schedule.value('supplies', supply, 'lowest') === null) return;
        const named = schedule.value('runs', id, 'smallestConductor');
        const able = content.sheets.conductors!.filter(({ conductor, resistance, maxCurrent }) => {
          if (typeof resistance !== 'number' || typeof maxCurrent !== 'number') return false;
          const tried = new LoadSchedule(schedule.content());
          tried.act(
            'Try',
            setCells(
              tried.document, [{ sheet: 'runs', id: tried.rows('runs')[at]!.id, key: 'conductor', value: conductor! }]
            )
          );
          return works(tried, at);
        });
        const highest = Math.max(...able.map(({ resistance }) => resistance as number));
        expect(named).toBe(able.find(({ resistance }) => resistance === highest)?.conductor ?? null);
        found[named === null ? 'none' : 'some'] += 1;
      });
    }), { numRuns: 40 });
    expect(Math.min(found.some, found.none)).toBeGreaterThan(0);
  });

  test('a run works if and only if it may be as long as it is', () => {
    fc.assert(fc.property(someRunSchedule, (content) => {
      const schedule = new LoadSchedule(content);
      schedule.rows('runs').forEach(({ id }, at) => {
        const [length, longest] = ['length', 'maxLength'].map((key) => schedule.value('runs', id, key));
        if (typeof length !== 'number' || !isAble(schedule, at)) return;
        const isLong = typeof longest === 'number' && longest < length * (1 - 1e-9);
        expect(works(schedule, at)).toBe(!isLong);
      });
    }), { numRuns: 100 });
  });
});

test('what is said to put a run or a supply right does, or names what else is in the way', () => {
  const said = { length: 0, shrinking: 0, conductor: 0, rating: 0, fuse: 0, acting: 0, inTheWay: 0 };
  fc.assert(fc.property(somePanel, fc.integer({ min: 0, max: 20 }), (panel, more) => {
    const content = { details: {}, sheets: panelSheets(panel, more) };
    const schedule = new LoadSchedule(content);
    const messages = schedule.findings.map(({ message }) => message).join('\n');
    schedule.dispose();
    const standsWith = (sheet: 'runs' | 'supplies', cells: Cells, factor = 1) => {
      const rows = [{ ...content.sheets[sheet]![0], ...cells }];
      const tried = scaled({ ...content, sheets: { ...content.sheets, [sheet]: rows } }, factor);
      const status = tried.value(sheet, tried.rows(sheet)[0]!.id, 'status');
      tried.dispose();
      return status;
    };
    const found = (pattern: RegExp, kind: keyof typeof said) => {
      const match = pattern.exec(messages);
      if (match !== null) said[kind] += 1;
      return match;
    };
    const plain = found(/it may be ([\d.]+) m long[.;]/, 'length');
    if (plain !== null) expect(standsWith('runs', { length: Number(plain[1]) })).toBe('ok');
    const shrinking = found(/it may be ([\d.]+) m long if the distances on it shrink along/, 'shrinking');
    if (shrinking !== null) expect(standsWith('runs', {}, Number(shrinking[1]) / panel.run.length)).toBe('ok');
    const conductor = found(/(\w+) would do at this length/, 'conductor');
    if (conductor !== null) expect(standsWith('runs', { conductor: conductor[1]! })).toBe('ok');
    const rating = found(/larger supply\. One of ([\d.]+)\sA would do/, 'rating');
    if (rating !== null) expect(standsWith('supplies', { rated: Number(rating[1]) })).toBe('ok');
    const fuse = found(/conductors carry it\. One of ([\d.]+)\sA would do/, 'fuse');
    if (fuse !== null) expect(standsWith('supplies', { fuse: Number(fuse[1]) })).toBe('ok');
    const acting = found(/gives ([\d.]+)\sA at most before it limits: the fuse may never act\. Use a fuse of no more/, 'acting');
    if (acting !== null) expect(standsWith('supplies', { fuse: Number(acting[1]) })).toBe('ok');
    found(/alone does not put it right\. Still in the way: \S/, 'inTheWay');
  }), { numRuns: 200 });
  for (const [kind, times] of Object.entries(said)) expect([kind, times > 1]).toEqual([kind, true]);
});

describe('what is not known is not held against a run, and the rest is', () => {
  // 10 Ω/km over 50 m: 1 Ω at 20 °C and 1.1965 Ω at 70 °C, when a short circuit comes: 20 A without a supply that
  // limits it; by hand.
  const sheets = (supply: object, way?: object): Content['sheets'] => ({
    supplies: [{ rail: 'A', innerResistance: 0, ...supply }], ways: way === undefined ? [] : [{ way: 'F1', rail: 'A', ...way }],
    conductors: [
      { conductor: 'thin', resistance: 20, maxCurrent: 4 }, { conductor: 'C', resistance: 10, maxCurrent: 6 },
      { conductor: 'thick', resistance: 5, maxCurrent: 20 },
    ],
    runs: [{ run: 'W1', rail: 'A', conductor: 'C', length: 50, temperature: 20, ...(way && { way: 'F1' }) }],
    devices: [{ rail: 'A', run: 'W1', qty: 1, unitDraw: 100 }],
  });

  test.each<{ why: string; supply: object; way?: object; longest: number; smallest: string }>([
    {
      why: 'rating unknown: protection against the conductor', supply: {}, way: { rated: 5, trip: 1 },
      longest: 240 / 1.1965, smallest: 'C',
    },
    {
      why: 'rating unknown: protection above the conductor', supply: {}, way: { rated: 8, trip: 1 }, longest: 0,
      smallest: 'thick',
    },
    {
      why: 'rating unknown: what the cable lets through', supply: {}, way: { rated: 5, trip: 6 },
      longest: 40 / 1.1965,
      smallest: 'thick',
    },
    {
      why: 'rating known: the supply gives too little', supply: { rated: 10 }, way: { rated: 5, trip: 3 },
      longest: 0, smallest: '',
    },
    // 0.1 A over r = 0.02 Ω/m lose 5 % of 24 V on 600 m; 2.6 A × 1.5 = 3.9 A are the most that is fed for ever.
    { why: 'no protection: the drop', supply: { rated: 2.6 }, longest: 600, smallest: 'thin' },
    { why: 'no protection: what the supply feeds, 15 A', supply: { rated: 10 }, longest: 0, smallest: 'thick' },
    {
      why: 'a fuse of a kind that is not known protects nothing', supply: { rated: 10, fuse: 4 }, longest: 0,
      smallest: 'thick',
    },
    {
      // gG 3 A acts on overload at 2.1 × 3 = 6.3 A, above 1.45 × 4 and below 1.45 × 6; at once at 7 × 3 = 21 A.
      why: 'the fuse of the supply: it protects the conductor, and acts at once on what the cable lets through',
      supply: { rated: 30, fuse: 3, fuseKind: 'gG' }, longest: 24 / 21 / 0.02393, smallest: 'thick',
    },
    {
      why: 'the fuse of the supply never acts at once', supply: { rated: 12, fuse: 3, fuseKind: 'gG' }, longest: 0,
      smallest: 'thick',
    },
  ])('$why', ({ supply, way, longest, smallest }) => {
    const schedule = new LoadSchedule({ details: {}, sheets: sheets(supply, way) });
    const id = schedule.rows('runs')[0]!.id;
    expect(schedule.value('runs', id, 'maxLength')).toBeCloseTo(longest, 5);
    expect(schedule.value('runs', id, 'smallestConductor') ?? '').toBe(smallest);
  });
});

import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import {
  END_BRACKET, MountedParts, panelRails, placeParts, placingChanges, proposeRails, railsFor, widthOnRail,
  type MountedPart,
} from '../../src/mounting/index.ts';
import type { Cells, Content } from '../../src/schedule/index.ts';
import { layOutTerminals, layoutChanges } from '../../src/terminals/index.ts';
import { demoContent } from '../report/demo.ts';
import { enter } from '../support/schedules.ts';
import { railsOf } from '../support/independent-rails.ts';

const open: LoadSchedule[] = [];
function scheduleOf(sheets: Content['sheets']): LoadSchedule {
  const schedule = new LoadSchedule({ details: {}, sheets });
  open.push(schedule);
  return schedule;
}
afterEach(() => { for (const schedule of open.splice(0)) schedule.dispose(); });

const railsIn = (schedule: LoadSchedule, options = {}) => panelRails(schedule.document, schedule.figures, options);
const tagsOn = (schedule: LoadSchedule) =>
  railsIn(schedule).map(({ rails }) => rails.map(({ parts }) => parts.map(({ tag }) => tag)));
const E1: Cells = { enclosure: 'E1', rails: 3, railLength: 200 };
const terminals = (strip: string, count: number, cells: Cells = {}): Cells[] =>
  Array.from({ length: count }, (_terminal, at) =>
    ({ terminal: `${strip}:${at + 1}`, strip, enclosure: 'E1', width: 5, ...cells }));

describe('the mounting rails of an enclosure', () => {
  it('hold its parts in order of their purpose, mains and extra-low voltage apart; a channel without width stands nowhere', () => {
    const schedule = scheduleOf({
      enclosures: [E1], feeds: [{ feed: 'F1', enclosure: 'E1', width: 18 }],
      supplies: [{ rail: 'L1', enclosure: 'E1', width: 60, units: 2 }],
      ways: [{ way: 'W1', rail: 'L1', width: 12 }, { way: 'W2', rail: 'L1', width: 0 }],
      branches: [{ branch: 'B1', enclosure: 'E1', width: 36 }],
      modules: [{ module: 'K1', enclosure: 'E1', width: 72 }, { module: 'K2', enclosure: 'E1', width: 36 }],
      outputs: [{ output: 'Q1', module: 'K1' }, { output: 'Q2', module: 'K2', kind: 'dc', rail: 'L1' }],
      terminals: [...terminals('X1', 3, { potential: 'F1 N', outside: 'F1' }), ...terminals('X2', 3, { potential: 'L1 L+', inside: 'L1:+' })],
    });
    // F1 18, L1 2 × 60, X1 35 are 173 mm; W1 12, B1 36, K2 36, X2 35 are 119 mm; K1 has mains, and its 72 mm no room.
    expect(tagsOn(schedule)).toEqual([[['F1', 'X1', 'L1', 'L1'], ['W1', 'B1', 'K2', 'X2'], ['K1']]]);
    expect(railsIn(schedule)[0]!.rails.map(({ used, isMixed }) => [used, isMixed]))
      .toEqual([[173, false], [119, false], [72, false]]);
    expect(railsIn(schedule)[0]).toMatchObject({ outcome: 'fits', used: 364, lacking: 0, unplaced: [] });
  });

  it('count two end brackets for each strip and a partition plate where one stands', () => {
    const [panel] = railsIn(scheduleOf({ enclosures: [E1], terminals: [...terminals('X1', 4), { ...terminals('X1', 5)[4]!, partition: true }] }));
    expect(panel!.rails[0]!.parts).toMatchObject([{ tag: 'X1', width: 25 + 3 + 2 * END_BRACKET, extra: 3 + 2 * END_BRACKET }]);
  });

  it('divide a strip that is longer than a rail between terminals, each piece with its own brackets', () => {
    const [panel] = railsIn(scheduleOf({ enclosures: [E1], terminals: terminals('X1', 50) }));
    // 200 mm less two brackets hold 36 terminals of 5 mm.
    const pieces = panel!.rails.flatMap(({ parts }) => parts);
    expect(pieces.map(({ ids, width, piece }) => [ids.length, width, piece])).toEqual([
      [36, 200, { number: 1, of: 2 }], [14, 90, { number: 2, of: 2 }],
    ]);
  });

  it('keep a strip together with terminals that say no rail, and part it where a person gave two', () => {
    const by = (...rails: (number | null)[]) => terminals('X1', rails.length).map((cells, at): Cells => ({ ...cells, mountedOn: rails[at]! }));
    const pieces = (...rails: (number | null)[]) =>
      railsIn(scheduleOf({ enclosures: [E1], terminals: by(...rails) }))[0]!
        .rails.map(({ parts }) => parts.map(({ ids }) => ids.length));
    expect(pieces(null, 2, null)).toEqual([[], [3], []]);
    expect(pieces(2, 2, 3)).toEqual([[], [2], [1]]);
  });

  it('tell rows without a width, and are asked for only where number and length are known', () => {
    expect(railsIn(scheduleOf({ enclosures: [E1], modules: [{ module: 'K1', enclosure: 'E1' }] }))[0]!.lacking).toBe(1);
    expect(railsIn(scheduleOf({ enclosures: [{ enclosure: 'E1', rails: 3 }], modules: [{ module: 'K1', enclosure: 'E1', width: 9 }] }))).toEqual([]);
  });
});

describe('placing parts by command', () => {
  const panel = () => scheduleOf({
    enclosures: [E1], modules: [90, 80, 110].map((width, at): Cells => ({ module: `K${at + 1}`, enclosure: 'E1', width })),
    supplies: [{ rail: 'L1', enclosure: 'E1', width: 60 }], terminals: terminals('X1', 2, { potential: 'L1 L+', inside: 'L1:+' }),
  });
  const place = (schedule: LoadSchedule, options = {}) => {
    const placement = placeParts(schedule.document, schedule.figures, options);
    schedule.act('Placing', placingChanges(schedule.document, placement));
    return placement;
  };

  it('gives every part its rail as one action that undo takes back; again it changes nothing', () => {
    const schedule = panel();
    const before = tagsOn(schedule);
    expect(place(schedule).placed.map(({ part: { tag }, rail }) => [tag, rail])).toEqual([['K1', 1], ['L1', 1], ['K2', 2], ['K3', 2], ['X1', 3]]);
    expect(schedule.rows('terminals').map(({ cells }) => cells.mountedOn)).toEqual([3, 3]);
    expect(tagsOn(schedule)).toEqual(before);
    expect(place(schedule).placed).toEqual([]);
    schedule.undo();
    schedule.undo();
    expect(schedule.rows('modules').map(({ cells }) => cells.mountedOn ?? null)).toEqual([null, null, null]);
  });

  it('leaves what stands, and places it anew where that is asked for', () => {
    const schedule = panel();
    enter(schedule, 'modules', 0, { mountedOn: 3 });
    place(schedule);
    expect(schedule.rows('modules')[0]!.cells.mountedOn).toBe(3);
    place(schedule, { anew: true });
    expect(schedule.rows('modules')[0]!.cells.mountedOn).toBe(1);
  });

  it('leaves the cell of a supply empty whose units come on several rails, and says so', () => {
    const schedule = scheduleOf({ enclosures: [E1], supplies: [{ rail: 'L1', enclosure: 'E1', width: 90, units: 3 }] });
    const placement = place(schedule);
    expect([placement.placed, placement.parted.map(({ part }) => part.tag)]).toEqual([[], ['L1']]);
    expect(railsIn(schedule)[0]!.rails.map(({ parts }) => parts.length)).toEqual([2, 1, 0]);
  });

  it('says which parts find no rail', () => {
    const schedule = scheduleOf({ enclosures: [{ ...E1, railLength: 400 }], modules: [250, 250, 250, 210].map((width, at): Cells => ({ module: `K${at + 1}`, enclosure: 'E1', width })) });
    expect(place(schedule).left.map(({ part }) => part.tag)).toEqual(['K4']);
    expect(schedule.findings.filter(({ rule }) => rule === 'enclosure-rails-over')).toHaveLength(1);
  });

  it('places the parts of the demo with all of its terminals, and lays out and places again without a change', () => {
    const schedule = new LoadSchedule(demoContent());
    open.push(schedule);
    schedule.act('Terminals', layoutChanges(schedule.document, layOutTerminals(schedule.document, schedule.figures)));
    const { placed, left } = place(schedule);
    expect(placed.length).toBeGreaterThan(40);
    expect(left).toEqual([]);
    expect(placeParts(schedule.document, schedule.figures).placed).toEqual([]);
    expect(schedule.findings.filter(({ rule }) => rule.includes('rail'))).toEqual([]);
    for (const { rails } of railsIn(schedule)) expect(rails.filter(({ isOver }) => isOver)).toEqual([]);
  });
});

describe('how many rails hold everything', () => {
  const parts = (...widths: number[]): MountedPart[] => widths.map((width, at) =>
    ({ sheet: 'modules', ids: [at], tag: `K${at}`, width, extra: 0, band: 'mains', mountedOn: undefined }));

  it('counts the reserve and whether parts can be arranged', () => {
    // 960 mm need 3 × 400 mm less 20 % in sum, and four rails as three 250 mm stand alone and 210 mm beside none.
    expect(railsFor(parts(250, 250, 250, 210), 400, 0.2)).toBe(4);
    expect(railsFor(parts(250, 250, 250, 150), 400, 0.2)).toBe(3);
    expect(railsFor(parts(250, 250, 250, 150), 400, 0.3)).toBe(4);
    expect(railsFor(parts(400), 400, 0)).toBe(1);
    expect(railsFor(parts(401), 400, 0)).toBeNull();
    expect(railsFor(parts(10), 400, 1)).toBeNull();
    expect(railsFor([], 400, 0.2)).toBe(1);
  });

  it('divides strips for each length anew', () => {
    const schedule = scheduleOf({ enclosures: [{ enclosure: 'E1' }], terminals: terminals('X1', 50, { mountedOn: 2 }) });
    // 250 mm and two brackets stand on one rail of 300 mm; on rails of 150 mm there are 26 terminals to a rail.
    expect(proposeRails(new MountedParts(schedule.document, schedule.figures), 'E1', 0, [300, 150])).toEqual([{ length: 300, count: 1 }, { length: 150, count: 2 }]);
  });
});

const someWidth = fc.constantFrom(null, 5.2, 12, 17.5, 18, 36, 60, 90, 110);
const hand = fc.constantFrom(null, null, null, null, 1, 2, 4);
const place = fc.constantFrom('E1', 'E1', 'E2', null);
const somePanel = fc.record({
  rails: fc.constantFrom(1, 2, 3), railLength: fc.constantFrom(90, 120, 200),
  supplies: fc.array(
    fc.record({ enclosure: place, width: someWidth, units: fc.constantFrom(null, 1, 2), mountedOn: hand }),
    { maxLength: 2 }),
  ways: fc.array(fc.record({ rail: fc.constantFrom('L0', 'L1'), enclosure: place, width: someWidth, mountedOn: hand }), { maxLength: 3 }),
  feeds: fc.array(
    fc.record({ enclosure: place, voltage: fc.constantFrom(null, 24, 230), width: someWidth, mountedOn: hand }),
    { maxLength: 2 }),
  modules: fc.array(fc.record({ enclosure: place, width: someWidth, mountedOn: hand }), { maxLength: 2 }),
  outputs: fc.array(fc.record({ module: fc.constantFrom('K0', 'K1'), kind: fc.constantFrom('dc', 'lamp'), rail: fc.constantFrom(null, 'L0') }), { maxLength: 2 }),
  terminals: fc.array(fc.record({
    strip: fc.constantFrom('X1', 'X2'), enclosure: place, width: fc.constantFrom(null, 5.2, 6.2, 10.2), mountedOn: hand,
    potential: fc.constantFrom('a', 'b', 'PE'), inside: fc.constantFrom(null, 'L0:+', 'L0:L', 'F0:2', 'W0:2', 'R0'), partition: fc.constantFrom(null, true),
  }), { maxLength: 12 }),
}).map(({ rails, railLength, ...sheets }): Content['sheets'] => {
  const tagged = (key: string, letter: string, rows: readonly object[]): Cells[] => rows.map((row, at) => ({
    ...Object.fromEntries(Object.entries(row as Cells).filter(([, value]) => value !== null)), [key]: key === 'terminal' ? `X:${at + 1}` : `${letter}${at}`,
  }));
  return {
    enclosures: [{ enclosure: 'E1', rails, railLength }, { enclosure: 'E2', rails: 1, railLength: 200 }],
    supplies: tagged('rail', 'L', sheets.supplies), ways: tagged('way', 'W', sheets.ways), feeds: tagged('feed', 'F', sheets.feeds),
    modules: tagged('module', 'K', sheets.modules), outputs: tagged('output', 'Q', sheets.outputs), terminals: tagged('terminal', 'X', sheets.terminals),
  };
});

it('comes to the widths and the decisions of an independent calculation, on random panels', () => {
  const seen = { fits: 0, none: 0, over: 0 };
  fc.assert(fc.property(somePanel, (sheets) => {
    const schedule = scheduleOf(sheets);
    for (const panel of railsIn(schedule)) {
      const row = sheets.enclosures!.find(({ enclosure }) => enclosure === panel.enclosure)!;
      const expected = railsOf((name) => sheets[name as keyof typeof sheets] ?? [], row)!;
      expect(panel.used).toBeCloseTo(expected.used, 9);
      expect(panel.outcome).toBe(expected.fits ? 'fits' : 'none');
      const isOver = panel.rails.some((rail) => rail.isOver)
        || panel.unplaced.some(({ mountedOn }) => mountedOn !== undefined);
      expect(isOver).toBe(expected.isOver);
      seen[panel.outcome === 'fits' ? 'fits' : 'none'] += 1;
      if (isOver) seen.over += 1;
      for (const { parts, used, number } of panel.rails) {
        expect(used).toBeCloseTo(widthOnRail(parts), 9);
        const isByHand = parts.every(({ mountedOn }) => mountedOn !== undefined);
        expect(isByHand || used <= panel.length + 1e-6).toBe(true);
        for (const { mountedOn } of parts) expect(mountedOn ?? number).toBe(number);
      }
    }
  }), { numRuns: 300 });
  for (const [kind, count] of Object.entries(seen)) expect([kind, count > 20]).toEqual([kind, true]);
});

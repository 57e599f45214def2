import { expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { compareOutcomes, OUTCOME_FIGURES } from '../../src/report/index.ts';
import { findColumn, type Cells, type Content, type SheetName } from '../../src/schedule/index.ts';

/** By hand: P1 may be used for 10 A and is asked for 12 × 0.5 A = 6 A, 60 %; P2 for 5 A and for 2 × 1 A = 2 A, 40 %. */
const panel = (supplies: readonly Cells[], more: Partial<Record<SheetName, readonly Cells[]>> = {}): Content => ({
  details: {},
  sheets: {
    types: [{ type: 'Drive', draw: 500, nodes: 0 }, { type: 'Panel', draw: 1000, nodes: 0 }], supplies,
    devices: [{ ref: 'D1', type: 'Drive', qty: 12, rail: 'P1' }, { ref: 'D2', type: 'Panel', qty: 2, rail: 'P2' }],
    ...more,
  },
});
const supply = (rail: string, rated: number): Cells => ({ rail, rated, voltage: 24, target: 0.8 });
const compared = (before: Content, after: Content) =>
  compareOutcomes(new LoadSchedule(before), new LoadSchedule(after));

test('every figure that is compared is a column of its sheet', () => {
  for (const [sheet, keys] of Object.entries(OUTCOME_FIGURES)) {
    for (const key of keys) expect([sheet, key, findColumn(sheet as SheetName, key)?.role]).toEqual([sheet, key, 'computed']);
  }
});

test('figures before and after, with what they differ by, and the worst first', () => {
  const rows = compared(panel([supply('P2', 5), supply('P1', 10)]), panel([supply('P2', 5), supply('P1', 5)]));
  expect(rows.map(({ tag, before, after, isSame }) => [tag, before, after, isSame]).slice(0, 2)).toEqual([
    ['P1', expect.not.stringMatching('over'), 'over', false], ['P2', expect.any(String), expect.any(String), true],
  ]);
  const figures = Object.fromEntries(rows[0]!.figures.map((figure) => [figure.key, figure]));
  expect(figures.usable).toMatchObject({ before: 10, after: 5, difference: -5, isSame: false });
  expect(figures.demand).toMatchObject({ before: 6, after: 6, difference: 0, isSame: true, signs: ['', ''] });
  expect(figures.loading!.difference).toBeCloseTo(1.2 - 0.6, 12);
  // 80 % of 10 A and of 5 A, less 6 A.
  expect(figures.spare).toMatchObject({ before: 2, after: -2, difference: -4 });
});

test('a row that came has nothing before, one that went stands last and has nothing after', () => {
  const [one, both] = [panel([supply('P1', 10)]), panel([supply('P2', 5), supply('P1', 10)])];
  const came = compared(one, both).find(({ tag }) => tag === 'P2')!;
  expect([came.row, came.before, came.isSame]).toEqual([1, undefined, false]);
  expect(came.figures.find(({ key }) => key === 'usable')).toMatchObject({ before: null, after: 5, difference: null });
  const rows = compared(both, one).filter(({ sheet }) => sheet === 'supplies');
  expect(rows.map(({ tag, row, after }) => [tag, row, after === undefined])).toEqual([['P1', 1, false], ['P2', 1, true]]);
  expect(rows[1]!.figures.find(({ key }) => key === 'usable')).toMatchObject({ before: 5, after: null });
});

test('a figure that lacks something by now is another one, though its number is the same', () => {
  const rows = compared(
    panel([supply('P1', 10)]),
    panel([supply('P1', 10)], { devices: [
      { ref: 'D1', type: 'Drive', qty: 12, rail: 'P1' }, { ref: 'D3', type: 'Unheard of', qty: 1, rail: 'P1' },
    ] }));
  const demand = rows.find(({ tag }) => tag === 'P1')!.figures.find(({ key }) => key === 'demand')!;
  expect(demand).toMatchObject({ before: 6, after: 6, signs: ['', '≥'], isSame: false });
});

test('a device row that stands otherwise, and the battery that a supply needs, are among what is compared', () => {
  const standby = { standbyHours: 10, battery: 60 };
  const made = (share: number, highest: number) => panel([{ ...supply('P1', 10), ...standby }], {
    types: [{ type: 'Drive', draw: 500, nodes: 0, maxVoltage: highest }],
    cases: [{ case: 'mains off', standby: true }], factors: [{ case: 'mains off', group: 'drives', factor: share }],
    devices: [{ ref: 'D1', type: 'Drive', qty: 12, rail: 'P1', group: 'drives' }],
  });
  const rows = compared(made(0.5, 30), made(0.25, 20));
  const of = (tag: string) => rows.find((row) => row.tag === tag)!;
  // 12 × 0.5 A × 50 % and × 25 %, for 10 h, and 1.25 for ageing.
  expect(of('P1').figures.find(({ key }) => key === 'batteryNeeded')).toMatchObject({ before: 37.5, after: 18.75 });
  expect([of('D1').before, of('D1').after]).toEqual([expect.not.stringMatching('over'), 'over']);
});

test('cases have no status and are compared by what they ask for', () => {
  const cases = (factor: number) => panel([supply('P1', 10)], {
    types: [{ type: 'Drive', draw: 500, nodes: 0, group: 'drives' }], cases: [{ case: 'Storm', hours: 2 }],
    factors: [{ case: 'Storm', group: 'drives', factor }],
  });
  const row = compared(cases(0.5), cases(1)).find(({ sheet }) => sheet === 'cases')!;
  expect([row.tag, row.before, row.after]).toEqual(['Storm', null, null]);
  // 3 A and 6 A at 24 V.
  expect(row.figures[0]).toMatchObject({ key: 'demand', before: 72, after: 144, difference: 72 });
});

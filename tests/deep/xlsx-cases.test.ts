import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import {
  columnOf, SCHEMA, setCells, type Cells, type CellValue, type Content, type SheetName,
} from '../../src/schedule/index.ts';
import { loadWords } from '../../src/words/index.ts';
import { someCasesContent } from '../engine/random-cases.ts';
import { someCases } from '../engine/random-weighed-runs.ts';
import { differences, differencesAfterEdits, openWorkbook, recalculate, writeWorkbook } from '../support/recalculate-workbook.ts';

/** Two supplies on one feed, in one enclosure; blinds and lamps that are on at different times. */
const panel = (more: Partial<Record<SheetName, Cells[]>> = {}): Content => ({
  details: {},
  sheets: {
    types: [{ type: 'Drive', draw: 1000, group: 'blinds' }, { type: 'Lamp', draw: 500, group: 'lamps' }, { type: 'Sensor', draw: 100 }],
    enclosures: [{ enclosure: 'P1', height: 800, width: 600, depth: 300, mounting: 'wall', maxInside: 55 }],
    feeds: [{ feed: 'F1', rated: 6, diversity: 0.9 }],
    supplies: ['L1', 'L2'].map((rail) => ({
      rail, rated: 10, peak: 10, enclosure: 'P1', efficiency: 0.9, feed: 'F1', inputPowerFactor: 0.9, standbyHours: 2, battery: 60,
    })),
    ways: [{ way: 'F1.1', rail: 'L1', kind: 'B', rated: 6 }, { way: 'F1.2', rail: 'L1', kind: 'B', rated: 6 }, { way: 'F2.1', rail: 'L2', kind: 'B', rated: 10 }],
    conductors: [{ conductor: '1.5', resistance: 12.1, maxCurrent: 16 }],
    runs: [
      { run: 'W1', way: 'F1.1', conductor: '1.5', length: 20 }, { run: 'W2', way: 'F1.2', conductor: '1.5', length: 20 },
      { run: 'W3', way: 'F2.1', conductor: '1.5', length: 20 },
    ],
    devices: [
      { ref: 'D1', type: 'Drive', qty: 6, run: 'W1', distance: 20 }, { ref: 'D2', type: 'Lamp', qty: 8, run: 'W2', distance: 20, diversity: 0.5 },
      { ref: 'D3', type: 'Drive', qty: 3, run: 'W3', distance: 20, diversity: 0.4 }, { ref: 'D4', type: 'Lamp', qty: 10, run: 'W3', distance: 20 },
    ],
    contacts: [{ contact: 'C', resistive: 16 }],
    outputs: [{ output: 'K1', contact: 'C', feed: 'F1', kind: 'resistive', power: 400, group: 'lamps' }],
    cases: [{ case: 'evening', hours: 6 }, { case: 'wind alarm', together: true }, { case: 'mains fail', standby: true, hours: 18 }],
    factors: [
      { case: 'evening', group: 'blinds', factor: 0.2 }, { case: 'evening', group: 'lamps', factor: 0.9 },
      { case: 'wind alarm', group: 'blinds', factor: 1 }, { case: 'wind alarm', group: 'lamps', factor: 0.5, of: 'demand' },
      { case: 'mains fail', group: 'lamps', factor: 0.1 }, { case: 'mains fail', group: 'blinds', factor: 0 },
    ],
    ...more,
  },
});

/** Figures that cases change; each is to be a formula. */
const FOLLOWING: readonly (readonly [SheetName, string])[] = [
  ['supplies', 'demand'], ['supplies', 'worstCase'], ['supplies', 'loading'], ['supplies', 'loss'], ['supplies', 'inputCurrent'],
  ['supplies', 'power'], ['supplies', 'standbyDemand'], ['supplies', 'batteryNeeded'], ['supplies', 'batteryLasts'],
  ['supplies', 'togetherDemand'], ['supplies', 'status'], ['ways', 'demand'], ['ways', 'worstCase'], ['ways', 'available'],
  ['ways', 'togetherDemand'], ['ways', 'status'], ['runs', 'demand'], ['runs', 'worstCase'], ['feeds', 'drawn'],
  ['feeds', 'demand'], ['feeds', 'worstCase'], ['feeds', 'status'], ['enclosures', 'supplyLoss'], ['enclosures', 'top'],
  ['cases', 'demand'], ['cases', 'energy'],
];
const placeOf = (sheet: SheetName, key: string) => SCHEMA[sheet].columns.indexOf(columnOf(sheet, key));

describe('a load table with cases as a workbook', () => {
  test.each(['en', 'de', 'fr'])('a spreadsheet engine comes to every figure, in %s', async (language) => {
    const schedule = new LoadSchedule(panel(), { words: await loadWords(language) });
    const engine = recalculate(schedule, await writeWorkbook(schedule));
    expect(differences(schedule, engine)).toEqual([]);
    const values = FOLLOWING.filter(([sheet, key]) => engine.getCellFormula({
      sheet: engine.getSheetId(schedule.words.text(SCHEMA[sheet].title))!, row: 1, col: placeOf(sheet, key),
    }) === undefined);
    expect(values).toEqual([]);
    engine.destroy();
  });

  /** Edits of the workbook and of the schedule, each of which has to come to the same in both. */
  async function follows(content: Content, edits: readonly (readonly [SheetName, number, string, CellValue])[]) {
    const schedule = new LoadSchedule(content);
    const engine = recalculate(schedule, await writeWorkbook(schedule));
    const seen = [];
    for (const [sheet, at, key, value] of edits) {
      const cell = { sheet: engine.getSheetId(SCHEMA[sheet].title)!, row: at + 1, col: placeOf(sheet, key) };
      engine.setCellContents(cell, typeof value === 'boolean' ? (value ? 'yes' : 'no') : value);
      schedule.act('edit', setCells(schedule.document, [{ sheet, id: schedule.rows(sheet)[at]!.id, key, value }]));
      const found = differencesAfterEdits(schedule, engine);
      expect([sheet, at, key, value, found]).toEqual([sheet, at, key, value, []]);
      seen.push(['L1', 'L2'].map((_rail, row) =>
        ['demand', 'worstCase', 'status'].map((column) => schedule.value('supplies', schedule.rows('supplies')[row]!.id, column))));
    }
    engine.destroy();
    return seen;
  }

  test('a factor that is changed moves demand, worst case and status, as in the schedule', async () => {
    const seen = await follows(panel(), [
      ['factors', 3, 'of', null], ['factors', 3, 'factor', 1], ['factors', 2, 'factor', 0.1], ['factors', 1, 'factor', 0.3],
      ['factors', 0, 'factor', 0], ['factors', 2, 'factor', 0.1], ['devices', 0, 'qty', 60], ['devices', 3, 'diversity', 0.2],
    ]);
    // L1 in the wind: 6 × 1 A of blinds and 8 × 0.5 A × 0.5 of lamps, then all of the lamps, then 0.1 of the blinds; in
    // the evening 0.2 × 6 A + 0.9 × 4 A.
    expect(seen.slice(0, 4).map(([l1]) => l1)).toEqual([
      [8, 'wind alarm', 'ok'], [10, 'wind alarm', 'near'], [expect.closeTo(4.8, 9), 'evening', 'ok'], [expect.closeTo(4.6, 9), 'wind alarm', 'ok'],
    ]);
    expect(seen[6]![0]).toEqual([expect.closeTo(10, 9), 'wind alarm', 'near']);
  });

  test('a mark, a group, a factor that is taken out, and hours are followed too', async () => {
    await follows(panel(), [
      // Blinds are on both supplies: what one enclosure lacks of either is told of both.
      ['factors', 0, 'factor', null], ['factors', 0, 'factor', 0.3],
      ['cases', 0, 'standby', true], ['cases', 2, 'standby', null], ['cases', 1, 'together', null], ['cases', 0, 'hours', 7],
      ['devices', 1, 'group', 'blinds'], ['types', 0, 'group', 'lamps'], ['feeds', 0, 'diversity', 0.5],
      ['supplies', 1, 'efficiency', 0.8],
    ]);
  });

  test('a case or group that came in since is not worked out, and nothing is called well for it', async () => {
    const schedule = new LoadSchedule(panel());
    const engine = recalculate(schedule, await writeWorkbook(schedule));
    const sheet = (name: SheetName) => engine.getSheetId(SCHEMA[name].title)!;
    engine.setCellContents({ sheet: sheet('factors'), row: 1, col: placeOf('factors', 'group') }, 'fans');
    const at = (name: SheetName, key: string) =>
      engine.getCellValue({ sheet: sheet(name), row: 1, col: placeOf(name, key) });
    expect([at('supplies', 'demand'), at('supplies', 'worstCase'), at('supplies', 'status'), at('ways', 'status'), at('feeds', 'status')])
      .toEqual(['', '', 'recalculate', 'recalculate', 'recalculate']);
    engine.destroy();
  });

  test.each<[string, Partial<Record<SheetName, Cells[]>>]>([
    ['a factor stands twice', { factors: [{ case: 'evening', group: 'blinds', factor: 0.2 }, { case: 'evening', group: 'blinds', factor: 0.2 }] }],
    ['groups differ by their case', { factors: [{ case: 'evening', group: 'Blinds', factor: 0.2 }] }],
    ['a group looks like a number', { factors: [{ case: 'evening', group: '1', factor: 0.2 }] }],
    ['a factor names a case that is not there', { factors: [{ case: 'night', group: 'blinds', factor: 0.2 }] }],
    ['a case has no name', { cases: [{ hours: 3 }], factors: [] }],
    ['a case stands twice', { cases: [{ case: 'a' }, { case: 'A' }], factors: [{ case: 'a', group: 'blinds', factor: 0.2 }] }],
  ])('where %s, the figures stand as values', async (_what, more) => {
    const schedule = new LoadSchedule(panel(more));
    const bytes = await writeWorkbook(schedule);
    const engine = recalculate(schedule, bytes);
    expect(differences(schedule, engine)).toEqual([]);
    engine.destroy();
    expect(openWorkbook(bytes).SheetNames).not.toContain('Demand by case');
    expect((openWorkbook(bytes).Sheets.Supplies![`${String.fromCharCode(65 + placeOf('supplies', 'demand'))}1`] as { v: string }).v)
      .toBe('Demand (A) *');
  });

  test.each([['with runs, two ways and feeds', someCases], ['that share and lack what they name', someCasesContent]] as const)(
    'on random schedules %s the engine comes to every figure', async (_what, some) => {
    await fc.assert(fc.asyncProperty(some, async (content) => {
      const schedule = new LoadSchedule(content);
      const engine = recalculate(schedule, await writeWorkbook(schedule));
      const found = differences(schedule, engine);
      engine.destroy();
      schedule.dispose();
      expect(found).toEqual([]);
    }), { numRuns: 20 });
  }, 120_000);
});

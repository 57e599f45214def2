import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { caseLoadings, contributionsTo, LOADED_SHEETS, LOADING_OF } from '../../src/engine/index.ts';
import { isBlank } from '../../src/schedule/index.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { scheduleOf } from '../support/schedules.ts';
import { someCases } from './random-weighed-runs.ts';

describe('what is asked of a row in a case, by groups', () => {
  test('by hand: connected × factor, and own diversity where the case gives no factor', () => {
    // P1: blinds 6 × 1.5 A = 9 A, 2.25 A by their diversity; lamps 4 × 0.5 A = 2 A; a fan of no group 0.3 A.
    const schedule = scheduleOf({
      types: [
        { type: 'Blind', draw: 1500, diversity: 0.25, group: 'blinds' }, { type: 'Lamp', draw: 500, group: 'lamps' },
        { type: 'Fan', draw: 300 },
      ],
      supplies: [{ rail: 'P1', rated: 10 }],
      devices: [
        { ref: 'D1', type: 'Blind', qty: 6, rail: 'P1' }, { ref: 'D2', type: 'Lamp', qty: 4, rail: 'P1' },
        { ref: 'D3', type: 'Fan', qty: 1, rail: 'P1' },
      ],
      cases: [{ case: 'wind alarm' }],
      factors: [{ case: 'wind alarm', group: 'blinds', factor: 1 }],
    });
    const parts = (place: number) => contributionsTo(schedule.document, schedule.figures, 'supplies', 0, place).groups
      .map(({ group, factor, amps }) => [group, factor?.share, Number(amps.toFixed(9))]);
    expect(parts(0)).toEqual([['blinds', 1, 9], ['lamps', undefined, 2], ['', undefined, 0.3]]);
    expect(parts(-1)).toEqual([['blinds', undefined, 2.25], ['lamps', undefined, 2], ['', undefined, 0.3]]);
    const [p1] = caseLoadings(schedule.document, schedule.figures);
    // 4.55 A ÷ 10 A, and 11.3 A ÷ 10 A.
    expect([p1!.own?.loading, p1!.cases[0]?.loading]).toEqual([expect.closeTo(0.455, 9), expect.closeTo(1.13, 9)]);
    expect(p1!.worst.place).toBe(0);
    expect([p1!.own?.state, p1!.cases[0]?.state]).toEqual(['ok', 'over']);
  });

  test('what is over its fuse comes before what is loaded more and within its limits, and what is not known last', () => {
    // P1: 9 A of 10 A. P2: 6 A of 10 A behind a fuse of 5 A. P3 is asked for 1 A, and nobody knows what it may give.
    const schedule = scheduleOf({
      types: [{ type: 'Lamp', draw: 1000 }],
      supplies: [{ rail: 'P3' }, { rail: 'P1', rated: 10, target: 1 }, { rail: 'P2', rated: 10, fuse: 5 }],
      devices: [['P1', 9], ['P2', 6], ['P3', 1]].map(([rail, qty]) => ({ ref: `D ${rail}`, type: 'Lamp', qty: qty!, rail: rail! })),
    });
    expect(caseLoadings(schedule.document, schedule.figures)
      .map(({ id, worst }) => [schedule.value('supplies', id, 'rail'), worst.state, worst.loading]))
      .toEqual([['P2', 'over', 0.6], ['P1', 'ok', 0.9], ['P3', 'incomplete', null]]);
  });

  test('on random schedules the parts add up to the demand of every supply, way, feed and run, in every case', () => {
    const compared = { supplies: 0, ways: 0, feeds: 0, runs: 0 };
    fc.assert(fc.property(someCases, (content) => {
      const schedule = new LoadSchedule(content);
      for (const sheet of LOADED_SHEETS) {
        for (const row of schedule.rows(sheet)) {
          if (isBlank(row) || (sheet === 'runs' && row.cells.basis !== 'demand')) continue;
          for (const place of [-1, 0, 1]) {
            const demand = schedule.inCase(sheet, row.id, LOADING_OF[sheet].demand, place);
            if (demand === null) continue;
            const { groups, extra } = contributionsTo(schedule.document, schedule.figures, sheet, row.id, place);
            expect(groups.reduce((sum, { amps }) => sum + amps, extra), `${sheet} ${place}`).toBeCloseTo(demand, 9);
            for (const { amps, loads } of groups) {
              const known = loads.map((load) => Number.isNaN(load.amps) ? 0 : load.amps);
              expect(known.reduce((sum, each) => sum + each, 0)).toBeCloseTo(amps, 9);
            }
            compared[sheet] += 1;
          }
        }
      }
      schedule.dispose();
    }), { numRuns: 60 });
    for (const sheet of LOADED_SHEETS) expect(compared[sheet], sheet).toBeGreaterThan(50);
  });

  test('the worst of all is what the sheet says, and the worst rows come first', () => {
    fc.assert(fc.property(someCases, (content) => {
      const schedule = new LoadSchedule(content);
      const rows = caseLoadings(schedule.document, schedule.figures, ['supplies', 'ways', 'feeds']);
      for (const { sheet, id, worst } of rows) {
        const demand = schedule.value(sheet, id, 'demand');
        if (demand === null) continue;
        expect(worst.demand).toBeCloseTo(demand as number, 9);
        const name = worst.place < 0 ? null : schedule.cases.cases[worst.place]!.name;
        // Of equals either may be named.
        if (schedule.value(sheet, id, 'worstCase') !== name) {
          expect(rows.find((row) => row.sheet === sheet && row.id === id)!.cases.map((each) => each.demand))
            .toContainEqual(expect.closeTo(demand as number, 9));
        }
      }
      const isOver = rows.map(({ worst }) => worst.state === 'over');
      expect(isOver).toEqual([...isOver].sort((one, other) => Number(other) - Number(one)));
      for (const state of [true, false]) {
        const loadings = rows.filter((_row, at) => isOver[at] === state).map(({ worst }) => worst.loading ?? -1);
        expect(loadings).toEqual([...loadings].sort((one, other) => other - one));
      }
      schedule.dispose();
    }), { numRuns: 30 });
  });
});

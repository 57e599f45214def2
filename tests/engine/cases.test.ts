import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { isBlank, type Cells, type Content } from '../../src/schedule/index.ts';
import { closeTo } from '../support/close-to.ts';
import { runStatuses, wayStatuses } from '../support/independent-case-statuses.ts';
import { recalculateInCases } from '../support/independent-cases.ts';
import { recalculateRuns } from '../support/independent-runs.ts';
import { expectInCases } from './expect-in-cases.ts';
import { allOf } from './random-actions.ts';
import { someCasesAction, someCasesContent } from './random-cases.ts';

const TOLERANCE = { absolute: 1e-9, relative: 1e-9 };
const RUNS = Number(process.env.RUNS ?? 60);
/** What is met, of all sheets and statuses. */
const STATUSES = ['supplies', 'ways', 'runs', 'feeds', 'enclosures'].flatMap((sheet) =>
  ['over', 'near', 'incomplete', 'ok'].map((status) => `${sheet} ${status}`));

/** Current, drop and voltage of each run with one way, the worst of what counts. */
function expectRuns(schedule: LoadSchedule, content: Content): void {
  const inAll = recalculateInCases(content);
  const { plain, inCases } = inAll;
  const [statuses, ofWays] = [runStatuses(content, inAll), wayStatuses(content, inAll)];
  const isFedTwice = ({ way }: Cells) => (content.sheets.runs ?? []).some((run) =>
    (run.secondWay ?? null) !== null && (run.way === way || run.secondWay === way));
  schedule.rows('ways').forEach((row, at) => {
    if (isBlank(row) || isFedTwice(row.cells)) return;
    expect([at, schedule.value('ways', row.id, 'status')]).toEqual([at, ofWays[at]]);
  });
  const each = plain.map(recalculateRuns);
  schedule.rows('runs').forEach((row, at) => {
    if (isBlank(row) || (row.cells.secondWay ?? null) !== null) return;
    const { countsOwn } = inCases.runs![at]!.demand!;
    const worst = (key: 'current' | 'drop' | 'endVoltage', of: typeof Math.max) => {
      const values = each.slice(countsOwn ? 0 : 1).map((runs) => runs[at]![key]);
      return values.includes(null) ? null : closeTo(of(...values as number[]), TOLERANCE);
    };
    expect([at, schedule.value('runs', row.id, 'status')]).toEqual([at, statuses[at]]);
    const found = ['current', 'drop', 'endVoltage'].map((key) => schedule.value('runs', row.id, key));
    expect([at, ...found]).toEqual([at, worst('current', Math.max), worst('drop', Math.max), worst('endVoltage', Math.min)]);
  });
}

describe('random schedules with cases, after any actions', () => {
  test('every figure, in each case and of all, is what an independent calculation gives', () => {
    const seen = { cases: 0, named: 0, covered: 0, together: 0, standby: 0, partial: 0 };
    const statuses = new Map<string, number>();
    fc.assert(fc.property(someCasesContent, fc.array(someCasesAction, { maxLength: 8 }), (content, actions) => {
      const schedule = new LoadSchedule(content);
      for (const action of [undefined, ...actions]) {
        action?.(schedule);
        const after = schedule.content();
        expectInCases(schedule, after);
        expectRuns(schedule, after);
        if (schedule.cases.cases.length === 0) continue;
        seen.cases += 1;
        for (const sheet of ['supplies', 'feeds', 'enclosures', 'ways', 'runs'] as const) {
          for (const { id } of schedule.rows(sheet)) {
            const name = `${sheet} ${String(schedule.value(sheet, id, 'status'))}`;
            statuses.set(name, (statuses.get(name) ?? 0) + 1);
          }
        }
        for (const { id } of schedule.rows('supplies')) {
          if (schedule.value('supplies', id, 'worstCase') !== null) seen.named += 1;
          if (!schedule.countsOwn('supplies', id, 'demand')) seen.covered += 1;
          if (schedule.value('supplies', id, 'togetherDemand') !== null) seen.together += 1;
          if (schedule.value('supplies', id, 'standbyDemand') !== schedule.value('supplies', id, 'demand')) seen.standby += 1;
          if (schedule.isPartial('supplies', id, 'demand')) seen.partial += 1;
        }
      }
      schedule.dispose();
    }), { numRuns: RUNS });
    for (const [kind, count] of Object.entries(seen)) expect([kind, count > 10]).toEqual([kind, true]);
    for (const name of STATUSES) expect([name, statuses.has(name)]).toEqual([name, true]);
  });

  test('every figure and finding is what a schedule built afresh gives', () => {
    fc.assert(fc.property(someCasesContent, fc.array(someCasesAction, { maxLength: 10 }), (content, actions) => {
      const schedule = new LoadSchedule(content);
      for (const action of actions) {
        action(schedule);
        const afresh = new LoadSchedule(schedule.content());
        expect(allOf(schedule)).toEqual(allOf(afresh));
        afresh.dispose();
      }
      schedule.dispose();
    }), { numRuns: RUNS });
  });
});

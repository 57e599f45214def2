import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellLook, rowMark } from '../../components/grid/look/cell-look.ts';
import type { Mark } from '../../components/look/index.ts';
import type { GridModel } from '../../components/grid/grid-model.ts';
import { RefusedTexts } from '../../components/grid/editing/refused-texts.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { buildReport } from '../../src/report/index.ts';
import { STATE_WORDS } from '../../src/findings/index.ts';
import { findColumn, SHEET_NAMES, type SheetName } from '../../src/schedule/index.ts';
import { ENGLISH } from '../../src/words/index.ts';
import { demoContent } from '../report/demo.ts';
import { someAction, someContent } from '../engine/random-actions.ts';
import { findingsAt, idAt, scheduleOf, valueAt } from '../support/schedules.ts';

const BY = { reason: 'seen', name: 'A. N. O.', date: '2026-01-02' };

const modelOf = (schedule: LoadSchedule, sheet: SheetName) =>
  ({ schedule, sheet, words: ENGLISH, refused: new RefusedTexts() }) as unknown as GridModel;

type RowMarks = readonly [sheet: SheetName, id: number, mark?: Mark, status?: Mark, standing?: Mark | null];

/** What the mark, the status cell and the standing of each row say. */
function marksOf(schedule: LoadSchedule): RowMarks[] {
  return SHEET_NAMES.flatMap((sheet) => {
    const column = findColumn(sheet, 'status');
    if (column === undefined) return [];
    const model = modelOf(schedule, sheet);
    return schedule.rows(sheet).map(({ id }): RowMarks => {
      const findings = schedule.findingsOf(sheet, id);
      const { status } = cellLook(model, id, column, findings);
      return [sheet, id, rowMark(model, id, findings), status, schedule.standing(sheet, id)];
    });
  });
}

/** A row within limits, and a blank one, has no mark. */
function expectAgreement(schedule: LoadSchedule): void {
  for (const [sheet, id, mark, status, standing] of marksOf(schedule)) {
    const place = `${sheet} ${id}`;
    expect([place, status]).toEqual([place, standing ?? undefined]);
    expect([place, mark]).toEqual([place, standing === 'ok' ? undefined : standing ?? undefined]);
  }
}

describe('the mark of a row and its status agree', () => {
  test('in the demo, with what is accepted there and after all is accepted', () => {
    const schedule = new LoadSchedule(demoContent());
    expectAgreement(schedule);
    for (const finding of schedule.findings) schedule.accept(finding, BY);
    expectAgreement(schedule);
    // What is told at another row counts here until it is put right there.
    for (const [sheet, id, mark] of marksOf(schedule)) {
      if (mark !== undefined && mark !== 'accepted') expect(schedule.rulesAgainst(sheet, id).length).toBeGreaterThan(0);
    }
  });

  test('in random schedules, whatever is done to them and accepted in them', () => {
    fc.assert(fc.property(someContent, fc.array(someAction, { maxLength: 4 }), fc.nat(), (content, actions, seed) => {
      const schedule = new LoadSchedule(content);
      for (const action of actions) action(schedule);
      const { findings } = schedule;
      for (const finding of findings.filter((_each, at) => (seed >> (at % 16)) % 2 === 1)) schedule.accept(finding, BY);
      expectAgreement(schedule);
      schedule.dispose();
    }), { numRuns: 60 });
  });
});

/** By hand: 12 A on 10 A are over; without a voltage known nothing else is found. */
const rail = () => scheduleOf({
  supplies: [{ rail: 'L1', rated: 10 }], devices: [{ ref: 'D1', rail: 'L1', qty: 12, unitDraw: 1000, diversity: 1 }],
});

describe('what is accepted', () => {
  test('stands accepted only when all that counts against it is, and is never within limits', () => {
    const schedule = rail();
    const id = idAt(schedule, 'supplies');
    const against = () => findingsAt(schedule, 'supplies').filter(({ rule }) => schedule.rulesAgainst('supplies', id).includes(rule));
    const { length } = against();
    expect(length).toBeGreaterThan(0);
    for (let left = length; left > 0; left -= 1) {
      expect(schedule.standing('supplies', id)).toBe('over');
      schedule.accept(against().find(({ accepted }) => accepted === undefined)!, BY);
    }
    expect(schedule.standing('supplies', id)).toBe('accepted');
    // Programs see that the limit is passed all the same.
    expect(valueAt(schedule, 'supplies', 0, 'status')).toBe('over');
    expect(schedule.findingCounts.over).toBeGreaterThan(0);
  });

  test('is open again when it grows worse, and within limits when it is put right', () => {
    const schedule = rail();
    const [device, id] = [idAt(schedule, 'devices'), idAt(schedule, 'supplies')];
    for (const finding of findingsAt(schedule, 'supplies')) schedule.accept(finding, BY);
    const put = (qty: number) => { schedule.act('Qty', [{ op: 'set', sheet: 'devices', id: device, key: 'qty', value: qty }]); };
    put(13);
    expect(schedule.standing('supplies', id)).toBe('over');
    put(5);
    expect(schedule.standing('supplies', id)).toBe('ok');
  });

  test('is said so in every table of the load table', () => {
    const schedule = rail();
    for (const finding of findingsAt(schedule, 'supplies')) schedule.accept(finding, BY);
    const report = buildReport(schedule, { date: '2026-01-02' } as never);
    const cells = report.sections.flatMap(({ name, tables }) =>
      tables.flatMap(({ rows }) => rows.flatMap((row) => row.cells.map((cell) => ({ name, ...cell })))));
    const accepted = cells.filter(({ state }) => state === 'accepted');
    expect(accepted.map(({ name }) => name)).toEqual(expect.arrayContaining(['supplies', 'accepted']));
    expect(accepted.find(({ name }) => name === 'supplies')!.text).toBe(STATE_WORDS.accepted);
    expect(accepted.find(({ name }) => name === 'accepted')!.text).toBe('accepted: over limit');
    expect(cells.filter(({ name, state }) => name === 'supplies' && state === 'over')).toEqual([]);
  });
});

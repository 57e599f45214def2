import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { insertRows, letterOf, setCells } from '../../src/schedule/index.ts';
import { allOf, someAction, someActionWithoutFormula, someContent } from './random-actions.ts';

describe('after any actions', () => {
  test('every figure and finding is what a schedule built afresh gives', () => {
    fc.assert(fc.property(someContent, fc.array(someAction, { maxLength: 12 }), (content, actions) => {
      const schedule = new LoadSchedule(content);
      for (const action of actions) {
        action(schedule);
        const afresh = new LoadSchedule(schedule.content());
        expect(allOf(schedule)).toEqual(allOf(afresh));
        afresh.dispose();
      }
      schedule.dispose();
    }), { numRuns: Number(process.env.RUNS ?? 40) });
  });

  test('no formula is typed: every figure and finding is what a schedule built afresh gives', () => {
    fc.assert(fc.property(someContent, fc.array(someActionWithoutFormula, { maxLength: 12 }), (content, actions) => {
      const schedule = new LoadSchedule(content);
      for (const action of actions) {
        action(schedule);
        const afresh = new LoadSchedule(schedule.content());
        expect(allOf(schedule)).toEqual(allOf(afresh));
        afresh.dispose();
      }
      schedule.dispose();
    }), { numRuns: Number(process.env.RUNS ?? 40) });
  });

  test('a formula that goes round lacks nothing, though its cell followed from a shared tag before', () => {
    const schedule = new LoadSchedule({
      details: {}, sheets: {
        types: [{ type: 'T', draw: 50 }, { type: 'T' }], devices: [{ type: 'T', qty: 1, diversity: 1 }],
      },
    });
    const { id } = schedule.rows('devices')[0]!;
    expect(schedule.isPartial('devices', id, 'unitDraw')).toBe(true);
    const read = schedule.checkFormula('devices', 'unitDraw', `=${letterOf('devices', 'demand')}1`);
    if (!read.ok) throw new Error(read.problem);
    const edit = { sheet: 'devices', id, key: 'unitDraw', value: read.value } as const;
    schedule.act('formula', setCells(schedule.document, [edit]));
    expect(schedule.isPartial('devices', id, 'unitDraw')).toBe(false);
    expect(allOf(schedule)).toEqual(allOf(new LoadSchedule(schedule.content())));
  });

  test('a formula that comes back has its result, though it was gone in between', () => {
    const schedule =
      new LoadSchedule({ details: {}, sheets: { outputs: [{ qty: 2, inrush: 12 }, { qty: 3, inrush: 12 }] } });
    const first = schedule.rows('outputs')[0]!.id;
    const read = schedule.checkFormula('outputs', 'qty', `=4*${letterOf('outputs', 'qty')}2`);
    if (!read.ok) throw new Error(read.problem);
    const inrushTotal = () => schedule.value('outputs', first, 'inrushTotal');
    schedule.act(
      'formula', setCells(schedule.document, [{ sheet: 'outputs', id: first, key: 'qty', value: read.value }])
    );
    expect(inrushTotal()).toBe(4 * 3 * 12);
    schedule.undo();
    expect(inrushTotal()).toBe(2 * 12);
    schedule.redo();
    expect(inrushTotal()).toBe(4 * 3 * 12);
    schedule.dispose();
  });

  test('undoing all of them brings back the start, and redoing them the end', () => {
    fc.assert(fc.property(someContent, fc.array(someAction, { maxLength: 15 }), (content, actions) => {
      const schedule = new LoadSchedule(content);
      const start = [schedule.content(), allOf(schedule)];
      for (const action of actions) action(schedule);
      const end = [schedule.content(), allOf(schedule)];
      // What the last actions took back is done again first.
      let again = 0;
      while (schedule.redo() !== undefined) again += 1;
      const redone = [schedule.content(), allOf(schedule)];
      for (let step = 0; step < again; step += 1) schedule.undo();
      expect([schedule.content(), allOf(schedule)]).toEqual(end);
      let steps = again;
      while (schedule.undo() !== undefined) steps += 1;
      expect([schedule.content(), allOf(schedule)]).toEqual(start);
      for (let step = 0; step < steps; step += 1) expect(schedule.redo()).toBeDefined();
      expect([schedule.content(), allOf(schedule)]).toEqual(redone);
      expect(schedule.redo()).toBeUndefined();
      schedule.dispose();
    }), { numRuns: Number(process.env.RUNS ?? 40) });
  });
});

test('that a run has no working voltage is found as soon as its conductor is there, though no figure is known before or after', () => {
  // What stands before the run is dropped at its start already, and its device belongs to another rail.
  const schedule = new LoadSchedule({
    details: {}, sheets: {
      supplies: [{ rail: 'L1', voltage: 0.5, seriesDrop: 1 }, { rail: 'L2' }], types: [{ type: 'T', power: 0.5 }],
      runs: [{ run: 'W1', rail: 'L1', conductor: 'C', length: 24 }],
      devices: [{ ref: 'D1', type: 'T', qty: 3, rail: 'L2', run: 'W1' }],
    },
  });
  const rules = () => schedule.findingsOf('runs', schedule.rows('runs')[0]!.id).map(({ rule }) => rule);
  expect(rules()).not.toContain('run-no-working-voltage');
  schedule.act('conductor', insertRows(schedule.document, 'conductors', 0, [{ conductor: 'C', resistance: 350 }]));
  expect(rules()).toContain('run-no-working-voltage');
  schedule.undo();
  expect(rules()).not.toContain('run-no-working-voltage');
  schedule.dispose();
});

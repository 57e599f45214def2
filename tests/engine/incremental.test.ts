import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { setCells } from '../../src/schedule/index.ts';
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
    }), { numRuns: Number(process.env.RUNS ?? 60) });
  });

  test('it makes no difference that the formula engine was still being prepared', () => {
    fc.assert(fc.property(someContent, fc.array(fc.option(someAction), { maxLength: 12 }), (content, actions) => {
      const schedule = new LoadSchedule(content);
      schedule.prepareStep();
      for (const action of actions) {
        if (action === null) schedule.prepareStep();
        else action(schedule);
        const afresh = new LoadSchedule(schedule.content());
        expect(allOf(schedule)).toEqual(allOf(afresh));
        afresh.dispose();
      }
      schedule.dispose();
    }), { numRuns: Number(process.env.RUNS ?? 60) });
  });

  test.each([
    ['no formula is typed', someActionWithoutFormula, false],
    ['no formula is typed and the formula engine catches up at times', someActionWithoutFormula, true],
    ['formulas come and go while the formula engine catches up at times', someAction, true],
  ])('%s: every figure and finding is what a schedule built afresh gives', (_when, some, steps) => {
    fc.assert(fc.property(someContent, fc.array(some, { maxLength: 12 }), (content, actions) => {
      const schedule = new LoadSchedule(content);
      while (steps && !schedule.prepareStep());
      actions.forEach((action, index) => {
        action(schedule);
        if (steps && index % 3 === 2) while (!schedule.prepareStep());
        const afresh = new LoadSchedule(schedule.content());
        expect(allOf(schedule)).toEqual(allOf(afresh));
        afresh.dispose();
      });
      schedule.dispose();
    }), { numRuns: Number(process.env.RUNS ?? 60) });
  });

  test('a formula that comes while a large schedule is being prepared has its result at once', () => {
    const devices = Array.from({ length: 1500 }, (_, row) => ({ ref: `D${row}`, type: 'T', qty: 1 + (row % 7), rail: 'A' }));
    const schedule = new LoadSchedule({
      details: {}, sheets: { devices, types: [{ type: 'T', draw: 10 }], supplies: [{ rail: 'A', rated: 100 }] },
    });
    for (let step = 0; step < 3; step += 1) expect(schedule.prepareStep()).toBe(false);
    for (const [row, text] of [[3, '=2*50'], [1400, '=D4+1'], [900, '=SUM(D1:D3)']] as const) {
      const read = schedule.checkFormula('devices', 'qty', text);
      if (!read.ok) throw new Error(read.problem);
      const { id } = schedule.rows('devices')[row]!;
      schedule.act('formula', setCells(schedule.document, [{ sheet: 'devices', id, key: 'qty', value: read.value }]));
      const afresh = new LoadSchedule(schedule.content());
      expect(allOf(schedule)).toEqual(allOf(afresh));
      afresh.dispose();
    }
    schedule.dispose();
  });

  test('a formula that comes back has its result, though the formula engine never learnt that it was gone', () => {
    const schedule = new LoadSchedule({ details: {}, sheets: { outputs: [{ qty: 2, inrush: 12 }, { qty: 3, inrush: 12 }] } });
    const first = schedule.rows('outputs')[0]!.id;
    const read = schedule.checkFormula('outputs', 'qty', '=4*G2');
    if (!read.ok) throw new Error(read.problem);
    const inrushTotal = () => schedule.value('outputs', first, 'inrushTotal');
    schedule.act('formula', setCells(schedule.document, [{ sheet: 'outputs', id: first, key: 'qty', value: read.value }]));
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
    }), { numRuns: Number(process.env.RUNS ?? 60) });
  });
});

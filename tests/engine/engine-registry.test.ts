import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { LoadSchedule as Schedule, ScheduleEvent } from '../../src/load-schedule.ts';
import { buildReport, loadTableXlsx } from '../../src/report/index.ts';
import { isFormula, SHEET_NAMES } from '../../src/schedule/index.ts';
import { enter, findingsAt, reference, scheduleOf, typeFormula, valueAt } from '../support/schedules.ts';
import { withoutEngine, type WithoutEngine } from '../support/without-engine.ts';
import { allOf, someAction, someContent } from './random-actions.ts';

// As where the network is gone: what is asked of the module fails, not its making, which would end the run.
const network = vi.hoisted(() => ({ isGone: false, fetched: 0 }));
vi.mock('../../src/engine/formula-engine.ts', async (importOriginal) => {
  const { FormulaEngine } = await importOriginal<typeof import('../../src/engine/formula-engine.ts')>();
  return {
    get FormulaEngine() {
      network.fetched += 1;
      if (network.isGone) throw new Error('The formula engine cannot be fetched.');
      return FormulaEngine;
    },
  };
});

let page: WithoutEngine;

beforeEach(async () => {
  Object.assign(network, { isGone: false, fetched: 0 });
  page = await withoutEngine();
});

afterEach(() => { vi.resetModules(); });

/**
 * A supply of invention with two device rows: by hand, 4 × 0.25 A = 1 A of the first, and 0.5 A for each of the second,
 * whose number is the formula; one more than in the first row it is 5, and the demand 1 + 2.5 = 3.5 A of the 5 A rated.
 */
const content = (qty: string | number) => ({
  details: {},
  sheets: {
    supplies: [{ rail: 'L1', rated: 5 }],
    types: [{ type: 'Lamp', draw: 250 }, { type: 'Drive', draw: 500 }],
    devices: [{ ref: 'D1', rail: 'L1', type: 'Lamp', qty: 4 }, { ref: 'D2', rail: 'L1', type: 'Drive', qty }],
  },
});
const FORMULA = '=[devices.qty@D1]+1';

/** The quantity and demand of the second row, and the demand of the supply. */
const worth = (schedule: Schedule) => [
  valueAt(schedule, 'devices', 1, 'qty'), valueAt(schedule, 'devices', 1, 'demand'),
  valueAt(schedule, 'supplies', 0, 'demand'),
];

test('a formula of a file is unknown until the formula engine has come, and then all is as if it had been there', async () => {
  const schedule = new page.LoadSchedule(content(FORMULA));
  const heard: ScheduleEvent[] = [];
  schedule.subscribe((event) => heard.push(event));
  expect(worth(schedule)).toEqual([null, null, 1]);
  expect(schedule.partialSign('supplies', 0, 'demand')).toBe('≥');
  expect(valueAt(schedule, 'supplies', 0, 'status')).toBe('incomplete');
  expect(findingsAt(schedule, 'devices', 1).find(({ key }) => key === 'qty')).toMatchObject({
    rule: 'formula-without-result', severity: 'incomplete',
    message: 'Ref D2: the formula in Qty is not calculated yet, because a part of the software has not been fetched. If this stays, check the connection and enter the formula again; if that does not help, save the schedule and load the page again.',
  });
  expect(await schedule.formulasReady()).toBe(true);
  expect(worth(schedule)).toEqual([5, 2.5, 3.5]);
  expect(heard.map(({ cause, changes, inverse }) => ({ cause, changes, inverse })))
    .toEqual([{ cause: 'formulas', changes: [], inverse: [] }]);
  expect(heard[0]!.touched.rows.get('supplies')?.get(0)?.has('demand')).toBe(true);
  expect(heard[0]!.moved?.map(({ sheet }) => sheet)).toContain('supplies');
  expect([schedule.undoLabel, schedule.lastAction]).toEqual([undefined, undefined]);
  const afresh = scheduleOf(content(FORMULA).sheets);
  expect(schedule.findings).toEqual(afresh.findings);
  expect(schedule.content()).toEqual(afresh.content());
  for (const each of [schedule, afresh]) each.dispose();
});

test('a formula typed before it has come is taken, its former figure counts no longer, and it follows its cells', async () => {
  const schedule = new page.LoadSchedule(content(3));
  expect(worth(schedule)).toEqual([3, 1.5, 2.5]);
  expect(network.fetched).toBe(0);
  expect(typeFormula(schedule, 'devices', 1, 'qty', `=${reference('devices', 'qty')}+1`)).toBeUndefined();
  expect(worth(schedule)).toEqual([null, null, 1]);
  enter(schedule, 'devices', 0, { qty: 6 });
  expect(worth(schedule)).toEqual([null, null, 1.5]);
  expect(await schedule.formulasReady()).toBe(true);
  expect(worth(schedule)).toEqual([7, 3.5, 5]);
  const { fetched } = network;
  enter(schedule, 'devices', 0, { qty: 1 });
  expect(worth(schedule)).toEqual([2, 1, 1.25]);
  schedule.undo();
  schedule.undo();
  schedule.undo();
  expect(worth(schedule)).toEqual([3, 1.5, 2.5]);
  expect(network.fetched).toBe(fetched);
  schedule.dispose();
});

test('what is refused without the formula engine is refused, and what only it refuses is found when it has come', async () => {
  const schedule = new page.LoadSchedule(content(3));
  expect(typeFormula(schedule, 'devices', 1, 'qty', '=NOW()')).toContain('NOW');
  expect(typeFormula(schedule, 'devices', 1, 'qty', '=ZZ1')).toContain('ZZ');
  expect(typeFormula(schedule, 'devices', 1, 'qty', '=ROUND(1;2;3)')).toBeUndefined();
  expect(await schedule.formulasReady()).toBe(true);
  expect(valueAt(schedule, 'devices', 1, 'qty')).toBeNull();
  expect(findingsAt(schedule, 'devices', 1).map(({ message }) => message)).toEqual([
    'Ref D2: the formula in Qty gives a function too few or too many arguments. Correct it.',
  ]);
  expect(typeFormula(schedule, 'devices', 1, 'qty', '=ROUND(1;2;3)')).toContain('too few or too many arguments');
  schedule.dispose();
});

test('formulas that go round are told as such before and after', async () => {
  const schedule = new page.LoadSchedule(content('=[devices.qty@D2]+1'));
  const told = () => findingsAt(schedule, 'devices', 1).map(({ message }) => message)
    .filter((each) => each.includes('depends on its own result'));
  expect(told()).toHaveLength(1);
  expect(await schedule.formulasReady()).toBe(true);
  expect([told().length, valueAt(schedule, 'devices', 1, 'qty')]).toEqual([1, null]);
  schedule.dispose();
});

test('where it cannot be fetched formulas stay unknown and say why, and the next action tries again', async () => {
  network.isGone = true;
  const schedule = new page.LoadSchedule(content(FORMULA));
  expect(await schedule.formulasReady()).toBe(false);
  expect([...worth(schedule), valueAt(schedule, 'supplies', 0, 'status')]).toEqual([null, null, 1, 'incomplete']);
  expect(findingsAt(schedule, 'devices', 1)[0]!.message).toContain('not calculated yet');
  network.isGone = false;
  enter(schedule, 'devices', 0, { qty: 5 });
  await vi.waitFor(() => { expect(worth(schedule)).toEqual([6, 3, 4.25]); });
  expect(findingsAt(schedule, 'devices', 1).filter(({ rule }) => rule === 'formula-without-result')).toEqual([]);
  schedule.dispose();
});

test('every schedule that waits is worked out once it comes; one without formulas, or gone by then, is not', async () => {
  const [one, other, plain, gone] = [content(FORMULA), content('=2*3'), content(3), content(FORMULA)]
    .map((each) => new page.LoadSchedule(each));
  const heard: unknown[] = [];
  for (const each of [one, other, plain, gone]) each!.subscribe(() => heard.push(each));
  gone!.dispose();
  expect(await one!.formulasReady()).toBe(true);
  expect([one, other].map((each) => valueAt(each!, 'devices', 1, 'qty'))).toEqual([5, 6]);
  expect(heard).toEqual([one, other]);
  expect(page.registry.formulaEngine()).toBeDefined();
  for (const each of [one, other, plain]) each!.dispose();
});

test('whatever was done before it came, every figure and finding is what a schedule built afresh gives', async () => {
  const sessions = fc.sample(fc.tuple(someContent, fc.array(someAction, { minLength: 10, maxLength: 30 })), 60);
  const schedules = sessions.map(([begun, actions]) => {
    const schedule = new page.LoadSchedule(begun);
    for (const action of actions) action(schedule);
    return schedule;
  });
  const typed = schedules.flatMap((schedule) => SHEET_NAMES.flatMap((sheet) => schedule.rows(sheet)
    .flatMap(({ id, cells }) => Object.keys(cells).filter((key) => isFormula(cells[key]))
      .map((key) => schedule.value(sheet, id, key)))));
  expect(typed.length).toBeGreaterThan(20);
  expect(new Set(typed)).toEqual(new Set([null]));
  await page.registry.fetchEngine();
  for (const schedule of schedules) {
    const afresh = scheduleOf({});
    afresh.load(schedule.content(), 'afresh');
    expect(allOf(schedule)).toEqual(allOf(afresh));
    for (const each of [schedule, afresh]) each.dispose();
  }
});

test('worksheets are not held against formulas that cannot be calculated, and whoever opens them is told', async () => {
  const issued = scheduleOf(content(FORMULA).sheets);
  const bytes = await loadTableXlsx(issued, buildReport(issued, { generated: '2026-11-25' }));
  issued.dispose();
  const { readLoadTable } = await import('../../src/report/xlsx/read-load-table.ts');
  network.isGone = true;
  expect(await readLoadTable(bytes)).toMatchObject({
    ok: true, verification: { differs: [], unverified: [
      'A part of the software could not be fetched, so that what the file shows was not compared.',
    ] },
  });
  network.isGone = false;
  expect(await readLoadTable(bytes)).toMatchObject({ ok: true, verification: { differs: [], unverified: [] } });
});

test('the headless package has formulas at once', async () => {
  const { LoadSchedule } = await import('../../src/index.ts');
  const schedule = new LoadSchedule(content(FORMULA));
  expect(worth(schedule)).toEqual([5, 2.5, 3.5]);
  schedule.dispose();
});

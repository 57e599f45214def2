import { afterEach, beforeEach, expect, test } from 'vitest';
import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import type { Rework } from '../../../components/rework/rework.ts';
import { removeRows, type Content } from '../../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, textOf } from '../element-mount.ts';
import { CountedActions } from './counted-actions.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

/** Four runs with ten lamps of 50 mA each on L1, each run on a way of its own: 40 × 0.05 A = 2 A, and volt drop. */
const RUNS = ['L1-W1', 'L1-W2', 'L1-W3', 'L1-W4'];
const CONTENT: Content = {
  details: {},
  sheets: {
    types: [{ type: 'Lamp', draw: 50, nodes: 0, minVoltage: 20, maxVoltage: 30 }],
    conductors: [{ conductor: '2.5 mm²', size: 2.5, resistance: 7.41, maxCurrent: 23 }],
    supplies: [{ rail: 'L1', rated: 10 }, { rail: 'L2', rated: 10 }],
    ways: RUNS.map((run) => ({ way: run.replace('W', 'F'), rail: 'L1', kind: 'electronic', rated: 2 })),
    runs: RUNS.map((run) => ({ run, rail: 'L1', way: run.replace('W', 'F'), conductor: '2.5 mm²', length: 20 })),
    devices: Array.from({ length: 40 }, (_, at) =>
      ({ ref: `L1-${String(at + 1).padStart(3, '0')}`, type: 'Lamp', qty: 1, rail: 'L1', run: RUNS[Math.floor(at / 10)]!, distance: 10 })),
  },
};

const rails = (element: LoadScheduleElement, sheet: 'devices' | 'runs' | 'ways') =>
  new Set(element.schedule.rows(sheet).map(({ cells }) => cells.rail));

test('move 40 devices with their runs: from the first to the last, no finding comes, one undo', async () => {
  const element = await mountElement({ content: CONTENT });
  const before = element.value;
  const act = new CountedActions(element);
  await act.clickOn(act.rowHeading(0));
  await act.press('Control+Shift+ArrowDown', 'Alt+Shift+M');
  await act.choose('elv-rework [data-option=to]', 'supplies L2');
  await expect.poll(() => textOf(element, 'elv-rework .outcome'))
    .toBe('40 device rows go to L2, with 4 runs and 4 ways.');
  expect(parts(element, 'elv-rework .findings.came li')).toEqual([]);
  expect(textOf(element, 'elv-rework h3')).toBe('No finding comes or is of another kind');
  expect(element.value).toEqual(before);
  await act.press('Control+Enter');
  await expect.poll(() => [...rails(element, 'devices')]).toEqual(['L2']);
  expect([...rails(element, 'runs'), ...rails(element, 'ways')]).toEqual(['L2', 'L2']);
  expect(element.schedule.findings.filter(({ severity }) => severity === 'over')).toEqual([]);
  expect(act.count).toBeLessThanOrEqual(6);
  await act.press('Control+z');
  await expect.poll(() => element.value).toEqual(before);
});

test('of a run of which some rows are selected, it says what to do, and offers all of them whole', async () => {
  const element = await mountElement({ content: CONTENT });
  const act = new CountedActions(element);
  await act.clickOn(act.rowHeading(8));
  await act.clickOn(act.rowHeading(11), { keys: 'Shift' });
  await act.clickOn(act.rowHeading(11), { button: 'right' });
  await act.click('.cell-menu [data-entry=moveTo]');
  await act.choose('elv-rework [data-option=to]', 'supplies L2');
  await expect.poll(() => parts(element, 'elv-rework .problems li').map(({ textContent }) => textContent)).toEqual([
    'L1-W1: 2 of its 10 rows are to go to L2, which has no other run for them. Choose that the whole run moves, or add a run there first.',
    'L1-W2: 2 of its 10 rows are to go to L2, which has no other run for them. Choose that the whole run moves, or add a run there first.',
  ]);
  expect(part(element, 'elv-rework [data-do=rework]')!.ariaDisabled).toBe('true');
  await act.click('elv-rework [data-do=whole]');
  await expect.poll(() => textOf(element, 'elv-rework .outcome'))
    .toBe('20 device rows go to L2, with 2 runs and 2 ways.');
  await act.click('elv-rework [data-do=rework]');
  await expect.poll(() => element.schedule.rows('runs').map(({ cells }) => cells.rail)).toEqual(['L2', 'L2', 'L1', 'L1']);
  expect(act.count).toBeLessThanOrEqual(8);
});

test('from the sheet of runs, whole runs go to another rail', async () => {
  const element = await mountElement({ content: CONTENT });
  const act = new CountedActions(element);
  await act.openSheet('runs');
  await expect.poll(() => act.rowHeading(0).textContent).toBe('1');
  await act.clickOn(act.rowHeading(1));
  await act.press('Alt+Shift+M');
  await act.choose('elv-rework [data-option=to]', 'supplies L2');
  await act.press('Control+Enter');
  await expect.poll(() => element.schedule.rows('ways').map(({ cells }) => cells.rail)).toEqual(['L1', 'L2', 'L1', 'L1']);
  expect(act.count).toBeLessThanOrEqual(6);
  // The job is closed: what it was about may go.
  const job = part(element, 'elv-rework') as Rework;
  await expect.poll(() => job.hidden).toBe(true);
  element.schedule.act('L2 goes', removeRows(element.schedule.document, 'supplies', [element.schedule.rows('supplies')[1]!.id]));
  await element.updateComplete;
  await expect(job.updateComplete).resolves.toBe(true);
});

test('a way that is made for a run, whose own stays, is counted with it', async () => {
  const { sheets } = CONTENT;
  const runs = sheets.runs!.map((run) => ({ ...run, way: 'L1-F1' }));
  const element = await mountElement({ content: { ...CONTENT, sheets: { ...sheets, runs } } });
  const act = new CountedActions(element);
  await act.openSheet('runs');
  await expect.poll(() => act.rowHeading(0).textContent).toBe('1');
  await act.clickOn(act.rowHeading(0));
  await act.press('Alt+Shift+M');
  await act.choose('elv-rework [data-option=to]', 'supplies L2');
  await expect.poll(() => textOf(element, 'elv-rework .problems'))
    .toBe('Way L1-F1 also feeds L1-W2, L1-W3, L1-W4 and stays. Choose the way that is to feed L1-W1 on L2.');
  await act.choose(`elv-rework [data-option=way-${element.schedule.rows('ways')[0]!.id}]`, 'new');
  await expect.poll(() => textOf(element, 'elv-rework .outcome')).toBe('10 device rows go to L2, with 1 run and 1 way.');
});

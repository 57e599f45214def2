import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Content } from '../../../src/schedule/index.ts';
import { mountElement, part, removeElements } from '../element-mount.ts';
import { CountedActions } from './counted-actions.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

const CONTENT: Content = {
  details: {},
  sheets: {
    supplies: [{ rail: 'L1', rated: 5 }],
    runs: [{ run: 'L1-W1', rail: 'L1' }],
    devices: ['L1-001', 'L1-002'].map((ref) => ({ ref, qty: 1, rail: 'L1', run: 'L1-W1' })),
  },
};

test('rename a supply: whatever names it follows, one undo', async () => {
  const element = await mountElement({ content: CONTENT });
  const before = element.value;
  const act = new CountedActions(element);
  await act.openSheet('supplies');
  await expect.poll(() => act.rowHeading(0).textContent).toBe('1');
  await act.click('elv-schedule-grid .ht_clone_inline_start tbody td');
  await act.type('North');
  await act.press('Enter');
  await expect.poll(() => element.schedule.rows('supplies')[0]!.cells.rail).toBe('North');
  expect(element.schedule.rows('devices').map(({ cells }) => cells.rail)).toEqual(['North', 'North']);
  expect(element.schedule.rows('runs')[0]!.cells.rail).toBe('North');
  expect(act.count).toBeLessThanOrEqual(4);
  await act.press('Control+z');
  await expect.poll(() => element.value).toEqual(before);
});

test('rename all tags that begin alike, L1- to M1-, with what refers to them', async () => {
  const element = await mountElement({ content: CONTENT });
  const act = new CountedActions(element);
  await act.clickOn(act.rowHeading(0));
  await act.press('Control+h');
  await expect.poll(() => part(element, 'elv-find-bar input')).not.toBeNull();
  await act.type('L1-');
  await act.click('elv-find-bar [name=by]');
  await act.type('M1-');
  await act.press('Control+Enter');
  await expect.poll(() => element.schedule.rows('devices').map(({ cells }) => [cells.ref, cells.run]))
    .toEqual([['M1-001', 'M1-W1'], ['M1-002', 'M1-W1']]);
  expect(element.schedule.rows('runs')[0]!.cells.run).toBe('M1-W1');
  expect(act.count).toBeLessThanOrEqual(6);
});

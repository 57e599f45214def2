import { afterEach, beforeEach, expect, test } from 'vitest';
import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import type { Cells, Content } from '../../../src/schedule/index.ts';
import { mountElement, parts, removeElements } from '../element-mount.ts';
import { CountedActions } from './counted-actions.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

/**
 * L1 may be used for 10 A. By hand: 12 blinds of 1.5 A, of which 30 % run at the same time, 5.4 A, and 4 lamps of
 * 0.5 A, 2 A, are 7.4 A, 74 %; all blinds together are 18 A, with the lamps 20 A, 200 %.
 */
const content = (own: Cells): Content => ({
  details: {},
  sheets: {
    types: [
      { type: 'Lamp', draw: 500, nodes: 0, diversity: 1 },
      { type: 'Blind', draw: 1500, nodes: 0, diversity: 0.3 },
    ],
    supplies: [{ rail: 'L1', rated: 10, target: 0.8 }],
    devices: [
      { ref: 'D1', type: 'Blind', qty: 4, rail: 'L1', ...own }, { ref: 'D2', type: 'Lamp', qty: 4, rail: 'L1' },
      { ref: 'D3', type: 'Blind', qty: 4, rail: 'L1', ...own },
      { ref: 'D4', type: 'Blind', qty: 4, rail: 'L1', ...own },
    ],
  },
});

const gauge = (element: LoadScheduleElement) => parts(element, 'elv-schedule-panel .sentence')
  .map((each) => each.textContent.replace(/\s/g, ' ')).find((text) => text.includes(' A of ')) ?? '';
const status = (element: LoadScheduleElement) => element.schedule.value('supplies', 0, 'status');

test('what if all blinds run: by the diversity of their type, seen beside it, taken back with one key', async () => {
  const element = await mountElement({ content: content({}) });
  const before = element.value;
  await expect.poll(() => gauge(element)).toMatch(/7\.40 A of 10\.00 A.*74 %/);
  // It is said beforehand what all of it at once comes to.
  expect(status(element)).toBe('near');
  expect(element.schedule.findings.find(({ sheet, key }) => sheet === 'supplies' && key === 'connected')?.message)
    .toMatch(/everything on it at the same time takes 20\.00\sA: it lives on diversity/);
  const act = new CountedActions(element);
  await act.openSheet('types');
  await expect.poll(() => act.texts('type').slice(0, 2)).toEqual(['Lamp', 'Blind']);
  await act.clickOn(act.cell(1, 'diversity'));
  await act.type('100 %');
  await act.press('Enter');
  await expect.poll(() => gauge(element)).toMatch(/20\.00 A of 10\.00 A.*200 %/);
  expect(status(element)).toBe('over');
  await act.press('Control+z');
  expect(element.value).toBe(before);
  await expect.poll(() => gauge(element)).toMatch(/7\.40 A of 10\.00 A/);
  expect(act.count).toBeLessThanOrEqual(5);
});

test('where rows have diversities of their own: blinds are picked and filled, lamps stay, one undo', async () => {
  const element = await mountElement({ content: content({ diversity: 0.3 }) });
  const before = element.value;
  const diversities = () => element.schedule.rows('devices').map(({ cells }) => cells.diversity ?? null);
  const act = new CountedActions(element);
  await act.clickOn(act.cell(0, 'type'));
  await act.press('Control+Shift+l');
  await act.click('elv-column-sight [data-value=Blind]');
  await act.press('Escape');
  await expect.poll(() => act.texts('ref')).toEqual(['D1', 'D3', 'D4', '']);
  await act.clickOn(act.cell(0, 'diversity'));
  await act.clickOn(act.cell(2, 'diversity'), { keys: 'Shift' });
  await act.type('1');
  await act.press('Control+Enter');
  await expect.poll(diversities).toEqual([1, null, 1, 1]);
  await expect.poll(() => gauge(element)).toMatch(/20\.00 A of 10\.00 A.*200 %/);
  await act.press('Control+z');
  expect(element.value).toBe(before);
  expect(act.count).toBeLessThanOrEqual(9);
});

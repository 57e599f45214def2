import { afterEach, beforeEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Content } from '../../../src/schedule/index.ts';
import { mountElement, parts, removeElements } from '../element-mount.ts';
import { CountedActions } from './counted-actions.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

/** By hand: lamps 4 × 0.35 × 0.8 = 1.12 A, sensors 3 × 6 × 0.1 = 1.80 A in small rows, one motor 1.5 A. */
const CONTENT: Content = {
  details: {},
  sheets: {
    types: [
      { type: 'Lamp', draw: 350, nodes: 0, diversity: 0.8 }, { type: 'Sensor', draw: 100, nodes: 1 },
      { type: 'Motor', draw: 1500, nodes: 0 },
    ],
    supplies: [{ rail: 'L1', rated: 10 }],
    devices: [
      { ref: 'D1', type: 'Lamp', qty: 4, rail: 'L1' }, { ref: 'D2', type: 'Sensor', qty: 6, rail: 'L1' },
      { ref: 'D3', type: 'Sensor', qty: 6, rail: 'L1' }, { ref: 'D4', type: 'Motor', qty: 1, rail: 'L1' },
      { ref: 'D5', type: 'Sensor', qty: 6, rail: 'L1' },
    ],
  },
};

test('which type matters: gathered by type, sorted by demand, folded: the type that asks for most leads', async () => {
  const element = await mountElement({ content: CONTENT });
  const before = element.value;
  const act = new CountedActions(element);
  await act.choose('[data-choice=groupings]', 'type');
  await expect.poll(() => act.texts('ref')[0]).toMatch(/^Lamp/);
  await act.clickOn(act.cell(1, 'demand'));
  await act.press('Control+Shift+l');
  await act.click('elv-column-sight [data-sort=down]');
  await act.press('Escape', 'Control+Shift+k');
  await expect.poll(() => act.texts('ref')).toEqual([
    'Sensor, demand 1.80 A, 3 rows', 'Motor, demand 1.50 A, 1 row', 'Lamp, demand 1.12 A, 1 row', '',
  ]);
  expect(act.count).toBeLessThanOrEqual(7);
  expect(element.value).toBe(before);
});

test('row by row, by mouse: the largest demand leads', async () => {
  const element = await mountElement({ content: CONTENT });
  const act = new CountedActions(element);
  const heading = parts(element, 'elv-schedule-grid .ht_clone_top thead th')
    .find((each) => each.querySelector('.title')?.textContent === 'Demand')!;
  await userEvent.hover(heading);
  await act.clickOn(heading.querySelector<HTMLElement>('.menu')!);
  await act.click('elv-column-sight [data-sort=down]');
  await expect.poll(() => act.texts('ref')).toEqual(['D4', 'D1', 'D2', 'D3', 'D5', '']);
  expect(act.count).toBeLessThanOrEqual(2);
});

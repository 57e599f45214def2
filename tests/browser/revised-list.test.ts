import { afterEach, beforeEach, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { mountElement, part, parts, removeElements, textOf } from './element-mount.ts';
import { openWork, paste, press } from './work-support.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

const TYPES = [{ type: 'Router', draw: 100, nodes: 1 }, { type: 'Sensor', draw: 10, nodes: 1 }];
const content = {
  details: {}, sheets: {
    types: TYPES, branches: [{ branch: 'B1', limit: 50 }], devices: [
      { ref: 'E1', area: 'Hall', type: 'Router', qty: 3, branch: 'B1', source: 'list.csv: 2' },
      { ref: 'E2', area: 'Hall', type: 'Sensor', qty: 2, branch: 'B1', source: 'list.csv: 3' },
      { ref: 'E3', area: 'Bar', type: 'Sensor', qty: 4, branch: 'B1', source: 'list.csv: 4' },
    ],
  },
};
const REVISED = 'Ref\tDevice\tRoom\tQty\nE1\tRouter\tHall\t5\nE3\tSensor\tBar\t4\nE4\tRouter\tAttic\t1';

const rows = (element: Awaited<ReturnType<typeof mountElement>>) =>
  element.schedule.rows('devices').map(({ cells: { ref, qty, branch, state } }) => [ref, qty, branch, state].filter((cell) => cell !== undefined).join(' '));

test('a list that comes again is shown by what becomes of each device row, and taken with one undo', async () => {
  await page.viewport(1280, 800);
  const element = await mountElement({ content });
  await openWork(element, 'takeoff');
  paste(element, REVISED);
  await expect.poll(() => parts(element, '.revised tbody tr').length).toBe(3);
  expect(parts(element, '[data-revised]').map((row) => row.getAttribute('data-revised'))).toEqual(['changed', 'came', 'went']);
  expect(textOf(element, '[data-do=take]')).toBe('Take it onto the schedule: 1 came, 1 changed, 1 went');
  await press(element, '[data-rows=kept]');
  await expect.poll(() => parts(element, '.revised tbody tr').length).toBe(1);
  await press(element, '[data-view=lines]');
  await expect.poll(() => parts(element, '.lines tbody tr').length).toBe(4);

  await press(element, '[data-do=take]');
  await expect.poll(() => rows(element)).toEqual(['E1 5 B1', 'E2 2 B1 gone', 'E3 4 B1', 'E4 1']);
  expect(element.schedule.undo()).toBe('Revised list: 1 came, 1 changed, 1 went, 1 kept');
  expect(rows(element)).toEqual(['E1 3 B1', 'E2 2 B1', 'E3 4 B1']);
});

test('what went is deleted where a person says so, by keys', async () => {
  const element = await mountElement({ content });
  await openWork(element, 'takeoff');
  paste(element, REVISED);
  await expect.poll(() => part(element, '[data-revision=delete]')).not.toBeNull();
  part(element, '[data-revision=delete]')!.focus();
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => part(element, '[data-revision=delete]')!.getAttribute('aria-pressed')).toBe('true');
  await userEvent.keyboard('{Control>}{Enter}{/Control}');
  await expect.poll(() => rows(element)).toEqual(['E1 5 B1', 'E3 4 B1', 'E4 1']);
});

test('a row is said to be another that moved, and a list may come behind all that is there', async () => {
  const element = await mountElement({ content });
  await openWork(element, 'takeoff');
  paste(element, 'Device\tRoom\tQty\nRouter\tHall\t3\nSensor\tFoyer\t2\nSensor\tBar\t4');
  await expect.poll(() => part(element, '[data-choose=same]')).not.toBeNull();
  // It waits until somebody says which it is: new, or the one that is in the hall.
  expect([textOf(element, '[data-do=take]'), part(element, '[data-do=take]')!.matches(':disabled')]).toEqual(['1 row to decide first', true]);
  await press(element, '[data-do=all-new]');
  await expect.poll(() => textOf(element, '[data-do=take]')).toBe('Take it onto the schedule: 1 came, 0 changed, 1 went');
  const choice = part(element, '[data-choose=same]') as HTMLSelectElement;
  await userEvent.selectOptions(choice, 'the row E2, Hall, 2');
  await expect.poll(() => textOf(element, '[data-do=take]')).toBe('Take it onto the schedule: 0 came, 1 changed, 0 went');
  await press(element, '[data-revision=behind]');
  await expect.poll(() => textOf(element, '[data-do=take]')).toBe('Take 9 devices in 3 rows');
  await press(element, '[data-do=take]');
  await expect.poll(() => rows(element)).toHaveLength(6);
});

test('a pasted list with few rows of the one before waits until a person says that it revises it', async () => {
  const element = await mountElement({ content });
  await openWork(element, 'takeoff');
  paste(element, 'Device\tRoom\tQty\nRouter\tHall\t1\nRouter\tAttic\t8');
  await expect.poll(() => part(element, '.lists input')).not.toBeNull();
  const box = part(element, '.lists input') as HTMLInputElement;
  expect([box.checked, part(element, '[data-do=take]')!.matches(':disabled')]).toEqual([false, true]);
  await userEvent.click(box);
  await expect.poll(() => textOf(element, '[data-do=take]')).toBe('Take it onto the schedule: 1 came, 1 changed, 2 went');
  expect(part(element, '[data-do=take]')!.matches(':disabled')).toBe(false);
});

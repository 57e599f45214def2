import { afterEach, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { ScheduleGrid } from '../../../components/grid/index.ts';
import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { LoadSchedule } from '../../../src/load-schedule.ts';
import { fileOf, one } from '../draft-support.ts';
import { mountElement, part, removeElements, said } from '../element-mount.ts';
import { cellAt, placeOf } from '../support/mount.ts';

// On a page of its own, since the formula engine is fetched once: it comes when the tests let it.
const network = vi.hoisted(() => {
  let open = (): void => undefined;
  const answer = new Promise<void>((resolve) => { open = resolve; });
  return { asked: 0, answer, open: () => { open(); } };
});
vi.mock('../../../src/engine/formula-engine.ts', async (importOriginal) => {
  network.asked += 1;
  await network.answer;
  return importOriginal();
});

afterEach(removeElements);

/** What the cell for the quantity of the first device shows, and is worth. */
function quantity(element: LoadScheduleElement): { shown: string; value: unknown } {
  const grid = part(element, 'elv-schedule-grid') as ScheduleGrid;
  return { shown: cellAt(grid, 0, placeOf(grid, 'qty')).textContent, value: valueOf(element) };
}

const problems = (element: LoadScheduleElement) =>
  element.schedule.findings.filter(({ rule }) => rule === 'formula-without-result').map(({ message }) => message);

const valueOf = (element: LoadScheduleElement) => {
  const [row] = element.schedule.rows('devices');
  return row === undefined ? undefined : element.schedule.value('devices', row.id, 'qty');
};

test('the first formula is taken before what calculates it is there, unknown until then, and has its figure after it', async () => {
  const element = await mountElement({ content: one(3) });
  const causes: string[] = [];
  element.addEventListener('elv-change', ({ cause }) => causes.push(cause));
  await element.select('devices', 'D1', 'qty');
  await userEvent.keyboard('=2*3{Enter}');
  await element.updateComplete;
  expect(quantity(element)).toMatchObject({ value: null });
  expect(quantity(element).shown).not.toMatch(/\d/);
  expect(problems(element)).toHaveLength(1);
  expect(JSON.parse(element.value)).toMatchObject({ sheets: { devices: [{ qty: '=2*3' }] } });
  expect(causes).toEqual(['act']);
  const before = said(element);
  // A schedule of the page is shown at once; a file with formulas waits for their figures.
  const given = await mountElement({ key: null });
  given.schedule = new LoadSchedule(one('=4*5'));
  const file = URL.createObjectURL(new Blob([fileOf('=6*7')]));
  const opened = await mountElement({ key: null, attributes: { src: file } });
  const loads: unknown[] = [];
  opened.addEventListener('elv-load', () => loads.push(valueOf(opened)));
  await expect.poll(() => said(opened)).toContain('Reading');
  expect([valueOf(given), valueOf(opened), opened.matches(':state(computing)')]).toEqual([null, undefined, true]);
  network.open();
  await expect.poll(() => quantity(element)).toEqual({ shown: '6', value: 6 });
  await expect.poll(() => loads).toEqual([42]);
  expect([valueOf(given), problems(element), problems(given)]).toEqual([20, [], []]);
  expect(opened.matches(':state(computing)')).toBe(false);
  // Nobody did anything since the formula was typed: one step to undo, and what was said stays.
  expect([causes, said(element), network.asked]).toEqual([['act'], before, 1]);
  element.undo();
  expect(element.schedule.undoLabel).toBeUndefined();
  await expect.poll(() => quantity(element)).toEqual({ shown: '3', value: 3 });
  URL.revokeObjectURL(file);
});

test('from then on formulas have their figures at once', async () => {
  const element = await mountElement({ content: one(3) });
  await element.select('devices', 'D1', 'qty');
  await userEvent.keyboard('=3*3{Enter}');
  expect(quantity(element).value).toBe(9);
  await element.select('devices', 'D1', 'qty');
  await userEvent.keyboard('=ROUND(1;2;3){Enter}');
  expect(quantity(element).value).toBe(9);
});

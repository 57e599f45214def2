import { afterEach, beforeEach, expect, test } from 'vitest';
import { mountElement, part, parts, removeElements, sample, textOf } from '../element-mount.ts';
import { CountedActions } from './counted-actions.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

test('trace a figure: from the demand of a supply to a device row, to what it follows from, and back', async () => {
  const element = await mountElement({ content: sample() });
  const rule = () => textOf(element, 'elv-cell-explanation .rule');
  const sheet = () => part(element, '[aria-selected=true]')!.dataset.sheet;
  const partNamed = (name: string) => parts(element, 'elv-cell-explanation .part')
    .find((each) => each.textContent.trim().startsWith(name));
  const follow = async (name: string) => {
    await expect.poll(() => partNamed(name)).toBeDefined();
    await act.clickOn(partNamed(name)!);
  };
  const act = new CountedActions(element);
  await act.openSheet('supplies');
  await expect.poll(() => act.texts('rail')[0]).toBe('L1');
  await act.clickOn(act.cell(0, 'demand'));
  // By hand: 6 × 0.1 = 0.60 A and 2 × 0.35 × 0.8 = 0.56 A.
  await expect.poll(() => parts(element, 'elv-cell-explanation .part')
    .map((each) => each.textContent.replace(/\s+/g, ' ').trim())).toEqual(['D2 0.60 A', 'D1 0.56 A']);
  await follow('D1');
  await expect.poll(rule).toBe('Demand of D1 = connected × diversity = 0.70 A × 80 % = 0.56 A');
  expect(sheet()).toBe('devices');
  await follow('connected');
  await expect.poll(rule).toContain('Connected of D1');
  await follow('unit draw');
  await expect.poll(rule).toContain('Unit draw of D1 = draw of the device type');
  await follow('');
  await expect.poll(rule).toContain('Draw of Lamp = 350.0 mA, entered here');
  expect(sheet()).toBe('types');
  await act.press('Alt+ArrowLeft', 'Alt+ArrowLeft', 'Alt+ArrowLeft', 'Alt+ArrowLeft');
  await expect.poll(() => [sheet(), rule().split(' =')[0]]).toEqual(['supplies', 'Demand of L1']);
  await act.press('Alt+ArrowRight');
  await expect.poll(rule).toContain('Demand of D1');
  expect(act.count).toBeLessThanOrEqual(11);
  expect(element.schedule.undoLabel).toBeUndefined();
});

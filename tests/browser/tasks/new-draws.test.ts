import { afterEach, beforeEach, expect, test } from 'vitest';
import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { drop, mountElement, part, parts, removeElements, sample, textOf } from '../element-mount.ts';
import { CountedActions } from './counted-actions.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

const OFFICE = 'Type,Draw (mA),Note\nLamp,300,measured\nSensor,120,\nBlind,90,new\n';
const draws = (element: LoadScheduleElement) =>
  element.schedule.rows('types').map(({ cells }) => [cells.type, cells.draw, cells.diversity ?? null]);

test('take over new draws: the list of the office is seen cell by cell before, and comes as one action', async () => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  const act = new CountedActions(element);
  await act.openSheet('types');
  await expect.poll(() => act.texts('type')[0]).toBe('Lamp');
  // The dialog of the browser is none of the page.
  part(element, 'input[type=file]')!.click = () => undefined;
  await act.press('Control+i');
  await act.chooseFile(new File([OFFICE], 'office.csv'));
  await expect.poll(() => parts(element, 'elv-rows-offer .ways label')[0]?.textContent.replace(/\s+/g, ' ').trim())
    .toBe('Update by tag (2 changed, 1 new, 0 not in the list)');
  expect(textOf(element, 'elv-rows-offer tbody')).toContain('Draw350.0 mA300.0 mA');
  expect(element.value).toBe(before);
  await act.press('Enter');
  await expect.poll(() => draws(element)).toEqual([['Lamp', 300, 0.8], ['Sensor', 120, null], ['Blind', 90, null]]);
  // By hand: 2 × 0.3 × 0.8 + 6 × 0.12 = 1.2 A, and 3 × 0.3 × 0.8 = 0.72 A of 1 A, below the target of 80 %.
  expect(element.schedule.value('supplies', 0, 'demand')).toBeCloseTo(1.2, 12);
  expect(element.schedule.value('supplies', 1, 'demand')).toBeCloseTo(0.72, 12);
  expect(element.schedule.value('supplies', 1, 'status')).toBe('ok');
  expect(act.count).toBeLessThanOrEqual(4);
  await act.press('Control+z');
  expect(element.value).toBe(before);
});

test('by mouse, and one figure of the list left out', async () => {
  const element = await mountElement({ content: sample() });
  const act = new CountedActions(element);
  drop(element, 'office.csv', OFFICE);
  act.count += 1;
  const ofSensor = () => parts(element, 'elv-rows-offer tbody input')
    .find(({ ariaLabel }) => ariaLabel === 'Take Draw of Sensor');
  await expect.poll(ofSensor).toBeDefined();
  await act.clickOn(ofSensor()!);
  await act.click('elv-rows-offer [data-do=take]');
  await expect.poll(() => draws(element)).toEqual([['Lamp', 300, 0.8], ['Sensor', 100, null], ['Blind', 90, null]]);
  expect(act.count).toBeLessThanOrEqual(3);
});

import { afterEach, beforeEach, expect, test } from 'vitest';
import { mountElement, part, parts, removeElements, textOf } from '../element-mount.ts';
import { demoContent } from '../support/demo-content.ts';
import { CountedActions } from './counted-actions.ts';

/*
 * The demo has four cases. P1 may be used for 20 A: what belongs to no group takes 9.37 A, heating 5.4 A by its own
 * diversity, the blinds 6.4 A when all go up in a wind alarm; with what its runs draw more for their drop, 21.20 A.
 */

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

/** Milliseconds and actions that each question may take. */
const MOST_TIME = 10_000;
const MOST_ACTIONS = 5;

test('in which case is P1 worst? Its name stands beside it, and its cell is marked', async () => {
  const element = await mountElement({ content: demoContent() });
  const [act, began] = [new CountedActions(element), performance.now()];
  await act.click('[data-command=cases]');
  await expect.poll(() => textOf(element, '[data-row=P1] th')).toBe('P1 supply worst: wind alarm');
  expect(part(element, '[data-row=P1] .cell.worst')?.getAttribute('aria-label'))
    .toBe('P1, wind alarm: 106\u202f% over limit, worst');
  expect(performance.now() - began).toBeLessThan(MOST_TIME);
  expect(act.count).toBe(1);
});

test('what is the least change that puts it right? It is said with its factor, and one press makes it', async () => {
  const element = await mountElement({ content: demoContent() });
  const before = element.value;
  const over = () => element.schedule.findings.filter(({ rule }) => rule === 'supply-over-usable');
  expect(over()).toHaveLength(1);
  const [act, began] = [new CountedActions(element), performance.now()];
  await act.click('[data-command=cases]');
  await act.click('[data-row=P1] .cell.worst');
  await act.click('#why [data-do=matters]');
  // (20 − (21.20 − 6.4)) ÷ 6.4 = 0.813 of the blinds; heating would have to go down by more.
  await expect.poll(() => textOf(element, '[data-goal=limit]'))
    .toContain('blinds from 100 % to at most 81.3 %. Or it would need at least 21.20 A.');
  await act.click('[data-goal=limit] [data-set=blinds]');
  await expect.poll(() => textOf(element, 'elv-what-matters .sentence')).toContain('19.999 A of 20.000 A, 99.996 %. near limit');
  expect(performance.now() - began).toBeLessThan(MOST_TIME);
  expect(act.count).toBeLessThanOrEqual(MOST_ACTIONS);
  expect(over()).toEqual([]);
  await act.press('Control+z');
  expect(element.value).toBe(before);
});

test('what if all blinds run by day? Their factor is typed over, what is worst in the case stands below', async () => {
  const element = await mountElement({ content: demoContent() });
  const [act, began] = [new CountedActions(element), performance.now()];
  await act.click('[data-command=cases]');
  await act.click('[data-view=factors]');
  await act.click('.matrix [data-group=blinds][data-case=day]');
  await act.type('100 %');
  await act.press('Enter');
  // 0.25 of 6.4 A becomes all of it: 14.80 A and 4.8 A more on 20 A.
  await expect.poll(() => textOf(element, '[data-worst="0"]')).toBe('98 % near limit P1');
  expect(performance.now() - began).toBeLessThan(MOST_TIME);
  expect(act.count).toBeLessThanOrEqual(MOST_ACTIONS);
});

test('the same without a change: what matters says what all of each group comes to', async () => {
  const element = await mountElement({ content: demoContent() });
  const before = element.value;
  const act = new CountedActions(element);
  await act.click('[data-command=cases]');
  await act.click('[data-row=P1] .cell');
  await act.click('#why [data-do=matters]');
  await expect.poll(() => parts(element, '.groups [data-group=blinds] td').map((each) => each.textContent.replace(/\s/g, ' '))[5])
    .toBe('98 %');
  expect(element.value).toBe(before);
  expect(act.count).toBe(3);
});

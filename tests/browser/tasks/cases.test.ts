import '../zz-case-shots.test.ts';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Content } from '../../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, textOf } from '../element-mount.ts';
import { CountedActions } from './counted-actions.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

/**
 * P1 may be used for 10 A: blinds 4 × 1.5 A = 6 A, lamps 8 × 0.5 A = 4 A, sensors 10 × 0.1 A = 1 A. By hand: in the
 * evening 0.25 × 6 + 4 + 1 = 6.5 A; in a wind alarm 6 + 0.5 × 4 + 1 = 9 A, above the target of 8 A; when the rooms are
 * cleaned 0.5 × 6 + 4 + 1 = 8 A; at night 0 + 0.1 × 4 + 1 = 1.4 A. With all blinds in the evening it is 11 A.
 */
const content: Content = {
  details: {},
  sheets: {
    types: [
      { type: 'Blind', draw: 1500, nodes: 0, group: 'blinds' }, { type: 'Lamp', draw: 500, nodes: 0, group: 'lamps' },
      { type: 'Sensor', draw: 100, nodes: 0, group: 'sensors' },
    ],
    supplies: [{ rail: 'P1', rated: 10, target: 0.8 }, { rail: 'P2', rated: 10, target: 0.8 }],
    devices: [
      { ref: 'D1', type: 'Blind', qty: 4, rail: 'P1' }, { ref: 'D2', type: 'Lamp', qty: 8, rail: 'P1' },
      { ref: 'D3', type: 'Sensor', qty: 10, rail: 'P1' }, { ref: 'D4', type: 'Lamp', qty: 4, rail: 'P2' },
    ],
    cases: [{ case: 'evening' }, { case: 'wind alarm' }, { case: 'cleaning' }, { case: 'night' }],
    factors: ([['evening', 0.25, 1], ['wind alarm', 1, 0.5], ['cleaning', 0.5, 1], ['night', 0, 0.1]] as const)
      .flatMap(([name, blinds, lamps]) => [
        { case: name, group: 'blinds', factor: blinds }, { case: name, group: 'lamps', factor: lamps },
        { case: name, group: 'sensors', factor: 1 },
      ]),
  },
};

/** Milliseconds and actions that each question may take. */
const MOST_TIME = 10_000;
const MOST_ACTIONS = 5;

test('in which case is P1 worst? It stands at the top, with the name of the case, and its cell is marked', async () => {
  const element = await mountElement({ content });
  const [act, began] = [new CountedActions(element), performance.now()];
  await act.click('[data-command=cases]');
  await expect.poll(() => textOf(element, '.loadings tbody th')).toContain('P1 supply worst: wind alarm');
  expect(part(element, '[data-row=P1] .cell.worst')?.getAttribute('aria-label')).toBe('P1, wind alarm: 90\u202f%, near limit, worst');
  expect(performance.now() - began).toBeLessThan(MOST_TIME);
  expect(act.count).toBeLessThanOrEqual(1);
});

test('what is the least change that puts it right? It is said with its factor, and one press sets it', async () => {
  const element = await mountElement({ content });
  const before = element.value;
  const [act, began] = [new CountedActions(element), performance.now()];
  await act.click('[data-command=cases]');
  await act.click('[data-row=P1] .cell.worst');
  await act.click('#why [data-do=matters]');
  // (8 − 2 − 1) ÷ 6 = 0.833 of the blinds; of the lamps (8 − 6 − 1) ÷ 4 = 0.25, which is further away.
  await expect.poll(() => textOf(element, '[data-goal=target]'))
    .toContain('blinds from 100 % to at most 83.3 %. Or it would need at least 11.25 A.');
  await act.click('[data-goal=target] [data-set]');
  await expect.poll(() => textOf(element, 'elv-what-matters .sentence')).toContain('8.00 A of 10.00 A, 80 %. within limits');
  expect(performance.now() - began).toBeLessThan(MOST_TIME);
  expect(act.count).toBeLessThanOrEqual(MOST_ACTIONS - 1);
  await act.press('Control+z');
  expect(element.value).toBe(before);
});

test('what if all blinds run? Their factor is typed over, what is worst in the case stands below', async () => {
  const element = await mountElement({ content });
  const [act, began] = [new CountedActions(element), performance.now()];
  await act.click('[data-command=cases]');
  await act.click('[data-view=factors]');
  await act.click('.matrix [data-group=blinds][data-case=evening]');
  await act.type('100 %');
  await act.press('Enter');
  await expect.poll(() => textOf(element, '[data-worst="0"]')).toBe('110 %over limit P1');
  expect(performance.now() - began).toBeLessThan(MOST_TIME);
  expect(act.count).toBeLessThanOrEqual(MOST_ACTIONS);
});

test('the same without a change: what matters says what all of each group comes to', async () => {
  const element = await mountElement({ content });
  const before = element.value;
  const act = new CountedActions(element);
  await act.click('[data-command=cases]');
  await act.clickOn(parts(element, '[data-row=P1] .cell')[0]!);
  await act.click('#why [data-do=matters]');
  await expect.poll(() => parts(element, '.groups [data-group=blinds] td').map((each) => each.textContent.replace(/\s/g, ' '))[5]).toBe('110 %');
  expect(element.value).toBe(before);
  expect(act.count).toBeLessThanOrEqual(3);
});

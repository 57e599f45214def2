import { afterEach, beforeEach, expect, test } from 'vitest';
import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import type { Content } from '../../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, textOf } from '../element-mount.ts';
import { CountedActions } from './counted-actions.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

/** L1 may be used for 5 A. Ten lamps of 400 mA take 4 A of it, at a price of 30 each; ten of 600 mA would take 6 A. */
const CONTENT: Content = {
  details: {},
  sheets: {
    types: [
      { type: 'Lamp', draw: 400, nodes: 1, price: 30, minVoltage: 20, maxVoltage: 30 },
      { type: 'Bright lamp', draw: 600, nodes: 2, price: 45, minVoltage: 21, maxVoltage: 30 },
    ],
    supplies: [{ rail: 'L1', rated: 5, target: 1 }],
    devices: [
      { ref: 'D1', type: 'Lamp', qty: 4, rail: 'L1' }, { ref: 'D2', type: 'Lamp', qty: 6, rail: 'L1' },
      { ref: 'D3', type: 'Lamp', qty: 1, unitDraw: 100 },
    ],
  },
};

const types = (element: LoadScheduleElement) => element.schedule.rows('devices').map(({ cells }) => cells.type);
const difference = (element: LoadScheduleElement) => parts(element, 'elv-rework .difference tbody tr').map((line) =>
  [...line.children].map(({ textContent }) => textContent.trim().replaceAll('\u00a0', ' ')).join(' | '));

test('swap a type everywhere, own draws going: the difference and what was found are seen before, one undo', async () => {
  const element = await mountElement({ content: CONTENT });
  const before = element.value;
  const act = new CountedActions(element);
  await act.clickOn(act.rowHeading(0));
  await act.press('Alt+Shift+S');
  await act.choose('elv-rework [data-option=to]', 'Bright lamp');
  expect(textOf(element, 'elv-rework .problems')).toContain('Choose whether it stays or goes.');
  expect(part(element, 'elv-rework [data-do=rework]')!.ariaDisabled).toBe('true');
  await act.choose('elv-rework [data-option=own-unitDraw]', 'go');
  // By hand: 10 × 0.4 + 0.1 = 4.1 A become 11 × 0.6 = 6.6 A; 11 × 1 node become 22; 11 × 30 become 11 × 45 = 495.
  await expect.poll(() => difference(element)).toEqual([
    'Connected | 4.10 A | 6.60 A', 'Demand | 4.10 A | 6.60 A', 'Nodes | 11 | 22', 'Price | 330.00 | 495.00',
    'Draw | 400.0 mA | 600.0 mA', 'Voltage | 24.00 V | 24.00 V', 'Min. voltage | 20.00 V | 21.00 V', 'Max. voltage | 30.00 V | 30.00 V',
  ]);
  // L1 alone: 4 A of 5 A become 6 A of 5 A.
  expect(textOf(element, 'elv-rework [data-tag=L1]')).toMatch(/80\s?%.*120\s?%.*over/);
  expect(parts(element, 'elv-rework .findings.came li').map(({ textContent }) => textContent).join(' ')).toContain('L1');
  expect(element.value).toEqual(before);
  // All of it is listed only where a person asks for it.
  expect(part(element, 'elv-rework .all table')).toBeNull();
  await act.press('Control+Enter');
  await expect.poll(() => types(element)).toEqual(['Bright lamp', 'Bright lamp', 'Bright lamp']);
  expect(element.schedule.rows('devices')[2]!.cells.unitDraw).toBeUndefined();
  await expect.poll(() => part(element, 'elv-rework')!.hidden).toBe(true);
  expect(act.count).toBeLessThanOrEqual(7);
  await act.press('Control+z');
  await expect.poll(() => element.value).toEqual(before);
});

test('by mouse alone, in the selected rows only, from the menu', async () => {
  const element = await mountElement({ content: CONTENT });
  const act = new CountedActions(element);
  await act.clickOn(act.rowHeading(0));
  await act.clickOn(act.rowHeading(1), { keys: 'Shift' });
  await act.clickOn(act.rowHeading(1), { button: 'right' });
  await act.click('.cell-menu [data-entry=swapType]');
  await act.choose('elv-rework [data-option=to]', 'Bright lamp');
  await act.click('elv-rework [data-do=rework]');
  await expect.poll(() => types(element)).toEqual(['Bright lamp', 'Bright lamp', 'Lamp']);
  expect(act.count).toBeLessThanOrEqual(7);
});

test('Escape leaves all as it was and gives the rows the focus again', async () => {
  const element = await mountElement({ content: CONTENT });
  const act = new CountedActions(element);
  await act.clickOn(act.rowHeading(0));
  await act.press('Alt+Shift+S');
  await expect.poll(() => part(element, 'elv-rework')?.hidden).toBe(false);
  await act.press('Escape');
  await expect.poll(() => part(element, 'elv-rework')!.hidden).toBe(true);
  expect(types(element)).toEqual(['Lamp', 'Lamp', 'Lamp']);
  await expect.poll(() => part(element, 'elv-schedule-grid')!.shadowRoot!.activeElement).not.toBeNull();
});

test('a type that no row tells of is swapped too', async () => {
  const content: Content = { ...CONTENT, sheets: { ...CONTENT.sheets, devices: [{ ref: 'D1', type: 'Lantern', qty: 4, rail: 'L1' }] } };
  const element = await mountElement({ content });
  const act = new CountedActions(element);
  await act.clickOn(act.rowHeading(0));
  await act.press('Alt+Shift+S');
  await act.choose('elv-rework [data-option=to]', 'Lamp');
  await expect.poll(() => difference(element)).toContain('Draw | not known | 400.0 mA');
  await act.press('Control+Enter');
  await expect.poll(() => types(element)).toEqual(['Lamp']);
});

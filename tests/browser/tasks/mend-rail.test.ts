import { afterEach, beforeEach, expect, test } from 'vitest';
import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { userEvent } from 'vitest/browser';
import type { RemedyList } from '../../../components/remedy-list/remedy-list.ts';
import type { Content } from '../../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, textOf } from '../element-mount.ts';
import { CountedActions } from './counted-actions.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

/** Two runs of 2 A each on a rail that may give 2.5 A; another rail has 10 A. */
const CONTENT: Content = {
  details: {},
  sheets: {
    supplies: [{ rail: 'L1', rated: 2.5, peak: 8, target: 1 }, { rail: 'L2', rated: 10, peak: 2 }],
    ways: ['L1-F1', 'L1-F2'].map((way) => ({ way, rail: 'L1', kind: 'electronic', rated: 3, target: 1 })),
    conductors: [{ conductor: '2.5 mm²', resistance: 7.41, maxCurrent: 23 }],
    runs: ['W1', 'W2'].map((run, at) => ({ run, way: `L1-F${at + 1}`, conductor: '2.5 mm²', length: 5 })),
    types: [{ type: 'Lamp', draw: 1000, minVoltage: 20, maxVoltage: 30 }, { type: 'Lamp 6 W', draw: 250, minVoltage: 20, maxVoltage: 30 }],
    devices: ['W1', 'W2'].map((run, at) => ({ ref: `D${at + 1}`, type: 'Lamp', qty: 2, run })),
  },
};
const overs = ({ schedule }: LoadScheduleElement) =>
  schedule.findings.filter(({ severity }) => severity === 'over').map(({ rule }) => rule);

test('find why a rail is over and mend it three ways: a larger supply, a way on another rail, a type that draws less', async () => {
  const element = await mountElement({ content: CONTENT });
  const before = element.value;
  const act = new CountedActions(element);
  expect(overs(element)).toEqual(['supply-over-usable']);
  // From the finding to the cell; the pane says what the demand is made of, the largest first.
  await act.click('elv-schedule-panel #findings-over .finding');
  await expect.poll(() => textOf(element, 'elv-cell-explanation .rule b')).toBe('Demand');
  expect(parts(element, 'elv-cell-explanation .part').map(({ textContent }) => textContent.trim().replace(/\s+/g, ' '))).toEqual(
    ['D1 2.00 A', 'D2 2.00 A', 'W1 0.00 A', 'W2 0.00 A']);
  const buttons = () => parts(element, 'elv-cell-explanation elv-remedy-list button');
  await expect.poll(() => buttons().map(({ textContent }) => textContent.trim())).toEqual([
    'L1 rated 5.00 A', 'L1-F1 with its runs on L2',
  ]);
  await act.press('Control+.', 'Enter');
  await expect.poll(() => overs(element)).toEqual([]);
  expect(act.count).toBe(3);
  await act.press('Control+z');
  await expect.poll(() => element.value).toEqual(before);

  await act.click('elv-schedule-panel #findings-over .finding');
  await expect.poll(() => buttons().length).toBe(2);
  await act.clickOn(buttons()[1]!);
  await expect.poll(() => overs(element)).toEqual([]);
  expect(element.schedule.rows('ways').map(({ cells }) => cells.rail)).toEqual(['L2', 'L1']);
  await act.press('Control+z');
  await expect.poll(() => element.value).toEqual(before);
  expect(act.count).toBe(7);

  await act.openSheet('devices');
  await expect.poll(() => act.rowHeading(0).textContent).toBe('1');
  await act.clickOn(act.rowHeading(0));
  await act.press('Alt+Shift+S');
  await act.choose('elv-rework [data-option=to]', 'Lamp 6 W');
  await act.press('Control+Enter');
  await expect.poll(() => overs(element)).toEqual([]);
  expect(act.count).toBe(13);
});

test('what would mend a finding comes late, and takes no focus from who went on meanwhile', async () => {
  const element = await mountElement({ content: CONTENT });
  await expect.poll(() => part(element, 'elv-schedule-panel [data-mend]')).not.toBeNull();
  const field = part(element, '[data-key=remarks]')!;
  const mend = part(element, 'elv-schedule-panel [data-mend]')!;
  mend.focus();
  mend.click();
  field.focus();
  await expect.poll(() => parts(element, 'elv-schedule-panel [data-remedy]').length).toBeGreaterThan(0);
  await (part(element, 'elv-schedule-panel elv-remedy-list') as RemedyList).updateComplete;
  await new Promise(requestAnimationFrame);
  expect(field.matches(':focus')).toBe(true);
  // Whoever waits for it gets the first of them, also when it is asked for again.
  for (let times = 0; times < 2; times += 1) {
    await userEvent.click(mend);
    await expect.poll(() => parts(element, 'elv-schedule-panel [data-remedy]')).toEqual([]);
    await userEvent.click(mend);
    await expect.poll(() => part(element, 'elv-schedule-panel [data-remedy]:focus')).not.toBeNull();
  }
});

import { afterEach, beforeEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Place } from '../../../components/look/index.ts';
import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { GoToEvent } from '../../../components/events/index.ts';
import type { Content } from '../../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, textOf } from '../element-mount.ts';
import { CountedActions } from './counted-actions.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

/**
 * Four lamps of 0.5 A along 60 m of 1 mm², which need 21 V: by their moments of 2 A × 45 m they lose 3.4 V.
 * The way acts at once from 4 A on.
 */
const CONTENT: Content = {
  details: {},
  sheets: {
    supplies: [{ rail: 'L1', rated: 10, peak: 5, purpose: 'lighting' }],
    ways: [{ way: 'L1-F1', rail: 'L1', kind: 'electronic', rated: 4, trip: 1 }],
    conductors: [
      { conductor: '1 mm²', resistance: 18.1, maxCurrent: 13 }, { conductor: '2.5 mm²', resistance: 7.41, maxCurrent: 23 },
    ],
    runs: [{ run: 'W1', way: 'L1-F1', conductor: '1 mm²', length: 60, maxDrop: 0.2 }],
    types: [{ type: 'Lamp', draw: 500, minVoltage: 21, maxVoltage: 30 }],
    devices: [30, 40, 50, 60].map((distance, at) => ({ ref: `D${at + 1}`, type: 'Lamp', qty: 1, run: 'W1', distance })),
  },
};
const RULE = 'run-under-voltage';
const isFound = ({ schedule }: LoadScheduleElement) => schedule.findings.some(({ rule }) => rule === RULE);
const overs = ({ schedule }: LoadScheduleElement) => schedule.findings.filter(({ severity }) => severity === 'over').map(({ rule }) => rule);

/** Selects a cell, as a press on a finding does. */
const select = (element: LoadScheduleElement, place: Place) => part(element, 'elv-sheet-view')!.dispatchEvent(new GoToEvent(place));

/** The pane below with what would mend the run. */
async function shown(element: LoadScheduleElement): Promise<string[]> {
  const id = element.schedule.rows('runs')[0]!.id;
  select(element, { sheet: 'runs', id, key: 'voltageMargin' });
  await expect.poll(() => parts(element, 'elv-cell-explanation elv-remedy-list button').length).toBeGreaterThan(0);
  return parts(element, 'elv-cell-explanation elv-remedy-list button').map(({ textContent }) => textContent.trim());
}

async function begun(): Promise<{ element: LoadScheduleElement; act: CountedActions; before: unknown }> {
  const element = await mountElement({ content: CONTENT });
  await expect.poll(() => part(element, 'elv-schedule-grid td')).not.toBeNull();
  expect(isFound(element)).toBe(true);
  return { element, act: new CountedActions(element), before: element.value };
}

test('a run that ends too low, mended by a conductor: one press in the pane below, one undo', async () => {
  const { element, act, before } = await begun();
  expect(await shown(element)).toEqual(['W1 with 2.5 mm²', 'W1 fed from L1-F2 too, over 60.0 m more of its cable']);
  await act.click('elv-cell-explanation elv-remedy-list button');
  await expect.poll(() => overs(element)).toEqual([]);
  expect(element.schedule.undoLabel).toBe('W1 with 2.5 mm²');
  expect(act.count).toBe(1);
  await act.press('Control+z');
  await expect.poll(() => element.value).toEqual(before);
});

test('by a second feed: with keys from the cell, which has the focus again', async () => {
  const { element, act } = await begun();
  await shown(element);
  await act.press('Control+.', 'Tab', 'Enter');
  await expect.poll(() => overs(element)).toEqual([]);
  expect(element.schedule.rows('runs')[0]!.cells).toMatchObject({ secondWay: 'L1-F2', secondLength: 60 });
  expect(element.schedule.rows('ways')[1]!.cells).toMatchObject({ way: 'L1-F2', rail: 'L1', kind: 'electronic', rated: 4 });
  expect(act.count).toBe(3);
  await act.press('Control+z');
  await expect.poll(() => element.schedule.rows('ways').length).toBe(1);
});

test('by its length, which is typed', async () => {
  const { element, act } = await begun();
  const id = element.schedule.rows('runs')[0]!.id;
  // Where the cable may take another way, the devices stand nearer as well: here the supply moves by 30 m.
  select(element, { sheet: 'runs', id, key: 'length' });
  await expect.poll(() => textOf(element, 'elv-cell-explanation .rule b')).toBe('Length');
  await act.type('35');
  await act.press('Enter');
  await act.openSheet('devices');
  for (const [at, row] of element.schedule.rows('devices').entries()) {
    select(element, { sheet: 'devices', id: row.id, key: 'distance' });
    await expect.poll(() => textOf(element, 'elv-cell-explanation .rule')).toContain(`D${at + 1}`);
    await act.type(String(5 + at * 10));
    await act.press('Enter');
  }
  await expect.poll(() => overs(element)).toEqual([]);
  expect(act.count).toBe(11);
});

test('by parting it in two: from a device on, on a run and a way of their own', async () => {
  const { element, act, before } = await begun();
  select(element, { sheet: 'devices', id: element.schedule.rows('devices')[2]!.id, key: 'ref' });
  await expect.poll(() => textOf(element, 'elv-cell-explanation .rule')).toContain('D3');
  await act.press('Alt+Shift+X');
  await act.choose('elv-rework [data-option=way]', 'new');
  await expect.poll(() => textOf(element, 'elv-rework .outcome .sum')).toBe('2 device rows go from W1 on W2, from way L1-F2.');
  expect(parts(element, 'elv-rework .findings.came li')).toEqual([]);
  expect(element.value).toEqual(before);
  // What cannot be read as a length stays there, with what is wrong with it; with its unit it can be.
  const length = () => part(element, 'elv-rework [data-option=length]') as HTMLInputElement;
  for (const [typed, problem] of [['6O', '“6O”'], ['6000 cm', '']] as const) {
    await userEvent.fill(length(), typed);
    await userEvent.tab();
    await expect.poll(() => textOf(element, 'elv-rework .problems')).toContain(problem);
    expect(length().value).toBe(problem === '' ? '60' : typed);
  }
  length().focus();
  await act.press('Control+Enter');
  await expect.poll(() => overs(element)).toEqual([]);
  expect(element.schedule.rows('runs').map(({ cells }) => [cells.run, cells.length])).toEqual([['W1', 40], ['W2', 60]]);
  expect(act.count).toBe(4);
  await act.press('Control+z');
  await expect.poll(() => element.value).toEqual(before);
});

test('in the list of findings: what would mend it is shown when it is asked for, and there is nothing in a schedule that is only read', async () => {
  const { element, act } = await begun();
  await act.click('elv-schedule-panel [data-mend]');
  await expect.poll(() => parts(element, 'elv-schedule-panel elv-remedy-list button').length).toBe(2);
  await act.press('Enter');
  await expect.poll(() => overs(element)).toEqual([]);
  expect(element.schedule.undoLabel).toBe('W1 with 2.5 mm²');
  expect(act.count).toBe(2);
  await act.press('Control+z');
  await expect.poll(() => part(element, 'elv-schedule-panel [data-mend]')).not.toBeNull();
  element.readonly = true;
  await expect.poll(() => part(element, 'elv-schedule-panel [data-mend]')).toBeNull();
  await expect.poll(() => part(element, 'elv-cell-explanation elv-remedy-list')).toBeNull();
});

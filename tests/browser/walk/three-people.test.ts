import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { writeSchedule } from '../../../src/exchange/index.ts';
import { drop, mountElement, part, parts, removeElements, said, sample, textOf } from '../element-mount.ts';
import { paste, putOnClipboard } from '../support/clipboard.ts';
import { choose } from '../support/choose.ts';
import { savedFiles } from '../support/saved-files.ts';
import { openWork, press } from '../work-support.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(() => {
  removeElements();
  vi.restoreAllMocks();
});

/** Text of a part of the element and of what lies in its shadow root. */
const deepText = (element: Element, selector: string): string => part(element, selector)!.shadowRoot!.textContent;

/** Counts of an invented boat house. By hand: 24 + 6 + 12 + 8 = 50 devices, and 20 m of cable that is none. */
const TAKEOFF = [
  'Boat house\t\t\t',
  'Description\tLocation\tQty\tRemarks',
  'Downlight 7 W\tHall\t24 no.\t',
  'Presence detector\tHall\t6\t',
  'Downlight 12 W\tStore\t12,0\t',
  'Push-button station, 2 keys\tStore\t8\t',
  'Subtotal\t\t50\t',
].join('\r\n');

test('the estimator pastes a takeoff, takes it, shares it out, sees what to buy, and takes it all back',
  { timeout: 90_000 }, async () => {
  const start = {
    details: {},
    sheets: { supplies: [{ rail: 'P1', purpose: 'lighting', rated: 20 }], branches: [{ branch: 'B1', limit: 30 }] },
  };
  const element = await mountElement({ content: start });
  await openWork(element, 'takeoff');
  await press(element, '[data-do=general-types]');
  await expect.poll(() => element.schedule.rows('types').length).toBeGreaterThan(20);
  await putOnClipboard(TAKEOFF);
  part(element, 'elv-takeoff-reader textarea')!.focus();
  await paste();
  await expect.poll(() => parts(element, '.lines tbody tr').length).toBeGreaterThan(0);
  for (let open = part(element, '[data-do=confirm]'); open !== null; open = part(element, '[data-do=confirm]')) {
    await userEvent.click(open);
  }
  await press(element, '[data-do=take]');
  await expect.poll(() => said(element)).toContain('Takeoff of 50 devices');
  const quantity = () => element.schedule.rows('devices').reduce((sum, { cells }) => sum + Number(cells.qty), 0);
  expect(quantity()).toBe(50);

  await openWork(element, 'shareOut');
  await expect.poll(() => (part(element, 'elv-share-out [data-do=share]') as HTMLButtonElement).disabled).toBe(false);
  await press(element, '[data-do=share]');
  await expect.poll(() => said(element)).toContain('Sharing out over');
  expect(quantity()).toBe(50);
  for (const { id } of element.schedule.rows('branches')) expect(element.schedule.value('branches', id, 'free'))
    .toBeGreaterThanOrEqual(0);

  await openWork(element, 'sizing');
  await expect.poll(() => parts(element, '.sizing tbody tr').length).toBeGreaterThan(0);
  part(element, '[data-sheet=devices]')!.click();
  while (element.schedule.undoLabel !== undefined) await userEvent.click(part(element, '[data-command=undo]')!);
  expect(element.value).toBe(writeSchedule(start));
});

test('the designer tunes a diversity, sees every figure follow, reads why, and goes to what is found', async () => {
  const element = await mountElement({ content: sample() });
  const gauge = () => parts(element, 'elv-schedule-panel .sentence')
    .map((each) => each.textContent).find((text) => text.includes('A of')) ?? '';
  await element.select('devices', 'D1', 'diversity');
  await userEvent.keyboard('50 %{Enter}');
  // 2 × 0.35 × 0.5 + 6 × 0.1 = 0.95 A of 1 A: no longer over, and above the target.
  expect(element.schedule.value('supplies', 0, 'demand')).toBeCloseTo(0.95, 9);
  await expect.poll(gauge).toContain('0.95');
  await element.select('supplies', 'L1', 'demand');
  await expect.poll(() => deepText(element, 'elv-cell-explanation')).toContain('0.95');

  // What is typed with a comma and a unit is understood, and what is out of range is refused with a sentence.
  await element.select('types', 'Sensor', 'draw');
  await userEvent.keyboard('0,15 A{Enter}');
  expect(element.schedule.value('types', 1, 'draw')).toBe(150);
  await element.select('devices', 'D1', 'diversity');
  await userEvent.keyboard('1.5{Enter}');
  await expect.poll(() => said(element)).toContain('more than 1');
  expect(element.schedule.value('devices', 0, 'diversity')).toBe(0.5);
  await userEvent.keyboard('{Escape}');

  // A reference is offered as a list and taken by key.
  await element.select('devices', 'D3', 'rail');
  await userEvent.keyboard('L3{Enter}');
  expect(element.schedule.value('devices', 2, 'rail')).toBe('L3');

  // L1 is asked for 0.35 + 6 × 0.15 = 1.25 A of 1 A: over again, and a press goes there.
  await userEvent.click(part(element, '#findings-over .finding')!);
  await expect.poll(() => part(element, '[aria-selected=true]')!.dataset.sheet).toBe('supplies');
  await element.select('devices', 'D1', 'qty');
  await choose(element, 'groupings', 'rail');
  await expect.poll(() => deepText(element, 'elv-schedule-grid')).toContain('L3');

  for (let step = 0; step < 3; step += 1) await userEvent.click(part(element, '[data-command=undo]')!);
  expect(element.schedule.value('supplies', 0, 'demand')).toBeCloseTo(1.16, 9);
  await userEvent.click(part(element, '[data-command=redo]')!);
  expect(element.schedule.value('supplies', 0, 'demand')).toBeCloseTo(0.95, 9);
});

test('the documenter accepts a finding, saves the load table, and it is read back a year later', { timeout: 60_000 },
  async () => {
  const element = await mountElement({ content: sample() });
  part(element, '#findings-over .accept')!.focus();
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => part(element, 'elv-acceptance-form [name=reason]')).not.toBeNull();
  part(element, 'elv-acceptance-form [name=reason]')!.focus();
  await userEvent.keyboard('dimmed to half');
  part(element, 'elv-acceptance-form [name=name]')!.focus();
  await userEvent.keyboard('a. n. o.{Enter}');
  await expect.poll(() => element.schedule.content().accepted?.length).toBe(1);

  await openWork(element, 'loadTable');
  const frame = () => (part(element, 'elv-load-table iframe') as HTMLIFrameElement).contentDocument?.body.textContent
    ?? '';
  await expect.poll(frame).toContain('dimmed to half');
  const files = savedFiles();
  for (const form of ['html', 'xlsx', 'csv']) await press(element, `[data-do=${form}]`);
  await expect.poll(() => files.length).toBe(3);
  for (const file of files.filter(({ name }) => !name.endsWith('.csv'))) {
    const other = await mountElement();
    expect(await other.openFile(file), file.name).toEqual([]);
    expect(other.value, file.name).toBe(element.value);
    other.remove();
  }
});

test('a file is dropped on the page and opened; one that cannot be read changes nothing and says why', async () => {
  const element = await mountElement();
  drop(element, 'boat-house.schedule.json', writeSchedule(sample()));
  await expect.poll(() => element.schedule.rows('devices').length).toBe(3);
  const before = element.value;
  drop(element, 'broken.schedule.json', '{ "format": ');
  await expect.poll(() => textOf(element, 'elv-sheet-view [role=alert]')).toMatch(/broken\.schedule\.json/);
  expect(element.value).toBe(before);
});

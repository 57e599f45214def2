import { expect } from 'vitest';
import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import { CommandEvent } from '../../../components/events/index.ts';
import { insertRows, setCells, setFactors, SHEET_NAMES } from '../../../src/schedule/index.ts';
import { openSheet, part, textOf } from '../element-mount.ts';
import { openWork } from '../work-support.ts';

/** A name for each thing that the element can show, and how a person gets there. */
export const VIEWS: readonly [name: string, show: (element: LoadScheduleElement) => Promise<void>][] = [
  ...SHEET_NAMES.map((sheet): [string, (element: LoadScheduleElement) => Promise<void>] => [
    `the sheet ${sheet}`, async (element) => {
      await openSheet(element, sheet);
      await element.updateComplete;
    },
  ]),
  ['joining', (element) => openWork(element, 'join')],
  ['the takeoff', (element) => openWork(element, 'takeoff')],
  ['sharing out', (element) => openWork(element, 'shareOut')],
  ['sizing', (element) => openWork(element, 'sizing')],
  ...(['compare', 'factors', 'matters'] as const).map((view): [string, (element: LoadScheduleElement) => Promise<void>] => [
    `the cases, ${view}`, async (element) => {
      const { document } = element.schedule;
      const [type] = element.schedule.rows('types');
      element.schedule.act('', [
        ...type === undefined ? [] : setCells(document, [{ sheet: 'types', id: type.id, key: 'group', value: 'lamps' }]),
        ...insertRows(document, 'cases', 0, [{ case: 'evening' }, { case: 'wind alarm' }]),
        ...setFactors(document, [{ case: 'wind alarm', group: 'lamps', value: 1 }]),
      ]);
      await openWork(element, 'cases');
      part(element, `[data-view=${view}]`)!.click();
      const shown = { compare: '.loadings .cell', factors: '.matrix input', matters: '.groups' }[view];
      await expect.poll(() => part(element, shown)).not.toBeNull();
      part(element, '.loadings .cell')?.click();
      await element.updateComplete;
    },
  ]),
  ['variants', (element) => openWork(element, 'variants')],
  ['the bill', (element) => openWork(element, 'bill')],
  ['the load table', (element) => openWork(element, 'loadTable')],
  ...(['oneLine', 'branches'] as const).map((view): [string, (element: LoadScheduleElement) => Promise<void>] => [
    `the drawings, ${view}`, async (element) => {
      await openWork(element, 'loadTable');
      await expect.poll(() => part(element, `elv-load-table [data-view=${view}]`)).not.toBeNull();
      part(element, `elv-load-table [data-view=${view}]`)!.click();
      await expect.poll(() => part(element, 'elv-drawings .sheet') ?? part(element, 'elv-drawings p')).not.toBeNull();
    },
  ]),
  ...(['duplicate', 'moveTo', 'swapType'] as const).map((job): [string, (element: LoadScheduleElement) => Promise<void>] => [
    `the job ${job}`, async (element) => {
      const [row] = element.schedule.rows('devices');
      await element.select('devices', 1, 'ref');
      await expect.poll(() => part(element, 'elv-schedule-grid td')).not.toBeNull();
      part(element, 'elv-schedule-grid')!.dispatchEvent(new CommandEvent(job));
      await expect.poll(() => part(element, 'elv-rework')?.hidden).toBe(false);
      const field = part(element, 'elv-rework [data-option=to]') as HTMLSelectElement | null;
      if (field === null || row === undefined) return;
      field.value = field.options[1]!.value;
      field.dispatchEvent(new Event('change'));
      await element.updateComplete;
    },
  ]),
  ['measured values', (element) => openWork(element, 'measure')],
  ['the help', async (element) => {
    part(element, '#help')!.togglePopover();
    await expect.poll(() => textOf(element, 'elv-help dl')).not.toBe('');
  }],
  ['the first steps, with the general types', async (element) => {
    part(element, '[data-command=save]')!.dispatchEvent(
      new KeyboardEvent('keydown', { key: 'F1', shiftKey: true, bubbles: true, composed: true, cancelable: true }));
    await expect.poll(() => part(element, 'elv-first-steps [popovertarget=general]')).not.toBeNull();
    part(element, 'elv-first-steps [popovertarget=general]')!.click();
    await expect.poll(() => part(element, 'elv-type-choice li')).not.toBeNull();
    // That they were asked for is remembered on the page.
    localStorage.clear();
  }],
  ['the keys', async (element) => {
    part(element, '[data-sheet=devices]')!.click();
    await element.updateComplete;
    part(element, '#keys')!.togglePopover();
    await expect.poll(() => textOf(element, '#keys')).not.toBe('');
  }],
  ['finding and replacing', async (element) => {
    part(element, '[data-command=find]')!.click();
    await expect.poll(() => part(element, 'elv-find-bar [name=text]')).not.toBeNull();
    part(element, 'elv-find-bar [name=text]')!.dispatchEvent(
      new KeyboardEvent('keydown', { key: 'h', ctrlKey: true, bubbles: true, composed: true, cancelable: true }));
    await expect.poll(() => part(element, 'elv-find-bar [name=by]')).not.toBeNull();
    for (const [name, value] of [['text', '6'], ['by', 'six']] as const) {
      const field = part(element, `elv-find-bar [name=${name}]`) as HTMLInputElement;
      field.value = value;
      field.dispatchEvent(new Event('input'));
    }
    // What was found is listed with what it becomes, or it is said that nothing would change.
    await expect.poll(() => part(element, 'elv-find-bar del') ?? part(element, 'elv-find-bar p')).not.toBeNull();
  }],
  ['going to', async (element) => {
    part(element, '[data-command=find]')!.dispatchEvent(
      new KeyboardEvent('keydown', { key: 'g', ctrlKey: true, bubbles: true, composed: true, cancelable: true }));
    await expect.poll(() => part(element, 'elv-go-to-bar [role=option]')).not.toBeNull();
  }],
  ['the acceptance of a finding', async (element) => {
    part(element, '[data-sheet=devices]')!.click();
    await element.updateComplete;
    part(element, '#findings-over .accept')!.click();
    await expect.poll(() => part(element, 'elv-acceptance-form [name=reason]')).not.toBeNull();
  }],
];

/** An element and everything that holds it, across shadow roots and slots. */
export function withHolders(element: Element): Element[] {
  const found: Element[] = [];
  for (let at: Element | null = element; at !== null;) {
    found.push(at);
    const root: Node = at.getRootNode();
    at = at.assignedSlot ?? at.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
  }
  return found;
}

/** Whether an element takes room that a person can see, and may be used. */
export function isSeen(element: Element): boolean {
  return element.checkVisibility({ opacityProperty: true, visibilityProperty: true })
    && element.getClientRects().length > 0
    && withHolders(element).every((each) => !each.matches('[inert]'));
}

import { userEvent } from 'vitest/browser';
import { afterEach, expect, test, vi } from 'vitest';
import type { ElvErrorEvent } from '../../components/load-schedule/events.ts';
import { mountElement, part, parts, removeElements, sample, textOf } from './element-mount.ts';

afterEach(() => {
  removeElements();
  vi.restoreAllMocks();
});

const addressOf = (text: string) => URL.createObjectURL(new Blob([text]));
const notice = (element: Element) => textOf(element, 'elv-office-list .text');

test('the list of the office is held against the schedule: what differs is offered, and nothing changes by itself', async () => {
  const address = addressOf('Type,Draw (mA)\nLamp,300\nSensor,100\nBlind,90\n');
  const element = await mountElement({ content: sample(), attributes: { 'library-src': address } });
  const before = element.value;
  await expect.poll(() => notice(element)).toMatch(/, the list of the office, says otherwise in 1 row\.$/);
  expect(element.value).toBe(before);
  expect(element.dirty).toBe(false);
  part(element, 'elv-office-list [data-offer=show]')!.click();
  await expect.poll(() => part(element, 'elv-rows-offer tbody')).not.toBe(null);
  expect(parts(element, 'elv-rows-offer [type=radio]')).toEqual([]);
  // What the schedule does not use comes only where it is asked for.
  expect((part(element, 'elv-rows-offer [data-do=adds]') as HTMLInputElement).checked).toBe(false);
  // Put away, the focus is where it can be asked for again.
  await userEvent.keyboard('{Escape}');
  await expect.poll(() => part(element, 'elv-office-list [data-offer=show]:focus')).not.toBe(null);
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => part(element, 'elv-rows-offer tbody')).not.toBe(null);
  part(element, 'elv-rows-offer [data-do=take]')!.click();
  await expect.poll(() => element.schedule.rows('types').map(({ cells }) => [cells.type, cells.draw]))
    .toEqual([['Lamp', 300], ['Sensor', 100]]);
  await expect.poll(() => part(element, 'elv-office-list .line')).toBe(null);
  // Taken, it is at the rows, and a key takes it back.
  await userEvent.keyboard('{Control>}z{/Control}');
  expect(element.value).toBe(before);
  await expect.poll(() => notice(element)).toContain('in 1 row.');
  part(element, 'elv-office-list [data-offer=dismiss]')!.click();
  await expect.poll(() => part(element, 'elv-office-list .line')).toBe(null);
});

test('lists of a schedule file are offered together, and a sheet that is empty takes all of its list', async () => {
  const office = { format: 'elv-load-schedule', version: 2, sheets: { types: [{ type: 'Lamp', draw: 300 }], conductors: [{ conductor: 'A', size: 1.5 }], devices: [{ ref: 'D9' }] } };
  const element = await mountElement({ content: sample(), attributes: { 'library-src': addressOf(JSON.stringify(office)) } });
  await expect.poll(() => notice(element)).toContain('in 2 rows.');
  part(element, 'elv-office-list [data-offer=show]')!.click();
  await expect.poll(() => parts(element, 'elv-rows-offer h4').map(({ textContent }) => textContent)).toEqual([
    'Types: 1 changed, 0 new, 1 not in the list', 'Conductors: 0 changed, 1 new, 0 not in the list',
  ]);
  part(element, 'elv-rows-offer [data-do=adds]')!.click();
  part(element, 'elv-rows-offer [data-do=take]')!.click();
  await expect.poll(() => element.schedule.rows('conductors').map(({ cells }) => cells)).toEqual([{ conductor: 'A', size: 1.5 }]);
  expect(element.schedule.rows('devices')).toHaveLength(3);
});

test('a list that cannot be had or read is said quietly, told to the page, and tried again', async () => {
  const fetch = vi.spyOn(globalThis, 'fetch').mockResolvedValue(new Response('', { status: 404, statusText: 'Not Found' }));
  const errors: ElvErrorEvent[] = [];
  const element = await mountElement({ content: { details: {}, sheets: { types: [{ type: 'Lamp', draw: 350 }] } } });
  element.addEventListener('elv-error', (event) => { errors.push(event); });
  element.librarySrc = '/lists/types.csv';
  await expect.poll(() => notice(element)).toBe(
    'The list of the office, types.csv, could not be read: The server answered 404 Not Found. Check the address, or open a file instead.');
  expect(errors.map(({ name }) => name)).toEqual([new URL('/lists/types.csv', document.baseURI).href]);
  expect(element.matches(':state(invalid)')).toBe(false);
  fetch.mockResolvedValue(new Response('Type,Draw (mA)\nLamp,much\n'));
  part(element, 'elv-office-list [data-offer=again]')!.click();
  await expect.poll(() => notice(element)).toContain('Line 2, Draw (mA):');
  fetch.mockResolvedValue(new Response('Type,Draw (mA)\nLamp,300\n'));
  part(element, 'elv-office-list [data-offer=again]')!.click();
  await expect.poll(() => notice(element)).toContain('types.csv, the list of the office, says otherwise in 1 row.');
});

test('nothing is read while a person may only look', async () => {
  const fetch = vi.spyOn(globalThis, 'fetch');
  const element = await mountElement({ content: sample(), attributes: { 'library-src': addressOf('Type\nLamp\n'), readonly: '' } });
  await customElements.whenDefined('elv-office-list');
  await new Promise((resolve) => { setTimeout(resolve, 300); });
  expect([part(element, 'elv-office-list'), fetch.mock.calls.length]).toEqual([null, 0]);
  element.readonly = false;
  await expect.poll(() => fetch.mock.calls.length).toBe(1);
});

import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { ElvChangeEvent } from '../../components/load-schedule/events.ts';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { mountElement, part, removeElements, said, sample } from './element-mount.ts';

afterEach(removeElements);

function changesOf(element: LoadScheduleElement): ElvChangeEvent[] {
  const changes: ElvChangeEvent[] = [];
  element.addEventListener('elv-change', (event) => { changes.push(event); });
  return changes;
}

const demandOfL1 = (element: LoadScheduleElement) => element.schedule.value('supplies', 0, 'demand');

test('an edit by a person fires elv-change once, and the figures are there when it does', async () => {
  const element = await mountElement({ content: sample() });
  const changes = changesOf(element);
  let demand: unknown;
  element.addEventListener('elv-change', () => { demand = demandOfL1(element); });
  await element.select('devices', 'D1', 'qty');
  await userEvent.keyboard('5{Enter}');
  // 5 × 0.35 A × 0.8 + 6 × 0.1 A, by hand.
  expect(demand).toBeCloseTo(2, 9);
  expect(changes).toHaveLength(1);
  expect(changes[0]!.cause).toBe('act');
});

test('setting a property or calling a method is silent', async () => {
  const element = await mountElement();
  const changes = changesOf(element);
  element.schedule = new LoadSchedule(sample());
  element.value =
    JSON.stringify({ format: 'elv-load-schedule', version: 2, details: {}, sheets: { supplies: [{ rail: 'X1' }] } });
  expect(await element.importCsv('Rail,Rated (A)\r\nY1,5\r\nY2,10\r\n', 'supplies')).toEqual([]);
  expect(element.schedule.rows('supplies')).toHaveLength(2);
  element.undo();
  expect(element.schedule.rows('supplies')).toHaveLength(1);
  element.redo();
  await element.updateComplete;
  expect(changes).toEqual([]);
});

test('one undo takes back one action, whichever sheet it was on', async () => {
  const element = await mountElement({ content: sample() });
  await element.select('devices', 'D1', 'qty');
  await userEvent.keyboard('5{Enter}');
  await element.select('supplies', 'L1', 'rated');
  await userEvent.keyboard('4{Enter}');
  expect(element.schedule.value('supplies', 0, 'loading')).toBeCloseTo(0.5, 9);
  await userEvent.keyboard('{Control>}z{/Control}');
  expect(element.schedule.value('supplies', 0, 'rated')).toBe(1);
  expect(demandOfL1(element)).toBeCloseTo(2, 9);
  await userEvent.keyboard('{Control>}z{/Control}');
  expect(demandOfL1(element)).toBeCloseTo(1.16, 9);
  await expect.poll(() => said(element)).toContain('Undone');
  part(element, '[data-offer=redo]')!.click();
  expect(demandOfL1(element)).toBeCloseTo(2, 9);
  expect(element.schedule.value('supplies', 0, 'rated')).toBe(1);
});

test('the details are edited in place, and taken back like anything else', async () => {
  const element = await mountElement({ content: sample() });
  const changes = changesOf(element);
  const field = (part(element, '[data-key=revision]') as HTMLInputElement);
  field.focus();
  await userEvent.keyboard('B{Enter}');
  expect(element.schedule.document.details).toEqual({ project: 'Boat house', panel: 'KP-1', revision: 'B' });
  expect(changes.map(({ label }) => label)).toEqual(['Revision changed']);
  part(element, '[data-command=undo]')!.click();
  await expect.poll(() => field.value).toBe('');
  field.focus();
  await userEvent.keyboard('C{Escape}{Enter}');
  expect(element.schedule.document.details.revision).toBeUndefined();
});

test('the date is entered as files have it, and shown as the language does', async () => {
  const element = await mountElement({ content: sample(), attributes: { lang: 'de' } });
  const field = (part(element, '[data-key=date]') as HTMLInputElement);
  field.focus();
  await userEvent.keyboard('2026-03-02{Enter}');
  await expect.poll(() => field.value).toBe('02.03.2026');
  expect(element.schedule.document.details.date).toBe('2026-03-02');
  field.focus();
  expect(field.value).toBe('2026-03-02');
  // Whoever only looks changes nothing.
  field.blur();
  await expect.poll(() => field.value).toBe('02.03.2026');
  expect(element.schedule.document.details.date).toBe('2026-03-02');
});

test('a read-only element offers nothing that changes the schedule', async () => {
  const element = await mountElement({ content: sample(), attributes: { readonly: '' } });
  const before = element.value;
  for (const command of ['undo', 'redo', 'open', 'csvIn', 'insertBelow', 'removeRows']) {
    expect((part(element, `[data-command=${command}]`) as HTMLButtonElement).disabled, command).toBe(true);
  }
  expect((part(element, '[data-command=save]') as HTMLButtonElement).disabled).toBe(false);
  expect((part(element, '[data-key=project]') as HTMLInputElement).readOnly).toBe(true);
  await element.select('devices', 'D1', 'qty');
  await userEvent.keyboard('5{Enter}{Control>}z{/Control}{Delete}');
  expect(element.value).toBe(before);
});

test('a form is given the schedule, and resetting it takes everything back', async () => {
  const element = await mountElement({ content: sample(), attributes: { name: 'schedule' } });
  const form = document.createElement('form');
  document.body.append(form);
  form.append(element);
  const before = element.value;
  await element.select('devices', 'D1', 'qty');
  await userEvent.keyboard('5{Enter}');
  expect(new FormData(form).getAll('schedule')).toEqual([element.value]);
  expect(element.value).not.toBe(before);
  form.reset();
  expect(element.value).toBe(before);
  document.body.append(element);
  expect(new FormData(form).has('schedule')).toBe(false);
  form.remove();
});

test('in a disabled fieldset nothing can be changed', async () => {
  const element = await mountElement({ content: sample() });
  const fieldset = document.createElement('fieldset');
  document.body.append(fieldset);
  fieldset.append(element);
  fieldset.disabled = true;
  await expect.poll(() => (part(element, '[data-command=insertBelow]') as HTMLButtonElement).disabled).toBe(true);
  fieldset.disabled = false;
  await expect.poll(() => (part(element, '[data-command=insertBelow]') as HTMLButtonElement).disabled).toBe(false);
  fieldset.remove();
});

import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { addressOf, fileOf, one, qtyOf } from './draft-support.ts';
import { mountElement, part, parts, removeElements, textOf } from './element-mount.ts';

afterEach(() => {
  removeElements();
  for (const form of document.querySelectorAll('form')) form.remove();
});

/** An element in a form, in whose cell for the quantity of D1 a text stands that was typed and not entered. */
async function typing(text: string, content = one(1)): Promise<{
  element: LoadScheduleElement;
  form: HTMLFormElement
}> {
  const element = await mountElement({ content, attributes: { name: 'schedule' } });
  const form = document.createElement('form');
  form.addEventListener('submit', (event) => { event.preventDefault(); });
  document.body.append(form);
  const fieldset = document.createElement('fieldset');
  form.append(fieldset);
  fieldset.append(element);
  await element.updateComplete;
  await type(element, 'D1', text);
  return { element, form };
}

async function type(element: LoadScheduleElement, row: string | number, text: string): Promise<void> {
  expect(await element.select('devices', row, 'qty')).toBe(true);
  await userEvent.keyboard(text);
  expect(editor(element)?.value).toBe(text);
}

/** The open editor of a cell. */
function editor(element: Element): HTMLTextAreaElement | undefined {
  return parts(element, 'textarea.handsontableInput')
    .find((each) => each.closest('.ht_editor_hidden') === null) as HTMLTextAreaElement | undefined;
}

const devicesIn = (value: FormDataEntryValue | null): readonly { qty: unknown }[] =>
  (JSON.parse(value as string) as { sheets: { devices: { qty: unknown }[] } }).sheets.devices;

/** What the list of what was refused says. */
const refused = (element: Element) =>
  [textOf(element, '.problems h3'), ...parts(element, '.problems li').map((each) => each.textContent)];

const KEPT = 'What was being typed was not taken over. It is kept here until it is dismissed.';
const NO_NUMBER =
  'Devices, row 1: many – Qty: “many” is not a number; a whole number (0 or more) is allowed. Type digits, or nothing.';

test('what stands in an open editor is in the value and in the data of the form, and a person types on', async () => {
  const { element, form } = await typing('1');
  expect(devicesIn(element.value)[0]!.qty).toBe(1);
  await userEvent.keyboard('2');
  expect(devicesIn(element.value)[0]!.qty).toBe(12);
  expect(devicesIn(new FormData(form).get('schedule'))[0]!.qty).toBe(12);
  expect(element.toJSON()).toMatchObject({ sheets: { devices: [{ qty: 12 }] } });
  // A page that looks at the value now and then leaves no steps to undo.
  expect([editor(element)?.value, qtyOf(element), element.schedule.undoLabel]).toEqual(['12', 1, undefined]);
  await userEvent.keyboard('3{Enter}');
  expect([qtyOf(element), devicesIn(element.value)[0]!.qty]).toEqual([123, 123]);
  element.undo();
  expect(qtyOf(element)).toBe(1);
});

test('a row that is being begun is in the value, and a text that is no number is not, and stays where it is',
  async () => {
  const element = await mountElement({ content: one(1) });
  await element.select('devices', 1, 'qty');
  await userEvent.keyboard('{ArrowDown}7');
  expect(devicesIn(element.value).map(({ qty }) => qty)).toEqual([1, 7]);
  await userEvent.keyboard('{Escape}');
  expect(devicesIn(element.value).map(({ qty }) => qty)).toEqual([1]);
  await type(element, 'D1', 'many');
  expect(devicesIn(element.value)[0]!.qty).toBe(1);
  expect(editor(element)?.value).toBe('many');
});

test('what stands in a field of the title block is in the value', async () => {
  const element = await mountElement({ content: one(1), key: null });
  const field = part(element, 'elv-details-strip [data-key=project]') as HTMLInputElement;
  field.focus();
  await userEvent.keyboard('Quay');
  expect(JSON.parse(element.value)).toMatchObject({ details: { project: 'Quay' } });
  expect(element.schedule.undoLabel).toBeUndefined();
  element.readonly = true;
  await element.updateComplete;
  expect(element.schedule.document.details.project).toBe('Quay');
});

test('a form that is sent takes over what is being typed', async () => {
  const { element, form } = await typing('8');
  form.requestSubmit();
  expect([qtyOf(element), editor(element), element.dirty]).toEqual([8, undefined, true]);
});

/** What a host does to an element while a person types. */
const INTERRUPTIONS: readonly (readonly [string, (element: LoadScheduleElement) => unknown])[] = [
  ['disabled', (element) => { element.disabled = true; }],
  ['readonly', (element) => { element.readonly = true; }],
  [
    'a part of the form that is disabled',
    (element) => { (element.parentElement as HTMLFieldSetElement).disabled = true; },
  ],
  ['lang', (element) => { element.lang = 'de'; }],
  ['removal', (element) => { element.remove(); }],
  ['sending the form', (element) => { element.form!.requestSubmit(); }],
  ['another sheet', (element) => { element.showSheet('types'); }],
];

test.each(INTERRUPTIONS)('%s: what is being typed is taken over first', async (_name, interrupt) => {
  const { element } = await typing('8');
  const before = element.dirty;
  await interrupt(element);
  await expect.poll(() => qtyOf(element)).toBe(8);
  expect([before, element.dirty, element.schedule.undoLabel]).toEqual([false, true, 'Edit of Qty']);
  expect(editor(element)).toBeUndefined();
});

test.each(INTERRUPTIONS)('%s: a text that cannot be read is kept and said', async (name, interrupt) => {
  const { element, form } = await typing('many');
  await interrupt(element);
  if (name === 'removal') {
    await new Promise((resolve) => { setTimeout(resolve, 50); });
    form.append(element);
  }
  await expect.poll(() => refused(element)).toEqual([KEPT, NO_NUMBER]);
  expect([qtyOf(element), element.dirty]).toEqual([1, false]);
});

test.each<[string, (element: LoadScheduleElement) => unknown]>([
  ['src', (element) => { element.src = addressOf(5); }],
  ['openFile', (element) => element.openFile({ name: 'a.json', text: fileOf(5) })],
])('%s: what is being typed can be had back by undoing', async (_name, give) => {
  const { element } = await typing('8');
  await give(element);
  await expect.poll(() => qtyOf(element)).toBe(5);
  element.undo();
  expect(qtyOf(element)).toBe(8);
});

test.each<[string, (element: LoadScheduleElement) => unknown]>([
  ['src', (element) => { element.src = addressOf(5); }],
  ['value', (element) => { element.value = fileOf(5); }],
  ['schedule', (element) => { element.schedule = new LoadSchedule(one(5)); }],
  ['openFile', (element) => element.openFile({ name: 'a.json', text: fileOf(5) })],
])('%s: a text that cannot be read is kept and said', async (_name, give) => {
  const { element } = await typing('many');
  await give(element);
  await expect.poll(() => qtyOf(element)).toBe(5);
  await expect.poll(() => refused(element)).toEqual([KEPT, NO_NUMBER]);
});

test('another schedule: what is being typed belongs to the one before', async () => {
  const { element } = await typing('8');
  const { schedule } = element;
  element.schedule = new LoadSchedule(one(5));
  expect([schedule.rows('devices')[0]!.cells.qty, qtyOf(element)]).toEqual([8, 5]);
});

test('in another language a number is read as it was typed', async () => {
  const { element } = await typing('1');
  await userEvent.keyboard('{Escape}');
  await element.select('devices', 1, 'diversity');
  await userEvent.keyboard('0.5');
  element.lang = 'de';
  await expect.poll(() => element.schedule.rows('devices')[0]!.cells.diversity).toBe(0.5);
});

test('an element that is moved lets a person type on', async () => {
  const { element } = await typing('8');
  const place = document.createElement('div');
  document.body.append(place);
  place.append(element);
  await new Promise((resolve) => { setTimeout(resolve, 50); });
  expect([qtyOf(element), devicesIn(element.value)[0]!.qty]).toEqual([1, 8]);
  place.remove();
});

test('a file that is saved by a key holds what is being typed', async () => {
  const { element } = await typing('8');
  await userEvent.keyboard('{Control>}e{/Control}');
  expect(qtyOf(element)).toBe(8);
});

import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { insertRows, SHEET_NAMES } from '../../src/schedule/index.ts';
import { addressOf, fileOf, one, qtyOf } from './draft-support.ts';
import { mountElement, part, removeElements, said, textOf } from './element-mount.ts';

const LOADING = 'The schedule is still being read. Wait until it is shown, or cancel the reading.';
const FAILED = 'The schedule of this page could not be read. Open a file or begin a schedule first.';

let form: HTMLFormElement;
/** What the server was sent. */
let sent: (FormDataEntryValue | null)[];

beforeEach(() => {
  form = document.createElement('form');
  sent = [];
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    sent.push(new FormData(form).get('schedule'));
  });
  document.body.append(form);
});

afterEach(() => {
  removeElements();
  form.remove();
  vi.restoreAllMocks();
});

async function inForm(src: string, attributes: Readonly<Record<string, string>> = {}): Promise<LoadScheduleElement> {
  const element = await mountElement({ key: null, attributes: { name: 'schedule', ...attributes, src } });
  form.append(element);
  return element;
}

/** Lets answers of servers wait until they are given; as any server, it ends an answer that is not waited for. */
function server(): (answer: Response) => void {
  const waiting: ((answer: Response) => void)[] = [];
  vi.spyOn(globalThis, 'fetch').mockImplementation((_address, { signal } = {}) => new Promise((resolve, reject) => {
    waiting.push(resolve);
    signal!.addEventListener('abort', () => { reject(signal!.reason as Error); });
  }));
  return (answer) => { waiting.at(-1)!(answer); };
}

/** That neither a person nor a script is given a schedule. */
function expectNothingToSend(element: LoadScheduleElement, sentence: string): void {
  expect([element.validity.valid, element.validationMessage]).toEqual([false, sentence]);
  expect([element.value, JSON.stringify(element), new FormData(form).has('schedule')]).toEqual(['', 'null', false]);
  form.requestSubmit();
  expect(sent).toEqual([]);
  form.noValidate = true;
  form.requestSubmit();
  expect(sent.splice(0)).toEqual([null]);
  form.noValidate = false;
}

function expectToSend(element: LoadScheduleElement, qty: number): void {
  expect([qtyOf(element), element.validationMessage]).toEqual([qty, '']);
  form.requestSubmit();
  expect(sent.splice(0)).toEqual([element.value]);
  expect(JSON.parse(element.value)).toMatchObject({ sheets: { devices: [{ qty }] } });
}

/** Does what a person does who begins a schedule. */
function begin({ schedule }: LoadScheduleElement, qty: number): void {
  schedule.act('Device row added', insertRows(schedule.document, 'devices', 0, [{ qty }]));
}

test('while src is on its way there is no value, and the form is not sent', async () => {
  const answer = server();
  const element = await inForm('real.schedule.json');
  expectNothingToSend(element, LOADING);
  // What is begun meanwhile is not the schedule that is on its way.
  begin(element, 5);
  await element.updateComplete;
  expectNothingToSend(element, LOADING);
  answer(new Response(fileOf(3)));
  await expect.poll(() => qtyOf(element)).toBe(3);
  await element.updateComplete;
  expectToSend(element, 3);
});

test('this holds from the moment in which src is set, also where another schedule is shown', async () => {
  const answer = server();
  const element = await mountElement({ content: one(1), key: null, attributes: { name: 'schedule' } });
  form.append(element);
  await element.updateComplete;
  expectToSend(element, 1);
  element.src = 'other.schedule.json';
  expectNothingToSend(element, LOADING);
  await element.updateComplete;
  element.src = null;
  await element.updateComplete;
  expectToSend(element, 1);
  element.src = 'third.schedule.json';
  await element.updateComplete;
  answer(new Response(fileOf(2)));
  await expect.poll(() => qtyOf(element)).toBe(2);
  await element.updateComplete;
  expectToSend(element, 2);
});

test.each([
  ['the server has none', new Response('', { status: 404 })],
  ['it is no schedule', new Response('{"no": "schedule"}')],
  ['it is damaged', new Response(fileOf(1).slice(0, 30))],
])('after src failed, because %s, there is no value until a person begins something', async (_case, failed) => {
  const answer = server();
  const element = await inForm('real.schedule.json');
  answer(failed);
  await expect.poll(() => element.validationMessage).toBe(FAILED);
  expectNothingToSend(element, FAILED);
  begin(element, 5);
  await element.updateComplete;
  expectToSend(element, 5);
  element.undo();
  await element.updateComplete;
  expectNothingToSend(element, FAILED);
});

test.each<[string, (element: LoadScheduleElement) => unknown]>([
  ['a person opens a file', (element) => element.openFile({ name: 'a.json', text: fileOf(5) })],
  ['the page gives a value', (element) => { element.value = fileOf(5); }],
  ['the page gives another src', (element) => {
    vi.restoreAllMocks();
    element.src = addressOf(5);
  }],
])('after src failed, %s, and there is a value', async (_case, give) => {
  const answer = server();
  const element = await inForm('real.schedule.json');
  answer(new Response('', { status: 500 }));
  await expect.poll(() => element.validationMessage).toBe(FAILED);
  give(element);
  await expect.poll(() => qtyOf(element)).toBe(5);
  await element.updateComplete;
  expectToSend(element, 5);
});

test('the value of an element in which nothing was shown takes even what looks the same', async () => {
  const answer = server();
  const element = await inForm('real.schedule.json');
  answer(new Response('', { status: 500 }));
  await expect.poll(() => element.validationMessage).toBe(FAILED);
  const empty = await mountElement({ key: null });
  element.value = empty.value;
  await element.updateComplete;
  expect([element.value, element.validationMessage]).toEqual([empty.value, '']);
});

test('without a src an empty schedule is a value', async () => {
  const element = await mountElement({ key: null, attributes: { name: 'schedule' } });
  form.append(element);
  await element.updateComplete;
  form.requestSubmit();
  expect(sent).toEqual([element.value]);
  expect(SHEET_NAMES.every((sheet) => element.schedule.rows(sheet).length === 0)).toBe(true);
});

test('a page for signing in, in the place of src, is said to be one', async () => {
  const answer = server();
  const element = await inForm('real.schedule.json');
  answer(new Response('<!DOCTYPE html><title>Sign in</title><form><input type=password></form>'));
  await expect.poll(() => textOf(element, '.problems li'))
    .toBe('The server answered with a web page in the place of a schedule, '
    + 'as it does where one must sign in first. Sign in and load the page again, or check the address.');
  expect(textOf(element, '.problems h3')).toContain('real.schedule.json was not read');
  expectNothingToSend(element, FAILED);
});

test('a load table in HTML, which carries its schedule, is a src as any', async () => {
  const answer = server();
  const element = await inForm('table.html');
  const carried = fileOf(6).replaceAll('"', '&quot;');
  answer(new Response(`<!doctype html><html><template id="elv-load-schedule">${carried}</template></html>`));
  await expect.poll(() => qtyOf(element)).toBe(6);
});

test.each<[
  Record<string, string>,
]>([
  [{}], [{ readonly: '' }],
])('a src that never ends is said to be on its way, and can be cancelled, with %o', async (attributes) => {
  server();
  const errors: string[] = [];
  const element = await inForm('endless.schedule.json', attributes);
  element.addEventListener('elv-error', ({ name }) => { errors.push(name); });
  await expect.poll(() => said(element)).toBe('Reading endless.schedule.json …');
  expect(element.matches(':state(computing)')).toBe(true);
  const cancel = part(element, '[data-offer=cancelReading]')!;
  expect(cancel.textContent).toBe('Cancel the reading');
  cancel.click();
  await expect.poll(() => textOf(element, '.problems li'))
    .toBe('Reading it was cancelled. Open a file, or load the page again.');
  expect(errors).toEqual(['endless.schedule.json']);
  await element.updateComplete;
  expect([said(element), element.value, element.validationMessage]).toEqual(['', '', FAILED]);
});

import { afterEach, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { ElvSaveEvent } from '../../components/load-schedule/index.ts';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { writeSchedule } from '../../src/exchange/index.ts';
import { enter, fileOf, freshKey, kept, one, qtyOf } from './draft-support.ts';
import { mountElement, part, removeElements, said, textOf } from './element-mount.ts';
import { savedFiles } from './support/saved-files.ts';

afterEach(() => {
  removeElements();
  vi.restoreAllMocks();
});

/** A page that keeps schedules: what it was given, and how each is answered. */
function keeper(element: LoadScheduleElement) {
  const given: ElvSaveEvent[] = [];
  const answers: { done(): void; fail(error?: unknown): void }[] = [];
  element.addEventListener('elv-save', (event) => {
    given.push(event);
    event.respondWith(new Promise<void>((done, fail) => { answers.push({ done, fail }); }));
  });
  return { given, answers };
}

const save = (element: LoadScheduleElement) => { part(element, '[data-command=save]')!.click(); };
const standing = (element: LoadScheduleElement) => textOf(element, '#saving');
const states = (element: Element) => ['dirty', 'saving', 'failed'].filter((state) => element.matches(`:state(${state})`));

/** SHA-256 by the browser. */
async function digestOf(text: string): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

test('a page takes the schedule over, with its digest and that of what it began from; it is saved when the page says so', async () => {
  const files = savedFiles();
  const element = await mountElement({ content: one(1) });
  const { given, answers } = keeper(element);
  enter(element, 2);
  save(element);
  await expect.poll(() => standing(element)).toBe('Saving…');
  expect(states(element)).toEqual(['dirty', 'saving']);
  const [{ name, value, digest, base }] = given as [ElvSaveEvent];
  expect([name, value, digest]).toEqual(['load.schedule.json', element.value, await digestOf(element.value)]);
  // It was put in as an object, of which no page has a text.
  expect(base).toBeUndefined();
  answers[0]!.done();
  await expect.poll(() => standing(element)).toMatch(/^Saved \d\d:\d\d$/);
  expect([states(element), element.dirty, files]).toEqual([[], false, []]);
  // What was kept last is what the next one begins from.
  enter(element, 3);
  await expect.poll(() => standing(element)).toBe('');
  save(element);
  await expect.poll(() => given.length).toBe(2);
  expect(given[1]!.base).toBe(digest);
  answers[1]!.done();
  await expect.poll(() => states(element)).toEqual([]);
});

test('what the page gave is what it began from, whatever was done since', async () => {
  const element = await mountElement();
  const { given } = keeper(element);
  element.value = fileOf(7);
  const began = element.value;
  for (const qty of [8, 9]) enter(element, qty);
  save(element);
  expect(given[0]!.base).toBe(await digestOf(began));
  expect(began).toBe(writeSchedule(one(7)));
});

test('Ctrl+S saves too; an edit while the page is at it is neither lost nor called saved, and the next save waits for its turn', async () => {
  const element = await mountElement({ content: one(1) });
  const { given, answers } = keeper(element);
  enter(element, 2);
  part(element, '[data-sheet=devices]')!.focus();
  await userEvent.keyboard('{Control>}s{/Control}');
  await expect.poll(() => given.length).toBe(1);
  enter(element, 3);
  save(element);
  save(element);
  expect(given).toHaveLength(1);
  answers[0]!.done();
  await expect.poll(() => given.length).toBe(2);
  expect([element.dirty, states(element)]).toEqual([true, ['dirty', 'saving']]);
  expect(JSON.parse(given[1]!.value)).toEqual(element.toJSON());
  answers[1]!.done();
  await expect.poll(() => states(element)).toEqual([]);
  expect([given.length, qtyOf(element)]).toEqual([2, 3]);
});

test('a page that cannot keep it says why; nothing is lost, the draft stays, and saving again may do', async () => {
  const key = freshKey();
  const element = await mountElement({ content: one(1), attributes: { 'storage-key': key } });
  const { answers } = keeper(element);
  enter(element, 2);
  await expect.poll(async () => (await kept(key)).length).toBe(1);
  save(element);
  await expect.poll(() => answers.length).toBe(1);
  answers[0]!.fail(new Error('The store is full.'));
  await expect.poll(() => standing(element)).toBe('Not saved');
  expect(said(element)).toContain('Not saved: The store is full. Nothing is lost here: save again.');
  expect([states(element), element.dirty, await kept(key)]).toEqual([['dirty', 'failed'], true, [expect.anything()]]);
  save(element);
  await expect.poll(() => answers.length).toBe(2);
  answers[1]!.fail();
  await expect.poll(() => said(element)).toContain('Not saved; the page does not say why.');
  save(element);
  await expect.poll(() => answers.length).toBe(3);
  answers[2]!.done();
  await expect.poll(() => states(element)).toEqual([]);
  await expect.poll(async () => (await kept(key)).every(({ ended }) => ended)).toBe(true);
});

test('what became of one schedule is not said of another that is shown by then', async () => {
  const element = await mountElement({ content: one(1) });
  const { answers } = keeper(element);
  enter(element, 2);
  save(element);
  await expect.poll(() => standing(element)).toBe('Saving…');
  element.value = fileOf(5);
  await expect.poll(() => standing(element)).toBe('');
  enter(element, 6);
  answers[0]!.done();
  await new Promise((later) => { setTimeout(later, 50); });
  expect([standing(element), states(element)]).toEqual(['', ['dirty']]);
});

test('a page that cancels the event saves it in its own way; one that does nothing leaves the file to the person', async () => {
  const files = savedFiles();
  const element = await mountElement({ content: one(1) });
  const values: string[] = [];
  const own = (event: ElvSaveEvent) => {
    event.preventDefault();
    values.push(event.value);
  };
  element.addEventListener('elv-save', own);
  enter(element, 2);
  save(element);
  expect([values, files.length, element.dirty, standing(element)]).toEqual([[element.value], 0, true, '']);
  element.removeEventListener('elv-save', own);
  save(element);
  expect(files.map(({ name }) => name)).toEqual(['load.schedule.json']);
  expect(await files[0]!.text()).toBe(element.value);
});

test('the event is answered once, and while it is dispatched', async () => {
  savedFiles();
  const element = await mountElement({ content: one(1) });
  let late: ElvSaveEvent | undefined;
  const refusals: unknown[] = [];
  element.addEventListener('elv-save', (event) => {
    late = event;
    event.respondWith(Promise.resolve());
    try {
      event.respondWith(Promise.resolve());
    } catch (error) {
      refusals.push((error as DOMException).name);
    }
  });
  save(element);
  expect(() => { late!.respondWith(Promise.resolve()); }).toThrow('while elv-save is dispatched');
  expect(refusals).toEqual(['InvalidStateError']);
});

test('it is told in the language of the page, also where its words come later', async () => {
  const element = await mountElement({ content: one(1), attributes: { lang: 'de' } });
  const { answers } = keeper(element);
  save(element);
  await expect.poll(() => standing(element)).toBe('Wird gespeichert …');
  answers[0]!.done();
  await expect.poll(() => standing(element)).toMatch(/^Gespeichert \d\d:\d\d$/);
});

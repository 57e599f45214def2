import { afterEach, expect, test, vi } from 'vitest';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { enter, fileOf, freshKey, kept, notices, press, qtyOf, serve } from './draft-support.ts';
import { mountElement, removeElements } from './element-mount.ts';

vi.setConfig({ testTimeout: 20_000 });

afterEach(() => {
  removeElements();
  vi.restoreAllMocks();
});

/** Visits a page whose file says 1, and waits until it shows a quantity. */
async function visit(attributes: Readonly<Record<string, string>>, qty = 1): Promise<LoadScheduleElement> {
  removeElements();
  serve('/a.json', fileOf(1));
  const element = await mountElement({ key: null, attributes: { src: '/a.json', ...attributes } });
  await expect.poll(() => qtyOf(element)).toBe(qty);
  return element;
}

/** Waits until the only draft under a key is written, with this many actions. */
async function written(key: string, count: number): Promise<void> {
  await expect.poll(() => kept(key)).toMatchObject([{ count }]);
}

/** Lets what was asked for be done, as far as there is something to be told. */
const settled = () => new Promise((resolve) => { setTimeout(resolve, 300); });

const RESTORED = [expect.stringMatching(/^Draft of .* restored: a\.json\.$/)];

test.each(['readonly', 'disabled'] as const)('a draft goes on after an element was %s for a while', async (lock) => {
  const key = freshKey();
  const element = await visit({ 'storage-key': key });
  enter(element, 5);
  await written(key, 1);
  element[lock] = true;
  await settled();
  element[lock] = false;
  await settled();
  expect([qtyOf(element), notices(element)]).toEqual([5, []]);
  enter(element, 6);
  await written(key, 2);
  const next = await visit({ 'storage-key': key }, 6);
  await expect.poll(() => notices(next)).toEqual(RESTORED);
});

test('a draft ends when the page keeps it while the element is read-only', async () => {
  const key = freshKey();
  const element = await visit({ 'storage-key': key });
  enter(element, 5);
  await written(key, 1);
  element.readonly = true;
  await settled();
  await element.markSaved(element.value);
  element.readonly = false;
  await expect.poll(() => kept(key)).toMatchObject([{ ended: true }]);
  expect([element.dirty, notices(element)]).toEqual([false, []]);
});

test('an element that is read-only when it names another file begins no draft', async () => {
  const key = freshKey();
  const element = await visit({ 'storage-key': key });
  enter(element, 5);
  await written(key, 1);
  element.readonly = true;
  serve('/b.json', fileOf(2));
  element.src = '/b.json';
  await expect.poll(() => qtyOf(element)).toBe(2);
  enter(element, 7);
  await settled();
  await written(key, 1);
});

test('a key that is given after an edit begins a draft that goes on from the page’s file', async () => {
  const key = freshKey();
  const element = await visit({});
  enter(element, 4);
  enter(element, 5);
  element.storageKey = key;
  await written(key, 0);
  expect(notices(element)).toEqual([]);
  const next = await visit({ 'storage-key': key }, 5);
  await expect.poll(() => notices(next)).toEqual(RESTORED);
  press(next, 'restored', 'discard');
  await expect.poll(() => qtyOf(next)).toBe(1);
});

test('another key that is given after an edit has the page’s file for its draft too', async () => {
  const [before, key] = [freshKey(), freshKey()];
  const element = await visit({ 'storage-key': before });
  enter(element, 5);
  await written(before, 1);
  element.storageKey = key;
  await settled();
  enter(element, 6);
  await written(key, 1);
  const next = await visit({ 'storage-key': key }, 6);
  await expect.poll(() => notices(next)).toEqual(RESTORED);
});

test('a key that is given after the page has kept an edit has what was kept for the page’s file', async () => {
  const key = freshKey();
  const element = await visit({});
  enter(element, 5);
  await element.markSaved();
  element.storageKey = key;
  await settled();
  enter(element, 6);
  await written(key, 1);
  removeElements();
  serve('/a.json', fileOf(5));
  const next = await mountElement({ key: null, attributes: { src: '/a.json', 'storage-key': key } });
  await expect.poll(() => [qtyOf(next), notices(next)]).toEqual([6, RESTORED]);
});

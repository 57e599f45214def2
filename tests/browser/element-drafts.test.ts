import axe from 'axe-core';
import { afterEach, expect, test, vi } from 'vitest';
import type { Drafts } from '../../components/drafts/index.ts';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { drop, mountElement, part, removeElements, said, textOf } from './element-mount.ts';
import {
  addressOf, change, enter, fileOf, freshKey, kept, notices, one, openTab, press, qtyOf, serve,
} from './draft-support.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';

vi.setConfig({ testTimeout: 20_000 });

afterEach(() => {
  removeElements();
  for (const frame of document.querySelectorAll('body > iframe')) frame.remove();
  vi.restoreAllMocks();
});

const mount = (key: string, attributes: Readonly<Record<string, string>> = {}) =>
  mountElement({ key: null, attributes: { 'storage-key': key, ...attributes } });

/** Waits until the browser keeps a draft with this many actions under a key. */
async function written(key: string, count: number): Promise<void> {
  await expect.poll(async () => (await kept(key)).map((head) => head.count)).toContain(count);
}

/** Leaves a draft of a page behind, whose file says 1 and in which a person entered quantities. */
async function leaveDraft(key: string, ...quantities: number[]): Promise<void> {
  const tab = await openTab({ 'storage-key': key, src: addressOf(1) });
  await expect.poll(() => qtyOf(tab.element)).toBe(1);
  for (const qty of quantities) enter(tab.element, qty);
  await written(key, quantities.length);
  tab.kill();
}

test('a tab that is killed loses nothing: its work is shown in the place of the page’s file, and can be undone',
  async () => {
  const key = freshKey();
  await leaveDraft(key, 5, 6);
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(6);
  await expect.poll(() => notices(element)[0]).toMatch(/^Draft of \d\d:\d\d restored: a schedule without a name\.$/);
  expect(element.dirty).toBe(true);
  expect(element.undo()).toBe('Quantity 6');
  expect(element.undo()).toBe('Quantity 5');
  expect(qtyOf(element)).toBe(1);
  element.redo();
  expect(qtyOf(element)).toBe(5);
});

test('an edit is kept within a second', async () => {
  const key = freshKey();
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(1);
  enter(element, 5);
  await new Promise((resolve) => { setTimeout(resolve, 1000); });
  expect(await kept(key)).toMatchObject([{ count: 1, ended: false }]);
});

test('who goes on with a draft has accepted it', async () => {
  const key = freshKey();
  await leaveDraft(key, 5);
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => notices(element)).toHaveLength(1);
  enter(element, 7);
  await expect.poll(() => notices(element)).toEqual([]);
  await written(key, 2);
});

test('a draft that is discarded gives way to the page’s file, and can be had back', async () => {
  const key = freshKey();
  await leaveDraft(key, 5);
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => notices(element)).toHaveLength(1);
  press(element, 'restored', 'discard');
  await expect.poll(() => qtyOf(element)).toBe(1);
  await expect.poll(() => notices(element)[0]).toMatch(/discarded: a schedule without a name\.$/);
  expect(element.dirty).toBe(false);
  press(element, 'discarded', 'show');
  await expect.poll(() => qtyOf(element)).toBe(5);
  expect(await kept(key)).toMatchObject([{ ended: false }]);
  press(element, 'restored', 'discard');
  await expect.poll(() => qtyOf(element)).toBe(1);
  element.remove();
  const next = await mount(key, { src: addressOf(1) });
  await expect.poll(() => qtyOf(next)).toBe(1);
  expect(await kept(key)).toEqual([]);
});

test('a draft is shown although the page’s file cannot be had, with a word', async () => {
  const key = freshKey();
  serve('/gone.json', fileOf(1));
  const before = await mount(key, { src: '/gone.json' });
  await expect.poll(() => qtyOf(before)).toBe(1);
  enter(before, 5);
  await written(key, 1);
  before.remove();
  vi.restoreAllMocks();
  const element = await mount(key, { src: '/gone.json' });
  await expect.poll(() => qtyOf(element)).toBe(5);
  expect(notices(element)).toEqual([expect.stringContaining(
    'restored: gone.json. The file of this page could not be read, so it is not known whether it was changed since.',
  )]);
  expect(textOf(element, '.problems h3')).toContain('was not read');
  press(element, 'unchecked', 'discard');
  await expect.poll(() => notices(element)[0]).toContain('discarded');
  // What was shown is still there, and kept anew as soon as a person goes on with it.
  expect(qtyOf(element)).toBe(5);
  enter(element, 6);
  await expect.poll(async () => (await kept(key)).filter(({ ended }) => !ended)).toHaveLength(1);
});

test.each([
  'two elements', 'two tabs',
])('the same draft twice: the second is told, and the work of both is kept: %s', async (way) => {
  const key = freshKey();
  const attributes = { 'storage-key': key, src: addressOf(1) };
  const first = way === 'two tabs' ? (await openTab(attributes)).element : await mount(key, attributes);
  await expect.poll(() => qtyOf(first)).toBe(1);
  enter(first, 5);
  await written(key, 1);
  const second = await mount(key, attributes);
  await expect.poll(() => notices(second))
    .toEqual(['The draft is open in another tab. What is entered here is kept as a draft of its own.']);
  await expect.poll(() => qtyOf(second)).toBe(1);
  enter(second, 50);
  enter(first, 6);
  await expect.poll(async () => (await kept(key)).map(({ count }) => count)).toEqual([2, 1]);
  enter(second, 60);
  await expect.poll(async () => (await kept(key)).map(({ count }) => count)).toEqual([2, 2]);
  expect(notices(first)).toEqual([]);
  second.remove();
  first.remove();
  // The newest is shown, the other offered; showing it keeps the one that was shown.
  const third = await mount(key, attributes);
  await expect.poll(() => qtyOf(third)).toBe(60);
  await expect.poll(() => notices(third)).toHaveLength(2);
  press(third, 'kept', 'show');
  await expect.poll(() => qtyOf(third)).toBe(6);
  await expect.poll(() => notices(third)).toHaveLength(2);
  press(third, 'kept', 'show');
  await expect.poll(() => qtyOf(third)).toBe(60);
});

test('where a page has no locks, the second to write goes on with a draft of its own, and is told', async () => {
  vi.spyOn(Navigator.prototype, 'locks', 'get').mockReturnValue(undefined as never);
  const key = freshKey();
  await leaveDraft(key, 5);
  const first = await mount(key, { src: addressOf(1) });
  const second = await mount(key, { src: addressOf(1) });
  await expect.poll(() => [qtyOf(first), qtyOf(second)]).toEqual([5, 5]);
  enter(first, 6);
  await written(key, 2);
  enter(second, 60);
  await expect.poll(() => notices(second)).toContainEqual(expect.stringContaining('The draft was changed elsewhere'));
  await expect.poll(() => kept(key)).toHaveLength(2);
});

test('two elements with different keys keep their own', async () => {
  const [keyA, keyB] = [freshKey(), freshKey()];
  const [a, b] = [await mount(keyA, { src: addressOf(1) }), await mount(keyB, { src: addressOf(2) })];
  await expect.poll(() => [qtyOf(a), qtyOf(b)]).toEqual([1, 2]);
  enter(a, 5);
  enter(b, 6);
  await written(keyA, 1);
  await written(keyB, 1);
  removeElements();
  const [c, d] = [await mount(keyA, { src: addressOf(1) }), await mount(keyB, { src: addressOf(2) })];
  await expect.poll(() => [qtyOf(c), qtyOf(d)]).toEqual([5, 6]);
});

test('a browser that cannot open its database yet, as when it is started again after a crash, is asked again',
  async () => {
    const key = freshKey();
    await leaveDraft(key, 5);
    vi.spyOn(indexedDB, 'open').mockImplementationOnce(() => { throw new DOMException('not yet', 'UnknownError'); });
    const element = await mount(key, { src: addressOf(1) });
    await expect.poll(() => qtyOf(element)).toBe(5);
    await expect.poll(() => notices(element)).toEqual([expect.stringContaining('restored')]);
  });

test.each<[string, () => void]>([
  [
    'IndexedDB refuses',
    () => {
      vi.spyOn(indexedDB, 'open').mockImplementation(() => { throw new DOMException('denied', 'SecurityError'); });
    },
  ],
  ['IndexedDB is missing', () => { vi.spyOn(window, 'indexedDB', 'get').mockReturnValue(undefined as never); }],
  ['IndexedDB never answers', () => {
    const silent = Object.assign(
      Object.create(IDBOpenDBRequest.prototype) as IDBOpenDBRequest, { addEventListener: () => undefined },
    );
    vi.spyOn(indexedDB, 'open').mockReturnValue(silent);
  }],
])('where a browser keeps nothing a person is told once, and everything else works: %s', async (_name, break_) => {
  vi.spyOn(console, 'warn').mockImplementation(() => undefined);
  break_();
  const element = await mount(freshKey(), { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(1);
  await expect.poll(() => notices(element)).toEqual([
    'This browser keeps no drafts here, as in a private window. Save the schedule as a file before leaving the page.',
  ]);
  enter(element, 5);
  press(element, 'unavailable', 'dismiss');
  await expect.poll(() => notices(element)).toEqual([]);
  enter(element, 6);
  await element.updateComplete;
  expect(notices(element)).toEqual([]);
  expect(qtyOf(element)).toBe(6);
});

test('a full disk is told once; as soon as there is room, everything is written', async () => {
  const key = freshKey();
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(1);
  enter(element, 5);
  await written(key, 1);
  const full = vi.spyOn(IDBObjectStore.prototype, 'add')
    .mockImplementation(() => { throw new DOMException('no room', 'QuotaExceededError'); });
  enter(element, 6);
  await expect.poll(() => notices(element))
    .toEqual(['This browser has no space for the draft. Save the schedule as a file before leaving the page.']);
  full.mockRestore();
  enter(element, 7);
  await written(key, 3);
  await expect.poll(() => notices(element)).toEqual([]);
});

test('a writing that the browser ends is tried again with the next action', async () => {
  const key = freshKey();
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(1);
  const put = vi.spyOn(
    IDBObjectStore.prototype, 'add'
  ).mockImplementation(function abort(this: IDBObjectStore): IDBRequest<IDBValidKey> {
    const request = this.get(0);
    this.transaction.abort();
    return request as IDBRequest<IDBValidKey>;
  });
  enter(element, 5);
  await expect.poll(() => notices(element))
    .toEqual(['The draft could not be written. Save the schedule as a file before leaving the page.']);
  put.mockRestore();
  enter(element, 6);
  await written(key, 2);
  await expect.poll(() => notices(element)).toEqual([]);
});

test('a draft of newer software is kept untouched, told, and can be saved as a file', async () => {
  const key = freshKey();
  await leaveDraft(key, 5);
  const [head] = await kept(key);
  const newer = { ...head!, version: 99 };
  await change('heads', newer);
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(1);
  await expect.poll(() => notices(element)[0])
    .toContain('was written by another version of this software. It is kept as it is');
  const saved = vi.spyOn(URL, 'createObjectURL');
  press(element, 'foreign', 'save');
  await expect.poll(() => saved.mock.calls.length).toBe(1);
  const text = await (saved.mock.calls[0]![0] as Blob).text();
  expect(JSON.parse(text)).toMatchObject(
    { format: 'elv-load-schedule-draft', version: 99, actions: [{ label: 'Quantity 5' }] }
  );
  enter(element, 7);
  await expect.poll(() => kept(key)).toHaveLength(2);
  expect((await kept(key))[0]).toEqual(newer);
});

test('a damaged draft is kept aside, and told', async () => {
  const key = freshKey();
  await leaveDraft(key, 5);
  const [head] = await kept(key);
  await change('entries', { nonsense: true }, [head!.id, 0]);
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(1);
  await expect.poll(() => notices(element)[0]).toContain('is damaged and cannot be shown. It is kept as it is');
  expect(await kept(key)).toEqual([head]);
});

/** The file as which a damaged draft is saved. */
async function savedFile(element: LoadScheduleElement): Promise<string> {
  const saved = vi.spyOn(URL, 'createObjectURL');
  press(element, 'damaged', 'save');
  await expect.poll(() => saved.mock.calls.length).toBe(1);
  return (saved.mock.calls[0]![0] as Blob).text();
}

test('the file of a damaged draft gives back what was done before the damage, as one action', async () => {
  const key = freshKey();
  await leaveDraft(key, 5, 6, 7);
  const [head] = await kept(key);
  await change('entries', { nonsense: true }, [head!.id, 3]);
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => notices(element)[0]).toContain('open that file to restore what can be read of it');
  await expect.poll(() => qtyOf(element)).toBe(1);
  const text = await savedFile(element);
  drop(element, 'draft.json', text);
  await expect.poll(() => qtyOf(element)).toBe(6);
  await expect.poll(() => said(element))
    .toContain(
      'draft.json: draft restored. The draft is damaged from action 3 of 3 on; everything before it is restored'
    );
  // No schedule file holds it yet.
  expect(element.dirty).toBe(true);
  part(element, '[data-offer=undo]')!.click();
  expect([qtyOf(element), element.schedule.undoLabel, element.dirty]).toEqual([1, undefined, false]);
});

test('the file of a draft that cannot be read is refused with a sentence, and changes nothing', async () => {
  const element = await mount(freshKey(), { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(1);
  const refused = async (file: object) => (
    await element.openFile({ name: 'draft.json', text: JSON.stringify({ format: 'elv-load-schedule-draft', ...file }) })
  )
    .map(({ message }) => message);
  expect(await refused({ version: 99, base: {}, actions: [] }))
    .toEqual(['The file has the version 99; versions 1 to 2 can be read here. Open it with newer software.']);
  expect(await refused({ version: 2, base: {}, actions: [] }))
    .toEqual([expect.stringContaining('nothing of it can be restored')]);
  expect(textOf(element, '.problems h3'))
    .toBe('draft.json was not read because of a problem. The schedule is as it was.');
  expect([qtyOf(element), element.schedule.undoLabel, element.dirty]).toEqual([1, undefined, false]);
});

test.each([
  'append', 'moveBefore',
] as const)('an element that is moved in the page goes on with its draft: %s', async (way) => {
  const key = freshKey();
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(1);
  enter(element, 5);
  const box = document.createElement('div');
  document.body.append(box);
  if (way === 'append') box.append(element);
  else (box as unknown as { moveBefore(node: Node, before: Node | null): void }).moveBefore(element, null);
  enter(element, 6);
  await written(key, 2);
  expect(await kept(key)).toHaveLength(1);
  expect(notices(element)).toEqual([]);
  box.remove();
});

test('an element that is removed and put back goes on with its draft; what was entered last is written at once',
  async () => {
  const key = freshKey();
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(1);
  enter(element, 5);
  element.remove();
  await written(key, 1);
  document.body.append(element);
  enter(element, 6);
  await written(key, 2);
  expect(await kept(key)).toHaveLength(1);
});

test('an element that is put back after another took its draft goes on with one of its own', async () => {
  const key = freshKey();
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(1);
  enter(element, 5);
  element.remove();
  await written(key, 1);
  const other = await mount(key, { src: addressOf(1) });
  await expect.poll(() => qtyOf(other)).toBe(5);
  document.body.append(element);
  await expect.poll(() => notices(element)).toContainEqual(expect.stringContaining('was changed elsewhere'));
  await expect.poll(() => kept(key)).toHaveLength(2);
});

test('a key that changes leaves the draft of the former, and does not put another in the place of what is shown',
  async () => {
  const [before, after] = [freshKey(), freshKey()];
  await leaveDraft(after, 9);
  const element = await mount(before, { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(1);
  enter(element, 5);
  element.storageKey = after;
  await expect.poll(() => notices(element)[0]).toMatch(/^There is another draft/);
  expect(qtyOf(element)).toBe(5);
  enter(element, 6);
  await expect.poll(() => kept(after)).toHaveLength(2);
  expect(await kept(before)).toMatchObject([{ count: 1 }]);
});

test('what the page puts in does not overwrite a draft: it is offered', async () => {
  const key = freshKey();
  const put = async (qty: number) => {
    const element = await mountElement({ key: null, content: one(qty), attributes: { 'storage-key': key } });
    // A person is not that quick.
    await (element as unknown as { readonly drafts: Drafts }).drafts.ready;
    return element;
  };
  const before = await put(3);
  enter(before, 5);
  await written(key, 1);
  before.remove();
  const element = await put(3);
  await expect.poll(() => notices(element)[0]).toMatch(/^There is another draft/);
  expect(qtyOf(element)).toBe(3);
  press(element, 'kept', 'show');
  await expect.poll(() => qtyOf(element)).toBe(5);
  press(element, 'restored', 'discard');
  await expect.poll(() => qtyOf(element)).toBe(3);
  element.remove();
  const changed = await put(4);
  enter(changed, 6);
  await written(key, 1);
  changed.remove();
  const other = await put(3);
  await expect.poll(() => notices(other)).toContainEqual(expect.stringContaining('of this page was changed since'));
});

test.each<[string, (element: Awaited<ReturnType<typeof mount>>) => void]>([
  ['value', (element) => { element.value = fileOf(4); }],
  ['schedule', (element) => { element.schedule = new LoadSchedule(one(4)); }],
])('what the page puts in later does not overwrite what a person did: %s', async (_name, put) => {
  const key = freshKey();
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(1);
  enter(element, 5);
  put(element);
  await expect.poll(() => qtyOf(element)).toBe(4);
  await expect.poll(() => notices(element)[0]).toMatch(/^There is another draft/);
  expect(element.dirty).toBe(false);
  press(element, 'kept', 'show');
  await expect.poll(() => qtyOf(element)).toBe(5);
});

test('a value that is refused leaves everything as it was', async () => {
  const key = freshKey();
  const element = await mount(key, { src: addressOf(1) });
  await expect.poll(() => qtyOf(element)).toBe(1);
  enter(element, 5);
  element.value = '{"format": "elv-load-schedule"';
  enter(element, 6);
  await written(key, 2);
  expect(await kept(key)).toHaveLength(1);
});

test('a draft ends when the page has kept it, and goes on when a person does', async () => {
  const key = freshKey();
  serve('/kept.json', fileOf(1));
  const element = await mount(key, { src: '/kept.json' });
  await expect.poll(() => qtyOf(element)).toBe(1);
  enter(element, 5);
  await written(key, 1);
  void element.markSaved();
  await expect.poll(() => kept(key)).toMatchObject([{ ended: true }]);
  expect(element.dirty).toBe(false);
  enter(element, 6);
  await expect.poll(() => kept(key)).toMatchObject([{ count: 2, ended: false }]);
  void element.markSaved();
  await expect.poll(() => kept(key)).toMatchObject([{ ended: true }]);
  element.remove();
  serve('/kept.json', fileOf(6));
  const next = await mount(key, { src: '/kept.json' });
  await expect.poll(() => qtyOf(next)).toBe(6);
  await expect.poll(() => kept(key)).toEqual([]);
  expect(notices(next)).toEqual([]);
});

test('a read-only element, and one without a key, keep and show no draft', async () => {
  const key = freshKey();
  await leaveDraft(key, 5);
  const opened = vi.spyOn(indexedDB, 'open');
  const locked = await mount(key, { src: addressOf(1), readonly: '' });
  const plain = await mountElement({ key: null, attributes: { src: addressOf(2) } });
  await expect.poll(() => [qtyOf(locked), qtyOf(plain)]).toEqual([1, 2]);
  enter(plain, 3);
  await new Promise((resolve) => { setTimeout(resolve, 400); });
  expect(opened).not.toHaveBeenCalled();
  expect(part(plain, 'elv-draft-notices')).toBeNull();
  locked.readonly = false;
  await expect.poll(() => qtyOf(locked)).toBe(5);
});

test('the notices are in the language of the page, and axe finds nothing in them', async () => {
  const key = freshKey();
  await leaveDraft(key, 5);
  const element = await mount(key, { lang: 'de', src: addressOf(1) });
  await expect.poll(() => notices(element)[0]).toMatch(/^Entwurf \(\d\d:\d\d\) wiederhergestellt: eine Leistungs/);
  const { violations } = await axe.run(part(element, 'elv-draft-notices')!, { resultTypes: ['violations'] });
  expect(violations).toEqual([]);
});

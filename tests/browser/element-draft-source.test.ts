import { afterEach, expect, test, vi } from 'vitest';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { mountElement, part, parts, removeElements, textOf } from './element-mount.ts';
import { change, enter, fileOf, freshKey, kept, notices, one, press, qtyOf, serve } from './draft-support.ts';

vi.setConfig({ testTimeout: 20_000 });

afterEach(() => {
  removeElements();
  vi.restoreAllMocks();
});

const mount = (key: string, src: string) => mountElement({ key: null, attributes: { 'storage-key': key, src } });

/** An element that shows a quantity of the page's file. */
async function shows(key: string, src: string, qty: number): Promise<LoadScheduleElement> {
  const element = await mount(key, src);
  await expect.poll(() => qtyOf(element)).toBe(qty);
  return element;
}

const named = (qty: number) => JSON.stringify({
  format: 'elv-load-schedule', version: 1, ...one(qty), details: { project: 'Boat house', panel: 'KP-1' },
});

/** Leaves a draft of a file behind, which says 1, and in which a person entered a quantity. */
async function leave(key: string, src: string, qty: number): Promise<void> {
  serve(src, named(1));
  const element = await shows(key, src, 1);
  enter(element, qty);
  await expect.poll(() => kept(key)).toContainEqual(expect.objectContaining({ count: 1, ended: false }));
  element.remove();
}

test('a notice names project, panel and file', async () => {
  const key = freshKey();
  await leave(key, '/plans/boat%20house.json?of=today', 5);
  const element = await shows(key, '/plans/boat%20house.json?of=today', 5);
  expect(notices(element)).toEqual([
    expect.stringMatching(/^Draft of \d\d:\d\d restored: Boat house, KP-1, boat house\.json\.$/),
  ]);
});

test('a page’s file that changed since is shown; a person sees what changed, and takes the draft', async () => {
  const key = freshKey();
  await leave(key, '/a.json', 5);
  serve('/a.json', named(2));
  const element = await shows(key, '/a.json', 2);
  await expect.poll(() => notices(element)).toEqual([expect.stringMatching(
    /^The schedule of this page was changed since the draft of \d\d:\d\d was begun: Boat house, KP-1, a\.json\./,
  )]);
  press(element, 'changed', 'compare');
  await expect.poll(() => textOf(element, 'elv-draft-notices .changes')).toMatch(
    /Changed in the schedule of this page.*Qty 1 → 2.*Changed in the draft.*Qty 1 → 5/,
  );
  press(element, 'changed', 'show');
  await expect.poll(() => qtyOf(element)).toBe(5);
  await expect.poll(() => part(element, 'elv-draft-notices .changes')).toBeNull();
  await expect.poll(async () => (await kept(key))[0]?.files).toHaveLength(2);
  element.remove();
  // Who chose has seen that file.
  const next = await shows(key, '/a.json', 5);
  expect(notices(next)).toEqual([expect.stringMatching(/^Draft of .* restored/)]);
});

test('a page’s file that changed since is chosen over the draft, which can be had back', async () => {
  const key = freshKey();
  await leave(key, '/a.json', 5);
  serve('/a.json', named(2));
  const element = await shows(key, '/a.json', 2);
  await expect.poll(() => notices(element)).toHaveLength(1);
  press(element, 'changed', 'discard');
  await expect.poll(() => kept(key)).toMatchObject([{ ended: true }]);
  await expect.poll(() => notices(element)).toEqual([expect.stringContaining('discarded')]);
  expect(qtyOf(element)).toBe(2);
  press(element, 'discarded', 'show');
  await expect.poll(() => qtyOf(element)).toBe(5);
});

test('a file that only looks different is the same', async () => {
  const key = freshKey();
  await leave(key, '/a.json', 5);
  serve('/a.json', JSON.stringify(JSON.parse(named(1)), null, 4));
  const element = await shows(key, '/a.json', 5);
  expect(notices(element)[0]).toMatch(/^Draft of .* restored/);
});

test('a draft that does not say from what it began is held against what it began with', async () => {
  const key = freshKey();
  await leave(key, '/a.json', 5);
  const { source: _source, files: _files, title: _title, ...old } = (await kept(key))[0]!;
  await change('heads', old);
  (await shows(key, '/a.json', 5)).remove();
  await change('heads', old);
  serve('/a.json', named(2));
  const element = await shows(key, '/a.json', 2);
  await expect.poll(() => notices(element)).toEqual([expect.stringContaining('was begun: a schedule without a name.')]);
});

test('with one key for two pages, neither shows the draft of the other', async () => {
  const key = freshKey();
  await leave(key, '/a.json', 5);
  serve('/b.json', fileOf(2));
  const other = await shows(key, '/b.json', 2);
  await expect.poll(() => notices(other)).toEqual([expect.stringMatching(
    /^The draft of \d\d:\d\d is of another schedule: Boat house, KP-1, a\.json\. It is not shown here/,
  )]);
  expect(part(other, '[data-kind=other] [data-offer=show]')).toBeNull();
  // Discarded and had back, it is one of another schedule still.
  press(other, 'other', 'discard');
  await expect.poll(() => part(other, '[data-kind=discarded]')).not.toBeNull();
  press(other, 'discarded', 'show');
  await expect.poll(() => part(other, '[data-kind=other]')).not.toBeNull();
  expect(qtyOf(other)).toBe(2);
  enter(other, 6);
  await expect.poll(() => kept(key)).toHaveLength(2);
  other.remove();
  const first = await shows(key, '/a.json', 5);
  first.remove();
  await shows(key, '/b.json', 6);
});

test('an element whose file changes under one key shows each with its own draft', async () => {
  const key = freshKey();
  serve('/a.json', named(1));
  serve('/b.json', fileOf(2));
  const element = await shows(key, '/a.json', 1);
  enter(element, 5);
  element.src = '/b.json';
  await expect.poll(() => qtyOf(element)).toBe(2);
  await expect.poll(() => notices(element)).toEqual([
    expect.stringContaining('is of another schedule: Boat house, KP-1, a.json.'),
  ]);
  enter(element, 6);
  await expect.poll(() => kept(key)).toHaveLength(2);
  element.src = '/a.json';
  await expect.poll(() => qtyOf(element)).toBe(5);
  await expect.poll(() => notices(element)).toContainEqual(expect.stringContaining('is of another schedule: b.json.'));
  // Back before the other file has arrived, the work is still there.
  serve('/b.json', new Promise(() => undefined));
  element.src = '/b.json';
  await element.updateComplete;
  element.src = '/a.json';
  await expect.poll(() => notices(element)).toContainEqual(
    expect.stringMatching(/^(?:Draft of .* restored|There is another draft)/),
  );
  expect((await kept(key)).map(({ count }) => count)).toEqual([1, 1]);
});

test.each<[string, (element: LoadScheduleElement, key: string) => unknown]>([
  ['at once', (element, key) => Object.assign(element, { storageKey: key, src: '/b.json' })],
  ['the key first', async (element, key) => {
    element.storageKey = key;
    await element.updateComplete;
    element.src = '/b.json';
  }],
  ['the file first', async (element, key) => {
    element.src = '/b.json';
    await element.updateComplete;
    element.storageKey = key;
  }],
])('where a router sets key and file anew, each schedule keeps its own draft: %s', async (_name, turn) => {
  const [keyA, keyB] = [freshKey(), freshKey()];
  serve('/a.json', named(1));
  serve('/b.json', fileOf(2));
  const element = await shows(keyA, '/a.json', 1);
  enter(element, 5);
  await turn(element, keyB);
  await expect.poll(() => qtyOf(element)).toBe(2);
  await expect.poll(() => part(element, 'elv-draft-notices')).not.toBeNull();
  expect([element.dirty, await kept(keyB)]).toEqual([false, []]);
  enter(element, 6);
  await expect.poll(() => kept(keyB)).toMatchObject([{ count: 1, source: new URL('/b.json', location.href).href }]);
  expect(await kept(keyA)).toMatchObject([{ count: 1, ended: false }]);
  Object.assign(element, { storageKey: keyA, src: '/a.json' });
  await expect.poll(() => qtyOf(element)).toBe(5);
  await shows(keyB, '/b.json', 6);
});

test('what is entered while another file is on its way stays with the schedule in which it was entered', async () => {
  const [keyA, keyB] = [freshKey(), freshKey()];
  serve('/a.json', named(1));
  let arrive!: (text: string) => void;
  serve('/b.json', new Promise((resolve) => { arrive = resolve; }));
  const element = await shows(keyA, '/a.json', 1);
  Object.assign(element, { storageKey: keyB, src: '/b.json' });
  await element.updateComplete;
  enter(element, 5);
  await expect.poll(() => kept(keyA)).toMatchObject([{ count: 1 }]);
  arrive(fileOf(2));
  await expect.poll(() => qtyOf(element)).toBe(2);
  expect(await kept(keyB)).toEqual([]);
  enter(element, 6);
  await expect.poll(() => kept(keyB)).toHaveLength(1);
  expect(await kept(keyA)).toMatchObject([{ count: 1 }]);
});

test('a download cannot be confirmed: the draft stays until the person discards it', async () => {
  const key = freshKey();
  serve('/a.json', named(1));
  const element = await shows(key, '/a.json', 1);
  enter(element, 5);
  part(element, '[data-command=save]')!.click();
  await expect.poll(() => notices(element)).toEqual([expect.stringMatching(
    /^Saved as a file at \d\d:\d\d\. Whether the file was written is not known here, so the draft is kept until it is/,
  )]);
  await expect.poll(() => kept(key)).toMatchObject([{ ended: false, savedAt: expect.any(Number) as number }]);
  expect(element.dirty).toBe(true);
  element.remove();
  const next = await shows(key, '/a.json', 5);
  expect(notices(next)).toEqual([expect.stringMatching(/a\.json\. It was saved as a file at \d\d:\d\d\.$/)]);
  enter(next, 6);
  await expect.poll(() => kept(key)).toMatchObject([{ count: 2, savedAt: undefined }]);
  part(next, '[data-command=save]')!.click();
  await expect.poll(() => notices(next)).toHaveLength(1);
  press(next, 'saved', 'end');
  await expect.poll(() => kept(key)).toMatchObject([{ ended: true }]);
  expect([next.dirty, qtyOf(next), notices(next)]).toEqual([false, 6, []]);
});

test('of a draft that is saved as a file, a person keeps what is shown or goes back to the page’s', async () => {
  const key = freshKey();
  await leave(key, '/a.json', 5);
  const element = await shows(key, '/a.json', 5);
  part(element, '[data-command=save]')!.click();
  await expect.poll(() => notices(element)).toHaveLength(2);
  expect(parts(element, 'elv-draft-notices .link').map((each) => each.textContent))
    .toEqual(['End draft, keep what is shown', 'Discard draft, show the page’s schedule']);
  press(element, 'restored', 'discard');
  await expect.poll(() => qtyOf(element)).toBe(1);
  await expect.poll(() => notices(element)).toEqual([expect.stringContaining('discarded: Boat house, KP-1')]);
  press(element, 'discarded', 'show');
  await expect.poll(() => qtyOf(element)).toBe(5);
  part(element, '[data-command=save]')!.click();
  await expect.poll(() => notices(element)).toHaveLength(2);
  press(element, 'saved', 'end');
  await expect.poll(() => notices(element)).toEqual([]);
  expect([element.dirty, qtyOf(element)]).toEqual([false, 5]);
});

test('what the page kept is settled, and not what came after', async () => {
  const key = freshKey();
  serve('/a.json', named(1));
  const element = await shows(key, '/a.json', 1);
  enter(element, 5);
  const { value } = element;
  enter(element, 6);
  await element.markSaved(value);
  expect([element.dirty, await kept(key)]).toMatchObject([true, [{ count: 2, ended: false }]]);
  element.remove();
  // The server gives what it kept.
  serve('/a.json', value);
  const next = await shows(key, '/a.json', 6);
  expect(notices(next)).toEqual([expect.stringMatching(/^Draft of .* restored/)]);
  await next.markSaved(next.value);
  expect([next.dirty, await kept(key)]).toMatchObject([false, [{ ended: true }]]);
});

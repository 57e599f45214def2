import { afterEach, expect, test, vi } from 'vitest';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { addressOf, enter, fileOf, one, qtyOf } from './draft-support.ts';
import { drop, mountElement, removeElements } from './element-mount.ts';

afterEach(() => {
  removeElements();
  vi.restoreAllMocks();
});

/** Whatever is read under a name or an address waits until it is let through. */
function slow(): (name: string) => void {
  const gates = new Map<string, { readonly opened: Promise<void>; readonly open: () => void }>();
  const gateOf = (name: string) => {
    let open = (): void => { /* nobody waits yet */ };
    const opened = new Promise<void>((resolve) => { open = resolve; });
    if (!gates.has(name)) gates.set(name, { opened, open });
    return gates.get(name)!;
  };
  // eslint-disable-next-line @typescript-eslint/unbound-method -- it is called on a blob below
  const { arrayBuffer } = Blob.prototype;
  vi.spyOn(Blob.prototype, 'arrayBuffer').mockImplementation(async function read(this: Blob) {
    if (this instanceof File && this.name.startsWith('slow')) await gateOf(this.name).opened;
    return arrayBuffer.call(this);
  });
  const { fetch } = globalThis;
  vi.spyOn(globalThis, 'fetch').mockImplementation(async (address, options) => {
    await gateOf('src').opened;
    return fetch(address, options);
  });
  return (name) => { gateOf(name).open(); };
}

const slowFile = (qty: number) => new File([fileOf(qty)], 'slow.json');

const settled = () => new Promise((resolve) => { setTimeout(resolve, 100); });

/** Each way in which a quick content 2 is asked for while a slow content 1 is on its way. */
const LATER: readonly (readonly [string, (element: LoadScheduleElement) => unknown])[] = [
  ['openFile', (element) => element.openFile({ name: 'quick.json', text: fileOf(2) })],
  ['openFile with a File', (element) => element.openFile(new File([fileOf(2)], 'quick.json'))],
  ['drop', (element) => { drop(element, 'quick.json', fileOf(2)); }],
  ['importCsv', (element) => element.importCsv('Ref;Qty\nD1;2\n', 'devices')],
  ['importCsv in another way', (element) => element.importCsv('Ref;Qty\nD1;2\n', 'devices', 'replace')],
  ['value', (element) => { element.value = fileOf(2); }],
  ['schedule', (element) => { element.schedule = new LoadSchedule(one(2)); }],
];

test.each(LATER)('a slow file that was opened before is not shown after %s', async (_name, ask) => {
  const element = await mountElement({ content: one(9), key: null });
  const open = slow();
  const answer = element.openFile(slowFile(1));
  ask(element);
  await expect.poll(() => qtyOf(element)).toBe(2);
  open('slow.json');
  expect(await answer).toEqual([{ message: 'slow.json was not taken, because something else was opened after it.' }]);
  expect(qtyOf(element)).toBe(2);
});

test.each(LATER)('a slow file that was dropped before is not shown after %s', async (_name, ask) => {
  const element = await mountElement({ content: one(9), key: null });
  const open = slow();
  drop(element, 'slow.json', fileOf(1));
  ask(element);
  await expect.poll(() => qtyOf(element)).toBe(2);
  open('slow.json');
  await settled();
  expect(qtyOf(element)).toBe(2);
});

test.each(LATER)('a slow src that was set before is not shown after %s', async (_name, ask) => {
  const element = await mountElement({ content: one(9), key: null });
  const open = slow();
  element.src = addressOf(1);
  await element.updateComplete;
  ask(element);
  await expect.poll(() => qtyOf(element)).toBe(2);
  open('src');
  await settled();
  expect(qtyOf(element)).toBe(2);
});

test('a src that is set after a slow file was opened is shown in the end, whichever comes first', async () => {
  for (const order of [['src', 'slow.json'], ['slow.json', 'src']]) {
    const element = await mountElement({ content: one(9), key: null });
    const open = slow();
    const answer = element.openFile(slowFile(1));
    element.src = addressOf(2);
    await element.updateComplete;
    for (const name of order) {
      open(name);
      await settled();
    }
    await answer;
    await expect.poll(() => qtyOf(element), { message: order.join(' before ') }).toBe(2);
    vi.restoreAllMocks();
  }
});

test('of two files whose answers come in order the second one is shown, and the first one can be had back',
  async () => {
  const element = await mountElement({ content: one(9), key: null });
  const [first, second] = [
    element.openFile(new File([fileOf(1)], 'a.json')), element.openFile(new File([fileOf(2)], 'b.json')),
  ];
  expect([await first, await second, qtyOf(element)]).toEqual([[], [], 2]);
  element.undo();
  expect(qtyOf(element)).toBe(1);
});

test('a later file that cannot be read leaves the way to the earlier one', async () => {
  const element = await mountElement({ content: one(9), key: null });
  const open = slow();
  const answer = element.openFile(slowFile(1));
  expect(await element.openFile({ name: 'bad.json', text: '{' })).not.toEqual([]);
  open('slow.json');
  expect(await answer).toEqual([]);
  expect(qtyOf(element)).toBe(1);
});

test('a listener that throws keeps the element from nothing', async () => {
  const element = await mountElement({ content: one(1), key: null });
  const lost: unknown[] = [];
  const onError = (event: ErrorEvent) => {
    event.preventDefault();
    event.stopImmediatePropagation();
    lost.push(event.error);
  };
  window.addEventListener('error', onError, true);
  const fault = new Error('out of order');
  const schedule = new LoadSchedule(one(1));
  schedule.subscribe(() => { throw fault; });
  element.schedule = schedule;
  enter(element, 5);
  await expect.poll(() => lost).toEqual([fault]);
  window.removeEventListener('error', onError, true);
  expect([qtyOf(element), element.dirty]).toEqual([5, true]);
});

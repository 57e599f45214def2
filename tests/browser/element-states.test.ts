import { afterEach, expect, test } from 'vitest';
import { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { mountElement, part, removeElements, sample, textOf } from './element-mount.ts';
import { addressOf, enter, fileOf, one, qtyOf } from './draft-support.ts';

afterEach(removeElements);

const states = (element: Element) =>
  ['dirty', 'invalid', 'computing'].filter((state) => element.matches(`:state(${state})`));

/** The states once the element is done with everything. */
async function settled(element: LoadScheduleElement): Promise<string[]> {
  await element.updateComplete;
  await expect.poll(() => element.matches(':state(computing)')).toBe(false);
  return states(element);
}

test('dirty: after a person changed something, until it is taken back, or kept by the page', async () => {
  const element = await mountElement({ content: one(1), key: null });
  expect([await settled(element), element.dirty]).toEqual([[], false]);
  enter(element, 2);
  expect(element.dirty).toBe(true);
  expect(await settled(element)).toEqual(['dirty']);
  element.undo();
  expect(await settled(element)).toEqual([]);
  element.redo();
  expect(await settled(element)).toEqual(['dirty']);
  await element.markSaved();
  expect([await settled(element), element.dirty]).toEqual([[], false]);
  element.undo();
  expect(await settled(element)).toEqual(['dirty']);
});

test('dirty: a download cannot be confirmed, so the page says whether it takes it for kept', async () => {
  const element = await mountElement({ content: one(1), key: null });
  enter(element, 2);
  const save = () => { part(element, '[data-command=save]')!.click(); };
  save();
  expect(await settled(element)).toEqual(['dirty']);
  element.addEventListener('elv-save', ({ name, value }) => {
    expect([name, JSON.parse(value)]).toEqual(['load.schedule.json', element.toJSON()]);
    void element.markSaved(value);
  });
  save();
  expect(await settled(element)).toEqual([]);
});

test('dirty: what the page says it kept is clean, and what came after is not', async () => {
  const element = await mountElement({ content: one(1), key: null });
  enter(element, 2);
  const first = element.value;
  enter(element, 3);
  const second = element.value;
  enter(element, 4);
  await element.markSaved(second);
  expect(element.dirty).toBe(true);
  // An answer that comes late says nothing about what was kept since.
  await element.markSaved(first);
  await element.markSaved('no value of this element');
  element.undo();
  expect([qtyOf(element), element.dirty]).toEqual([3, false]);
  element.undo();
  expect(element.dirty).toBe(true);
  element.redo();
  element.redo();
  await element.markSaved();
  expect(element.dirty).toBe(false);
  await expect(element.markSaved(7 as never)).rejects.toThrow('“markSaved” was given 7.');
});

test('what the page does leaves a clean schedule clean, and a dirty one dirty', async () => {
  const element = await mountElement({ content: one(1), key: null });
  await element.importCsv('Ref,Qty\nD1,4\n', 'devices');
  expect(await settled(element)).toEqual([]);
  enter(element, 2);
  await element.importCsv('Ref,Qty\nD1,4\n', 'devices');
  expect(await settled(element)).toEqual(['dirty']);
  element.value = fileOf(9);
  expect(await settled(element)).toEqual([]);
});

test('a schedule file that a person opens is clean; rows of a CSV file are not', async () => {
  const element = await mountElement({ content: one(1), key: null });
  await element.openFile({ name: 'a.schedule.json', text: fileOf(3) });
  expect(await settled(element)).toEqual([]);
  enter(element, 5);
  expect(await settled(element)).toEqual(['dirty']);
});

test('invalid: as long as a finding is over a limit and not accepted', async () => {
  const element = await mountElement({ content: sample(), key: null });
  expect(await settled(element)).toEqual(['invalid']);
  element.schedule.act('Rated', [{ op: 'set', sheet: 'supplies', id: 0, key: 'rated', value: 10 }]);
  expect(await settled(element)).toEqual(['dirty']);
});

test('computing: while a file is on its way; a schedule that is put in is worked out at once', async () => {
  const element = await mountElement({ key: null, attributes: { src: addressOf(3) } });
  expect(states(element)).toEqual(['invalid', 'computing']);
  await expect.poll(() => qtyOf(element)).toBe(3);
  expect(await settled(element)).toEqual([]);
  element.schedule = new LoadSchedule(one(1));
  expect(states(element)).toEqual([]);
  await expect.poll(() => qtyOf(element)).toBe(1);
  expect(states(element)).toEqual([]);
});

test('computing: while devices are shared out, until that ends or the element is removed', async () => {
  const element = await mountElement({ content: sample(), key: null });
  expect(await settled(element)).toEqual(['invalid']);
  const heard: boolean[] = [];
  element.shadowRoot!.addEventListener('elv-busy', () => { heard.push(element.matches(':state(computing)')); });
  part(element, '[data-command=shareOut]')!.click();
  await expect.poll(() => textOf(element, 'elv-share-out .verdict')).toContain('branch');
  expect(heard).toEqual([true, false]);
  // What is going on when the element leaves its page ends with that.
  element.shadowRoot!.addEventListener('elv-busy', (event) => {
    if ('isRunning' in event && event.isRunning === true) queueMicrotask(() => { element.remove(); });
  });
  part(element, 'elv-share-out [data-option=wholeRows]')!.click();
  await expect.poll(() => heard).toEqual([true, false, true, false]);
  expect(element.isConnected).toBe(false);
});

test('what was set before the element was defined is kept', async () => {
  const make = (tag: string) => document.createElement(tag as 'elv-load-schedule');
  const element = make('elv-late-schedule');
  const schedule = new LoadSchedule(one(8));
  Object.assign(
    element, { schedule, licenseKey: null, readonly: true, disabled: true, takeoffColumns: { Lamp: 'type' } }
  );
  const other = make('elv-late-schedule');
  Object.assign(other, { value: fileOf(6), src: null, storageKey: null, demoSrc: '/demo.json', name: 'given' });
  document.body.append(element, other);
  customElements.define('elv-late-schedule', class extends LoadScheduleElement {});
  await Promise.all([element.updateComplete, other.updateComplete]);
  expect(element.schedule).toBe(schedule);
  expect([element.readonly, element.disabled, element.takeoffColumns]).toEqual([true, true, { Lamp: 'type' }]);
  expect(qtyOf(other)).toBe(6);
  expect([other.demoSrc, other.name, other.getAttribute('name')]).toEqual(['/demo.json', 'given', 'given']);
  element.remove();
  other.remove();
});

test('every attribute and its property go together, and each has its default', async () => {
  const bare = document.createElement('elv-load-schedule');
  expect(bare.getAttributeNames()).toEqual([]);
  const defaults = [
    bare.licenseKey, bare.src, bare.demoSrc, bare.storageKey, bare.name, bare.readonly, bare.disabled, bare.lang,
    bare.librarySrc, bare.languages,
  ];
  expect(defaults).toEqual([null, null, null, null, '', false, false, '', null, null]);
  const given: Record<string, string> = {
    'license-key': 'some', 'src': addressOf(1), 'demo-src': '/demo.json', 'storage-key': '',
    'name': 'n', 'readonly': '', 'disabled': '', 'lang': 'fr',
    'library-src': '/office.csv', 'languages': 'en fr',
  };
  const element = await mountElement({ key: null, attributes: given });
  const { licenseKey, src, demoSrc, storageKey, name, readonly, disabled, lang, librarySrc, languages } = element;
  expect([licenseKey, src, demoSrc, storageKey, name, readonly, disabled, lang, librarySrc, languages])
    .toEqual(['some', given.src, '/demo.json', '', 'n', true, true, 'fr', '/office.csv', 'en fr']);
  expect([...LoadScheduleElement.observedAttributes].sort())
    .toEqual(Object.keys(given).filter((name) => name !== 'name').sort());
  const copy = document.importNode(element, true);
  document.body.append(copy);
  await expect.poll(() => qtyOf(copy)).toBe(1);
  expect(copy.readonly).toBe(true);
  copy.readonly = false;
  await copy.updateComplete;
  expect([copy.hasAttribute('readonly'), element.hasAttribute('readonly')]).toEqual([false, true]);
});

test('an element that was removed, and is changed then, does nothing that fails', async () => {
  const element = await mountElement({ content: one(1), key: null });
  element.remove();
  element.src = addressOf(2);
  element.lang = 'de';
  enter(element, 3);
  await element.updateComplete;
  document.body.append(element);
  await expect.poll(() => qtyOf(element)).toBe(2);
});

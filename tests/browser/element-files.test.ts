import { afterEach, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { ScheduleGrid } from '../../components/grid/index.ts';
import type { ElvErrorEvent } from '../../components/load-schedule/events.ts';
import { SHEET_NAMES } from '../../src/schedule/index.ts';
import { drop, mountElement, part, parts, removeElements, said, sample, textOf } from './element-mount.ts';

afterEach(() => {
  removeElements();
  vi.restoreAllMocks();
});

const file = JSON.stringify({
  format: 'elv-load-schedule', version: 2, details: { panel: 'KP-9' }, sheets: { supplies: [{ rail: 'X1', rated: 5 }] },
});

const addressOf = (text: string) => URL.createObjectURL(new Blob([text], { type: 'application/json' }));

test('a sheet goes out as CSV and comes in again without loss', async () => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  for (const sheet of SHEET_NAMES) {
    const csv = await element.exportCsv(sheet);
    expect(await element.importCsv(csv, sheet), sheet).toEqual([]);
    expect(await element.exportCsv(sheet), sheet).toBe(csv);
  }
  expect(element.value).toBe(before);
});

test('a page brings CSV into a sheet in the way that it says, each as one silent action', async () => {
  const element = await mountElement({ content: { details: {}, sheets: {
    types: [{ type: 'Lamp', draw: 100, note: 'kept' }, { type: 'Bell', draw: '=2*40' }],
  } } });
  const changes: unknown[] = [];
  element.addEventListener('elv-change', (event) => { changes.push(event); });
  const csv = 'Type,Draw (mA)\r\nLamp,250\r\nBell,90\r\nSiren,300\r\n,7\r\n';
  const rows = () => (JSON.parse(element.value) as { sheets: { types: unknown[] } }).sheets.types;
  const before = rows();
  // The formula of a person stays; a row without a tag names none.
  expect(await element.importCsv(csv, 'types', 'update'))
    .toEqual([{ line: 5, message: 'Line 5: it has no Type, which would name its row. Enter one.' }]);
  expect(rows()).toEqual([
    { type: 'Lamp', draw: 250, note: 'kept' }, { type: 'Bell', draw: '=2*40' }, { type: 'Siren', draw: 300 },
  ]);
  element.undo();
  expect(rows()).toEqual(before);
  expect(await element.importCsv(csv, undefined, 'append')).toEqual([]);
  expect(rows()).toEqual([...before, { type: 'Lamp', draw: 250 }, { type: 'Bell', draw: 90 }, { type: 'Siren', draw: 300 }, { draw: 7 }]);
  element.undo();
  expect(await element.importCsv(csv, 'types', 'replace')).toEqual([]);
  expect(rows()).toHaveLength(4);
  element.undo();
  expect(await element.importCsv('Type,Draw (mA)\r\nLamp,much\r\n', 'types', 'update')).toHaveLength(1);
  expect(rows()).toEqual(before);
  expect(changes).toEqual([]);
});

test('a bad file that is dropped changes nothing, and every problem is listed with its line', async () => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  const errors: ElvErrorEvent[] = [];
  element.addEventListener('elv-error', (event) => { errors.push(event); });
  drop(element, 'takeoff.csv', 'Ref,Qty,Diversity\nD7,two,0.5\nD8,3,40\n');
  await expect.poll(() => errors).toHaveLength(1);
  await element.updateComplete;
  const lines = parts(element, '.problems li').map((line) => line.textContent);
  expect(lines).toHaveLength(2);
  expect(lines[0]).toMatch(/Line 2.*Qty/);
  expect(lines[1]).toMatch(/Line 3.*Diversity/);
  expect(textOf(element, '.problems h3'))
    .toBe('takeoff.csv was not read because of 2 problems. The schedule is as it was.');
  expect(element.value).toBe(before);
  expect(element.schedule.undoLabel).toBeUndefined();
  part(element, '.problems header button')!.click();
  await element.updateComplete;
  expect(part(element, '.problems')).toBeNull();
});

test('while a file is held over the element, it says what may be dropped', async () => {
  const element = await mountElement({ content: sample() });
  const dataTransfer = new DataTransfer();
  dataTransfer.items.add(new File(['{}'], 'a.json'));
  const inner = part(element, 'elv-sheet-tabs')!;
  inner.dispatchEvent(new DragEvent('dragenter', { dataTransfer, bubbles: true, composed: true }));
  await element.updateComplete;
  expect(textOf(element, '.drop')).toContain('.json');
  inner.dispatchEvent(new DragEvent('dragleave', { dataTransfer, bubbles: true, composed: true }));
  await element.updateComplete;
  expect(part(element, '.drop')).toBeNull();
});

test('src is fetched and shown, with nothing to undo', async () => {
  const element = await mountElement({ attributes: { src: addressOf(file) } });
  await expect.poll(() => element.schedule.rows('supplies').length).toBe(1);
  expect(element.schedule.document.details.panel).toBe('KP-9');
  expect(element.schedule.undoLabel).toBeUndefined();
});

test('a src that cannot be had is named, with what the server said', async () => {
  const errors: ElvErrorEvent[] = [];
  const heard = (event: HTMLElementEventMap['elv-error']) => { errors.push(event); };
  document.body.addEventListener('elv-error', heard);
  vi.spyOn(globalThis, 'fetch').mockResolvedValue(new Response('', { status: 404, statusText: 'Not Found' }));
  const element = await mountElement({ attributes: { src: 'missing.schedule.json' } });
  await expect.poll(() => textOf(element, '.problems')).toContain('404 Not Found');
  expect(textOf(element, '.problems h3')).toContain('missing.schedule.json was not read');
  expect(errors.map(({ name }) => name)).toEqual(['missing.schedule.json']);
  document.body.removeEventListener('elv-error', heard);
});

test('a src that is no schedule leaves what was there', async () => {
  const element = await mountElement({ content: sample() });
  element.setAttribute('src', addressOf('{ "format": "elv-load-schedule", "version": 2, "sheets": '));
  await expect.poll(() => parts(element, '.problems li').length).toBeGreaterThan(0);
  expect(element.schedule.rows('devices')).toHaveLength(3);
});

test('an empty element offers the demo that the page names, and asks for it only then', async () => {
  const asked = vi.spyOn(globalThis, 'fetch');
  const element = await mountElement({ attributes: { 'demo-src': addressOf(file) } });
  expect(asked).not.toHaveBeenCalled();
  expect(textOf(element, '.begin h3')).toBe('Devices: no rows yet');
  expect(part(element, '.begin h3')!.offsetHeight).toBeGreaterThan(0);
  await expect.poll(() => part(element, '[data-way=loadDemo]')).not.toBeNull();
  part(element, '[data-way=loadDemo]')!.click();
  await expect.poll(() => element.schedule.rows('supplies').length).toBe(1);
  element.undo();
  expect(element.schedule.rows('supplies')).toHaveLength(0);
});

test('without a demo to offer there is no button for it', async () => {
  const element = await mountElement();
  await expect.poll(() => part(element, '[data-way=open]')).not.toBeNull();
  expect(part(element, '[data-way=loadDemo]')).toBeNull();
});

test('saving hands over the file under the name of the panel, and it reads back the same', async () => {
  const element = await mountElement({ content: sample() });
  const saved: { name: string; blob: Blob }[] = [];
  let last: Blob | undefined;
  const make = URL.createObjectURL.bind(URL);
  vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => make(last = blob as Blob));
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function click(this: HTMLAnchorElement) {
    saved.push({ name: this.download, blob: last! });
  });
  part(element, '[data-command=save]')!.click();
  part(element, '[data-command=csvOut]')!.click();
  await expect.poll(() => saved.map(({ name }) => name)).toEqual(['KP-1.schedule.json', 'KP-1-devices.csv']);
  expect(await saved[0]!.blob.text()).toBe(element.value);
  expect(await saved[1]!.blob.text()).toBe(await element.exportCsv('devices'));
  expect(await element.openFile({ name: 'back.json', text: element.value })).toEqual([]);
});

test('a paste that is refused is listed value by value, until the next action', async () => {
  const element = await mountElement({ content: sample() });
  await element.select('devices', 'D1', 'qty');
  (part(element, 'elv-schedule-grid') as ScheduleGrid).pasteText('two\nthree\n');
  await expect.poll(() => parts(element, '.problems li').length).toBe(2);
  expect(element.schedule.undoLabel).toBeUndefined();
  expect(said(element)).not.toBe('');
  await element.select('devices', 'D1', 'qty');
  await userEvent.keyboard('5{Enter}');
  await expect.poll(() => part(element, '.problems')).toBeNull();
});

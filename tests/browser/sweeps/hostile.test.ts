import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { SHEET_NAMES, inputColumns, type Cells } from '../../../src/schedule/index.ts';
import { HOSTILE_TEXTS } from '../../hostile/hostile-texts.ts';
import { VIEWS } from '../access/every-view.ts';
import { drop, mountElement, part, parts, removeElements, said, sample, textOf } from '../element-mount.ts';
import { openWork } from '../work-support.ts';

const SHORT = HOSTILE_TEXTS.filter(({ length }) => length < 200)
  .map((text) => text.replace(/\p{Surrogate}|\0/gu, '\ufffd'));

let alerts = 0;
beforeEach(() => {
  alerts = 0;
  vi.spyOn(window, 'alert').mockImplementation(() => { alerts += 1; });
});
afterEach(() => {
  removeElements();
  expect(alerts).toBe(0);
  vi.restoreAllMocks();
});

/** What a person's texts must never become. */
const ACTIVE = 'script,iframe[srcdoc*="alert"],img,object,embed,link,base,form[action],a[href^="javascript:"]';

const hostile = () => ({
  details: { project: SHORT[0]!, panel: SHORT[1]!, remarks: SHORT[2]! },
  sheets: Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, SHORT.map((text) => Object.fromEntries(
    inputColumns(sheet).filter(({ kind }) =>
      kind === 'text' || kind === 'reference').map(({ key }) =>
        [key, text.trim()]).filter(([, each]) => each !== '')) as Cells)])),
});

test('scripts and markup in every text are shown as they are, in every view', { timeout: 120_000 }, async () => {
  const element = await mountElement({ content: hostile() });
  for (const [name, show] of VIEWS) {
    if (name.startsWith('the acceptance')) continue;
    await show(element);
    await new Promise((resolve) => { requestAnimationFrame(() => { requestAnimationFrame(resolve); }); });
    const found = parts(element, '*').filter((each) => each.matches(ACTIVE)
      || [...each.attributes].some(({ name: attribute, value }) => attribute.startsWith('on') || (
        /^\s*javascript:/i.test(value) && ['href', 'src', 'action', 'data', 'srcdoc', 'style'].includes(attribute)
      )));
    expect(found.map((each) => each.outerHTML.slice(0, 100)), name).toEqual([]);
  }
  expect(textOf(element, 'elv-schedule-panel .finding')).not.toBe('');
});

test('the preview of the load table runs nothing either', async () => {
  const element = await mountElement({ content: hostile() });
  await openWork(element, 'loadTable');
  const page = () => (part(element, 'elv-load-table iframe') as HTMLIFrameElement).contentDocument;
  await expect.poll(() => page()?.body.textContent ?? '').toContain('alert(1)');
  expect(page()!.querySelectorAll('script,img,iframe,object,embed,link,a[href^="javascript:"]').length).toBe(0);
});

test('any text on the clipboard is pasted as a text or refused with a sentence, and the page lives',
  { timeout: 120_000 }, async () => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  for (const text of HOSTILE_TEXTS) {
    await element.select('devices', 'D3', 'note');
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', text);
    clipboardData.setData('text/html', `<table><tr><td><img src=x onerror=alert(1)>${text}</td></tr></table>`);
    part(element, 'elv-schedule-grid td')!.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true, composed: true })
    );
    await element.updateComplete;
    expect(parts(element, ACTIVE), JSON.stringify(text.slice(0, 40))).toEqual([]);
    while (element.schedule.undoLabel !== undefined) element.undo();
    expect(element.value, JSON.stringify(text.slice(0, 40))).toBe(before);
  }
});

test('a table of 100 000 columns on the clipboard takes what fits and says what it left out', async () => {
  const element = await mountElement({ content: sample() });
  await element.select('devices', 'D1', 'area');
  const clipboardData = new DataTransfer();
  clipboardData.setData('text/plain', `Hall${'\tx'.repeat(100_000)}`);
  part(element, 'elv-schedule-grid td')!.dispatchEvent(
    new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true, composed: true })
  );
  await element.updateComplete;
  expect(element.schedule.rows('devices')).toHaveLength(3);
  // Area is entered in the first column pasted; what lies beyond the last column is left out, which is said.
  await expect.poll(() => said(element)).toMatch(/column|x/);
});

test.each([
  ['a file that is too large', 'large.schedule.json', ' '.repeat(65 * 1024 * 1024), /65 MB; at most 64 MB/],
  ['a file of brackets', 'deep.schedule.json', '['.repeat(1_000_000), /100 deep/],
  [
    'a file that names what programs have', 'proto.schedule.json', '{"__proto__":{"format":"elv-load-schedule"}}',
    /not a schedule/,
  ],
  ['a sheet of too many fields', 'wide.csv', `Ref,Qty${',x'.repeat(20_000)}\r\n`, /16384 fields/],
])('%s is refused with a sentence, changes nothing, and the page goes on', async (_what, name, text, says) => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  drop(element, name, text);
  await expect.poll(() => textOf(element, 'elv-sheet-view .problems')).toMatch(says);
  expect(element.value).toBe(before);
  await element.select('devices', 'D1', 'qty');
  element.schedule.act('Still alive', [{ op: 'set', sheet: 'devices', id: 0, key: 'qty', value: 9 }]);
  expect(element.schedule.value('devices', 0, 'connected')).toBeCloseTo(9 * 0.35, 9);
});

test.each([
  'javascript:alert(1)', 'data:text/html,<script>alert(1)</script>', 'data:application/json,{"format":1}',
  'file:///etc/passwd', '//192.0.2.1:1/x.json',
  'http://[', 'blob:nothing', 'about:blank', '\u0000', '../../../../../../x.json', 'ftp://192.0.2.1/x',
  `/${'x'.repeat(20_000)}`, '#', '?',
])('an address such as %j loads nothing and is answered with a sentence', async (address) => {
  const asked = vi.spyOn(window, 'fetch').mockImplementation((input) => {
    const url = new URL(input as string, location.href);
    // Nothing leaves this machine in a test: what is elsewhere cannot be reached.
    return url.origin === location.origin
      ? Promise.resolve(new Response('<!doctype html><p>No such page', { status: 404 }))
      : Promise.reject(new TypeError('Failed to fetch'));
  });
  const element = await mountElement({ content: sample() });
  const before = element.schedule.content();
  element.src = address;
  await expect.poll(() => textOf(element, 'elv-sheet-view [role=alert]')).toMatch(/\S+ \S+ \S+/);
  // What was there stays, and is not given as the value of an address that could not be had.
  expect(element.schedule.content()).toEqual(before);
  expect(element.value).toBe('');
  expect(asked.mock.calls.length).toBeLessThanOrEqual(1);
});

test('a value that is no schedule is refused with a sentence and changes nothing', async () => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  for (const text of HOSTILE_TEXTS) {
    element.value = text;
    await element.updateComplete;
    expect(element.value).toBe(before);
    expect(textOf(element, 'elv-sheet-view .problems').length, JSON.stringify(text.slice(0, 40))).toBeGreaterThan(20);
  }
});

test('attributes of any text do no harm', { timeout: 60_000 }, async () => {
  for (const text of HOSTILE_TEXTS.filter(({ length }) => length < 200)) {
    const element = await mountElement({ content: sample(), key: null, attributes: Object.fromEntries(
      ['license-key', 'demo-src', 'name', 'lang', 'storage-key'].map((name) => [name, text])) });
    await element.updateComplete;
    expect(element.schedule.rows('devices')).toHaveLength(3);
    expect(parts(element, ACTIVE)).toEqual([]);
    element.remove();
  }
});

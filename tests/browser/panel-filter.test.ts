import { afterEach, expect, onTestFinished, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { Content } from '../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, textOf } from './element-mount.ts';
import { openWork } from './work-support.ts';

afterEach(removeElements);

const CONTENT: Content = {
  details: { project: 'Works' }, sheets: {
    enclosures: [{ enclosure: 'P1' }, { enclosure: 'P2' }], types: [{ type: 'Lamp', draw: 1000, nodes: 1 }],
    supplies: [{ rail: 'L1', rated: 5, enclosure: 'P1' }, { rail: 'L2', rated: 2, enclosure: 'P2' }],
    devices: [
      { ref: 'D1', type: 'Lamp', qty: 4, rail: 'L1' }, { ref: 'D2', type: 'Lamp', qty: 3, rail: 'L2' },
      { ref: 'D3', type: 'Lamp', qty: 2 },
    ],
  },
};

const gauges = (element: Element) => parts(element, 'elv-schedule-panel .section li').map((line) => line.textContent.trim().slice(0, 2));
const over = (element: Element) => parts(element, 'elv-schedule-panel [data-severity=over]').map((each) => each.textContent.trim())[0];
const count = (element: Element, sheet: string) => textOf(element, `elv-sheet-tabs [data-sheet=${sheet}] .count`).replace(/\D/g, '');

test('a person picks a panel and sees of overview, findings, tabs, bill and load table only what belongs to it', async () => {
  const element = await mountElement({ content: CONTENT });
  const before = element.value;
  const choice = part(element, '.panels') as HTMLSelectElement;
  expect([...choice.options].map(({ text }) => text)).toEqual(['All panels', 'P1', 'P2', 'In no panel']);
  expect(gauges(element)).toEqual(expect.arrayContaining(['L1', 'L2', 'P1', 'P2']));
  await userEvent.selectOptions(choice, 'P1');
  await expect.poll(() => gauges(element)).not.toContain('L2');
  expect(gauges(element)).toEqual(expect.arrayContaining(['L1', 'P1']));
  // L2 alone, in P2, is over: 3 A of 2 A.
  expect(over(element)).toMatch(/^0|^no/i);
  expect([count(element, 'devices'), count(element, 'supplies'), count(element, 'types')]).toEqual(['1', '1', '1']);
  // Frozen columns are drawn twice.
  const refs = () => [...new Set(parts(element, 'elv-schedule-grid tbody tr td:first-of-type').map((cell) => cell.textContent.trim()))]
    .filter((text) => text !== '');
  await expect.poll(refs).toEqual(['D1']);
  expect(textOf(element, '.sight')).toMatch(/1 of 3 rows\s*P1/);
  await openWork(element, 'bill');
  const bill = () => parts(element, '.bill tbody tr').map((row) => row.textContent.replace(/\s+/g, ' ').trim());
  expect(bill()).toContainEqual(expect.stringMatching(/^Device ?Lamp ?4/));
  expect(bill()).not.toContainEqual(expect.stringContaining('2 A'));
  await userEvent.selectOptions(choice, 'P2');
  await expect.poll(bill).toContainEqual(expect.stringMatching(/^Device ?Lamp ?3/));
  await openWork(element, 'loadTable');
  const page = () => part(element, 'elv-load-table iframe') as HTMLIFrameElement;
  await expect.poll(() => page().contentDocument?.body.textContent).toContain('Only what belongs to panel P2 is listed here');
  expect(page().contentDocument!.body.textContent).not.toContain('D1');
  await userEvent.selectOptions(choice, 'In no panel');
  await expect.poll(() => page().contentDocument?.body.textContent).toContain('Only what belongs to no panel');
  await userEvent.keyboard('{Escape}');
  expect(count(element, 'devices')).toBe('1');
  await userEvent.selectOptions(choice, 'All panels');
  await expect.poll(() => count(element, 'devices')).toBe('3');
  await expect.poll(refs).toEqual(['D1', 'D2', 'D3']);
  expect(element.value).toBe(before);
});

test('a panel that goes while it is looked at leaves all of them in sight; one panel alone is no choice', async () => {
  const element = await mountElement({ content: CONTENT });
  await userEvent.selectOptions(part(element, '.panels')!, 'P2');
  await expect.poll(() => count(element, 'devices')).toBe('1');
  await element.importCsv('Rail,Rated (A),Enclosure\r\nL1,5,P1\r\nL2,2,P3\r\n', 'supplies');
  await element.importCsv('Enclosure\r\nP1\r\nP3\r\n', 'enclosures');
  await expect.poll(() => count(element, 'devices')).toBe('3');
  await element.importCsv('Rail,Rated (A),Enclosure\r\nL1,5,P1\r\n', 'supplies');
  await element.importCsv('Enclosure\r\nP1\r\n', 'enclosures');
  await expect.poll(() => part(element, '.panels')).toBeNull();
});

test.each([['en', 'In no panel'], ['de', 'Ohne Schrank'], ['fr', 'Hors armoire']])('on a phone what is looked at is read whole, and everything stays within the screen: %s', async (lang, none) => {
  await page.viewport(390, 800);
  onTestFinished(() => page.viewport(1280, 800));
  const element = await mountElement({ content: CONTENT, attributes: { lang } });
  const choice = part(element, '.panels') as HTMLSelectElement;
  await expect.poll(() => choice.options[3]!.text).toBe(none);
  for (const option of [0, 3]) {
    await userEvent.selectOptions(choice, choice.options[option]!);
    await element.updateComplete;
    const { width, left, right } = choice.getBoundingClientRect();
    // Left to itself it is as wide as what it says.
    choice.style.maxInlineSize = 'none';
    expect(width).toBe(choice.getBoundingClientRect().width);
    choice.style.maxInlineSize = '';
    expect(left).toBeGreaterThan(part(element, '[role=tab][aria-selected=true]')!.getBoundingClientRect().right);
    expect(right).toBeLessThan(390);
    expect(element.scrollWidth).toBe(element.clientWidth);
  }
});

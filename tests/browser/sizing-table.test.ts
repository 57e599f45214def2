import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { numberListText, readNumberList } from '../../components/sizing-table/number-list.ts';
import { mountElement, part, parts, removeElements, sample, textOf } from './element-mount.ts';
import { openWork, press } from './work-support.ts';
import { makeWords } from '../../src/words/index.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(() => {
  removeElements();
  vi.restoreAllMocks();
});

const lines = (element: Element) => parts(element, '.sizing tbody tr').map((row) =>
  [...row.querySelectorAll('td')].slice(0, 2).map((cell) => cell.textContent.trim()).join(': '));

async function setList(element: Element, text: string): Promise<void> {
  await userEvent.fill(part(element, '[data-list=ratings]')!, text);
  await userEvent.tab();
}

test('the list of ratings that the office keeps decides, and is remembered', async () => {
  const element = await mountElement({ content: sample() });
  await openWork(element, 'sizing');
  // Types without a purpose: 1.16 A + 0.84 A = 2 A of demand, which needs 2.5 A of rating at a target of 80 %.
  await expect.poll(() => lines(element)[0]).toMatch(/2\.5 A: 1$/);
  await setList(element, '1,5; 6');
  await expect.poll(() => lines(element)[0]).toMatch(/6 A: 1$/);
  element.remove();
  const again = await mountElement({ content: sample() });
  await openWork(again, 'sizing');
  expect((part(again, '[data-list=ratings]') as HTMLInputElement).value).toBe('1.5; 6');
  await press(again, '[data-do=defaults]');
  await expect.poll(() => lines(again)[0]).toMatch(/2\.5 A: 1$/);
});

test('a list that cannot be read is said, and the one before holds', async () => {
  const element = await mountElement({ content: sample() });
  await openWork(element, 'sizing');
  await expect.poll(() => lines(element).length).toBeGreaterThan(0);
  const before = lines(element);
  await setList(element, '5; many');
  await expect.poll(() => textOf(element, '#problem-ratings'))
    .toBe('many is no number above 0. Part the numbers with semicolons.');
  expect(lines(element)).toEqual(before);
});

test('it is saved as CSV, line for line', async () => {
  const element = await mountElement({ content: sample() });
  await openWork(element, 'sizing');
  await expect.poll(() => lines(element).length).toBeGreaterThan(0);
  const saved: { name: string; text: Promise<string> }[] = [];
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    saved.push({ name: this.download, text: fetch(this.href).then((answer) => answer.text()) });
  });
  await press(element, '[data-do=csv]');
  expect(saved.map(({ name }) => name)).toEqual(['KP-1-sizing.csv']);
  const text = await saved[0]!.text;
  expect(text).toMatch(/^Item,Quantity,Why\r\n/);
  expect(text.trimEnd().split('\r\n')).toHaveLength(lines(element).length + 1);
});

test.each([
  ['1,25; 2.5;5', false, [1.25, 2.5, 5]], ['10 5 10', false, [5, 10]], ['4; 8', true, [4, 8]],
] as const)('reads the list %s', (text, whole, numbers) => {
  expect(readNumberList(text, whole)).toEqual({ ok: true, numbers });
});

test.each(
  [['', false], ['0', false], ['-5', false], ['4.5', true], ['1e999', false]] as const
)('refuses the list “%s”', (text, whole) => {
  expect(readNumberList(text, whole).ok).toBe(false);
});

test('a list is written so that it can be read', () => {
  expect(numberListText([1.25, 2000], makeWords('de'))).toBe('1,25; 2000');
  expect(readNumberList(numberListText([1.25, 2000], makeWords('de')), false))
    .toEqual({ ok: true, numbers: [1.25, 2000] });
});

test('what it counts is created as one action, with what has no place put on it', async () => {
  const element = await mountElement({
    content: {
      details: {},
      sheets: {
        enclosures: [{ enclosure: 'P1' }], types: [{ type: 'Lamp', purpose: 'lighting', draw: 500, nodes: 0 }],
        devices: [{ ref: 'D1', type: 'Lamp', qty: 14 }],
      },
    },
  });
  const before = element.value;
  await openWork(element, 'sizing');
  // 7 A at 80 %, and a quarter more: 10.9 A of rating, which 20 A or two smaller ones give; the least number is one.
  await userEvent.fill(part(element, '[data-option=extension]')!, '25');
  await userEvent.tab();
  await expect.poll(() => lines(element)[0]).toBe('P1: Supply 24 V, lighting, 20 A');
  await press(element, '[data-do=create]');
  await expect.poll(() => element.schedule.rows('supplies').map(({ cells }) => cells))
    .toEqual([{ rail: 'L1', purpose: 'lighting', rated: 20, enclosure: 'P1', feed: 'X1' }]);
  expect(element.schedule.rows('devices').map(({ cells }) => cells.rail)).toEqual(['L1']);
  await expect.poll(() => part(element, 'elv-sizing-table')!.hidden).toBe(true);
  element.schedule.undo();
  expect(element.value).toEqual(before);
});

test('where nothing is known of what is to be placed, nothing is created, and the line says what lacks', async () => {
  const element = await mountElement({
    content: { details: {}, sheets: { types: [{ type: 'Lamp', purpose: 'lighting', nodes: 0 }], devices: [{ ref: 'D1', type: 'Lamp', qty: 3 }] } },
  });
  await openWork(element, 'sizing');
  await expect.poll(() => lines(element)).toEqual(['Devices of unknown demand, 24 V, lighting: 3']);
  expect(textOf(element, '.sizing')).toContain('Enter their draw.');
  expect(part(element, '[data-do=create]')).toHaveProperty('disabled', true);
  expect(part(element, '[data-do=csv]')).toHaveProperty('disabled', false);
});

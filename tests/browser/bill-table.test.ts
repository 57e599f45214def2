import { afterEach, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Content } from '../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, textOf } from './element-mount.ts';
import { openWork, press } from './work-support.ts';

afterEach(() => {
  removeElements();
  vi.restoreAllMocks();
});

const CONTENT: Content = {
  details: { panel: 'KP-1' },
  sheets: {
    enclosures: [{ enclosure: 'P1' }, { enclosure: 'P2' }], types: [{ type: 'Lamp', draw: 500, nodes: 0, price: 9.95 }],
    supplies: [{ rail: 'L1', rated: 10, enclosure: 'P1' }, { rail: 'L2', rated: 5, enclosure: 'P2' }],
    conductors: [{ conductor: '1.5' }], runs: [{ run: 'W1', rail: 'L1', conductor: '1.5', length: 10 }],
    devices: [{ type: 'Lamp', qty: 4, rail: 'L1' }, { type: 'Lamp', qty: 3, rail: 'L2' }],
  },
};

const lines = (element: Element) => parts(element, '.bill tbody tr').map((row) =>
  [...row.querySelectorAll('td')].slice(1, 4).map((cell) => cell.textContent.trim()).join(' '));

test('it counts by panel and in all, with the allowance that is entered, and opens and closes by keys', async () => {
  const element = await mountElement({ content: CONTENT });
  await openWork(element, 'bill');
  expect(parts(element, '.work h3').map((title) => title.textContent)).toEqual(['P1', 'P2']);
  expect(lines(element)).toEqual([
    'Lamp 4 pcs', 'Supply 24 V, 10 A 1 pcs', 'Enclosure of unknown size 1 pcs', '1.5 11 m',
    'Lamp 3 pcs', 'Supply 24 V, 5 A 1 pcs', 'Enclosure of unknown size 1 pcs',
  ]);
  await userEvent.fill(part(element, '[data-option=allowance]')!, '25');
  await userEvent.tab();
  await expect.poll(() => lines(element)).toContain('1.5 12.5 m');
  // A decimal comma is no thousands separator, and what is no percentage changes nothing and is said.
  const field = part(element, '[data-option=allowance]') as HTMLInputElement;
  await userEvent.fill(field, '12,5');
  await userEvent.tab();
  await expect.poll(() => lines(element)).toContain('1.5 11.3 m');
  await userEvent.fill(field, '-5');
  await userEvent.tab();
  expect(field.validationMessage).toMatch(/out of range; 0 to 1000 % is/);
  expect(lines(element)).toContain('1.5 11.3 m');
  await press(element, '[data-panel=""]');
  expect(lines(element)).toContain('Lamp 7 pcs');
  // 7 × 9.95
  expect(textOf(element, '.sums')).toContain('Sum 69.65');
  await userEvent.keyboard('{Escape}');
  await expect.poll(() => part(element, 'elv-bill-table')!.hidden).toBe(true);
  await userEvent.keyboard('{Control>}b{/Control}');
  await expect.poll(() => part(element, 'elv-bill-table')!.hidden).toBe(false);
});

test('against an older schedule it says what is more and less, and is saved with that', async () => {
  const element = await mountElement({ content: CONTENT });
  await openWork(element, 'bill');
  const older = JSON.stringify({
    format: 'elv-load-schedule', version: 2, details: {},
    sheets: { ...CONTENT.sheets, devices: [{ type: 'Lamp', qty: 6, rail: 'L1' }] },
  });
  await userEvent.upload(part(element, 'elv-bill-table input[type=file]')!, new File([older], 'old.schedule.json'));
  await expect.poll(() => parts(element, '.changes tbody tr').map((row) => row.textContent.replace(/\s+/g, ' ').trim()))
    .toEqual([expect.stringMatching(/^P1\s*Lamp\s*6\s*4\s*-2\s*pcs\s*-19\.90$/), expect.stringMatching(/^P2\s*Lamp\s*0\s*3\s*\+3\s*pcs\s*\+29\.85$/)]);
  // In all: 6 before, 7 now, each at 9.95.
  await press(element, '[data-panel=""]');
  await expect.poll(() => parts(element, '.changes tbody tr').map((row) => row.textContent.replace(/\s+/g, ' ').trim()))
    .toEqual([expect.stringMatching(/^Lamp\s*6\s*7\s*\+1\s*pcs\s*\+9\.95$/)]);
  const saved: { name: string; text: Promise<string> }[] = [];
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    saved.push({ name: this.download, text: fetch(this.href).then((answer) => answer.text()) });
  });
  await press(element, '[data-do=csv]');
  await press(element, '[data-do=xlsx]');
  await expect.poll(() => saved.map(({ name }) => name)).toEqual(['KP-1-bill.csv', 'KP-1-bill.xlsx']);
  expect(await saved[0]!.text).toMatch(/\r\n\r\nMore and less\r\nPanel,/);
  await press(element, '[data-do=noOlder]');
  expect(part(element, '.changes')).toBeNull();
});

test('a file that is no schedule is said', async () => {
  const element = await mountElement({ content: CONTENT });
  await openWork(element, 'bill');
  await userEvent.upload(part(element, 'elv-bill-table input[type=file]')!, new File(['Ref,Qty\n'], 'list.csv'));
  await expect.poll(() => textOf(element, '.problems')).toContain('list.csv cannot be compared with.');
});

test('what is not known on either side is not said to be the same', async () => {
  const compared = async (devices: Content['sheets']['devices']) => {
    const content: Content = { ...CONTENT, sheets: { ...CONTENT.sheets, devices } };
    const element = await mountElement({ content });
    await openWork(element, 'bill');
    const older = new File([element.value], 'old.schedule.json');
    await userEvent.upload(part(element, 'elv-bill-table input[type=file]')!, older);
    await expect.poll(() => textOf(element, 'elv-bill-table p.sum')).not.toBe('');
    return textOf(element, 'elv-bill-table p.sum').trim();
  };
  expect(await compared([{ type: 'Lamp', qty: 4, rail: 'L1' }])).toBe('Nothing is more or less than before.');
  removeElements();
  expect(await compared([{ type: 'Lamp', qty: 4, rail: 'L1' }, { type: 'Lamp', rail: 'L1' }]))
    .toBe('Of what is known, nothing is more or less than before.');
});

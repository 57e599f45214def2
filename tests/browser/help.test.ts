import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { SCHEMA, SHEET_NAMES } from '../../src/schedule/index.ts';
import { mountElement, part, parts, removeElements, sample, textOf } from './element-mount.ts';
import { englishLeft } from './support/english-left.ts';

afterEach(() => {
  removeElements();
  localStorage.clear();
});

const isOpen = (element: Element) => part(element, '#help')!.matches(':popover-open');

async function help(element: LoadScheduleElement, sheet: (typeof SHEET_NAMES)[number], key: string): Promise<void> {
  await element.select(sheet, 1, key);
  await userEvent.keyboard('{F1}');
  await expect.poll(() => part(element, 'elv-help .here')).not.toBeNull();
}

test('F1 on a cell says what its column means, what may be entered, and where that comes from', async () => {
  const element = await mountElement({ content: sample() });
  await help(element, 'branches', 'limit');
  expect(textOf(element, 'elv-help .here')).toContain('Limit');
  expect(textOf(element, 'elv-help .here')).toContain('a whole number (1 or more)');
  expect(textOf(element, 'elv-help .here')).toContain('TIA-485-A (EIA RS-485), Table 1: 32 unit loads on a line');
  await userEvent.keyboard('{Escape}');
  expect(isOpen(element)).toBe(false);
  await help(element, 'supplies', 'loading');
  await expect.poll(() => textOf(element, 'elv-help .here')).toContain('Loading');
  expect(textOf(element, 'elv-help .here')).toContain('demand ÷ usable');
  await userEvent.keyboard('{Escape}');
  await help(element, 'supplies', 'currentTolerance');
  await expect.poll(() => textOf(element, 'elv-help .here')).toContain('common practice, no source');
});

test('the field finds words and columns of all sheets, by title first; the button opens the same', async () => {
  const element = await mountElement({ content: sample() });
  await userEvent.click(part(element, '[data-command=help]')!);
  await expect.poll(() => textOf(element, 'elv-help .found')).toContain('Supply, rail');
  await userEvent.keyboard('diversity');
  await expect.poll(() => textOf(element, 'elv-help .found dt')).toBe('Connected, diversity, demand');
  const found = parts(element, 'elv-help .found dt').map((each) => each.textContent);
  expect(found.some((each) => /Diversity\s*\(?%?\)?\s*Devices/.test(each) || each.startsWith('Diversity'))).toBe(true);
  await userEvent.fill(part(element, 'elv-help input')!, 'nothing like it');
  await expect.poll(() => textOf(element, 'elv-help .found')).toBe('No word and no column holds “nothing like it”.');
});

test('every column of a sheet is listed when the sheet is opened', async () => {
  const element = await mountElement({ content: sample() });
  await userEvent.click(part(element, '[data-command=help]')!);
  await expect.poll(() => parts(element, 'elv-help summary').length).toBe(SHEET_NAMES.length);
  parts(element, 'elv-help summary')[SHEET_NAMES.indexOf('runs')]!.click();
  await expect.poll(() => parts(element, 'elv-help details dd').filter((each) => each.closest('.facts') === null).length)
    .toBe(SCHEMA.runs.columns.length);
});

describe.each(['de', 'fr'])('in %s', (lang) => {
  test('no word of the help is English', async () => {
    const element = await mountElement({ content: sample(), attributes: { lang } });
    await help(element, 'devices', 'unitDraw');
    for (const summary of parts(element, 'elv-help summary')) summary.click();
    await expect.poll(() => parts(element, 'elv-help details[open]').length).toBe(SHEET_NAMES.length);
    const { shadowRoot } = part(element, 'elv-help')!;
    await expect.poll(() => shadowRoot!.querySelectorAll('details dl').length).toBeGreaterThan(SHEET_NAMES.length);
    // Keys of files are the same in every language.
    expect(englishLeft(element, shadowRoot!).filter((each) => !/: \w+\.\w+$/.test(each))).toEqual([]);
  });
});

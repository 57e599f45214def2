import { afterEach, beforeEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { COMMANDS } from '../../components/schedule-toolbar/commands.ts';
import { mountElement, part, parts, removeElements, sample, textOf } from './element-mount.ts';
import { putOnClipboard } from './support/clipboard.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

const LIST = ['Device\tRoom\tHow many', 'Lamp\tJetty\t3', 'Sensor\tJetty\t1', 'Lamps\tSlip\t2', 'Sensor\tSlip\ttwo', ''].join('\n');
const hidden = (element: Element, tag: string) => part(element, tag)?.hidden;

/** Presses keys one after another, each of which must find the focus within the element, and counts them. */
function keysOf(element: LoadScheduleElement): { press: (keys: string) => Promise<void>; count: () => number } {
  let count = 0;
  return {
    count: () => count,
    press: async (keys) => {
      await expect.poll(() => document.activeElement === element, { message: `the focus before ${keys}` }).toBe(true);
      count += 1;
      await userEvent.keyboard(keys);
    },
  };
}

test('from a list on the clipboard to a bill of what is shared out takes at most twelve key presses', { timeout: 30_000 }, async () => {
  const element = await mountElement({ content: sample() });
  await putOnClipboard(LIST);
  await element.select('devices', 1, 'ref');
  const { press, count } = keysOf(element);
  await press('{F8}');
  await expect.poll(() => hidden(element, 'elv-takeoff-reader'), { timeout: 10_000 }).toBe(false);
  await press('{Control>}v{/Control}');
  await expect.poll(() => textOf(element, 'elv-takeoff-reader .sum')).toBe('Read 6 = taken 4 + left out 0 + undecided 2');
  // «Lamps» are lamps, and there are two sensors on the slip.
  await press('{Enter}');
  await press('2');
  await press('{Enter}');
  await expect.poll(() => textOf(element, '[data-do=take]')).toBe('Take 8 devices in 4 rows');
  await press('{Control>}{Enter}{/Control}');
  await expect.poll(() => element.schedule.rows('devices').length).toBe(7);
  await press('{F9}');
  await expect.poll(() => textOf(element, 'elv-share-out .verdict'), { timeout: 10_000 }).toContain('branch');
  await expect.poll(() => part(element, '[data-do=share]')?.matches(':disabled')).toBe(false);
  await press('{Control>}{Enter}{/Control}');
  await expect.poll(() => element.schedule.rows('devices').every(({ cells }) => typeof cells.branch === 'string')).toBe(true);
  await expect.poll(() => part(element, 'elv-schedule-grid')!.matches(':focus-within')).toBe(true);
  await press('{Control>}b{/Control}');
  // Of the list 5 lamps; the schedule had some before.
  const lamps = () => parts(element, '.bill tbody tr').map((row) => row.textContent.replace(/\s+/g, ' ').trim()).filter((text) => text.includes('Lamp'));
  await expect.poll(() => lamps().length).toBeGreaterThan(0);
  expect(count()).toBeLessThanOrEqual(12);
  await press('{Escape}');
  await element.select('devices', 1, 'ref');

  // The focus is in the rows, and the keys of the areas are heard from there.
  await expect.poll(() => part(element, 'elv-schedule-grid')!.matches(':focus-within')).toBe(true);
  await press('{F9}');
  await expect.poll(() => hidden(element, 'elv-share-out')).toBe(false);
  await press('{Escape}');
  await expect.poll(() => hidden(element, 'elv-share-out')).toBe(true);
  await press('{F8}');
  await expect.poll(() => hidden(element, 'elv-takeoff-reader')).toBe(false);
  await press('{Escape}');
  await expect.poll(() => hidden(element, 'elv-takeoff-reader')).toBe(true);
  await press('{F9}');
  await expect.poll(() => hidden(element, 'elv-share-out')).toBe(false);
});

test('the bill that is asked for while a cell is edited takes over what was typed', async () => {
  const element = await mountElement({ content: sample() });
  await element.select('devices', 1, 'qty');
  await userEvent.keyboard('77{Control>}b{/Control}');
  await expect.poll(() => hidden(element, 'elv-bill-table'), { timeout: 10_000 }).toBe(false);
  expect(element.schedule.document.rows('devices')[0]!.cells.qty).toBe(77);
  await expect.poll(() => textOf(element, '.bill')).toMatch(/77|\d/);
});

test('the key of every command stands in the help', async () => {
  const element = await mountElement({ content: sample() });
  await element.select('devices', 1, 'qty');
  await userEvent.keyboard('{Control>}/{/Control}');
  await expect.poll(() => parts(element, '#keys dt').length).toBeGreaterThan(20);
  const keys = parts(element, '#keys dt').map(({ textContent }) => textContent).join(', ');
  expect(Object.values(COMMANDS).filter((command) => !keys.includes(command.keys)).map(({ title }) => title))
    .toEqual([]);
});

test('a list that is pasted into the field, where the field goes away, leaves the focus on what is next', async () => {
  const element = await mountElement({ content: sample() });
  await putOnClipboard(LIST);
  await element.select('devices', 1, 'ref');
  const { press } = keysOf(element);
  await press('{F8}');
  await expect.poll(() => hidden(element, 'elv-takeoff-reader'), { timeout: 10_000 }).toBe(false);
  part(element, 'elv-takeoff-reader textarea')!.focus();
  await press('{Control>}v{/Control}');
  await expect.poll(() => part(element, 'elv-takeoff-reader')!.shadowRoot!.activeElement?.getAttribute('data-do')).toBe('confirm');
  part(element, '[data-do=another]')!.focus();
  await press('{Enter}');
  await expect.poll(() => part(element, 'elv-takeoff-reader textarea')).not.toBeNull();
  await press('{Control>}v{/Control}');
  await expect.poll(() => textOf(element, 'elv-takeoff-reader .sum')).toContain('Read 6');
});

test('a tab that is pressed keeps the focus when it puts an area away', async () => {
  const element = await mountElement({ content: sample() });
  await element.select('devices', 1, 'ref');
  await userEvent.keyboard('{F9}');
  await expect.poll(() => hidden(element, 'elv-share-out'), { timeout: 10_000 }).toBe(false);
  part(element, '[data-sheet=supplies]')!.focus();
  part(element, '[data-sheet=supplies]')!.click();
  await expect.poll(() => hidden(element, 'elv-share-out')).toBe(true);
  expect(part(element, '[data-sheet=supplies]')!.matches(':focus')).toBe(true);
});

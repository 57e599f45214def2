import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { FindBar } from '../../../components/find-bar/find-bar.ts';
import type { ScheduleGrid } from '../../../components/grid/index.ts';
import { mountElement, part, removeElements, sample, textOf } from '../element-mount.ts';
import { cellAt } from '../support/mount.ts';

afterEach(removeElements);

// On a page of its own, as the bar is fetched once.
test('keys that come before the bar is fetched are typed into it, and none reaches the cell', async () => {
  const element = await mountElement({ content: sample() });
  const before = element.value;
  await userEvent.click(cellAt(part(element, 'elv-schedule-grid') as ScheduleGrid, 0, 0));
  expect(customElements.get('elv-find-bar')).toBeUndefined();
  await userEvent.keyboard('{Control>}f{/Control}lamp');
  await expect.poll(() => (part(element, 'elv-find-bar [name=text]') as HTMLInputElement | null)?.value).toBe('lamp');
  await expect.poll(() => textOf(element, 'elv-find-bar .count')).toBe('4 cells');
  // What follows goes on behind it.
  await userEvent.keyboard('{Backspace}');
  expect((part(element, 'elv-find-bar [name=text]') as HTMLInputElement).value).toBe('lam');
  expect((part(element, 'elv-find-bar') as FindBar).replacing).toBe(false);
  expect(element.value).toEqual(before);
  expect(element.schedule.undoLabel).toBeUndefined();
});

import { expect, test } from 'vitest';
import { COLUMN, scheduleOf } from './support/schedule.ts';
import { useSite } from './support/site.ts';

const site = useSite();

test('rows that are copied in one tab are pasted in another as they were entered', async () => {
  const { page, address, faults } = await site.open('form.html');
  const from = scheduleOf(page);
  await from.shown();
  await from.cell(0, COLUMN.ref).click();
  await page.keyboard.press('Shift+End');
  await page.keyboard.press('Control+C');
  const copied = await from.device(0);
  // It inherits both of them, so that they are in the text that is copied but not among what was entered.
  expect(copied).not.toHaveProperty('unitDraw');
  expect(copied).not.toHaveProperty('diversity');
  expect(copied).toHaveProperty('type');

  const other = await page.context().newPage();
  await other.goto(`${address}/examples/minimal.html`);
  const to = scheduleOf(other);
  await to.cell(0, COLUMN.ref).waitFor();
  await to.cell(0, COLUMN.ref).click();
  await other.keyboard.press('Control+V');
  await to.shown();
  expect(await to.device(0)).toEqual(copied);
  expect(faults).toEqual([]);
});

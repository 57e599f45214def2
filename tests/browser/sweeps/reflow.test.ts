import { afterEach, beforeEach, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { mountElement, part, parts, removeElements, sample } from '../element-mount.ts';
import { isSeen, VIEWS, withHolders } from '../access/every-view.ts';

beforeEach(() => page.viewport(320, 256));
afterEach(async () => {
  removeElements();
  await page.viewport(1280, 800);
});

/**
 * What may be wider than the page: tables in two dimensions, and pictures and previews, which scroll in a box of their
 * own.
 */
const TWO_DIMENSIONS = 'elv-schedule-grid, table, iframe, elv-picture, elv-drawings .sheet, .lines';

// 320 × 256 CSS px is a window of 1280 × 1024 enlarged four times: WCAG 2.2, success criterion 1.4.10.
test.each(VIEWS)('enlarged four times, %s needs no scrolling sideways', async (_name, show) => {
  const element = await mountElement({ content: sample() });
  element.style.blockSize = '';
  await show(element);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(320);
  const beyond = parts(element, '*')
    .filter((each) => isSeen(each) && (
      each.getBoundingClientRect().right > 321 || each.getBoundingClientRect().left < -1
    )
    && !each.matches('.unseen, .word') && !withHolders(each).some((holder) => holder.matches(TWO_DIMENSIONS)));
  expect(beyond.map((each) => `${each.outerHTML.slice(0, 100)} ${Math.round(each.getBoundingClientRect().right)}`))
    .toEqual([]);
});

test('enlarged four times, the grid has room for three rows and what is typed', async () => {
  const element = await mountElement({ content: sample() });
  const grid = part(element, 'elv-schedule-grid')!.getBoundingClientRect();
  expect(grid.height).toBeGreaterThan(120);
});

import Handsontable from 'handsontable/base';
import { afterEach, beforeEach, describe, expect, onTestFinished, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { SightEvent } from '../../components/events/index.ts';
import type { ScheduleGrid } from '../../components/grid/index.ts';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import type { Content } from '../../src/schedule/index.ts';
import { mountElement, openSheet, part, parts, removeElements, said, sample, textOf } from './element-mount.ts';
import { choose } from './support/choose.ts';
import { paste, putOnClipboard, takeFromClipboard } from './support/clipboard.ts';
import { cellAt, frame, placeOf } from './support/mount.ts';

beforeEach(() => { localStorage.removeItem('elv-load-schedule.view'); });
afterEach(removeElements);

const gridOf = (element: Element) => part(element, 'elv-schedule-grid') as ScheduleGrid;
const column = (element: Element, key: string) => placeOf(gridOf(element), key);
const cell = (element: Element, line: number, key: string) => cellAt(gridOf(element), line, column(element, key));
/** Texts of a column, line by line, as they are drawn. */
function texts(element: Element, key: string): string[] {
  const lines = gridOf(element).renderRoot.querySelectorAll('.ht_master tbody tr').length;
  return Array.from({ length: lines }, (_line, at) => cell(element, at, key).textContent);
}
const sight = (element: Element) => textOf(element, 'elv-sheet-view .sight');

/** Opens what can be done with a column by the key, from the cell of the first row. */
async function openColumn(element: Element, key: string): Promise<void> {
  await userEvent.click(cell(element, 0, key));
  await userEvent.keyboard('{Control>}{Shift>}l{/Shift}{/Control}');
  await expect.poll(() => part(element, '#heading')?.matches(':popover-open')).toBe(true);
  await expect.poll(() => part(element, 'elv-column-sight h3')).not.toBeNull();
}
const press = async (element: Element, selector: string) => {
  await userEvent.click(part(element, selector)!);
  await frame();
};
async function sheet(element: LoadScheduleElement, name: 'devices' | 'supplies'): Promise<void> {
  part(element, `[data-sheet=${name}]`)!.click();
  await element.updateComplete;
  await frame();
}
const close = () => userEvent.keyboard('{Escape}');

describe('rows are picked and sorted by what a column holds', () => {
  test('one rail, by keys and mouse: the line says how many of how many, and one press shows all again', async () => {
    const element = await mountElement({ content: sample() });
    await openColumn(element, 'rail');
    await press(element, '[data-value=L1]');
    await close();
    expect(texts(element, 'ref')).toEqual(['D1', 'D2', '']);
    expect(sight(element)).toContain('2 of 3 rows picked by Rail');
    await press(element, '[data-sight=all]');
    expect(texts(element, 'ref')).toEqual(['D1', 'D2', 'D3', '']);
    expect(part(element, 'elv-sheet-view .sight')).toBeNull();
  });

  test('by a result, largest first; the file keeps its order, and rows that are sorted have no place to move to', async () => {
    const element = await mountElement({ content: sample() });
    const before = element.value;
    await openColumn(element, 'connected');
    await press(element, '[data-sort=down]');
    await close();
    // 3 × 0.35, 2 × 0.35 and 6 × 0.1 A
    expect(texts(element, 'ref')).toEqual(['D3', 'D1', 'D2', '']);
    expect(gridOf(element).renderRoot.querySelector('.ht_clone_top [aria-sort=descending] .title')!.textContent).toBe('Connected');
    expect(element.value).toBe(before);
    await userEvent.click(cell(element, 0, 'qty'));
    await userEvent.keyboard('{Alt>}{Shift>}{ArrowDown}{/Shift}{/Alt}');
    await frame();
    expect(said(element)).toContain('no place to move to');
    expect(element.value).toBe(before);
  });

  test('a heading says its column, and that rows are picked and sorted by it, beside each other', async () => {
    const element = await mountElement({ content: sample() });
    await openColumn(element, 'qty');
    await press(element, '[data-sort=down]');
    await userEvent.fill(part(element, '[data-bound=least]')!, '1');
    await userEvent.keyboard('{Enter}');
    await close();
    await userEvent.hover(cell(element, 1, 'area'));
    const heading = gridOf(element).renderRoot.querySelector('.ht_clone_top [aria-sort=descending]')!;
    expect(heading.querySelector('.used')!.textContent).toBe('⊂↓');
    const title = heading.querySelector<HTMLElement>('.title')!;
    expect(title.textContent).toBe('Qty');
    // What is drawn above a part that can be seen through is no cover.
    const { left, right, top, bottom } = title.getBoundingClientRect();
    const covers = [...heading.querySelectorAll<HTMLElement>('.colHeader > :not(.title)')].filter((each) => {
      const box = each.getBoundingClientRect();
      return getComputedStyle(each).opacity !== '0' && box.left < right && box.right > left && box.top < bottom - 1 && box.bottom > top + 1;
    });
    expect(covers.map(({ className }) => className)).toEqual([]);
  });

  test('whoever picks from far below sees the rows from the first on, or the row where they are', async () => {
    const devices = Array.from({ length: 120 }, (_each, at) => ({ ref: `D${at + 1}`, qty: 1, rail: at % 5 === 0 ? 'L1' : 'L2' }));
    const content = { ...sample(), sheets: { ...sample().sheets, devices } };
    const element = await mountElement({ content });
    const holder = () => gridOf(element).renderRoot.querySelector('.ht_master .wtHolder')!;
    const pickL1 = async () => {
      await userEvent.keyboard('{Control>}{Shift>}l{/Shift}{/Control}');
      await expect.poll(() => part(element, 'elv-column-sight h3')).not.toBeNull();
      await press(element, '[data-value=L1]');
      await close();
      expect(sight(element)).toContain('24 of 120 rows');
    };
    await element.select('devices', 'D120', 'rail');
    expect(holder().scrollTop).toBeGreaterThan(1000);
    await pickL1();
    expect(holder().scrollTop).toBe(0);
    expect(gridOf(element).selectedRows).toEqual([element.schedule.document.rows('devices')[0]!.id]);
    await press(element, '[data-sight=all]');
    await element.select('devices', 'D11', 'rail');
    // The row stays selected; it is far up while the rows are seen from below.
    holder().scrollTop = 2400;
    await frame();
    await pickL1();
    expect(gridOf(element).selectedRows).toEqual([element.schedule.document.rows('devices')[10]!.id]);
    expect(cell(element, 2, 'ref').textContent).toBe('D11');
    expect(holder().scrollTop).toBeLessThan(100);
  });

  test('from a bound on, also with the mouse on the heading; what cannot be read is said', async () => {
    const element = await mountElement({ content: sample() });
    const heading = () => [...gridOf(element).renderRoot.querySelectorAll('.ht_clone_top th')]
      .find((each) => Number(each.getAttribute('aria-colindex')) === column(element, 'demand') + 2)!;
    await userEvent.hover(heading());
    await userEvent.click(heading().querySelector('.menu')!);
    await expect.poll(() => part(element, 'elv-column-sight [data-bound=least]')).not.toBeNull();
    const least = part(element, 'elv-column-sight [data-bound=least]') as HTMLInputElement;
    await userEvent.fill(least, 'much');
    await userEvent.keyboard('{Tab}');
    await expect.poll(() => textOf(element, 'elv-column-sight .wrong')).toContain('much');
    await userEvent.fill(least, '0.6 A');
    await userEvent.keyboard('{Tab}');
    await close();
    await frame();
    // 0.56, 0.60 and 0.84 A
    expect(texts(element, 'ref')).toEqual(['D2', 'D3', '']);
    // It was of that sheet: another may have no such column.
    await openSheet(element, 'conductors');
    await expect.poll(() => part(element, 'elv-column-sight')).toBeNull();
  });

  test('only what is over, on each sheet by itself', async () => {
    const element = await mountElement({ content: sample() });
    await element.select('supplies', 'L1', 'rated');
    await choose(element, 'rows', 'over');
    await frame();
    expect(texts(element, 'rail').filter((text) => text !== '')).toEqual(['L1']);
    expect(sight(element)).toContain('1 of 3 rows');
    await sheet(element, 'devices');
    expect(texts(element, 'ref')).toEqual(['D1', 'D2', 'D3', '']);
    await sheet(element, 'supplies');
    expect(sight(element)).toContain('1 of 3 rows those that are over');
  });

  test('a row that is mended stays until the rows are picked anew, and one that is gone to comes in', async () => {
    const element = await mountElement({ content: sample() });
    await element.select('supplies', 'L1', 'rated');
    await choose(element, 'rows', 'over');
    await frame();
    await userEvent.click(cell(element, 0, 'rated'));
    await userEvent.keyboard('20{Enter}');
    await frame();
    expect(element.schedule.value('supplies', 0, 'status')).toBe('ok');
    expect(cell(element, 0, 'rail').textContent).toBe('L1');
    await press(element, '[data-sight=again]');
    expect(sight(element)).toContain('0 of 3 rows');
    await element.select('supplies', 'L3', 'rated');
    await frame();
    expect(cell(element, 0, 'rail').textContent).toBe('L3');
    expect(sight(element)).toContain('1 of 3 rows');
  });
});

describe('what is done works on the rows in sight only', () => {
  /** Rows of rails L1 and L2 in turn; those of L1 are in sight. */
  async function narrowed(): Promise<LoadScheduleElement> {
    const devices = [1, 2, 3, 4].map((n) => ({ ref: `D${n}`, qty: n, unitDraw: 100, rail: n % 2 === 1 ? 'L1' : 'L2' }));
    const element = await mountElement({ content: { details: {}, sheets: { devices, supplies: [{ rail: 'L1', rated: 5 }, { rail: 'L2', rated: 5 }] } } });
    await openColumn(element, 'rail');
    await press(element, '[data-value=L1]');
    await close();
    expect(texts(element, 'ref')).toEqual(['D1', 'D3', '']);
    return element;
  }
  const quantities = (element: LoadScheduleElement) => element.schedule.rows('devices').map(({ cells }) => cells.qty);

  test('paste goes to them and says so; what is beyond comes as new rows', async () => {
    const element = await narrowed();
    await putOnClipboard('10\n30\n50');
    await userEvent.click(cell(element, 0, 'qty'));
    await paste();
    await frame();
    expect(quantities(element)).toEqual([10, 2, 30, 4, 50]);
    expect(said(element)).toContain('rows out of sight passed over');
    expect(texts(element, 'qty')).toEqual(['10', '30', '50', '']);
  });

  test('filling, emptying and copying pass over the others', async () => {
    const element = await narrowed();
    await userEvent.click(cell(element, 0, 'qty'));
    await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}{Control>}d{/Control}');
    await frame();
    expect(quantities(element)).toEqual([1, 2, 1, 4]);
    expect(said(element)).toContain('Rows out of sight were passed over.');
    await userEvent.keyboard('{Control>}c{/Control}');
    expect((await takeFromClipboard()).trim().split(/\s+/)).toEqual(['1', '1']);
    await userEvent.click(cell(element, 0, 'unitDraw'));
    await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}{Delete}');
    expect(element.schedule.rows('devices').map(({ cells }) => cells.unitDraw ?? null)).toEqual([null, 100, null, 100]);
  });
});

describe('headings of groups fold', () => {
  const content = (): Content => ({ ...sample() });

  test('with a press on the heading, and with keys from any row of the group', async () => {
    const element = await mountElement({ content: content() });
    await choose(element, 'groupings', 'rail');
    await frame();
    expect(texts(element, 'ref').slice(1, 3)).toEqual(['D1', 'D2']);
    await userEvent.click(cell(element, 0, 'area'));
    await frame();
    expect(texts(element, 'ref')[2]).toBe('D3');
    await userEvent.click(cell(element, 2, 'qty'));
    await userEvent.keyboard('{Alt>}{Shift>}{ArrowLeft}{/Shift}{/Alt}');
    await frame();
    expect(texts(element, 'ref').some((text) => /^D\d$/.test(text))).toBe(false);
    // The heading has the focus, and opens by key.
    await userEvent.keyboard('{Alt>}{Shift>}{ArrowRight}{/Shift}{/Alt}');
    await frame();
    expect(texts(element, 'ref')).toContain('D3');
    expect(element.schedule.undoLabel).toBeUndefined();
  });

  test('all at once, and a finding in a folded group leads to its row', async () => {
    const element = await mountElement({ content: content() });
    await choose(element, 'groupings', 'area');
    await choose(element, 'groupings', 'type');
    await press(element, '[data-command=foldGroups]');
    expect(texts(element, 'ref').some((text) => /^D\d$/.test(text))).toBe(false);
    await element.select('devices', 'D2', 'qty');
    await frame();
    expect(texts(element, 'ref')).toContain('D2');
    expect(textOf(element, 'elv-cell-explanation .rule')).toContain('of D2');
  });
});

test('at 390 px the way to sort and pick is in reach of a finger', async () => {
  await page.viewport(390, 800);
  const element = await mountElement({ content: sample() });
  await openColumn(element, 'area');
  const box = part(element, '#heading')!.getBoundingClientRect();
  expect([box.left >= 0, box.right <= 390]).toEqual([true, true]);
  for (const button of parts(element, 'elv-column-sight button')) expect(button.offsetHeight).toBeGreaterThanOrEqual(24);
  await page.viewport(1280, 800);
});

test('rows that are picked or sorted are drawn once, although the line that says so makes the grid smaller', async () => {
  const element = await mountElement({ content: sample() });
  let draws = 0;
  const count = () => { draws += 1; };
  Handsontable.hooks.add('afterRender', count);
  onTestFinished(() => { Handsontable.hooks.remove('afterRender', count); });
  const grid = part(element, 'elv-schedule-grid')!;
  const settled = async () => { for (let frames = 0; frames < 4; frames += 1) await frame(); };
  await settled();
  const height = grid.offsetHeight;
  for (const only of ['over', undefined] as const) {
    draws = 0;
    part(element, 'elv-schedule-toolbar')!.dispatchEvent(new SightEvent({ only }));
    await settled();
    expect(draws).toBe(1);
    expect(grid.offsetHeight < height).toBe(only !== undefined);
  }
});

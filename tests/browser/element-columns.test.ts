import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { ScheduleGrid } from '../../components/grid/index.ts';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { mountElement, openSheet, part, removeElements, said, sample } from './element-mount.ts';
import { demoContent } from './support/demo-content.ts';
import { cellAt, frame, placeOf } from './support/mount.ts';

afterEach(() => {
  removeElements();
  localStorage.removeItem('elv-load-schedule.view');
});

const gridOf = (element: Element) => part(element, 'elv-schedule-grid') as ScheduleGrid;
const keys = (element: Element) => gridOf(element).columns.map(({ key }) => key);
const cell = (element: Element, line: number, key: string) =>
  cellAt(gridOf(element), line, placeOf(gridOf(element), key));
const heading = (element: Element, key: string, part = '.ht_clone_top') => {
  const { title } = gridOf(element).columns[placeOf(gridOf(element), key)]!;
  return [...gridOf(element).renderRoot.querySelectorAll<HTMLElement>(`${part} thead th`)]
    .find((each) => each.textContent.startsWith(title));
};
const viewOf = (element: LoadScheduleElement) => (JSON.parse(element.value) as { view?: unknown }).view;
const holder = (element: Element) => gridOf(element).renderRoot.querySelector<HTMLElement>('.ht_master .wtHolder')!;

/** Opens the choice of columns and presses what it has by some names of its data. */
async function inColumns(element: Element, ...selectors: readonly string[]): Promise<void> {
  await userEvent.click(part(element, '[popovertarget=columns]')!);
  for (const selector of selectors) {
    await expect.poll(() => part(element, `elv-column-choice ${selector}`)).not.toBeNull();
    await userEvent.click(part(element, `elv-column-choice ${selector}`)!);
  }
  await userEvent.keyboard('{Escape}');
  await frame();
}

/** Whether a column lies within the rows, unscrolled. */
function isInView(element: Element, key: string): boolean {
  const at = heading(element, key)?.getBoundingClientRect();
  return at !== undefined && at.right <= holder(element).getBoundingClientRect().right + 1;
}

describe('what is typed and what it does are in view at once at 1280 px', () => {
  test.each([
    ['devices', ['type', 'qty', 'rail', 'run', 'unitDraw', 'connected', 'demand']],
    ['supplies', ['rated', 'units', 'target', 'usable', 'connected', 'demand', 'loading']],
    ['runs', ['conductor', 'length', 'maxDrop', 'current', 'carries']],
    ['ways', ['kind', 'rated', 'connected', 'demand', 'loading', 'available']],
    ['branches', ['limit', 'nodes', 'free', 'used']],
    ['outputs', ['kind', 'qty', 'power', 'current', 'rating', 'loading'], 'folded'],
  ] as const)('%s', async (sheet, expected, overview?) => {
    const element = await mountElement({ content: demoContent() });
    element.style.inlineSize = '1280px';
    if (overview === 'folded') part(element, '[aria-controls=panel]')!.click();
    await openSheet(element, sheet);
    await expect.poll(() => keys(element)).toContain(expected[0]);
    // Widths are measured anew once the overview is there.
    await expect.poll(() => expected.filter((key) => !isInView(element, key))).toEqual([]);
  });
});

describe('columns', () => {
  test('of a group come and go together, and the file keeps the group', async () => {
    const element = await mountElement({ content: sample() });
    await openSheet(element, 'runs');
    await inColumns(element, '[data-group=measured]');
    expect(keys(element)).toEqual(expect.arrayContaining(['measuredCurrent', 'voltageTolerance']));
    expect(keys(element)).not.toContain('basis');
    expect(viewOf(element)).toEqual({ rare: ['runs.measured'] });
    await inColumns(element, '[data-group=measured]');
    expect(keys(element)).not.toContain('measuredCurrent');
    expect(viewOf(element)).toBeUndefined();
    expect([element.dirty, element.schedule.undoLabel]).toEqual([false, undefined]);
  });

  test('are hidden, and one that is gone to comes in sight', async () => {
    const element = await mountElement({ content: sample() });
    await inColumns(element, '[data-column=area]', '[data-column=branch]');
    expect(keys(element).slice(0, 4)).toEqual(['ref', 'type', 'qty', 'rail']);
    // The letters of the others stay.
    expect(heading(element, 'type')!.querySelector('.letter')!.textContent).toBe('C');
    expect(viewOf(element)).toEqual({ hidden: { devices: ['area', 'branch'] } });
    await element.select('devices', 1, 'area');
    expect(keys(element)).toContain('area');
  });

  test('stay in view as far as a person says', async () => {
    const element = await mountElement({ content: sample() });
    await userEvent.click(part(element, '[popovertarget=columns]')!);
    await expect.poll(() => part(element, 'elv-column-choice [data-frozen]')).not.toBeNull();
    await userEvent.selectOptions(part(element, 'elv-column-choice [data-frozen]')!, 'type');
    await userEvent.keyboard('{Escape}');
    await frame();
    expect(viewOf(element)).toEqual({ frozen: { devices: 'type' } });
    expect(heading(element, 'type', '.ht_clone_top_inline_start_corner')).toBeDefined();
  });

  test('of an empty sheet are as wide as what is typed, once a second row begins', async () => {
    const element = await mountElement();
    await expect.poll(() => part(element, '[data-way=begin]')).not.toBeNull();
    await userEvent.click(part(element, '[data-way=begin]')!);
    const narrow = heading(element, 'area')!.offsetWidth;
    await userEvent.keyboard('L1-001{Tab}Ground floor, hall{Enter}L1-002{Enter}');
    await expect.poll(() => element.schedule.rows('devices')).toHaveLength(2);
    await expect.poll(() => heading(element, 'area')!.offsetWidth).toBeGreaterThan(narrow + 40);
    expect(cell(element, 0, 'area').scrollWidth).toBeLessThanOrEqual(cell(element, 0, 'area').clientWidth);
  });

  test('are widened by a drag, and fit what they hold at a double click; a file opened again has the width', async () => {
    const area = 'A room of which the name is much longer than any column would be';
    const content = { details: {}, sheets: { devices: [{ ref: 'D1', area }, { ref: 'D2', area: 'Loft' }] } };
    const element = await mountElement({ content });
    const width = () => heading(element, 'area')!.offsetWidth;
    const before = width();
    await userEvent.hover(heading(element, 'area')!);
    const handle = () => gridOf(element).renderRoot.querySelector<HTMLElement>('.manualColumnResizer')!;
    await userEvent.dblClick(handle());
    await expect.poll(width).toBeGreaterThan(before + 200);
    expect(cell(element, 0, 'area').scrollWidth).toBeLessThanOrEqual(cell(element, 0, 'area').clientWidth);
    const kept = viewOf(element) as { wide: { devices: { area: number } } };
    expect(kept.wide.devices.area).toBeGreaterThan(30);
    const fitted = width();
    const text = element.value;
    element.value = '{"format":"elv-load-schedule","version":2,"sheets":{}}';
    element.value = text;
    await frame();
    await expect.poll(width).toBe(fitted);
    await inColumns(element, '[data-widths]');
    await expect.poll(width).toBe(before);
  });
});

test('each sheet has the place where it was left, sideways too', async () => {
  const element = await mountElement({ content: demoContent() });
  await element.select('devices', 60, 'voltageMargin');
  await frame();
  const [top, left] = [holder(element).scrollTop, holder(element).scrollLeft];
  expect([top > 0, left > 0]).toEqual([true, true]);
  await openSheet(element, 'supplies');
  await frame();
  expect([holder(element).scrollTop, holder(element).scrollLeft]).toEqual([0, 0]);
  await openSheet(element, 'devices');
  await expect.poll(() => [holder(element).scrollTop, holder(element).scrollLeft]).toEqual([top, left]);
});

test('undo by key shows the sheet and the cell that it changed, and the focus stays among the rows', async () => {
  const element = await mountElement({ content: sample() });
  await userEvent.click(cell(element, 1, 'qty'));
  await userEvent.keyboard('9{Enter}');
  await openSheet(element, 'types');
  await expect.poll(() => keys(element)).toContain('draw');
  await userEvent.click(cell(element, 0, 'draw'));
  await userEvent.keyboard('{Control>}z{/Control}');
  await expect.poll(() => part(element, '[aria-selected=true]')!.dataset.sheet).toBe('devices');
  await expect.poll(() => cell(element, 1, 'qty').classList.contains('current')).toBe(true);
  expect(said(element)).toContain('Undone');
  await userEvent.keyboard('7{Enter}');
  expect(element.schedule.value('devices', 1, 'qty')).toBe(7);
});

test('undo by its button leaves the focus there', async () => {
  const element = await mountElement({ content: sample() });
  await userEvent.click(cell(element, 1, 'qty'));
  await userEvent.keyboard('9{Enter}');
  await userEvent.click(cell(element, 1, 'area'));
  await userEvent.keyboard('Loft{Enter}');
  const button = part(element, '[data-command=undo]')!;
  button.focus();
  await userEvent.keyboard('{Enter}');
  await frame();
  await expect.poll(() => (button.getRootNode() as ShadowRoot).activeElement === button).toBe(true);
  expect(cell(element, 1, 'area').classList.contains('current')).toBe(true);
});

test('the explanation is small while nothing is selected, shows all that it says, and does not shrink from cell to cell', async () => {
  const element = await mountElement({ content: demoContent() });
  element.style.inlineSize = '1280px';
  const pane = part(element, 'elv-cell-explanation')!;
  await frame();
  const empty = pane.offsetHeight;
  expect(empty).toBeLessThan(50);
  await element.select('runs', 'L2-W4', 'status');
  await frame();
  const words = part(element, 'elv-cell-explanation .words')!;
  await expect.poll(() => words.scrollHeight - words.clientHeight).toBeLessThanOrEqual(0);
  const full = pane.offsetHeight;
  expect(full).toBeGreaterThan(empty);
  await element.select('runs', 'L2-W4', 'note');
  await frame();
  expect(pane.offsetHeight).toBe(full);
});

test('the cell that is explained stays in view when the explanation grows; who scrolled away is left there', async () => {
  const devices = Array.from({ length: 80 }, (_each, at) => ({ ref: `D${at + 1}`, qty: 1, rail: 'L1' }));
  const element = await mountElement({ content: { ...sample(), sheets: { ...sample().sheets, devices } } });
  const holder = gridOf(element).renderRoot.querySelector('.ht_master .wtHolder')!;
  const seen = () => {
    const { bottom } = cell(element, 39, 'qty').getBoundingClientRect();
    return holder.getBoundingClientRect().bottom - bottom;
  };
  await element.select('devices', 'D40', 'qty');
  await expect.poll(seen).toBeGreaterThanOrEqual(0);
  const before = holder.clientHeight;
  element.style.blockSize = '700px';
  await expect.poll(() => holder.clientHeight).toBeLessThan(before);
  await expect.poll(seen).toBeGreaterThanOrEqual(0);
  holder.scrollTop = 0;
  await frame();
  element.style.blockSize = '640px';
  await expect.poll(() => holder.clientHeight).toBeLessThan(before - 80);
  await frame();
  expect(holder.scrollTop).toBe(0);
});

test('the columns that stay in view follow the rows when the browser scrolls them alone to what takes the focus', async () => {
  const devices = Array.from({ length: 80 }, (_each, at) => ({ ref: `D${at + 1}`, qty: 1, rail: 'L1' }));
  const element = await mountElement({ content: { ...sample(), sheets: { ...sample().sheets, devices } } });
  const tags = gridOf(element).renderRoot.querySelector('.ht_clone_inline_start > .wtHolder')!;
  const tagOf = (text: string) => [...tags.querySelectorAll('tbody td')].find((each) => each.textContent === text)!;
  holder(element).scrollTop = 300;
  await frame();
  await frame();
  tags.scrollTop += 9;
  await frame();
  await frame();
  expect(tags.scrollTop).toBe(holder(element).scrollTop);
  expect(tagOf('D15').getBoundingClientRect().top).toBeCloseTo(cell(element, 14, 'qty').getBoundingClientRect().top, 0);
});

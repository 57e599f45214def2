import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { ScheduleGrid } from '../../components/grid/index.ts';
import { paste, putOnClipboard, takeFromClipboard } from './support/clipboard.ts';
import { cellAt, frame, mountGrid, placeOf, unmountAll } from './support/mount.ts';
import { sample } from './support/sample-content.ts';

afterEach(() => {
  unmountAll();
  document.body.style.inlineSize = document.documentElement.dir = '';
});

const headings = (grid: ScheduleGrid, body: string): string[] =>
  [...grid.renderRoot.querySelectorAll(`${body} thead th .title`)].map((each) => each.textContent);

test('the status stands after the tag and both stay in view, with the letters that formulas know', async () => {
  document.body.style.inlineSize = '600px';
  const { grid } = await mountGrid(sample(), { sheet: 'supplies' });
  grid.goTo(0, 'loss');
  await frame();
  expect(headings(grid, '.ht_clone_top_inline_start_corner')).toEqual(['Rail', 'Status']);
  const letters = [...grid.renderRoot.querySelectorAll('.ht_clone_top_inline_start_corner thead .letter')]
    .map((each) => each.textContent);
  // The status is the last of the columns that a formula may name.
  expect(letters[0]).toBe('A');
  expect(letters[1]).not.toBe('B');
  const frozen = cellAt(grid, 0, 1).getBoundingClientRect();
  expect(frozen.left).toBeGreaterThan(0);
  expect(frozen.right).toBeLessThan(300);
  expect(cellAt(grid, 0, 1).textContent).toBe('within limits');
});

test('rows pasted at the tag go past the status, and copied rows come back as they were', async () => {
  const { grid, schedule } = await mountGrid(sample(), { sheet: 'supplies' });
  await putOnClipboard('L7\tlighting\t24\t4\r\nL8\tcontrol\t24\t2,5\r\n');
  await userEvent.click(cellAt(grid, 2, 0));
  await paste();
  await frame();
  expect(schedule.rows('supplies').slice(2).map(({ cells }) => cells)).toEqual([
    { rail: 'L7', purpose: 'lighting', voltage: 24, rated: 4 }, {
      rail: 'L8', purpose: 'control', voltage: 24, rated: 2.5,
    },
  ]);
  await userEvent.click(cellAt(grid, 3, 0));
  await userEvent.keyboard('{Shift>}{ArrowRight}{ArrowRight}{/Shift}');
  await userEvent.keyboard('{Control>}c{/Control}');
  expect(await takeFromClipboard()).toBe('L8\tcontrol');
  await userEvent.click(cellAt(grid, 0, placeOf(grid, 'status')));
  await userEvent.keyboard('{Control>}c{/Control}');
  expect(await takeFromClipboard()).toBe('within limits');
});

test('the tabulator goes from what is entered to what is entered, and back', async () => {
  const { grid, selections } = await mountGrid(sample(), { sheet: 'branches' });
  await userEvent.click(cellAt(grid, 0, 0));
  await userEvent.keyboard('{Tab}');
  await frame();
  expect(selections.at(-1)).toMatchObject({ key: 'limit' });
  await userEvent.keyboard('{Shift>}{Tab}{/Shift}');
  await frame();
  expect(selections.at(-1)).toMatchObject({ key: 'branch' });
});

test('a document with shorter texts shows every column that its narrower ones leave room for', async () => {
  document.body.style.inlineSize = '900px';
  const content = sample();
  const long = content.sheets.devices!.map((row) => (
    { ...row, ref: 'A reference of many signs', area: 'An area with a long name of its own', type: 'Lamp' }
  ));
  const { grid, schedule } = await mountGrid({ ...content, sheets: { ...content.sheets, devices: long } });
  const before = headings(grid, '.ht_master').length;
  schedule.load(content, 'Opening of a file');
  await frame();
  const right = Math.max(...[
    ...grid.renderRoot.querySelectorAll('.ht_master tbody tr:first-child td')
  ].map((each) => each.getBoundingClientRect().right));
  expect(right).toBeGreaterThanOrEqual(900);
  expect(headings(grid, '.ht_master').length).toBeGreaterThan(before);
});

test('figures read from left to right on a page that is written from right to left', async () => {
  document.documentElement.dir = 'rtl';
  const { grid } = await mountGrid(sample());
  const cell = cellAt(grid, 0, placeOf(grid, 'diversity'));
  expect(cell.textContent).toMatch(/^80\s%$/);
  const place = (from: number): number => {
    const range = document.createRange();
    range.setStart(cell.firstChild!, from);
    range.setEnd(cell.firstChild!, from + 1);
    return range.getBoundingClientRect().left;
  };
  expect(place(0)).toBeLessThan(place(cell.textContent.length - 1));
  // The ends of figures stand below one another, at the side away from the tag.
  expect(place(0) - cell.getBoundingClientRect().left).toBeLessThan(12);
});

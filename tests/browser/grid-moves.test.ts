import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { ScheduleGrid } from '../../components/grid/index.ts';
import { cellAt, frame, mountGrid, placeOf, unmountAll, type Mounted } from './support/mount.ts';
import { sample } from './support/sample-content.ts';

afterEach(unmountAll);

const at = (grid: ScheduleGrid, line: number, key: string) => cellAt(grid, line, placeOf(grid, key));
/** Key and row, from 1, of the cell that has the focus, and how many cells are selected. */
function where({ selections, schedule }: Mounted): string {
  const { id, key, statistics } = selections.at(-1)!;
  return `${key} ${schedule.document.position('devices', id) + 1}, ${statistics.count}`;
}
async function press(keys: string): Promise<void> {
  await userEvent.keyboard(keys);
  await frame();
}
const column = ({ schedule }: Mounted, key: string) =>
  schedule.document.rows('devices').map(({ cells }) => cells[key] ?? null);
const drawn = (grid: ScheduleGrid, selector: string) => grid.renderRoot.querySelector<HTMLElement>(selector)!;

describe('going', () => {
  test('Ctrl with an arrow goes to the edge, with Shift it selects as far', async () => {
    const mounted = await mountGrid(sample());
    await userEvent.click(at(mounted.grid, 0, 'qty'));
    await press('{Control>}{ArrowDown}{/Control}');
    const last = where(mounted);
    await press('{ArrowDown}');
    expect(where(mounted)).toBe(last);
    await press('{Control>}{ArrowUp}{/Control}');
    expect(where(mounted)).toBe('qty 1, 1');
    await press('{Control>}{Shift>}{ArrowDown}{/Shift}{/Control}');
    expect(where(mounted)).toBe('qty 1, 4');
    await press('{Control>}{ArrowLeft}{/Control}');
    expect(where(mounted)).toBe('ref 1, 1');
  });

  test('Enter goes down, Shift+Enter up, Shift+Tab back, each taking over what was typed', async () => {
    const mounted = await mountGrid(sample());
    await userEvent.click(at(mounted.grid, 1, 'qty'));
    await press('5{Enter}');
    expect(where(mounted)).toBe('qty 3, 1');
    await press('6{Shift>}{Enter}{/Shift}');
    expect(where(mounted)).toBe('qty 2, 1');
    await press('7{Shift>}{Tab}{/Shift}');
    expect(where(mounted)).toBe('type 2, 1');
    expect(column(mounted, 'qty')).toEqual([2, 7, 6, 3]);
  });
});

describe('selecting', () => {
  test('Shift+click and a drag select what lies between', async () => {
    const mounted = await mountGrid(sample());
    await userEvent.click(at(mounted.grid, 0, 'type'));
    await userEvent.click(at(mounted.grid, 2, 'qty'), { modifiers: ['Shift'] });
    await frame();
    // Three rows of two columns.
    expect(where(mounted)).toMatch(/, 6$/);
    await userEvent.dragAndDrop(at(mounted.grid, 1, 'qty'), at(mounted.grid, 3, 'qty'));
    await frame();
    expect(where(mounted)).toMatch(/^qty \d, 3$/);
  });

  test('Shift with Home and End selects to the ends of the row, with Ctrl to the corner, with Page Down on', async () => {
    const mounted = await mountGrid(sample());
    await userEvent.click(at(mounted.grid, 0, 'qty'));
    await press('{Shift>}{PageDown}{/Shift}');
    expect(where(mounted)).toBe('qty 1, 4');
    await userEvent.click(at(mounted.grid, 1, 'qty'));
    await press('{Shift>}{Home}{/Shift}');
    // Quantity, type, area and tag.
    expect(where(mounted)).toBe('qty 2, 4');
    await press('{Control>}{Shift>}{Home}{/Shift}{/Control}');
    expect(where(mounted)).toBe('qty 2, 8');
    await userEvent.click(at(mounted.grid, 2, 'qty'));
    await press('{Shift>}{End}{/Shift}');
    expect(Number(where(mounted).split(', ')[1])).toBeGreaterThan(5);
  });

  test('a number selects its row, with Shift several; a heading its column, the corner everything', async () => {
    const mounted = await mountGrid(sample());
    const { grid } = mounted;
    const numbers = () => [...grid.renderRoot.querySelectorAll<HTMLElement>('.ht_clone_inline_start tbody th')];
    const heading = (key: string) => [...grid.renderRoot.querySelectorAll<HTMLElement>('.ht_clone_top thead th')]
      .find((each) => Number(each.getAttribute('aria-colindex')) === placeOf(grid, key) + 2)!;
    const count = () => Number(where(mounted).split(', ')[1]);
    await userEvent.click(numbers()[0]!);
    await frame();
    const across = count();
    expect(across).toBeGreaterThan(5);
    await userEvent.click(numbers()[2]!, { modifiers: ['Shift'] });
    await frame();
    // Of three rows, of which the third holds as much as the first.
    expect(count()).toBeGreaterThanOrEqual(2 * across);
    await userEvent.click(numbers()[3]!, { modifiers: ['Shift'] });
    await frame();
    const all = count();
    await userEvent.click(heading('qty'), { position: { x: 8, y: 8 } });
    await frame();
    expect(count()).toBe(4);
    await userEvent.click(drawn(grid, '.ht_clone_top_inline_start_corner thead th'));
    await frame();
    expect(count()).toBe(all);
  });
});

describe('editing', () => {
  test('a double click opens the cell with what stands in it, to go on', async () => {
    const mounted = await mountGrid(sample());
    await userEvent.dblClick(at(mounted.grid, 1, 'area'));
    await press(' 2{Enter}');
    expect(column(mounted, 'area')).toEqual(['Hall', 'Hall 2', 'Store', 'Store']);
  });

  test('Backspace empties the selected cells as Delete does, in one action', async () => {
    const mounted = await mountGrid(sample());
    await userEvent.click(at(mounted.grid, 0, 'area'));
    await press('{Shift>}{ArrowDown}{/Shift}{Backspace}');
    expect(column(mounted, 'area')).toEqual([null, null, 'Store', 'Store']);
    mounted.schedule.undo();
    expect(column(mounted, 'area')).toEqual(['Hall', 'Hall', 'Store', 'Store']);
  });

  test('Home and End go through the text after F2', async () => {
    const mounted = await mountGrid(sample());
    await userEvent.click(at(mounted.grid, 0, 'area'));
    await press('{F2}{Home}Old {End} 1{Enter}');
    expect(column(mounted, 'area')[0]).toBe('Old Hall 1');
  });

  test('after Ctrl+X the cells come back where they are pasted', async () => {
    const mounted = await mountGrid(sample());
    await userEvent.click(at(mounted.grid, 0, 'area'));
    await press('{Control>}x{/Control}');
    mounted.grid.goTo(mounted.schedule.document.rows('devices')[3]!.id, 'area');
    await press('{Control>}v{/Control}');
    expect(column(mounted, 'area')).toEqual([null, 'Hall', 'Store', 'Hall']);
  });
});

test('the wheel scrolls the rows and leaves the selected cell where it is', async () => {
  const devices = Array.from({ length: 200 }, (_, index) => ({ ref: `D${index + 1}`, qty: 1 }));
  const mounted = await mountGrid({ details: {}, sheets: { devices } });
  await userEvent.click(at(mounted.grid, 0, 'qty'));
  await userEvent.wheel(at(mounted.grid, 3, 'qty'), { delta: { y: 600 } });
  await expect.poll(() => drawn(mounted.grid, '.ht_master .wtHolder').scrollTop).toBeGreaterThan(300);
  expect(where(mounted)).toBe('qty 1, 1');
  // Typing goes to the cell that is selected.
  await press('4{Enter}');
  expect(column(mounted, 'qty').slice(0, 2)).toEqual([4, 1]);
});

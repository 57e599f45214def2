import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { SheetName } from '../../../src/schedule/index.ts';
import { mountGrid, cellAt, frame, unmountAll, type Mounted } from '../support/mount.ts';
import { sample } from '../support/sample-content.ts';

afterEach(unmountAll);

const rows = (count: number) => ({
  details: {}, sheets: { branches: Array.from(
    { length: count }, (_, index) => ({ branch: `B${index + 1}`, limit: 50 })
  ) },
});

/** Key and row, from 1, of the cell that has the focus. */
function at({ selections, schedule }: Mounted, sheet: SheetName = 'branches'): string {
  const { id, key } = selections.at(-1)!;
  return `${key} ${schedule.document.position(sheet, id) + 1}`;
}

/** Cells in the selection. */
const selected = ({ selections }: Mounted): number => selections.at(-1)!.statistics.count;

async function press(keys: string): Promise<void> {
  await userEvent.keyboard(keys);
  await frame();
}

// Keys of the data grid in the ARIA Authoring Practices Guide, pattern «grid».
describe('the keys of the grid pattern', () => {
  test('arrows go one cell and stop at the edges; Home and End go along the row, with Ctrl to the corners',
    async () => {
    const mounted = await mountGrid(rows(4), { sheet: 'branches' });
    await userEvent.click(cellAt(mounted.grid, 0, 0));
    await press('{ArrowUp}{ArrowLeft}');
    expect(at(mounted)).toBe('branch 1');
    await press('{ArrowDown}{ArrowRight}');
    expect(at(mounted)).not.toBe('branch 1');
    await press('{Home}');
    expect(at(mounted)).toBe('branch 2');
    await press('{End}');
    const last = at(mounted).split(' ')[0]!;
    expect(at(mounted)).toBe(`${last} 2`);
    await press('{ArrowRight}');
    expect(at(mounted)).toBe(`${last} 2`);
    await press('{Control>}{Home}{/Control}');
    expect(at(mounted)).toBe('branch 1');
    await press('{Control>}{End}{/Control}');
    expect(at(mounted).split(' ')[0]).toBe(last);
  });

  test('Page Down and Page Up go by what is in view', async () => {
    const mounted = await mountGrid(rows(300), { sheet: 'branches', height: 400 });
    await userEvent.click(cellAt(mounted.grid, 0, 0));
    await press('{PageDown}');
    const row = Number(at(mounted).split(' ')[1]);
    expect(row).toBeGreaterThan(5);
    expect(row).toBeLessThan(25);
    await press('{PageUp}');
    expect(at(mounted)).toBe('branch 1');
  });

  test('Shift with arrows extends, Shift+Space takes rows, Ctrl+Space columns, Ctrl+A all', async () => {
    const mounted = await mountGrid(rows(3), { sheet: 'branches' });
    await userEvent.click(cellAt(mounted.grid, 0, 0));
    await press('{Shift>}{ArrowDown}{ArrowRight}{/Shift}');
    expect(selected(mounted)).toBe(4);
    await press('{Control>}{Home}{/Control}{ArrowDown}{Shift>} {/Shift}');
    const across = selected(mounted);
    expect(across).toBeGreaterThan(5);
    await press('{Control>}{Home}{/Control}{ArrowDown}{Control>} {/Control}');
    const down = selected(mounted);
    expect(down).toBeGreaterThanOrEqual(3);
    await press('{Control>}{Home}{/Control}{ArrowDown}{Control>}a{/Control}');
    expect(selected(mounted)).toBe(across * down);
  });

  test('Enter and F2 open the cell, Escape leaves it as it was, typing takes its place, and the arrows are the grid’s again', async () => {
    const mounted = await mountGrid(sample());
    const { grid, schedule } = mounted;
    await userEvent.click(cellAt(grid, 0, 3));
    await press('{F2}9{Escape}');
    expect(schedule.value('devices', 0, 'qty')).toBe(2);
    await press('{ArrowDown}');
    expect(at(mounted, 'devices')).toBe('qty 2');
    await press('7{Enter}');
    expect(schedule.value('devices', 1, 'qty')).toBe(7);
    expect(schedule.undo()).toBeDefined();
    expect(schedule.value('devices', 1, 'qty')).toBe(4);
  });

  test('roles, places and states of rows, headings and cells are told', async () => {
    const { grid } = await mountGrid(sample(), { sheet: 'supplies' });
    const root = grid.renderRoot.querySelector('[role=treegrid]')!;
    expect(root.getAttribute('aria-multiselectable')).toBe('true');
    const cell = cellAt(grid, 1, 2);
    expect(
      [cell.getAttribute('role'), cell.getAttribute('aria-colindex'), cell.closest('tr')!.getAttribute('aria-rowindex')]
    ).toEqual(['gridcell', '4', '3']);
    const computed = grid.renderRoot.querySelector('.ht_master td.computed')!;
    expect(computed.getAttribute('aria-readonly')).toBe('true');
    expect(grid.renderRoot.querySelectorAll('[role=columnheader]').length).toBeGreaterThan(5);
    const titles = grid.columns.map(({ title }) => title);
    const told = () => [...grid.renderRoot.querySelectorAll('.ht_clone_top th, .ht_clone_top_inline_start_corner th')]
      .filter((heading) => heading.querySelector('.title') !== null)
      .map((heading) => [heading.querySelector('.title')!.textContent, titles[Number(heading.getAttribute('aria-colindex')) - 2]] as const);
    expect(told().map(([title]) => title)).toContain(titles[2]);
    for (const [title, expected] of told()) expect(title).toBe(expected);
    await userEvent.click(cellAt(grid, 1, 1));
    await press('{End}');
    await expect.poll(() => told().map(([title]) => title)).toContain(titles.at(-1));
    for (const [title, expected] of told()) expect(title).toBe(expected);
    expect(grid.renderRoot.querySelectorAll('[role=rowheader]').length).toBeGreaterThan(1);
  });
});

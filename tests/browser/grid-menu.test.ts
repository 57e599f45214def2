import axe from 'axe-core';
import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { CommandEvent } from '../../components/events/index.ts';
import type { ScheduleGrid } from '../../components/grid/index.ts';
import { putOnClipboard } from './support/clipboard.ts';
import { cellAt, frame, mountGrid, placeOf, unmountAll } from './support/mount.ts';
import { sample } from './support/sample-content.ts';

afterEach(unmountAll);

const menuOf = (grid: ScheduleGrid) => grid.renderRoot.querySelector<HTMLElement>('.cell-menu:popover-open');
const entry = (grid: ScheduleGrid, command: string) => menuOf(grid)!.querySelector<HTMLElement>(`[data-entry=${command}]`)!;
const rowHeading = (grid: ScheduleGrid, line: number) =>
  [...grid.renderRoot.querySelectorAll<HTMLElement>('.ht_clone_inline_start tbody th')][line]!;
const columnHeading = (grid: ScheduleGrid, key: string) =>
  [...grid.renderRoot.querySelectorAll<HTMLElement>('.ht_clone_top thead th')]
    .find((each) => Number(each.getAttribute('aria-colindex')) === placeOf(grid, key) + 2)!;

async function rightClick(grid: ScheduleGrid, on: HTMLElement): Promise<void> {
  await userEvent.click(on, { button: 'right' });
  await expect.poll(() => menuOf(grid)).not.toBeNull();
}

describe('the menu', () => {
  test('a right click on a cell selects it and offers what can be done, each with its key', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await rightClick(grid, cellAt(grid, 1, placeOf(grid, 'qty')));
    const offered = [...menuOf(grid)!.querySelectorAll('[role=menuitem]')].map((each) => [...each.children].map(({ textContent }) => textContent).join(' '));
    expect(offered).toEqual([
      'Edit F2', 'Undo Ctrl+Z', 'Redo Ctrl+Y', 'Cut Ctrl+X', 'Copy Ctrl+C', 'Paste Ctrl+V', 'Empty Delete', 'Fill down Ctrl+D',
      'Insert above Alt+Shift+Enter', 'Insert below Alt+Enter', 'Delete rows Alt+Delete', 'Move up Alt+Shift+Up',
      'Move down Alt+Shift+Down', 'Duplicate Alt+Shift+D', 'Move to a rail or branch Alt+Shift+M', 'Swap a type Alt+Shift+S', 'Part a run in two Alt+Shift+X', 'Sort and pick rows Ctrl+Shift+L', 'Find Ctrl+F', 'Replace Ctrl+H', 'Go to Ctrl+G',
    ]);
    expect(entry(grid, 'undo').getAttribute('aria-disabled')).toBe('true');
    await userEvent.click(entry(grid, 'clearCells'));
    await expect.poll(() => schedule.document.rows('devices')[1]!.cells.qty).toBeUndefined();
    expect(menuOf(grid)).toBeNull();
    // The focus is in the cell again.
    await userEvent.keyboard('9{Enter}');
    expect(schedule.document.rows('devices')[1]!.cells.qty).toBe(9);
  });

  test('is accessible', async () => {
    const { grid } = await mountGrid(sample());
    await rightClick(grid, cellAt(grid, 1, 1));
    const { violations } = await axe.run(menuOf(grid)!, { resultTypes: ['violations'] });
    expect(violations.map(({ id }) => id)).toEqual([]);
  });

  test('within a selection the selection stays, and the command is for all of it', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, placeOf(grid, 'qty')));
    await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}');
    await rightClick(grid, cellAt(grid, 1, placeOf(grid, 'qty')));
    await userEvent.click(entry(grid, 'clearCells'));
    await expect.poll(() => schedule.document.rows('devices').map(({ cells }) => cells.qty ?? null)).toEqual([null, null, 1, 3]);
  });

  test('by keys: Shift+F10 opens it, arrows and letters go through it, Enter takes, Escape leaves all as it was', async () => {
    const { grid } = await mountGrid(sample());
    const commands: string[] = [];
    grid.addEventListener('elv-command', (event) => {
      if (event instanceof CommandEvent) commands.push(event.command);
    });
    await userEvent.click(cellAt(grid, 1, placeOf(grid, 'area')));
    await userEvent.keyboard('{Shift>}{F10}{/Shift}');
    await expect.poll(() => menuOf(grid)).not.toBeNull();
    await userEvent.keyboard('{Escape}');
    expect(menuOf(grid)).toBeNull();
    await userEvent.keyboard('{Shift>}{F10}{/Shift}');
    await expect.poll(() => menuOf(grid)).not.toBeNull();
    await userEvent.keyboard('{End}{ArrowDown}{ArrowUp}{ArrowUp}{ArrowUp}{Enter}');
    expect(commands).toEqual(['find']);
    await userEvent.keyboard('{Shift>}{F10}{/Shift}');
    await expect.poll(() => menuOf(grid)).not.toBeNull();
    await userEvent.keyboard('mm{Enter}');
    expect(commands).toEqual(['find', 'moveDown']);
  });

  test('on a row heading it is for rows, on a column heading for columns; a click elsewhere closes it', async () => {
    const { grid } = await mountGrid(sample());
    await rightClick(grid, rowHeading(grid, 1));
    expect(menuOf(grid)!.querySelector('[role=menuitem]')!.textContent).toContain('Insert above');
    await userEvent.click(cellAt(grid, 0, placeOf(grid, 'area')));
    expect(menuOf(grid)).toBeNull();
    await rightClick(grid, columnHeading(grid, 'area'));
    expect(entry(grid, 'moreColumns')).not.toBeNull();
  });

  test('at a heading it leads to sorting by that column and picking rows, of several that are selected too', async () => {
    const { grid } = await mountGrid(sample());
    const opened: string[] = [];
    grid.addEventListener('elv-heading-open', (event) => { opened.push((event).key); });
    await userEvent.click(columnHeading(grid, 'area'), { position: { x: 8, y: 8 } });
    await userEvent.click(columnHeading(grid, 'qty'), { modifiers: ['Shift'], position: { x: 8, y: 8 } });
    // Also on the button that opens the same by itself.
    await rightClick(grid, columnHeading(grid, 'qty'));
    expect(opened).toEqual([]);
    const first = menuOf(grid)!.querySelector('[role=menuitem]')!;
    expect([...first.children].map(({ textContent }) => textContent)).toEqual(['Sort and pick rows', 'Ctrl+Shift+L']);
    await userEvent.keyboard('{Enter}');
    expect(menuOf(grid)).toBeNull();
    expect(opened).toEqual(['qty']);
    // By keys it is the column of the cell.
    await userEvent.click(cellAt(grid, 1, placeOf(grid, 'area')));
    await userEvent.keyboard('{Control>}{Shift>}l{/Shift}{/Control}');
    expect(opened).toEqual(['qty', 'area']);
  });

  test('the button of a heading opens when it is let go, and not when the touch turned into scrolling', async () => {
    const { grid } = await mountGrid(sample());
    const opened: string[] = [];
    grid.addEventListener('elv-heading-open', (event) => { opened.push((event).key); });
    const press = (...then: readonly string[]) => {
      const button = columnHeading(grid, 'qty').querySelector('.menu')!;
      button.dispatchEvent(new MouseEvent('mousedown', { bubbles: true, composed: true, cancelable: true, button: 0 }));
      for (const name of then) button.dispatchEvent(new PointerEvent(name, { bubbles: true, composed: true }));
      return new Promise((resolve) => { setTimeout(resolve, 30); });
    };
    await press('pointercancel', 'pointerup');
    expect(opened).toEqual([]);
    await press('pointerup');
    expect(opened).toEqual(['qty']);
  });

  test('copies what was entered, formulas among it, and pastes it', async () => {
    const { grid, schedule } = await mountGrid(sample());
    const qty = placeOf(grid, 'qty');
    await userEvent.click(cellAt(grid, 1, qty));
    await userEvent.keyboard('=1+2{Enter}');
    await rightClick(grid, cellAt(grid, 1, qty));
    await userEvent.click(entry(grid, 'copy'));
    await rightClick(grid, cellAt(grid, 2, qty));
    await userEvent.click(entry(grid, 'paste'));
    await expect.poll(() => schedule.formulaText('devices', schedule.document.rows('devices')[2]!.id, 'qty')).toBe('=1+2');
    await putOnClipboard('7');
    await rightClick(grid, cellAt(grid, 0, qty));
    await userEvent.click(entry(grid, 'paste'));
    await expect.poll(() => schedule.document.rows('devices')[0]!.cells.qty).toBe(7);
  });

  test('who may only look is offered nothing that changes anything', async () => {
    const { grid } = await mountGrid(sample(), { readonly: true });
    await rightClick(grid, cellAt(grid, 1, placeOf(grid, 'area')));
    const left = [...menuOf(grid)!.querySelectorAll<HTMLElement>('[aria-disabled=false]')].map((each) => each.dataset.entry);
    expect(left).toEqual(['copy', 'columnMenu', 'find', 'goTo']);
  });
});

describe('dragging rows', () => {
  const refs = (schedule: { document: { rows(sheet: 'devices'): readonly { cells: { ref?: unknown } }[] } }) =>
    schedule.document.rows('devices').map(({ cells }) => cells.ref);

  test('rows that are selected by their numbers go where they are dropped, as one action, and formulas follow', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 3, placeOf(grid, 'qty')));
    await userEvent.keyboard('=D1*2{Enter}');
    const id = schedule.document.rows('devices')[3]!.id;
    expect(schedule.value('devices', id, 'qty')).toBe(4);
    await userEvent.click(rowHeading(grid, 0));
    await userEvent.dragAndDrop(rowHeading(grid, 0), rowHeading(grid, 2), { targetPosition: { x: 8, y: 20 } });
    await expect.poll(() => refs(schedule)).toEqual(['D2', 'D3', 'D1', 'D4']);
    expect(schedule.undoLabel).toBe('Move of 1 row');
    expect(schedule.formulaText('devices', id, 'qty')).toBe('=D3*2');
    schedule.undo();
    expect(refs(schedule)).toEqual(['D1', 'D2', 'D3', 'D4']);
  });

  test('a drag from a row that is not selected selects, and moves nothing', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, 1));
    await userEvent.dragAndDrop(rowHeading(grid, 0), rowHeading(grid, 2));
    await frame();
    expect(schedule.undoLabel).toBeUndefined();
    await userEvent.keyboard('{Alt>}{Delete}{/Alt}');
    expect(refs(schedule)).toEqual(['D4']);
  });

  test('a drag whose pointer is taken away drops nothing', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(rowHeading(grid, 0));
    const at = rowHeading(grid, 0).getBoundingClientRect();
    const mouse = (name: string, on: EventTarget, down: number) => {
      const place = { clientX: at.x + 8, clientY: at.y + down };
      on.dispatchEvent(new MouseEvent(name, { bubbles: true, composed: true, cancelable: true, ...place }));
    };
    const mark = () => grid.renderRoot.querySelector('.drop-line');
    mouse('mousedown', rowHeading(grid, 0), 5);
    mouse('mousemove', document, 70);
    await expect.poll(mark).not.toBeNull();
    document.dispatchEvent(new PointerEvent('pointercancel', { bubbles: true }));
    expect(mark()).toBeNull();
    mouse('mouseup', document, 70);
    expect(refs(schedule)).toEqual(['D1', 'D2', 'D3', 'D4']);
    expect(schedule.undoLabel).toBeUndefined();
  });

  test('a click on a selected row selects it alone', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(rowHeading(grid, 0));
    await userEvent.click(rowHeading(grid, 2), { modifiers: ['Shift'] });
    await userEvent.click(rowHeading(grid, 1));
    await userEvent.keyboard('{Alt>}{Delete}{/Alt}');
    expect(refs(schedule)).toEqual(['D1', 'D3', 'D4']);
  });

  test('per rail, rows stay within their group', async () => {
    const { grid, schedule, messages } = await mountGrid(sample(), { grouping: 'rail' });
    // Heading L1, D1, D2, heading L2, D3, heading of those without, D4.
    await userEvent.click(rowHeading(grid, 1));
    await userEvent.dragAndDrop(rowHeading(grid, 1), rowHeading(grid, 4), { targetPosition: { x: 8, y: 20 } });
    await expect.poll(() => messages.at(-1)?.text).toMatch(/^Rows are dragged within their group/);
    expect(schedule.undoLabel).toBeUndefined();
    await userEvent.dragAndDrop(rowHeading(grid, 1), rowHeading(grid, 2), { targetPosition: { x: 8, y: 20 } });
    await expect.poll(() => refs(schedule)).toEqual(['D2', 'D1', 'D3', 'D4']);
  });
});

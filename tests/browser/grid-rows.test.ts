import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import { cellAt, frame, mountGrid, placeOf, textsOf, unmountAll } from './support/mount.ts';
import { COLUMN, sample } from './support/sample-content.ts';

afterEach(unmountAll);

const refs = (schedule: LoadSchedule): unknown[] =>
  schedule.document.rows('devices').map(({ cells }) => cells.ref ?? null);

describe('rows', () => {
  test('Alt+Enter and Alt+Shift+Enter insert as many rows as are selected', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 1, COLUMN.qty));
    await userEvent.keyboard('{Alt>}{Enter}{/Alt}');
    expect(refs(schedule)).toEqual(['D1', 'D2', null, 'D3', 'D4']);
    await userEvent.keyboard('7{Enter}');
    expect(schedule.document.rows('devices')[2]!.cells).toEqual({ qty: 7 });
    await userEvent.click(cellAt(grid, 0, COLUMN.qty));
    await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}{Alt>}{Shift>}{Enter}{/Shift}{/Alt}');
    expect(refs(schedule)).toEqual([null, null, 'D1', 'D2', null, 'D3', 'D4']);
    expect(schedule.undoLabel).toBe('Insertion of 2 rows');
  });

  test('Alt+Delete deletes the selected rows, says so, and is undone in one step', async () => {
    const { grid, schedule, messages } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 1, COLUMN.qty));
    await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}{Alt>}{Delete}{/Alt}');
    expect(refs(schedule)).toEqual(['D1', 'D4']);
    expect(messages.at(-1)).toMatchObject({ text: '2 device rows deleted.', undoable: true });
    await userEvent.keyboard('{Control>}z{/Control}');
    expect(refs(schedule)).toEqual(['D1', 'D2', 'D3', 'D4']);
    expect(messages.at(-1)!.text).toBe('Undone: Deletion of 2 device rows.');
  });

  test('rows move up and down, and the selection goes with them', async () => {
    const { grid, schedule, selections } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 2, COLUMN.qty));
    await userEvent.keyboard('{Alt>}{Shift>}{ArrowUp}{/Shift}{/Alt}');
    expect(refs(schedule)).toEqual(['D1', 'D3', 'D2', 'D4']);
    await frame();
    expect(schedule.document.row('devices', selections.at(-1)!.id)!.cells.ref).toBe('D3');
    await userEvent.keyboard('{Alt>}{Shift>}{ArrowUp}{ArrowUp}{/Shift}{/Alt}');
    expect(refs(schedule)).toEqual(['D3', 'D1', 'D2', 'D4']);
    await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}{Alt>}{Shift>}{ArrowDown}{/Shift}{/Alt}');
    expect(refs(schedule)).toEqual(['D2', 'D3', 'D1', 'D4']);
    expect(schedule.undoLabel).toBe('Move of 2 rows down');
  });

  test('Delete empties cells, so that defaults come back', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.unitDraw));
    await userEvent.keyboard('500{Enter}{ArrowUp}{Delete}');
    await frame();
    expect(cellAt(grid, 0, COLUMN.unitDraw).textContent).toBe('350.0');
    expect(schedule.document.rows('devices')[0]!.cells.unitDraw).toBeUndefined();
  });

  test('Ctrl+D fills down, formulas move along, tags and computed cells are left alone', async () => {
    const { grid, schedule, messages } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.qty));
    await userEvent.keyboard('=E1{Escape}');
    await userEvent.click(cellAt(grid, 1, COLUMN.qty));
    await userEvent.keyboard('=D1*2{Enter}{ArrowUp}{Shift>}{ArrowDown}{ArrowDown}{/Shift}{Control>}d{/Control}');
    const ids = schedule.document.rows('devices').map(({ id }) => id);
    expect(ids.map((id) => schedule.value('devices', id, 'qty'))).toEqual([2, 4, 8, 16]);
    expect(schedule.formulaText('devices', ids[3]!, 'qty')).toBe('=D3*2');
    expect(messages.at(-1)!.text).toBe('2 cells filled.');
    await userEvent.click(cellAt(grid, 3, COLUMN.ref));
    await userEvent.keyboard('{Shift>}{ArrowRight}{/Shift}{Control>}d{/Control}');
    expect(schedule.document.rows('devices')[3]!.cells).toMatchObject({ ref: 'D4', area: 'Store' });
  });

  test('dragging the fill handle down does the same', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.area));
    await frame();
    const handle = grid.renderRoot.querySelector<HTMLElement>('.ht_master .wtBorder.current.corner')!;
    await userEvent.dragAndDrop(handle, cellAt(grid, 2, COLUMN.area));
    expect(schedule.document.rows('devices').map(({ cells }) => cells.area)).toEqual(['Hall', 'Hall', 'Hall', 'Store']);
    expect(schedule.undoLabel).toBe('Fill of 1 cell');
  });

  test('undo and redo reach across sheets, and every grid text follows', async () => {
    const { grid, schedule } = await mountGrid(sample(), { sheet: 'supplies' });
    const device = schedule.document.rows('devices')[0]!.id;
    schedule.act('Edit of Qty', [{ op: 'set', sheet: 'devices', id: device, key: 'qty', value: 10 }]);
    await frame();
    const demand = placeOf(grid, 'demand');
    grid.goTo(schedule.document.rows('supplies')[0]!.id, 'demand');
    await frame();
    // 10 × 350 mA × 0.8 + 0.4 A
    expect(cellAt(grid, 0, demand).textContent).toBe('3.20');
    grid.focusGrid();
    await userEvent.keyboard('{Control>}z{/Control}');
    await frame();
    expect(cellAt(grid, 0, demand).textContent).toBe('0.96');
    await userEvent.keyboard('{Control>}{Shift>}z{/Shift}{/Control}');
    await frame();
    expect(cellAt(grid, 0, demand).textContent).toBe('3.20');
  });

  test('a read-only grid shows everything and changes nothing', async () => {
    const { grid, schedule, messages } = await mountGrid(sample(), { readonly: true });
    await userEvent.click(cellAt(grid, 0, COLUMN.qty));
    await userEvent.keyboard('9{Enter}{Delete}{Alt>}{Enter}{/Alt}');
    grid.pasteText('5');
    expect(schedule.undoLabel).toBeUndefined();
    expect(messages.at(-1)!.text).toBe('This schedule is shown read-only: nothing can be changed.');
    expect(textsOf(grid, [COLUMN.ref], [0, 1, 2, 3])).toEqual([['D1'], ['D2'], ['D3'], ['D4']]);
    expect(() => cellAt(grid, 4, 0)).toThrow();
  });
});

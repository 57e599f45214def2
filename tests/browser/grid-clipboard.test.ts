import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { paste, putOnClipboard, takeFromClipboard } from './support/clipboard.ts';
import { cellAt, frame, mountGrid, unmountAll } from './support/mount.ts';
import { COLUMN, sample } from './support/sample-content.ts';

afterEach(unmountAll);

const table = (...lines: (string | number)[][]): string => lines.map((cells) => cells.join('\t')).join('\r\n') + '\r\n';

describe('paste', () => {
  test('40 rows with decimal commas and watts grow the sheet, and one undo takes them back', async () => {
    const { grid, schedule, messages } = await mountGrid(sample());
    const lines = Array.from({ length: 40 }, (_, index) =>
      [`P${index + 1}`, 'Quay', 'Sensor', index + 1, 'L1', 'B1', '', '12,5', index === 0 ? '8,4 W' : '120,25', '0,75']);
    await putOnClipboard(table(...lines));
    await userEvent.click(cellAt(grid, 4, COLUMN.ref));
    await paste();
    await frame();
    const rows = schedule.document.rows('devices');
    expect(rows).toHaveLength(44);
    expect(rows[4]!.cells).toEqual({
      ref: 'P1', area: 'Quay', type: 'Sensor', qty: 1, rail: 'L1', branch: 'B1', distance: 12.5, unitDraw: 350,
      diversity: 0.75,
    });
    expect(rows[43]!.cells).toMatchObject({ qty: 40, unitDraw: 120.25 });
    // 0.96 A before; 350 mA × 0.75 + (2 + … + 40) × 120.25 mA × 0.75 = 0.2625 A + 819 × 0.0901875 A
    expect(schedule.value('supplies', schedule.document.rows('supplies')[0]!.id, 'demand'))
      .toBeCloseTo(0.96 + 0.2625 + 819 * 0.0901875, 9);
    expect(messages.at(-1)!.text).toBe(
      '40 rows of 10 columns pasted, 40 of them new; 1 draw in watts turned into mA, such as 8,4 W at 24 V is 350 mA.');
    expect(messages.at(-1)!.undoable).toBe(true);
    await userEvent.keyboard('{Control>}z{/Control}');
    expect(schedule.document.rows('devices')).toHaveLength(4);
    await userEvent.keyboard('{Control>}y{/Control}');
    expect(schedule.document.rows('devices')).toHaveLength(44);
  });

  test('nothing is taken when a cell cannot be: every such cell is named, and the text can be pasted again',
    async () => {
    const { grid, schedule, messages } = await mountGrid(sample());
    await putOnClipboard(
      table(['X1', 'Loft', 'Lamp', 'two', 'L1'], ['X2', 'Loft', 'Lamp', 3, 'L1'], ['X3', 'Loft', 'Lamp', -1, 'L1'])
    );
    await userEvent.click(cellAt(grid, 2, COLUMN.ref));
    await paste();
    expect(schedule.undoLabel).toBeUndefined();
    expect(messages.at(-1)).toMatchObject({ tone: 'refused' });
    expect(messages.at(-1)!.text).toMatch(/^Nothing was pasted, as 2 cells cannot be taken\. Line 1, Qty: “two”/);
    expect(messages.at(-1)!.details).toHaveLength(2);
    expect(messages.at(-1)!.details[1]).toMatch(/^Line 3, Qty: “-1”/);
  });

  test('a first line of headings chooses the columns, with their units; computed and unknown ones are left out by name', async () => {
    const { grid, schedule, messages } = await mountGrid(sample());
    await putOnClipboard(table(['Unit draw (A)', 'Ref', 'Demand (A)', 'Colour', 'qty'], ['0,5', 'N1', '99', 'red', 2]));
    await userEvent.click(cellAt(grid, 4, COLUMN.rail));
    await paste();
    expect(schedule.document.rows('devices')[4]!.cells).toEqual({ ref: 'N1', qty: 2, unitDraw: 500 });
    expect(messages.at(-1)!.text).toContain(
      'left out as computed: Demand; left out as this sheet has no such column: Colour'
    );
  });

  test('cells with line breaks, tabs and quotation marks stay whole, and markup on the clipboard is passed over',
    async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 3, COLUMN.note));
    const data = new DataTransfer();
    data.setData('text/plain', '"first\r\nsecond ""line"""\r\n5" pipe');
    data.setData('text/html', '<table><tr><td style="color:red">WRONG</td></tr></table>');
    cellAt(grid, 3, COLUMN.note).dispatchEvent(
      new ClipboardEvent('paste', { clipboardData: data, bubbles: true, composed: true, cancelable: true })
    );
    const rows = schedule.document.rows('devices');
    expect(rows[3]!.cells.note).toBe('first\nsecond "line"');
    expect(rows[4]!.cells.note).toBe('5" pipe');
  });

  test('one cell fills every selected one', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await putOnClipboard('11');
    await userEvent.click(cellAt(grid, 0, COLUMN.qty));
    await userEvent.keyboard('{Shift>}{ArrowDown}{ArrowDown}{/Shift}');
    await paste();
    expect(schedule.document.rows('devices').map(({ cells }) => cells.qty)).toEqual([11, 11, 11, 3]);
  });

  test('watts are turned into a draw by the voltage of the rail that the same line names', async () => {
    const content = sample();
    const { grid, schedule } = await mountGrid({
      ...content, sheets: { ...content.sheets, supplies: [{ rail: 'L48', voltage: 48, rated: 5 }] },
    });
    await putOnClipboard(table(['Ref', 'Rail', 'Unit draw'], ['N1', 'L48', '24 W']));
    await userEvent.click(cellAt(grid, 4, 0));
    await paste();
    // 24 W ÷ 48 V = 500 mA
    expect(schedule.document.rows('devices')[4]!.cells.unitDraw).toBe(500);
  });
});

describe('copy and cut', () => {
  test('what is copied is pasted back the same, with figures in full', async () => {
    const { grid } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.ref));
    await userEvent.keyboard('{Shift>}{ArrowDown}{ArrowRight}{ArrowRight}{ArrowRight}{/Shift}{Control>}c{/Control}');
    expect((await takeFromClipboard()).split(/\r?\n/)).toEqual(['D1\tHall\tLamp\t2', 'D2\tHall\tSensor\t4']);
  });

  test('cut empties the cells in one step', async () => {
    const { grid, schedule, messages } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.area));
    await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}{Control>}x{/Control}');
    expect(schedule.document.rows('devices').slice(0, 2).map(({ cells }) => cells.area))
      .toEqual([undefined, undefined]);
    expect(messages.at(-1)!.text).toBe('2 cells cut.');
    expect(await takeFromClipboard()).toMatch(/^Hall\r?\nHall$/);
    schedule.undo();
    expect(schedule.document.rows('devices')[0]!.cells.area).toBe('Hall');
  });

  test('copying from an open editor is the editor’s own', async () => {
    const { grid } = await mountGrid(sample());
    await userEvent.dblClick(cellAt(grid, 0, COLUMN.area));
    await userEvent.keyboard('{Control>}a{/Control}{Control>}c{/Control}{Escape}');
    expect(await takeFromClipboard()).toBe('Hall');
  });

  test('the buttons copy and cut as well', async () => {
    const { grid, schedule } = await mountGrid(sample());
    grid.goTo(schedule.document.rows('devices')[1]!.id, 'area');
    await grid.copy();
    expect(await takeFromClipboard()).toBe('Hall');
    await grid.cut();
    expect(schedule.document.rows('devices')[1]!.cells.area).toBeUndefined();
  });
});

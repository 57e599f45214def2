import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { ENTERED_TYPE } from '../../components/grid/clipboard/entered-cells.ts';
import type { ScheduleGrid } from '../../components/grid/index.ts';
import { paste, putOnClipboard, takeFromClipboard } from './support/clipboard.ts';
import { cellAt, frame, mountGrid, unmountAll } from './support/mount.ts';
import { COLUMN, sample } from './support/sample-content.ts';

afterEach(unmountAll);

/** The sample with a formula in D2 that reads its own row, the row above, a row that stays, and a type. */
const withFormula = () => {
  const content = sample();
  content.sheets.devices![1]!.distance =
    '=[qty]*2+[devices.qty#1]+[devices.$qty$#1]+[devices.qty$#1]*0.5+[types.draw#2]/1000';
  return content;
};
const copyRows = async (grid: ScheduleGrid, line: number, more: number): Promise<void> => {
  await userEvent.click(cellAt(grid, line, COLUMN.ref));
  await userEvent.keyboard(`{Shift>}${'{ArrowDown}'.repeat(more)}{End}{/Shift}{Control>}c{/Control}`);
};

describe('copied rows', () => {
  test('inherit again where they did, and their formulas move along as a fill moves them', async () => {
    const { grid, schedule } = await mountGrid(withFormula());
    await copyRows(grid, 0, 1);
    await userEvent.click(cellAt(grid, 4, COLUMN.ref));
    await paste();
    const rows = schedule.document.rows('devices');
    expect(rows).toHaveLength(6);
    expect(rows[4]!.cells).toEqual(rows[0]!.cells);
    expect([schedule.isOwn('devices', rows[4]!.id, 'unitDraw'), schedule.isOwn('devices', rows[4]!.id, 'diversity')])
      .toEqual([false, false]);
    // Row 2 came to row 6: what has no dollar sign moves by four rows, another sheet stays.
    expect(schedule.formulaText('devices', rows[5]!.id, 'distance')).toBe('=D6*2+D5+$D$1+D$1*0.5+types!E2/1000');
    // By hand: 4 × 2 + 2 + 2 + 2 × 0.5 + 100 ÷ 1000, in both rows.
    expect(schedule.value('devices', rows[5]!.id, 'distance')).toBeCloseTo(13.1, 9);
    // A type that changes reaches the copy too.
    const lamp = schedule.document.rows('types')[0]!.id;
    schedule.act('edit', [{ op: 'set', sheet: 'types', id: lamp, key: 'draw', value: 500 }]);
    expect(schedule.value('devices', rows[4]!.id, 'unitDraw')).toBe(500);
  });

  test('a spreadsheet outside still gets what is shown', async () => {
    const { grid } = await mountGrid(withFormula());
    await copyRows(grid, 1, 0);
    const cells = (await takeFromClipboard()).split('\t');
    expect([cells[COLUMN.distance], cells[COLUMN.unitDraw], cells[COLUMN.diversity]]).toEqual(['13.1', '100', '1']);
  });

  test('go to another element on the page; a formula that names a row which is another there comes as its value',
    async () => {
    const from = await mountGrid(withFormula(), { height: 250 });
    const content = sample();
    const to = await mountGrid(
      { ...content, sheets: { ...content.sheets, types: content.sheets.types!.toReversed() } }, { height: 250 }
    );
    await copyRows(from.grid, 0, 1);
    await userEvent.click(cellAt(to.grid, 4, COLUMN.ref));
    await paste();
    const rows = to.schedule.document.rows('devices');
    expect(rows[4]!.cells).toEqual({ ref: 'D1', area: 'Hall', type: 'Lamp', qty: 2, rail: 'L1', branch: 'B1' });
    // types!E2 was the draw of Sensor and would be that of Lamp.
    expect(rows[5]!.cells.distance).toBeCloseTo(13.1, 9);
    expect(rows[5]!.cells.unitDraw).toBeUndefined();
  });

  test('one empty cell makes cells inherit again', async () => {
    const { grid, schedule } = await mountGrid(sample());
    const ids = schedule.document.rows('devices').map(({ id }) => id);
    schedule.act(
      'edit', ids.slice(1).map((id) => ({ op: 'set', sheet: 'devices', id, key: 'unitDraw', value: 7 }) as const)
    );
    await userEvent.click(cellAt(grid, 0, COLUMN.unitDraw));
    await userEvent.keyboard('{Control>}c{/Control}{ArrowDown}{Shift>}{ArrowDown}{/Shift}');
    await paste();
    // Types Sensor and Lamp; the last keeps its own.
    expect(ids.map((id) => schedule.value('devices', id, 'unitDraw'))).toEqual([350, 100, 350, 7]);
  });

  test('a cut carries what was entered, too', async () => {
    const { grid, schedule } = await mountGrid(withFormula());
    await userEvent.click(cellAt(grid, 1, COLUMN.distance));
    await userEvent.keyboard('{Shift>}{ArrowRight}{ArrowRight}{/Shift}{Control>}x{/Control}');
    await userEvent.click(cellAt(grid, 2, COLUMN.distance));
    await paste();
    const [, second, third] = schedule.document.rows('devices');
    expect(second!.cells.distance).toBeUndefined();
    expect(schedule.formulaText('devices', third!.id, 'distance')).toBe('=D3*2+D2+$D$1+D$1*0.5+types!E2/1000');
    expect(third!.cells.unitDraw).toBeUndefined();
  });

  test('the text counts where the entry belongs to another one, and in another column', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await copyRows(grid, 0, 0);
    await putOnClipboard('D9\tAttic');
    await userEvent.click(cellAt(grid, 4, COLUMN.ref));
    await paste();
    expect(schedule.document.rows('devices')[4]!.cells).toEqual({ ref: 'D9', area: 'Attic' });
    const entry = (text: string) => JSON.stringify({
      format: 'elv-load-schedule-cells', version: 1, sheet: 'devices', keys: ['area'], rows: [{
        number: 1, cells: ['WRONG'],
      }], text,
    });
    for (const [data, text] of [[entry('Cellar'), 'Loft'], ['{"format":', 'Loft'], ['null', 'Loft']] as const) {
      const transfer = new DataTransfer();
      transfer.setData('text/plain', text);
      transfer.setData(ENTERED_TYPE, data);
      grid.goTo(schedule.document.rows('devices')[4]!.id, 'area');
      cellAt(grid, 4, COLUMN.area).dispatchEvent(
        new ClipboardEvent('paste', { clipboardData: transfer, bubbles: true, composed: true, cancelable: true })
      );
      expect(schedule.document.rows('devices')[4]!.cells.area).toBe('Loft');
      schedule.undo();
    }
    // What line 0 takes by inheritance is a number in another column.
    await userEvent.click(cellAt(grid, 0, COLUMN.unitDraw));
    await userEvent.keyboard('{Control>}c{/Control}');
    await userEvent.click(cellAt(grid, 0, COLUMN.distance));
    await paste();
    expect(schedule.document.rows('devices')[0]!.cells.distance).toBe(350);
  });

  test('the button carries what was entered where the browser lets a page copy', async () => {
    const { grid, schedule } = await mountGrid(sample());
    const button = document.createElement('button');
    button.textContent = 'Copy';
    button.className = 'mounted';
    button.addEventListener('click', () => { void grid.copy(); });
    document.body.append(button);
    await userEvent.click(cellAt(grid, 0, COLUMN.unitDraw));
    await userEvent.click(button);
    await userEvent.click(cellAt(grid, 1, COLUMN.unitDraw));
    await paste();
    await frame();
    expect(schedule.undoLabel).toBeUndefined();
    expect(await takeFromClipboard()).toBe('350');
  });
});

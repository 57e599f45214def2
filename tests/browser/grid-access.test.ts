import axe from 'axe-core';
import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Content } from '../../src/schedule/index.ts';
import { cellAt, frame, mountGrid, placeOf, unmountAll } from './support/mount.ts';
import { COLUMN, sample } from './support/sample-content.ts';

afterEach(unmountAll);

/** A rail that demands more than it may give, one near its target, one whose rating is missing. */
const judged = (): Content => ({
  details: {},
  sheets: {
    devices: [
      { ref: 'D1', qty: 30, unitDraw: 100, rail: 'L1' }, { ref: 'D2', qty: 9, unitDraw: 100, rail: 'L2' },
      { ref: 'D3', qty: 1, unitDraw: 100, rail: 'L3' }, { ref: 'D4', qty: 1, rail: 'L2' },
    ],
    supplies: [{ rail: 'L1', rated: 2 }, { rail: 'L2', rated: 1 }, { rail: 'L3' }],
  },
});

describe('what is said', () => {
  test('the table has a name and a size, its editor the name of the column', async () => {
    const { grid } = await mountGrid(sample());
    const root = grid.renderRoot.querySelector('[role=treegrid]')!;
    expect(root.getAttribute('aria-label')).toBe('Devices');
    expect(root.getAttribute('aria-rowcount')).toBe('6');
    await userEvent.dblClick(cellAt(grid, 1, COLUMN.distance));
    expect(grid.renderRoot.querySelector('textarea.handsontableInput')!.getAttribute('aria-label'))
      .toBe('Distance (m), row 2');
  });

  test('a status is a word with a shape, and what was found is said with the cell', async () => {
    const { grid } = await mountGrid(judged(), { sheet: 'supplies' });
    const status = placeOf(grid, 'status');
    grid.goTo(0, 'demand');
    await frame();
    expect([0, 1, 2].map((line) => cellAt(grid, line, status).textContent))
      .toEqual(['over limit', 'near limit', 'incomplete']);
    expect([0, 1, 2].map((line) => cellAt(grid, line, status).querySelectorAll('svg').length)).toEqual([1, 1, 1]);
    const demand = cellAt(grid, 0, placeOf(grid, 'demand'));
    expect(demand.getAttribute('aria-invalid')).toBe('true');
    expect(demand.getAttribute('aria-description')).toMatch(/3\.00 A/);
    expect(cellAt(grid, 1, placeOf(grid, 'demand')).textContent).toBe('≥\u202f0.90');
    const rowHeading = grid.renderRoot.querySelectorAll('.ht_clone_inline_start tbody th')[0]!;
    expect(rowHeading.querySelector('svg.over')).not.toBeNull();
  });

  test('an own value in place of one that follows says so, and typed, default and computed figures differ',
    async () => {
    const { grid, schedule } = await mountGrid(sample());
    const id = schedule.document.rows('devices')[0]!.id;
    expect(cellAt(grid, 0, COLUMN.unitDraw).classList.contains('default')).toBe(true);
    schedule.act('Edit', [{ op: 'set', sheet: 'devices', id, key: 'unitDraw', value: 400 }]);
    const cell = cellAt(grid, 0, COLUMN.unitDraw);
    expect(cell.classList.contains('own')).toBe(true);
    expect(cell.getAttribute('aria-description')).toBe('own value, in place of the one that follows from the type');
    expect(cellAt(grid, 0, COLUMN.connected).classList.contains('computed')).toBe(true);
    const inks = [cellAt(grid, 0, COLUMN.unitDraw), cellAt(grid, 1, COLUMN.unitDraw), cellAt(grid, 0, COLUMN.connected)]
      .map((each) => getComputedStyle(each).color);
    expect(new Set(inks).size).toBe(3);
  });

  test('axe finds nothing but what the library’s open editor brings', async () => {
    const { grid } = await mountGrid(judged(), { sheet: 'supplies' });
    const rules = async (): Promise<string[]> => {
      const { violations } = await axe.run(grid, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] });
      return violations.map(({ id }) => id);
    };
    expect(await rules()).toEqual([]);
    await userEvent.dblClick(cellAt(grid, 0, 3));
    expect((await rules()).filter((rule) => rule !== 'aria-required-children')).toEqual([]);
  });
});

describe('keys', () => {
  test('Tab comes in to a cell, goes by cells, and leaves at the end of the row', async () => {
    const before = document.createElement('button');
    before.textContent = 'before';
    document.body.prepend(before);
    const { grid, selections } = await mountGrid(sample(), { sheet: 'branches' });
    const after = document.createElement('button');
    after.textContent = 'after';
    document.body.append(after);
    before.focus();
    await userEvent.keyboard('{Tab}');
    await frame();
    expect(document.activeElement).toBe(grid);
    expect(selections.at(-1)).toMatchObject({ id: 0, key: 'branch' });
    await userEvent.keyboard('{ArrowDown}{Tab}');
    await frame();
    expect(selections.at(-1)).toMatchObject({ id: 1, key: 'limit' });
    await userEvent.keyboard('{End}{Tab}{Tab}');
    expect(document.activeElement).toBe(after);
    await userEvent.keyboard('{Delete}');
    before.remove();
    after.remove();
  });

  test('keys pressed elsewhere change nothing here', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.qty));
    const button = document.createElement('button');
    button.textContent = 'elsewhere';
    document.body.append(button);
    button.focus();
    await userEvent.keyboard('{Delete}7{Alt>}{Delete}{/Alt}');
    expect(schedule.undoLabel).toBeUndefined();
    button.remove();
  });

  test('Escape in an editor does not close the dialog around the grid', async () => {
    const { grid } = await mountGrid(sample());
    const dialog = document.createElement('dialog');
    dialog.style.inlineSize = '900px';
    dialog.append(grid.parentElement!);
    document.body.append(dialog);
    dialog.showModal();
    await frame();
    await userEvent.dblClick(cellAt(grid, 0, COLUMN.rail));
    expect(grid.renderRoot.querySelector('[role=listbox]')!.matches(':popover-open')).toBe(true);
    await userEvent.keyboard('{Escape}');
    expect(dialog.open).toBe(true);
    dialog.remove();
  });
});

describe('selection', () => {
  test('count and sum of the selected cells, with the unit that they share', async () => {
    const { grid, selections } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.unitDraw));
    await userEvent.keyboard('{Shift>}{ArrowDown}{ArrowDown}{/Shift}');
    await frame();
    const { count, numbers, sum, unit } = selections.at(-1)!.statistics;
    // 350 + 100 + 350 mA; the distances beside them are empty.
    expect({ count, numbers, unit }).toEqual({ count: 3, numbers: 3, unit: 'mA' });
    expect(sum).toBeCloseTo(800, 12);
    await userEvent.keyboard('{Shift>}{ArrowLeft}{/Shift}');
    await frame();
    expect(selections.at(-1)!.statistics).toMatchObject({ count: 3, numbers: 3, unit: 'mA' });
  });

  test('going to a cell brings it into view and gives it the focus', async () => {
    const { grid, schedule, selections } = await mountGrid({
      details: {}, sheets: { devices: Array.from({ length: 500 }, (_, index) => ({ ref: `D${index}`, qty: 1 })) },
    });
    expect(grid.goTo(schedule.document.rows('devices')[444]!.id, 'note')).toBe(true);
    await frame();
    expect(cellAt(grid, 444, COLUMN.ref).textContent).toBe('D444');
    expect(selections.at(-1)).toMatchObject({ key: 'note' });
    await userEvent.keyboard('seen{Enter}');
    expect(schedule.document.rows('devices')[444]!.cells.note).toBe('seen');
    expect(grid.goTo(9999, 'note')).toBe(false);
  });
});

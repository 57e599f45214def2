import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { aliveOf } from './support/alive.ts';
import { cellAt, frame, GRID_KEY, mountGrid, textsOf, unmountAll } from './support/mount.ts';
import { COLUMN, sample } from './support/sample-content.ts';

afterEach(unmountAll);

const many = (rows: number) => ({
  details: {},
  sheets: {
    devices: Array.from(
      { length: rows }, (_, index) => ({ ref: `D${index}`, type: 'Lamp', qty: 1, rail: `L${index % 20}` })
    ),
    types: [{ type: 'Lamp', draw: 350 }],
    supplies: Array.from({ length: 20 }, (_, index) => ({ rail: `L${index}`, rated: 500 })),
  },
});

describe('life of the element', () => {
  test('moving it in the page keeps what it shows and what is selected', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 2, COLUMN.qty));
    const other = document.createElement('div');
    other.className = 'mounted';
    other.style.blockSize = '400px';
    document.body.append(other);
    other.append(grid);
    await frame();
    expect(textsOf(grid, [COLUMN.ref], [0, 1, 2])).toEqual([['D1'], ['D2'], ['D3']]);
    grid.focusGrid();
    await userEvent.keyboard('8{Enter}');
    expect(schedule.document.rows('devices')[2]!.cells.qty).toBe(8);
    expect(grid.renderRoot.querySelectorAll('.ht-root-wrapper, [role=treegrid]').length).toBeGreaterThan(0);
    expect(grid.renderRoot.querySelectorAll('[role=treegrid]')).toHaveLength(1);
  });

  test('taken off the page and put back later, it is made anew', async () => {
    const { grid } = await mountGrid(sample());
    const box = grid.parentElement!;
    grid.remove();
    await frame();
    expect(grid.renderRoot.querySelector('[role=treegrid]')).toBeNull();
    box.append(grid);
    await frame();
    await frame();
    expect(textsOf(grid, [COLUMN.ref], [0])).toEqual([['D1']]);
  });

  test('removed from the page, nothing of it stays in memory', { timeout: 60_000 }, async () => {
    const alive: WeakRef<object>[] = [];
    for (let turn = 0; turn < 30; turn += 1) {
      const { grid, schedule } = await mountGrid(sample(), { height: 200 });
      grid.goTo(schedule.document.rows('devices')[0]!.id, 'rail');
      grid.startEditing();
      alive.push(new WeakRef(grid));
      unmountAll();
      await frame();
    }
    // The last one may be held by what the browser remembers of the focus.
    await expect.poll(() => aliveOf(alive), { timeout: 10_000, interval: 200 }).toBeLessThanOrEqual(1);
  });

  test('it waits for a size, and for a key of the grid library', async () => {
    const { grid } = await mountGrid(sample(), { height: 0 });
    expect(grid.renderRoot.querySelector('[role=treegrid]')).toBeNull();
    grid.parentElement!.style.blockSize = '300px';
    await frame();
    expect(grid.renderRoot.querySelector('[role=treegrid]')).not.toBeNull();
    grid.licenseKey = '';
    await grid.updateComplete;
    expect(grid.renderRoot.querySelector('[role=treegrid]')).toBeNull();
    grid.licenseKey = GRID_KEY;
    await grid.updateComplete;
    expect(grid.renderRoot.querySelector('[role=treegrid]')).not.toBeNull();
  });

  test('another sheet is shown in the same grid, and coming back finds the place again', async () => {
    const { grid, selections } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 2, COLUMN.qty));
    grid.sheet = 'types';
    await grid.updateComplete;
    await frame();
    expect(textsOf(grid, [0], [0, 1])).toEqual([['Lamp'], ['Sensor']]);
    grid.sheet = 'devices';
    await grid.updateComplete;
    await frame();
    expect(textsOf(grid, [COLUMN.ref], [0, 3])).toEqual([['D1'], ['D4']]);
    expect(selections.at(-1)).toMatchObject({ sheet: 'devices', key: 'qty' });
  });

  test('setting properties is silent, and opening another schedule shows it', async () => {
    const { grid, schedule, messages } = await mountGrid(sample());
    schedule.load({ details: {}, sheets: { devices: [{ ref: 'N1' }] } }, 'Opening');
    await frame();
    expect(textsOf(grid, [COLUMN.ref], [0, 1])).toEqual([['N1'], ['']]);
    expect(messages).toEqual([]);
  });

  test('an empty sheet is shown with its blank line, and read-only with none', async () => {
    const { grid, schedule } = await mountGrid({ details: {}, sheets: {} });
    await userEvent.click(cellAt(grid, 0, COLUMN.area));
    await userEvent.keyboard('Hall{Enter}');
    expect(schedule.document.rows('devices')[0]!.cells).toEqual({ area: 'Hall' });
    const shown = await mountGrid({ details: {}, sheets: {} }, { readonly: true, height: 200 });
    expect(() => cellAt(shown.grid, 0, 0)).toThrow();
    shown.schedule.load(sample(), 'Opening');
    await frame();
    expect(textsOf(shown.grid, [COLUMN.ref], [0, 3])).toEqual([['D1'], ['D4']]);
  });

  test('columns are as wide as the texts of the document that is opened', async () => {
    const { grid, schedule } = await mountGrid(sample());
    const widthOf = (): number =>
      grid.renderRoot.querySelectorAll<HTMLElement>('.ht_clone_top thead th')[2]!.offsetWidth;
    const before = widthOf();
    schedule.load({ details: {}, sheets: { devices: [{ area: 'Boat house, upper floor' }] } }, 'Opening');
    await frame();
    expect(widthOf()).toBeGreaterThan(before + 40);
    schedule.undo();
    await frame();
    expect(widthOf()).toBe(before);
  });

  test('two grids on a page do not disturb each other', async () => {
    const [one, other] = [await mountGrid(sample(), { height: 250 }), await mountGrid(sample(), { height: 250 })];
    await userEvent.click(cellAt(one.grid, 0, COLUMN.qty));
    await userEvent.keyboard('8{Enter}');
    await userEvent.click(cellAt(other.grid, 0, COLUMN.qty));
    await userEvent.keyboard('9{Enter}{Control>}z{/Control}');
    expect(one.schedule.document.rows('devices')[0]!.cells.qty).toBe(8);
    expect(other.schedule.document.rows('devices')[0]!.cells.qty).toBe(2);
  });

  test('nothing is written to the head of the page, and the rest of the page stays as it was', async () => {
    const before = document.head.querySelectorAll('style').length;
    const { grid } = await mountGrid(sample());
    await userEvent.dblClick(cellAt(grid, 0, COLUMN.rail));
    await userEvent.keyboard('{Escape}');
    expect(document.head.querySelectorAll('style')).toHaveLength(before);
    // Outside the element there is only the library's announcer, which has no look.
    expect([...document.querySelectorAll('.ht-portal *')].map((each) => each.getAttribute('role'))).toEqual(['status']);
  });

  test('columns are resized by the pointer and keep their width', async () => {
    const { grid } = await mountGrid(sample());
    const heading = grid.renderRoot.querySelectorAll<HTMLElement>('.ht_clone_top thead th')[2]!;
    const before = heading.offsetWidth;
    await userEvent.hover(heading);
    await frame();
    const handle = grid.renderRoot.querySelector<HTMLElement>('.manualColumnResizer')!;
    await userEvent.dragAndDrop(handle, heading, { targetPosition: { x: 60, y: 10 } });
    await frame();
    const resized = grid.renderRoot.querySelectorAll<HTMLElement>('.ht_clone_top thead th')[2]!.offsetWidth;
    expect(resized).not.toBe(before);
    grid.sheet = 'types';
    await grid.updateComplete;
    grid.sheet = 'devices';
    await grid.updateComplete;
    await frame();
    expect(grid.renderRoot.querySelectorAll<HTMLElement>('.ht_clone_top thead th')[2]!.offsetWidth).toBe(resized);
  });

  test('only what is in view is drawn, however many rows there are', async () => {
    const { grid, schedule } = await mountGrid(many(5000));
    const drawn = grid.renderRoot.querySelectorAll('.ht_master tbody tr').length;
    expect(drawn).toBeLessThan(60);
    grid.goTo(schedule.document.rows('devices')[4999]!.id, 'qty');
    await userEvent.keyboard('3{Enter}');
    await frame();
    expect(cellAt(grid, 4999, COLUMN.qty).textContent).toBe('3');
  });
});

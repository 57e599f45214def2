import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { columnsByLine, selectionOf } from '../../components/grid/grid-selection.ts';
import { selectionSum } from '../../components/sheet-view/selection-sum.ts';
import { ENGLISH } from '../../src/words/index.ts';
import { paste, putOnClipboard, takeFromClipboard } from './support/clipboard.ts';
import { cellAt, frame, mountGrid, placeOf, unmountAll, type Mounted } from './support/mount.ts';
import { COLUMN, sample } from './support/sample-content.ts';

afterEach(unmountAll);

/** Picks cells one by one, those after the first with Ctrl. */
async function pick({ grid }: Mounted, ...cells: readonly (readonly [line: number, column: number])[]): Promise<void> {
  for (const [index, [line, column]] of cells.entries()) {
    await userEvent.click(cellAt(grid, line, column), index === 0 ? {} : { modifiers: ['Control'] });
  }
  await frame();
}
const areas = ({ schedule }: Mounted) => schedule.document.rows('devices').map(({ cells }) => cells.area ?? null);
const quantities = ({ schedule }: Mounted) => schedule.document.rows('devices').map(({ cells }) => cells.qty ?? null);

describe('cells picked with Ctrl', () => {
  test('Delete empties these and no others', async () => {
    const mounted = await mountGrid(sample());
    await pick(mounted, [0, COLUMN.area], [2, COLUMN.qty]);
    await userEvent.keyboard('{Delete}');
    expect(areas(mounted)).toEqual([null, 'Hall', 'Store', 'Store']);
    expect(quantities(mounted)).toEqual([2, 4, null, 3]);
    expect(mounted.messages.at(-1)!.text).toBe('2 cells cleared.');
  });

  test('the sum counts these and no others, each once', async () => {
    const mounted = await mountGrid(sample());
    await pick(mounted, [0, COLUMN.connected], [2, COLUMN.demand]);
    // 2 × 350 mA + 1 × 350 mA × 0.8
    expect(mounted.selections.at(-1)!.statistics.count).toBe(2);
    expect(mounted.selections.at(-1)!.statistics.sum).toBeCloseTo(0.7 + 0.28, 12);
    // Where two blocks overlap, in row 2 and column 2, the cell is there once.
    const [one, other] = [
      { from: { row: 0, col: 1 }, to: { row: 2, col: 2 } }, { from: { row: 3, col: 3 }, to: { row: 2, col: 2 } },
    ];
    expect([...columnsByLine(selectionOf([one, other], { row: 3, col: 3 }))])
      .toEqual([[0, [1, 2]], [1, [1, 2]], [2, [1, 2, 3]], [3, [2, 3]]]);
  });

  test('a copy of blocks that align is a table; of others it is refused, and the clipboard stays as it was',
    async () => {
    const mounted = await mountGrid(sample());
    await putOnClipboard('as it was');
    await pick(mounted, [0, COLUMN.area], [2, COLUMN.qty]);
    await userEvent.keyboard('{Control>}c{/Control}');
    expect(mounted.messages.at(-1)).toMatchObject({
      tone: 'refused', text: 'The selected blocks are no table together. Select blocks of the same rows or of the same columns to copy them.',
    });
    await userEvent.keyboard('{Control>}x{/Control}');
    expect(mounted.schedule.undoLabel).toBeUndefined();
    expect(await takeFromClipboard()).toBe('as it was');
    await pick(mounted, [0, COLUMN.area], [2, COLUMN.qty], [2, COLUMN.area], [0, COLUMN.qty]);
    await userEvent.keyboard('{Control>}c{/Control}');
    expect((await takeFromClipboard()).split(/\r?\n/)).toEqual(['Hall\t2', 'Store\t1']);
  });

  test('one cell fills these and no others; a table is refused', async () => {
    const mounted = await mountGrid(sample());
    await putOnClipboard('9');
    await pick(mounted, [0, COLUMN.distance], [2, COLUMN.qty]);
    await paste();
    expect(quantities(mounted)).toEqual([2, 4, 9, 3]);
    expect(mounted.schedule.document.rows('devices').map(({ cells }) => cells.distance ?? null))
      .toEqual([9, null, null, null]);
    mounted.schedule.undo();
    await putOnClipboard('9\t8');
    await pick(mounted, [0, COLUMN.distance], [2, COLUMN.qty]);
    await paste();
    expect(mounted.schedule.undoLabel).toBeUndefined();
    expect(mounted.messages.at(-1)!.text)
      .toBe('Several blocks are selected, and a table goes to one place. Select the cell where it is to begin.');
  });

  test('Ctrl+D fills each of these from the row above it', async () => {
    const mounted = await mountGrid(sample());
    await pick(mounted, [1, COLUMN.qty], [2, COLUMN.area]);
    await userEvent.keyboard('{Control>}d{/Control}');
    expect(quantities(mounted)).toEqual([2, 2, 1, 3]);
    expect(areas(mounted)).toEqual(['Hall', 'Hall', 'Hall', 'Store']);
  });
});

describe('the sum', () => {
  const said = ({ selections }: Mounted) => selectionSum(selections.at(-1)!.statistics, ENGLISH);

  test('is one for one unit', async () => {
    const mounted = await mountGrid(sample());
    await pick(mounted, [0, COLUMN.connected], [0, COLUMN.demand]);
    expect(said(mounted)).toBe('2 cells, sum 1.26\u00a0A');
    await pick(mounted, [0, COLUMN.qty], [1, COLUMN.qty]);
    expect(said(mounted)).toBe('2 cells, sum 6');
  });

  test.each([
    ['mA and A', COLUMN.unitDraw, COLUMN.demand], ['a count and a share', COLUMN.qty, COLUMN.diversity],
  ])('is none for %s', async (_units, one, other) => {
    const mounted = await mountGrid(sample());
    await pick(mounted, [0, one], [0, other]);
    expect(said(mounted)).toBe('2 cells; no sum, as they are not of one unit');
    expect(mounted.selections.at(-1)!.statistics).toMatchObject({ count: 2, numbers: 2, sum: null, unit: '' });
  });

  test('is none for counts of different things', async () => {
    const mounted = await mountGrid(sample(), { sheet: 'branches' });
    const at = (key: string) => placeOf(mounted.grid, key);
    await pick(mounted, [0, at('limit')], [0, at('cables')]);
    expect(mounted.selections.at(-1)!.statistics).toMatchObject({ count: 2, sum: null });
  });
});

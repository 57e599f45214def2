import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { ScheduleGrid } from '../../components/grid/index.ts';
import { columnLetters, columnPlace, insertRows, letterOf, type Content } from '../../src/schedule/index.ts';
import { paste, putOnClipboard } from './support/clipboard.ts';
import { cellAt, frame, mountGrid, placeOf, unmountAll, type Mounted } from './support/mount.ts';
import { sample } from './support/sample-content.ts';

afterEach(unmountAll);

const at = (grid: ScheduleGrid, line: number, key: string) => cellAt(grid, line, placeOf(grid, key));
const editorOf = (grid: ScheduleGrid) => [...grid.renderRoot.querySelectorAll<HTMLTextAreaElement | HTMLInputElement>('.handsontableInput')]
  .find((each) =>
    each.getRootNode() instanceof ShadowRoot && (each.getRootNode() as ShadowRoot).activeElement === each);
const note = (grid: ScheduleGrid) => grid.renderRoot.querySelector('.note:popover-open')?.textContent;
const column = (schedule: { document: { rows(sheet: 'devices'): readonly { cells: Record<string, unknown> }[] } }, key: string) =>
  schedule.document.rows('devices').map(({ cells }) => cells[key] ?? null);
/** The text of the cell of the first device row in a column, as a formula calls it. */
const name = (key: string, row: number) => `${letterOf('devices', key)}${row}`;

/** Selects a cell without a click, as two on the same one would open its editor. */
function select({ grid, schedule }: Mounted, line: number, key: string): void {
  grid.goTo(schedule.document.rows(grid.sheet)[line]!.id, key);
}

/** Drags the handle of the selected cells down over so many rows. */
async function dragHandle(grid: ScheduleGrid, to: HTMLElement): Promise<void> {
  const isOnTop = (each: HTMLElement) => {
    const { left, top, width, height } = each.getBoundingClientRect();
    return (grid.renderRoot as ShadowRoot).elementFromPoint(left + width / 2, top + height / 2) === each;
  };
  const handle = () => [...grid.renderRoot.querySelectorAll<HTMLElement>('.wtBorder.corner')].find(isOnTop);
  await expect.poll(handle).toBeDefined();
  await userEvent.dragAndDrop(handle()!, to);
  await frame();
}

describe('what could not be taken', () => {
  test('is said beside its cell, which is marked, and stands there again to be mended', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(at(grid, 0, 'qty'));
    await userEvent.keyboard('=2*(3{Enter}');
    await expect.poll(() => note(grid)).toMatch(/^Qty: /);
    expect(editorOf(grid)!.getAttribute('aria-invalid')).toBe('true');
    // Left with the pointer.
    await userEvent.click(at(grid, 2, 'area'));
    await expect.poll(() => at(grid, 0, 'qty').classList.contains('refused')).toBe(true);
    expect(at(grid, 0, 'qty').getAttribute('aria-invalid')).toBe('true');
    expect(at(grid, 0, 'qty').getAttribute('aria-description')).toContain('not taken: =2*(3');
    expect(schedule.document.rows('devices')[0]!.cells.qty).toBe(2);
    await userEvent.click(at(grid, 0, 'qty'));
    await userEvent.keyboard('{F2}');
    expect(editorOf(grid)!.value).toBe('=2*(3');
    await userEvent.keyboard('+1){Enter}');
    await frame();
    expect(at(grid, 0, 'qty').textContent).toBe('8');
    expect(at(grid, 0, 'qty').classList.contains('refused')).toBe(false);
  });

  test('is refused again as it stands, and given up with Escape', async () => {
    const { grid, schedule, messages } = await mountGrid(sample());
    await userEvent.click(at(grid, 0, 'qty'));
    await userEvent.keyboard('many');
    await userEvent.click(at(grid, 1, 'qty'));
    await userEvent.click(at(grid, 0, 'qty'));
    await userEvent.keyboard('{F2}{Enter}');
    expect(messages.filter(({ tone }) => tone === 'refused')).toHaveLength(2);
    await userEvent.keyboard('{Escape}');
    await expect.poll(() => at(grid, 0, 'qty').classList.contains('refused')).toBe(false);
    await userEvent.keyboard('{F2}');
    expect(editorOf(grid)!.value).toBe('2');
    expect(schedule.undoLabel).toBeUndefined();
  });

  test('is no other row’s when its row is deleted', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(at(grid, 0, 'qty'));
    await userEvent.keyboard('many');
    await userEvent.click(at(grid, 0, 'area'));
    await userEvent.keyboard('{Alt>}{Delete}{/Alt}');
    schedule.act('Row', insertRows(schedule.document, 'devices', 0, [{ ref: 'D9' }]));
    await frame();
    expect(grid.renderRoot.querySelector('td.refused')).toBeNull();
  });
});

describe('a tag that no row has', () => {
  const content = (): Content => ({ ...sample(), sheets: { ...sample().sheets, types: [{ type: 'Downlight 7 W', draw: 300, nodes: 1, aliases: 'spot' }] } });

  test('is told with the one that was probably meant, which one key takes', async () => {
    const { grid, schedule, messages } = await mountGrid(content());
    await userEvent.click(at(grid, 0, 'type'));
    await userEvent.keyboard('Downligt{Enter}');
    await expect.poll(() => messages.at(-1)?.text).toBe('No type “Downligt”. Did you mean Downlight 7 W? Ctrl+. takes it.');
    expect(note(grid)).toContain('Did you mean Downlight 7 W?');
    expect(schedule.document.rows('devices')[0]!.cells.type).toBe('Downligt');
    await userEvent.keyboard('{Control>}.{/Control}');
    expect(schedule.document.rows('devices')[0]!.cells.type).toBe('Downlight 7 W');
    // There is nothing to take a second time.
    await userEvent.keyboard('{Control>}.{/Control}');
    schedule.undo();
    expect(schedule.document.rows('devices')[0]!.cells.type).toBe('Downligt');
  });

  test('of another sheet is told where it differs in case or signs alone, and else not', async () => {
    const { grid, schedule, messages } = await mountGrid(content());
    await userEvent.click(at(grid, 0, 'rail'));
    await userEvent.keyboard('l 2{Enter}');
    await expect.poll(() => messages.at(-1)?.text).toBe('No “l 2” on the sheet Supplies. Did you mean L2? Ctrl+. takes it.');
    await userEvent.keyboard('{Control>}.{/Control}');
    expect(column(schedule, 'rail')).toEqual(['L2', 'L1', 'L2', null]);
  });
});

describe('deleting what others name', () => {
  const dialog = (grid: ScheduleGrid) => grid.renderRoot.querySelector('dialog');

  test('says how many rows do before it does, and moves them to another first', async () => {
    const { grid, schedule } = await mountGrid(sample(), { sheet: 'supplies' });
    await userEvent.click(cellAt(grid, 0, 0));
    await userEvent.keyboard('{Alt>}{Delete}{/Alt}');
    await expect.poll(() => dialog(grid)?.querySelector('h3')?.textContent).toBe('2 rows name L1: Devices 2.');
    expect(schedule.undoLabel).toBeUndefined();
    await userEvent.click(dialog(grid)!.querySelector('[data-do=move]')!);
    await expect.poll(() => column(schedule, 'rail')).toEqual(['L2', 'L2', 'L2', null]);
    expect(schedule.document.rows('supplies')).toHaveLength(1);
    schedule.undo();
    expect(column(schedule, 'rail')).toEqual(['L1', 'L1', 'L2', null]);
    expect(schedule.document.rows('supplies')).toHaveLength(2);
  });

  test('leaves all as it is with Escape, or them as they are', async () => {
    const { grid, schedule } = await mountGrid(sample(), { sheet: 'supplies' });
    await userEvent.click(cellAt(grid, 1, 0));
    await userEvent.keyboard('{Alt>}{Delete}{/Alt}');
    await expect.poll(() => dialog(grid)?.querySelector('h3')?.textContent).toBe('1 row names L2: Devices 1.');
    await userEvent.keyboard('{Escape}');
    await expect.poll(() => dialog(grid)).toBeNull();
    expect(schedule.undoLabel).toBeUndefined();
    await userEvent.keyboard('{Alt>}{Delete}{/Alt}');
    await expect.poll(() => dialog(grid)).not.toBeNull();
    await userEvent.click(dialog(grid)!.querySelector('[data-do=delete]')!);
    await expect.poll(() => schedule.document.rows('supplies')).toHaveLength(1);
    expect(column(schedule, 'rail')).toEqual(['L1', 'L1', 'L2', null]);
  });

  test('asks nothing where nothing names it', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(at(grid, 0, 'area'));
    await userEvent.keyboard('{Alt>}{Delete}{/Alt}');
    expect(column(schedule, 'ref')).toEqual(['D2', 'D3', 'D4']);
  });
});

describe('series', () => {
  const content = (): Content => ({
    details: {},
    sheets: {
      devices: [
        { ref: 'L1-001', qty: 1, distance: 12, area: 'Floor 1' }, { ref: 'L1-004', qty: 1, distance: 20, area: 'Floor 2' },
        { qty: 1 }, { qty: 1 }, { qty: 1 },
      ],
    },
  });

  test('distances go on by their step when two are dragged, and one alone is repeated', async () => {
    const { grid, schedule } = await mountGrid(content());
    await userEvent.click(at(grid, 0, 'distance'));
    await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}');
    await frame();
    await dragHandle(grid, at(grid, 4, 'distance'));
    // 12, 20: by 8
    expect(column(schedule, 'distance')).toEqual([12, 20, 28, 36, 44]);
    await userEvent.click(at(grid, 4, 'distance'));
    await userEvent.keyboard('7{Enter}');
    await userEvent.click(at(grid, 3, 'distance'));
    await frame();
    await dragHandle(grid, at(grid, 4, 'distance'));
    expect(column(schedule, 'distance')).toEqual([12, 20, 28, 36, 36]);
  });

  test('tags go on, passing over those that are taken', async () => {
    const { grid, schedule } = await mountGrid(content());
    await userEvent.click(at(grid, 1, 'ref'));
    await frame();
    await dragHandle(grid, at(grid, 3, 'ref'));
    expect(column(schedule, 'ref')).toEqual(['L1-001', 'L1-004', 'L1-005', 'L1-006', null]);
    await userEvent.click(at(grid, 0, 'ref'));
    await userEvent.keyboard('{Shift>}{ArrowDown}{ArrowDown}{ArrowDown}{ArrowDown}{/Shift}{Control>}d{/Control}');
    expect(column(schedule, 'ref')).toEqual(['L1-001', 'L1-002', 'L1-003', 'L1-004', 'L1-005']);
  });

  test('with other columns, tags that stand stay and empty ones go on; areas go on by two', async () => {
    const { grid, schedule } = await mountGrid(content());
    await userEvent.click(at(grid, 0, 'ref'));
    await userEvent.click(at(grid, 1, 'area'), { modifiers: ['Shift'] });
    await frame();
    await dragHandle(grid, at(grid, 3, 'area'));
    expect(column(schedule, 'ref')).toEqual(['L1-001', 'L1-004', 'L1-007', 'L1-010', null]);
    expect(column(schedule, 'area')).toEqual(['Floor 1', 'Floor 2', 'Floor 3', 'Floor 4', null]);
  });

  test('a figure that would go out of its range is refused with the sentence of the cell', async () => {
    const mounted = await mountGrid(content());
    const { grid, schedule, messages } = mounted;
    await userEvent.click(at(grid, 0, 'distance'));
    await userEvent.keyboard('20{Enter}12{Enter}');
    select(mounted, 0, 'distance');
    await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}');
    await frame();
    // 20, 12, 4, −4
    await dragHandle(grid, at(grid, 3, 'distance'));
    expect(messages.at(-1)).toMatchObject({ tone: 'refused' });
    expect(column(schedule, 'distance')).toEqual([20, 12, null, null, null]);
  });
});

describe('filling and pasting', () => {
  test('a pasted block goes several times into a larger selection of its size', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await putOnClipboard('Hall\nStore');
    await userEvent.click(at(grid, 0, 'area'));
    await userEvent.keyboard('{Shift>}{ArrowDown}{ArrowDown}{ArrowDown}{/Shift}');
    await paste();
    expect(column(schedule, 'area')).toEqual(['Hall', 'Store', 'Hall', 'Store']);
    expect(schedule.undoLabel).toBe('Paste of 4 rows');
  });

  test('formulas that were copied move along in each of them', async () => {
    const mounted = await mountGrid(sample());
    const { grid, schedule } = mounted;
    await userEvent.click(at(grid, 0, 'distance'));
    await userEvent.keyboard(`=${name('qty', 1)}*10{Enter}5{Enter}`);
    select(mounted, 0, 'distance');
    await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}{Control>}c{/Control}');
    await userEvent.keyboard('{Shift>}{ArrowDown}{ArrowDown}{/Shift}');
    await paste();
    // 2 × 10, 5, 1 × 10, 5
    const ids = schedule.document.rows('devices').map(({ id }) => id);
    expect(ids.map((id) => schedule.value('devices', id, 'distance'))).toEqual([20, 5, 10, 5]);
  });

  test('a block that does not fit is pasted once', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await putOnClipboard('Hall\nStore');
    await userEvent.click(at(grid, 0, 'area'));
    await userEvent.keyboard('{Shift>}{ArrowDown}{ArrowDown}{/Shift}');
    await paste();
    expect(column(schedule, 'area')).toEqual(['Hall', 'Store', 'Store', 'Store']);
  });

  test('Ctrl+R fills with the first column, or one column with the one before, as if it were typed there', async () => {
    const mounted = await mountGrid(sample());
    const { grid, schedule, messages } = mounted;
    await userEvent.click(at(grid, 0, 'area'));
    await userEvent.keyboard('{Shift>}{ArrowRight}{ArrowDown}{/Shift}{Control>}r{/Control}');
    expect(column(schedule, 'type')).toEqual(['Hall', 'Hall', 'Lamp', 'Sensor']);
    expect(messages.at(-1)!.text).toBe('2 cells filled.');
    schedule.undo();
    // What is no number is refused, and nothing is filled.
    select(mounted, 2, 'qty');
    await userEvent.keyboard('{ArrowLeft}{Shift>}{ArrowRight}{/Shift}{Control>}r{/Control}');
    expect(messages.at(-1)).toMatchObject({ tone: 'refused' });
    expect(column(schedule, 'qty')).toEqual([2, 4, 1, 3]);
  });

  test('references of a formula move along with Ctrl+R, but for those with a dollar sign', async () => {
    const mounted = await mountGrid(sample());
    const { grid, schedule } = mounted;
    const [qty, distance] = [letterOf('devices', 'qty'), letterOf('devices', 'distance')];
    await userEvent.click(at(grid, 0, 'distance'));
    await userEvent.keyboard(`=${qty}1+$${qty}1{Enter}`);
    const right = grid.columns[placeOf(grid, 'distance') + 1]!.key;
    select(mounted, 0, right);
    await userEvent.keyboard('{Control>}r{/Control}');
    const by = columnPlace(letterOf('devices', right)) - columnPlace(distance);
    expect(schedule.formulaText('devices', 0, right)).toBe(`=${columnLetters(columnPlace(qty) + by)}1+$${qty}1`);
  });
});

describe('going on', () => {
  test('after Tab, Enter goes back to the column in which it began', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(at(grid, 0, 'area'));
    await userEvent.keyboard('Quay{Tab}Sensor{Tab}5{Enter}Dock{Enter}');
    expect(column(schedule, 'area')).toEqual(['Quay', 'Dock', 'Store', 'Store']);
    expect(column(schedule, 'qty')).toEqual([5, 4, 1, 3]);
    // Without Tab it stays in its column.
    await userEvent.click(at(grid, 2, 'qty'));
    await userEvent.keyboard('8{Enter}9{Enter}');
    expect(column(schedule, 'qty')).toEqual([5, 4, 8, 9]);
  });
});

describe('the list of a cell', () => {
  const content = (): Content => ({
    details: {},
    sheets: {
      devices: [{ ref: 'D1', qty: 1 }],
      types: [{ type: 'Downlight 7 W', aliases: 'spot; DL7' }, { type: 'Blind motor' }],
      runs: [{ run: 'R10' }],
    },
  });

  test('takes the entry that is highlighted by the beginning of its name', async () => {
    const { grid, schedule } = await mountGrid(content());
    await userEvent.click(at(grid, 0, 'type'));
    await userEvent.keyboard('down{Enter}');
    expect(column(schedule, 'type')).toEqual(['Downlight 7 W']);
  });

  test('finds by alias, and says by which', async () => {
    const { grid, schedule } = await mountGrid(content());
    await userEvent.click(at(grid, 0, 'type'));
    await userEvent.keyboard('spo');
    await expect.poll(() => grid.renderRoot.querySelector('.suggestions [aria-selected=true]')?.textContent).toBe('Downlight 7 W (spot)');
    await userEvent.keyboard('{Tab}');
    expect(column(schedule, 'type')).toEqual(['Downlight 7 W']);
  });

  test('leaves a tag as it was typed that a longer one begins with', async () => {
    const { grid, schedule } = await mountGrid(content());
    await userEvent.click(at(grid, 0, 'run'));
    await userEvent.keyboard('R1{Enter}');
    expect(column(schedule, 'run')).toEqual(['R1']);
  });
});

describe('pointing while a formula is typed', () => {
  test('a click puts the cell into it, a drag a range, and what is pointed at is marked', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(at(grid, 3, 'qty'));
    await userEvent.keyboard('=');
    await userEvent.click(at(grid, 0, 'qty'));
    expect(editorOf(grid)!.value).toBe(`=${name('qty', 1)}`);
    expect(at(grid, 0, 'qty').classList.contains('pointed')).toBe(true);
    // Another click while nothing was typed means that cell instead.
    await userEvent.click(at(grid, 1, 'qty'));
    expect(editorOf(grid)!.value).toBe(`=${name('qty', 2)}`);
    await userEvent.keyboard('*2+SUM(');
    await userEvent.dragAndDrop(at(grid, 0, 'qty'), at(grid, 2, 'qty'));
    expect(editorOf(grid)!.value).toBe(`=${name('qty', 2)}*2+SUM(${name('qty', 1)}:${name('qty', 3)}`);
    await userEvent.keyboard('){Enter}');
    await frame();
    // 4 × 2 + 2 + 4 + 1
    expect(at(grid, 3, 'qty').textContent).toBe('15');
    expect(grid.renderRoot.querySelector('td.pointed')).toBeNull();
    expect(schedule.undoLabel).toBe('Edit of Qty');
  });

  test('arrows go from cell to cell, with Shift over a range; after F2 they go through the text', async () => {
    const { grid } = await mountGrid(sample());
    await userEvent.click(at(grid, 3, 'qty'));
    await userEvent.keyboard('={ArrowUp}{ArrowUp}');
    expect(editorOf(grid)!.value).toBe(`=${name('qty', 2)}`);
    await userEvent.keyboard('+SUM({ArrowUp}{Shift>}{ArrowUp}{/Shift}');
    expect(editorOf(grid)!.value).toBe(`=${name('qty', 2)}+SUM(${name('qty', 3)}:${name('qty', 2)}`);
    await userEvent.keyboard('){Enter}');
    await frame();
    // 4 + 1 + 4
    expect(at(grid, 3, 'qty').textContent).toBe('9');
    await userEvent.click(at(grid, 3, 'qty'));
    await userEvent.keyboard('{F2}+{ArrowLeft}');
    expect(editorOf(grid)!.value.endsWith(')+')).toBe(true);
  });

  test('a click elsewhere than where a cell may come ends the editing', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(at(grid, 3, 'qty'));
    await userEvent.keyboard('=2+3');
    await userEvent.click(at(grid, 0, 'qty'));
    expect(schedule.value('devices', schedule.document.rows('devices')[3]!.id, 'qty')).toBe(5);
  });
});

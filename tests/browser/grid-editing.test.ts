import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { cellAt, frame, mountGrid, placeOf, unmountAll } from './support/mount.ts';
import { COLUMN, sample } from './support/sample-content.ts';
import { makeWords } from '../../src/words/index.ts';

afterEach(unmountAll);

const idOf = (schedule: { document: { rows(sheet: 'devices'): readonly { id: number }[] } }, place: number): number =>
  schedule.document.rows('devices')[place]!.id;

describe('typing', () => {
  test('a figure becomes one action, all that follows from it is drawn, and Enter goes down', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.qty));
    await userEvent.keyboard('6{Enter}');
    await frame();
    expect(schedule.document.rows('devices')[0]!.cells.qty).toBe(6);
    // 6 × 350 mA = 2.10 A
    expect(cellAt(grid, 0, COLUMN.connected).textContent).toBe('2.10');
    expect(schedule.undoLabel).toBe('Edit of Qty');
    await userEvent.keyboard('9{Enter}');
    expect(schedule.document.rows('devices')[1]!.cells.qty).toBe(9);
  });

  test('units are understood: watts by the voltage of the rail, amperes, percent', async () => {
    const { grid, schedule, messages } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.unitDraw));
    await userEvent.keyboard('8.4 W{Enter}0.35 A{Enter}');
    await userEvent.click(cellAt(grid, 0, COLUMN.diversity));
    await userEvent.keyboard('70 %{Enter}');
    const rows = schedule.document.rows('devices');
    // 8.4 W ÷ 24 V = 350 mA
    expect(rows[0]!.cells.unitDraw).toBeCloseTo(350, 9);
    expect(rows[1]!.cells.unitDraw).toBe(350);
    expect(rows[0]!.cells.diversity).toBe(0.7);
    expect(messages.map(({ text }) => text)).toEqual(['8.4 W at 24 V is 350 mA.']);
  });

  test('a value out of range is refused with a sentence, and its text stays in the open editor', async () => {
    const { grid, schedule, messages } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.diversity));
    await userEvent.keyboard('1.4{Enter}');
    expect(messages.at(-1)).toMatchObject({ tone: 'refused', undoable: false });
    expect(messages.at(-1)!.text).toMatch(/^Diversity: “1\.4” is more than 1; 0 to 1/);
    const editor = grid.renderRoot.querySelector<HTMLTextAreaElement>('textarea.handsontableInput')!;
    expect(editor.value).toBe('1.4');
    expect(schedule.value('devices', idOf(schedule, 0), 'diversity')).toBe(0.8);
    await userEvent.keyboard('{Backspace}{Backspace}{Backspace}0.5{Enter}');
    expect(schedule.value('devices', idOf(schedule, 0), 'diversity')).toBe(0.5);
  });

  test('a refused text that is left with the pointer changes nothing, and the sentence quotes it', async () => {
    const { grid, schedule, messages } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.qty));
    await userEvent.keyboard('many');
    await userEvent.click(cellAt(grid, 2, COLUMN.area));
    expect(messages.at(-1)!.tone).toBe('refused');
    expect(messages.at(-1)!.text).toContain('“many”');
    expect(schedule.document.rows('devices')[0]!.cells.qty).toBe(2);
    await userEvent.keyboard('Loft{Enter}');
    expect(schedule.document.rows('devices')[2]!.cells.area).toBe('Loft');
  });

  test('Escape leaves the cell as it was, and looking into a default does not make it an own value', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.qty));
    await userEvent.keyboard('99{Escape}');
    expect(schedule.document.rows('devices')[0]!.cells.qty).toBe(2);
    await userEvent.click(cellAt(grid, 0, COLUMN.unitDraw));
    await userEvent.keyboard('{F2}');
    expect(grid.renderRoot.querySelector<HTMLTextAreaElement>('textarea.handsontableInput')!.value).toBe('350');
    await userEvent.keyboard('{Enter}');
    expect(schedule.undoLabel).toBeUndefined();
    expect(schedule.isOwn('devices', idOf(schedule, 0), 'unitDraw')).toBe(false);
  });

  test('typing on the blank last line adds a row, and the next one is ready', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 4, COLUMN.area));
    await userEvent.keyboard('Quay{Tab}Lamp{Tab}7{Enter}');
    await frame();
    const rows = schedule.document.rows('devices');
    expect(rows).toHaveLength(5);
    expect(rows[4]!.cells).toEqual({ area: 'Quay', type: 'Lamp', qty: 7 });
    await userEvent.keyboard('Dock{Enter}');
    expect(schedule.document.rows('devices')[5]!.cells).toEqual({ area: 'Dock' });
  });

  test('computed figures cannot be typed over', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.connected));
    await userEvent.keyboard('5{Enter}');
    expect(schedule.undoLabel).toBeUndefined();
    expect(cellAt(grid, 0, COLUMN.connected).getAttribute('aria-readonly')).toBe('true');
  });

  test('a new tag is followed by the references to it', async () => {
    const { grid, schedule, messages } = await mountGrid(sample(), { sheet: 'supplies' });
    await userEvent.click(cellAt(grid, 0, 0));
    await userEvent.keyboard('L9{Enter}');
    expect(schedule.document.rows('devices').map(({ cells }) => cells.rail)).toEqual(['L9', 'L9', 'L2', undefined]);
    expect(messages.at(-1)!.text).toBe('2 references follow the new tag L9.');
    schedule.undo();
    expect(schedule.document.rows('devices')[0]!.cells.rail).toBe('L1');
  });

  test('a formula calculates, is edited as typed, and moves along with its rows', async () => {
    const { grid, schedule, messages } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 2, COLUMN.qty));
    await userEvent.keyboard('=D1+D2*2{Enter}');
    await frame();
    // 2 + 4 × 2
    expect(cellAt(grid, 2, COLUMN.qty).textContent).toBe('10');
    expect(cellAt(grid, 2, COLUMN.qty).classList.contains('formula')).toBe(true);
    grid.goTo(idOf(schedule, 0), 'qty');
    grid.insertAbove();
    expect(schedule.formulaText('devices', idOf(schedule, 3), 'qty')).toBe('=D2+D3*2');
    await userEvent.click(cellAt(grid, 0, COLUMN.qty));
    await userEvent.keyboard('=D2+{Enter}');
    expect(messages.at(-1)!.tone).toBe('refused');
  });

  test('Ctrl+Enter takes a text for every selected cell, as one action', async () => {
    const { grid, schedule, messages } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.qty));
    await userEvent.keyboard('{Shift>}{ArrowDown}{ArrowDown}{/Shift}12{Control>}{Enter}{/Control}');
    expect(schedule.document.rows('devices').map(({ cells }) => cells.qty)).toEqual([12, 12, 12, 3]);
    expect(messages.at(-1)!.text).toBe('3 cells changed.');
    schedule.undo();
    expect(schedule.document.rows('devices').map(({ cells }) => cells.qty)).toEqual([2, 4, 1, 3]);
  });

  test('a note of several lines', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.note));
    await userEvent.keyboard('first{Alt>}{Enter}{/Alt}second{Enter}');
    expect(schedule.document.rows('devices')[0]!.cells.note).toBe('first\nsecond');
  });

  test('a decimal comma is read and shown where the language has one', async () => {
    const { grid, schedule } = await mountGrid(sample(), { words: makeWords('de') });
    await userEvent.click(cellAt(grid, 0, COLUMN.distance));
    await userEvent.keyboard('12,5{Enter}');
    await frame();
    expect(schedule.document.rows('devices')[0]!.cells.distance).toBe(12.5);
    expect(cellAt(grid, 0, COLUMN.distance).textContent).toBe('12,5');
  });
});

describe('lists', () => {
  test('a reference is chosen from the tags of its sheet, narrowed down by typing', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.rail));
    await userEvent.keyboard('{Enter}');
    const list = grid.renderRoot.querySelector('[role=listbox]')!;
    expect([...list.children].map((item) => item.textContent)).toEqual(['L1', 'L2']);
    expect(list.querySelector('[aria-selected=true]')!.textContent).toBe('L1');
    await userEvent.keyboard('{ArrowDown}{Enter}');
    expect(schedule.document.rows('devices')[0]!.cells.rail).toBe('L2');
    await userEvent.keyboard('l2');
    expect([...list.children].map((item) => item.textContent)).toEqual(['L2']);
    await userEvent.keyboard('{Enter}');
    expect(schedule.document.rows('devices')[1]!.cells.rail).toBe('L2');
    expect(list.matches(':popover-open')).toBe(false);
  });

  test('a limit is typed, or taken from the standards of buses, which what is typed has to name whole', async () => {
    const branches = ['B1', 'B2', 'B3'].map((branch) => ({ branch }));
    const { grid, schedule, messages } = await mountGrid({ ...sample(), sheets: { branches } }, { sheet: 'branches' });
    const limits = () => schedule.rows('branches').map(({ cells }) => cells.limit);
    await userEvent.click(cellAt(grid, 0, placeOf(grid, 'limit')));
    await userEvent.keyboard('{Enter}');
    const list = grid.renderRoot.querySelector('[role=listbox]')!;
    expect([...list.children].map((item) => item.textContent))
      .toEqual(['TIA-485-A', 'IEC 62386', 'EN 50090', 'CiA 301', 'EN 13757-2']);
    await userEvent.keyboard('{ArrowDown}{Enter}6{Enter}');
    expect(limits()).toEqual([32, 6, undefined]);
    await userEvent.keyboard('cia 301{Enter}');
    expect(limits()).toEqual([32, 6, 127]);
    expect(messages.map(({ text }) => text)).toEqual([
      'Limit 32 for TIA-485-A: TIA-485-A (EIA RS-485), Table 1: 32 unit loads on a line.',
      'Limit 127 for CiA 301: CiA 301: 127 nodes in a network.',
    ]);
    await userEvent.keyboard('{ArrowUp}EN{Enter}');
    expect(messages.at(-1)!.tone).toBe('refused');
  });

  test('a tag that does not exist yet may be entered, even where another begins with it', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.click(cellAt(grid, 0, COLUMN.rail));
    await userEvent.keyboard('L{Enter}');
    expect(schedule.document.rows('devices')[0]!.cells.rail).toBe('L');
  });

  test('a word of a choice is found by its beginning, another word is refused', async () => {
    const { grid, schedule, messages } = await mountGrid(sample(), { sheet: 'supplies' });
    await userEvent.click(cellAt(grid, 0, placeOf(grid, 'purpose')));
    await userEvent.keyboard('fie{Enter}');
    expect(schedule.document.rows('supplies')[0]!.cells.purpose).toBe('field');
    await userEvent.keyboard('heating{Enter}');
    expect(messages.at(-1)!.text).toContain('lighting, field, control, other');
    expect(schedule.document.rows('supplies')[1]!.cells.purpose).toBe('control');
  });

  test('the pointer takes a word from the list', async () => {
    const { grid, schedule } = await mountGrid(sample());
    await userEvent.dblClick(cellAt(grid, 0, COLUMN.rail));
    await userEvent.click(grid.renderRoot.querySelectorAll('[role=option]')[1]!);
    expect(schedule.document.rows('devices')[0]!.cells.rail).toBe('L2');
  });

  test('Space changes yes to no and back', async () => {
    const { grid, schedule } = await mountGrid(sample(), { sheet: 'branches' });
    await userEvent.click(cellAt(grid, 0, placeOf(grid, 'terminated')));
    await userEvent.keyboard(' ');
    expect(schedule.document.rows('branches')[0]!.cells.terminated).toBe(true);
    await userEvent.keyboard(' ');
    expect(schedule.document.rows('branches')[0]!.cells.terminated).toBe(false);
  });
});

import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { cellAt } from './support/mount.ts';
import { mountElement, openSheet, part, parts, removeElements, said, sample, textOf } from './element-mount.ts';
import type { ScheduleGrid } from '../../components/grid/index.ts';

afterEach(removeElements);

const gridOf = (element: LoadScheduleElement) => part(element, 'elv-schedule-grid') as ScheduleGrid;
const selected = (element: LoadScheduleElement) => parts(element, 'elv-schedule-grid td.current').at(-1)?.textContent;
const focusName = (element: LoadScheduleElement) => {
  let at = element.shadowRoot!.activeElement;
  while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
  return at?.getAttribute('name') ?? at?.localName;
};

/** Opens a bar by its key, with the focus in the rows. */
async function open(element: LoadScheduleElement, key: string, field: string): Promise<void> {
  await userEvent.click(cellAt(gridOf(element), 0, 0));
  await userEvent.keyboard(`{Control>}${key}{/Control}`);
  await expect.poll(() => part(element, field)).not.toBeNull();
  await expect.poll(() => focusName(element)).toBe(field.includes('find') ? 'text' : 'input');
}

const count = (element: LoadScheduleElement) => textOf(element, 'elv-find-bar .count');

describe('finding', () => {
  test('Ctrl+F finds in all sheets with a count; Enter and Shift+Enter go on and back with the focus in the field', async () => {
    const element = await mountElement({ content: sample() });
    await open(element, 'f', 'elv-find-bar [name=text]');
    await userEvent.keyboard('l1');
    await expect.poll(() => count(element)).toBe('3 cells');
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => count(element)).toBe('1 of 3');
    await expect.poll(() => selected(element)).toBe('L1');
    await userEvent.keyboard('{Enter}{Enter}');
    await expect.poll(() => count(element)).toBe('3 of 3');
    await expect.poll(() => textOf(element, 'elv-sheet-tabs [aria-selected=true] .title')).toBe('Supplies');
    expect(focusName(element)).toBe('text');
    await userEvent.keyboard('{Shift>}{Enter}{/Shift}');
    await expect.poll(() => count(element)).toBe('2 of 3');
    await expect.poll(() => textOf(element, 'elv-sheet-tabs [aria-selected=true] .title')).toBe('Devices');
    // Typing goes on in the field and reaches no cell.
    await userEvent.keyboard('x{Backspace}{Delete}');
    expect(element.schedule.undoLabel).toBeUndefined();
  });

  test('from the last cell it goes on with the first, and F3 goes on from the rows', async () => {
    const element = await mountElement({ content: sample() });
    await open(element, 'f', 'elv-find-bar [name=text]');
    await userEvent.keyboard('lamp{Enter}');
    await expect.poll(() => count(element)).toBe('1 of 4');
    await userEvent.click(cellAt(gridOf(element), 1, 0));
    await userEvent.keyboard('{F3}');
    await expect.poll(() => count(element)).toBe('2 of 4');
    await userEvent.keyboard('{F3}{F3}{F3}');
    await expect.poll(() => count(element)).toBe('1 of 4');
    await userEvent.keyboard('{Shift>}{F3}{/Shift}');
    await expect.poll(() => count(element)).toBe('4 of 4');
  });

  test('only in a column, as the whole cell, with capitals told apart', async () => {
    const element = await mountElement({ content: sample() });
    await open(element, 'f', 'elv-find-bar [name=text]');
    await userEvent.keyboard('d');
    await userEvent.selectOptions(part(element, 'elv-find-bar [name=scope]')!, 'column');
    await expect.poll(() => count(element)).toBe('3 cells');
    await userEvent.click(part(element, 'elv-find-bar [name=exact]')!);
    await expect.poll(() => count(element)).toBe('nothing found');
    await userEvent.fill(part(element, 'elv-find-bar [name=text]')!, 'D1');
    await userEvent.selectOptions(part(element, 'elv-find-bar [name=where]')!, 'whole');
    await expect.poll(() => count(element)).toBe('1 cell');
  });

  test('Escape closes the bar and gives the focus back to the cell that was found', async () => {
    const element = await mountElement({ content: sample() });
    await open(element, 'f', 'elv-find-bar [name=text]');
    await userEvent.keyboard('d3{Enter}');
    await expect.poll(() => selected(element)).toBe('D3');
    await userEvent.keyboard('{Escape}');
    await expect.poll(() => part(element, 'elv-find-bar')).toBeNull();
    await userEvent.keyboard('{ArrowUp}');
    await expect.poll(() => selected(element)).toBe('D2');
  });
});

describe('replacing', () => {
  test('a prefix is replaced with a preview, as one action with what follows, and undone in one', async () => {
    const element = await mountElement({ content: sample() });
    await open(element, 'h', 'elv-find-bar [name=text]');
    // From what is found Tab goes on to what comes in its place.
    await userEvent.keyboard('L1{Tab}L9');
    await userEvent.selectOptions(part(element, 'elv-find-bar [name=where]')!, 'beginning');
    part(element, 'elv-find-bar [name=by]')!.focus();
    await expect.poll(() => parts(element, 'elv-find-bar li').map((each) => each.textContent.replace(/\s+/g, ' ').trim()))
      .toEqual(['Devices 1, Rail L1 → L9', 'Devices 2, Rail L1 → L9', 'Supplies 1, Rail L1 → L9']);
    await userEvent.keyboard('{Control>}{Enter}{/Control}');
    await expect.poll(() => said(element)).toContain('3 cells replaced.');
    const rails = () => element.schedule.rows('devices').map(({ cells }) => cells.rail);
    expect(rails()).toEqual(['L9', 'L9', 'L2']);
    expect(element.schedule.rows('supplies')[0]!.cells.rail).toBe('L9');
    expect(element.schedule.undo()).toBe('Replacement in 3 cells');
    expect(rails()).toEqual(['L1', 'L1', 'L2']);
  });

  test('one at a time, passing over others; what cannot be taken says why and stays', async () => {
    const element = await mountElement({ content: sample() });
    await open(element, 'h', 'elv-find-bar [name=text]');
    await userEvent.keyboard('lamp');
    await userEvent.fill(part(element, 'elv-find-bar [name=by]')!, 'Lantern');
    await userEvent.selectOptions(part(element, 'elv-find-bar [name=scope]')!, 'column');
    await userEvent.selectOptions(part(element, 'elv-find-bar [name=scope]')!, 'sheet');
    await expect.poll(() => count(element)).toBe('2 cells');
    await userEvent.click(part(element, 'elv-find-bar [data-do=replace]')!);
    await expect.poll(() => count(element)).toBe('1 of 2');
    await userEvent.click(part(element, 'elv-find-bar [data-do=next]')!);
    await userEvent.click(part(element, 'elv-find-bar [data-do=replace]')!);
    await expect.poll(() => element.schedule.rows('devices').map(({ cells }) => cells.type)).toEqual(['Lamp', 'Sensor', 'Lantern']);
    // A quantity is no word.
    await userEvent.fill(part(element, 'elv-find-bar [name=text]')!, '6');
    await userEvent.fill(part(element, 'elv-find-bar [name=by]')!, 'six');
    await expect.poll(() => textOf(element, 'elv-find-bar .problem')).toMatch(/^Left as it is: “six” is not a number/);
    expect(part(element, 'elv-find-bar [data-do=replaceAll]')!.matches(':disabled')).toBe(true);
    // A button that has done all there is gives the focus back: Escape and Ctrl+Z go on from there.
    await userEvent.fill(part(element, 'elv-find-bar [name=by]')!, '9');
    await expect.poll(() => part(element, 'elv-find-bar [data-do=replaceAll]')!.matches(':disabled')).toBe(false);
    await userEvent.click(part(element, 'elv-find-bar [data-do=replaceAll]')!);
    await expect.poll(() => element.schedule.rows('devices')[1]!.cells.qty).toBe(9);
    await expect.poll(() => part(element, 'elv-find-bar')!.shadowRoot!.activeElement).toBe(part(element, 'elv-find-bar [name=text]'));
    await userEvent.keyboard('{Escape}{Control>}z{/Control}');
    await expect.poll(() => element.schedule.rows('devices')[1]!.cells.qty).toBe(6);
  });

  test('who may only look finds, and replaces nothing', async () => {
    const element = await mountElement({ content: sample(), attributes: { readonly: '' } });
    await userEvent.click(cellAt(gridOf(element), 0, 0));
    await userEvent.keyboard('{Control>}h{/Control}{Control>}f{/Control}');
    await expect.poll(() => part(element, 'elv-find-bar [name=text]')).not.toBeNull();
    expect(part(element, 'elv-find-bar [name=by]')).toBeNull();
  });
});

describe('going to', () => {
  test('Ctrl+G leads to a tag on another sheet, and to a sheet', async () => {
    const element = await mountElement({ content: sample() });
    await open(element, 'g', 'elv-go-to-bar input');
    await userEvent.keyboard('l2{Enter}');
    await expect.poll(() => textOf(element, 'elv-sheet-tabs [aria-selected=true] .title')).toBe('Supplies');
    await expect.poll(() => selected(element)).toBe('L2');
    expect(part(element, 'elv-go-to-bar')).toBeNull();
    await userEvent.keyboard('{Control>}g{/Control}');
    await expect.poll(() => part(element, 'elv-go-to-bar input')).not.toBeNull();
    await expect.poll(() => focusName(element)).toBe('input');
    await userEvent.keyboard('sens{ArrowUp}{Enter}');
    await expect.poll(() => textOf(element, 'elv-sheet-tabs [aria-selected=true] .title')).toBe('Types');
  });
});

describe('back and forth', () => {
  test('Alt+Left goes back to where one was before each jump, Alt+Right forth again', async () => {
    const element = await mountElement({ content: sample() });
    await userEvent.click(cellAt(gridOf(element), 2, 0));
    await openSheet(element, 'branches');
    await element.select('supplies', 'L3', 'rated');
    await expect.poll(() => selected(element)).toBe('2.00');
    const where = () => `${textOf(element, 'elv-sheet-tabs [aria-selected=true] .title')} ${selected(element)}`;
    await userEvent.keyboard('{Alt>}{ArrowLeft}{/Alt}');
    await expect.poll(where).toMatch(/^Branches/);
    await userEvent.keyboard('{Alt>}{ArrowLeft}{/Alt}');
    await expect.poll(where).toBe('Devices D3');
    await userEvent.keyboard('{Alt>}{ArrowRight}{ArrowRight}{/Alt}');
    await expect.poll(where).toBe('Supplies 2.00');
    // There is nothing beyond.
    await userEvent.keyboard('{Alt>}{ArrowRight}{/Alt}');
    expect(where()).toBe('Supplies 2.00');
  });
});

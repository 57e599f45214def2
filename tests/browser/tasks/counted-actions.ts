import { expect } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import type { SheetName } from '../../../src/schedule/index.ts';
import type { ScheduleGrid } from '../../../components/grid/index.ts';
import { part, parts } from '../element-mount.ts';
import { cellAt, placeOf } from '../support/mount.ts';

/**
 * What a person does with mouse and keys, counted: each click, each press of a key with those held down meanwhile, each
 * text that is typed at one go. To open a list and to take an entry of it are two.
 */
export class CountedActions {
  readonly element: LoadScheduleElement;
  count = 0;

  constructor(element: LoadScheduleElement) {
    this.element = element;
  }

  /** Clicks on a part that is there or comes. @param keys held down meanwhile. */
  async click(selector: string, options: { readonly button?: 'left' | 'right'; readonly keys?: string } = {}): Promise<void> {
    await expect.poll(() => part(this.element, selector)).not.toBeNull();
    await this.clickOn(part(this.element, selector)!, options);
  }

  async clickOn(
    on: HTMLElement, { button = 'left', keys = '' }: { readonly button?: 'left' | 'right'; readonly keys?: string } = {},
  ): Promise<void> {
    this.count += 1;
    if (keys !== '') await userEvent.keyboard(`{${keys}>}`);
    await userEvent.click(on, { button });
    if (keys !== '') await userEvent.keyboard(`{/${keys}}`);
    await this.element.updateComplete;
  }

  /** Presses keys one after the other; `Alt+Shift+M` is one press. */
  async press(...chords: readonly string[]): Promise<void> {
    for (const chord of chords) {
      this.count += 1;
      const keys = chord.split('+');
      const held = keys.slice(0, -1);
      await userEvent.keyboard(`${held.map((key) => `{${key}>}`).join('')}{${keys.at(-1)!}}${held.reverse().map((key) => `{/${key}}`).join('')}`);
    }
    await this.element.updateComplete;
  }

  /** Types a text where the focus is. */
  async type(text: string): Promise<void> {
    this.count += 1;
    await userEvent.keyboard(text.replaceAll(/[[{]/g, '$&$&'));
  }

  /** Takes an entry of a list. */
  async choose(selector: string, value: string): Promise<void> {
    this.count += 2;
    await expect.poll(() => part(this.element, selector)).not.toBeNull();
    await userEvent.selectOptions(part(this.element, selector)!, value);
    await this.element.updateComplete;
  }

  /** By its tab; where that comes only when it is asked for, that is one more. */
  async openSheet(sheet: SheetName): Promise<void> {
    if (part(this.element, `[data-sheet=${sheet}]`) === null) await this.click('elv-sheet-tabs .more');
    await this.click(`[data-sheet=${sheet}]`);
    await expect.poll(() => part(this.element, 'elv-schedule-grid td')).not.toBeNull();
  }

  /** The cell of a line that is drawn, by its place from 0, and of a column by its key. */
  cell(line: number, key: string): HTMLElement {
    const grid = part(this.element, 'elv-schedule-grid') as ScheduleGrid;
    return cellAt(grid, line, placeOf(grid, key));
  }

  /** The texts of a column, line by line, as they are drawn, with plain spaces. */
  texts(key: string): string[] {
    const lines = parts(this.element, 'elv-schedule-grid .ht_master tbody tr');
    return lines.map((_line, at) => this.cell(at, key).textContent.replace(/\s/g, ' '));
  }

  /** Chooses a file in the dialog of the browser that a command opened. */
  async chooseFile(file: File): Promise<void> {
    this.count += 1;
    await userEvent.upload(part(this.element, 'input[type=file]')!, file);
    await this.element.updateComplete;
  }

  /** The number of a row that is drawn, by its place from 0. */
  rowHeading(line: number): HTMLElement {
    return parts(this.element, 'elv-schedule-grid .ht_clone_inline_start tbody th')[line]!;
  }
}

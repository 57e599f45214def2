import type { Locator, Page } from 'playwright';

/** Columns of the sheet of devices, by their place on the screen. */
export const COLUMN = { ref: 0, area: 1, type: 2, qty: 3, rail: 4, branch: 5 } as const;

type Cells = Readonly<Record<string, unknown>>;

interface ScheduleFile {
  readonly details: Readonly<Record<string, string>>;
  readonly sheets: Readonly<Record<string, readonly Cells[]>>;
}

/** An element as the tests see it: its page, and what stands in it. */
export function scheduleOf(page: Page, selector = 'elv-load-schedule') {
  const element = page.locator(selector).first();
  // The first column stays in place while the others scroll, and lies over its copy.
  const cell = (row: number, column: number): Locator =>
    element.locator(`elv-schedule-grid .${column === 0 ? 'ht_clone_inline_start' : 'ht_master'} tbody tr`).nth(row)
      // The heading of the row is the first column. Columns out of view are not drawn.
      .locator(`td[aria-colindex="${column + 2}"]`);
  const value = () => element.evaluate((each) => (each as unknown as { value: string }).value);
  return {
    element,
    /** A cell of the sheet that is shown. */
    cell,
    value,
    async file(): Promise<ScheduleFile> {
      return JSON.parse(await value()) as ScheduleFile;
    },
    /** What the schedule holds for a device. */
    async device(row: number): Promise<Cells> {
      return (JSON.parse(await value()) as ScheduleFile).sheets.devices![row]!;
    },
    /** Waits for the rows of the file. */
    async shown(): Promise<void> {
      await cell(0, COLUMN.qty).filter({ hasText: /\S/ }).waitFor();
    },
    /** Types in a cell as a person does. */
    async enter(row: number, column: number, text: string): Promise<void> {
      // Rows that are scrolled are drawn anew in the next frame, and a cell is then another.
      await cell(row, column).scrollIntoViewIfNeeded();
      await page.evaluate(
        () => new Promise((drawn) => { requestAnimationFrame(() => { requestAnimationFrame(drawn); }); }),
      );
      await cell(row, column).click();
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    },
    /** Has the element select a cell, as a page does. */
    async select(sheet: string, row: number, key: string): Promise<void> {
      await element.evaluate(async (each, [name, at, of]) => {
        await (each as unknown as { select(sheet: string, row: number, key: string): Promise<boolean> })
          .select(name, at, of);
      }, [sheet, row, key] as const);
    },
    /** What a part says, in single spaces. */
    says: (part: string): Promise<string> =>
      element.locator(part).first().evaluate((each) =>
        (each.shadowRoot ?? each).textContent.replace(/\s+/g, ' ').trim()),
    command: (name: string): Locator => element.locator(`[data-command=${name}]`).first(),
  };
}

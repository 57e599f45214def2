import { LoadSchedule } from '../../../src/load-schedule.ts';
import { isStatus, type Content, type SheetName } from '../../../src/schedule/index.ts';
import '../../../components/grid/schedule-grid.define.ts';
import type { CellSelectEvent, MessageEvent, ScheduleGrid } from '../../../components/grid/index.ts';
import type { Grouping } from '../../../components/events/index.ts';
import { tokens } from '../../../components/look/index.ts';
import { ENGLISH, type Words } from '../../../src/words/index.ts';

/** Key of the grid library for evaluation. */
export const GRID_KEY = 'non-commercial-and-evaluation';

/** The colours and measures that the element around a grid gives it. */
const look = new CSSStyleSheet();
look.replaceSync(tokens.cssText.replaceAll(':host', ':root') + ' :root { color-scheme: light; } body { margin: 0; }');

export interface Mounted {
  readonly grid: ScheduleGrid;
  readonly schedule: LoadSchedule;
  readonly messages: MessageEvent[];
  readonly selections: CellSelectEvent[];
}

export interface MountOptions {
  readonly sheet?: SheetName;
  readonly grouping?: Grouping;
  readonly readonly?: boolean;
  readonly words?: Words;
  readonly height?: number;
}

/** Puts a grid that shows a schedule on the page. `unmountAll` takes it away. */
export async function mountGrid(content: Content, options: MountOptions = {}): Promise<Mounted> {
  if (!document.adoptedStyleSheets.includes(look)) document.adoptedStyleSheets.push(look);
  const words = options.words ?? ENGLISH;
  const schedule = new LoadSchedule(content, { words });
  const grid = document.createElement('elv-schedule-grid');
  const [messages, selections]: [MessageEvent[], CellSelectEvent[]] = [[], []];
  grid.addEventListener('elv-message', (event) => { messages.push(event); });
  grid.addEventListener('elv-cell-select', (event) => { selections.push(event); });
  grid.schedule = schedule;
  grid.licenseKey = GRID_KEY;
  grid.sheet = options.sheet ?? 'devices';
  grid.grouping = options.grouping ?? 'entered';
  grid.readonly = options.readonly ?? false;
  grid.words = words;
  const box = document.createElement('div');
  box.className = 'mounted';
  box.style.blockSize = `${options.height ?? 500}px`;
  box.append(grid);
  document.body.append(box);
  await grid.updateComplete;
  await frame();
  return { grid, schedule, messages, selections };
}

/** Takes every grid off the page. */
export function unmountAll(): void {
  for (const box of document.querySelectorAll('.mounted')) box.remove();
  document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== look);
}

/** Waits for the next frame to have been drawn. */
export async function frame(): Promise<void> {
  await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
}

const frozen = (grid: ScheduleGrid): number => isStatus(grid.columns[1]) ? 2 : 1;

/** The drawn cell of a line and column, both from 0; a frozen one is asked for where it is drawn on top. */
export function cellAt(grid: ScheduleGrid, line: number, column: number): HTMLTableCellElement {
  const body = column < frozen(grid) ? '.ht_clone_inline_start' : '.ht_master';
  const rows = grid.renderRoot.querySelectorAll<HTMLTableRowElement>(`${body} table.htCore > tbody > tr`);
  const row = [...rows].find((each) => Number(each.getAttribute('aria-rowindex')) === line + 2);
  const cell = row === undefined
    ? undefined
    : [...row.querySelectorAll('td')].find((each) => Number(each.getAttribute('aria-colindex')) === column + 2);
  if (cell === undefined) throw new Error(`No cell is drawn in line ${line}, column ${column}.`);
  return cell;
}

/** Place of a column as shown, from its key. */
export function placeOf(grid: ScheduleGrid, key: string): number {
  return grid.columns.findIndex((column) => column.key === key);
}

/** The texts of the drawn lines, column by column. */
export function textsOf(grid: ScheduleGrid, columns: readonly number[], lines: readonly number[]): string[][] {
  return lines.map((line) => columns.map((column) => cellAt(grid, line, column).textContent));
}

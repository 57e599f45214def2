import Handsontable from 'handsontable/base';
import '../../../components/load-schedule/load-schedule.define.ts';
import { GroupingEvent, SheetChooseEvent, SightEvent } from '../../../components/events/index.ts';
import { LoadSchedule } from '../../../src/load-schedule.ts';
import { pasteCells, setCells, type Change } from '../../../src/schedule/index.ts';
import { block, SIZES, workload } from '../workload.ts';
import { PASTE_KEYS } from '../operation.ts';

/** What one edit took [ms]. */
export interface EditTime {
  /** Until the grid had rendered. */
  readonly rendered: number;
  /** Until the second frame after it. */
  readonly painted: number;
  /** The new text stood in the grid when the second frame began. */
  readonly shown: boolean;
}

/** A way to look at the schedule. */
export type Turn =
  | { readonly sheet: 'devices' | 'supplies' }
  | { readonly grouping: 'entered' | 'rail' | 'type' }
  | { readonly only: 'own' | undefined }
  | { readonly sort: { readonly key: string; readonly down: boolean } | undefined };

/** What the driver of the browser calls. */
export interface BenchPage {
  /**
   * From the start of the navigation to the second frame after the grid shows rows, less the making of the workload
   * [ms].
   */
  started(): Promise<number>;
  /** Leaves the page alone for a while. @returns the longest time between two frames meanwhile [ms]. */
  settled(seconds: number): Promise<number>;
  edit(row: number, key: string, value: number | string): Promise<EditTime>;
  paste(variant: number): Promise<EditTime>;
  /** Shows another sheet, other rows or another order of them, or gathers them. */
  turn(to: Turn): Promise<EditTime>;
  /** A render of the grid without a change [ms]. */
  bareRender(): number;
  /** The time of two frames in which nothing happens [ms]. */
  twoFrames(): Promise<number>;
  /** Selects a cell for real keys. */
  select(row: number, key: string): Promise<void>;
  /** Waits for an Enter that ends an edit; to be called before the key. */
  awaitEnter(): void;
  /** Time of the edit that the Enter ended. */
  afterEnter(): Promise<EditTime>;
}

declare global {
  interface Window { bench: BenchPage }
}

const parameters = new URLSearchParams(location.search);
const size = SIZES.find(({ rows }) => rows === Number(parameters.get('rows')))!;
const before = performance.now();
const sheets = workload(size);
const making = performance.now() - before;

let grid: Handsontable | undefined;
let rendered = 0;
const keep = (each: Handsontable) => { grid = each; };
Handsontable.hooks.add('afterRender', function (this: Handsontable) {
  keep(this);
  rendered = performance.now();
});

const frame = () => new Promise<number>((resolve) => requestAnimationFrame(resolve));
async function secondFrame(): Promise<number> {
  await frame();
  await frame();
  return performance.now();
}

async function until(condition: () => boolean): Promise<void> {
  while (!condition()) await frame();
}

const element = document.createElement('elv-load-schedule');
element.setAttribute('license-key', 'non-commercial-and-evaluation');
element.schedule = new LoadSchedule({ details: {}, sheets });
document.body.append(element);
const start = until(() => (grid?.countRows() ?? 0) >= size.rows && drawnCells() > 0)
  .then(secondFrame).then((end) => end - making);

function drawnCells(): number {
  return grid?.rootElement.querySelectorAll('.ht_master tbody td').length ?? 0;
}

/** All that the grid shows at the moment, as one text. */
const shownText = () => grid!.rootElement.querySelector('.ht_master tbody')!.textContent;

async function timed(from: number, textBefore: string): Promise<EditTime> {
  const painted = await secondFrame();
  return { rendered: rendered - from, painted: painted - from, shown: shownText() !== textBefore };
}

async function act(label: string, changes: () => Change[]): Promise<EditTime> {
  const textBefore = shownText();
  await frame();
  const from = performance.now();
  element.schedule.act(label, changes());
  return timed(from, textBefore);
}

let entered = Promise.reject<EditTime>(new Error('No Enter is awaited.'));
entered.catch(() => undefined);

window.bench = {
  started: () => start,
  async settled(seconds) {
    const end = performance.now() + seconds * 1000;
    let longest = 0;
    for (let last = performance.now(); last < end;) {
      await frame();
      const now = performance.now();
      longest = Math.max(longest, now - last);
      last = now;
    }
    return longest;
  },
  edit: (row, key, value) => act('edit', () =>
    setCells(
      element.schedule.document, [{ sheet: 'devices', id: element.schedule.rows('devices')[row]!.id, key, value }]
    )),
  paste: (variant) => act('paste', () =>
    pasteCells(element.schedule.document, 'devices', 0, PASTE_KEYS, block(size, 1_000, PASTE_KEYS, variant))),
  async turn(to) {
    const view = element.shadowRoot!.querySelector('elv-sheet-view')!;
    const textBefore = shownText();
    await frame();
    const from = performance.now();
    if ('sheet' in to) element.shadowRoot!.querySelector('elv-sheet-tabs')!.dispatchEvent(new SheetChooseEvent(to.sheet));
    else if ('grouping' in to) view.dispatchEvent(new GroupingEvent(to.grouping));
    else view.shadowRoot!.querySelector('elv-schedule-toolbar')!.dispatchEvent(new SightEvent(to));
    return timed(from, textBefore);
  },
  bareRender() {
    const from = performance.now();
    grid!.render();
    return performance.now() - from;
  },
  async twoFrames() {
    await frame();
    const from = performance.now();
    return await secondFrame() - from;
  },
  async select(row, key) {
    await element.select('devices', row + 1, key);
    await secondFrame();
  },
  awaitEnter() {
    entered = new Promise((resolve) => {
      window.addEventListener('keydown', function onKey(event) {
        if (event.key !== 'Enter') return;
        window.removeEventListener('keydown', onKey, true);
        resolve(timed(event.timeStamp, shownText()));
      }, true);
    });
  },
  afterEnter: () => entered,
};

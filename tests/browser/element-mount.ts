import '../../components/load-schedule/load-schedule.define.ts';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import type { SchedulePanel } from '../../components/schedule-panel/schedule-panel.ts';
import type { SheetTabs } from '../../components/sheet-tabs/sheet-tabs.ts';
import type { Content, SheetName } from '../../src/schedule/index.ts';

/** Key of the grid library for evaluation. */
export const GRID_KEY = 'non-commercial-and-evaluation';

/**
 * A small schedule of invention. By hand: L1 may be used for 1 A and is asked for 2 × 0.35 × 0.8 + 6 × 0.1 = 1.16 A,
 * 116 %: over. L2 is asked for 3 × 0.35 × 0.8 = 0.84 A of 1 A, 84 %: above its target of 80 %. B1 carries 8 of 10
 * nodes, B2 3 of 10. K1 switches 4 × 60 W ÷ (230 V × 0.9) = 1.16 A of 2 A.
 */
export const sample = (): Content => ({
  details: { project: 'Boat house', panel: 'KP-1' },
  sheets: {
    devices: [
      { ref: 'D1', type: 'Lamp', qty: 2, rail: 'L1', branch: 'B1' },
      { ref: 'D2', type: 'Sensor', qty: 6, rail: 'L1', branch: 'B1' },
      { ref: 'D3', type: 'Lamp', qty: 3, rail: 'L2', branch: 'B2' },
    ],
    types: [{ type: 'Lamp', draw: 350, nodes: 1, diversity: 0.8 }, { type: 'Sensor', draw: 100, nodes: 1 }],
    supplies: [{ rail: 'L1', purpose: 'lighting', rated: 1 }, { rail: 'L2', rated: 1 }, { rail: 'L3', rated: 2 }],
    branches: [{ branch: 'B1', limit: 10, terminated: true }, { branch: 'B2', limit: 10, terminated: true }],
    outputs: [{ output: 'K1', contact: 'C2', load: 'Jetty', kind: 'lamp', qty: 4, power: 60, feed: 'F1' }],
    contacts: [{ contact: 'C2', resistive: 5, lamp: 2 }],
    feeds: [{ feed: 'F1', rated: 10 }],
  },
});

export interface ElementOptions {
  readonly content?: Content;
  /** Without it no rows are shown. */
  readonly key?: string | null;
  readonly attributes?: Readonly<Record<string, string>>;
}

/** Puts the element on the page and waits until it shows everything. */
export async function mountElement(options: ElementOptions = {}): Promise<LoadScheduleElement> {
  const { content, key = GRID_KEY, attributes = {} } = options;
  const element = document.createElement('elv-load-schedule');
  if (key !== null) element.setAttribute('license-key', key);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  if (content !== undefined) element.schedule = new LoadSchedule(content);
  document.body.style.margin = '0';
  element.style.blockSize = '780px';
  document.body.append(element);
  await element.updateComplete;
  if (key !== null) await shown(element);
  // They are fetched after the rest.
  await Promise.all(['elv-cell-explanation', 'elv-schedule-panel', 'elv-schedule-toolbar'].map((tag) => customElements.whenDefined(tag)));
  await (part(element, 'elv-schedule-panel') as SchedulePanel).updateComplete;
  return element;
}

/** Goes to a sheet by its tab, which a sheet without rows has once those are asked for. */
export async function openSheet(element: Element, sheet: SheetName): Promise<void> {
  if (part(element, `[data-sheet=${sheet}]`) === null) {
    part(element, 'elv-sheet-tabs .more')!.click();
    await (part(element, 'elv-sheet-tabs') as SheetTabs).updateComplete;
  }
  part(element, `[data-sheet=${sheet}]`)!.click();
}

/** Waits for the first rows. A poll of the test library would hold on to the element until the test ends. */
async function shown(element: Element): Promise<void> {
  for (let waited = 0; part(element, 'elv-schedule-grid td') === null; waited += 1) {
    if (waited === 500) throw new Error('The grid showed no rows within 10 s.');
    await new Promise((resolve) => { setTimeout(resolve, 20); });
  }
}

export function removeElements(): void {
  for (const element of document.querySelectorAll('elv-load-schedule')) element.remove();
  document.body.style.margin = '';
}

/** The first element inside that a selector means, however deep in shadow roots it is. */
export function part(element: Element, selector: string): HTMLElement | null {
  for (const each of partsOf(element, selector)) return each;
  return null;
}

/**
 * All elements inside that a selector means, in the order of the page.
 * @param selector names of parts with spaces between; unlike a selector of a page, it goes into shadow roots.
 */
export function parts(element: Element, selector: string): HTMLElement[] {
  return [...partsOf(element, selector)];
}

function* partsOf(element: Element, selector: string): Generator<HTMLElement> {
  for (const each of (element.shadowRoot ?? element).querySelectorAll<HTMLElement>('*')) {
    if (matches(each, selector)) yield each;
    if (each.shadowRoot !== null) yield* partsOf(each, selector);
  }
}

function matches(element: Element, selector: string): boolean {
  const [own, ...holders] = selector.split(' ').reverse();
  if (!element.matches(own!)) return false;
  let at: Element | null = element;
  for (const holder of holders) {
    do at = above(at); while (at !== null && !at.matches(holder));
    if (at === null) return false;
  }
  return true;
}

function above(element: Element): Element | null {
  const root = element.getRootNode();
  return element.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
}

/** Text of a part, with single spaces. */
export function textOf(element: Element, selector: string): string {
  return (part(element, selector)?.textContent ?? '').replace(/\s+/g, ' ').trim();
}

/** What the line below the rows says. */
export function said(element: Element): string {
  return `${textOf(element, 'elv-sheet-view [role=status]')}${textOf(element, 'elv-sheet-view .line [role=alert]')}`;
}

/** Lets go of a file over the element, as a person who drags it does. */
export function drop(element: Element, name: string, held: string | Uint8Array<ArrayBuffer>): void {
  dropFiles(element, new File([held], name));
}

/** Drops several files together. */
export function dropFiles(element: Element, ...files: readonly File[]): void {
  const dataTransfer = new DataTransfer();
  for (const file of files) dataTransfer.items.add(file);
  for (const type of ['dragenter', 'dragover', 'drop']) {
    element.dispatchEvent(new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true, composed: true }));
  }
}

import { openDB } from 'idb';
import { vi } from 'vitest';
import type { DraftHead } from '../../components/drafts/draft-store.ts';
import { IndexedDraftStore } from '../../components/drafts/indexed-draft-store.ts';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { setCells, type Content } from '../../src/schedule/index.ts';
import { parts } from './element-mount.ts';

/** One device row, so that its quantity tells which content is shown. */
export const one = (qty: number | string): Content => ({ details: {}, sheets: { devices: [{ ref: 'D1', qty }] } });

export const fileOf = (qty: number | string): string => JSON.stringify({ format: 'elv-load-schedule', version: 2, ...one(qty) });

const addresses = new Map<number, string>();

/** Address of a file that holds a quantity: always the same one. */
export function addressOf(qty: number): string {
  const address = addresses.get(qty) ?? URL.createObjectURL(new Blob([fileOf(qty)], { type: 'application/json' }));
  addresses.set(qty, address);
  return address;
}

const served = new Map<string, string | Promise<string>>();

/** Has the page's server give a text at a path from now on, until mocks are restored. */
export function serve(path: string, text: string | Promise<string>): void {
  served.set(path, text);
  const fetch = window.fetch.bind(window);
  if (vi.isMockFunction(Reflect.get(window, 'fetch'))) return;
  vi.spyOn(window, 'fetch').mockImplementation(async (input, init) => {
    const found = typeof input === 'string' ? served.get(input) : undefined;
    return found === undefined ? fetch(input, init) : new Response(await found);
  });
}

export const qtyOf = (element: LoadScheduleElement): unknown => element.schedule.rows('devices')[0]?.cells.qty;

/** Does what a person does who types a quantity. */
export function enter(element: LoadScheduleElement, qty: number): void {
  const { schedule } = element;
  schedule.act(
    `Quantity ${qty}`,
    setCells(schedule.document, [{ sheet: 'devices', id: schedule.rows('devices')[0]!.id, key: 'qty', value: qty }])
  );
}

/** What a person is told about drafts. */
export function notices(element: Element): string[] {
  return parts(element, 'elv-draft-notices .text').map((each) => each.textContent);
}

/** Presses a button of the notice of a kind. */
export function press(element: Element, kind: string, offer: string): void {
  const line = parts(element, 'elv-draft-notices li').find(({ dataset }) => dataset.kind === kind);
  line!.querySelector<HTMLButtonElement>(`[data-offer=${offer}]`)!.click();
}

/** A key that no other test has. */
export const freshKey = (): string => `test ${performance.now()} ${Math.random()}`;

/** The drafts that the browser keeps under a key, the oldest first. */
export async function kept(key: string): Promise<DraftHead[]> {
  const store = new IndexedDraftStore();
  const heads = await store.list(key);
  store.close();
  return heads;
}

/** Changes what the browser keeps of a draft behind the element's back. */
export async function change(table: 'heads' | 'entries', entry: object, key?: [number, number]): Promise<void> {
  const database = await openDB('elv-load-schedule');
  await database.put(table, entry, key);
  database.close();
}

/** Another page of the same site. */
export interface Tab {
  readonly element: LoadScheduleElement;
  /** Ends it without a word: it hears of nothing, as when its process is killed. */
  kill(): void;
}

/** Opens another page of the same site with an element on it. */
export async function openTab(attributes: Readonly<Record<string, string>>): Promise<Tab> {
  const frame = document.createElement('iframe');
  document.body.append(frame);
  const view = frame.contentWindow! as Window & typeof globalThis;
  // The test driver sends what is loaded later through a helper that a page of its own has.
  Object.assign(view, { __vitest_browser_runner__: { wrapDynamicImport: (load: () => unknown) => load() } });
  const script = view.document.createElement('script');
  script.type = 'module';
  script.src = new URL('../../components/load-schedule/load-schedule.define.ts', import.meta.url).href;
  view.document.head.append(script);
  for (const type of ['pagehide', 'visibilitychange', 'unload', 'beforeunload']) {
    view.addEventListener(type, (event) => { event.stopImmediatePropagation(); }, true);
  }
  await view.customElements.whenDefined('elv-load-schedule');
  const element = view.document.createElement('elv-load-schedule');
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  view.document.body.append(element);
  await element.updateComplete;
  return { element, kill: () => { frame.remove(); } };
}

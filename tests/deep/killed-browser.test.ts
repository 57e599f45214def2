import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildPages, type Built } from '../pages/support/build-pages.ts';
import { COLUMN, scheduleOf } from '../pages/support/schedule.ts';
import { serveFolder, type Server } from '../pages/support/serve-folder.ts';
import { startBrowser, type KillableBrowser } from './killable-browser.ts';

const KILLS = Number(process.env.KILLS ?? 20);
/** Somebody types this long before the browser is killed [ms]. */
const [SHORTEST, LONGEST] = [300, 900];
/** Quantities begin with this, so that none is mistaken for that of the page's file. */
const FIRST = 1000;

let built: Built;
let server: Server;
let profile: string;
let browser: KillableBrowser | undefined;

beforeAll(async () => {
  [built, profile] = await Promise.all([buildPages(), mkdtemp(join(tmpdir(), 'killed-browser-'))]);
  server = await serveFolder(built.folder);
}, 120_000);

afterAll(async () => {
  await browser?.kill();
  await server.close();
  await built.remove();
  await rm(profile, { recursive: true, maxRetries: 5, retryDelay: 200 });
});

/**
 * Types quantities one after another into a cell, each by one more.
 * @returns a function that ends it.
 */
async function typeFast(page: Page, first: number): Promise<() => void> {
  const session = await page.context().newCDPSession(page);
  // The keys of a quantity are pressed without waiting for an answer between them.
  const press = (key: string, code: number, text = '') => (['keyDown', 'keyUp'] as const).map((type) =>
    session.send('Input.dispatchKeyEvent', { type, key, code: key, windowsVirtualKeyCode: code, text }));
  let isStopped = false;
  const type = async () => {
    for (let quantity = first; !isStopped; quantity += 1) {
      const digits = Array.from(`${quantity}`).flatMap((digit) => press(digit, digit.charCodeAt(0), digit));
      await Promise.all([...digits, ...press('Enter', 13, '\r'), ...press('ArrowUp', 38)]);
    }
  };
  // A browser that is killed answers no more, or with an error.
  type().catch((error: unknown) => { if (!isStopped) throw error; });
  return () => { isStopped = true; };
}

/** Whether the browser's database holds a draft. */
const hasDraft = (page: Page) => page.evaluate(() => new Promise<boolean>((resolve, reject) => {
  const opening = indexedDB.open('elv-load-schedule');
  opening.onerror = () => { reject(opening.error!); };
  opening.onsuccess = () => {
    const counting = opening.result.transaction('heads').objectStore('heads').count();
    counting.onsuccess = () => {
      opening.result.close();
      resolve(counting.result > 0);
    };
  };
}));

test('a browser that is killed while somebody types fast loses at most the last action, each time', async () => {
  const losses: number[] = [];
  let done = FIRST;
  for (let visit = 0; visit <= KILLS; visit += 1) {
    browser = await startBrowser(profile);
    const { page } = browser;
    page.setDefaultTimeout(20_000);
    await page.exposeFunction('tell', (quantity: number) => { done = quantity; });
    await page.goto(`${server.address}/examples/draft.html`);
    const schedule = scheduleOf(page);
    await schedule.shown();
    if (visit > 0) {
      await schedule.element.locator('elv-draft-notices [data-kind=restored]').waitFor();
      const kept = Number((await schedule.device(0)).qty);
      losses.push(done - kept);
      done = kept;
    }
    if (visit === KILLS) break;
    await schedule.element.evaluate((each) => {
      interface Shown extends EventTarget { schedule: { rows(sheet: string): { cells: { qty: number } }[] } }
      const element = each as unknown as Shown;
      element.addEventListener('elv-change', () => {
        (window as unknown as { tell(quantity: number): void }).tell(element.schedule.rows('devices')[0]!.cells.qty);
      });
    });
    if (visit === 0) {
      // Nothing can be kept before the database has answered, which a new profile makes first.
      await schedule.enter(0, COLUMN.qty, `${FIRST}`);
      await expect.poll(() => hasDraft(page), { timeout: 20_000 }).toBe(true);
    }
    await schedule.cell(0, COLUMN.qty).click();
    const before = done;
    const stop = await typeFast(page, before + 1);
    await expect.poll(() => done, { interval: 5, timeout: 10_000 }).toBeGreaterThan(before);
    await new Promise((resolve) => { setTimeout(resolve, SHORTEST + Math.random() * (LONGEST - SHORTEST)); });
    stop();
    await browser.kill();
    browser = undefined;
  }
  console.log(`Actions: ${done - FIRST}; lost at each kill: ${losses.join(' ')}`);
  expect(losses).toHaveLength(KILLS);
  expect(Math.max(...losses)).toBeLessThanOrEqual(1);
}, 120_000);

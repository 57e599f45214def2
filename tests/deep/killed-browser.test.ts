import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildPages, type Built } from '../pages/support/build-pages.ts';
import { COLUMN, scheduleOf } from '../pages/support/schedule.ts';
import { serveFolder, type Server } from '../pages/support/serve-folder.ts';
import { endsTorn, isDatabaseTorn } from './ends-torn.ts';
import { startBrowser, type KillableBrowser } from './killable-browser.ts';

const KILLS = Number(process.env.KILLS ?? 20);
/** Somebody types this long before the browser is killed [ms]. */
const [SHORTEST, LONGEST] = [300, 900];
/** Quantities begin with this, so that none is mistaken for that of the page's file. */
const FIRST = 1000;

let built: Built;
let server: Server;
/** The folder in which the browser keeps what it stores. */
let profile: string;
let browser: KillableBrowser | undefined;

beforeAll(async () => {
  [built, profile] = await Promise.all([buildPages(), newProfile()]);
  server = await serveFolder(built.folder);
}, 300_000);

afterAll(async () => {
  await browser?.kill();
  await server.close();
  await built.remove();
  await removeProfile();
});

const newProfile = () => mkdtemp(join(tmpdir(), 'killed-browser-'));
const removeProfile = () => rm(profile, { recursive: true, maxRetries: 5, retryDelay: 200 });

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

test('a log is known to end in the midst of a record', () => {
  const record = (type: number, length: number) =>
    Buffer.from([0, 0, 0, 0, length, 0, type, ...Array<number>(length).fill(1)]);
  const [full, first, last] = [record(1, 9), record(2, 9), record(4, 9)];
  // 2047 × 16 bytes, one of 10, and 6 bytes of a block that hold no record.
  const block = Buffer.concat([...Array<Buffer>(2047).fill(full), record(1, 3)]);
  const whole = [[], [full], [full, full], [first, last], [block], [block, Buffer.alloc(6), full]];
  expect(whole.map((parts) => endsTorn(Buffer.concat(parts)))).toEqual(whole.map(() => false));
  const torn = [
    [full.subarray(0, 3)], [full.subarray(0, 7)], [full, full.subarray(0, 15)], [full, first],
    [block, Buffer.alloc(6), full.subarray(0, 7)],
  ];
  expect(torn.map((parts) => endsTorn(Buffer.concat(parts)))).toEqual(torn.map(() => true));
});

test('a browser that is killed while somebody types fast loses at most the last action, each time', async () => {
  const losses: number[] = [];
  let [done, actions, tornLogs] = [FIRST, 0, 0];
  let [isNew, isTorn] = [true, false];
  for (;;) {
    browser = await startBrowser(profile);
    const { page } = browser;
    page.setDefaultTimeout(20_000);
    await page.exposeFunction('tell', (quantity: number) => { done = quantity; });
    await page.goto(`${server.address}/examples/draft.html`);
    const schedule = scheduleOf(page);
    await schedule.shown();
    if (!isNew) {
      await schedule.element.locator('elv-draft-notices [data-kind=restored]').waitFor();
      const kept = Number((await schedule.device(0)).qty);
      losses.push(done - kept);
      done = kept;
    }
    if (losses.length === KILLS) break;
    if (isTorn) {
      // The draft was there. What stands behind half a record makes the browser throw all away at the next visit.
      tornLogs += 1;
      await browser.kill();
      await removeProfile();
      profile = await newProfile();
      [isNew, isTorn] = [true, false];
      continue;
    }
    await schedule.element.evaluate((each) => {
      interface Shown extends EventTarget { schedule: { rows(sheet: string): { cells: { qty: number } }[] } }
      const element = each as unknown as Shown;
      element.addEventListener('elv-change', () => {
        (window as unknown as { tell(quantity: number): void }).tell(element.schedule.rows('devices')[0]!.cells.qty);
      });
    });
    if (isNew) {
      // Nothing can be kept before the database has answered, which a new profile makes first.
      await schedule.enter(0, COLUMN.qty, `${FIRST}`);
      await expect.poll(() => hasDraft(page), { timeout: 20_000 }).toBe(true);
      done = FIRST;
    }
    await schedule.cell(0, COLUMN.qty).click();
    const before = done;
    const stop = await typeFast(page, before + 1);
    await expect.poll(() => done, { interval: 5, timeout: 10_000 }).toBeGreaterThan(before);
    await new Promise((resolve) => { setTimeout(resolve, SHORTEST + Math.random() * (LONGEST - SHORTEST)); });
    stop();
    await browser.kill();
    browser = undefined;
    actions += done - before;
    [isNew, isTorn] = [false, await isDatabaseTorn(profile)];
  }
  console.log(`Actions: ${actions}; lost at each kill: ${losses.join(' ')}; logs that the browser left torn: ${tornLogs}`);
  expect(Math.max(...losses)).toBeLessThanOrEqual(1);
}, 300_000);

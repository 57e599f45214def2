import { chromium, type Browser } from 'playwright';
import { browserFlags } from '../../../scripts/browser-flags.mjs';
import { findBrowser } from '../../../src/cli/find-browser.mjs';
import { railTag } from '../workload.ts';
import { servePage } from './serve.ts';
import type { EditTime, Turn } from './page.ts';

/** What one load of the page gave. Times in ms. */
export interface PageLoad {
  readonly start: number;
  readonly longestPause: number;
  readonly bareRenders: readonly number[];
  readonly twoFrames: readonly number[];
  readonly first: EditTime;
  /** By kind of another look at the schedule. */
  readonly turns: Readonly<Record<string, readonly EditTime[]>>;
  /** By kind of edit. */
  readonly edits: Readonly<Record<string, readonly EditTime[]>>;
}

const EDITS = 12;
const SETTLE_SECONDS = 4;

/** Opens a fresh page, works on it as a person and as a host page would, and closes it. */
async function load(browser: Browser, address: string, rows: number): Promise<PageLoad> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, locale: 'en-GB' });
  const faults: Error[] = [];
  page.on('pageerror', (fault) => { faults.push(fault); });
  await page.goto(`${address}?rows=${rows}`);
  const start = await page.evaluate(() => window.bench.started());
  const longestPause = await page.evaluate((seconds) => window.bench.settled(seconds), SETTLE_SECONDS);
  const first = await page.evaluate(() => window.bench.edit(0, 'qty', 99));
  const bareRenders = await inTurn(EDITS, () => page.evaluate(() => window.bench.bareRender()));
  const twoFrames = await inTurn(EDITS, () => page.evaluate(() => window.bench.twoFrames()));
  const facade = (key: string, value: (call: number) => number | string) => inTurn(EDITS, (call) => {
    const edit = [call + 1, key, value(call)] as const;
    return page.evaluate(([row, column, entered]) => window.bench.edit(row, column, entered), edit);
  });
  const turns: Record<string, EditTime[]> = {};
  const turn = async (kind: string, to: Turn) => {
    (turns[kind] ??= []).push(await page.evaluate((way) => window.bench.turn(way), to));
  };
  for (let call = 0; call < EDITS; call += 1) {
    await turn('switch of sheet', { sheet: 'supplies' });
    await turn('switch back', { sheet: 'devices' });
    await turn('rows gathered', { grouping: call % 2 === 0 ? 'rail' : 'type' });
    await turn('rows as entered', { grouping: 'entered' });
    await turn('rows picked', { only: 'own' });
    await turn('all rows', { only: undefined });
    await turn('rows sorted', { sort: { key: 'demand', down: call % 2 === 0 } });
    await turn('rows unsorted', { sort: undefined });
  }
  const edits: Record<string, readonly EditTime[]> = {
    'diversity edit': await facade('diversity', (call) => 0.123 + call / 1_000),
    'quantity edit': await facade('qty', (call) => 11 + call),
    'rail edit': await facade('rail', (call) => railTag((call + 5) % 10)),
    'paste 1,000 × 8': await inTurn(3, (call) => page.evaluate((variant) => window.bench.paste(variant), call + 1)),
  };
  await page.evaluate(() => window.bench.select(1, 'qty'));
  edits['quantity typed with keys'] = await inTurn(EDITS, async (call) => {
    await page.evaluate(() => { window.bench.awaitEnter(); });
    await page.keyboard.type(String(31 + call));
    await page.keyboard.press('Enter');
    return page.evaluate(() => window.bench.afterEnter());
  });
  await page.close();
  if (faults.length > 0) throw new Error(`The page failed at ${rows} rows: ${String(faults[0])}`);
  return { start, longestPause, bareRenders, twoFrames, first, turns, edits };
}

async function inTurn<Result>(count: number, once: (call: number) => Promise<Result>): Promise<Result[]> {
  const results: Result[] = [];
  for (let call = 0; call < count; call += 1) results.push(await once(call));
  return results;
}

/** Loads the page several times at each size, in turn. @returns the loads by size. */
export async function drive(sizes: readonly number[], rounds: number): Promise<Map<number, PageLoad[]>> {
  const served = await servePage();
  const executablePath = findBrowser();
  const browser = await chromium.launch({ ...(executablePath && { executablePath }), args: browserFlags });
  try {
    const loads = new Map<number, PageLoad[]>(sizes.map((rows) => [rows, []]));
    for (let round = 0; round < rounds; round += 1) {
      for (const rows of round % 2 === 0 ? sizes : sizes.toReversed()) {
        process.stderr.write(`${rows} rows, page load ${round + 1}\n`);
        loads.get(rows)!.push(await load(browser, served.address, rows));
      }
    }
    return loads;
  } finally {
    await browser.close();
    await served.close();
  }
}

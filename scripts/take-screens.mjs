// Takes the pictures of the README from the built demo: `npm run build && node scripts/take-screens.mjs`.
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { chromium } from 'playwright';
import { preview } from 'vite';
import { browserFlags } from './browser-flags.mjs';
import { findBrowser } from '../src/cli/find-browser.mjs';
import { projectFolder } from './project-folder.mjs';
import { runNpm } from './run-program.mjs';

const folder = join(projectFolder, 'examples', 'screens');

/**
 * What each picture shows: colours, size, and what a person has done before.
 *
 * @typedef {{ name: string, scheme?: 'light' | 'dark', width?: number, height?: number,
 *   act: (page: import('playwright').Page) => Promise<void> }} Screen
 */

/**
 * Selects a cell, and with it its sheet.
 *
 * @param {import('playwright').Page} page
 * @param {[sheet: string, row: number, key: string]} cell
 */
const select = (page, ...cell) => page.evaluate(([sheet, row, key]) => {
  const element =
    /** @type {Element & { select(...cell: unknown[]): void }} */ (document.querySelector('elv-load-schedule'));
  element.select(sheet, row, key);
}, cell);

/** @type {Screen[]} */
const screens = [
  { name: 'devices-light', act: (page) => select(page, 'devices', 4, 'unitDraw') },
  {
    name: 'run-picture', height: 900, act: async (page) => {
      await select(page, 'runs', 11, 'length');
      await page.getByRole('button', { name: 'Picture', exact: true }).click();
    },
  },
  {
    name: 'takeoff', act: async (page) => {
      await page.getByRole('button', { name: 'Takeoff' }).click();
      await page.locator('textarea').first()
        .fill(readFileSync(join(projectFolder, 'data', 'takeoffs', 'library-refit.csv'), 'utf8'));
      await page.getByRole('button', { name: 'Read the list' }).click();
    },
  },
  {
    name: 'revised-list', act: async (page) => {
      const output = join(mkdtempSync(join(tmpdir(), 'screens-')), 'library.schedule.json');
      await runNpm(['run', '-s', 'takeoff', '--', 'data/takeoffs/library-refit.csv', '--output', output]);
      await page.locator('input[type=file]').first().setInputFiles(output);
      rmSync(dirname(output), { recursive: true });
      await page.getByRole('button', { name: 'Takeoff' }).click();
      await page.locator('textarea').first()
        .fill(readFileSync(join(projectFolder, 'data', 'takeoffs', 'revised', 'library-refit.csv'), 'utf8'));
      await page.getByRole('button', { name: 'Read the list' }).click();
      await page.getByText('device rows', { exact: true }).click();
    },
  },
];

mkdirSync(folder, { recursive: true });
const server = await preview({ root: projectFolder, preview: { port: 4399 }, logLevel: 'silent' });
const browser = await chromium.launch({ executablePath: findBrowser(), args: browserFlags });
for (const { name, scheme = 'light', width = 1280, height = 800, act } of screens) {
  const page = await browser.newPage({ viewport: { width, height }, colorScheme: scheme });
  await page.goto(`${server.resolvedUrls?.local[0] ?? ''}examples/`);
  await page.getByText('L1-001', { exact: true }).first().waitFor({ state: 'attached' });
  await page.waitForTimeout(500);
  await act(page);
  await page.waitForTimeout(1500);
  await page.screenshot({ path: join(folder, `${name}.png`) });
  await page.close();
}
await browser.close();
await new Promise((resolve) => { server.httpServer.close(resolve); });
process.exit(0);

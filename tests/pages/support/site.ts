import { chromium, type Browser, type BrowserContext, type BrowserContextOptions, type Page } from 'playwright';
import { afterAll, afterEach, beforeAll } from 'vitest';
import { browserFlags } from '../../../scripts/browser-flags.mjs';
import { findBrowser } from '../../../src/cli/find-browser.mjs';
import { buildPages, type Built } from './build-pages.ts';
import { serveFolder, type Server } from './serve-folder.ts';
import { watch, type Watched } from './watch.ts';

/** The built pages on servers of their own, and a browser to look at them. */
export interface Site {
  /**
   * Opens a page of the examples in a window of its own.
   * @param path from the folder of the examples.
   * @param policy Content-Security-Policy that the server sends.
   */
  open(path: string, options?: OpenOptions): Promise<OpenPage>;
}

export interface OpenOptions extends BrowserContextOptions {
  readonly policy?: string;
}

export interface OpenPage extends Watched {
  readonly page: Page;
  /** Begin of the addresses of its server. */
  readonly address: string;
}

/** Builds once for the tests of a file and ends everything after them. */
export function useSite(): Site {
  let built: Built;
  let browser: Browser;
  const windows: BrowserContext[] = [];
  const servers = new Map<string, Promise<Server>>();

  beforeAll(async () => {
    const executablePath = findBrowser();
    const launched = chromium.launch({ ...(executablePath && { executablePath }), args: browserFlags });
    [built, browser] = await Promise.all([buildPages(), launched]);
  }, 120_000);

  // A page that is done with would go on using the machine.
  afterEach(async () => {
    for (const window of windows.splice(0)) await window.close();
  });

  afterAll(async () => {
    await browser.close();
    for (const server of servers.values()) await (await server).close();
    await built.remove();
  });

  return {
    async open(path, { policy = '', ...options } = {}) {
      const headers = {
        'access-control-allow-origin': '*', ...(policy !== '' && { 'content-security-policy': policy })
      };
      if (!servers.has(policy)) servers.set(policy, serveFolder(built.folder, headers));
      const { address } = await servers.get(policy)!;
      const context = await browser.newContext({
        viewport: { width: 1280, height: 800 }, locale: 'en-GB', timezoneId: 'UTC', permissions: [
          'clipboard-read', 'clipboard-write',
        ], ...options,
      });
      windows.push(context);
      const page = await context.newPage();
      // Sooner than the time of a test is over, so that the step that waits in vain is named.
      page.setDefaultTimeout(10_000);
      const watched = await watch(page);
      await page.goto(`${address}/examples/${path}`);
      return { page, address, ...watched };
    },
  };
}

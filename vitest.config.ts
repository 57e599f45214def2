import { playwright } from '@vitest/browser-playwright';
import { webdriverio } from '@vitest/browser-webdriverio';
import { availableParallelism } from 'node:os';
import { defineConfig, type TestProjectInlineConfiguration } from 'vitest/config';
import type { BrowserInstanceOption } from 'vitest/node';
import { browserFlags } from './scripts/browser-flags.mjs';
import { findBrowser } from './src/cli/find-browser.mjs';
import { findFirefox, findWebKit } from './scripts/find-other-browsers.mjs';
import { leaveOutStyles } from './scripts/leave-out-styles.ts';
import { nameTestFrame } from './tests/browser/engines/name-test-frame.ts';
import { WEBKIT_PORT } from './tests/browser/engines/start-webkit.ts';

/** Undefined where none is installed: then the test driver takes its own. */
const executablePath = findBrowser();

const cores = availableParallelism();

/** What the tests in every browser have in common. */
const inBrowser = {
  testTimeout: 30_000,
  // A busy machine paints late, and a test that passes on the second try tells so in the list.
  expect: { poll: { timeout: 15_000, interval: 20 } },
  retry: process.env.CI === undefined ? 0 : 2,
  // The clipboard and the focus are one for all pages.
  fileParallelism: false,
};
/** Formulas have figures at once, as in the headless package; `alone`, and other browsers, fetch what they need. */
const formulasAtOnce = 'src/engine/engine-at-once.define.ts';
/** One page for all files of a list: to load the modules again for each file takes as long as its tests. */
const onOnePage = {
  isolate: false, restoreMocks: true, unstubGlobals: true, setupFiles: ['tests/browser/support/leave-nothing.ts', formulasAtOnce],
};
/** What a test finds out during its run would make the page load anew in its midst. */
const entries = ['tests/browser/**/*.test.ts', 'components/**/*.define.ts'];
const viewport = { width: 1280, height: 800 };
const walk = ['tests/browser/walk/**/*.test.ts'];
/** About half of the tests in a browser, by the time that they take: those of the element, the grid and the panel. */
const parts = ['tests/browser/access/**/*.test.ts', 'tests/browser/{accept,element,grid,panel}*.test.ts'];
/** Every view from one end to the other, which is slow by nature. */
const sweeps = ['tests/browser/sweeps/**/*.test.ts'];
/** Half of them, by the time that they take. */
const seen = ['tests/browser/sweeps/{hostile,load,reflow,sharing,words}*.test.ts'];
/** Slow by nature, without a page of the test driver. */
const slow = {
  include: ['tests/deep/**/*.test.ts'], testTimeout: 60_000, setupFiles: ['tests/support/seed.ts', formulasAtOnce],
};
const killed = ['tests/deep/killed-browser.test.ts'];
/** Workbooks that a real spreadsheet program opens. */
const inProgram = ['tests/deep/spreadsheet-program.test.ts'];
/** What binds a page for as long as it is there: policies, modules that fail. */
const alone = ['tests/browser/alone/**/*.test.ts'];

const chromium = playwright({
  launchOptions: { ...(executablePath && { executablePath }), args: browserFlags },
  // As a person allows it whom the browser asks.
  contextOptions: { locale: 'en-GB', timezoneId: 'UTC', permissions: ['clipboard-read'] },
});

/** Tests in Chromium, each list in a browser of its own. */
const inChromium = (
  test: NonNullable<TestProjectInlineConfiguration['test']>, lists: readonly Omit<BrowserInstanceOption, 'browser'>[],
): TestProjectInlineConfiguration => ({
  extends: true,
  optimizeDeps: { entries },
  test: {
    ...inBrowser, ...test, browser: {
      enabled: true, headless: true, viewport, provider: chromium,
      instances: lists.map((list): BrowserInstanceOption => ({ browser: 'chromium', ...list })),
    },
  },
});

const firefox = playwright({
  launchOptions: { channel: 'moz-firefox', executablePath: findFirefox() },
  contextOptions: { locale: 'en-GB', timezoneId: 'UTC' },
});

const webkit = webdriverio({
  hostname: '127.0.0.1',
  port: WEBKIT_PORT,
  capabilities: {
    browserName: 'MiniBrowser',
    'wdio:enforceWebDriverClassic': true,
    'webkitgtk:browserOptions': { binary: findWebKit()?.browser, args: ['--automation'] },
  },
  // The test library asks for «safari», and the driver answers to the name of its own browser alone.
  transformRequest: (request: RequestInit) => {
    if (typeof request.body !== 'string' || !request.body.includes('"safari"')) return request;
    const headers = new Headers(request.headers);
    headers.delete('content-length');
    return { ...request, headers, body: request.body.replaceAll('"safari"', '"MiniBrowser"') };
  },
} as Parameters<typeof webdriverio>[0]);

export default defineConfig({
  root: import.meta.dirname,
  // As in the build, so that what is seen in a test is what is delivered.
  css: leaveOutStyles,
  test: {
    reporters: ['default', './scripts/closing-line-reporter.ts'],
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/deep/**', 'tests/pages/**'],
          // Style check and types run beside these.
          testTimeout: 90_000,
          setupFiles: ['tests/support/seed.ts', formulasAtOnce],
          // Left to itself, one core is kept free.
          maxWorkers: cores,
          // A module is read once in each worker, not once for every file: none keeps what one test could leave behind.
          pool: 'threads',
          isolate: false,
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          name: 'pages', include: ['tests/pages/**/*.test.ts'], testTimeout: 30_000, maxWorkers: cores,
          setupFiles: [formulasAtOnce],
          sequence: { groupOrder: 1 },
        },
      },
      // Side by side, each a browser of its own with its own clipboard and focus.
      inChromium({ name: 'browser', include: ['tests/browser/**/*.test.ts'], ...onOnePage, sequence: { groupOrder: 2 } }, [
        { name: 'browser, work', exclude: [...parts, ...alone, ...sweeps] }, { name: 'browser, parts', include: parts },
      ]),
      inChromium({ name: 'browser alone', include: alone, sequence: { groupOrder: 2 } }, [{ name: 'browser, alone' }]),
      {
        extends: true,
        optimizeDeps: { entries: [...walk, 'components/**/*.define.ts'] },
        test: {
          ...inBrowser,
          name: 'firefox',
          include: walk,
          setupFiles: ['tests/browser/engines/ready-firefox.ts'],
          sequence: { groupOrder: 3 },
          browser: {
            enabled: true, headless: true, viewport, provider: firefox, commands: { nameTestFrame }, instances: [{
              browser: 'firefox',
            }],
          },
        },
      },
      {
        extends: true,
        optimizeDeps: { entries: [...walk, 'components/**/*.define.ts'] },
        test: {
          ...inBrowser,
          name: 'webkit',
          include: walk,
          globalSetup: ['tests/browser/engines/start-webkit.ts'],
          sequence: { groupOrder: 4 },
          browser: {
            enabled: true, headless: false, ui: false, viewport, provider: webkit, instances: [{ browser: 'safari' }],
          },
        },
      },
      inChromium({ name: 'deep, in a browser', include: sweeps, ...onOnePage, sequence: { groupOrder: 6 } }, [
        { name: 'deep, sweeps', exclude: seen }, { name: 'deep, what is seen', include: seen },
      ]),
      {
        extends: true,
        test: { ...slow, name: 'deep', exclude: [...killed, ...inProgram], maxWorkers: cores, sequence: { groupOrder: 5 } },
      },
      // By itself: who types into a browser that is killed needs the machine.
      { extends: true, test: { ...slow, name: 'deep, killed', include: killed, sequence: { groupOrder: 7 } } },
      {
        extends: true,
        // Where such a program is installed: a person who asks for them by name is told that it is missing.
        test: {
          ...slow, name: 'spreadsheet program', include: inProgram, testTimeout: 240_000, sequence: { groupOrder: 8 },
        },
      },
    ],
  },
});

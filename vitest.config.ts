import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { browserFlags } from './scripts/browser-flags.mjs';
import { findBrowser } from './scripts/find-browser.mjs';
import { leaveOutStyles } from './scripts/leave-out-styles.ts';

/** Undefined where none is installed: then the test driver takes its own. */
const executablePath = findBrowser();

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
          exclude: ['tests/browser/**'],
          testTimeout: 30_000,
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        // What a test finds out during its run would make the page load anew in its midst.
        optimizeDeps: { entries: ['tests/browser/**/*.test.ts', 'components/**/*.define.ts'] },
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 30_000,
          // A busy machine paints late, and a test that passes on the second try tells so in the list.
          expect: { poll: { timeout: 15_000 } },
          retry: process.env.CI === undefined ? 0 : 2,
          // The clipboard and the focus are one for all pages.
          fileParallelism: false,
          sequence: { groupOrder: 1 },
          browser: {
            enabled: true,
            headless: true,
            viewport: { width: 1280, height: 800 },
            provider: playwright({
              launchOptions: { ...(executablePath && { executablePath }), args: browserFlags },
              contextOptions: { locale: 'en-GB', timezoneId: 'UTC' },
            }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
    ],
  },
});

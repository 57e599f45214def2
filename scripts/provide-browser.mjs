import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { browserFlags } from './browser-flags.mjs';
import { findBrowser } from '../src/cli/find-browser.mjs';
import { runProgram } from './run-program.mjs';

/**
 * Finds a browser that starts, and fetches one where there is none: an installed one, else the one that Playwright
 * downloads for itself, else Debian's package.
 *
 * @returns {Promise<Record<string, string>>} environment for the tests: `BROWSER_PATH`, or nothing where Playwright's
 *   own is taken. Throws an error that says what to do where no browser can be had.
 */
export async function provideBrowser() {
  const installed = findBrowser();
  if (installed && (await starts(installed))) return { BROWSER_PATH: installed };
  if (process.env.BROWSER_PATH) {
    throw new Error(`The browser that BROWSER_PATH names, ${process.env.BROWSER_PATH}, does not start.`);
  }
  if (await starts()) return {};
  console.log('No installed browser starts: fetching the one that the test driver offers …');
  if ((await downloadOwn()) && (await starts())) return {};
  if (existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    console.log('That did not work: installing the package of the system …');
    const debian = '/usr/bin/chromium';
    if ((await installPackage()) && (await starts(debian))) return { BROWSER_PATH: debian };
  }
  throw new Error('There is no browser to test in, and none could be fetched. '
    + 'Install Chromium, Chrome or Edge, or name its program file in BROWSER_PATH.');
}

/**
 * Whether the browser opens and closes again; a download without its system libraries does not.
 *
 * @param {string} [executablePath] Playwright's own where none is given
 */
async function starts(executablePath) {
  const { chromium } = await import('playwright');
  try {
    const browser = await chromium.launch({ ...(executablePath && { executablePath }), args: browserFlags });
    await browser.close();
    return true;
  } catch (error) {
    const [firstLine] = String(error).split('\n');
    console.log(`${executablePath ?? 'The browser of the test driver'} does not start (${firstLine}).`);
    return false;
  }
}

function downloadOwn() {
  const program = path.join(path.dirname(createRequire(import.meta.url).resolve('playwright/package.json')), 'cli.js');
  // It tries several times: on a network that swallows its requests it would hold up everything for minutes.
  const environment = { PLAYWRIGHT_DOWNLOAD_CONNECTION_TIMEOUT: '10000' };
  return runProgram(process.execPath, [program, 'install', '--only-shell', 'chromium'], { environment });
}

async function installPackage() {
  const environment = { DEBIAN_FRONTEND: 'noninteractive' };
  return (await runProgram('apt-get', ['update', '-qq'], { environment }))
    && runProgram('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium', 'fonts-dejavu'],
      { environment });
}

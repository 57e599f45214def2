import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { findBrowser } from './find-browser.mjs';
import { Refusal } from './refusal.ts';

const run = promisify(execFile);

/** A browser that has not printed after this time will not [ms]: some 10,000 device rows in full. */
const LONGEST = 600_000;

/**
 * Prints a page as PDF with the browser that is installed: Chromium, Chrome or Edge, of version 131 or later for the
 * feet of the pages.
 * @param page a whole page in HTML, which says its paper.
 * @param longest how long the browser may take [ms].
 * @throws Refusal when there is no browser, or it does not print or not in time.
 */
export async function printPdf(page: string, longest = LONGEST): Promise<Uint8Array> {
  const browser = installedBrowser();
  const folder = await mkdtemp(join(tmpdir(), 'load-table-'));
  try {
    const [source, target] = [join(folder, 'page.html'), join(folder, 'page.pdf')];
    await writeFile(source, page);
    await run(browser, [
      '--headless', '--disable-gpu', '--no-first-run', '--no-pdf-header-footer',
      `--user-data-dir=${join(folder, 'profile')}`,
      // The sandbox refuses to work for root, who is the only user of a container.
      ...(process.getuid?.() === 0 ? ['--no-sandbox', '--disable-dev-shm-usage'] : []),
      // Its bookmarks, and its structure for whoever has it read aloud.
      '--generate-pdf-document-outline', '--export-tagged-pdf',
      `--print-to-pdf=${target}`, pathToFileURL(source).href,
    ], { timeout: longest });
    return await readFile(target);
  } catch (error) {
    if ((error as { killed?: boolean }).killed === true) {
      throw new Refusal([
        `The browser ${browser} had not printed after ${longest / 1000} s: the load table is too long for it. Print less of it (--form short, --panel NAME, --without NAME), or write HTML with --format html.`,
      ]);
    }
    const [reason] = (error as Error).message.split('\n');
    throw new Refusal(
      [`The browser ${browser} did not print (${reason}). Write HTML with --format html and print that from a browser.`]
    );
  } finally {
    await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

function installedBrowser(): string {
  try {
    const found = findBrowser();
    if (found !== undefined) return found;
  } catch (error) {
    throw new Refusal([(error as Error).message]);
  }
  throw new Refusal([
    'A PDF is printed by a browser, and none is installed in a usual place. Install Chromium, Chrome or Edge, name its program file '
    + 'in BROWSER_PATH, or write HTML with --format html.',
  ]);
}

import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { chromium, type Page } from 'playwright';
import { browserFlags } from '../../scripts/browser-flags.mjs';
import { findBrowser } from '../../src/cli/find-browser.mjs';

/** A browser that keeps what it stores in a folder, and can be killed. */
export interface KillableBrowser {
  readonly page: Page;
  /** Ends all of its processes at once, without a word to any of them. */
  kill(): Promise<void>;
}

export async function startBrowser(folder: string): Promise<KillableBrowser> {
  const own = ['--headless', '--remote-debugging-port=0', `--user-data-dir=${folder}`, 'about:blank'];
  // In a group of its own, so that its processes can be killed together.
  const program = findBrowser() ?? chromium.executablePath();
  const child = spawn(program, [...browserFlags, ...own], { detached: true, stdio: ['ignore', 'ignore', 'pipe'] });
  // Rejected where there is no such program: then there is nothing to kill either.
  await once(child, 'spawn');
  try {
    const browser = await chromium.connectOverCDP(await addressOf(child));
    const page = browser.contexts()[0]!.pages()[0] ?? await browser.contexts()[0]!.newPage();
    return { page, kill: () => kill(child) };
  } catch (error) {
    await kill(child);
    throw error;
  }
}

/** The address at which the browser is driven, which it prints. */
async function addressOf(child: ChildProcess): Promise<string> {
  const lines: string[] = [];
  for await (const line of createInterface(child.stderr!)) {
    const address = /DevTools listening on (ws:\S+)/.exec(line)?.[1];
    if (address !== undefined) {
      // What it prints later must not fill up the pipe.
      child.stderr!.resume();
      return address;
    }
    lines.push(line);
  }
  throw new Error(`The browser did not start:\n${lines.join('\n')}`);
}

async function kill(child: ChildProcess): Promise<void> {
  const ended = once(child, 'exit');
  process.kill(-child.pid!, 'SIGKILL');
  await ended;
}

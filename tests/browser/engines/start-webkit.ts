import { spawn, type ChildProcess } from 'node:child_process';
import type { Readable } from 'node:stream';
import { findWebKit } from '../../../scripts/find-other-browsers.mjs';

/** Port at which the driver of WebKit listens. */
export const WEBKIT_PORT = 4444;

/** Starts a display without a screen and the driver of WebKit, which end with this process. */
export default async function startWebKit(): Promise<void> {
  const programs = findWebKit();
  if (programs === undefined) throw new Error('WebKit is not installed: install webkit2gtk-driver and xvfb.');
  const children: ChildProcess[] = [];
  if (process.env.DISPLAY === undefined) {
    const display = spawn(programs.display, ['-displayfd', '3', '-screen', '0', '1400x1000x24', '-nolisten', 'tcp'],
      { stdio: ['ignore', 'ignore', 'ignore', 'pipe'] });
    children.push(display);
    process.env.DISPLAY = `:${await firstLine(display.stdio[3] as Readable)}`;
  }
  children.push(spawn(programs.driver, [`--port=${WEBKIT_PORT}`], { stdio: 'ignore' }));
  for (const child of children) child.unref();
  // Not at the end of the tests: the test library closes its session after that.
  process.once('exit', () => { for (const child of children.reverse()) child.kill(); });
  for (let tried = 0; !await isUp(); tried += 1) {
    if (tried === 200) throw new Error('The driver of WebKit did not answer within 10 s.');
    await new Promise((resolve) => { setTimeout(resolve, 50); });
  }
}

/** The whole first line: a display whose line is not read to its end stops. */
async function firstLine(stream: Readable): Promise<string> {
  let text = '';
  for await (const chunk of stream) {
    text += String(chunk);
    if (text.includes('\n')) break;
  }
  return text.trim();
}

async function isUp(): Promise<boolean> {
  try {
    return (await fetch(`http://127.0.0.1:${WEBKIT_PORT}/status`)).ok;
  } catch {
    // Nothing listens yet.
    return false;
  }
}

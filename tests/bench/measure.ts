import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import type { CaseTask } from './case-kinds.ts';
import type { Report, Task } from './sample.ts';

const SAMPLE = fileURLToPath(new URL('sample.ts', import.meta.url));

export interface Measured {
  readonly reports: readonly Report[];
  /** The process was ended before it had done everything. */
  readonly capped: boolean;
}

/**
 * Runs one task in a process of its own, so that no candidate runs on what another has left in the heap or warmed.
 * @param sample the program that does the task.
 * @throws Error when the process fails, as it does when a figure is wrong.
 */
export async function measure(task: Task | CaseTask, capSeconds: number, sample = SAMPLE): Promise<Measured> {
  const child = spawn(process.execPath, [...process.execArgv, sample, JSON.stringify(task)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const timer = setTimeout(() => child.kill('SIGKILL'), capSeconds * 1000);
  const ended = new Promise<number | NodeJS.Signals | null>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code, signal) => { resolve(code ?? signal); });
  });
  const reports: Report[] = [];
  for await (const line of createInterface({ input: child.stdout })) reports.push(JSON.parse(line) as Report);
  const end = await ended;
  clearTimeout(timer);
  if (end !== 0 && end !== 'SIGKILL') {
    throw new Error(`The process for ${JSON.stringify(task)} ended with ${String(end)}.`);
  }
  return { reports, capped: end === 'SIGKILL' };
}

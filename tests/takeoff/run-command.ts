import { runTakeoff } from '../../src/cli/run-takeoff.ts';

/** Runs the command with these words. @returns its exit code, what it printed, and what it warned of, line by line. */
export async function runCommand(...words: string[]): Promise<{ code: number; out: string; warnings: string[] }> {
  let out = '';
  const warnings: string[] = [];
  const code = await runTakeoff(words, { out: (text) => { out += text; }, warn: (line) => { warnings.push(line); } });
  return { code, out, warnings };
}

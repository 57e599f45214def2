import { execFile } from 'node:child_process';

/**
 * Runs a program silently.
 *
 * @param program name or path
 * @param words arguments, passed as they are
 * @param folder in which it runs
 * @returns what it printed. Rejects with that where it ends with an error.
 */
export function run(program: string, words: readonly string[], folder: string): Promise<string> {
  return new Promise((resolve, reject) => {
    execFile(program, words, { cwd: folder, maxBuffer: 64 * 1024 * 1024 }, (error, stdout, stderr) => {
      if (error) reject(new Error(`${[program, ...words].join(' ')}\n${stdout}${stderr}`));
      else resolve(stdout);
    });
  });
}

/** Runs npm with the Node that runs this process; see `runNpm`, which shows what npm prints. */
export function npm(words: readonly string[], folder: string): Promise<string> {
  const npmPath = process.env.npm_execpath;
  if (npmPath?.endsWith('.js')) return run(process.execPath, [npmPath, ...words], folder);
  return process.platform === 'win32'
    ? run('cmd.exe', ['/d', '/s', '/c', 'npm', ...words], folder) : run('npm', words, folder);
}

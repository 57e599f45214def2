import { spawn } from 'node:child_process';
import { projectFolder } from './project-folder.mjs';

/**
 * Runs a program in the project's folder, shows what it prints, and waits for its end.
 * No input is passed on, so that nothing can stop a machine without a keyboard with a question.
 *
 * @param {string} program name or path
 * @param {string[]} words arguments, passed as they are
 * @param {{ environment?: Record<string, string>, onLine?: (line: string) => boolean }} [options]
 *   `environment` is added to this process's own; `onLine` sees every line of the standard output and answers
 *   whether to show it
 * @returns {Promise<boolean>} whether it ended with exit code 0; false as well where it could not be started,
 *   which is then said
 */
export function runProgram(program, words, { environment = {}, onLine } = {}) {
  return new Promise((resolve) => {
    const child = spawn(program, words, {
      cwd: projectFolder,
      env: { ...process.env, ...environment },
      stdio: ['ignore', onLine ? 'pipe' : 'inherit', 'inherit'],
    });
    if (onLine && child.stdout) showLines(child.stdout, onLine);
    child.on('error', (error) => {
      console.error(`${program} could not be started: ${error.message}`);
      resolve(false);
    });
    child.on('close', (code) => {
      resolve(code === 0);
    });
  });
}

/**
 * Runs npm with the Node that runs this process. Started by npm, a script is told where npm is; else the one on the
 * path is taken, which on Windows is a command file and needs a shell.
 *
 * @param {string[]} words
 * @returns {Promise<boolean>}
 */
export function runNpm(words) {
  const npmPath = process.env.npm_execpath;
  if (npmPath?.endsWith('.js')) return runProgram(process.execPath, [npmPath, ...words]);
  if (process.platform === 'win32') return runProgram('cmd.exe', ['/d', '/s', '/c', 'npm', ...words]);
  return runProgram('npm', words);
}

/**
 * @param {import('node:stream').Readable} stream
 * @param {(line: string) => boolean} onLine
 */
function showLines(stream, onLine) {
  let rest = '';
  const show = (/** @type {string} */ line) => {
    if (onLine(line)) console.log(line);
  };
  stream.setEncoding('utf8');
  stream.on('data', (/** @type {string} */ text) => {
    const lines = (rest + text).split(/\r?\n/);
    rest = lines.pop() ?? '';
    lines.forEach(show);
  });
  stream.on('end', () => {
    if (rest !== '') show(rest);
  });
}

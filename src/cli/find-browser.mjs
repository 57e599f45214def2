import { existsSync } from 'node:fs';
import path from 'node:path';

/**
 * Where a Chromium, Chrome or Edge may be, the first choice first: the path named by the person in `BROWSER_PATH`
 * alone; else the usual places of the system.
 *
 * @param {NodeJS.Platform} platform
 * @param {Record<string, string | undefined>} environment
 * @returns {string[]} absolute paths, not checked
 */
export function browserPaths(platform, environment) {
  if (environment.BROWSER_PATH) return [environment.BROWSER_PATH];
  if (platform === 'win32') return windowsPaths(environment);
  if (platform === 'darwin') return macPaths(environment);
  return linuxPaths(environment);
}

/**
 * The browser to test in.
 *
 * @param {{ platform?: NodeJS.Platform, environment?: Record<string, string | undefined>,
 *   exists?: (path: string) => boolean }} [machine] this one unless told otherwise
 * @returns {string | undefined} its path; undefined where none is installed in a usual place. Throws where
 *   `BROWSER_PATH` names a file that is not there: the wish of a person is not passed over in silence.
 */
export function findBrowser({ platform = process.platform, environment = process.env, exists = existsSync } = {}) {
  const found = browserPaths(platform, environment).find(exists);
  if (!found && environment.BROWSER_PATH) {
    throw new Error(`BROWSER_PATH names "${environment.BROWSER_PATH}", and there is no such file. `
      + 'Name the program file of a Chromium, Chrome or Edge, or unset it.');
  }
  return found;
}

/** @param {Record<string, string | undefined>} environment */
function linuxPaths(environment) {
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'];
  const folders = new Set(['/usr/bin', '/usr/local/bin', ...(environment.PATH ?? '').split(':').filter(Boolean)]);
  return names.flatMap((name) => [...folders].map((folder) => path.posix.join(folder, name)))
    .concat('/opt/google/chrome/chrome', '/opt/microsoft/msedge/msedge', '/snap/bin/chromium');
}

/** @param {Record<string, string | undefined>} environment */
function macPaths(environment) {
  const roots = ['/Applications', ...(environment.HOME ? [`${environment.HOME}/Applications`] : [])];
  return ['Chromium', 'Google Chrome', 'Microsoft Edge'].flatMap((name) =>
    roots.map((root) => `${root}/${name}.app/Contents/MacOS/${name}`));
}

/** @param {Record<string, string | undefined>} environment */
function windowsPaths(environment) {
  const roots = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA']
    .flatMap((name) => environment[name] ?? []);
  const programs = ['Chromium/Application/chrome.exe', 'Google/Chrome/Application/chrome.exe',
    'Microsoft/Edge/Application/msedge.exe'];
  return programs.flatMap((program) => roots.map((root) => path.win32.join(root, program)));
}

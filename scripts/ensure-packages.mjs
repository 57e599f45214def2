import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { projectFolder } from './project-folder.mjs';
import { readJson } from './read-json.mjs';
import { runNpm } from './run-program.mjs';

/**
 * Whether a version of Node can run the tools: 20.19, 22.13 or a later minor of these, or 24 and later. These are the
 * versions that Vite, Vitest and ESLint all support, as their package.json files say under `engines`.
 *
 * @param {string} version such as `20.19.0`
 * @returns {boolean}
 */
export function isSupportedNode(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return (major === 20 && minor >= 19) || (major === 22 && minor >= 13) || major >= 24;
}

/** @typedef {{ packages: Record<string, { version?: string, optional?: boolean }> }} LockFile */

/**
 * Whether npm's record of what it installed holds every package of the lock file in the same version. Packages for
 * other systems (`optional` in the lock file) need not be there.
 *
 * @param {LockFile} lock package-lock.json
 * @param {LockFile} installed node_modules/.package-lock.json
 * @returns {boolean}
 */
export function holdsLockedPackages(lock, installed) {
  return Object.entries(lock.packages).every(([path, { version, optional }]) =>
    path === '' || (path in installed.packages ? installed.packages[path]?.version === version : optional === true));
}

/**
 * Makes sure that Node is recent enough and that the packages of the lock file are installed; installs them where
 * they are not. Throws an error that says what to do where that fails.
 */
export async function ensurePackages() {
  if (!isSupportedNode(process.versions.node)) {
    throw new Error(`Node ${process.versions.node} is not supported: install Node 20.19 or later in the 20 line, `
      + '22.13 or later in the 22 line, or 24 and later (https://nodejs.org).');
  }
  const installedPath = join(projectFolder, 'node_modules', '.package-lock.json');
  if (existsSync(installedPath)) {
    const lock = /** @type {LockFile} */ (readJson(join(projectFolder, 'package-lock.json')));
    if (holdsLockedPackages(lock, /** @type {LockFile} */ (readJson(installedPath)))) return;
  }
  console.log('Installing the packages of the lock file …');
  // Named, because a machine set to production would leave out the tools.
  if (!(await runNpm(['ci', '--include=dev', '--no-audit', '--no-fund']))) {
    throw new Error('The packages could not be installed: see the message of npm above. Is there a network?');
  }
}

import { existsSync } from 'node:fs';
import { findSpreadsheetProgram } from './find-spreadsheet-program.mjs';
import { runProgram } from './run-program.mjs';

/**
 * Whether workbooks can be opened by a real spreadsheet program here. On a machine of continuous integration, as root
 * on Debian, one is installed where it is missing; elsewhere a person is told that its tests are left out.
 *
 * @returns {Promise<boolean>}
 */
export async function provideSpreadsheetProgram() {
  const name = 'libreoffice-calc';
  if (!findSpreadsheetProgram() && process.env.CI && existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    console.log(`\nInstalling ${name} …`);
    const environment = { DEBIAN_FRONTEND: 'noninteractive' };
    const apt = (/** @type {string[]} */ ...words) => runProgram('apt-get', words, { environment });
    if (await apt('update', '-qq')) await apt('install', '-y', '-qq', '--no-install-recommends', name);
  }
  if (findSpreadsheetProgram()) return true;
  console.log(`\n${name} is not installed and could not be: workbooks are not opened by a real spreadsheet program.`);
  return false;
}

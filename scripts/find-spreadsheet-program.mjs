import { existsSync } from 'node:fs';

/**
 * An installed spreadsheet program of the system that works without a screen.
 *
 * @param {(path: string) => boolean} [exists]
 * @returns {string | undefined} its path
 */
export function findSpreadsheetProgram(exists = existsSync) {
  return process.env.SOFFICE_PATH ?? [
    '/usr/bin/soffice', '/usr/bin/libreoffice', '/usr/local/bin/soffice', '/Applications/LibreOffice.app/Contents/MacOS/soffice',
    'C:\\Program Files\\LibreOffice\\program\\soffice.exe',
  ].find(exists);
}

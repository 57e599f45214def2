import { utils } from '@e965/xlsx';
import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { findSpreadsheetProgram } from '../../scripts/find-spreadsheet-program.mjs';
import { openWorkbook, type WorkedOut } from './recalculate-workbook.ts';

const run = promisify(execFile);
const LONGEST_MS = 120_000;

/**
 * Has workbooks opened, worked out and saved anew by a spreadsheet program that runs without a screen, all in one go.
 * @returns the files that it saved, in their order.
 * @throws where there is none, or where it saves no file.
 */
export async function openAndSave(workbooks: readonly Uint8Array[], format: 'xlsx' | 'pdf' = 'xlsx'): Promise<Uint8Array[]> {
  const program = findSpreadsheetProgram();
  if (program === undefined) throw new Error('No spreadsheet program is installed: apt-get install libreoffice-calc, or name one in SOFFICE_PATH.');
  const folder = await mkdtemp(join(tmpdir(), 'spreadsheets-'));
  try {
    await mkdir(join(folder, 'saved'));
    const files = await Promise.all(workbooks.map(async (bytes, place) => {
      const file = join(folder, `${place}.xlsx`);
      await writeFile(file, bytes);
      return file;
    }));
    // A profile of its own, so that it disturbs no program that a person has open.
    await run(program, [
      `-env:UserInstallation=${pathToFileURL(join(folder, 'profile')).href}`, '--headless', '--norestore',
      '--convert-to', format, '--outdir', join(folder, 'saved'), ...files,
    ], { timeout: LONGEST_MS });
    return await Promise.all(workbooks.map((_bytes, place) => readFile(join(folder, 'saved', `${place}.${format}`))));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** The cells of a workbook that a program has saved. */
export function cellsOfFile(bytes: Uint8Array): WorkedOut {
  const { Sheets } = openWorkbook(bytes);
  const cell = (title: string, r: number, c: number) =>
    Sheets[title]![utils.encode_cell({ r, c })] as { v?: unknown; f?: string; t?: string } | undefined;
  return {
    value: (title, row, column) => {
      const found = cell(title, row, column);
      return found?.t === 'e' ? `#${String(found.v)}` : found?.v ?? null;
    },
    formula: (title, row, column) => cell(title, row, column)?.f,
  };
}

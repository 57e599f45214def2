import { ENGLISH, message, type Words } from '../../words/index.ts';
import { megabytes, unreadable, type Unreadable } from '../problem.ts';
import { isWorkbook } from './is-workbook-file.ts';
import { isRefused, Package, type Parts } from './package.ts';
import { readCells, sharedTexts, type WorksheetCell } from './read-cells.ts';
import { readRows, type SheetRows } from './read-rows.ts';
import { MOST_PACKED } from './unpack.ts';
import { namedRanges, sheetsOf, type WorkbookSheet } from './workbook-sheets.ts';

/** A workbook that is open for reading. */
export interface Workbook {
  readonly ok: true;
  /** Names of the sheets with cells that are shown, in order; at least one. */
  readonly sheets: readonly string[];
  /** Names of the sheets with cells that are hidden, and not read. */
  readonly hiddenSheets: readonly string[];
  /** Reads a sheet as a table. */
  readonly read: (name: string) => Promise<SheetRows | Unreadable>;
  /** Ranges that have a name, as formulas name them: `Devices!$A$2:$A$9`. */
  readonly ranges: ReadonlyMap<string, string>;
  /** Cells of a sheet, hidden or not, as the file has them; `undefined` where there is no such sheet. */
  readonly cells: (name: string) => readonly WorksheetCell[] | Unreadable | undefined;
}

const [WORKBOOK, RELATIONS, SHARED] = ['xl/workbook.xml', 'xl/_rels/workbook.xml.rels', 'xl/sharedStrings.xml'];
/** Parts that may become large and say nothing about cells. */
const ASIDE = /^xl\/(?:charts|chartsheets|comments|drawings|externalLinks|media|pivotCache|pivotTables|tables|theme)/;
const NONE = message('The file is no workbook in the format .xlsx. Save the list as .xlsx or as CSV.');

/**
 * Opens a workbook (.xlsx, .xlsm) of at most 20 MB; its sheets are unpacked when they are read, to at most 64 MB.
 * @returns the workbook; else what keeps it from being read. Nothing that is not a workbook makes it throw.
 */
export function openWorkbook(bytes: Uint8Array, words: Words = ENGLISH): Workbook | Unreadable {
  if (bytes.length > MOST_PACKED) {
    return unreadable('file-too-large', '', words.say(
      'The workbook has {found} MB; at most {most} MB is read. Save the sheet with the list as a workbook of its own.',
      { found: megabytes(bytes.length), most: megabytes(MOST_PACKED) }));
  }
  // How a file of the older format begins, and one that is locked by a password.
  if (bytes[0] === 0xd0 && bytes[1] === 0xcf) {
    return unreadable(
      'not-a-workbook', '',
      words.say('The workbook is in the older format (.xls) or locked by a password. Save it as .xlsx without one.')
    );
  }
  if (!isWorkbook(bytes)) return unreadable('not-a-workbook', '', words.say(NONE));
  const pack = new Package(bytes, words);
  const base = pack.unpack((name) => name === WORKBOOK || name === RELATIONS);
  if (isRefused(base)) return base;
  const [workbook, relations] = [textOf(base, WORKBOOK), textOf(base, RELATIONS)];
  if (workbook === undefined || relations === undefined) {
    return unreadable('not-a-workbook', '', words.say(NONE));
  }
  const all = sheetsOf(workbook, relations);
  const withCells = all.filter(({ path }) => path !== undefined);
  const shown = withCells.some(({ isHidden }) => !isHidden) ? withCells.filter(({ isHidden }) => !isHidden) : withCells;
  if (shown.length === 0) {
    return unreadable('not-a-workbook', '', words.say('The workbook has no sheet with cells. Choose another file.'));
  }
  const sheets = shown.map(({ name }) => name);
  const cells = (name: string) => {
    const path = all.find((each) => each.name === name)?.path;
    if (path === undefined) return undefined;
    const parts = pack.unpack((each) => each === path || each === SHARED);
    return isRefused(parts) ? parts : readCells(textOf(parts, path) ?? '', sharedTexts(textOf(parts, SHARED) ?? ''));
  };
  const hiddenSheets = withCells.filter((each) => !shown.includes(each)).map(({ name }) => name);
  return { ok: true, sheets, hiddenSheets, ranges: namedRanges(workbook), cells, read: async (name) => {
    const sheet = shown.find((each) => each.name === name);
    if (sheet === undefined) {
      return unreadable(
        'sheet-missing', '',
        words.say(
          'There is no sheet “{sheet}”; the sheets are {sheets}. Name one of them.',
          { sheet: name, sheets: sheets.join(', ') }
        )
      );
    }
    const parts = pack.unpack((path) => isNeeded(path, sheet, withCells));
    return isRefused(parts) ? parts : readRows(parts, sheet.path!, all.indexOf(sheet) + 1, words);
  } };
}

function textOf(parts: Parts, path: string): string | undefined {
  return parts[path] && new TextDecoder().decode(parts[path]);
}

function isNeeded(path: string, sheet: WorkbookSheet, sheets: readonly WorkbookSheet[]): boolean {
  if (path === sheet.path) return true;
  return /^xl\/.*\.xml(?:\.rels)?$/.test(path) && !ASIDE.test(path) && !sheets.some((other) => other.path === path);
}

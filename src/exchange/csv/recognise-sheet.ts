import { SCHEMA, SHEET_NAMES, type SheetName } from '../../schedule/index.ts';
import { unreadable, type Unreadable } from '../problem.ts';
import { headingsOf, readHeading } from './headings.ts';

interface RecognisedSheet {
  readonly ok: true;
  readonly sheet: SheetName;
}

/**
 * Finds the sheet that a CSV file holds by its headings: the one that knows most of them, and at least half. Among
 * equals the one whose rows the headings can name.
 * @returns the sheet; else the problem that none or several fit.
 */
export function recogniseSheet(headings: readonly string[]): RecognisedSheet | Unreadable {
  const texts = headings.filter((text) => text.trim() !== '');
  const fits = SHEET_NAMES.map((sheet) => {
    const columns = texts.map((text) => readHeading(sheet, text).column).filter((column) => column !== undefined);
    const named = columns.some(({ key }) => key === SCHEMA[sheet].tag);
    return { sheet, known: columns.length, points: columns.length + (named ? 0.5 : 0) };
  }).sort((a, b) => b.points - a.points);
  const [best, next] = fits as [typeof fits[0], typeof fits[0]];
  const received = texts.join(', ');
  if (best.known === 0 || best.known * 2 < texts.length) {
    const examples = headingsOf('devices').slice(0, 5).join(', ');
    return unreadable('sheet-unrecognised', '/1', 'The headings in the first line fit no sheet. Name the sheet, or give '
      + `the file the headings of its sheet; those of devices begin with ${examples}.`, { line: 1, received });
  }
  if (best.points === next.points) {
    const equals = fits.filter(({ points }) => points === best.points);
    const sheets = equals.map(({ sheet }) => sheet).join(', ');
    return unreadable('sheet-ambiguous', '/1',
      `The headings fit several sheets: ${sheets}. Name the sheet, or add that of its tag.`,
      { line: 1, received, expected: sheets });
  }
  return { ok: true, sheet: best.sheet };
}

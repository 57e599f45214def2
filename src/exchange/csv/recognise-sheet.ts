import { SCHEMA, SHEET_NAMES, titleWithUnit, type SheetName } from '../../schedule/index.ts';
import { unreadable, type Unreadable } from '../problem.ts';
import { ENGLISH } from '../../words/index.ts';
import { readHeading } from './headings.ts';

interface RecognisedSheet {
  readonly ok: true;
  readonly sheet: SheetName;
}

/**
 * Finds the sheet that a CSV file holds by its headings: the one that knows most of them, and at least half. Among
 * equals the one whose rows the headings can name.
 * @returns the sheet; else the problem that none or several fit.
 */
export function recogniseSheet(headings: readonly string[], words = ENGLISH): RecognisedSheet | Unreadable {
  const texts = headings.filter((text) => text.trim() !== '');
  const fits = SHEET_NAMES.map((sheet) => {
    const columns = texts.map((text) => readHeading(sheet, text, words).column)
      .filter((column) => column !== undefined);
    const named = columns.some(({ key }) => key === SCHEMA[sheet].tag);
    return { sheet, known: columns.length, points: columns.length + (named ? 0.5 : 0) };
  }).sort((a, b) => b.points - a.points);
  const [best, next] = fits as [typeof fits[0], typeof fits[0]];
  const received = texts.join(', ');
  if (best.known === 0 || best.known * 2 < texts.length) {
    const examples = SCHEMA.devices.columns.slice(0, 5).map((column) => titleWithUnit(column, words)).join(', ');
    return unreadable('sheet-unrecognised', '/1', words.say(
      'The headings in the first line fit no sheet. Name the sheet, or give the file the headings of its sheet; those of devices begin with {examples}.',
      { examples }), { line: 1, received });
  }
  if (best.points === next.points) {
    const equals = fits.filter(({ points }) => points === best.points);
    const sheets = equals.map(({ sheet }) => words.within(SCHEMA[sheet].title)).join(', ');
    return unreadable('sheet-ambiguous', '/1', words.say(
      'The headings fit several sheets: {sheets}. Name the sheet, or add that of its tag.', { sheets }
    ),
      { line: 1, received, expected: equals.map(({ sheet }) => sheet).join(', ') });
  }
  return { ok: true, sheet: best.sheet };
}

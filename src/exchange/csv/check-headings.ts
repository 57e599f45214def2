import { SCHEMA, titleWithUnit, type SheetName } from '../../schedule/index.ts';
import type { ProblemList } from '../problem.ts';
import { hasKnownUnit, type Heading } from './headings.ts';
import type { TableRow } from './parse-table.ts';

/** Reports headings that stand twice, have a unit that cannot be converted, or name nothing that can be filled in. */
export function checkHeadings(headings: readonly Heading[], line: number, sheet: SheetName, list: ProblemList): void {
  const seen = new Map<string, number>();
  headings.forEach((heading, index) => {
    const { column, text, unit } = heading;
    if (column === undefined) return;
    const path = `/${line}/${column.key}`;
    const place = { line, column: index + 1, received: text };
    const before = seen.get(column.key);
    seen.set(column.key, index);
    if (before !== undefined) {
      list.add('column-duplicate', path, `Columns ${before + 1} and ${index + 1} are both ${column.title}; `
        + 'each may stand once. Delete one of them or give it another heading.', place);
    } else if (!hasKnownUnit(heading)) {
      const expected = titleWithUnit(column);
      list.add('unit-unknown', path, `Column ${index + 1}, “${text}”: the unit ${unit} cannot be turned into `
        + `${column.unit ?? 'a plain number'}. Head it ${expected} and make the values fit.`, { ...place, expected });
    }
  });
  if (!headings.some(({ column }) => column?.role === 'input')) {
    const examples = SCHEMA[sheet].columns.slice(0, 4).map(titleWithUnit).join(', ');
    list.add('sheet-unrecognised', `/${line}`, `None of the headings is a column of ${sheet} that can be filled in. `
      + `Begin the file with headings such as ${examples}.`, { line });
  }
}

/** Sentences that name the columns of a file that the sheet does not have. */
export function notesOnHeadings(headings: readonly Heading[], records: readonly TableRow[]): string[] {
  const unknown = headings.filter(({ column, text }) => column === undefined && text.trim() !== '');
  const names = unknown.map(({ text }) => `“${text}”`).join(', ');
  const notes = names === '' ? [] : [`Left out, as the sheet has no such column: ${names}.`];
  headings.forEach(({ text }, index) => {
    if (text.trim() !== '') return;
    const count = records.filter(({ fields }) => (fields[index] ?? '').trim() !== '').length;
    if (count > 0) notes.push(`Left out, as it has no heading: column ${index + 1} with ${count} values.`);
  });
  return notes;
}

import { columnOf, SCHEMA, titleWithUnit, type SheetName } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import type { ProblemList } from '../problem.ts';
import { hasKnownUnit, type Heading } from './headings.ts';
import type { TableRow } from './parse-table.ts';

/** Headings of runs that stand on the sheet of ways by now: keys, and titles in the languages of files. */
const MOVED_TO_WAYS =
  /^\s*(?:protection|schutzeinrichtung|trip|trip multiple|auslösevielfaches|multiple de déclenchement)\s*(?:[([].*)?$/i;

/** Reports headings that stand twice, have a unit that cannot be converted, or name nothing that can be filled in. */
export function checkHeadings(
  headings: readonly Heading[], line: number, sheet: SheetName, list: ProblemList, words: Words,
): void {
  const seen = new Map<string, number>();
  headings.forEach((heading, index) => {
    const { column, text, unit } = heading;
    if (column === undefined && sheet === 'runs' && MOVED_TO_WAYS.test(text)) {
      list.add('column-moved', `/${line}`, words.say(
        'Column {number}, “{heading}”: the protection of runs stands on the sheet {sheet} by now, where one may protect several. Head it {way} and write kind and rating into it, such as B 4, then paste it on the page, or give the ways a file of their own.',
        { number: index + 1, heading: text, sheet: words.text(SCHEMA.ways.title), way: words.text(columnOf('runs', 'way').title) }
      ), { line, column: index + 1, received: text });
    }
    if (column === undefined) return;
    const path = `/${line}/${column.key}`;
    const place = { line, column: index + 1, received: text };
    const before = seen.get(column.key);
    seen.set(column.key, index);
    if (before !== undefined) {
      list.add('column-duplicate', path, words.say(
        'Columns {first} and {second} are both {column}; each may stand once. Delete one of them or give it another heading.',
        { first: before + 1, second: index + 1, column: words.text(column.title) }), place);
    } else if (!hasKnownUnit(heading)) {
      const found = { number: index + 1, heading: text, found: unit!, expected: titleWithUnit(column, words) };
      const message = column.unit === undefined
        ? words.say(
          'Column {number}, “{heading}”: the unit {found} cannot be turned into a plain number. Head it {expected} and make the values fit.',
          found
        )
        : words.say(
          'Column {number}, “{heading}”: the unit {found} cannot be turned into {unit}. Head it {expected} and make the values fit.',
          { ...found, unit: column.unit }
        );
      list.add('unit-unknown', path, message, { ...place, expected: titleWithUnit(column) });
    }
  });
  if (!headings.some(({ column }) => column?.role === 'input')) {
    const examples = SCHEMA[sheet].columns.slice(0, 4).map((column) => titleWithUnit(column, words)).join(', ');
    list.add('sheet-unrecognised', `/${line}`, words.say(
      'None of the headings is a column of {sheet} that can be filled in. Begin the file with headings such as {examples}.',
      { sheet: words.within(SCHEMA[sheet].title), examples }), { line });
  }
}

/** Sentences that name the columns of a file that the sheet does not have. */
export function notesOnHeadings(headings: readonly Heading[], records: readonly TableRow[], words: Words): string[] {
  const unknown = headings.filter(({ column, text }) => column === undefined && text.trim() !== '');
  const names = unknown.map(({ text }) => words.say('“{text}”', { text })).join(', ');
  const notes = names === '' ? [] : [words.say('Left out, as the sheet has no such column: {names}.', { names })];
  headings.forEach(({ text }, index) => {
    if (text.trim() !== '') return;
    const count = records.filter(({ fields }) => (fields[index] ?? '').trim() !== '').length;
    if (count > 0) {
      notes.push(
        words.say(
          'Left out, as it has no heading: column {number} with {count, plural, one {# value} other {# values}}.',
          { number: index + 1, count }
        )
      );
    }
  });
  return notes;
}

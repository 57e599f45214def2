import { columnOf, detectDecimal, parseCell, type CellContext, type InputColumn } from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import { unguardText } from '../csv/index.ts';
import { ProblemList, type Unreadable } from '../problem.ts';
import { EACH_HOUR, HeadingReader, isHeadingRow, namesOf, type ReadHeadings } from './read-headings.ts';

/** A case of a profile: the hours of a column. */
export interface ProfileCase {
  /** `07–08`, or `07:30–08:00` where hours are parted. */
  readonly case: string;
  /** How long it lasts a day [h], above 0 to 24; those of all cases are 24. */
  readonly hours: number;
}

/** The share of a group that counts in a case. */
export interface ProfileFactor {
  readonly case: string;
  readonly group: string;
  /** 0 to 1. */
  readonly factor: number;
}

/** A profile that was read; `notes` says in sentences what a person should know about how. */
export interface ReadProfile {
  readonly ok: true;
  /** In the order of the columns. */
  readonly cases: readonly ProfileCase[];
  /** Row by row. */
  readonly factors: readonly ProfileFactor[];
  readonly notes: readonly string[];
}

/** What figures of a profile are: shares, or powers, which become shares of the greatest of their row. */
export type ProfileUnit = 'share' | 'W' | 'kW';

/** How a profile is read. */
export interface ProfileOptions {
  /** What the figures are; shares unless said otherwise. A power may bear the other unit: `1.2 kW`. */
  readonly unit?: ProfileUnit;
  /** The language of what is said; English unless said otherwise. */
  readonly words?: Words;
}

/** Groups are named as rows are by their tags: without spaces around them. */
const GROUP = columnOf('types', 'type') as InputColumn;
/** A factor is what `diversity` is, for a group in one case. */
const SHARE = columnOf('devices', 'diversity') as InputColumn;
const POWER = columnOf('types', 'power') as InputColumn;

/**
 * Reads a profile: a row for each group, its name in the first column, then one figure for each part of a day. A row of
 * headings says which hours (`0–8`, `08:00–14:00`; `7`, `7 h` or `07:00` is when an hour begins, or ends where 24 is
 * among them); without one there are 24 columns, from midnight on. All or nothing: the cases, or every problem with
 * row, column and what to do.
 *
 * A figure is a share (`0.25`, `0,25`, `25 %`), or a power of the group [W, kW]; an empty cell gives no factor, so that
 * rows of the group keep their own diversity. Empty rows, and those above the headings, are left out.
 *
 * @param table cells as pasted or taken from CSV, row by row.
 */
export function readProfile(
  table: readonly (readonly string[])[], { unit = 'share', words = ENGLISH }: ProfileOptions = {},
): ReadProfile | Unreadable {
  return new ProfileReader(unit, words).read(table);
}

/** A row of the table. */
interface Line {
  /** Row of the table, from 1. */
  readonly row: number;
  readonly cells: readonly string[];
}

class ProfileReader {
  readonly #list = new ProblemList();
  readonly #unit: ProfileUnit;
  readonly #words: Words;

  constructor(unit: ProfileUnit, words: Words) {
    this.#unit = unit;
    this.#words = words;
  }

  read(table: readonly (readonly string[])[]): ReadProfile | Unreadable {
    const lines = table.map((cells, index): Line =>
      ({ row: index + 1, cells: cells.map((text) => unguardText(text.trim()).trim()) }))
      .filter(({ cells }) => cells.some((text) => text !== ''));
    const first = lines.findIndex(({ cells }) => cells.slice(1).some((text) => text !== ''));
    const heading = first >= 0 && isHeadingRow(lines[first]!.cells.slice(1)) ? lines[first] : undefined;
    const groups = heading === undefined ? lines : lines.slice(first + 1);
    if (first < 0 || groups.every(({ cells }) => cells.slice(1).every((text) => text === ''))) {
      this.#list.add('profile-empty', '', this.#words.say(
        'There is no figure in the table. Paste a row for each group: its name, then a figure for each hour.'));
      return this.#list.unreadable;
    }
    const columns = heading === undefined ? this.#withoutHeading(groups) : this.#headed(heading);
    if (columns === undefined) return this.#list.unreadable;
    const names = namesOf(columns.spans);
    const rows = this.#figures(groups, names);
    if (this.#list.total > 0) return this.#list.unreadable;
    return {
      ok: true,
      cases: columns.spans.map(({ from, to }, index) => ({ case: names[index]!, hours: (to - from) / 60 })),
      factors: rows.flatMap(({ group, figures }) => {
        const factors = this.#unit === 'share' ? figures : sharesOf(figures);
        return factors.flatMap((factor, index): ProfileFactor[] =>
          factor === null ? [] : [{ case: names[index]!, group, factor }]);
      }),
      notes: [
        ...heading === undefined || first === 0 ? [] : [this.#words.say(
          '{count, plural, one {One row above the hours was left out.} other {# rows above the hours were left out.}}',
          { count: first })],
        ...columns.note === undefined ? [] : [columns.note],
        ...this.#noteOnEmpty(rows),
      ],
    };
  }

  #headed({ row, cells }: Line): ReadHeadings | undefined {
    const end = cells.findLastIndex((text) => text !== '') + 1;
    return new HeadingReader(row, this.#list, this.#words).read(cells.slice(1, end));
  }

  /** 24 columns are the hours of a day; a table of any other width has to say what its columns are. */
  #withoutHeading(lines: readonly Line[]): ReadHeadings | undefined {
    const widths = new Set(lines.map(({ cells }) => widthOf(cells, EACH_HOUR.spans.length)));
    const [width = 0] = widths;
    if (widths.size > 1 || width === EACH_HOUR.spans.length) return EACH_HOUR;
    const { row } = lines[0]!;
    this.#list.add('hours-unreadable', `/${row}`, this.#words.say(
      'Row {row}: there {count, plural, one {is one figure} other {are # figures}} for each group and no headings; without these it takes 24, one for each hour. Put a row above that says the hours, such as 0–8, 8–14, 14–24.',
      { row, count: width }), { line: row, received: String(width), expected: '24' });
    return undefined;
  }

  #figures(lines: readonly Line[], names: readonly string[]): { group: string; figures: (number | null)[] }[] {
    const texts = lines.flatMap(({ cells }) => cells.slice(1));
    const context: CellContext = {
      decimal: detectDecimal(texts), words: this.#words, ...(this.#unit === 'share' ? {} : { unit: this.#unit }),
    };
    const known = new Map<string, number>();
    return lines.map((line) => {
      const group = this.#group(line, known);
      this.#checkWidth(line, names.length);
      const figures = names.map((name, index) => this.#figure(line, index + 1, name, context));
      return { group, figures };
    });
  }

  #group({ row, cells }: Line, known: Map<string, number>): string {
    const read = parseCell(GROUP, cells[0]!, { words: this.#words });
    const place = { line: row, column: 1, received: cells[0]! };
    if (!read.ok) {
      this.#list.add('value-refused', `/${row}/1`, this.#words.say('Row {row}, column {column}: {sentence}',
        { row, column: 1, sentence: read.problem }), place);
      return '';
    }
    if (read.value === null) {
      this.#list.add('group-missing', `/${row}/1`, this.#words.say(
        'Row {row} has figures and no group. Write the name of the group into its first column.', { row }), place);
      return '';
    }
    const group = String(read.value);
    const before = known.get(group);
    if (before === undefined) known.set(group, row);
    else {
      this.#list.add('group-twice', `/${row}/1`, this.#words.say(
        'Rows {first} and {second} both have the group “{group}”; each may stand once. Delete one of them or give it another name.',
        { first: before, second: row, group }), place);
    }
    return group;
  }

  #checkWidth({ row, cells }: Line, count: number): void {
    const found = widthOf(cells, count);
    if (found === count) return;
    this.#list.add('row-uneven', `/${row}`, this.#words.say(
      'Row {row} has {found, plural, one {one column} other {# columns}} behind the group; {count, plural, one {one is} other {# are}} expected. Fill it up, with empty cells where there is no factor, or delete what is too much.',
      { row, found, count }), { line: row, received: String(found), expected: String(count) });
  }

  #figure({ row, cells }: Line, index: number, name: string, context: CellContext): number | null {
    const text = cells[index] ?? '';
    const read = parseCell(this.#unit === 'share' ? SHARE : POWER, text, context);
    if (read.ok && typeof read.value !== 'string') return read.value as number | null;
    const sentence = read.ok
      ? this.#words.say('“{found}” is a formula, which is not read here. Paste the values.', { found: text })
      : read.problem;
    this.#list.add('value-refused', `/${row}/${index + 1}`, this.#words.say(
      'Row {row}, column {column} ({hours}): {sentence}', { row, column: index + 1, hours: name, sentence }),
    { line: row, column: index + 1, received: text });
    return null;
  }

  #noteOnEmpty(rows: readonly { group: string; figures: readonly (number | null)[] }[]): string[] {
    const empty = rows.filter(({ figures }) => figures.every((figure) => figure === null))
      .map(({ group }) => this.#words.say('“{text}”', { text: group }));
    return empty.length === 0 ? [] : [this.#words.say(
      'Without any factor, so that their rows keep their own diversity: {groups}.', { groups: empty.join(', ') })];
  }
}

/** How many columns a row has behind the group; empty ones beyond those expected do not count. */
function widthOf(cells: readonly string[], expected: number): number {
  const filled = cells.findLastIndex((text) => text !== '');
  return Math.max(filled, Math.min(cells.length - 1, expected));
}

/** Powers as shares of the greatest; a group that never draws anything has the share 0. */
function sharesOf(powers: readonly (number | null)[]): (number | null)[] {
  const most = powers.reduce((greatest: number, power) => Math.max(greatest, power ?? 0), 0);
  return powers.map((power) => power === null ? null : most === 0 ? 0 : power / most);
}

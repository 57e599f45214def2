import { grouped, type Cells } from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import type { Unreadable } from '../problem.ts';
import type { TakeoffColumn } from './columns.ts';
import { areRivals, areYears } from './count-headings.ts';
import { headingsName, LineReader } from './draft-lines.ts';
import type { LineDraft, TakeoffLine } from './line.ts';
import { NameList, type TakeoffName } from './names/name-list.ts';
import { TypeIndex, type TypeMatch } from './names/type-index.ts';
import type { OpenPart, TakeoffPart } from './part.ts';
import { on, readParts } from './parts.ts';
import { askOfRepeats } from './repeated-lists.ts';
import { settleLines } from './settle-lines.ts';
import { tablesOf, type TakeoffSource } from './source.ts';
import { askOfSummaries } from './summary-sheets.ts';
import { sumsOf, type TakeoffSums } from './sums.ts';
import type { TakeoffOptions } from './takeoff-options.ts';

/** A takeoff that was read: every line with what becomes of it. */
export interface Takeoff {
  readonly ok: true;
  /** Each list with its columns, in the order of the source; at least one. */
  readonly parts: readonly TakeoffPart[];
  /** Headings and columns of the first list. */
  readonly headingLine: number | undefined;
  readonly columns: readonly TakeoffColumn[];
  /** The lines of all lists; a line with several counts stands once for each. */
  readonly lines: readonly TakeoffLine[];
  /** The names that devices have, in order. */
  readonly names: readonly TakeoffName[];
  readonly sums: TakeoffSums;
  /** The device rows that the lines give. */
  readonly rows: readonly Cells[];
  /** Sentences about what no line says: columns that are missing or not read. */
  readonly notes: readonly string[];
}

/**
 * Reads a takeoff: a list of devices that somebody counted off drawings, in the columns and words of their office.
 *
 * The headings are found, the columns mapped, and every line gets an outcome with its reason; nothing is dropped
 * silently, and the sums balance. Names are looked up among the types: exactly, by alias, by likeness; those that are
 * only like a type are undecided, unknown ones become new types. Reading again with decisions applies them.
 *
 * @param source text (CSV with comma, semicolon or tab, at most 64 MB), rows of cells of a spreadsheet, or several
 *   lists with what is known of each, such as the sheets of a workbook.
 * @returns the takeoff; else what keeps the file from being read, by line.
 */
export function readTakeoff(source: TakeoffSource, options: TakeoffOptions): Takeoff | Unreadable {
  const { types, decisions = {}, words = ENGLISH } = options;
  const index = new TypeIndex(types);
  const names = new NameList(index, decisions, words);
  const read = readParts(tablesOf(source), options, index, words);
  if (!read.ok) return read;
  const { parts, legend, notes } = read;
  const matched = new Map<string, TypeMatch['by']>();
  const isKnown = (texts: readonly string[], exactly: boolean) => {
    const key = texts.join('\n');
    const by = matched.get(key) ?? index.match(texts).by;
    matched.set(key, by);
    return by === 'exact' || by === 'alias' || (!exactly && by === 'likeness');
  };
  const repeats = askOfRepeats(parts.map((part) => {
    const reader = new LineReader({ ...options, ...part, decisions, legend, isKnown, words }, part.records);
    return part.kind === 'list' ? reader.read(part.records) : reader.leaveOut(part.records, part.kind);
  }), parts, decisions, words);
  const drafts = inOrder(askOfSummaries(repeats.drafts, parts, decisions, words), parts);
  const { lines, rows } = settleLines(drafts, names, types, words);
  return {
    ok: true, parts: parts.map(({ table: { file, sheet }, kind, firstLine, headingLine, columns, band }) => ({
      ...(file === undefined ? {} : { file }), ...(sheet === undefined ? {} : { sheet }),
      kind, firstLine, headingLine, columns,
      ...(band === undefined ? {} : { ownColumns: band.own.map((place) => place + 1) }),
    })), headingLine: parts[0]!.headingLine, columns: parts[0]!.columns, lines, rows, names: names.all,
    sums: sumsOf(lines),
    notes: [...notes, ...repeats.notes, ...parts.flatMap((part) => notesOn(part, words))],
  };
}

/**
 * Which of the two columns that every takeoff needs were not found: that of the names, that of the quantities. Above
 * several counts beside rooms the headings are the names.
 */
export function missingColumns(columns: readonly TakeoffColumn[]): ('type' | 'qty')[] {
  const fields = new Set(columns.map(({ field }) => field));
  const isNamed = fields.has('type') || fields.has('description') || headingsName(columns);
  return [...(isNamed ? [] : ['type' as const]), ...(fields.has('qty') ? [] : ['qty' as const])];
}

/** The lines of all parts as they stand in their sheets, also where lists stand side by side. */
function inOrder(drafts: readonly (readonly LineDraft[])[], parts: readonly OpenPart[]): LineDraft[] {
  const tables = grouped(drafts.keys(), (place) => parts[place]!.table);
  return [...tables.values()].flatMap((places) => places.flatMap((place) => drafts[place]!)
    .sort((one, other) => one.source.line - other.source.line));
}

/** Columns that may hold counts of different issues of the same devices, of which none is taken unasked. */
export function rivalColumns(columns: readonly TakeoffColumn[]): TakeoffColumn[] {
  const found = columns.filter(({ field, from, heading }) => field === undefined && from === undefined
    && (areRivals([heading]) || areYears([heading, heading])));
  return found.length > 1 ? found : [];
}

function notesOn({ kind, columns, table }: OpenPart, words: Words): string[] {
  if (kind !== 'list') {
    return [on(table, kind === 'legend' ? words.say('It is a legend, which explains names and counts nothing.')
      : words.say('There is no list on it: no column is known to hold quantities.'), words)];
  }
  const rivals = rivalColumns(columns).map(({ heading }) => `“${heading}”`).join(', ');
  const missing = missingColumns(columns).map((field) => field === 'type'
    ? words.say('No column is known to name the devices. Choose the one that does.')
    : rivals === '' ? words.say('No column is known to hold the quantities. Choose the one that does.')
    : words.say('Under {columns} stand counts of different issues, years or orders, or of rooms. Choose the one that counts, or each of them if they count together.', { columns: rivals }));
  const unread = columns.filter(({ field, values }) => field === undefined && values > 0)
    .map(({ index, heading, values }) => heading === '' ? words.say(
      'column {number} ({values})', { number: index + 1, values }
    )
      : words.say('“{heading}” ({values})', { heading, values }));
  if (unread.length > 0) {
    missing.push(words.say('Columns that are not read, with the number of their values: {columns}.', { columns: unread.join(', ') }));
  }
  return missing.map((note) => on(table, note, words));
}

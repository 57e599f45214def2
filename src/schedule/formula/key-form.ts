import { ENGLISH, type Words } from '../../words/index.ts';
import { findColumn, SCHEMA, type SheetName } from '../schema/index.ts';
import type { FileRows } from './file-rows.ts';
import { BY_KEY } from './formula-problem.ts';
import { noSuchRow, readingOf, refuseColumn, refuseText, sheetNamed, UnreadableFormula, type Read } from './reading.ts';
import { keepReference, mapReferences, type CellReference, type Reference } from './reference.ts';

// The form of formulas in files, which names cells by key and row, so that a column may come anywhere:
//
//   [qty]                    the cell of this column in the same row
//   [devices.qty@L1-001]     that of the row with this tag
//   [devices.qty@'L1 001']   a tag of more than letters, digits and . _ + - / stands in quotes, those in it doubled
//   [devices.qty#3]          that of the third row, where it has no tag or shares it with another
//   [devices.qty#2:#5]       a range; where its corners are in two columns, [devices.qty#2:distance#5]
//
// A dollar sign before a key, or before @ and #, keeps column or row when the formula is copied, as on the screen.

const PLAIN_TAG = String.raw`[\p{L}\p{N}._+/-]+`;
const NAMED_ROW = String.raw`(?:@(${PLAIN_TAG}|'(?:[^']|'')*')|#(\d{1,7}))`;
const ROW = `${NAMED_ROW}?`;
const ROWS = new RegExp(NAMED_ROW, 'gu');
const REFERENCE = new RegExp(
  String.raw`^\[(?:(\w+)\.)?(\$?)(\w+)(\$?)${ROW}(:(?:(\$?)(\w+))?(\$?)${ROW})?\]$`, 'u');
const IS_PLAIN = new RegExp(`^${PLAIN_TAG}$`, 'u');
/** A text in quotes, what stands in brackets, a number with an exponent, or a cell by letter and number. */
const PARTS = new RegExp([
  String.raw`"(?:[^"]|"")*"`,
  String.raw`\[(?:'[^']*'|[^[\]'])*\]`,
  String.raw`(?<![\w.$])\d+(?:\.\d*)?[Ee][-+]?\d+`,
  String.raw`(?<![\w.])\$?[A-Za-z]{1,2}\$?\d{1,7}(?![\w(.])`,
].join('|'), 'g');

/** Rows with a longer tag are named by their number [characters], so that what is written can be read again. */
const LONGEST_TAG = 100;
/** Longest formula of a file that is looked at [characters]: one of `LONGEST_FORMULA` takes less, whatever it names. */
const LONGEST_TEXT = 200_000;

/** Where a formula of a file stands, and the rows that it may name. */
export interface FilePlace {
  readonly sheet: SheetName;
  /** Place of its row, from 0. */
  readonly row: number;
  readonly rows: FileRows;
}

/**
 * Reads a formula of a file into the form that documents keep.
 * @param words the language in which to say what is wrong.
 */
export function readKeyForm(text: string, place: FilePlace, words: Words = ENGLISH): Read {
  return readingOf(words, BY_KEY, () => {
    // Tags may be long: what counts is the length with one sign for each cell.
    const isLong = text.length > LONGEST_TEXT;
    refuseText(isLong ? text : text.replace(PARTS, (part) => (part.startsWith('[') ? '0' : part)), words);
    return text.replace(PARTS, (part) => {
      if (part.startsWith('"')) return part;
      if (part.startsWith('[')) return keepReference(readReference(part, place, words));
      // The formula engine knows a small e only (hyperformula 3.5.0).
      if (/^\d/.test(part)) return part.toLowerCase();
      throw new UnreadableFormula(words.say(
        'The formula names {cell} by letter and number, which mean nothing in a file. Name it by key and row: [qty] in the same row, [devices.qty@TAG] or [devices.qty#3].',
        { cell: part }));
    });
  });
}

function readReference(text: string, place: FilePlace, words: Words): Reference {
  const found = REFERENCE.exec(text);
  if (found === null) {
    throw new UnreadableFormula(words.say(
      '{reference} cannot be read. Name a cell as [qty] in the same row, [devices.qty@TAG] or [devices.qty#3], cells as [devices.qty#3:#5].',
      { reference: text }));
  }
  const [, name, column, key, row, tag, number, range, toColumn, toKey, toRow, toTag, toNumber] = found;
  const sheet = name === undefined ? place.sheet : sheetNamed(name, words);
  const corner = (cell: string, columnSign: string, rowSign: string, named: RowName): CellReference => ({
    key: knownKey(sheet, cell, words), id: rowOf(text, sheet, named, place, words),
    fixedColumn: columnSign === '$', fixedRow: rowSign === '$',
  });
  const from = corner(key!, column!, row!, { tag, number });
  if (range === undefined) return { sheet, from };
  const [endColumn, endKey] = toKey === undefined ? [column!, key!] : [toColumn!, toKey];
  return { sheet, from, to: corner(endKey, endColumn, toRow!, { tag: toTag, number: toNumber }) };
}

interface RowName { readonly tag: string | undefined; readonly number: string | undefined }

function knownKey(sheet: SheetName, key: string, words: Words): string {
  const column = findColumn(sheet, key);
  if (column === undefined) {
    throw new UnreadableFormula(words.say('The sheet {sheet} has no column “{key}”. Write one of its keys: {keys}.',
      { sheet, key, keys: SCHEMA[sheet].columns.map((each) => each.key).join(', ') }));
  }
  refuseColumn(sheet, column, words);
  return key;
}

function rowOf(
  reference: string, sheet: SheetName, { tag: written, number }: RowName, place: FilePlace, words: Words,
): number {
  if (number !== undefined) {
    if (!place.rows.has(sheet, Number(number) - 1)) throw noSuchRow(sheet, Number(number), words);
    return Number(number) - 1;
  }
  if (written === undefined) {
    if (sheet === place.sheet) return place.row;
    throw new UnreadableFormula(words.say(
      '{reference} names no row of the sheet {sheet}. Add @ and its tag, or # and its number.', { reference, sheet }));
  }
  const tag = plainTag(written);
  const [id, other] = place.rows.tagged(sheet, tag);
  if (id === undefined) {
    throw new UnreadableFormula(words.say(
      'No row of the sheet {sheet} has the tag “{tag}”, which the formula names. Write a tag that stands there, or # and the number of a row.', { sheet, tag }));
  }
  if (other !== undefined) {
    throw new UnreadableFormula(words.say(
      'More than one row of the sheet {sheet} has the tag “{tag}”, which the formula names. Name the row by its number: #{row} or #{other}.',
      { sheet, tag, row: String(id + 1), other: String(other + 1) }));
  }
  return id;
}

/** A formula that a document keeps, as files write it. @param place where it stands in the document. */
export function writeKeyForm(formula: string, place: FilePlace): string {
  return mapReferences(formula, (reference) => (reference === undefined ? '#REF!' : written(reference, place)));
}

function written({ sheet, from, to }: Reference, { sheet: own, row, rows }: FilePlace): string {
  const at = rows.placeOf(sheet, from.id);
  if (at < 0) return '#REF!';
  if (to === undefined) {
    const isOwn = sheet === own && at === row;
    const column = `${columnOf(from)}${from.fixedRow ? '$' : ''}`;
    return isOwn ? `[${column}]` : `[${sheet}.${column}${rowName(sheet, at, rows)}]`;
  }
  const last = rows.placeOf(sheet, to.id);
  if (last < 0) return '#REF!';
  const isOneColumn = columnOf(from) === columnOf(to);
  const corner = (cell: CellReference, number: number) => `${cell.fixedRow ? '$' : ''}#${number + 1}`;
  return `[${sheet}.${columnOf(from)}${corner(from, at)}:${isOneColumn ? '' : columnOf(to)}${corner(to, last)}]`;
}

/**
 * A formula of a file that names rows of a sheet by other numbers.
 * @param own the sheet in which it stands.
 * @param numberOf the number of the row that is named by its number, from 1, or by its tag; `undefined` where it keeps
 * its name.
 */
export function renumberKeyForm(
  text: string, own: SheetName, sheet: SheetName, numberOf: (row: number | string) => number | undefined,
): string {
  return text.replace(PARTS, (part) => {
    const named = /^\[(?:(\w+)\.)?/.exec(part);
    if (named === null || (named[1] ?? own) !== sheet) return part;
    return part.replace(ROWS, (written, tag?: string, number?: string) => {
      const now = numberOf(tag === undefined ? Number(number) : plainTag(tag));
      return now === undefined ? written : `#${now}`;
    });
  });
}

/** A tag as it stands in a reference, without quotes. */
const plainTag = (written: string) =>
  (written.startsWith("'") ? written.slice(1, -1).replaceAll("''", "'") : written);

const columnOf = ({ fixedColumn, key }: CellReference) => `${fixedColumn ? '$' : ''}${key}`;

function rowName(sheet: SheetName, place: number, rows: FileRows): string {
  const tag = rows.tag(sheet, place);
  const [, other] = rows.tagged(sheet, tag);
  if (tag === '' || tag.length > LONGEST_TAG || other !== undefined) return `#${place + 1}`;
  return IS_PLAIN.test(tag) ? `@${tag}` : `@'${tag.replaceAll("'", "''")}'`;
}

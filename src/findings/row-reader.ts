import type { Workbook } from '../engine/index.ts';
import { SCHEMA, tagOf, type CellValue, type Row, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import type { ValuesOf, Words } from '../words/index.ts';
import { TAGGED, UNTAGGED } from './row-names.ts';

/** One row as the checks read it. */
export class RowReader {
  readonly sheet: SheetName;
  readonly row: Row;
  readonly document: ScheduleDocument;
  readonly book: Workbook;
  readonly words: Words;

  constructor(sheet: SheetName, row: Row, document: ScheduleDocument, book: Workbook, words: Words) {
    this.sheet = sheet;
    this.row = row;
    this.document = document;
    this.book = book;
    this.words = words;
  }

  /** Says a message in the language of the schedule; `{name}` in it is the name of the row. */
  say<Message extends string>(message: Message, ...[values]: ValuesOf<Message, 'name'>): string {
    return this.words.say<string>(message, { name: this.name, ...values });
  }

  /** What a person entered in a cell. */
  own(key: string): CellValue {
    return this.row.cells[key] ?? null;
  }

  value(key: string): CellValue {
    return this.book.value(this.sheet, this.row.id, key);
  }

  /** A number of the row; `null` when it is unknown. */
  number(key: string): number | null {
    const value = this.book.number(this.sheet, this.row.id, key);
    return Number.isNaN(value) ? null : value;
  }

  /** How many rows a total lacks. */
  missing(key: string): number {
    return this.book.missing(this.sheet, this.row.id, key);
  }

  isPartial(key: string): boolean {
    return this.book.isPartial(this.sheet, this.row.id, key);
  }

  /** A number of the row that a reference names; `null` when it is unknown. */
  numberOf(reference: string, sheet: SheetName, key: string): number | null {
    const target = this.book.target(this.sheet, this.row.id, reference);
    if (target < 0) return null;
    const value = this.book.number(sheet, target, key);
    return Number.isNaN(value) ? null : value;
  }

  /** The row as a sentence names it: «Rail L1», or «A supply without a tag», whose place the finding tells. */
  get name(): string {
    const tag = tagOf(this.sheet, this.row);
    return tag === '' ? this.words.say(UNTAGGED[this.sheet]) : this.words.say(TAGGED[this.sheet], { tag });
  }

  /** The name of a sheet, to which a remedy sends. */
  titleOf(sheet: SheetName): string {
    return this.words.text(SCHEMA[sheet].title);
  }
}

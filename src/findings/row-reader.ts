import { figureOf, type Argument, type CellPlace, type TypedFault, type Workbook } from '../engine/index.ts';
import {
  columnOf, SCHEMA, tagOf, type CellValue, type InputColumn, type Row, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import type { ValuesOf, Words } from '../words/index.ts';
import type { Facts, Gathering } from './facts.ts';
import type { Only } from './only.ts';
import type { Reads } from './reads.ts';
import { TAGGED, UNTAGGED } from './row-names.ts';
import type { Waiting, WaitingRows } from './waiting.ts';

/** What all rows are read from. */
export interface ReaderSource {
  readonly document: ScheduleDocument;
  readonly book: Workbook;
  readonly words: Words;
  readonly reads: Reads;
  readonly waiting: Waiting;
  readonly facts: Facts;
  readonly checks: Readonly<Record<SheetName, readonly StatusCheck[]>>;
}

/** What of a check tells whether it finds something in a row. */
interface StatusCheck {
  readonly rule: string;
  readonly key: string;
  readonly severity: string;
  readonly inStatus?: true;
  readonly needs?: string;
  readonly only?: Only;
  readonly find: (row: RowReader) => { readonly value: CellValue; readonly limit: CellValue } | undefined;
}

/** Something that counts against a row. */
export interface Against {
  readonly key: string;
  readonly severity: string;
  readonly value: CellValue;
  readonly limit: CellValue;
}

const NONE = new Float64Array(0);

/**
 * The rows of a sheet as one of its checks reads them, one at a time. What is read is noted, so that the row is checked
 * again when it changes.
 */
export class RowReader {
  readonly sheet: SheetName;
  readonly words: Words;
  readonly #source: ReaderSource;
  readonly #check: number;
  readonly #noted: Set<string>;
  readonly #speaks: boolean;
  /** Numbers that the row is tried with, in the place of its own. */
  readonly #tried: Readonly<Record<string, number>>;
  /** Columns of numbers that have been read: most of what checks read of rows in which they find nothing. */
  readonly #numbers = new Map<string, Float64Array>();
  #row!: Row;
  readonly #lacking = new Map<string, CellPlace>();
  readonly #awaited = new Map<string, CellPlace>();

  /**
   * @param check place of the check among those of the sheet.
   * @param speaks whether sentences are wanted; without them they are empty.
   * @param tried numbers of its rows that count in the place of their own, by key.
   */
  constructor(
    sheet: SheetName, check: number, source: ReaderSource, speaks: boolean,
    tried: Readonly<Record<string, number>> = {},
  ) {
    this.sheet = sheet;
    this.words = source.words;
    this.#check = check;
    this.#source = source;
    this.#tried = tried;
    this.#noted = source.reads.own(sheet)[check]!;
    this.#speaks = speaks;
  }

  /** Turns to a row. */
  at(row: Row): this {
    this.#row = row;
    return this;
  }

  /** Numbers that this check read and that are not known, by key or reference, so that it could not be made. */
  get lacking(): ReadonlyMap<string, CellPlace> {
    return this.#lacking;
  }

  /** What it read that is not known, or not as a whole: where it looks for what is missing. */
  get awaited(): readonly CellPlace[] {
    return [...this.#awaited.values(), ...this.#lacking.values()];
  }

  /** Notes that the row waits for a cell, of its own or of another row. */
  awaits(...place: CellPlace): void {
    this.#awaited.set(place[2], place);
  }

  /** Says a message in the language of the schedule; `{name}` in it is the name of the row. */
  say<Message extends string>(message: Message, ...[values]: ValuesOf<Message, 'name'>): string {
    this.#note(SCHEMA[this.sheet].tag);
    return this.#speaks ? this.words.say<string>(message, { name: this.name, ...values }) : '';
  }

  /** A sentence whose figures take some reckoning, which is done when the sentence is wanted. */
  sentence(say: () => string): string {
    this.#note(SCHEMA[this.sheet].tag);
    return this.#speaks ? say() : '';
  }

  /** What a person entered in a cell. */
  own(key: string): CellValue {
    this.#note(key);
    return this.#row.cells[key] ?? null;
  }

  value(key: string): CellValue {
    this.#note(key);
    return this.#tried[key] ?? this.#source.book.value(this.sheet, this.#row.id, key);
  }

  /** A number of the row; `null` when it is unknown. */
  number(key: string): number | null {
    if (key in this.#tried) return this.#tried[key]!;
    let numbers = this.#numbers.get(key);
    if (numbers === undefined) {
      this.#note(key);
      this.#numbers.set(key, numbers = this.#source.book.columns(this.sheet).numbers.get(key) ?? NONE);
    }
    const value = numbers[this.#row.id];
    if (value !== undefined && !Number.isNaN(value)) return value;
    this.#lacking.set(key, [this.sheet, this.#row.id, key]);
    return null;
  }

  /** The most that a figure of the row comes to in the cases; `null` when that is unknown. */
  most(key: string): number | null {
    this.#note(key);
    return this.#source.book.most(this.sheet, this.#row.id, key);
  }

  /** How many rows a total lacks. */
  missing(key: string): number {
    this.#note(key);
    const missing = this.#source.book.missing(this.sheet, this.#row.id, key);
    if (missing > 0) this.awaits(this.sheet, this.#row.id, key);
    return missing;
  }

  isPartial(key: string): boolean {
    this.#note(key);
    const isPartial = this.#source.book.isPartial(this.sheet, this.#row.id, key);
    if (isPartial) this.awaits(this.sheet, this.#row.id, key);
    return isPartial;
  }

  /** Why the formula in a cell has no result, if it has none. */
  fault(key: string): TypedFault | undefined {
    this.#note(key);
    return this.#source.book.fault(this.sheet, this.#row.id, key);
  }

  /** How many rows wait for an input of this one. */
  waiting(rows: WaitingRows): number {
    return this.#source.waiting.of(rows, this.#row.id);
  }

  /** What is gathered about this row; `undefined` where nothing is to be told. */
  fact<Fact>(gathering: Gathering<Fact>): Fact | undefined {
    return this.#source.facts.of(gathering, this.#row.id);
  }

  /**
   * What would count in its status if numbers of the row were these, and all else as it is.
   * @param but rules that are left out
   */
  against(numbers: Readonly<Record<string, number>>, but: ReadonlySet<string>): Against[] {
    const { checks, document, book } = this.#source;
    const sight = { sheet: this.sheet, columns: book.columns(this.sheet), book, document };
    return checks[this.sheet].flatMap(({ rule, key, severity, inStatus, needs, only, find }) => {
      if (inStatus !== true || but.has(rule) || (needs !== undefined && this.own(needs) === null)) return [];
      if (only?.of([this.#row.id], sight).length === 0) return [];
      const found = find(new RowReader(this.sheet, this.#check, this.#source, false, numbers).at(this.#row));
      return found === undefined ? [] : [{ key, severity, value: found.value, limit: found.limit }];
    });
  }

  /** Outcome of the row that is no figure. */
  get outcome(): string | undefined {
    for (const { gives } of SCHEMA[this.sheet].solutions ?? []) for (const key of gives) this.#note(key);
    return this.#source.book.outcome(this.sheet, this.#row.id);
  }

  /** Whether a reference, its own or one taken over, names a row. */
  names(reference: string): boolean {
    return this.target(reference) >= 0;
  }

  /** A number of the row that a reference names; `null` when it is unknown. */
  numberOf(reference: string, key: string): number | null {
    const value = this.valueOf(reference, key);
    if (typeof value === 'number') return value;
    const target = this.target(reference);
    this.#lacking.set(reference,
      target < 0 ? [this.sheet, this.#row.id, reference] : [this.#sheetOf(reference), target, key]);
    return null;
  }

  /** Whether numbers of the row that a reference names are known. */
  knows(reference: string, ...keys: readonly string[]): boolean {
    return keys.every((key) => this.numberOf(reference, key) !== null);
  }

  /** What a cell of the row that a reference names is worth; `null` when that is unknown, or no row is named. */
  valueOf(reference: string, key: string): CellValue {
    const target = this.#read(reference, key);
    return target < 0 ? null : this.#source.book.value(this.#sheetOf(reference), target, key);
  }

  /** Whether a cell of the row that a reference names holds something that tells nothing, and is told of there. */
  isUnreadable(reference: string, key: string): boolean {
    const target = this.#read(reference, key);
    if (target < 0) return false;
    const sheet = this.#sheetOf(reference);
    return Number.isNaN(this.#source.book.number(sheet, target, key))
      && (this.#source.document.row(sheet, target)?.cells[key] ?? null) !== null;
  }

  /**
   * The figure behind a reference that is less than the whole, in words: «Inside of the enclosure E1»; `undefined` when
   * it is whole.
   */
  partialBehind({ by, sheet, key }: Argument): string | undefined {
    const target = by === undefined ? -1 : this.#read(by, key);
    if (target < 0 || !this.#source.book.isPartial(sheet, target, key)) return undefined;
    this.awaits(sheet, target, key);
    this.#read(by!, SCHEMA[sheet].tag);
    return this.figure(sheet, target, key);
  }

  /** A figure of any row in words: «Demand of the supply L1». */
  figure(sheet: SheetName, id: number, key: string): string {
    return figureOf(this.#source.document, sheet, id, key, this.words);
  }

  /** Text of the cell that names the row; empty when it has no tag. */
  get tag(): string {
    this.#note(SCHEMA[this.sheet].tag);
    return tagOf(this.sheet, this.#row);
  }

  /** The row as a sentence names it: «Rail L1», or «A supply without a tag», whose place the finding tells. */
  get name(): string {
    const { tag } = this;
    return tag === '' ? this.words.say(UNTAGGED[this.sheet]) : this.words.say(TAGGED[this.sheet], { tag });
  }

  /** The name of a sheet, to which a remedy sends. */
  titleOf(sheet: SheetName): string {
    return this.words.text(SCHEMA[sheet].title);
  }

  #note(key: string): void {
    this.#noted.add(key);
  }

  /** Id of the row that a reference names; -1 when it names none. */
  target(reference: string): number {
    this.#note(reference);
    return this.#source.book.target(this.sheet, this.#row.id, reference);
  }

  /** Notes that a column behind a reference is read. @returns id of the row that it names. */
  #read(reference: string, key: string): number {
    this.#note(this.#source.reads.note(this.sheet, reference, key));
    return this.target(reference);
  }

  #sheetOf(reference: string): SheetName {
    return (columnOf(this.sheet, reference) as InputColumn).to!;
  }
}

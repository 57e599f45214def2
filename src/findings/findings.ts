import type { Touched, Workbook } from '../engine/index.ts';
import {
  isAcceptanceOf, isBlank, SCHEMA, SHEET_NAMES, tagOf, type Row, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import { CHECKS } from './checks/index.ts';
import { SEVERITIES, type Finding, type Severity, type Status } from './finding.ts';
import { hasGrownWorse } from './has-grown-worse.ts';
import { RailPurposes } from './rail-purposes.ts';
import { Reads } from './reads.ts';
import { RowReader, type ReaderSource } from './row-reader.ts';
import { Waiting } from './waiting.ts';

type Kept = Omit<Finding, 'row' | 'tag' | 'accepted' | 'reopened'> & {
  readonly inStatus: boolean;
  /** Place of its check among those of its sheet. */
  readonly check: number;
};

/** Sheets whose rows have a status. */
const WITH_STATUS = new Set(SHEET_NAMES.filter((sheet) =>
  CHECKS[sheet].some(({ inStatus }) => inStatus) && SCHEMA[sheet].columns.some((column) => column.role === 'computed' && column.status)));

/** What was found in a schedule, kept row by row, so that an edit costs only the rows that it concerns. */
export class Findings {
  readonly #document: ScheduleDocument;
  readonly #book: Workbook;
  #kept!: Record<SheetName, Map<number, readonly Kept[]>>;
  #purposes!: RailPurposes;
  readonly #reads = new Reads(CHECKS);
  #source!: ReaderSource;
  #all: readonly Finding[] | undefined;
  #words: Words;

  constructor(document: ScheduleDocument, book: Workbook, words: Words) {
    this.#document = document;
    this.#book = book;
    this.#words = words;
    this.#checkAll();
  }

  /** Says everything in another language from now on. */
  speak(words: Words): void {
    this.#words = words;
    this.#all = undefined;
    this.#checkAll();
  }

  /** Every finding, the worst first, in the order of sheets and rows. */
  get all(): readonly Finding[] {
    return this.#all ??= this.#inOrder();
  }

  /** Number of findings of each severity, without putting them in order. */
  get counts(): Readonly<Record<Severity, number>> {
    const counts = { over: 0, near: 0, incomplete: 0, note: 0 };
    for (const sheet of SHEET_NAMES) {
      for (const kept of this.#kept[sheet].values()) for (const { severity } of kept) counts[severity] += 1;
    }
    return counts;
  }

  /** What was found in one row. */
  of(sheet: SheetName, id: number): readonly Finding[] {
    const row = this.#document.row(sheet, id);
    if (row === undefined) return [];
    return (this.#kept[sheet].get(id) ?? []).map((kept) => this.#finding(kept, row));
  }

  /** The worst that the limits of a row say; `null` for rows that have none or are blank. */
  status(sheet: SheetName, id: number): Status | null {
    const row = this.#document.row(sheet, id);
    if (row === undefined || !WITH_STATUS.has(sheet) || isBlank(row)) return null;
    const found = (this.#kept[sheet].get(id) ?? []).filter(({ inStatus }) => inStatus).map(({ severity }) => severity);
    return SEVERITIES.slice(0, 3).find((severity): severity is 'over' | 'near' | 'incomplete' => found.includes(severity)) ?? 'ok';
  }

  /** The findings that make the status of a row what it is. */
  deciding(sheet: SheetName, id: number): readonly Finding[] {
    const status = this.status(sheet, id);
    const row = this.#document.row(sheet, id);
    if (row === undefined || status === null) return [];
    return (this.#kept[sheet].get(id) ?? []).filter(({ inStatus, severity }) => inStatus && severity === status)
      .map((kept) => this.#finding(kept, row));
  }

  /** Checks again what a change concerned. */
  update(touched: Touched): void {
    this.#all = undefined;
    if (touched.all) {
      this.#checkAll();
      return;
    }
    for (const [sheet, id] of this.#source.waiting.update(touched)) this.#check(sheet, id, null);
    for (const { sheet, id, keys } of touched.cells()) this.#check(sheet, id, keys);
    for (const [sheet, id] of this.#reads.rowsConcerned(touched, this.#book)) this.#check(sheet, id, null);
    if (this.#concernsPurposes(touched)) for (const id of this.#purposes.update()) this.#check('supplies', id, null);
  }

  #concernsPurposes(touched: Touched): boolean {
    return touched.concerns('devices', 'rail') || touched.concerns('devices', 'type')
      || touched.concerns('types', 'purpose') || touched.concerns('supplies', 'purpose');
  }

  #checkAll(): void {
    this.#kept = Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, new Map()])) as never;
    this.#purposes = new RailPurposes(this.#document, this.#book);
    this.#source = {
      document: this.#document, book: this.#book, words: this.#words, reads: this.#reads,
      waiting: new Waiting(this.#document, this.#book),
    };
    for (const sheet of SHEET_NAMES) for (const { id } of this.#document.rows(sheet)) this.#check(sheet, id, null);
  }

  /** Checks a row. @param keys the columns that were touched: only checks that have read one of them are made again; `null` for all. */
  #check(sheet: SheetName, id: number, keys: ReadonlySet<string> | null): void {
    const row = this.#document.row(sheet, id);
    const kept = row === undefined || isBlank(row) ? [] : this.#find(sheet, row, keys);
    if (kept.length === 0) this.#kept[sheet].delete(id);
    else this.#kept[sheet].set(id, kept);
  }

  #find(sheet: SheetName, row: Row, keys: ReadonlySet<string> | null): readonly Kept[] {
    const reader = new RowReader(sheet, row, this.#source);
    const read = this.#reads.own(sheet);
    const before = this.#kept[sheet].get(row.id) ?? NOTHING;
    const kept: Kept[] = [];
    let next = 0;
    CHECKS[sheet].forEach(({ rule, key, severity, inStatus, find }, check) => {
      while (next < before.length && before[next]!.check < check) next += 1;
      if (keys !== null && !meet(keys, read[check]!)) {
        if (before[next]?.check === check) kept.push(before[next]!);
        return;
      }
      const found = find(reader.for(check));
      if (found !== undefined) kept.push({ rule, severity, sheet, id: row.id, key, inStatus: inStatus === true, check, ...found });
    });
    const purposes = sheet === 'supplies' ? this.#purposes.of(row.id) : [];
    if (purposes.length > 1) {
      const message = reader.say('{name} serves {purposes} together. Common practice is a separate supply for each: move the devices of the other purposes.', {
        purposes: listed(purposes.map((purpose) => this.#words.text(purpose)), this.#words),
      });
      kept.push({
        rule: 'supply-purposes-mixed', severity: 'note', sheet, id: row.id, key: 'purpose', inStatus: false, check: CHECKS[sheet].length,
        value: purposes.join(', '), limit: null, message,
      });
    }
    return kept;
  }

  #finding({ inStatus: _inStatus, check: _check, ...kept }: Kept, row: Row): Finding {
    const finding = { ...kept, tag: tagOf(kept.sheet, row), row: this.#document.position(kept.sheet, row.id) + 1 };
    const accepted = this.#document.accepted.find((each) => isAcceptanceOf(each, finding));
    if (accepted === undefined) return finding;
    return hasGrownWorse(finding, accepted) ? { ...finding, reopened: accepted } : { ...finding, accepted };
  }

  #inOrder(): Finding[] {
    const bySeverity: Record<Severity, Finding[]> = { over: [], near: [], incomplete: [], note: [] };
    for (const sheet of SHEET_NAMES) {
      if (this.#kept[sheet].size === 0) continue;
      for (const row of this.#document.rows(sheet)) {
        for (const kept of this.#kept[sheet].get(row.id) ?? []) bySeverity[kept.severity].push(this.#finding(kept, row));
      }
    }
    return SEVERITIES.flatMap((severity) => bySeverity[severity]);
  }
}

const NOTHING: readonly Kept[] = [];

/** Whether a set holds a value of another. */
function meet(few: ReadonlySet<string>, others: ReadonlySet<string>): boolean {
  for (const each of few) if (others.has(each)) return true;
  return false;
}

/** Two names or more, as a sentence lists them. */
function listed(names: readonly string[], words: Words): string {
  return words.say('{names} and {last}', { names: names.slice(0, -1).join(', '), last: names.at(-1)! });
}

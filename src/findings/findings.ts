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

type Kept = Omit<Finding, 'row' | 'tag' | 'accepted' | 'reopened'> & { readonly inStatus: boolean };

/** Sheets whose rows have a status. */
const WITH_STATUS = new Set(SHEET_NAMES.filter((sheet) =>
  CHECKS[sheet].some(({ inStatus }) => inStatus) && SCHEMA[sheet].columns.some((column) => column.role === 'computed' && column.status)));

/** What was found in a schedule, kept row by row, so that an edit costs only the rows that it concerns. */
export class Findings {
  readonly #document: ScheduleDocument;
  readonly #book: Workbook;
  #kept!: Record<SheetName, Map<number, readonly Kept[]>>;
  #purposes!: RailPurposes;
  readonly #reads = new Reads();
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
    const due = Object.fromEntries(SHEET_NAMES.map((sheet) =>
      [sheet, new Set(touched.rows.get(sheet)?.keys())])) as Record<SheetName, Set<number>>;
    if (this.#concernsPurposes(touched)) for (const id of this.#purposes.update()) due.supplies.add(id);
    for (const [sheet, id] of this.#reads.rowsConcerned(touched, this.#book)) due[sheet].add(id);
    for (const sheet of SHEET_NAMES) for (const id of due[sheet]) this.#check(sheet, id);
  }

  #concernsPurposes(touched: Touched): boolean {
    return touched.concerns('devices', 'rail') || touched.concerns('devices', 'type')
      || touched.concerns('types', 'purpose') || touched.concerns('supplies', 'purpose');
  }

  #checkAll(): void {
    this.#kept = Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, new Map()])) as never;
    this.#purposes = new RailPurposes(this.#document, this.#book);
    for (const sheet of SHEET_NAMES) for (const { id } of this.#document.rows(sheet)) this.#check(sheet, id);
  }

  get #source(): ReaderSource {
    return { document: this.#document, book: this.#book, words: this.#words, reads: this.#reads };
  }

  #check(sheet: SheetName, id: number): void {
    const row = this.#document.row(sheet, id);
    const kept = row === undefined || isBlank(row) ? [] : this.#find(sheet, row);
    if (kept.length === 0) this.#kept[sheet].delete(id);
    else this.#kept[sheet].set(id, kept);
  }

  #find(sheet: SheetName, row: Row): Kept[] {
    const reader = new RowReader(sheet, row, this.#source);
    const kept: Kept[] = [];
    for (const { rule, key, severity, inStatus, find } of CHECKS[sheet]) {
      const found = find(reader);
      if (found !== undefined) kept.push({ rule, severity, sheet, id: row.id, key, inStatus: inStatus === true, ...found });
    }
    const purposes = sheet === 'supplies' ? this.#purposes.of(row.id) : [];
    if (purposes.length > 1) {
      const message = reader.say('{name} serves {purposes} together. Common practice is a separate supply for each: move the devices of the other purposes.', {
        purposes: listed(purposes.map((purpose) => this.#words.text(purpose)), this.#words),
      });
      kept.push({
        rule: 'supply-purposes-mixed', severity: 'note', sheet, id: row.id, key: 'purpose', inStatus: false, value: purposes.join(', '), limit: null, message,
      });
    }
    return kept;
  }

  #finding({ inStatus: _inStatus, ...kept }: Kept, row: Row): Finding {
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

/** Two names or more, as a sentence lists them. */
function listed(names: readonly string[], words: Words): string {
  return words.say('{names} and {last}', { names: names.slice(0, -1).join(', '), last: names.at(-1)! });
}

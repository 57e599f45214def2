import type { Touched, Workbook } from '../engine/index.ts';
import {
  isAcceptanceOf, isBlank, SCHEMA, SHEET_NAMES, tagOf, type CellValue, type Row, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import { CHECKS } from './checks/index.ts';
import { SEVERITIES, type Finding, type Severity, type Status } from './finding.ts';
import { hasGrownWorse } from './has-grown-worse.ts';
import { RailPurposes } from './rail-purposes.ts';
import { RowReader } from './row-reader.ts';
import { TagIndex } from './tag-index.ts';

type Kept = Omit<Finding, 'row' | 'tag' | 'accepted' | 'reopened'> & { readonly inStatus: boolean };

/** Sheets whose rows have a status. */
const WITH_STATUS = new Set(SHEET_NAMES.filter((sheet) =>
  CHECKS[sheet].some(({ inStatus }) => inStatus) && SCHEMA[sheet].columns.some((column) => column.role === 'computed' && column.status)));

/** What checks read of the rows that their row refers to: a change there need not change a figure of the row itself. */
const READ_BEHIND: readonly { sheet: SheetName; by: string; to: SheetName; keys: readonly string[] }[] = [
  { sheet: 'devices', by: 'type', to: 'types', keys: ['power'] },
  { sheet: 'devices', by: 'run', to: 'runs', keys: ['rail', 'length'] },
  { sheet: 'runs', by: 'rail', to: 'supplies', keys: ['voltage', 'rated'] },
  { sheet: 'runs', by: 'conductor', to: 'conductors', keys: ['resistance', 'maxCurrent'] },
  { sheet: 'outputs', by: 'contact', to: 'contacts', keys: ['inrush'] },
];

/** What was found in a schedule, kept row by row, so that an edit costs only the rows that it concerns. */
export class Findings {
  readonly #document: ScheduleDocument;
  readonly #book: Workbook;
  #kept!: Record<SheetName, Map<number, readonly Kept[]>>;
  #tags!: TagIndex;
  #purposes!: RailPurposes;
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
    const extra: [SheetName, number][] = [];
    for (const { sheet, id, keys } of touched.cells()) {
      if (keys !== null && !keys.has(SCHEMA[sheet].tag)) continue;
      for (const other of this.#tags.update(sheet, id)) extra.push([sheet, other]);
    }
    if (this.#concernsPurposes(touched)) for (const id of this.#purposes.update()) extra.push(['supplies', id]);
    extra.push(...this.#readingBehind(touched));
    for (const { sheet, id } of touched.cells()) this.#check(sheet, id);
    for (const [sheet, id] of extra) this.#check(sheet, id);
  }

  #concernsPurposes(touched: Touched): boolean {
    return touched.concerns('devices', 'rail') || touched.concerns('devices', 'type')
      || touched.concerns('types', 'purpose') || touched.concerns('supplies', 'purpose');
  }

  /** The rows whose checks read what changed in a row that they refer to. */
  #readingBehind(touched: Touched): [SheetName, number][] {
    const read = READ_BEHIND.filter(({ to, keys }) => keys.some((key) => touched.concerns(to, key)));
    return read.flatMap(({ sheet, by, to }) => {
      const changed = touched.rows.get(to)!;
      return this.#document.rows(sheet).filter(({ id }) => changed.has(this.#book.target(sheet, id, by)))
        .map(({ id }): [SheetName, number] => [sheet, id]);
    });
  }

  #checkAll(): void {
    this.#kept = Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, new Map()])) as never;
    this.#tags = new TagIndex(this.#document);
    this.#purposes = new RailPurposes(this.#document, this.#book);
    for (const sheet of SHEET_NAMES) for (const { id } of this.#document.rows(sheet)) this.#check(sheet, id);
  }

  #check(sheet: SheetName, id: number): void {
    const row = this.#document.row(sheet, id);
    const kept = row === undefined || isBlank(row) ? [] : this.#find(sheet, row);
    if (kept.length === 0) this.#kept[sheet].delete(id);
    else this.#kept[sheet].set(id, kept);
  }

  #find(sheet: SheetName, row: Row): Kept[] {
    const reader = new RowReader(sheet, row, this.#document, this.#book, this.#words);
    const kept: Kept[] = [];
    for (const { rule, key, severity, inStatus, find } of CHECKS[sheet]) {
      const found = find(reader);
      if (found !== undefined) kept.push({ rule, severity, sheet, id: row.id, key, inStatus: inStatus === true, ...found });
    }
    const keep = (rule: string, severity: Severity, key: string, value: CellValue, message: string) =>
      kept.push({ rule, severity, sheet, id: row.id, key, inStatus: false, value, limit: null, message });
    const tag = tagOf(sheet, row);
    if (tag !== '' && this.#tags.isShared(sheet, tag)) {
      keep('tag-used-twice', sheet === 'devices' ? 'note' : 'incomplete', SCHEMA[sheet].tag, tag, reader.say(sheet === 'devices'
        ? '{name} stands in more than one row. Give each row a tag of its own.'
        : '{name} stands in more than one row. References mean the first of them. Give each row a tag of its own.'));
    }
    const purposes = sheet === 'supplies' ? this.#purposes.of(row.id) : [];
    if (purposes.length > 1) {
      keep('supply-purposes-mixed', 'note', 'purpose', purposes.join(', '),
        reader.say('{name} serves {purposes} together. Common practice is a separate supply for each: move the devices of the other purposes.', {
          purposes: listed(purposes.map((purpose) => this.#words.text(purpose)), this.#words),
        }));
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

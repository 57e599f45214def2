import type { Keys, Touched, Workbook } from '../engine/index.ts';
import {
  findColumn, isAcceptanceOf, isBlank, SCHEMA, SHEET_NAMES, tagOf, type Column, type Row, type ScheduleDocument,
  type SheetName,
} from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import { CHECKS } from './checks/index.ts';
import { SEVERITIES, type Finding, type Severity, type Status } from './finding.ts';
import { hasGrownWorse } from './has-grown-worse.ts';
import { RailPurposes } from './rail-purposes.ts';
import { Reads } from './reads.ts';
import { RowReader, type ReaderSource } from './row-reader.ts';
import { StartUps } from './start-up.ts';
import { Waiting } from './waiting.ts';

type Kept = Omit<Finding, 'row' | 'tag' | 'accepted' | 'reopened'> & {
  readonly inStatus: boolean;
  /** Place of its check among those of its sheet. */
  readonly check: number;
};

/** Whether it is told in its own row. */
const isTold = ({ sheet, check }: Kept) => CHECKS[sheet][check]?.elsewhere !== true;

/** What became of the checks of limits of a row. */
export interface ChecksMade {
  readonly made: number;
  /** Keys of the cells that they wait for, or that name the row with the missing input; one for each check. */
  readonly waiting: readonly string[];
  /** Keys of inputs that may be empty, without which a check does not apply. */
  readonly unasked: readonly string[];
}

/** Whether a cell is empty that asks for nothing while it is. */
const isLeftOut = ({ cells }: Row, column: Column | undefined): boolean =>
  column?.role === 'input' && column.optional === true && (cells[column.key] ?? null) === null;

/** Sheets whose rows have a status. */
const WITH_STATUS = new Set(SHEET_NAMES.filter((sheet) =>
  CHECKS[sheet].some(({ inStatus }) =>
    inStatus) && SCHEMA[sheet].columns.some((column) => column.role === 'computed' && column.status)));

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
      for (const kept of this.#kept[sheet].values()) {
        for (const each of kept) if (isTold(each)) counts[each.severity] += 1;
      }
    }
    return counts;
  }

  /** What was found in one row. */
  of(sheet: SheetName, id: number): readonly Finding[] {
    const row = this.#document.row(sheet, id);
    if (row === undefined) return [];
    return (this.#kept[sheet].get(id) ?? []).filter(isTold).map((kept) => this.#finding(kept, row));
  }

  /** The worst that the limits of a row say; `null` for rows that have none or are blank. */
  status(sheet: SheetName, id: number): Status | null {
    const row = this.#document.row(sheet, id);
    if (row === undefined || !WITH_STATUS.has(sheet) || isBlank(row)) return null;
    const found = (this.#kept[sheet].get(id) ?? []).filter(({ inStatus }) => inStatus).map(({ severity }) => severity);
    return SEVERITIES.slice(0, 3).find((severity): severity is 'over' | 'near' | 'incomplete' =>
      found.includes(severity)) ?? 'ok';
  }

  /** The findings that make the status of a row what it is. */
  deciding(sheet: SheetName, id: number): readonly Finding[] {
    const status = this.status(sheet, id);
    const row = this.#document.row(sheet, id);
    if (row === undefined || status === null) return [];
    return (this.#kept[sheet].get(id) ?? []).filter(({ inStatus, severity }) => inStatus && severity === status)
      .map((kept) => this.#finding(kept, row));
  }

  /** Which checks of limits were made in a row, which wait, and which are not asked for. */
  made(sheet: SheetName, id: number): ChecksMade {
    const row = this.#document.row(sheet, id)!;
    const reader = new RowReader(sheet, row, this.#source);
    let made = 0;
    const unasked = new Set<string>();
    CHECKS[sheet].forEach(({ inStatus, severity, needs, find }, place) => {
      if (inStatus !== true || severity === 'incomplete') return;
      find(reader.for(place));
      const empty = [...reader.lacking, ...(needs === undefined ? [] : [needs])]
        .filter((key) => isLeftOut(row, findColumn(sheet, key)));
      for (const key of empty) unasked.add(key);
      if (empty.length === 0 && reader.lacking.size === 0) made += 1;
    });
    const waiting = (this.#kept[sheet].get(id) ?? []).filter((kept) => kept.inStatus && kept.severity === 'incomplete');
    return { made, waiting: waiting.map(({ key }) => key), unasked: [...unasked] };
  }

  /** Checks again what a change concerned. */
  update(touched: Touched): void {
    this.#all = undefined;
    if (touched.all) {
      this.#checkAll();
      return;
    }
    for (const [sheet, id] of this.#source.waiting.update(touched)) this.#check(sheet, id);
    for (const id of this.#source.startUps.update(touched)) this.#check('supplies', id);
    this.#recheck(touched);
    this.#recheck(this.#reads.concerned(touched, this.#book));
    if (this.#concernsPurposes(touched)) for (const id of this.#purposes.update()) this.#check('supplies', id);
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
      waiting: new Waiting(this.#document, this.#book), startUps: new StartUps(this.#document, this.#book),
    };
    for (const sheet of SHEET_NAMES) for (const { id } of this.#document.rows(sheet)) this.#check(sheet, id);
  }

  /** Checks rows again. Of what changed in a row, only the checks that have read it are made. */
  #recheck(touched: Touched): void {
    for (const [sheet, rows] of touched.rows) {
      const due = new Map<Keys, readonly number[]>();
      for (const [id, keys] of rows) {
        const places = keys === null ? undefined : due.get(keys) ?? this.#reads.due(sheet, keys);
        if (keys !== null) due.set(keys, places!);
        this.#check(sheet, id, places);
      }
    }
  }

  /** Checks a row. @param due places of the checks that are made again; all when they are absent. */
  #check(sheet: SheetName, id: number, due?: readonly number[]): void {
    if (due?.length === 0) return;
    const row = this.#document.row(sheet, id);
    const kept = row === undefined || isBlank(row) ? [] : this.#find(sheet, row, due);
    if (kept.length > 0) this.#kept[sheet].set(id, kept);
    else if (this.#kept[sheet].size > 0) this.#kept[sheet].delete(id);
  }

  #find(sheet: SheetName, row: Row, due: readonly number[] = EVERY[sheet]): readonly Kept[] {
    const reader = new RowReader(sheet, row, this.#source);
    const before = due === EVERY[sheet] ? NOTHING : this.#kept[sheet].get(row.id) ?? NOTHING;
    const kept: Kept[] = before === NOTHING
      ? [] : before.filter(({ check }) => check < CHECKS[sheet].length && !due.includes(check));
    for (const check of due) {
      const { rule, key, severity, inStatus, needs, find } = CHECKS[sheet][check]!;
      if (needs !== undefined && (row.cells[needs] ?? null) === null) continue;
      const found = find(reader.for(check));
      if (found !== undefined) {
        kept.push({ rule, severity, sheet, id: row.id, key, inStatus: inStatus === true, check, ...found });
      }
    }
    if (before.length > 0) kept.sort((one, other) => one.check - other.check);
    const purposes = sheet === 'supplies' ? this.#purposes.of(row.id) : [];
    if (purposes.length > 1) {
      const message = reader.say('{name} serves {purposes} together. Common practice is a separate supply for each: move the devices of the other purposes.', {
        purposes: listed(purposes.map((purpose) => this.#words.text(purpose)), this.#words),
      });
      kept.push({
        rule: 'supply-purposes-mixed', severity: 'note', sheet, id: row.id, key: 'purpose', inStatus: false,
        check: CHECKS[sheet].length,
        value: purposes.join(', '), limit: null, message,
      });
    }
    return kept;
  }

  #finding({ inStatus: _inStatus, check: _check, ...kept }: Kept, row: Row): Finding {
    const finding = { ...kept, tag: tagOf(kept.sheet, row), row: this.#document.position(kept.sheet, row.id) + 1 };
    const accepted = row.accepted?.find((each) => isAcceptanceOf(each, finding));
    if (accepted === undefined) return finding;
    return hasGrownWorse(finding, accepted) ? { ...finding, reopened: accepted } : { ...finding, accepted };
  }

  #inOrder(): Finding[] {
    const bySeverity: Record<Severity, Finding[]> = { over: [], near: [], incomplete: [], note: [] };
    for (const sheet of SHEET_NAMES) {
      if (this.#kept[sheet].size === 0) continue;
      for (const row of this.#document.rows(sheet)) {
        for (const kept of this.#kept[sheet].get(row.id) ?? []) {
          if (isTold(kept)) bySeverity[kept.severity].push(this.#finding(kept, row));
        }
      }
    }
    return SEVERITIES.flatMap((severity) => bySeverity[severity]);
  }
}

const NOTHING: readonly Kept[] = [];

/** Places of all checks of each sheet. */
const EVERY = Object.fromEntries(SHEET_NAMES.map((sheet) =>
  [sheet, CHECKS[sheet].map((_, check) => check)])) as unknown as Readonly<Record<SheetName, readonly number[]>>;

/** Two names or more, as a sentence lists them. */
function listed(names: readonly string[], words: Words): string {
  return words.say('{names} and {last}', { names: names.slice(0, -1).join(', '), last: names.at(-1)! });
}

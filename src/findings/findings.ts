import type { CellPlace, Keys, Touched, Workbook } from '../engine/index.ts';
import {
  findColumn, isAcceptanceOf, isBlank, isStatus, SCHEMA, SHEET_NAMES, tagOf, type Change, type Column, type Row,
  type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import type { Words } from '../words/index.ts';
import { CHECKS } from './checks/index.ts';
import { SEVERITIES, type Finding, type Severity, type Standing, type Status, type StatusMove } from './finding.ts';
import { Facts } from './facts.ts';
import { hasGrownWorse } from './has-grown-worse.ts';
import { Reads } from './reads.ts';
import { RowReader, type ReaderSource } from './row-reader.ts';
import { Waiting } from './waiting.ts';

/** What a check found in a row. Its sentence is made when somebody reads it, and empty until then. */
type Kept = Pick<Finding, 'value' | 'limit' | 'waiting'> & { message: string };

/** Something for each sheet. */
const bySheet = <Thing>(make: (sheet: SheetName) => Thing) =>
  Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, make(sheet)])) as Record<SheetName, Thing>;

/** Places of the checks of each sheet that make the status of its rows, the worst first; none where rows have none. */
const DECIDING: Readonly<Record<SheetName, readonly number[]>> = bySheet((sheet) => {
  const hasStatus = SCHEMA[sheet].columns.some(isStatus);
  const places = hasStatus ? [...CHECKS[sheet].keys()].filter((check) => CHECKS[sheet][check]!.inStatus) : [];
  const rank = (check: number) => SEVERITIES.indexOf(CHECKS[sheet][check]!.severity);
  return places.sort((one, other) => rank(one) - rank(other));
});

/** What became of the checks of limits of a row. */
export interface ChecksMade {
  readonly made: number;
  /** What waits: the key of the cell, and where what it lacks is to be looked for if not there. */
  readonly waiting: readonly { readonly key: string; readonly lacks: readonly CellPlace[] }[];
  /** Keys of inputs that may be empty, without which a check does not apply. */
  readonly unasked: readonly string[];
}

/** Whether a cell is empty that asks for nothing while it is. */
const isLeftOut = ({ cells }: Row, column: Column | undefined): boolean =>
  column?.role === 'input' && column.optional === true && (cells[column.key] ?? null) === null;

/** What was found in a schedule, kept for each check by row, so that an edit costs only what it concerns. */
export class Findings {
  readonly #document: ScheduleDocument;
  readonly #book: Workbook;
  #kept!: Record<SheetName, readonly Map<number, Kept>[]>;
  readonly #reads = new Reads(CHECKS);
  #source!: ReaderSource;
  #all: readonly Finding[] | undefined;
  /** Rows that do not stand ok, as they were told last. */
  readonly #standings = bySheet(() => new Map<number, Standing>());
  /** Rows of which something may have changed that counts in their status. */
  readonly #due = bySheet(() => new Set<number>());

  constructor(document: ScheduleDocument, book: Workbook, words: Words) {
    this.#document = document;
    this.#book = book;
    this.#checkAll(words);
  }

  /** Says everything in another language from now on. */
  speak(words: Words): void {
    this.#source = { ...this.#source, words };
    this.#all = undefined;
    for (const sheet of SHEET_NAMES) {
      for (const found of this.#kept[sheet]) for (const kept of found.values()) kept.message = '';
    }
  }

  /** Every finding, the worst first, in the order of sheets and rows. */
  get all(): readonly Finding[] {
    return this.#all ??= this.#inOrder();
  }

  /** Number of findings of each severity, without putting them in order. */
  get counts(): Readonly<Record<Severity, number>> {
    const counts = { over: 0, near: 0, incomplete: 0, note: 0 };
    for (const sheet of SHEET_NAMES) {
      this.#kept[sheet].forEach(({ size }, check) => {
        if (isTold(sheet, check)) counts[CHECKS[sheet][check]!.severity] += size;
      });
    }
    return counts;
  }

  /** What was found in one row. */
  of(sheet: SheetName, id: number): readonly Finding[] {
    return this.#foundBy([...CHECKS[sheet].keys()].filter((check) => isTold(sheet, check)), sheet, id);
  }

  /** How a row stands; `null` for rows that have no limits or are blank. */
  standing(sheet: SheetName, id: number): Standing | null {
    const status = this.status(sheet, id);
    const row = this.#document.row(sheet, id);
    return status !== null && row?.accepted !== undefined && this.#isAccepted(sheet, row) ? 'accepted' : status;
  }

  /** The worst that the limits of a row say, whoever accepts it; `null` for rows that have none or are blank. */
  status(sheet: SheetName, id: number): Status | null {
    const row = this.#document.row(sheet, id);
    if (row === undefined || DECIDING[sheet].length === 0 || isBlank(row)) return null;
    const worst = DECIDING[sheet].find((check) => this.#kept[sheet][check]!.has(id));
    return worst === undefined ? 'ok' : CHECKS[sheet][worst]!.severity as Status;
  }

  /** The rules that count against the status of a row, those among them that are told elsewhere. */
  rules(sheet: SheetName, id: number): readonly string[] {
    return DECIDING[sheet].filter((check) => this.#kept[sheet][check]!.has(id))
      .map((check) => CHECKS[sheet][check]!.rule);
  }

  /** The findings that make the status of a row what it is. */
  deciding(sheet: SheetName, id: number): readonly Finding[] {
    const status = this.status(sheet, id);
    const places = DECIDING[sheet].filter((check) => CHECKS[sheet][check]!.severity === status);
    return this.#foundBy(places, sheet, id);
  }

  /** Which checks of limits were made in a row, which wait, and which are not asked for. */
  made(sheet: SheetName, id: number): ChecksMade {
    const row = this.#document.row(sheet, id)!;
    let made = 0;
    const unasked = new Set<string>();
    CHECKS[sheet].forEach(({ inStatus, severity, needs, find }, place) => {
      if (inStatus !== true || severity === 'incomplete') return;
      const reader = new RowReader(sheet, place, this.#source, false);
      find(reader.at(row));
      const empty = [...reader.lacking.keys(), ...(needs === undefined ? [] : [needs])]
        .filter((key) => isLeftOut(row, findColumn(sheet, key)));
      for (const key of empty) unasked.add(key);
      if (empty.length === 0 && reader.lacking.size === 0) made += 1;
    });
    const waiting = CHECKS[sheet].flatMap(({ inStatus, severity, key, find, elsewhere }, place) => {
      if (inStatus !== true || severity !== 'incomplete' || !this.#kept[sheet][place]!.has(id)) return [];
      const reader = new RowReader(sheet, place, this.#source, false);
      find(reader.at(row));
      return [{ key, lacks: elsewhere === true ? [...reader.awaited, [sheet, id, key] as const] : [] }];
    });
    return { made, waiting, unasked: [...unasked] };
  }

  /**
   * Checks again what changes concerned.
   * @returns the rows that stand otherwise since; `undefined` where everything was replaced.
   */
  update(touched: Touched, changes: readonly Change[]): readonly StatusMove[] | undefined {
    this.#all = undefined;
    if (touched.all) {
      this.#checkAll(this.#source.words);
      return undefined;
    }
    for (const change of changes) if (change.op === 'accept') this.#due[change.sheet].add(change.id);
    for (const [sheet, id] of this.#source.waiting.update(touched)) this.#checkEvery(sheet, [id]);
    for (const [sheet, ids] of this.#source.facts.update(touched)) this.#checkEvery(sheet, ids);
    this.#recheck(touched);
    this.#recheck(this.#reads.concerned(touched, this.#book));
    return this.#settle();
  }

  /** Whether all that counts against a row is accepted; what is told at another row is accepted there alone. */
  #isAccepted(sheet: SheetName, row: Row): boolean {
    const against = DECIDING[sheet].filter((check) => this.#kept[sheet][check]!.has(row.id));
    return against.length > 0 && against.every((check) => isTold(sheet, check))
      && this.#foundBy(against, sheet, row.id).every(({ accepted }) => accepted !== undefined);
  }

  /** Tells how the rows that are due stand, and gives those that stand otherwise than before. */
  #settle(): StatusMove[] {
    const moves: StatusMove[] = [];
    for (const sheet of SHEET_NAMES) {
      const told = this.#standings[sheet];
      for (const id of this.#due[sheet]) {
        const [from, to] = [told.get(id) ?? 'ok', this.standing(sheet, id)];
        if (to === 'ok' || to === null) told.delete(id);
        else told.set(id, to);
        if (from !== to) moves.push({ sheet, id, from, to });
      }
      this.#due[sheet].clear();
    }
    return moves;
  }

  #checkAll(words: Words): void {
    const [document, book] = [this.#document, this.#book];
    this.#kept = bySheet((sheet) => CHECKS[sheet].map(() => new Map<number, Kept>()));
    this.#source = {
      document, book, words, reads: this.#reads, waiting: new Waiting(document, book),
      facts: new Facts(document, book), checks: CHECKS,
    };
    for (const sheet of SHEET_NAMES) this.#standings[sheet].clear();
    for (const sheet of SHEET_NAMES) this.#checkEvery(sheet, document.rows(sheet).map(({ id }) => id));
    this.#settle();
  }

  /** Checks rows again. Of what changed in a row, only the checks that have read it are made. */
  #recheck(touched: Touched): void {
    for (const [sheet, rows] of touched.rows) {
      const alike = new Map<Keys | null, number[]>();
      let [before, ids] = [undefined as Keys | null | undefined, [] as number[]];
      for (const [id, keys] of rows) {
        if (keys !== before) {
          before = keys;
          ids = alike.get(keys) ?? [];
          alike.set(keys, ids);
        }
        ids.push(id);
      }
      for (const [keys, ids] of alike) {
        if (keys === null) this.#checkEvery(sheet, ids);
        else for (const check of this.#reads.due(sheet, keys)) this.#check(sheet, check, ids);
      }
    }
  }

  #checkEvery(sheet: SheetName, ids: readonly number[]): void {
    if (ids.length === 0) return;
    for (const check of CHECKS[sheet].keys()) this.#check(sheet, check, ids);
  }

  /** Makes one check in some rows, all of them at once, so that rows without a finding cost next to nothing. */
  #check(sheet: SheetName, check: number, ids: readonly number[]): void {
    const { needs, only, find, inStatus } = CHECKS[sheet][check]!;
    const found = this.#kept[sheet][check]!;
    const counts = inStatus === true && DECIDING[sheet].length > 0;
    if (found.size > 0) for (const id of ids) if (found.delete(id) && counts) this.#due[sheet].add(id);
    const [book, document] = [this.#book, this.#document];
    const some = only?.of(ids, { sheet, columns: book.columns(sheet), book, document }) ?? ids;
    if (some.length === 0) return;
    const reader = new RowReader(sheet, check, this.#source, false);
    const rows = document.byId(sheet);
    for (const id of some) {
      const row = rows[id];
      if (row === undefined || (needs === undefined ? isBlank(row) : (row.cells[needs] ?? null) === null)) continue;
      const result = find(reader.at(row));
      if (result === undefined) continue;
      found.set(id, { ...result, message: '' });
      if (counts) this.#due[sheet].add(id);
    }
  }

  #foundBy(checks: readonly number[], sheet: SheetName, id: number): Finding[] {
    const row = this.#document.row(sheet, id);
    return checks.flatMap((check) => {
      const kept = row === undefined ? undefined : this.#kept[sheet][check]!.get(id);
      return kept === undefined ? [] : [this.#finding(sheet, check, kept, row!)];
    });
  }

  #finding(sheet: SheetName, check: number, kept: Kept, row: Row): Finding {
    const { rule, severity, key, find } = CHECKS[sheet][check]!;
    if (kept.message === '') {
      kept.message = find(new RowReader(sheet, check, this.#source, true).at(row))!.message;
    }
    const finding = {
      rule, severity, sheet, id: row.id, key, ...kept, tag: tagOf(sheet, row),
      row: this.#document.position(sheet, row.id) + 1,
    };
    const accepted = row.accepted?.find((each) => isAcceptanceOf(each, finding));
    if (accepted === undefined) return finding;
    return hasGrownWorse(finding, accepted) ? { ...finding, reopened: accepted } : { ...finding, accepted };
  }

  #inOrder(): Finding[] {
    const bySeverity: Record<Severity, Finding[]> = { over: [], near: [], incomplete: [], note: [] };
    for (const sheet of SHEET_NAMES) {
      const byRow = new Map<number, [check: number, kept: Kept][]>();
      this.#kept[sheet].forEach((found, check) => {
        if (!isTold(sheet, check)) return;
        for (const [id, kept] of found) {
          const before = byRow.get(id);
          if (before === undefined) byRow.set(id, [[check, kept]]);
          else before.push([check, kept]);
        }
      });
      if (byRow.size === 0) continue;
      for (const row of this.#document.rows(sheet)) {
        for (const [check, kept] of byRow.get(row.id) ?? []) {
          bySeverity[CHECKS[sheet][check]!.severity].push(this.#finding(sheet, check, kept, row));
        }
      }
    }
    return SEVERITIES.flatMap((severity) => bySeverity[severity]);
  }
}

/** Whether what a check finds is told in its own row. */
function isTold(sheet: SheetName, check: number): boolean {
  return CHECKS[sheet][check]!.elsewhere !== true;
}

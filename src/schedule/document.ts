import type { Change } from './change.ts';
import { SCHEMA, SHEET_NAMES, type CellValue, type SheetName } from './schema/index.ts';
import type { Acceptance, Details, OfficeLists, Revision, Row, Snapshot, Variant } from './snapshot.ts';
import type { View } from './view.ts';

const EMPTY: Snapshot = {
  details: {}, unattached: [], revisions: [], unknown: {},
  sheets: Object.fromEntries(SHEET_NAMES.map((name) => [name, []])) as never,
};

/**
 * The schedule that a person edits: rows of input cells by sheet, in order. It holds no computed figure and changes
 * only by `perform`, which answers with the changes that take it back.
 */
export class ScheduleDocument {
  details: Details = {};
  /** Acceptances of a file that are meant for rows that were not in it. */
  unattached: readonly Acceptance[] = [];
  revisions: readonly Revision[] = [];
  unknown: Readonly<Record<string, unknown>> = {};
  /** How it is looked at; to look at it in another way is no change, and nothing to undo. */
  view: View | undefined;
  lists: OfficeLists | undefined;
  variants: readonly Variant[] = [];
  readonly #order = {} as Record<SheetName, Row[]>;
  readonly #byId = {} as Record<SheetName, (Row | undefined)[]>;
  readonly #free = {} as Record<SheetName, number[]>;
  readonly #positions = new Map<SheetName, Int32Array>();
  readonly #maybeFormulas = {} as Record<SheetName, Set<number>>;

  constructor(snapshot: Snapshot = EMPTY) {
    this.#load(snapshot);
  }

  /** The rows of a sheet in order; not to be changed by the caller. */
  rows(sheet: SheetName): readonly Row[] {
    return this.#order[sheet];
  }

  /** The row with this id, if it is in the document. */
  row(sheet: SheetName, id: number): Row | undefined {
    return this.#byId[sheet][id];
  }

  /** The rows of a sheet by id, with gaps where none is; not to be changed, nor kept over a change. */
  byId(sheet: SheetName): readonly (Row | undefined)[] {
    return this.#byId[sheet];
  }

  /** Ids of the rows of a sheet that hold a formula in some cell, and perhaps a few others: those that held one. */
  rowsWithFormulas(sheet: SheetName): ReadonlySet<number> {
    return this.#maybeFormulas[sheet];
  }

  /** Place of a row in its sheet, from 0; -1 when it is not in the document. */
  position(sheet: SheetName, id: number): number {
    let positions = this.#positions.get(sheet);
    if (positions === undefined) {
      positions = new Int32Array(this.#byId[sheet].length).fill(-1);
      this.#order[sheet].forEach((row, index) => { positions![row.id] = index; });
      this.#positions.set(sheet, positions);
    }
    return positions[id] ?? -1;
  }

  /** One more than the largest id in use: the size of an array that is indexed by id. */
  capacity(sheet: SheetName): number {
    return this.#byId[sheet].length;
  }

  /** A copy of everything, with ids. */
  snapshot(): Snapshot {
    const sheets = {} as Record<SheetName, Row[]>;
    for (const name of SHEET_NAMES) sheets[name] = this.#order[name].map(copyOf);
    const { details, unattached, revisions, unknown, view, lists, variants } = this;
    return { details, sheets, unattached, revisions, unknown, view, lists, variants };
  }

  /** Ids that the next `count` inserted rows of a sheet will have. */
  freeIds(sheet: SheetName, count: number): number[] {
    const free = this.#free[sheet];
    const reused = free.slice(Math.max(0, free.length - count)).reverse();
    const start = this.#byId[sheet].length;
    return [...reused, ...Array.from({ length: count - reused.length }, (_, index) => start + index)];
  }

  /**
   * Carries out changes in order.
   * @returns the changes that undo them, in the order in which to carry them out.
   * @throws RangeError when a change names a row that is not there: a fault of the caller. Nothing is changed then.
   */
  perform(changes: readonly Change[]): Change[] {
    const inverse: Change[] = [];
    try {
      for (const change of changes) inverse.push(this.#one(change));
    } catch (error) {
      for (const change of inverse.reverse()) this.#one(change);
      throw error;
    }
    return inverse.reverse();
  }

  #one(change: Change): Change {
    switch (change.op) {
      case 'set': return this.#set(change);
      case 'insert': return this.#insert(change);
      case 'remove': return this.#remove(change);
      case 'move': return this.#move(change);
      case 'details': {
        const before = this.details;
        this.details = change.details;
        return { op: 'details', details: before };
      }
      case 'accept': return this.#accept(change);
      case 'revisions': {
        const before = this.revisions;
        this.revisions = change.revisions;
        return { op: 'revisions', revisions: before };
      }
      case 'lists': {
        const before = this.lists;
        this.lists = change.lists;
        return { op: 'lists', lists: before };
      }
      case 'variants': return this.#exchangeVariants(change);
      case 'load': {
        const before = this.snapshot();
        this.#load(change.snapshot);
        return { op: 'load', snapshot: before };
      }
    }
  }

  #set(change: Extract<Change, { op: 'set' }>): Change {
    const { op, sheet, id, key, value } = change;
    const { cells } = this.#existing(change);
    const before = cells[key] ?? null;
    if (isFormulaText(value)) this.#maybeFormulas[sheet].add(id);
    if (value === null) delete cells[key];
    else cells[key] = value;
    return { op, sheet, id, key, value: before };
  }

  #accept(change: Extract<Change, { op: 'accept' }>): Change {
    const row = this.#existing(change);
    const before = row.accepted ?? [];
    if (change.accepted.length === 0) delete row.accepted;
    else row.accepted = change.accepted;
    return { ...change, accepted: before };
  }

  #exchangeVariants({ op, at, count, variants }: Extract<Change, { op: 'variants' }>): Change {
    const before = this.variants;
    if (at < 0 || at + count > before.length) throw new RangeError(`There are no ${count} variants from ${at}.`);
    this.variants = [...before.slice(0, at), ...variants, ...before.slice(at + count)];
    return { op, at, count: variants.length, variants: before.slice(at, at + count) };
  }

  #existing({ sheet, id }: { readonly sheet: SheetName; readonly id: number }): Row {
    const row = this.#byId[sheet][id];
    if (row === undefined) throw new RangeError(`The sheet ${sheet} has no row with id ${id}.`);
    return row;
  }

  #insert(change: Extract<Change, { op: 'insert' }>): Change {
    const { sheet, at, rows } = change;
    const byId = this.#byId[sheet];
    const taken = new Set(rows.map((row) => row.id));
    for (const row of rows) {
      const { id } = row;
      if (byId[id] !== undefined) throw new RangeError(`The sheet ${sheet} has a row with id ${id} already.`);
      while (byId.length < id) {
        if (!taken.has(byId.length)) this.#free[sheet].push(byId.length);
        byId.push(undefined);
      }
      byId[id] = copyOf(row);
      if (holdsFormula(row)) this.#maybeFormulas[sheet].add(id);
    }
    this.#free[sheet] = this.#free[sheet].filter((id) => !taken.has(id));
    const order = this.#order[sheet];
    this.#order[sheet] = [...order.slice(0, at), ...rows.map((row) => byId[row.id]!), ...order.slice(at)];
    this.#positions.delete(sheet);
    return { op: 'remove', sheet, at, count: rows.length };
  }

  #remove(change: Extract<Change, { op: 'remove' }>): Change {
    const { sheet, at, count } = change;
    if (at < 0 || at + count > this.#order[sheet].length) {
      throw new RangeError(`The sheet ${sheet} has no ${count} rows from ${at}.`);
    }
    const removed = this.#order[sheet].splice(at, count);
    for (const row of removed) {
      this.#byId[sheet][row.id] = undefined;
      this.#maybeFormulas[sheet].delete(row.id);
      this.#free[sheet].push(row.id);
    }
    this.#positions.delete(sheet);
    return { op: 'insert', sheet, at, rows: removed };
  }

  #move(change: Extract<Change, { op: 'move' }>): Change {
    const { sheet, from, count, to } = change;
    const order = this.#order[sheet];
    if (from < 0 || from + count > order.length || to < 0 || to + count > order.length) {
      throw new RangeError(`The sheet ${sheet} cannot move ${count} rows from ${from} to ${to}.`);
    }
    order.splice(to, 0, ...order.splice(from, count));
    this.#positions.delete(sheet);
    return { op: 'move', sheet, from: to, count, to: from };
  }

  #load(snapshot: Snapshot): void {
    this.details = snapshot.details;
    this.unattached = snapshot.unattached;
    this.revisions = snapshot.revisions;
    this.unknown = snapshot.unknown;
    this.view = snapshot.view;
    this.lists = snapshot.lists;
    this.variants = snapshot.variants ?? [];
    for (const name of SHEET_NAMES) {
      const rows = snapshot.sheets[name].map(copyOf);
      const byId: (Row | undefined)[] =
        Array.from({ length: rows.reduce((most, row) => Math.max(most, row.id + 1), 0) });
      for (const row of rows) byId[row.id] = row;
      this.#order[name] = rows;
      this.#byId[name] = byId;
      this.#maybeFormulas[name] =
        new Set(rows.filter(holdsFormula).map(({ id }) => id));
      this.#free[name] = [...byId.keys()].filter((id) => byId[id] === undefined).reverse();
    }
    this.#positions.clear();
  }
}

function copyOf(row: Row): Row {
  return { ...row, cells: { ...row.cells } };
}

/** Whether a value is a text that is a formula, where it stands in a column of numbers. */
function isFormulaText(value: CellValue): boolean {
  return typeof value === 'string' && value.startsWith('=');
}

function holdsFormula({ cells }: Row): boolean {
  for (const key in cells) if (isFormulaText(cells[key]!)) return true;
  return false;
}

/** Text of the cell that names a row; empty when it has no tag. */
export function tagOf(sheet: SheetName, row: Row): string {
  const tag = row.cells[SCHEMA[sheet].tag];
  return typeof tag === 'string' ? tag : '';
}

/** Keys of the cells by which rows of a sheet are told apart: its tag alone, for most. */
export function namingKeys(sheet: SheetName): readonly string[] {
  return SCHEMA[sheet].named ?? [SCHEMA[sheet].tag];
}

/** What tells a row from the others of its sheet, as persons read it: its tag, or «evening, blinds». */
export function nameOf(sheet: SheetName, row: Pick<Row, 'cells'>): string {
  return namingKeys(sheet).map((key) => row.cells[key]).filter((text) => typeof text === 'string').join(', ');
}

/** What tells a row from the others of its sheet, for programs; `undefined` where some of it is missing. */
export function identityOf(sheet: SheetName, row: Pick<Row, 'cells'>): string | undefined {
  const texts = namingKeys(sheet).map((key) => row.cells[key]);
  if (texts.some((text) => typeof text !== 'string' || text === '')) return undefined;
  return texts.length === 1 ? texts[0] as string : JSON.stringify(texts);
}

/** Whether nothing has been entered in a row. */
export function isBlank(row: Row): boolean {
  for (const key in row.cells) if (row.cells[key] !== null) return false;
  return true;
}

import type { Touched, Workbook } from '../engine/index.ts';
import type { CellValue, ScheduleDocument, SheetName } from '../schedule/index.ts';
import { Gathered } from './gathered.ts';

/** Rows that wait for an input of a row that they name, where another of their cells is filled in. */
export interface WaitingRows {
  /** The sheet that holds the input. */
  readonly sheet: SheetName;
  readonly from: SheetName;
  /** The reference of `from` that names the row with the input. */
  readonly by: string;
  /** The cell of `from` without which the input means nothing to a row. */
  readonly filled: string;
  /** What that cell holds, where only some of its values need the input. */
  readonly holds?: readonly CellValue[];
  /** A cell that, filled in, makes it mean nothing to a row. */
  readonly unless?: string;
  /** What a cell of the row that `filled` names has to hold besides; anything where nothing is said. */
  readonly where?: { readonly sheet: SheetName; readonly key: string; readonly is?: CellValue };
}

/** Device rows that count nodes on a branch, as many as their type says. */
export const ON_A_BRANCH: WaitingRows = { sheet: 'types', from: 'devices', by: 'type', filled: 'branch' };

/** Runs that are made of a conductor. */
export const MADE_OF_IT: WaitingRows = { sheet: 'conductors', from: 'runs', by: 'conductor', filled: 'conductor' };

/** Runs that hang on a supply, by their own entry or through their way. */
export const FED_BY_IT: WaitingRows = { sheet: 'supplies', from: 'runs', by: 'rail', filled: 'run' };

/** Runs on a supply that have no way. */
export const WITHOUT_WAY: WaitingRows = { ...FED_BY_IT, unless: 'way' };

/** Ways behind a supply. */
export const BEHIND_IT: WaitingRows = { sheet: 'supplies', from: 'ways', by: 'rail', filled: 'way' };

/** Those of them that are electronic channels. */
export const ELECTRONIC_BEHIND_IT: WaitingRows = { ...BEHIND_IT, filled: 'kind', holds: ['electronic'] };

/** Device rows that draw what their type says. */
export const DRAWING_AS_IT: WaitingRows = {
  sheet: 'types', from: 'devices', by: 'type', filled: 'type', unless: 'unitDraw',
};

/** Device rows on a supply that tries again and again on overload. */
export const ON_A_RETRYING_RAIL: WaitingRows = {
  sheet: 'types', from: 'devices', by: 'type', filled: 'rail',
  where: { sheet: 'supplies', key: 'overload', is: 'retries' },
};

/** Device rows on a branch of which it is known what the supply of its bus gives. */
export const ON_A_SUPPLIED_BRANCH: WaitingRows = { ...ON_A_BRANCH, where: { sheet: 'branches', key: 'busCurrent' } };

/** Outputs that switch a kind of load, and wait for the rating of their contact for it. */
export const switching = (...holds: string[]): WaitingRows =>
  ({ sheet: 'contacts', from: 'outputs', by: 'contact', filled: 'kind', holds });

/** Outputs whose contact is to say up to which direct voltage it switches. */
export const ON_DIRECT_CURRENT = switching('dc', 'dcCoil');

/** Outputs whose contact is to say which inrush it may make. */
export const WITH_INRUSH: WaitingRows = { sheet: 'contacts', from: 'outputs', by: 'contact', filled: 'inrush' };

/** Columns on which it hangs whether rows wait. */
function readBy({ from, by, filled, unless, where }: WaitingRows): [SheetName, string][] {
  const own = [by, filled, ...unless === undefined ? [] : [unless]].map((key): [SheetName, string] => [from, key]);
  return where === undefined ? own : [...own, [where.sheet, where.key]];
}

/** How many rows wait for the inputs of each row. They are counted in one pass, and only when a check asks. */
export class Waiting {
  readonly #document: ScheduleDocument;
  readonly #book: Workbook;
  readonly #counts = new Map<WaitingRows, Gathered<number>>();

  constructor(document: ScheduleDocument, book: Workbook) {
    this.#document = document;
    this.#book = book;
  }

  /** How many rows wait for an input of a row. */
  of(rows: WaitingRows, id: number): number {
    let counts = this.#counts.get(rows);
    if (counts === undefined) {
      this.#counts.set(rows, counts = new Gathered(readBy(rows), () => new Map(this.#count(rows).entries())));
    }
    return counts.of(id) ?? 0;
  }

  /** Counts again what a change concerns. @returns the rows for whose inputs other numbers wait than before. */
  update(touched: Touched): [SheetName, number][] {
    return [...this.#counts].flatMap(([{ sheet }, counts]) =>
      counts.update(touched).map((id): [SheetName, number] => [sheet, id]));
  }

  #count({ sheet, from, by, filled, holds, unless, where }: WaitingRows): Int32Array {
    const counts = new Int32Array(this.#document.capacity(sheet));
    const targets = this.#book.targets(from, by);
    // What another sheet has to hold may be true of a row that takes its reference over from elsewhere.
    const named = where === undefined ? undefined : this.#book.targets(from, filled);
    const isMeant = where === undefined ? undefined
      : new Set(this.#document.rows(where.sheet).filter(({ cells: { [where.key]: cell = null } }) =>
        where.is === undefined ? cell !== null : cell === where.is).map(({ id }) => id));
    if (isMeant?.size === 0) return counts;
    for (const { id, cells } of this.#document.rows(from)) {
      const cell = cells[filled] ?? null;
      const isHeld = holds === undefined ? cell !== null : holds.includes(cell);
      const waits = named === undefined ? isHeld : isMeant!.has(named[id]!);
      const isFreed = unless !== undefined && (cells[unless] ?? null) !== null;
      if (targets[id]! >= 0 && waits && !isFreed) counts[targets[id]!]! += 1;
    }
    return counts;
  }
}

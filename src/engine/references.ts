import {
  inputColumns, SHEET_NAMES, type CellValue, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import { rowsReading } from './rows-reading.ts';
import { argument, type Argument } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';
import type { TagIndex } from './tag-index.ts';
import type { Touched } from './touched.ts';

interface ReferenceColumn {
  readonly sheet: SheetName;
  readonly key: string;
  readonly to: SheetName;
  /** The reference that an empty cell takes over from the row that another one names. */
  readonly from?: Argument & { readonly by: string };
}

const UNORDERED: readonly ReferenceColumn[] = SHEET_NAMES.flatMap((sheet) =>
  inputColumns(sheet).flatMap(({ key, to, derived }): ReferenceColumn[] => {
    if (to === undefined) return [];
    const from = derived === undefined ? undefined : argument(sheet, derived.of[0]!);
    return [from?.by === undefined ? { sheet, key, to } : { sheet, key, to, from: { ...from, by: from.by } }];
  }));

/** How many references stand behind one that it takes over: a device row takes its run’s rail, a run its way’s. */
function takenThrough({ from }: ReferenceColumn): number {
  if (from === undefined) return 0;
  return 1 + takenThrough(UNORDERED.find(({ sheet, key }) => sheet === from.sheet && key === from.key)!);
}

/** Those that take others over come after them. */
const REFERENCES = [...UNORDERED].sort((one, other) => takenThrough(one) - takenThrough(other));

/** Sheets whose rows are named by references. */
export const REFERRED_SHEETS: ReadonlySet<SheetName> = new Set(REFERENCES.map(({ to }) => to));

/** A reference that means another row than before, or may. */
export interface Retargeted {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
}

/** Resolves the tags in reference columns to rows. Of rows that share a tag, the first one is meant. */
export class References {
  readonly #document: ScheduleDocument;
  readonly #columns: Readonly<Record<SheetName, SheetColumns>>;
  readonly #tags: TagIndex;

  constructor(
    document: ScheduleDocument, columns: Readonly<Record<SheetName, SheetColumns>>, tags: TagIndex,
  ) {
    this.#document = document;
    this.#columns = columns;
    this.#tags = tags;
    for (const reference of REFERENCES) {
      const resolve = this.#resolver(reference);
      for (const { id } of document.rows(reference.sheet)) resolve(id);
    }
  }

  /** The tag in a reference cell: its own, or the one that it takes over. */
  text(sheet: SheetName, id: number, key: string): CellValue {
    const own = this.#document.row(sheet, id)?.cells[key] ?? null;
    const from = own === null ? REFERENCES.find((each) => each.sheet === sheet && each.key === key)?.from : undefined;
    if (from === undefined) return own;
    const target = this.#columns[sheet].target(from.by, id);
    return target < 0 ? null : this.text(from.sheet, target, from.key);
  }

  /** Resolves the references to a sheet whose tags or order changed. @returns those that mean another row now. */
  resolveTo(sheet: SheetName): Retargeted[] {
    return REFERENCES.filter(({ to }) => to === sheet).flatMap((reference) => {
      const resolve = this.#resolver(reference);
      return this.#document.rows(reference.sheet).filter(({ id }) => resolve(id))
        .map(({ id }) => ({ sheet: reference.sheet, id, key: reference.key }));
    });
  }

  /** The references that name one of some rows of a sheet. */
  naming(sheet: SheetName, ids: ReadonlySet<number>): Retargeted[] {
    return REFERENCES.filter(({ to }) => to === sheet).flatMap((reference) => this.#document.rows(reference.sheet)
      .filter(({ id }) => ids.has(this.#columns[reference.sheet].target(reference.key, id)))
      .map(({ id }) => ({ sheet: reference.sheet, id, key: reference.key })));
  }

  /** Resolves the references of one row. @returns those that mean another row now. */
  resolveRow(sheet: SheetName, id: number): Retargeted[] {
    return REFERENCES.filter((reference) => reference.sheet === sheet && this.#resolver(reference)(id))
      .map(({ key }) => ({ sheet, id, key }));
  }

  /** Resolves again what is taken over from rows whose reference was touched, and touches the cells that do so. */
  takeOver(touched: Touched): void {
    for (const reference of REFERENCES) {
      const { sheet, key, from } = reference;
      if (from === undefined) continue;
      const resolve = this.#resolver(reference);
      for (const id of rowsReading(sheet, [from], touched, this.#document, this.#columns)) {
        if ((this.#document.row(sheet, id)?.cells[key] ?? null) !== null) continue;
        resolve(id);
        touched.cell(sheet, id, key);
      }
    }
  }

  /** What resolves a reference of a row; it answers whether it means another row now. */
  #resolver({ sheet, key, to, from }: ReferenceColumn): (id: number) => boolean {
    const targets = this.#columns[sheet].targets.get(key)!;
    const tags = this.#tags;
    const through = from === undefined ? undefined : this.#columns[sheet].targets.get(from.by)!;
    const takenOver = from === undefined ? undefined : this.#columns[from.sheet].targets.get(from.key)!;
    const rows = this.#document.byId(sheet);
    return (id) => {
      const row = rows[id];
      const text = row?.cells[key] ?? null;
      const other = row === undefined ? -1 : through?.[id] ?? -1;
      const target = typeof text === 'string' ? tags.first(to, text) : other < 0 ? -1 : takenOver![other]!;
      if (targets[id] === target) return false;
      targets[id] = target;
      return true;
    };
  }
}

import { inputColumns, SCHEMA, SHEET_NAMES, type Row, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import type { SheetColumns } from './sheet-columns.ts';

interface ReferenceColumn {
  readonly sheet: SheetName;
  readonly key: string;
  readonly to: SheetName;
}

const REFERENCES: readonly ReferenceColumn[] = SHEET_NAMES.flatMap((sheet) =>
  inputColumns(sheet).flatMap(({ key, to }) => to === undefined ? [] : [{ sheet, key, to }]));

/** Sheets whose rows are named by references. */
export const REFERRED_SHEETS: ReadonlySet<SheetName> = new Set(REFERENCES.map(({ to }) => to));

/** A reference that names another row than before. */
export interface Retargeted {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
}

/** Resolves the tags in reference columns to rows. Of rows that share a tag, the first one is meant. */
export class References {
  readonly #document: ScheduleDocument;
  readonly #columns: Readonly<Record<SheetName, SheetColumns>>;
  readonly #rowByTag = new Map<SheetName, Map<string, number>>();

  constructor(document: ScheduleDocument, columns: Readonly<Record<SheetName, SheetColumns>>) {
    this.#document = document;
    this.#columns = columns;
    for (const sheet of REFERRED_SHEETS) this.#index(sheet);
    for (const reference of REFERENCES) this.#resolveColumn(reference);
  }

  /** Id of the row of a sheet with this tag; -1 when there is none. */
  find(sheet: SheetName, tag: string): number {
    return this.#rowByTag.get(sheet)?.get(tag) ?? -1;
  }

  /** Reads the tags of a sheet again. @returns the references that mean another row now. */
  reindex(sheet: SheetName): Retargeted[] {
    this.#index(sheet);
    return REFERENCES.filter(({ to }) => to === sheet).flatMap((reference) => this.#resolveColumn(reference));
  }

  /** Resolves the references of one row. @returns those that mean another row now. */
  resolveRow(sheet: SheetName, id: number): Retargeted[] {
    return REFERENCES.filter((reference) => reference.sheet === sheet)
      .flatMap((reference) => this.#resolve(reference, id, this.#document.row(sheet, id)));
  }

  #index(sheet: SheetName): void {
    const { tag } = SCHEMA[sheet];
    const byTag = new Map<string, number>();
    for (const { id, cells } of this.#document.rows(sheet)) {
      const text = cells[tag];
      if (typeof text === 'string' && !byTag.has(text)) byTag.set(text, id);
    }
    this.#rowByTag.set(sheet, byTag);
  }

  #resolveColumn(reference: ReferenceColumn): Retargeted[] {
    const changed: Retargeted[] = [];
    for (const row of this.#document.rows(reference.sheet)) changed.push(...this.#resolve(reference, row.id, row));
    return changed;
  }

  #resolve({ sheet, key, to }: ReferenceColumn, id: number, row: Row | undefined): Retargeted[] {
    const text = row?.cells[key];
    const target = typeof text === 'string' ? this.find(to, text) : -1;
    const targets = this.#columns[sheet].targets.get(key)!;
    if (targets[id] === target) return NONE;
    targets[id] = target;
    return [{ sheet, id, key }];
  }
}

const NONE: Retargeted[] = [];

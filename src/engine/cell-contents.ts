import type { RawCellContent } from 'hyperformula';
import { findColumn, isBlank, isFormula, isNumeric, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import { ruleFormula } from './cell-formulas.ts';
import type { CellLayout } from './cell-layout.ts';
import type { CellWrite } from './formula-engine.ts';
import { RULES, ruleOf } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';
import type { Touched } from './touched.ts';
import type { TypedFormulas } from './typed-formulas.ts';

/** What the formula engine is given for the cells of a document. */
export class CellContents {
  readonly #document: ScheduleDocument;
  readonly #columns: Readonly<Record<SheetName, SheetColumns>>;
  readonly #layout: CellLayout;
  readonly #typed: TypedFormulas;

  constructor(
    document: ScheduleDocument, columns: Readonly<Record<SheetName, SheetColumns>>, layout: CellLayout, typed: TypedFormulas,
  ) {
    this.#document = document;
    this.#columns = columns;
    this.#layout = layout;
    this.#typed = typed;
  }

  /** The content of one cell; `null` for a row that is not in the document or in which nothing is entered. */
  of(sheet: SheetName, id: number, key: string): RawCellContent {
    const row = this.#document.row(sheet, id);
    const column = findColumn(sheet, key)!;
    if (row === undefined || isBlank(row)) return null;
    const rule = ruleOf(sheet, key);
    if (column.role === 'computed') {
      if (column.total !== undefined || column.solved !== undefined) return this.#columns[sheet].number(key, id);
      return rule === undefined ? null : ruleFormula(rule, row, this.#layout, this.#columns);
    }
    const own = row.cells[key] ?? null;
    if (own === null) {
      return rule === undefined ? column.default ?? null : ruleFormula(rule, row, this.#layout, this.#columns);
    }
    if (isNumeric(column) && isFormula(own)) return this.#typed.compile(sheet, id, key, own);
    // An apostrophe keeps the formula engine from reading a text as a number, a date or a formula.
    return typeof own === 'string' ? `'${own}` : own;
  }

  /** The cells to be written again after a change. */
  writesOf(touched: Touched): CellWrite[] {
    return [...touched.cells()].flatMap(({ sheet, id, keys }) => this.writes(sheet, id, keys));
  }

  /** Contents of all held cells of a sheet, by id. */
  lines(sheet: SheetName): RawCellContent[][] {
    const keys = this.#layout.keys(sheet);
    const lines: RawCellContent[][] = Array.from({ length: this.#document.capacity(sheet) }, () => []);
    for (const { id } of this.#document.rows(sheet)) lines[id] = keys.map((key) => this.of(sheet, id, key));
    return lines;
  }

  /**
   * The cells of a row to be written again.
   * @param keys columns that were changed: what is read through references among them is written too; `null` for all.
   */
  writes(sheet: SheetName, id: number, keys: ReadonlySet<string> | null): CellWrite[] {
    const concerned = new Set(keys ?? this.#layout.keys(sheet));
    const cells = this.#document.row(sheet, id)?.cells ?? {};
    for (const { key, args, rule } of keys === null ? [] : RULES[sheet]) {
      const recompiled = args.some(({ by, path }) =>
        (by !== undefined && concerned.has(by)) || concerned.has(rule.onlyWith?.[path] ?? ''));
      // A value of a person's own stands whatever its default would be read through.
      if (recompiled && (cells[key] ?? null) === null) concerned.add(key);
    }
    return [...concerned].flatMap((key) => {
      const place = this.#layout.place(sheet, key);
      return place === undefined ? [] : [{ sheet, place, id, content: this.of(sheet, id, key) }];
    });
  }
}

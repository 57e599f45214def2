import {
  referencesOf, SCHEMA, type Reference, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import type { CellLayout } from './cell-layout.ts';
import { columnsRead, typedFormula } from './cell-formulas.ts';
import { readsOwnTotal, type ColumnLink } from './formula-loops.ts';

/** A formula typed by a person, by its cell. */
export interface TypedCell {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
  readonly formula: string;
}

const nameOf = (sheet: SheetName, id: number, key: string) => `${sheet}#${id}.${key}`;

/** The formulas that persons have typed, and which of them may be calculated. */
export class TypedFormulas {
  readonly #document: ScheduleDocument;
  readonly #layout: CellLayout;
  readonly #cells = new Map<string, TypedCell>();
  #looping = new Set<string>();

  constructor(document: ScheduleDocument, layout: CellLayout) {
    this.#document = document;
    this.#layout = layout;
  }

  get size(): number {
    return this.#cells.size;
  }

  /** Notes what a cell holds now. @returns whether a formula came, went or changed. */
  note(sheet: SheetName, id: number, key: string, formula: string | undefined): boolean {
    const name = nameOf(sheet, id, key);
    if (this.#cells.get(name)?.formula === formula) return false;
    if (formula === undefined) this.#cells.delete(name);
    else this.#cells.set(name, { sheet, id, key, formula });
    return true;
  }

  /** Formulas that refer to a sheet: those to be compiled again when its rows come, go or move. */
  referringTo(sheet: SheetName): TypedCell[] {
    return [...this.#cells.values()].filter(({ formula }) => referencesOf(formula).some((each) => each?.sheet === sheet));
  }

  /** Whether the formula in a cell reads a total that the cell feeds, and is therefore not calculated. */
  loops(sheet: SheetName, id: number, key: string): boolean {
    return this.#looping.has(nameOf(sheet, id, key));
  }

  /** Finds the looping formulas again. @returns those that loop now and did not, or the other way round. */
  checkLoops(): TypedCell[] {
    const before = this.#looping;
    this.#looping = new Set();
    if (this.#cells.size === 0 && before.size === 0) return [];
    const links = new Map<string, ColumnLink>();
    const linksOf = new Map<string, string[]>();
    for (const [name, { sheet, key, formula }] of this.#cells) {
      linksOf.set(name, columnsRead(formula, keysBetween).map((from) => {
        const link = `${from.sheet}.${from.key}>${sheet}.${key}`;
        if (!links.has(link)) links.set(link, { from, into: { sheet, key } });
        return link;
      }));
    }
    const all = [...links.values()];
    const looping = new Set([...links].filter(([, link]) => readsOwnTotal(link, all)).map(([name]) => name));
    for (const [name, own] of linksOf) if (own.some((link) => looping.has(link))) this.#looping.add(name);
    return [...this.#cells].filter(([name]) => before.has(name) !== this.#looping.has(name)).map(([, cell]) => cell);
  }

  /** Columns that a formula reads and that the formula engine does not hold yet. */
  columnsToHold(formula: string): { sheet: SheetName; key: string }[] {
    return columnsRead(formula, keysBetween).filter(({ sheet, key }) => this.#layout.place(sheet, key) === undefined);
  }

  /** What the formula engine is given for a cell with a formula. */
  compile(sheet: SheetName, id: number, key: string, formula: string): string | null {
    if (this.loops(sheet, id, key)) return null;
    return typedFormula(formula, sheet, key, this.#document, this.#layout, keysBetween);
  }
}

/** The columns from one corner of a reference to the other. */
export function keysBetween({ sheet, from, to }: Reference): string[] {
  const keys = SCHEMA[sheet].columns.map(({ key }) => key);
  const [first, last] = [keys.indexOf(from.key), keys.indexOf(to?.key ?? from.key)];
  return keys.slice(Math.min(first, last), Math.max(first, last) + 1);
}

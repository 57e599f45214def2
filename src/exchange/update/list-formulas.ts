import {
  FileRows, isFormula, numericInputs, readKeyForm, renumberKeyForm, titleWithUnit, withOtherIds, type Cells, type Row,
  type ScheduleDocument, type SheetName,
} from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';

/** Rows of a sheet that come from elsewhere: of a CSV file, or of that sheet in another schedule. */
export interface ListRows {
  readonly sheet: SheetName;
  /** As files hold them: formulas name cells by key. */
  readonly rows: readonly Cells[];
  /** The line of its file on which each begins, from 1; without them rows are named by their number. */
  readonly lines?: readonly number[];
  /** It says nothing of rows that it does not hold, as what was edited somewhere. */
  readonly isPart?: true;
}

/** A row of a list that goes into the schedule: onto the row with an id, or behind the others where it has none. */
export interface TakenRow {
  /** Place in the list, from 0. */
  readonly place: number;
  readonly id: number | undefined;
}

/**
 * Reads formulas of a list as they will stand in the schedule. By number they name rows of the list, by tag rows of the
 * schedule as it will be.
 */
export class ListFormulas {
  readonly #document: ScheduleDocument;
  readonly #list: ListRows;
  /** The rows of the sheet as they will stand, with the ids that they will have. */
  readonly #after: readonly Row[];
  /** Where each row of the list will stand among them. */
  readonly #placeOf: ReadonlyMap<number, number>;
  readonly #rows: FileRows;

  constructor(document: ScheduleDocument, list: ListRows, taken: readonly TakenRow[]) {
    this.#document = document;
    this.#list = list;
    const there = document.rows(list.sheet);
    const fresh = taken.filter(({ id }) => id === undefined);
    const ids = document.freeIds(list.sheet, fresh.length);
    this.#after = [...there, ...fresh.map(({ place }, index) => ({ id: ids[index]!, cells: list.rows[place]! }))];
    const added = new Map(fresh.map(({ place }, index) => [place, there.length + index]));
    this.#placeOf = new Map(taken.map(({ place, id }) =>
      [place, id === undefined ? added.get(place)! : document.position(list.sheet, id)]));
    this.#rows = new FileRows((sheet) => this.#rowsOf(sheet));
  }

  /** The cells of a row of the list with its formulas in the form that documents keep, or what is wrong with one. */
  read(place: number, words: Words): { readonly ok: true; readonly cells: Cells }
    | { readonly ok: false; readonly problem: string } {
    const { sheet, rows } = this.#list;
    const cells = { ...rows[place]! };
    for (const column of numericInputs(sheet)) {
      const text = cells[column.key];
      if (!isFormula(text)) continue;
      // A number that no row of the list has that is taken becomes 0, which no row has either.
      const numbered = renumberKeyForm(text, sheet, sheet, (row) =>
        (typeof row === 'number' ? (this.#placeOf.get(row - 1) ?? -1) + 1 : undefined));
      const read = readKeyForm(numbered, { sheet, row: this.#placeOf.get(place)!, rows: this.#rows }, words);
      if (!read.ok) {
        const title = titleWithUnit(column, words);
        return { ok: false, problem: words.say('{column}: {problem}', { column: title, problem: read.problem }) };
      }
      // What was read names rows by their places.
      cells[column.key] = withOtherIds(read.formula, (of, at) => this.#rowsOf(of)[at]!.id);
    }
    return { ok: true, cells };
  }

  #rowsOf(sheet: SheetName): readonly Row[] {
    return sheet === this.#list.sheet ? this.#after : this.#document.rows(sheet);
  }
}

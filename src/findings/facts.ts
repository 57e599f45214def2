import type { Touched, Workbook } from '../engine/index.ts';
import type { ScheduleDocument, SheetName } from '../schedule/index.ts';
import { Gathered } from './gathered.ts';

/** What is told of rows of a sheet that hangs on many others, and needs no column. */
export interface Gathering<Fact> {
  readonly sheet: SheetName;
  /** The columns that it follows from; the order of the rows of their sheets counts too. */
  readonly reads: readonly (readonly [SheetName, string])[];
  /** Gathers it in one pass. @returns the fact of each row by id; none where there is nothing to tell. */
  readonly gather: (document: ScheduleDocument, book: Workbook) => ReadonlyMap<number, Fact>;
}

/** What is gathered about rows, once, and only when a check asks for it. */
export class Facts {
  readonly #document: ScheduleDocument;
  readonly #book: Workbook;
  readonly #gathered = new Map<Gathering<unknown>, Gathered<unknown>>();

  constructor(document: ScheduleDocument, book: Workbook) {
    this.#document = document;
    this.#book = book;
  }

  /** What is told of a row; `undefined` where nothing is. */
  of<Fact>(gathering: Gathering<Fact>, id: number): Fact | undefined {
    let gathered = this.#gathered.get(gathering);
    if (gathered === undefined) {
      gathered = new Gathered<unknown>(gathering.reads, () => gathering.gather(this.#document, this.#book));
      this.#gathered.set(gathering, gathered);
    }
    return gathered.of(id) as Fact | undefined;
  }

  /** Gathers again what a change concerns. @returns the rows of which something else is told than before. */
  update(touched: Touched): [SheetName, number[]][] {
    return [...this.#gathered].map(([{ sheet }, gathered]) => [sheet, gathered.update(touched)]);
  }
}

import type { Touched, Workbook } from '../engine/index.ts';
import type { ScheduleDocument, SheetName } from '../schedule/index.ts';

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
  readonly #gathered = new Map<Gathering<unknown>, ReadonlyMap<number, unknown>>();

  constructor(document: ScheduleDocument, book: Workbook) {
    this.#document = document;
    this.#book = book;
  }

  /** What is told of a row; `undefined` where nothing is. */
  of<Fact>(gathering: Gathering<Fact>, id: number): Fact | undefined {
    let facts = this.#gathered.get(gathering);
    if (facts === undefined) this.#gathered.set(gathering, facts = gathering.gather(this.#document, this.#book));
    return facts.get(id) as Fact | undefined;
  }

  /** Gathers again what a change concerns. @returns the rows of which something else is told than before. */
  update(touched: Touched): [SheetName, number[]][] {
    return [...this.#gathered].flatMap(([gathering, before]) => {
      const isConcerned = gathering.reads.some(([sheet, key]) =>
        touched.concerns(sheet, key) || touched.rearranged.has(sheet));
      if (!isConcerned) return [];
      const now = gathering.gather(this.#document, this.#book);
      this.#gathered.set(gathering, now);
      const changed = [...new Set([...before.keys(), ...now.keys()])]
        .filter((id) => JSON.stringify(before.get(id)) !== JSON.stringify(now.get(id)));
      return [[gathering.sheet, changed]];
    });
  }
}

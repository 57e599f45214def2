import type { ScheduleEvent } from '../../../src/load-schedule.ts';
import type { SheetName } from '../../../src/schedule/index.ts';

/** What a person typed that could not be taken. */
export interface RefusedText {
  readonly text: string;
  /** What is wrong with it, and what to do. */
  readonly problem: string;
}

/** What could not be taken, by cell: its editor begins with it again, so that a long formula need not be typed anew. */
export class RefusedTexts {
  #texts = new Map<string, RefusedText>();

  /** @param id -1 for the row that is still to come. */
  of(sheet: SheetName, id: number, key: string): RefusedText | undefined {
    return this.#texts.get(`${sheet} ${id} ${key}`);
  }

  keep(sheet: SheetName, id: number, key: string, refused: RefusedText): void {
    this.#texts.set(`${sheet} ${id} ${key}`, refused);
  }

  /** @returns whether there was one. */
  forget(sheet: SheetName, id: number, key: string): boolean {
    return this.#texts.delete(`${sheet} ${id} ${key}`);
  }

  /** Forgets cells that were filled, and rows that came or went, as their ids may be others' from now on. */
  heed({ changes, inverse, touched }: Pick<ScheduleEvent, 'changes' | 'inverse' | 'touched'>): void {
    if (this.#texts.size === 0) return;
    if (touched.all) this.#texts.clear();
    for (const change of [...changes, ...inverse]) {
      if (change.op === 'set') this.forget(change.sheet, change.id, change.key);
      if (change.op !== 'insert') continue;
      const gone = new Set([-1, ...change.rows.map(({ id }) => id)].map((id) => `${change.sheet} ${id} `));
      for (const name of this.#texts.keys()) if (gone.has(name.replace(/\w+$/, ''))) this.#texts.delete(name);
    }
  }
}

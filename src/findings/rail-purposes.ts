import type { Workbook } from '../engine/index.ts';
import { PURPOSES, type ScheduleDocument } from '../schedule/index.ts';

/** Purposes that are kept on supplies of their own: common practice, no source. */
const SEPARATED = PURPOSES.filter((purpose) => purpose !== 'other');

/** The purposes of the devices on each rail, gathered in one pass as a bit for each purpose. */
export class RailPurposes {
  readonly #document: ScheduleDocument;
  readonly #book: Workbook;
  #bits = new Uint8Array(0);

  constructor(document: ScheduleDocument, book: Workbook) {
    this.#document = document;
    this.#book = book;
    this.update();
  }

  /** Gathers again. @returns ids of the supplies whose devices have other purposes than before. */
  update(): number[] {
    const before = this.#bits;
    this.#bits = new Uint8Array(this.#document.capacity('supplies'));
    const ofType = this.#document.rows('types').reduce((bits, { id, cells }) => {
      const index = SEPARATED.indexOf(cells.purpose as (typeof SEPARATED)[number]);
      bits[id] = index < 0 ? 0 : 1 << index;
      return bits;
    }, new Uint8Array(this.#document.capacity('types')));
    const count = this.#document.capacity('devices');
    const [rails, typesOf] = [this.#book.targets('devices', 'rail'), this.#book.targets('devices', 'type')];
    for (let id = 0; id < count; id += 1) {
      const rail = rails[id]!;
      const type = typesOf[id]!;
      if (rail >= 0 && type >= 0) this.#bits[rail]! |= ofType[type]!;
    }
    return this.#document.rows('supplies').map(({ id }) => id).filter((id) => this.#bits[id] !== before[id]);
  }

  /** The purposes that must be kept apart and are found on a rail, its own among them. */
  of(supply: number): string[] {
    const own = this.#document.row('supplies', supply)?.cells.purpose;
    return SEPARATED.filter((purpose, index) => purpose === own || (this.#bits[supply]! & (1 << index)) !== 0);
  }
}

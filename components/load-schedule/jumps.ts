import type { ScheduleEvent } from '../../src/load-schedule.ts';
import type { Place } from '../look/index.ts';

/** The places between which a person jumped, to go back and forth; the id is -1 where only a sheet was chosen. */
export class Jumps {
  #trail: readonly Place[] = [];
  #at = 0;

  /** A person jumps from one place to another: what they had gone back from is left behind. */
  jump(from: Place, to: Place): void {
    if (isSame(from, to)) return;
    const before = this.#trail.slice(0, this.#at);
    if (!isSame(before.at(-1), from)) before.push(from);
    this.#trail = [...before, to];
    this.#at = before.length;
  }

  /** Steps along the places. @param now where the person is, to which the way leads back. @returns where to go. */
  step(by: 1 | -1, now: Place): Place | undefined {
    const to = this.#trail[this.#at + by];
    if (to === undefined) return undefined;
    this.#trail = this.#trail.map((place, index) => (index === this.#at ? now : place));
    this.#at += by;
    return to;
  }

  /** Of a row that came or went only the sheet is kept, as its id may be another's from now on. */
  heed({ touched, changes, inverse }: Pick<ScheduleEvent, 'touched' | 'changes' | 'inverse'>): void {
    const isGone = ({ sheet, id }: Place) => touched.all || [...changes, ...inverse].some((change) =>
      change.op === 'insert' && change.sheet === sheet && change.rows.some((row) => row.id === id));
    if (this.#trail.some(isGone)) {
      this.#trail = this.#trail.map((place) => (isGone(place) ? { ...place, id: -1 } : place));
    }
  }
}

function isSame(one: Place | undefined, other: Place): boolean {
  return one?.sheet === other.sheet && one.id === other.id && one.key === other.key;
}

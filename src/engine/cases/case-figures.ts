import { enlarged, GROWTH } from '../enlarged.ts';

/** How far a case has factors for the groups on a row. */
export const COVER = {
  /** Some of them have none, or some loads belong to no group. */
  some: 0,
  all: 1,
  /** There is nothing on the row. */
  nothing: 2,
} as const;

/** How far several parts of a row are covered together. */
export function coverOf(one: number, other: number): number {
  if (one === COVER.nothing) return other;
  return other === COVER.nothing ? one : Math.min(one, other);
}

/** A named case must be worse by more than rounding to be named as the worst. */
const ROUNDING = 1e-9;

/**
 * What a column is worth in each case, by row id: first by the diversity of the rows alone, then in the cases in their
 * order. NaN is unknown.
 */
export class CaseFigures {
  values: Float64Array[] = [];
  /** How far each case covers a row; none for the first. */
  covers: Uint8Array[] = [];

  /** Makes room for so many cases and rows. What is kept of them before is lost where their number is another. */
  reserve(cases: number, size: number): void {
    if (this.values.length !== cases + 1) {
      this.values = Array.from({ length: cases + 1 }, () => new Float64Array(size).fill(NaN));
      this.covers = Array.from({ length: cases }, () => new Uint8Array(size).fill(COVER.nothing));
    }
    if (this.values[0]!.length >= size) return;
    const bigger = Math.ceil(size * GROWTH);
    this.values = this.values.map((old) => enlarged(old, new Float64Array(bigger).fill(NaN)));
    this.covers = this.covers.map((old) => enlarged(old, new Uint8Array(bigger).fill(COVER.nothing)));
  }

  /** Sets what a row is worth in each case, and how far they cover it. @returns whether any of it is another. */
  set(id: number, covers: readonly number[], valueIn: (at: number) => number): boolean {
    let differs = false;
    for (let at = 0; at < this.values.length; at += 1) {
      const values = this.values[at]!;
      const value = valueIn(at);
      if (!Object.is(values[id], value)) differs = true;
      values[id] = value;
    }
    for (let at = 0; at < covers.length; at += 1) {
      const kept = this.covers[at]!;
      if (kept[id] !== covers[at]) differs = true;
      kept[id] = covers[at]!;
    }
    return differs;
  }

  /** Nothing is known of a row any more. */
  forget(id: number): void {
    for (const values of this.values) if (id < values.length) values[id] = NaN;
    for (const covers of this.covers) if (id < covers.length) covers[id] = COVER.nothing;
  }

  /** What is kept, as it is now. */
  copy(): { values: Float64Array[]; covers: Uint8Array[] } {
    return { values: this.values.map((each) => each.slice()), covers: this.covers.map((each) => each.slice()) };
  }

  /** Whether a row is worth something else in any case than in what was kept before. */
  differs(before: { values: Float64Array[]; covers: Uint8Array[] }, id: number): boolean {
    return this.values.some((values, at) => !Object.is(values[id], before.values[at]?.[id]))
      || this.covers.some((covers, at) => covers[id] !== before.covers[at]?.[id]);
  }

  /** Whether what a row's own diversity gives counts: not where every case says of all that is on it how much is on. */
  countsOwn(id: number): boolean {
    return this.covers.length === 0 || this.covers.some((covers) => covers[id] !== COVER.all);
  }

  /** Whether a row is worth the same in each case, and by its own diversity. */
  isAlike(id: number): boolean {
    return this.values.every((values) => Object.is(values[id], this.values[0]![id]));
  }

  /**
   * The worst of the cases that count for a row: its figure, unknown where it is in one of them, and the place of the
   * case, 0 where none is worse than the diversity of the row.
   */
  worst(id: number, isHighest: boolean): { value: number; place: number } {
    const { values } = this;
    let place = this.countsOwn(id) ? 0 : 1;
    let value = values[place]![id]!;
    for (let other = place + 1; other < values.length && value === value; other += 1) {
      const figure = values[other]![id]!;
      const difference = isHighest ? figure - value : value - figure;
      if (figure !== figure) value = figure;
      else if (difference > Math.abs(value) * ROUNDING) [value, place] = [figure, other];
    }
    return { value, place: value === value ? place : 0 };
  }
}

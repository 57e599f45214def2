import type { Pattern } from './pattern.ts';

/** What is in the basis in a row: a pattern, an item left outside, more of an item than needed, or a bin left empty. */
type Basic =
  | { readonly is: 'pattern'; readonly pattern: Pattern }
  | { readonly is: 'outside'; readonly cost: number }
  | { readonly is: 'slack' };

const SMALL = 1e-9;

/**
 * The linear programme of filling bins with patterns, by the revised simplex method with a dense inverse: nothing
 * left outside, so that each item is held at least as often as there are of it and each kind of bin is used at
 * most as often as there are bins. Items that were held once are never left outside again, so that what stays outside
 * is the least only where that is nothing. Its first rows belong to the items, the rest to the kinds of bins.
 */
export class Programme {
  readonly #items: number;
  readonly #rows: number;
  readonly #inverse: Float64Array;
  readonly #values: Float64Array;
  readonly #basis: Basic[];

  /**
   * @param limits number of items of each size, then number of bins of each kind
   * @param costs of leaving one item of each size outside
   */
  constructor(limits: readonly number[], costs: readonly number[]) {
    this.#items = costs.length;
    this.#rows = limits.length;
    this.#values = Float64Array.from(limits);
    this.#inverse = new Float64Array(this.#rows ** 2);
    for (let row = 0; row < this.#rows; row += 1) this.#inverse[row * (this.#rows + 1)] = 1;
    this.#basis = limits.map((_, row) => row < this.#items ? { is: 'outside', cost: costs[row]! } : { is: 'slack' });
  }

  /** Size of what is outside. */
  outside(): number {
    return this.#basis.reduce(
      (sum, basic, row) => basic.is === 'outside' ? sum + basic.cost * this.#values[row]! : sum, 0
    );
  }

  /** Worth of one more item of each size, then, 0 or less, of one bin less of each kind. */
  prices(): number[] {
    const prices = new Array<number>(this.#rows).fill(0);
    this.#basis.forEach((basic, row) => {
      if (basic.is !== 'outside') return;
      for (let column = 0; column < this.#rows; column += 1) {
        prices[column]! += basic.cost * this.#inverse[row * this.#rows + column]!;
      }
    });
    return prices;
  }

  /** The patterns in use. */
  patterns(): { pattern: Pattern; times: number }[] {
    return this.#basis.flatMap((basic, row) =>
      basic.is === 'pattern' && this.#values[row]! > SMALL ? [
        { pattern: basic.pattern, times: this.#values[row]! },
      ] : []);
  }

  /** Takes a pattern into use. */
  enter(pattern: Pattern): void {
    const { kind, fill } = pattern;
    this.#pivot({ is: 'pattern', pattern }, (row) => {
      let sum = this.#inverse[row * this.#rows + this.#items + kind]!;
      for (let item = 0; item < this.#items; item += 1) {
        if (fill[item]! > 0) sum += fill[item]! * this.#inverse[row * this.#rows + item]!;
      }
      return sum;
    });
  }

  /**
   * Lets more of an item be held than needed, or a bin stay empty, where that is a gain at these prices.
   * @returns whether it was
   */
  enterSlack(prices: readonly number[]): boolean {
    const item = prices.findIndex((price, row) => row < this.#items ? price < -SMALL : price > SMALL);
    if (item < 0) return false;
    const sign = item < this.#items ? -1 : 1;
    this.#pivot({ is: 'slack' }, (row) => sign * this.#inverse[row * this.#rows + item]!);
    return true;
  }

  #pivot(entering: Basic, entry: (row: number) => number): void {
    const size = this.#rows;
    const column = Float64Array.from({ length: size }, (_, row) => entry(row));
    let leaving = -1;
    let least = Infinity;
    for (let row = 0; row < size; row += 1) {
      if (column[row]! <= SMALL) continue;
      const ratio = Math.max(0, this.#values[row]!) / column[row]!;
      // Among equals the largest entry, for the sake of the rounding.
      if (ratio < least - 1e-12 || (ratio <= least && column[row]! > column[leaving]!)) {
        least = ratio;
        leaving = row;
      }
    }
    if (leaving < 0) return;
    const pivot = column[leaving]!;
    const from = leaving * size;
    for (let place = 0; place < size; place += 1) this.#inverse[from + place]! /= pivot;
    this.#values[leaving] = least;
    for (let row = 0; row < size; row += 1) {
      const factor = column[row]!;
      if (row === leaving || factor === 0) continue;
      const to = row * size;
      for (let place = 0; place < size; place += 1) this.#inverse[to + place]! -= factor * this.#inverse[from + place]!;
      this.#values[row] = Math.max(0, this.#values[row]! - factor * least);
    }
    this.#basis[leaving] = entering;
  }
}

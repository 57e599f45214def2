/** Quantities added up on the way down a takeoff, against which its totals are checked. */
export class RunningSums {
  #all = 0;
  #beforePart = 0;
  #count = 0;
  /** For each sum at which a part of the list began, the line of the latest such part, and how many stand above. */
  readonly #partsBySum = new Map<number, { readonly line: number; readonly count: number }>();

  add(qty: number): void {
    this.#all = rounded(this.#all + qty);
    if (qty !== 0) this.#count += 1;
  }

  /** A part of the list begins on this line: at the start, and below each title and each total. */
  beginPart(line: number): void {
    this.#partsBySum.set(this.#all, { line, count: this.#count });
    this.#beforePart = this.#all;
  }

  /**
   * Whether a quantity is the sum of everything from the beginning of some part to here, so that totals of parts, of
   * several parts and of the whole are all found.
   * @param least how many quantities it adds up, at least.
   * @returns the first line that it adds up; `undefined` when it is no such sum.
   */
  sumsFrom(qty: number, least = 0): number | undefined {
    const part = qty > 0 ? this.#partsBySum.get(rounded(this.#all - qty)) : undefined;
    return part !== undefined && this.#count - part.count >= least ? part.line : undefined;
  }

  /** The sum that a total in this place would have, of the part or of all, whichever is nearer to what it says. */
  expected(qty: number): number {
    const part = rounded(this.#all - this.#beforePart);
    return part > 0 && Math.abs(part - qty) <= Math.abs(this.#all - qty) ? part : this.#all;
  }
}

/**
 * Sums of a column: with quantities that are put in a doubtful way, and without, as spreadsheets add up numbers only;
 * and with what is meant by them, as twelve by «2 each» of six.
 */
export class ColumnSums {
  readonly all = new RunningSums();
  readonly plain = new RunningSums();
  readonly meant = new RunningSums();

  add(qty: number, isDoubtful: boolean, meant = qty): void {
    this.all.add(qty);
    if (!isDoubtful) this.plain.add(qty);
    this.meant.add(meant);
  }

  beginPart(line: number): void {
    this.all.beginPart(line);
    this.plain.beginPart(line);
    this.meant.beginPart(line);
  }
}

/** Quantities have three decimals at most, and their sums would otherwise gather the errors of binary fractions. */
function rounded(sum: number): number {
  return Math.round(sum * 1000) / 1000;
}

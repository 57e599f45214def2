/** The order in which contents are asked for: the one that was asked for last is shown, in whichever order they arrive. */
export class Turns {
  #asked = 0;
  #shown = 0;

  /** Takes the next turn. */
  next(): number {
    return this.#asked += 1;
  }

  /** What had a turn is shown now. */
  show(turn: number): void {
    this.#shown = turn;
  }

  /** Whether something that was asked for later is shown already. */
  isOutrun(turn: number): boolean {
    return turn < this.#shown;
  }
}

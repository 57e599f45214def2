/** The cells that a person selected, by places in the lines and columns of a grid. */
export interface GridSelection {
  /** Line and column of the cell that has the focus. */
  readonly line: number;
  readonly column: number;
  /** Selected lines from top to bottom. */
  readonly lines: readonly number[];
  /** Selected columns from start to end. */
  readonly columns: readonly number[];
}

/** Corners of a selected block. */
export interface Block {
  readonly from: { readonly row: number; readonly col: number };
  readonly to: { readonly row: number; readonly col: number };
}

/** A selection from its blocks and the cell that has the focus; blocks that include headings are cut to the cells. */
export function selectionOf(blocks: readonly Block[], focus: { row: number; col: number }): GridSelection {
  return {
    line: Math.max(0, focus.row),
    column: Math.max(0, focus.col),
    lines: places(blocks.map(({ from, to }) => [from.row, to.row])),
    columns: places(blocks.map(({ from, to }) => [from.col, to.col])),
  };
}

function places(spans: readonly (readonly [number, number])[]): number[] {
  const found = new Set<number>();
  for (const [one, other] of spans) {
    for (let place = Math.max(0, Math.min(one, other)); place <= Math.max(one, other); place += 1) found.add(place);
  }
  return [...found].sort((a, b) => a - b);
}

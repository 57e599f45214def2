/**
 * A block of selected cells, by places in the lines and columns of a grid, from top to bottom and from start to end.
 */
export interface CellBlock {
  readonly lines: readonly number[];
  readonly columns: readonly number[];
}

/** The cells that a person selected: blocks, which several picks with Ctrl leave apart. */
export interface GridSelection {
  /** Line and column of the cell that has the focus. */
  readonly line: number;
  readonly column: number;
  /** In the order in which they were picked; they may overlap. */
  readonly blocks: readonly CellBlock[];
  /** All lines with a selected cell from top to bottom, for what is done to rows. */
  readonly lines: readonly number[];
}

/** Corners of a selected block. */
export interface Block {
  readonly from: { readonly row: number; readonly col: number };
  readonly to: { readonly row: number; readonly col: number };
}

/** A selection from its blocks and the cell that has the focus; blocks that include headings are cut to the cells. */
export function selectionOf(corners: readonly Block[], focus: { row: number; col: number }): GridSelection {
  const blocks = corners.map(blockOf);
  return {
    line: Math.max(0, focus.row), column: Math.max(0, focus.col), blocks, lines: union(blocks.map(({ lines }) =>
      lines)),
  };
}

/** The cells of one block. */
export function blockOf({ from, to }: Block): CellBlock {
  return { lines: places(from.row, to.row), columns: places(from.col, to.col) };
}

/** The selected columns of each line that has any, from top to bottom; a cell in two blocks counts once. */
export function columnsByLine({ blocks, lines }: GridSelection): Map<number, number[]> {
  if (blocks.length === 1) return new Map(lines.map((line) => [line, [...blocks[0]!.columns]]));
  return new Map(lines.map((line) =>
    [
      line,
      union(blocks.filter((block) => block.lines[0]! <= line && line <= block.lines.at(-1)!).map(({ columns }) =>
        columns)),
    ]));
}

/** The selected cells as one block, closed up as a copy of them is; `undefined` where blocks do not align. */
export function asOneBlock(selection: GridSelection): CellBlock | undefined {
  const { blocks, lines } = selection;
  if (blocks.length === 1) return blocks[0];
  const columns = union(blocks.map((block) => block.columns));
  return [...columnsByLine(selection).values()].every((own) => own.length === columns.length)
    ? { lines, columns } : undefined;
}

function union(lists: readonly (readonly number[])[]): number[] {
  return [...new Set(lists.flat())].sort((a, b) => a - b);
}

function places(one: number, other: number): number[] {
  const first = Math.max(0, Math.min(one, other));
  return Array.from({ length: Math.max(0, Math.max(one, other) - first + 1) }, (_place, index) => first + index);
}

import type { DrawnNode } from './drawn-node.ts';
import { flowText, GAP, LINE, type Piece } from './flow-text.ts';
import { HANGING, HANGING_REACH, SYMBOL_LENGTH, SYMBOL_REACH, type SymbolName } from './symbols.ts';

/** How wide and how high a sheet is [units]; wide ones have runs and loads in the line of what feeds them. */
export interface SheetSize {
  readonly width: number;
  readonly height: number;
}

export const MARGIN = 16;
/** Sheets below this have everything below one another [units]. */
const LEAST_ACROSS = 700;
/** Where runs and loads begin, as shares of the width; where there is more room, loads have more of it. */
const COLUMNS = { runs: 0.385, loads: 0.74 } as const;
const ROOMY = { from: 1000, columns: { runs: 0.35, loads: 0.68 } } as const;
/** Conductor after the symbols, before it turns down and back to where the children hang. */
export const RETURN = 4;
/** A conductor without a symbol, where what it feeds stands below it. */
const SHORT = 6;
/** Least room for text across. */
const LEAST_TEXT = 40;
/** What a status mark takes in a line of text. */
export const MARK = 17;
/** Half of a line of text, and symbols that reach no further. */
const HALF_LINE = 8;
const FLAT: ReadonlySet<SymbolName> = new Set(['load', 'none', 'elsewhere']);
/** What lies between two rows. */
const BETWEEN = 5;

/** A node in its place across, with its text in lines. */
export interface Laid {
  readonly node: DrawnNode;
  /** Where the conductor comes from, where its symbols begin and its text. */
  readonly x: number;
  readonly symbolX: number;
  /** Where its symbols end. */
  readonly end: number;
  readonly textX: number;
  /** Room for a line of text. */
  readonly room: number;
  /** Where the conductor to its children stands; in one line with the first of them or not. */
  readonly childX: number;
  readonly isAcross: boolean;
  readonly above: readonly (readonly Piece[])[];
  readonly below: readonly (readonly Piece[])[];
  readonly children: readonly Laid[];
  /** From its top to the conductor, from the conductor to its own foot, and all of it with its children. */
  readonly ascent: number;
  readonly descent: number;
  readonly height: number;
  /** The sheet on which the rest of its children stands, and the one on which it stands itself. */
  readonly goesOn?: number;
  readonly comesFrom?: number;
}

/** Puts a node and what hangs on it into place. */
export function layOut(node: DrawnNode, x: number, size: SheetSize): Laid {
  const isWide = size.width >= LEAST_ACROSS;
  const stub = isWide ? 8 : 4;
  const symbolX = x + stub;
  const isAcross = isWide && node.feeds !== undefined;
  const lengthOf = (name: SymbolName) => name === 'none' && !isAcross ? SHORT : SYMBOL_LENGTH;
  const end = symbolX + node.symbols.reduce((sum, { name }) => sum + lengthOf(name), 0);
  const indent = x + (isWide ? 26 : 16);
  const textX = (isAcross || node.children.length === 0 ? end : Math.max(end + RETURN, indent)) + GAP;
  const columns = size.width < ROOMY.from ? COLUMNS : ROOMY.columns;
  const childX = isAcross ? Math.max(size.width * columns[node.feeds], textX + LEAST_TEXT + GAP) : indent;
  const right = isAcross ? childX - GAP : size.width - MARGIN;
  const room = Math.max(LEAST_TEXT, right - textX);
  const name: Piece[] = [{ text: node.name, look: 'strong' }];
  const above = flowText([...name, ...node.about], room - (node.standing === null ? 0 : MARK));
  return heighten({
    node, x, symbolX, end, textX, room, childX, isAcross, above, below: flowText(node.figures, room),
    children: node.children.map((child) => layOut(child, childX, size)),
  });
}

/** Whether the text of a node begins beside its symbol, as no conductor goes through it. */
export function isInLine(laid: Pick<Laid, 'isAcross' | 'below' | 'children'>): boolean {
  const { isAcross, below, children } = laid;
  return below.length === 0 && (!isAcross || children.length === 0);
}

/** Works out the heights of a node from its text and its children. */
export function heighten(laid: Omit<Laid, 'ascent' | 'descent' | 'height'>): Laid {
  const { node, above, below, children, isAcross } = laid;
  const isBeside = isInLine(laid);
  const reach = node.symbols.every(({ name }) => FLAT.has(name)) ? HALF_LINE : SYMBOL_REACH;
  const hanging = node.symbols.some(({ name }) => HANGING.has(name)) ? HANGING_REACH : reach;
  const own = Math.max(isBeside ? HALF_LINE : above.length * LINE + 4, reach);
  const text = isBeside ? (above.length - 1) * LINE + HALF_LINE : below.length * LINE + 4;
  const descent = Math.max(text, hanging) + BETWEEN;
  const [first] = children;
  const sum = children.reduce((total, child) => total + child.height, 0);
  if (!isAcross || first === undefined) return { ...laid, ascent: own, descent, height: own + descent + sum };
  const ascent = Math.max(own, first.ascent);
  return { ...laid, ascent, descent, height: Math.max(ascent + descent, ascent - first.ascent + sum) };
}

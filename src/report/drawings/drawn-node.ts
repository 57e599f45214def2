import type { Standing } from '../../findings/index.ts';
import type { SheetName } from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import type { Piece } from './flow-text.ts';
import type { SymbolName } from './symbols.ts';

/** One thing of a drawing with what hangs on it. */
export interface DrawnNode {
  /** The row that is drawn, which no other node draws; none for what is no row, and where it is only referred to. */
  readonly row?: { readonly sheet: SheetName; readonly id: number };
  /** What it is called; empty for what has no name. */
  readonly name: string;
  /** Symbols in line, from where it is fed. */
  readonly symbols: readonly { readonly name: SymbolName; readonly figure?: string }[];
  /** What is said of it: beside its name, above the line, and below it. */
  readonly about: readonly Piece[];
  readonly figures: readonly Piece[];
  readonly standing: Standing | null;
  /** Where what it feeds stands in a wide drawing: in the same line, from this column on; else below it. */
  readonly feeds?: Column;
  /** What it feeds is not known to be connected so: a tag that is missing or not entered. */
  readonly isLoose?: boolean;
  readonly children: readonly DrawnNode[];
}

/** Columns of a wide drawing, beside what feeds them: runs in the first, what hangs on them in the second. */
export type Column = 'runs' | 'loads';

/** What is named by a tag that no row bears, with what names it. */
export function missingNode(tag: string, children: readonly DrawnNode[], words: Words): DrawnNode {
  return {
    name: tag, symbols: [{ name: 'unknown' }], isLoose: true, standing: 'incomplete', figures: [], children,
    about: [{ text: words.say('is not in the schedule'), look: 'incomplete' }],
  };
}

/** A part of a text that is a figure. */
export const plain = (text: string): Piece => ({ text });
/** A part that stands back. */
export const quiet = (text: string): Piece => ({ text, look: 'quiet' });

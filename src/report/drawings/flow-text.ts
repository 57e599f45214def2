import { shortened } from '../pictures/words.ts';
import { textWidth } from './text-width.ts';

/** A part of a text, such as a figure with its unit. */
export interface Piece {
  readonly text: string;
  /** How it looks: `strong`, `quiet`, or a status. */
  readonly look?: string;
}

/** Distance between two parts in a line, and the height of a line [units]. */
export const GAP = 9;
export const LINE = 15;

const isBold = ({ look = '' }: Piece): boolean => /strong|over|near|incomplete/.test(look);
const widthOf = (piece: Piece): number => textWidth(piece.text, isBold(piece));

/**
 * Breaks parts into lines of at most a width [units]: between parts, else between words, else between signs.
 * @param width room across, above the width of a single sign
 * @param most signs of one part; of a longer text the middle gives way, as the description has it whole
 */
export function flowText(pieces: readonly Piece[], width: number, most = 90): Piece[][] {
  const lines: Piece[][] = [];
  let left = 0;
  const put = (piece: Piece, gap: number): void => {
    const line = lines.at(-1)!;
    const last = line.at(-1);
    if (gap < GAP && last !== undefined) line[line.length - 1] = { ...piece, text: `${last.text} ${piece.text}` };
    else line.push(piece);
    left -= widthOf(piece) + gap;
  };
  const begin = (): void => {
    lines.push([]);
    left = width;
  };
  for (const piece of pieces.filter(({ text }) => text !== '')) {
    const whole = { ...piece, text: shortened(piece.text, most) };
    if (lines.length > 0 && widthOf(whole) + GAP <= left) {
      put(whole, GAP);
      continue;
    }
    begin();
    if (widthOf(whole) <= width) {
      put(whole, GAP);
      continue;
    }
    const space = widthOf({ ...piece, text: ' ' });
    for (const word of whole.text.split(/ +/)) {
      for (const [index, text] of cut(word, width, isBold(piece)).entries()) {
        const part = { ...piece, text };
        const isFirst = lines.at(-1)!.length === 0;
        if (!isFirst && (index > 0 || widthOf(part) + space > left)) begin();
        put(part, space);
      }
    }
  }
  return lines;
}

/** A word in parts of at most a width. */
function cut(word: string, width: number, bold: boolean): string[] {
  const parts = [''];
  for (const sign of word) {
    const longer = parts.at(-1)! + sign;
    if (parts.at(-1) === '' || textWidth(longer, bold) <= width) parts[parts.length - 1] = longer;
    else parts.push(sign);
  }
  return parts;
}

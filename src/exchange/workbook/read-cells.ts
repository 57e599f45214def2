import { columnPlace, type CellValue } from '../../schedule/index.ts';
import { attribute, plainText } from './xml-elements.ts';

/** A cell of a worksheet as the file has it. */
export interface WorksheetCell {
  /** Its row and its column, from 0. */
  readonly row: number;
  readonly column: number;
  /** What it shows; `null` for nothing. An error is a text, such as `#N/A`. */
  readonly value: CellValue;
  /** Its formula without the equals sign, empty where it stands with another cell; `undefined` where it has none. */
  readonly formula: string | undefined;
}

/** Elements that matter to a cell: row, cell, formula, value, text, and how a text is spoken, which is left out. */
const TAG = /<(\/?)(?:\w+:)?(row|c|f|v|t|si|rPh)(\s[^<>]*?)?(\/?)>/g;

/**
 * The cells of a worksheet (ECMA-376, part 1, 18.3.1.4), in one pass whatever the text is.
 * @param xml the part of the worksheet.
 * @param shared texts that cells share, as of `sharedTexts`.
 */
export function readCells(xml: string, shared: readonly string[]): WorksheetCell[] {
  const cells: WorksheetCell[] = [];
  let [row, column, text, type, isSpoken] = [-1, -1, '', '', false];
  let formula: string | undefined;
  let from = 0;
  for (const { index, 0: whole, 1: closing, 2: name, 3: attributes = '', 4: single } of xml.matchAll(TAG)) {
    const [opens, closes] = [closing === '', closing !== '' || single !== ''];
    if (opens) from = index + whole.length;
    const inner = closes && !opens ? xml.slice(from, index) : '';
    if (name === 'rPh') isSpoken = opens && !closes;
    else if (name === 'row' && opens) [row, column] = [Number(attribute(attributes, 'r') ?? row + 2) - 1, -1];
    else if (name === 'c' && opens) {
      const letters = /^[A-Za-z]+/.exec(attribute(attributes, 'r') ?? '')?.[0];
      column = letters === undefined ? column + 1 : columnPlace(letters);
      [text, type, formula] = ['', attribute(attributes, 't') ?? 'n', undefined];
    } else if (name === 'f' && closes) formula = plainText(inner);
    else if ((name === 'v' || (name === 't' && !isSpoken)) && closes) text += inner;
    if (name === 'c' && closes) cells.push({ row, column, value: valueOf(type, text, shared), formula });
  }
  return cells;
}

/** Texts that cells share (ECMA-376, part 1, 18.4.9), in their order. */
export function sharedTexts(xml: string): string[] {
  const texts: string[] = [];
  let [isSpoken, from] = [false, 0];
  for (const { index, 0: whole, 1: closing, 2: name, 4: single } of xml.matchAll(TAG)) {
    const [opens, closes] = [closing === '', closing !== '' || single !== ''];
    if (name === 'si' && opens) texts.push('');
    else if (name === 'rPh') isSpoken = opens && !closes;
    else if (name === 't' && opens) from = index + whole.length;
    else if (name === 't' && !isSpoken && texts.length > 0) texts.push(`${texts.pop()!}${xml.slice(from, index)}`);
  }
  return texts.map(cellText);
}

function valueOf(type: string, text: string, shared: readonly string[]): CellValue {
  switch (type) {
    case 's': return shared[Number(text)] ?? null;
    case 'b': return text === '' ? null : text === '1' || text === 'true';
    case 'n': return text === '' || Number.isNaN(Number(text)) ? null : Number(text);
    default: return text === '' ? null : cellText(text);
  }
}

/** The text of a cell, in which the format may write any sign by its number (ECMA-376, part 1, 22.9.2.19). */
function cellText(text: string): string {
  return plainText(text).replace(/_x([\da-f]{4})_/gi, (_sign, hex: string) => String.fromCharCode(parseInt(hex, 16)));
}

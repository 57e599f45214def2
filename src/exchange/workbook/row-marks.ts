import { columnPlace } from '../../schedule/index.ts';
import { attribute, attributesOf } from './xml-elements.ts';

/** What a sheet says of rows and columns beside their cells; places from 0. */
export interface RowMarks {
  /** Rows that are hidden, by hand, by a filter or by a height of 0. */
  readonly hiddenRows: ReadonlySet<number>;
  readonly hiddenColumns: ReadonlySet<number>;
  /** Rows with a cell that is struck through as a whole. */
  readonly struckRows: ReadonlySet<number>;
}

const MOST_COLUMNS = 16_384;

/**
 * Finds what is hidden and struck through on a sheet by its formats (ECMA-376, part 1, 18.3.1.13, 18.3.1.73, 18.4.10).
 * @param xml the part of the sheet.
 * @param styles the part of the styles; empty where there is none.
 */
export function rowMarks(xml: string, styles: string): RowMarks {
  const hiddenRows = new Set<number>();
  let row = 0;
  for (const attributes of attributesOf(xml, 'row')) {
    row = Number(attribute(attributes, 'r') ?? row + 1);
    if (isHidden(attributes, 'ht')) hiddenRows.add(row - 1);
  }
  const hiddenColumns = new Set<number>();
  for (const attributes of attributesOf(xml, 'col')) {
    if (!isHidden(attributes, 'width')) continue;
    const last = Math.min(Number(attribute(attributes, 'max')), MOST_COLUMNS);
    for (let column = Number(attribute(attributes, 'min')); column <= last; column += 1) hiddenColumns.add(column - 1);
  }
  return { hiddenRows, hiddenColumns, struckRows: struckRows(xml, struckFormats(styles)) };
}

function isHidden(attributes: string, size: string): boolean {
  const hidden = attribute(attributes, 'hidden');
  return hidden === '1' || hidden === 'true' || Number(attribute(attributes, size) ?? 1) === 0;
}

/** Numbers of the formats of cells whose font is struck through. */
function struckFormats(styles: string): ReadonlySet<string> {
  const fonts = elements(part(styles, 'fonts'), 'font').map(isStruck);
  const formats = attributesOf(part(styles, 'cellXfs'), 'xf').map((attributes) => fonts[Number(attribute(attributes, 'fontId'))] === true);
  return new Set(formats.flatMap((is, place) => is ? [String(place)] : []));
}

function struckRows(xml: string, formats: ReadonlySet<string>): Set<number> {
  const rows = new Set<number>();
  if (formats.size === 0) return rows;
  for (const { 0: tag, 1: attributes = '' } of xml.matchAll(/<(?:\w+:)?c(\s[^<>]*)>/g)) {
    if (tag.endsWith('/>')) continue;
    const place = /^([A-Z]+)(\d+)$/.exec(attribute(attributes, 'r') ?? '');
    if (place === null || columnPlace(place[1]!) >= MOST_COLUMNS) continue;
    if (formats.has(attribute(attributes, 's') ?? '')) rows.add(Number(place[2]) - 1);
  }
  return rows;
}

function isStruck(xml: string): boolean {
  return attributesOf(xml.replace(/<((?:\w+:)?strike)\/>/g, '<$1 />'), 'strike').some((attributes) =>
    !/^(?:0|false)$/.test(attribute(attributes, 'val') ?? '1'));
}

/** What stands in the first element of a name. */
function part(xml: string, name: string): string {
  return new RegExp(`<(?:\\w+:)?${name}\\b[^<>]*>([\\s\\S]*?)</(?:\\w+:)?${name}>`).exec(xml)?.[1] ?? '';
}

/** Each element of a name with what stands in it. */
function elements(xml: string, name: string): string[] {
  return [...xml.matchAll(new RegExp(`<(?:\\w+:)?${name}(?:\\s[^<>]*)?(?:/>|>([\\s\\S]*?)</(?:\\w+:)?${name}>)`, 'g'))]
    .map(([, inner = '']) => inner);
}

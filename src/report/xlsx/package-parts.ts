import type { Zippable } from 'fflate';
import { columnLetters } from '../../schedule/index.ts';
import { escaped } from '../html.ts';
import type { CellStyles } from './cell-styles.ts';

/**
 * One cell of a worksheet: a value, a formula with the value that it had when the file was written, or both left out.
 */
export interface CellToWrite {
  readonly value?: string | number | boolean | null;
  /** A formula without its equals sign. */
  readonly formula?: string;
  /** Number of a style of the workbook. */
  readonly style: number;
}

/** One worksheet. */
export interface Worksheet {
  readonly name: string;
  readonly rows: readonly (readonly CellToWrite[])[];
  /** Widths of the columns, in characters. */
  readonly widths: readonly number[];
  /** How many rows and columns at the start stay in view. */
  readonly frozen?: { readonly rows: number; readonly columns: number };
  readonly isHidden?: true;
  /** Places of rows that are hidden, from 0. */
  readonly hidden?: ReadonlySet<number>;
  /** Places of columns that are hidden, from 0. */
  readonly hiddenColumns?: ReadonlySet<number>;
  readonly conditions?: readonly Condition[];
}

/** A look of cells as long as a condition holds of their row. */
export interface Condition {
  /** The cells: `F2:F90`. */
  readonly range: string;
  /** The condition for the first of them, without its equals sign. */
  readonly formula: string;
  /** Number of a conditional look of the workbook. */
  readonly style: number;
}

/** A range with a name. */
export interface DefinedName {
  readonly name: string;
  /** Range with its sheet: `Devices!$A$2:$A$9`. */
  readonly range: string;
}

const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const DOCUMENT = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** The parts of a workbook file (ECMA-376, part 1, SpreadsheetML), ready to be packed. */
export function packageParts(
  sheets: readonly Worksheet[], names: readonly DefinedName[], styles: CellStyles
): Zippable {
  const texts: Record<string, string> = {
    '[Content_Types].xml': contentTypes(sheets.length),
    '_rels/.rels': relationships([['officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml': workbookXml(sheets, names),
    'xl/_rels/workbook.xml.rels': relationships([
      ...sheets.map((_sheet, index): [string, string] => ['worksheet', `worksheets/sheet${index + 1}.xml`]), [
        'styles', 'styles.xml',
      ],
    ]),
    'xl/styles.xml': DECLARATION + styles.xml(),
    ...Object.fromEntries(sheets.map((sheet, index) => [
      `xl/worksheets/sheet${index + 1}.xml`, worksheetXml(sheet, index === 0),
    ])),
  };
  const encoder = new TextEncoder();
  return Object.fromEntries(Object.entries(texts).map(([path, text]) => [path, encoder.encode(text)]));
}

/** A title as the name of a worksheet, which is short and lacks some signs. */
export function worksheetName(title: string): string {
  return title.replace(/[\\/?*[\]:]/g, ' ').slice(0, 31);
}

function contentTypes(count: number): string {
  const part = (path: string, type: string) => `<Override PartName="${path}" ContentType="${TYPE}.${type}+xml"/>`;
  const sheets = Array.from(
    { length: count }, (_sheet, index) => part(`/xl/worksheets/sheet${index + 1}.xml`, 'worksheet')
  ).join('');
  return `${DECLARATION}<Types xmlns="${PACKAGE}/content-types">`
    + '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>'
    + '<Default Extension="xml" ContentType="application/xml"/>'
    + `${part('/xl/workbook.xml', 'sheet.main')}${part('/xl/styles.xml', 'styles')}${sheets}</Types>`;
}

function relationships(targets: readonly (readonly [type: string, target: string])[]): string {
  const list = targets.map((
    [type, target], index
  ) => `<Relationship Id="rId${index + 1}" Type="${DOCUMENT}/${type}" Target="${target}"/>`);
  return `${DECLARATION}<Relationships xmlns="${PACKAGE}/relationships">${list.join('')}</Relationships>`;
}

function workbookXml(sheets: readonly Worksheet[], names: readonly DefinedName[]): string {
  const list = sheets.map(({ name, isHidden }, index) =>
    `<sheet name="${escaped(name)}" sheetId="${index + 1}"${isHidden === true ? ' state="hidden"' : ''} r:id="rId${index + 1}"/>`);
  const defined =
    names.map(({ name, range }) => `<definedName name="${escaped(name)}">${escaped(range)}</definedName>`);
  return `${DECLARATION}<workbook xmlns="${MAIN}" xmlns:r="${DOCUMENT}"><sheets>${list.join('')}</sheets>`
    + `${defined.length === 0 ? '' : `<definedNames>${defined.join('')}</definedNames>`}<calcPr calcId="0" fullCalcOnLoad="1"/></workbook>`;
}

function worksheetXml(
  { rows, widths, frozen, hidden, hiddenColumns, conditions = [] }: Worksheet, isFirst: boolean
): string {
  const pane = frozen === undefined
    ? ''
    : `<pane${frozen.columns > 0 ? ` xSplit="${frozen.columns}"` : ''} ySplit="${frozen.rows}"`
    + ` topLeftCell="${columnLetters(frozen.columns)}${frozen.rows + 1}" activePane="${frozen.columns > 0 ? 'bottomRight' : 'bottomLeft'}" state="frozen"/>`;
  const columns =
    widths.map((width, index) => `<col min="${index + 1}" max="${index + 1}" width="${width}" customWidth="1"${hiddenColumns?.has(index) === true ? ' hidden="1"' : ''}/>`);
  const lines = rows.map((cells, row) =>
    `<row r="${row + 1}"${hidden?.has(row) === true ? ' hidden="1"' : ''}>${cells.map((cell, place) => cellXml(cell, `${columnLetters(place)}${row + 1}`)).join('')}</row>`);
  return `${DECLARATION}<worksheet xmlns="${MAIN}"><sheetViews><sheetView${isFirst ? ' tabSelected="1"' : ''} workbookViewId="0">${pane}</sheetView></sheetViews>`
    + `${columns.length === 0 ? '' : `<cols>${columns.join('')}</cols>`}<sheetData>${lines.join('')}</sheetData>`
    + conditions.map(({ range, formula, style }, place) => `<conditionalFormatting sqref="${range}">`
      + `<cfRule type="expression" dxfId="${style}" priority="${place + 1}"><formula>${escaped(formula)}</formula></cfRule></conditionalFormatting>`).join('')
    + '<pageSetup orientation="landscape" fitToHeight="0"/></worksheet>';
}

function cellXml({ value = null, formula, style }: CellToWrite, place: string): string {
  const opening = `<c r="${place}" s="${style}"`;
  const inner = formula === undefined ? '' : `<f>${escaped(formula)}</f>`;
  if (value === null) return formula === undefined ? `${opening}/>` : `${opening} t="str">${inner}<v></v></c>`;
  if (typeof value === 'number') return `${opening}>${inner}<v>${value}</v></c>`;
  if (typeof value === 'boolean') return `${opening} t="b">${inner}<v>${value ? 1 : 0}</v></c>`;
  if (formula !== undefined) return `${opening} t="str">${inner}<v>${escaped(value)}</v></c>`;
  return `${opening} t="inlineStr"><is><t xml:space="preserve">${cellText(value)}</t></is></c>`;
}

/** A text as a cell has it: what looks like an escape of the format (ECMA-376, part 1, 22.9.2.19) is kept as it is. */
function cellText(text: string): string {
  return escaped(text.replace(/_(?=x[\da-f]{4}_)/gi, '_x005F_'));
}

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
  readonly choices?: readonly Choices[];
  /** Name of the table that the rows are, under headings in the first row; without one they are none. */
  readonly table?: string;
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

/** What may be chosen in cells. */
export interface Choices {
  /** The cells: `F2:F90`. */
  readonly range: string;
  /** The choices as the format has them: a list in quotes, or a range. */
  readonly list: string;
  /** Whether something else may be entered too. */
  readonly isOpen?: true;
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
    '[Content_Types].xml': contentTypes(sheets),
    '_rels/.rels': relationships([['officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml': workbookXml(sheets, names),
    'xl/_rels/workbook.xml.rels': relationships([
      ...sheets.map((_sheet, index): [string, string] => ['worksheet', `worksheets/sheet${index + 1}.xml`]), [
        'styles', 'styles.xml',
      ],
    ]),
    'xl/styles.xml': DECLARATION + styles.xml(),
    ...Object.fromEntries(sheets.flatMap((sheet, index) => sheet.table === undefined ? [] : [
      [`xl/tables/table${index + 1}.xml`, tableXml(sheet, sheet.table, index + 1)],
      [`xl/worksheets/_rels/sheet${index + 1}.xml.rels`, relationships([['table', `../tables/table${index + 1}.xml`]])],
    ])),
    ...Object.fromEntries(sheets.map((sheet, index) => [
      `xl/worksheets/sheet${index + 1}.xml`, worksheetXml(sheet, index === 0, styles),
    ])),
  };
  const encoder = new TextEncoder();
  return Object.fromEntries(Object.entries(texts).map(([path, text]) => [path, encoder.encode(text)]));
}

/** A title as the name of a worksheet, which is short and lacks some signs. */
export function worksheetName(title: string): string {
  return title.replace(/[\\/?*[\]:]/g, ' ').slice(0, 31);
}

function contentTypes(all: readonly Worksheet[]): string {
  const part = (path: string, type: string) => `<Override PartName="${path}" ContentType="${TYPE}.${type}+xml"/>`;
  const sheets = Array.from(
    { length: all.length }, (_sheet, index) => part(`/xl/worksheets/sheet${index + 1}.xml`, 'worksheet')
      + (all[index]!.table === undefined ? '' : part(`/xl/tables/table${index + 1}.xml`, 'table'))
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
  // The headings, and what names a row, stand on every page that is printed.
  const titles = sheets.flatMap(({ name, frozen }, index) => {
    if (frozen === undefined || frozen.rows === 0) return [];
    const own = `'${name.replaceAll("'", "''")}'!`;
    const range = `${own}$A:$${columnLetters(frozen.columns - 1)},${own}$1:$${frozen.rows}`;
    return [`<definedName name="_xlnm.Print_Titles" localSheetId="${index}">${escaped(range)}</definedName>`];
  });
  const defined = [
    ...titles, ...names.map(({ name, range }) => `<definedName name="${escaped(name)}">${escaped(range)}</definedName>`),
  ];
  return `${DECLARATION}<workbook xmlns="${MAIN}" xmlns:r="${DOCUMENT}"><sheets>${list.join('')}</sheets>`
    + `${defined.length === 0 ? '' : `<definedNames>${defined.join('')}</definedNames>`}<calcPr calcId="0" fullCalcOnLoad="1"/></workbook>`;
}

function worksheetXml(
  { name, rows, widths, frozen, hidden, hiddenColumns, conditions = [], choices = [], table }: Worksheet,
  isFirst: boolean, styles: CellStyles,
): string {
  const pane = frozen === undefined
    ? ''
    : `<pane${frozen.columns > 0 ? ` xSplit="${frozen.columns}"` : ''} ySplit="${frozen.rows}"`
    + ` topLeftCell="${columnLetters(frozen.columns)}${frozen.rows + 1}" activePane="${frozen.columns > 0 ? 'bottomRight' : 'bottomLeft'}" state="frozen"/>`;
  const width = widths.reduce((all, each, place) => hiddenColumns?.has(place) === true ? all : all + each, 0);
  const across = Math.max(1, Math.ceil(width / WIDEST_PAGE));
  const columns =
    widths.map((width, index) => `<col min="${index + 1}" max="${index + 1}" width="${width}" customWidth="1"${hiddenColumns?.has(index) === true ? ' hidden="1"' : ''}/>`);
  const lines = rows.map((cells, row) =>
    `<row r="${row + 1}"${hidden?.has(row) === true ? ' hidden="1"' : ''}${heightOf(cells, widths, styles)}>${cells.map((cell, place) => cellXml(cell, `${columnLetters(place)}${row + 1}`)).join('')}</row>`);
  return `${DECLARATION}<worksheet xmlns="${MAIN}" xmlns:r="${DOCUMENT}"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><sheetViews><sheetView${isFirst ? ' tabSelected="1"' : ''} workbookViewId="0">${pane}</sheetView></sheetViews>`
    + `${columns.length === 0 ? '' : `<cols>${columns.join('')}</cols>`}<sheetData>${lines.join('')}</sheetData>`
    + conditions.map(({ range, formula, style }, place) => `<conditionalFormatting sqref="${range}">`
      + `<cfRule type="expression" dxfId="${style}" priority="${place + 1}"><formula>${escaped(formula)}</formula></cfRule></conditionalFormatting>`).join('')
    + (choices.length === 0 ? '' : `<dataValidations count="${choices.length}">${choices.map(choicesXml).join('')}</dataValidations>`)
    + '<pageMargins left="0.5" right="0.5" top="0.6" bottom="0.6" header="0.3" footer="0.3"/>'
    // A4; as many pages down as it takes, and as few across as leave a type that can be read.
    + `<pageSetup paperSize="9" orientation="landscape" fitToWidth="${across}" fitToHeight="0"/>`
    + `<headerFooter><oddFooter>${escaped(`&L${name.replaceAll('&', '&&')}&R&P / &N`)}</oddFooter></headerFooter>`
    + `${table === undefined ? '' : '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>'}</worksheet>`;
}

function choicesXml({ range, list, isOpen }: Choices): string {
  return `<dataValidation type="list" allowBlank="1"${isOpen === true ? '' : ' showErrorMessage="1"'} sqref="${range}">`
    + `<formula1>${escaped(list)}</formula1></dataValidation>`;
}

/** Widest that columns are together on an A4 page [characters]: type of 10 points becomes one of 8 there. */
const WIDEST_PAGE = 175;
/** Height of a line of text of 10 points [pt]. */
const LINE = 13;
/** Highest row that the format allows [pt]. */
const HIGHEST = 409;

/** Height of a row whose texts wrap, so that all of them can be read; nothing for one of a single line. */
function heightOf(cells: readonly CellToWrite[], widths: readonly number[], styles: CellStyles): string {
  const lines = cells.map(({ value, style }, place) => typeof value !== 'string' || !styles.wraps(style) ? 1
    : value.split('\n').reduce((all, text) => all + linesOf(text, widths[place] ?? 8), 0));
  const most = Math.max(1, ...lines);
  return most === 1 ? '' : ` ht="${Math.min(HIGHEST, most * LINE + 2)}" customHeight="1"`;
}

/** How many lines a text takes in a column: words stay whole, but those that are wider than it. */
function linesOf(text: string, width: number): number {
  let [lines, left] = [1, width];
  for (const word of text.split(' ')) {
    if (word.length > left && left < width) [lines, left] = [lines + 1, width];
    lines += Math.ceil(word.length / width) - 1;
    left -= (word.length % width) + 1;
  }
  return Math.max(1, lines);
}

/** The rows of a worksheet as a table, with its headings as they stand in the first row. */
function tableXml({ rows }: Worksheet, name: string, id: number): string {
  const [headings] = rows;
  const range = `A1:${columnLetters(headings!.length - 1)}${rows.length}`;
  return `${DECLARATION}<table xmlns="${MAIN}" id="${id}" name="${name}" displayName="${name}" ref="${range}">`
    + `<autoFilter ref="${range}"/><tableColumns count="${headings!.length}">`
    + headings!.map(({ value }, place) => `<tableColumn id="${place + 1}" name="${escaped(String(value))}"/>`).join('')
    + '</tableColumns><tableStyleInfo showFirstColumn="0" showLastColumn="0" showRowStripes="0" showColumnStripes="0"/></table>';
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

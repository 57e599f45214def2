import { zipSync, type Zippable } from 'fflate';

/** A cell as it is written: a text, a number, yes or no, a day, an error, a formula without a result, nothing. */
export type MadeCell = string | number | boolean | Date | { readonly error: string } | { readonly formula: string }
  | null;

export interface MadeSheet {
  readonly rows?: readonly (readonly MadeCell[])[];
  /** Ranges of merged cells, as A1:D1. */
  readonly merged?: readonly string[];
  readonly state?: 'hidden' | 'veryHidden';
  /** Numbers of rows and of columns, from 1, that are hidden, and of rows whose texts are struck through. */
  readonly hiddenRows?: readonly number[];
  readonly hiddenColumns?: readonly number[];
  readonly struckRows?: readonly number[];
  /** The rows as they stand in the part, for what no program writes. */
  readonly xml?: string;
}

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const DAY_MS = 86_400_000;
/** Day 0 of a workbook, from 1 March 1900 on: ISO/IEC 29500-1, 18.17.4.1. */
const DAY_ZERO = Date.UTC(1899, 11, 30);

/**
 * Makes a workbook of sheets by name, as small as ISO/IEC 29500-1 allows: texts shared, days as numbers with a format
 * of days (14).
 * @param more parts that are added or replaced.
 */
export function makeWorkbook(
  sheets: Readonly<Record<string, MadeSheet>>, more: Zippable = {}
): Uint8Array<ArrayBuffer> {
  const shared: string[] = [];
  const entries = Object.entries(sheets);
  const parts = Object.fromEntries(entries.map(([, sheet], index) => [
    `xl/worksheets/sheet${index + 1}.xml`, bytes(sheetXml(sheet, shared)),
  ]));
  const list = entries.map(([name, { state }], index) =>
    `<sheet name="${escaped(name)}" sheetId="${index + 1}"${state === undefined ? '' : ` state="${state}"`} r:id="rId${index + 1}"/>`).join('');
  const relations = entries.map((_, index) => relation(index + 1, 'worksheet', `worksheets/sheet${index + 1}.xml`))
    .join('');
  return zipSync({
    'xl/workbook.xml': bytes(`<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${list}</sheets></workbook>`),
    'xl/_rels/workbook.xml.rels': bytes('<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">'
      + `${relations}${relation(98, 'sharedStrings', 'sharedStrings.xml')}${relation(99, 'styles', 'styles.xml')}</Relationships>`),
    'xl/styles.xml': bytes(
      `<styleSheet xmlns="${MAIN}"><fonts count="2"><font><sz val="10"/></font><font><strike/><sz val="10"/></font></fonts>`
      + '<cellXfs count="3"><xf numFmtId="0" fontId="0"/><xf numFmtId="14" fontId="0" applyNumberFormat="1"/><xf numFmtId="0" fontId="1"/></cellXfs></styleSheet>'
    ),
    ...parts,
    'xl/sharedStrings.xml': bytes(`<sst xmlns="${MAIN}">${shared.map((text) => `<si><t xml:space="preserve">${escaped(text)}</t></si>`).join('')}</sst>`),
    ...more,
  });
}

function sheetXml(
  { rows = [], merged = [], hiddenRows = [], hiddenColumns = [], struckRows = [], xml }: MadeSheet, shared: string[],
): string {
  const data = xml ?? rows.map((cells, row) => {
    const written = cells.map((cell, column) =>
      cellXml(cell, `${String.fromCharCode(65 + column)}${row + 1}`, shared, struckRows.includes(row + 1))).join('');
    return `<row r="${row + 1}"${hiddenRows.includes(row + 1) ? ' hidden="1"' : ''}>${written}</row>`;
  }).join('');
  const columns = hiddenColumns.map((each) => `<col min="${each}" max="${each}" width="8" hidden="1"/>`).join('');
  const merges = merged.length === 0
    ? ''
    : `<mergeCells count="${merged.length}">${merged.map((range) => `<mergeCell ref="${range}"/>`).join('')}</mergeCells>`;
  return `<worksheet xmlns="${MAIN}">${columns === '' ? '' : `<cols>${columns}</cols>`}<sheetData>${data}</sheetData>${merges}</worksheet>`;
}

function cellXml(cell: MadeCell, place: string, shared: string[], isStruck: boolean): string {
  const style = isStruck ? ' s="2"' : '';
  if (cell === null) return `<c r="${place}" s="0"/>`;
  if (typeof cell === 'number') return `<c r="${place}"${style}><v>${cell}</v></c>`;
  if (typeof cell === 'boolean') return `<c r="${place}" t="b"><v>${Number(cell)}</v></c>`;
  if (cell instanceof Date) return `<c r="${place}" s="1"><v>${(cell.getTime() - DAY_ZERO) / DAY_MS}</v></c>`;
  if (typeof cell === 'string') return `<c r="${place}"${style} t="s"><v>${shared.push(cell) - 1}</v></c>`;
  return 'error' in cell
    ? `<c r="${place}" t="e"><v>${cell.error}</v></c>`
    : `<c r="${place}"><f>${escaped(cell.formula)}</f></c>`;
}

const bytes = (text: string) => new TextEncoder().encode(text);
const relation = (id: number, type: string, target: string) =>
  `<Relationship Id="rId${id}" Type="${OFFICE}/${type}" Target="${target}"/>`;
const escaped = (text: string) => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/"/g, '&quot;');

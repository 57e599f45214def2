import fc from 'fast-check';
import {
  inputColumns, type Cells, type CellValue, type InputColumn, type SheetName,
} from '../../src/schedule/index.ts';

/** Texts that have broken readers of CSV and JSON before. */
const NASTY = [
  '', ' ', "'", "''", '"', '""', '","', ';', '\t', '\n', '\r', '\r\n', 'a\nb', 'a\r\nb', 'x\r', '=1+1', '@SUM(A1)',
  '+49', '-1',
  "'=1", '＝1', '\ufeff', '\u2028', 'Ω²', '💡', '__proto__', 'constructor', '1,200', '#REF!', '\u202e', 'NULL', 'true',
];

const text = fc.oneof(
  fc.constantFrom(...NASTY),
  fc.array(fc.constantFrom(...NASTY, 'a', 'B', '7'), { maxLength: 5 }).map((parts) => parts.join('')),
  fc.string({ unit: 'grapheme' }),
).filter((value) => value !== '' && !value.includes('\0'));

function number(column: InputColumn): fc.Arbitrary<number> {
  const { min, above, max = Number.MAX_SAFE_INTEGER } = column;
  if (column.kind === 'integer') return fc.integer({ min: min ?? -max, max });
  return fc.double({ min: min ?? above ?? -max, max, minExcluded: above !== undefined, noNaN: true })
    .map((value) => value + 0);
}

function cell(column: InputColumn): fc.Arbitrary<CellValue> {
  switch (column.kind) {
    case 'boolean': return fc.boolean();
    case 'choice': return fc.constantFrom(...column.choices!);
    case 'reference': return text.map((value) => value.trim()).filter((value) => value !== '');
    case 'text': return column.tag === true ? text.map((value) => value.trim()).filter((value) => value !== '') : text;
    default: return fc.oneof(number(column), number(column), fc.constantFrom('=3*4', '=1/8+2', '=MAX(1,2)'));
  }
}

/** Rows of a sheet with values that its columns allow; the last one is not blank. */
export function sheetRows(sheet: SheetName): fc.Arbitrary<Cells[]> {
  const columns = Object.fromEntries(inputColumns(sheet).map((column) => [column.key, cell(column)]));
  return fc.array(fc.record(columns, { requiredKeys: [] }) as fc.Arbitrary<Cells>, { maxLength: 6 })
    .map((rows) => rows.slice(0, rows.findLastIndex((cells) => Object.keys(cells).length > 0) + 1));
}

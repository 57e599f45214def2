import { columnLetters } from '../../schedule/index.ts';
import { CellStyles } from '../xlsx/cell-styles.ts';
import { packageParts, worksheetName, type CellToWrite, type Worksheet } from '../xlsx/package-parts.ts';
import type { Words } from '../../words/index.ts';
import { billTables, type BillTable } from './bill-table.ts';
import type { Bill } from './bill.ts';

/** Widest column, in characters. */
const WIDEST = 60;

/**
 * A bill as a workbook (ECMA-376): by panel, in all, and what is more or less than in an older one, a worksheet each.
 * Amounts are formulas, so that a price that is entered counts.
 */
export async function billXlsx(
  bill: Bill, older: Bill | undefined, words: Words,
): Promise<Uint8Array> {
  const { zipSync } = await import('fflate');
  const styles = new CellStyles();
  const sheets = Object.values(billTables(bill, older, words)).map((table) => worksheetOf(table, styles));
  return zipSync(packageParts(sheets, [], styles), { mtime: '1980-01-02' });
}

function worksheetOf({ title, headings, rows, product }: BillTable, styles: CellStyles): Worksheet {
  const heading = styles.number({ font: 'heading', wraps: true });
  const usual = styles.number({ wraps: true });
  const figure = styles.number({});
  const money = styles.number({ format: '0.00' });
  const computed = styles.number({ format: '0.00', isComputed: true });
  const [quantity, price, amount] = product ?? [];
  const cellOf = (value: string | number | null, column: number, row: number): CellToWrite => {
    if (column === price) return { value, style: money };
    if (column !== amount) return { value, style: typeof value === 'number' ? figure : usual };
    const [count, each] = [quantity!, price!].map((place) => `${columnLetters(place)}${row + 2}`);
    return { value, formula: `IF(OR(${count}="",${each}=""),"",${count}*${each})`, style: computed };
  };
  return {
    name: worksheetName(title), frozen: { rows: 1, columns: 0 },
    widths: headings.map((text, column) =>
      Math.min(WIDEST, Math.max(text.length, ...rows.map((row) => String(row[column] ?? '').length)) + 2)),
    rows: [
      headings.map((value) => ({ value, style: heading })),
      ...rows.map((row, place) => row.map((value, column) => cellOf(value, column, place))),
    ],
  };
}

import { zipSync } from 'fflate';
import { readSheet } from 'read-excel-file/universal';
import type { Words } from '../../words/index.ts';
import { unreadable, type Unreadable } from '../problem.ts';
import { isStruckThroughout, unstruck } from '../marked-text.ts';
import { fillMerged } from './fill-merged.ts';
import { withLooks } from './rich-text.ts';
import { rowMarks, type RowMarks } from './row-marks.ts';
import { lastRow, usedRange } from './used-range.ts';

/** Rows of cells from the first row of a sheet on, empty ones included, and which are hidden or struck through. */
export interface SheetRows extends RowMarks {
  readonly ok: true;
  readonly rows: readonly (readonly unknown[])[];
}

/** How many cells the table of a sheet may have, from its first cell to its last, and how many rows. */
const [MOST_CELLS, MOST_ROWS] = [2_000_000, 1_048_576];
const SHARED = 'xl/sharedStrings.xml';

/**
 * Reads the cells of a sheet: texts, numbers, yes or no, dates; `null` where there is none, where a formula has no
 * result, and in all but the first of merged cells, unless a text is merged downwards. What is struck through within a
 * text, raised or lowered is so in its signs.
 * @param parts the parts of the workbook that matter to this sheet, by path.
 * @param path which of the parts is the sheet.
 * @param place place of the sheet among all, from 1.
 */
export async function readRows(
  parts: Readonly<Record<string, Uint8Array>>, path: string, place: number, words: Words,
): Promise<SheetRows | Unreadable> {
  const xml = new TextDecoder().decode(parts[path]);
  const { rows, columns } = usedRange(xml);
  if (rows * columns > MOST_CELLS || lastRow(xml) > MOST_ROWS) {
    return unreadable('sheet-too-large', '', words.say(
      'The sheet reaches over {rows} rows and {columns} columns; at most {most} million cells are read. Delete what stands far from the list, or copy the list and paste it.',
      { rows: Math.max(rows, lastRow(xml)), columns, most: MOST_CELLS / 1e6 }));
  }
  try {
    // Not packed, its parts are read without workers from texts, which a strict Content-Security-Policy forbids.
    const text = (name: string) => parts[name] === undefined ? '' : new TextDecoder().decode(parts[name]);
    const looked = Object.fromEntries([path, SHARED].filter((name) => parts[name] !== undefined)
      .map((name) => [name, new TextEncoder().encode(withLooks(text(name)))]));
    const { buffer } = zipSync({ ...parts, ...looked }, { level: 0 });
    const cells: unknown[][] = await readSheet(buffer, place);
    const marks = rowMarks(xml, text('xl/styles.xml'));
    const struckRows = new Set([...marks.struckRows, ...takeStruck(cells)]);
    fillMerged(cells, xml);
    return { ok: true, rows: cells, ...marks, struckRows };
  } catch {
    // What the reader throws names its own variables, which help nobody who has the workbook.
    return unreadable('not-a-workbook', '', words.say(
      'The sheet is damaged or incomplete and cannot be read. Save the workbook anew as .xlsx, or copy the list and paste it.'));
  }
}

/** Takes the strokes off texts that are struck through as a whole. @returns places of their rows. */
function takeStruck(cells: readonly unknown[][]): number[] {
  return [...cells.entries()].flatMap(([row, texts]) => texts.flatMap((text, column) => {
    if (typeof text !== 'string' || !isStruckThroughout(text)) return [];
    texts[column] = unstruck(text);
    return [row];
  }));
}

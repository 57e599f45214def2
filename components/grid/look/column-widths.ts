import { cellLook } from './cell-look.ts';
import { idAt, type GridModel } from '../grid-model.ts';
import { isNumeric, isStatus, type Column } from '../../../src/schedule/index.ts';
import type { Words } from '../../../src/words/index.ts';

/** Rows whose texts are measured. */
const SAMPLE = 150;
/**
 * Bounds of a width that follows from texts, and room beside the text for padding, line and marks, in sizes of the
 * font.
 */
const NARROWEST = 3.4;
const WIDEST = 10;
/** How many signs of a text are in view at that width; where most texts begin alike, twice as many are needed. */
const SIGNS = 16;
/** Most that a column is widened to by itself where a person asks for all of its texts. */
const MOST = 60;
const ROOM = 1.3;
/** Share of the texts that must fit; a few long notes do not push the figures off the screen. */
const FITTING = 0.9;

/**
 * Width [px] of columns from their headings, which may take two lines, and a sample of their texts, spread over all
 * rows.
 * @param font the font of the cells, as CSS writes it.
 * @param size its size [px].
 * @param fit `whole` shows every text, of all rows, from end to end.
 */
export function columnWidths(
  model: GridModel, columns: readonly Column[], font: string, size: number, fit: 'usual' | 'whole' = 'usual',
): number[] {
  const pen = document.createElement('canvas').getContext('2d');
  const measure = (text: string): number => {
    if (pen === null) return text.length * size * 0.5;
    pen.font = font;
    return pen.measureText(text).width;
  };
  const step = fit === 'whole' ? 1 : Math.max(1, Math.floor(model.lines.length / SAMPLE));
  const ids = model.lines.map((_line, index) => (index % step === 0 ? idAt(model, index) : -1)).filter((id) => id >= 0);
  return columns.map((column) => {
    const texts = ids.map((id) => cellLook(model, id, column, []).text).filter((text) => text !== '');
    const widths = texts.map((text) => measure(fit === 'whole' ? text : text.slice(0, 60))).sort((a, b) => a - b);
    // A status is read whole, in whatever language.
    const isWhole = fit === 'whole' || isNumeric(column) || isStatus(column);
    const fitting = widths[isWhole ? widths.length - 1 : Math.ceil(widths.length * FITTING) - 1] ?? 0;
    const room = isStatus(column) ? ROOM + 2.6 : ROOM;
    const widest = fit === 'whole' || isStatus(column) ? MOST : beginAlike(texts) ? 2 * WIDEST : WIDEST;
    const texted = Math.min(widest * size, fitting + room * size);
    return Math.round(Math.max(NARROWEST * size, headingWidth(column, model.words, measure) + 1.25 * size, texted));
  });
}

/** Whether texts cannot be told apart by what is in view of them, as rooms behind the name of their storey. */
function beginAlike(texts: readonly string[]): boolean {
  return 2 * new Set(texts.map((text) => text.slice(0, SIGNS))).size < new Set(texts).size;
}

function headingWidth(column: Column, words: Words, measure: (text: string) => number): number {
  return Math.max(inTwoLines(words.text(column.title), measure) * 0.95, measure(`AA ${column.unit ?? ''}`) * 0.85);
}

/** Least width of a title that is parted once between words. */
function inTwoLines(title: string, measure: (text: string) => number): number {
  const parts = title.split(' ');
  const width = (...of: readonly string[]) => measure(of.join(' '));
  return Math.min(width(title), ...parts.slice(1).map((_part, at) =>
    Math.max(width(...parts.slice(0, at + 1)), width(...parts.slice(at + 1)))));
}

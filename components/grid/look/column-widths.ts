import { cellLook } from './cell-look.ts';
import { idAt, isStatus, type GridModel } from '../grid-model.ts';
import { isNumeric, type Column } from '../../../src/schedule/index.ts';
import type { Words } from '../../../src/words/index.ts';

/** Rows whose texts are measured. */
const SAMPLE = 150;
/**
 * Bounds of a width that follows from texts, and room beside the text for padding, line and marks, in sizes of the
 * font.
 */
const NARROWEST = 3.8;
const WIDEST = 15;
const ROOM = 1.5;
/** Share of the texts that must fit; a few long notes do not push the figures off the screen. */
const FITTING = 0.9;

/**
 * Width [px] of each column from its heading and a sample of its texts, spread over all rows.
 * @param font the font of the cells, as CSS writes it.
 * @param size its size [px].
 */
export function columnWidths(model: GridModel, font: string, size: number): number[] {
  const pen = document.createElement('canvas').getContext('2d');
  const measure = (text: string): number => {
    if (pen === null) return text.length * size * 0.5;
    pen.font = font;
    return pen.measureText(text).width;
  };
  const step = Math.max(1, Math.floor(model.lines.length / SAMPLE));
  const ids = model.lines.map((_line, index) => (index % step === 0 ? idAt(model, index) : -1)).filter((id) => id >= 0);
  return model.columns.map((column) => {
    const texts = ids.map((id) => cellLook(model, id, column, []).text).filter((text) => text !== '');
    const widths = texts.map((text) => measure(text.slice(0, 60))).sort((a, b) => a - b);
    const fitting = widths[isNumeric(column) ? widths.length - 1 : Math.ceil(widths.length * FITTING) - 1] ?? 0;
    const room = isStatus(column) ? ROOM + 2.6 : ROOM;
    const texted = Math.min(WIDEST * size, fitting + room * size);
    return Math.round(Math.max(NARROWEST * size, headingWidth(column, model.words, measure) + 1.4 * size, texted));
  });
}

function headingWidth(column: Column, words: Words, measure: (text: string) => number): number {
  return Math.max(measure(words.text(column.title)) * 1.05, measure(`AA ${column.unit ?? ''}`) * 0.85);
}

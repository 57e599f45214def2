import { cellLook } from './cell-look.ts';
import { idAt, type GridModel } from '../grid-model.ts';
import type { Column } from '../../../src/schedule/index.ts';

/** Rows whose texts are measured. */
const SAMPLE = 150;
const NARROWEST = 52;
const WIDEST = 240;
/** Room beside the text: padding, line, and the mark of lists and findings. */
const ROOM = 24;

/**
 * Width [px] of each column from its heading and a sample of its texts, spread over all rows.
 * @param font the font of the cells, as CSS writes it.
 */
export function columnWidths(model: GridModel, font: string): number[] {
  const pen = document.createElement('canvas').getContext('2d');
  const measure = (text: string): number => {
    if (pen === null) return text.length * 7;
    pen.font = font;
    return pen.measureText(text).width;
  };
  const step = Math.max(1, Math.floor(model.lines.length / SAMPLE));
  const ids = model.lines.flatMap((_line, index) => (index % step === 0 && idAt(model, index) >= 0 ? [idAt(model, index)] : []));
  return model.columns.map((column) => {
    const texts = ids.map((id) => cellLook(model, id, column, []).text);
    const room = column.role === 'computed' && column.status === true ? ROOM + 16 : ROOM;
    const widest = Math.max(headingWidth(column, measure), ...texts.map((text) => measure(text.slice(0, 60)) + room));
    return Math.round(Math.min(WIDEST, Math.max(NARROWEST, widest)));
  });
}

function headingWidth(column: Column, measure: (text: string) => number): number {
  return Math.max(measure(column.title) * 1.05 + 20, measure(`AA ${column.unit ?? ''}`) * 0.85 + 20);
}

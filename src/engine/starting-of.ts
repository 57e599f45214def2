import type { Starting } from '../electrical/index.ts';
import type { Workbook } from './workbook.ts';

/** The devices of a row as they start; NaN is not known. */
export function startingOf(book: Workbook, id: number): Starting {
  const own = (key: string) => book.number('devices', id, key);
  return {
    quantity: own('qty'), drawAmps: own('unitDraw') / 1000,
    inrushAmps: book.number('types', book.target('devices', id, 'type'), 'inrush'),
  };
}

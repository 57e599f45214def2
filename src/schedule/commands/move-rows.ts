import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import type { SheetName } from '../schema/index.ts';
import { spansOf } from './spans.ts';

/**
 * Changes that bring rows together, in their order, before place `to` of the rows that stay.
 * @param to place among the rows that are not moved, from 0 to their number.
 */
export function moveRows(document: ScheduleDocument, sheet: SheetName, ids: readonly number[], to: number): Change[] {
  const spans = spansOf(ids.map((id) => document.position(sheet, id)));
  const changes: Change[] = [];
  // Spans above the destination are moved last one first, those below it first one first, so that no step shifts the
  // place from which a later one takes its rows.
  let above = 0;
  let taken = 0;
  for (const { at, count } of spans) {
    if (at - taken < to) above += 1;
    taken += count;
  }
  let place = to + spans.slice(0, above).reduce((sum, { count }) => sum + count, 0);
  for (const { at, count } of spans.slice(0, above).reverse()) {
    place -= count;
    if (place !== at) changes.push({ op: 'move', sheet, from: at, count, to: place });
  }
  place = to + spans.slice(0, above).reduce((sum, { count }) => sum + count, 0);
  for (const { at, count } of spans.slice(above)) {
    if (place !== at) changes.push({ op: 'move', sheet, from: at, count, to: place });
    place += count;
  }
  return changes;
}

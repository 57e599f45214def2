import type { ScheduleDocument } from './document.ts';
import { formulasIn, referencesOf, type Reference } from './formula/index.ts';
import { SHEET_NAMES } from './schema/index.ts';

/** Ids of the device rows that a formula works on, or whose quantity one works out: to split them would change it. */
export function rowsInFormulas(document: ScheduleDocument): ReadonlySet<number> {
  const found = new Set<number>();
  for (const sheet of SHEET_NAMES) {
    for (const { id, cells } of document.rows(sheet)) {
      for (const [key, formula] of formulasIn(sheet, cells)) {
        if (sheet === 'devices' && key === 'qty') found.add(id);
        for (const reference of referencesOf(formula)) addRows(document, reference, found);
      }
    }
  }
  return found;
}

function addRows(document: ScheduleDocument, reference: Reference | undefined, found: Set<number>): void {
  if (reference?.sheet !== 'devices') return;
  const corners = [reference.from.id, (reference.to ?? reference.from).id]
    .map((id) => document.position('devices', id));
  for (const { id } of document.rows('devices').slice(Math.min(...corners), Math.max(...corners) + 1)) found.add(id);
}

import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import { formulasIn, withoutRows } from '../formula/index.ts';
import { SHEET_NAMES, type SheetName } from '../schema/index.ts';
import { spansOf } from './spans.ts';

/** Changes that take rows out. Formulas elsewhere that refer to them are rewritten first, in the same action. */
export function removeRows(document: ScheduleDocument, sheet: SheetName, ids: readonly number[]): Change[] {
  const gone = new Set(ids.filter((id) => document.row(sheet, id) !== undefined));
  const spans = spansOf([...gone].map((id) => document.position(sheet, id))).reverse();
  return [
    ...rewrittenFormulas(document, sheet, gone),
    ...spans.map(({ at, count }): Change => ({ op: 'remove', sheet, at, count })),
  ];
}

function rewrittenFormulas(document: ScheduleDocument, sheet: SheetName, gone: ReadonlySet<number>): Change[] {
  const changes: Change[] = [];
  for (const name of SHEET_NAMES) {
    for (const id of document.rowsWithFormulas(name)) {
      if (name === sheet && gone.has(id)) continue;
      for (const [key, before] of formulasIn(name, document.row(name, id)!.cells)) {
        const value = withoutRows(before, sheet, gone, document);
        if (value !== before) changes.push({ op: 'set', sheet: name, id, key, value });
      }
    }
  }
  return changes;
}

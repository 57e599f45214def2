import type { Change } from '../change.ts';
import type { ScheduleDocument } from '../document.ts';
import type { Cells } from '../snapshot.ts';
import type { CellValue } from '../schema/index.ts';
import { insertRows } from './insert-rows.ts';
import { removeRows } from './remove-rows.ts';
import { setCells, type CellEdit } from './set-cells.ts';

/** What a case is to give a group. */
export interface FactorEdit {
  /** Name of the case. */
  readonly case: string;
  readonly group: string;
  /** The share that is on, or a formula; `null` for no factor, so that rows count by their own diversity. */
  readonly value: CellValue;
}

/**
 * Changes that give groups factors in cases, or take them away: a pair of case and group has one row at the most, so
 * that others that say the same pair again go with it. Of several edits of one pair the last one counts.
 */
export function setFactors(document: ScheduleDocument, edits: readonly FactorEdit[]): Change[] {
  const due = new Map(edits.map((edit) => [JSON.stringify([edit.case, edit.group]), edit]));
  const kept = new Set<string>();
  const [set, gone]: [CellEdit[], number[]] = [[], []];
  for (const { id, cells } of document.rows('factors')) {
    const pair = JSON.stringify([cells.case, cells.group]);
    const edit = due.get(pair);
    if (edit === undefined) continue;
    if (edit.value === null || kept.has(pair)) gone.push(id);
    else set.push({ sheet: 'factors', id, key: 'factor', value: edit.value });
    kept.add(pair);
  }
  const added = [...due].flatMap(([pair, { case: name, group, value }]): Cells[] =>
    value === null || kept.has(pair) ? [] : [{ case: name, group, factor: value }]);
  return [
    ...setCells(document, set), ...insertRows(document, 'factors', document.rows('factors').length, added),
    ...removeRows(document, 'factors', gone),
  ];
}

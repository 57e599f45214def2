import type { Change } from '../change.ts';
import { ScheduleDocument, tagOf } from '../document.ts';
import { removeRows } from './remove-rows.ts';

/** Changes that take a case out, and its factors with it unless another case bears the same name. */
export function removeCase(document: ScheduleDocument, id: number): Change[] {
  const rows = document.rows('cases');
  const name = tagOf('cases', document.row('cases', id)!);
  const isOnly = name !== '' && !rows.some((row) => row.id !== id && tagOf('cases', row) === name);
  const factors = document.rows('factors').filter(({ cells }) => isOnly && cells.case === name);
  const first = removeRows(document, 'factors', factors.map((row) => row.id));
  // A formula that names rows of both is rewritten for the one after it was for the other.
  const between = new ScheduleDocument(document.snapshot());
  between.perform(first);
  return [...first, ...removeRows(between, 'cases', [id])];
}

import { LoadSchedule } from '../../src/load-schedule.ts';
import {
  inputColumns, isNumeric, ScheduleDocument, SHEET_NAMES, toSnapshot, type Change, type InputColumn, type LoggedAction,
} from '../../src/schedule/index.ts';
import type { DraftBody } from './draft-store.ts';

const OPERATIONS = [
  'set', 'insert', 'remove', 'move', 'details', 'accept', 'revisions', 'load',
] as const satisfies readonly Change['op'][];

/**
 * Makes the schedule of a draft, with its actions to undo.
 * @param body what the store gave, of whatever shape.
 * @returns `undefined` when it is damaged: its actions do not fit, or what they lead to is no schedule.
 */
export function readDraft(body: DraftBody): LoadSchedule | undefined {
  let schedule: LoadSchedule | undefined;
  try {
    if (!body.actions.every(isAction) || !isWhole(new ScheduleDocument(body.base))) return undefined;
    schedule = new LoadSchedule(undefined, { session: body });
    if (isWhole(schedule.document) && toSnapshot(schedule.content()).problems.length === 0) return schedule;
  } catch {
    // What a browser gave back has no promised shape: whatever this throws says that it is damaged.
  }
  schedule?.dispose();
  return undefined;
}

function isAction(action: LoggedAction): boolean {
  return action.cause !== 'act' || (typeof action.label === 'string' && action.changes.every(({ op }) => OPERATIONS.includes(op)));
}

/** Whether everything is of its kind. Numbers outside of their ranges are the business of the checks. */
function isWhole(document: ScheduleDocument): boolean {
  const texts = [document.details, ...document.revisions].flatMap((each) => Object.values(each) as unknown[]);
  return texts.every((text) => typeof text === 'string') && SHEET_NAMES.every((sheet) => {
    const columns = inputColumns(sheet);
    return document.rows(sheet).every(({ cells }) => columns.every((column) => isOfKind(cells[column.key] ?? null, column)));
  });
}

/** A cell may be empty, and hold a formula where it holds numbers. */
function isOfKind(value: unknown, column: InputColumn): boolean {
  if (value === null || typeof value === 'string') return true;
  if (column.kind === 'boolean') return typeof value === 'boolean';
  return isNumeric(column) && typeof value === 'number';
}

import { areVariants, MOST_ROWS } from '../../src/exchange/index.ts';
import {
  DETAIL_KEYS, inputColumns, isNumeric, SHEET_NAMES, toContent, toSnapshot,
  type Change, type InputColumn, type LoggedAction, type Revision, type Row, type ScheduleDocument, type Snapshot,
} from '../../src/schedule/index.ts';

const OPERATIONS = [
  'set', 'insert', 'remove', 'move', 'details', 'accept', 'revisions', 'lists', 'variants', 'load',
] as const satisfies readonly Change['op'][];

const REVISION_KEYS = ['revision', 'date', 'name', 'text'] as const satisfies readonly (keyof Revision)[];

/**
 * Ids are used again, so that none is ever much larger than the number of rows; a document has room for every id below
 * its largest.
 */
const LARGEST_ID = 10 * MOST_ROWS;

/** Whether a log's entry, of whatever shape, can be carried out without harm. What it leads to is judged afterwards. */
export function isAction(action: LoggedAction): boolean {
  return action.cause !== 'act'
    || (typeof action.label === 'string' && action.changes.every((change) => OPERATIONS.includes(change.op)
    && (change.op !== 'insert' || hasIds(change.rows)) && (change.op !== 'load' || isSnapshot(change.snapshot))));
}

/** Whether a document can be made of a snapshot, of whatever shape, without harm. */
export function isSnapshot({ sheets, view }: Snapshot): boolean {
  return Object.values(sheets).every(hasIds) && isView(view);
}

/** Whether a schedule can be looked at in a way, of whatever shape. */
export function isView(view: unknown): view is Snapshot['view'] {
  const { rare, hidden, frozen, wide } = (view ?? {}) as Readonly<Record<string, unknown>>;
  return isList(rare ?? []) && held(hidden).every(isList) && held(frozen).every(isText)
    && held(wide).flatMap(held).every((width) => typeof width === 'number');
}

const held = (of: unknown): unknown[] => Object.values(of ?? {});

const isList = (list: unknown) => Array.isArray(list) && list.every(isText);

/**
 * Whether everything is of its kind and formulas can be read. Numbers outside of their ranges are the business of the
 * checks.
 */
export function isSound(document: ScheduleDocument): boolean {
  const { details, revisions, lists = {} } = document;
  const ofRows = SHEET_NAMES.flatMap((sheet) => document.rows(sheet).flatMap(({ accepted }) => accepted ?? []));
  const signed = [...document.unattached, ...ofRows]
    .flatMap(({ rule, reason, name, date }) => [rule, reason, name, date]);
  return areVariants(document.variants) && hasTexts(details, DETAIL_KEYS)
    && revisions.every((each) => hasTexts(each, REVISION_KEYS))
    && signed.every(isText) && [lists.headings, lists.names].every(areTexts) && SHEET_NAMES.every((sheet) => {
    const columns = inputColumns(sheet);
    return document.rows(sheet).every(({ cells }) => columns.every((column) => isOfKind(
      cells[column.key] ?? null, column
    )));
  }) && toSnapshot(toContent(document)).problems.length === 0;
}

function isText(value: unknown): value is string {
  return typeof value === 'string';
}

/** Whether there is nothing but texts, each under its name. */
function areTexts(named: unknown): boolean {
  return named === undefined || (typeof named === 'object' && Object.values(named ?? { none: 0 }).every(isText));
}

/** Whether what is there of some keys is texts. Keys that this version does not know may hold anything. */
function hasTexts<Key extends string>(of: Readonly<Partial<Record<Key, unknown>>>, keys: readonly Key[]): boolean {
  return keys.every((key) => of[key] === undefined || isText(of[key]));
}

/** A cell may be empty, and hold a formula where it holds numbers. */
function isOfKind(value: unknown, column: InputColumn): boolean {
  if (value === null || typeof value === 'string') return true;
  if (column.kind === 'boolean') return typeof value === 'boolean';
  return isNumeric(column) && typeof value === 'number';
}

function hasIds(rows: readonly Row[]): boolean {
  const ids = new Set(rows.map(({ id }) => id));
  return ids.size === rows.length && [...ids].every((id) => Number.isInteger(id) && id >= 0 && id <= LARGEST_ID);
}

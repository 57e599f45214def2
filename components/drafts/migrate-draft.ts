import { moduleNames } from '../../src/exchange/json/version-1-modules.ts';
import { acceptanceNow, cellNow, isOnlyMeant, keyNow, meantBy } from '../../src/exchange/json/version-1.ts';
import {
  attachAcceptances, FileRows, History, keepReference, mapReferences, ScheduleDocument, SHEET_NAMES,
  type Acceptance, type CellReference, type Change, type LoggedAction, type Row, type SheetName, type Snapshot,
} from '../../src/schedule/index.ts';
import type { DraftBody } from './draft-store.ts';

/** What a draft of version 1 kept differently: acceptances by tag, of all rows together. */
type Snapshot1 = Omit<Snapshot, 'unattached'> & { readonly accepted: readonly Acceptance[] };
type Change1 = Exclude<Change, { op: 'accept' | 'load' }>
  | { readonly op: 'accept'; readonly accepted: readonly Acceptance[] }
  | { readonly op: 'load'; readonly snapshot: Snapshot1 };

/**
 * Makes a draft of version 2 of one of version 1, action by action, so that each can still be taken back: keys and
 * purposes have their names of now, a module that outputs name has a row, and what an empty cell meant by itself is
 * entered in the same action.
 * @throws when it is damaged.
 */
export function fromVersion1(body: DraftBody): DraftBody {
  const base = snapshotNow(body.base as unknown as Snapshot1);
  const document = new ScheduleDocument(base);
  const history = new History(document);
  const actions = body.actions.map((action): LoggedAction => {
    const now = action.cause !== 'act' ? action
      : { ...action, changes: wholeChanges(action.changes as readonly Change1[], document) };
    history.repeat(now);
    return now;
  });
  return { base, actions };
}

/** The changes of an action as they are now, with what the rows that they filled meant by their empty cells. */
function wholeChanges(changes: readonly Change1[], document: ScheduleDocument): Change[] {
  const now = changes.flatMap((change) => changeNow(change, document));
  const inverse = document.perform(now);
  const meant = now.flatMap((change): Change[] => {
    if (change.op !== 'set') return [];
    const { sheet, id, value } = change;
    const cells = document.row(sheet, id)?.cells ?? {};
    // Whoever empties a row is to find it empty.
    const isEmptied = value === null && isOnlyMeant(sheet, cells);
    const entries = isEmptied ? Object.keys(cells).map((each) => [each, null] as const)
      : Object.entries(meantBy(sheet, cells));
    return entries.map(([key, entry]) => ({ op: 'set', sheet, id, key, value: entry }));
  });
  const modules = now.some((change) => 'sheet' in change && change.sheet === 'outputs') ? modulesNow(document) : [];
  document.perform(inverse);
  return [...now, ...meant, ...modules];
}

/** A row for each module that outputs name, in place of those of before. */
function modulesNow(document: ScheduleDocument): Change[] {
  const rows = modulesOf(document.rows('outputs'));
  const before = document.rows('modules');
  if (JSON.stringify(rows) === JSON.stringify(before)) return [];
  return [
    ...(before.length === 0 ? [] : [{ op: 'remove' as const, sheet: 'modules' as const, at: 0, count: before.length }]),
    ...(rows.length === 0 ? [] : [{ op: 'insert' as const, sheet: 'modules' as const, at: 0, rows }]),
  ];
}

function modulesOf(outputs: readonly Row[]): Row[] {
  return moduleNames(outputs.map(({ cells }) => cells)).map((module, id) => ({ id, cells: { module } }));
}

function changeNow(change: Change1, document: ScheduleDocument): Change[] {
  switch (change.op) {
    case 'set': {
      const [key, value] = cellNow(change.sheet, change.key, change.value, formulaNow);
      return [{ ...change, key, value }];
    }
    case 'insert': return [{ ...change, rows: change.rows.map((row) => rowNow(change.sheet, row)) }];
    case 'load': return [{ op: 'load', snapshot: snapshotNow(change.snapshot) }];
    case 'accept': {
      const rows = rowsOf((sheet) => document.rows(sheet).map(({ id, cells }) => ({ id, cells })));
      attach(change.accepted, rows);
      return SHEET_NAMES.flatMap((sheet) => rows[sheet].flatMap(({ id, accepted = [] }): Change[] => {
        const before = document.row(sheet, id)!.accepted ?? [];
        return JSON.stringify(before) === JSON.stringify(accepted) ? [] : [{ op: 'accept', sheet, id, accepted }];
      }));
    }
    default: return [change];
  }
}

function snapshotNow({ accepted, sheets, ...others }: Snapshot1): Snapshot {
  const before = rowsOf((sheet) => (sheets[sheet] as readonly Row[] | undefined ?? []).map((row) => rowNow(sheet, row)));
  const rows = { ...before, modules: modulesOf(before.outputs) };
  return { ...others, sheets: rows, unattached: attach(accepted, rows) };
}

function rowNow(sheet: SheetName, { id, cells }: Row): Row {
  const now = Object.fromEntries(Object.entries(cells).map(([key, value]) => cellNow(sheet, key, value, formulaNow)));
  return { id, cells: { ...now, ...meantBy(sheet, now) } };
}

/** A formula in the form that documents keep. */
function formulaNow(formula: string): string {
  const now = (cell: CellReference): CellReference => ({ ...cell, key: keyNow(cell.key) });
  return mapReferences(formula, (reference) => keepReference(reference && {
    ...reference, from: now(reference.from), ...(reference.to === undefined ? {} : { to: now(reference.to) }),
  }));
}

function attach(accepted: readonly Acceptance[], rows: Readonly<Record<SheetName, readonly Row[]>>): Acceptance[] {
  return attachAcceptances(accepted.map((each) => acceptanceNow(each)), rows, new FileRows((sheet) => rows[sheet]));
}

function rowsOf(rows: (sheet: SheetName) => Row[]): Record<SheetName, Row[]> {
  return Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, rows(sheet)])) as Record<SheetName, Row[]>;
}

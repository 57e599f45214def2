import { moduleNames } from '../../src/exchange/json/version-1-modules.ts';
import { typesWithVoltage } from '../../src/exchange/types-with-voltage.ts';
import { OF_WAYS, runAndWay } from '../../src/exchange/json/version-1-ways.ts';
import { acceptanceNow, cellNow, isFilled, isOnlyMeant, keyNow, meantBy } from '../../src/exchange/json/version-1.ts';
import {
  attachAcceptances, FileRows, History, keepReference, mapReferences, ScheduleDocument, SHEET_NAMES,
  type Acceptance, type CellReference, type Cells, type CellValue, type Change, type LoggedAction, type Row,
  type SheetName, type Snapshot,
} from '../../src/schedule/index.ts';
import type { DraftBody } from './draft-store.ts';

/** What a draft of version 1 kept differently: acceptances by tag, of all rows together. */
type Snapshot1 = Omit<Snapshot, 'unattached'> & { readonly accepted: readonly Acceptance[] };
type Change1 = Exclude<Change, { op: 'accept' | 'load' }>
  | { readonly op: 'accept'; readonly accepted: readonly Acceptance[] }
  | { readonly op: 'load'; readonly snapshot: Snapshot1 };

/**
 * Makes a draft of version 2 of one of version 1, action by action, so that each can still be taken back: keys and
 * purposes have their names of now, a module that outputs name has a row, a run that has a protection has a way with
 * its own id, and what an empty cell meant by itself is entered in the same action.
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
  const now: Change[] = [];
  let inverse: readonly Change[] = [];
  for (const change of changes) {
    const made = changeNow(change, document);
    inverse = [...document.perform(made), ...inverse];
    now.push(...made);
  }
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
      return change.sheet === 'runs' ? runSet({ ...change, key, value }, document) : [{ ...change, key, value }];
    }
    case 'insert': {
      const rows = change.rows.map((row) => rowNow(change.sheet, row));
      return change.sheet === 'runs' ? runsInserted(change.at, rows, document) : [{ ...change, rows }];
    }
    case 'remove': {
      if (change.sheet !== 'runs') return [change];
      const removed = document.rows('runs').slice(change.at, change.at + change.count);
      return [...removed.flatMap(({ id }) => wayRemoved(id, document)), change];
    }
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

/** A cell of a run, as far as it concerns the way that was its protection. */
function runSet(change: Extract<Change, { op: 'set' }>, document: ScheduleDocument): Change[] {
  const { id, key, value } = change;
  const { cells = {} } = document.row('runs', id) ?? {};
  const way = document.row('ways', id)?.cells;
  if (key === 'rail' && way !== undefined) return [change, { ...change, sheet: 'ways' }];
  if (!Object.hasOwn(OF_WAYS, key)) return [change];
  const { rated: protection = null, trip = null } = way ?? { trip: cells.tripOfVersion1 ?? null };
  const { way: _way, tripOfVersion1: _trip, ...others } = cells;
  const made = runAndWay<CellValue>({ ...others, protection, trip, [key]: value }, tagsOfWays(document), isFilled);
  const tripNow = made.way === undefined ? made.run.tripOfVersion1 ?? null : null;
  const cellsNow = { way: made.way === undefined ? null : way?.way ?? made.way.way!, tripOfVersion1: tripNow };
  return [
    ...wayRemoved(id, document),
    ...(made.way === undefined ? [] : [wayInserted(id, { ...made.way, way: cellsNow.way! }, document)]),
    ...Object.entries(cellsNow).filter(([name, cell]) => (cells[name] ?? null) !== cell)
      .map(([name, cell]): Change => ({ op: 'set', sheet: 'runs', id, key: name, value: cell })),
  ];
}

function wayRemoved(id: number, document: ScheduleDocument): Change[] {
  const at = document.position('ways', id);
  return at < 0 ? [] : [{ op: 'remove', sheet: 'ways', at, count: 1 }];
}

function wayInserted(id: number, cells: Cells, document: ScheduleDocument): Change {
  const rows = document.rows('ways');
  // What goes before the way of the same run is put in again comes first.
  const at = rows.length - (document.position('ways', id) < 0 ? 0 : 1);
  return { op: 'insert', sheet: 'ways', at, rows: [{ id, cells }] };
}

function tagsOfWays(document: ScheduleDocument): Set<unknown> {
  return new Set(document.rows('ways').map(({ cells }) => cells.way));
}

function runsInserted(at: number, rows: readonly Row[], document: ScheduleDocument): Change[] {
  const made = runsAndWays(rows, tagsOfWays(document));
  return [
    { op: 'insert', sheet: 'runs', at, rows: made.runs },
    ...(made.ways.length === 0 ? []
      : [{ op: 'insert' as const, sheet: 'ways' as const, at: document.rows('ways').length, rows: made.ways }]),
  ];
}

function runsAndWays(rows: readonly Row[], taken = new Set<unknown>()): { runs: Row[]; ways: Row[] } {
  const ways: Row[] = [];
  const runs = rows.map((row): Row => {
    const { run, way } = runAndWay(row.cells, taken, isFilled);
    if (way === undefined) return { ...row, cells: run };
    ways.push({ id: row.id, cells: way });
    taken.add(way.way);
    return { ...row, cells: run };
  });
  return { runs, ways };
}

function snapshotNow({ accepted, sheets, ...others }: Snapshot1): Snapshot {
  const before = rowsOf((sheet) =>
    (sheets[sheet] as readonly Row[] | undefined ?? []).map((row) => rowNow(sheet, row)));
  const types = typesWithVoltage(
    before, ({ cells }) => cells, (row, voltage) => ({ ...row, cells: { ...row.cells, voltage } }));
  const rows = { ...before, types, ...runsAndWays(before.runs), modules: modulesOf(before.outputs) };
  return { ...others, sheets: rows, unattached: attach(accepted, rows) };
}

function rowNow(sheet: SheetName, { id, cells }: Row): Row {
  const now = Object.fromEntries(Object.entries(cells).map(([key, value]) => cellNow(sheet, key, value, formulaNow)));
  return { id, cells: { ...now, ...meantBy(sheet, now) } };
}

/** A formula in the form that documents keep. */
function formulaNow(formula: string): string {
  return mapReferences(formula, (reference) => {
    if (reference === undefined) return keepReference(undefined);
    const { sheet, from, to } = reference;
    const ofWays = [from, to ?? from].filter(({ key }) => sheet === 'runs' && Object.hasOwn(OF_WAYS, key)).length;
    // A block of cells that holds protections among others has no counterpart.
    if (ofWays === 1) return keepReference(undefined);
    const now = (cell: CellReference): CellReference =>
      ({ ...cell, key: ofWays === 2 ? OF_WAYS[cell.key]! : keyNow(cell.key) });
    return keepReference({
      sheet: ofWays === 2 ? 'ways' : sheet, from: now(from), ...(to === undefined ? {} : { to: now(to) }),
    });
  });
}

function attach(accepted: readonly Acceptance[], rows: Readonly<Record<SheetName, readonly Row[]>>): Acceptance[] {
  return attachAcceptances(accepted.map((each) => acceptanceNow(each)), rows, new FileRows((sheet) => rows[sheet]));
}

function rowsOf(rows: (sheet: SheetName) => Row[]): Record<SheetName, Row[]> {
  return Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, rows(sheet)])) as Record<SheetName, Row[]>;
}

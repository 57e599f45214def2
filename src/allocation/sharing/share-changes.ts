import {
  insertRows, nextPartTag, SCHEMA, setCells, tagOf, type Cells, type CellEdit, type Change, type ScheduleDocument,
} from '../../schedule/index.ts';
import type { AddedBin, SharedSheet, Sharing } from './sharing-problem.ts';

/** The column of the devices, and of the runs, that names what is shared. */
const KEY = { branches: 'branch', supplies: 'rail' } as const;

/** Cells that a row made like another does not take over: what is true of that one alone. */
const OWN_KEYS: readonly string[] = ['note', 'terminated', 'terminators', 'measuredCurrent', 'measuredVoltage'];

/** A device row and what becomes of it: what stays in it, then what goes into new rows. */
interface Shared {
  readonly id: number;
  readonly portions: readonly { readonly tag: string | null; readonly qty: number }[];
}

/**
 * Changes that carry a sharing out, as one action: new branches or supplies are made, devices are given theirs, a
 * row that is shared by several is split into one row for each, and a run goes with its devices. Devices that were
 * left out are on none afterwards, unless they take nothing anyway.
 */
export function shareChanges(
  document: ScheduleDocument, sharing: Pick<Sharing, 'over' | 'added' | 'placements' | 'leftOut'>,
): Change[] {
  const { over, added } = sharing;
  const key = KEY[over];
  const tags = new Set<unknown>(document.rows(over).map((row) => tagOf(over, row)));
  const rows = sharedRows(sharing);
  const placed = new Set(rows.map(({ id }) => id));
  const edits: CellEdit[] = [];
  for (const { id, code } of sharing.leftOut) {
    if (placed.has(id) || code === 'takes-none' || !tags.has(document.row('devices', id)?.cells[key])) continue;
    edits.push({ sheet: 'devices', id, key, value: null });
  }
  for (const { id, portions: [first, ...others] } of rows) {
    edits.push({ sheet: 'devices', id, key, value: first!.tag });
    if (others.length > 0) edits.push({ sheet: 'devices', id, key: 'qty', value: first!.qty });
    if (over === 'supplies') edits.push(...runEdits(document, id, first!.tag));
  }
  return [
    ...insertRows(document, over, document.rows(over).length, added.map((each) => cellsOf(document, over, each))),
    ...setCells(document, edits),
    ...splitRows(document, key, rows),
  ];
}

/** What becomes of each row; of one that is placed in part, the rest is a portion without a tag. */
function sharedRows({ placements, leftOut }: Pick<Sharing, 'placements' | 'leftOut'>): Shared[] {
  const byId = new Map<number, { tag: string | null; qty: number }[]>();
  const add = (id: number, portion: { tag: string | null; qty: number }) => {
    if (byId.has(id)) byId.get(id)!.push(portion);
    else byId.set(id, [portion]);
  };
  for (const { id, tag, qty } of placements) add(id, { tag, qty });
  for (const { id, qty } of leftOut) if (byId.has(id)) add(id, { tag: null, qty: qty! });
  return [...byId].map(([id, portions]) => ({ id, portions }));
}

/** The run of a device row is fed from the rail of its devices. */
function runEdits(document: ScheduleDocument, id: number, rail: string | null): CellEdit[] {
  const name = document.row('devices', id)?.cells.run;
  const run = typeof name === 'string' ? document.rows('runs').find((row) => tagOf('runs', row) === name) : undefined;
  return run === undefined ? [] : [{ sheet: 'runs', id: run.id, key: 'rail', value: rail }];
}

function cellsOf(document: ScheduleDocument, over: SharedSheet, { tag, like, cells }: AddedBin): Cells {
  const copied = like === null ? {} : { ...document.row(over, like)!.cells };
  for (const key of OWN_KEYS) delete copied[key];
  const own = Object.fromEntries(Object.entries(cells).filter(([, value]) => value !== null));
  for (const key of Object.keys(cells)) delete copied[key];
  return { ...copied, ...own, [SCHEMA[over].tag]: tag };
}

/**
 * Puts new rows below those that are split, with the same cells; the last ones first, so that places above stay
 * valid.
 */
function splitRows(document: ScheduleDocument, key: string, rows: readonly Shared[]): Change[] {
  const refs = new Set(document.rows('devices').map((row) => tagOf('devices', row)));
  const split = rows.filter(({ portions }) => portions.length > 1)
    .sort((a, b) => document.position('devices', b.id) - document.position('devices', a.id));
  const ids = document.freeIds('devices', split.reduce((sum, { portions }) => sum + portions.length - 1, 0));
  return split.map(({ id, portions }): Change => {
    const row = document.row('devices', id)!;
    const ref = tagOf('devices', row);
    return {
      op: 'insert', sheet: 'devices', at: document.position('devices', id) + 1,
      rows: portions.slice(1).map(({ tag, qty }) => {
        const cells: Cells = { ...row.cells, qty, ...(ref === '' ? {} : { ref: nextPartTag(ref, refs) }) };
        if (tag === null) delete cells[key];
        else cells[key] = tag;
        return { id: ids.shift()!, cells };
      }),
    };
  });
}

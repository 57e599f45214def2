import {
  exceeds, isGiven, minus, number, over, times, wholePart, type Cell, type InputRow, type Known,
} from './known-number.ts';

/**
 * The load schedule worked out a second time, row by row in plain loops, from the rules of the document alone. Nothing
 * of the product is imported, so that what it computes can be held against this.
 *
 * Unknown is `null`. A total adds the rows that are known; `partial` says of each total whether some are not.
 */

export type { InputRow } from './known-number.ts';

/** A parsed schedule file, as far as it is needed here. */
export interface InputSchedule {
  readonly sheets: Readonly<Record<string, readonly InputRow[] | undefined>>;
}

export type Status = 'over' | 'near' | 'incomplete' | 'ok';

export interface DeviceFigures {
  unitDraw: Known; diversity: Known; connected: Known; demand: Known; share: Known; nodes: Known;
}
export interface SupplyFigures {
  usable: Known; connected: number; demand: number; loading: Known; spare: Known; limitDiversity: Known;
  fuseLoading: Known; loss: Known; status: Status; partial: { connected: boolean; demand: boolean };
}
export interface BranchFigures {
  nodes: number; free: Known; used: Known; cables: number; status: Status; partial: { nodes: boolean };
}
export interface OutputFigures {
  current: Known; rating: Known; loading: Known; headroom: Known; inrushTotal: Known; inrushHeadroom: Known;
  status: Status;
}
export interface FeedFigures {
  connected: number; demand: Known; loading: Known; spare: Known; status: Status; partial: { connected: boolean };
}
export interface Figures {
  devices: DeviceFigures[]; supplies: SupplyFigures[]; branches: BranchFigures[]; outputs: OutputFigures[];
  feeds: FeedFigures[];
}

/**
 * Every computed figure of devices, supplies, branches, outputs and feeds, apart from what needs the runs.
 * @param schedule a parsed schedule file; formulas in its cells may hold numbers only
 * @returns one row of figures for each row of the five sheets, in their order
 * @throws SyntaxError for a formula that is not plain arithmetic
 */
export function recalculate(schedule: InputSchedule): Figures {
  const sheet = (name: string): readonly InputRow[] => schedule.sheets[name] ?? [];
  const types = byTag(sheet('types'), 'type');
  const contacts = byTag(sheet('contacts'), 'contact');
  const usables = new Map(sheet('supplies').map((row) => [row, usableOf(row)]));
  const supplyOf = byTag(sheet('supplies'), 'rail');

  const devices = sheet('devices').map((row) => {
    const supply = named(supplyOf, row.rail);
    return deviceFigures(row, named(types, row.type), supply, supply ? usables.get(supply)! : null);
  });
  const outputs = sheet('outputs').map((row) => outputFigures(row, named(contacts, row.contact)));

  const connected = gather(sheet('devices'), 'rail', (index) => devices[index]!.connected);
  const demand = gather(sheet('devices'), 'rail', (index) => devices[index]!.demand);
  const nodes = gather(sheet('devices'), 'branch', (index) => devices[index]!.nodes);
  const cables = gather(sheet('runs'), 'branch', () => 1);
  const currents = gather(sheet('outputs'), 'feed', (index) => outputs[index]!.current);

  return {
    devices,
    supplies: firstOfTag(sheet('supplies'), 'rail', (row, tag) =>
      supplyFigures(row, usables.get(row)!, connected(tag), demand(tag))),
    branches: firstOfTag(sheet('branches'), 'branch', (row, tag) => branchFigures(row, nodes(tag), cables(tag).sum)),
    outputs,
    feeds: firstOfTag(sheet('feeds'), 'feed', (row, tag) => feedFigures(row, currents(tag))),
  };
}

function deviceFigures(
  row: InputRow, type: InputRow | undefined, supply: InputRow | undefined, usable: Known,
): DeviceFigures {
  const unitDraw = isGiven(row.unitDraw) ? number(row, 'unitDraw')
    : isGiven(type?.draw) ? number(type, 'draw')
      : times(over(number(type, 'power'), supply ? number(supply, 'voltage', 24) : null), 1000);
  const diversity = isGiven(row.diversity) ? number(row, 'diversity') : number(type, 'diversity', 1);
  const qty = number(row, 'qty');
  const connected = over(times(qty, unitDraw), 1000);
  const demand = times(connected, diversity);
  return {
    unitDraw, diversity, connected, demand,
    share: over(demand, usable),
    nodes: times(qty, type ? number(type, 'nodes', 1) : null),
  };
}

function usableOf(row: InputRow): Known {
  const units = number(row, 'units', 1);
  const counting = row.redundant === true ? minus(units, 1) : units;
  return times(times(number(row, 'rated'), counting), number(row, 'derating', 1));
}

function supplyFigures(row: InputRow, usable: Known, connected: Total, demand: Total): SupplyFigures {
  const target = number(row, 'target', 0.8);
  const fuse = number(row, 'fuse');
  const loading = over(demand.sum, usable);
  const lost = minus(over(1, number(row, 'efficiency')), 1);
  return {
    usable, connected: connected.sum, demand: demand.sum, loading,
    spare: minus(times(usable, target), demand.sum),
    limitDiversity: over(times(usable, target), connected.sum),
    fuseLoading: over(demand.sum, fuse),
    loss: times(times(number(row, 'voltage', 24), demand.sum), lost),
    status: worst(
      exceeds(demand.sum, usable) || exceeds(demand.sum, fuse),
      exceeds(loading, target),
      usable === null || target === null || demand.partial,
    ),
    partial: { connected: connected.partial, demand: demand.partial },
  };
}

function branchFigures(row: InputRow, nodes: Total, cables: number): BranchFigures {
  const limit = number(row, 'limit', 50);
  const allowed = wholePart(times(limit, minus(1, number(row, 'reserve', 0))));
  return {
    nodes: nodes.sum, cables,
    free: minus(allowed, nodes.sum),
    used: over(nodes.sum, limit),
    status: worst(exceeds(nodes.sum, limit), exceeds(nodes.sum, allowed), allowed === null || nodes.partial),
    partial: { nodes: nodes.partial },
  };
}

function outputFigures(row: InputRow, contact: InputRow | undefined): OutputFigures {
  const qty = number(row, 'qty', 1);
  const target = number(row, 'target', 0.8);
  const current = over(times(qty, number(row, 'power')), times(number(row, 'voltage', 230), number(row, 'powerFactor', 1)));
  const rating = LOAD_KINDS.has(row.kind) ? number(contact, row.kind as string) : null;
  const loading = over(current, rating);
  const inrushTotal = times(qty, number(row, 'inrush'));
  const making = number(contact, 'inrush');
  return {
    current, rating, loading, inrushTotal,
    headroom: minus(rating, current),
    inrushHeadroom: minus(making, inrushTotal),
    status: worst(
      exceeds(current, rating) || exceeds(inrushTotal, making),
      exceeds(loading, target),
      current === null || rating === null || target === null,
    ),
  };
}

function feedFigures(row: InputRow, connected: Total): FeedFigures {
  const rated = number(row, 'rated');
  const target = number(row, 'target', 0.8);
  const demand = times(connected.sum, number(row, 'diversity', 1));
  const loading = over(demand, rated);
  return {
    connected: connected.sum, demand, loading,
    spare: minus(times(rated, target), demand),
    status: worst(
      exceeds(demand, rated),
      exceeds(loading, target),
      demand === null || rated === null || target === null || connected.partial,
    ),
    partial: { connected: connected.partial },
  };
}

const LOAD_KINDS: ReadonlySet<Cell> = new Set(['resistive', 'lamp', 'motor', 'coil']);

function worst(over: boolean, near: boolean, incomplete: boolean): Status {
  return over ? 'over' : near ? 'near' : incomplete ? 'incomplete' : 'ok';
}

// Tags and totals

interface Total {
  readonly sum: number;
  readonly partial: boolean;
}

const NOTHING: Total = { sum: 0, partial: false };

/** Rows of a sheet by their tag; of rows that share a tag, the first one is meant. */
function byTag(rows: readonly InputRow[], key: string): Map<Cell, InputRow> {
  const found = new Map<Cell, InputRow>();
  for (const row of rows) if (isGiven(row[key]) && !found.has(row[key])) found.set(row[key], row);
  return found;
}

function named(rows: Map<Cell, InputRow>, tag: Cell): InputRow | undefined {
  return isGiven(tag) ? rows.get(tag) : undefined;
}

/** Figures of each row of a sheet; a later row with a tag used before is named by nothing and gets the tag `null`. */
function firstOfTag<T>(rows: readonly InputRow[], key: string, figures: (row: InputRow, tag: Cell) => T): T[] {
  const meant = byTag(rows, key);
  return rows.map((row) => figures(row, named(meant, row[key]) === row ? row[key] : null));
}

/** Adds up a figure of rows by the tag that they name. */
function gather(rows: readonly InputRow[], key: string, figure: (index: number) => Known): (tag: Cell) => Total {
  const totals = new Map<Cell, { sum: number; partial: boolean }>();
  rows.forEach((row, index) => {
    const tag = row[key];
    if (!isGiven(tag)) return;
    let total = totals.get(tag);
    if (total === undefined) totals.set(tag, total = { sum: 0, partial: false });
    const value = figure(index);
    if (value === null) total.partial = true;
    else total.sum += value;
  });
  return (tag) => totals.get(tag) ?? NOTHING;
}

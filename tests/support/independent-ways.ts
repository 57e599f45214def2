/**
 * Protected ways worked out a second time, from the rules of the document alone: nothing of the product is imported.
 * Devices draw constant currents, so that a run takes what its devices take.
 */

export type Row = Readonly<Record<string, string | number | boolean | null | undefined>>;

export interface WaySheets {
  readonly supplies: readonly Row[];
  readonly ways: readonly Row[];
  readonly runs: readonly Row[];
  /** Each with `qty` and `unitDraw` [mA]. */
  readonly devices: readonly Row[];
  /** Each with an `inrush` [A]. */
  readonly types: readonly Row[];
}

export interface WayFigures {
  readonly trip: number | null;
  readonly k2: number | null;
  readonly connected: number;
  readonly demand: number;
  readonly largest: number;
  readonly start: number;
  readonly available: number | null;
  readonly status: 'over' | 'near' | 'incomplete' | 'ok';
}

/** At once on direct current: breakers 1.5 × 5, 10, 20 of IEC 60898-1; the others as the document says. */
const TRIP: Readonly<Record<string, number>> = { B: 7.5, C: 15, D: 30, gG: 7, fast: 4, slow: 10, electronic: 1.8 };

/** On overload: 1.45 of IEC 60898-1; IEC 60269-1 for gG; IEC 60127-2 for the small ones. */
function overload(kind: string, rated: number | null): number | null {
  if (kind === 'fast' || kind === 'slow') return rated === null ? null : 2.1;
  if (kind !== 'gG') return rated === null ? null : 1.45;
  return rated === null ? null : rated <= 4 ? 2.1 : rated < 16 ? 1.9 : 1.6;
}

const BREAKERS: Readonly<Record<string, number>> = { B: 4, C: 7, D: 10 };
const above = (one: number, other: number) => one > other * (1 + 1e-9);
const num = (row: Row | undefined, key: string, otherwise: number | null = null) =>
  typeof row?.[key] === 'number' ? row[key] : otherwise;

/** Whether a cell holds something that is no number. */
const isUnread = (row: Row | undefined, key: string) => (row?.[key] ?? null) !== null && num(row, key) === null;

/** Whether a short circuit on a way leaves the fuse of its supply whole; `null` where nothing shows it. */
function isSelective(fuse: number, fuseKind: string, rated: number, kind: string, available: number | null) {
  if (kind === 'electronic') return !above(rated, fuse);
  if (kind in BREAKERS !== fuseKind in BREAKERS) return null;
  if (!(kind in BREAKERS) && kind !== fuseKind) return null;
  if (above(rated * (kind === 'gG' ? 1.5625 : 2), fuse)) return false;
  if (!(fuseKind in BREAKERS)) return true;
  return available === null ? null : above(BREAKERS[fuseKind]! * fuse, available);
}

/** What a status of a way follows from [A]. */
export interface WayBasis {
  readonly demand: number;
  readonly connected: number;
  readonly largest: number;
  readonly start: number;
  /** What the supply has for a short circuit on it, at least and at most of all cases; `null` is not known. */
  readonly available: number | null;
  readonly most: number | null;
  /** Whether a case says how much of all that is on it comes together. */
  readonly isCovered: boolean;
  /** Whether a start of something on it cannot be read. */
  readonly isStartUnread: boolean;
}

const tripOf = (way: Row) => num(way, 'trip') ?? (typeof way.kind === 'string' ? TRIP[way.kind]! : null);
const k2Of = (way: Row) => num(way, 'k2') ?? (typeof way.kind === 'string' ? overload(way.kind, num(way, 'rated')) : null);

/** What the limits of a way say. */
export function wayStatus(
  way: Row, supply: Row | undefined,
  { demand, connected, largest, start, available, most, isCovered, isStartUnread }: WayBasis,
): WayFigures['status'] {
  const [rated, trip, k2] = [num(way, 'rated'), tripOf(way), k2Of(way)];
  const [fuse, fuseKind] = [num(supply, 'fuse'), supply?.fuseKind];
  // The more there is for a short circuit, the sooner the breaker of the supply acts too.
  const selective = rated === null || typeof way.kind !== 'string' || fuse === null || typeof fuseKind !== 'string'
    ? true : isSelective(fuse, fuseKind, rated, way.kind, most);
  if (rated !== null && (above(demand, rated) || above(largest, rated))) return 'over';
  if (trip !== null && above(BREAKERS[String(way.kind)] ?? 0, trip)) return 'near';
  // A case that says what comes together says so of what runs, and of a start that takes no more than that.
  const starts = way.kind === 'electronic' && rated !== null && above(start, rated) && !(isCovered && !above(start, connected));
  const near = rated !== null && (above(demand, rated * num(way, 'target', 0.8)!)
    || (above(connected, rated) && !isCovered) || starts || selective === false
    || (available !== null && trip !== null && above(trip * rated, available)));
  if (near) return 'near';
  // A fuse of unknown kind may well be of the kind of the way.
  const isUnclear = fuse !== null && typeof fuseKind !== 'string' && rated !== null && typeof way.kind === 'string'
    && isSelective(fuse, way.kind, rated, way.kind, null) === false;
  const isKnown = !isUnclear && !isStartUnread && !isUnread(supply, 'fuse') && rated !== null && available !== null
    && trip !== null && k2 !== null;
  return isKnown ? 'ok' : 'incomplete';
}

/** The figures of every way, in order. */
export function independentWays({ supplies, ways, runs, devices, types }: WaySheets): WayFigures[] {
  const amps = (row: Row) => num(row, 'qty')! * num(row, 'unitDraw')! / 1000;
  const railOf = (run: Row) => run.rail ?? ways.find(({ way }) => way === run.way)?.rail ?? null;
  const runOf = (device: Row) => runs.find(({ run }) => run === device.run);
  const railOfDevice = (device: Row) => {
    const run = runOf(device);
    return device.rail ?? (run === undefined ? null : railOf(run));
  };
  const sum = (rows: readonly Row[], share: (row: Row) => number) =>
    rows.reduce((total, row) => total + amps(row) * share(row), 0);
  const diversity = (row: Row) => num(row, 'diversity', 1)!;

  const trips = ways.map((way) => num(way, 'trip') ?? (typeof way.kind === 'string' ? TRIP[way.kind]! : null));
  return ways.map((way, at): WayFigures => {
    const on = devices.filter((device) => runOf(device)?.way === way.way);
    const supply = supplies.find(({ rail }) => typeof rail === 'string' && rail === way.rail);
    const [rated, trip] = [num(way, 'rated'), trips[at] ?? null];
    const k2 = num(way, 'k2') ?? (typeof way.kind === 'string' ? overload(way.kind, rated) : null);
    const [connected, demand] = [sum(on, () => 1), sum(on, diversity)];
    const largest = Math.max(0, ...on.filter(({ qty }) => qty !== 0).map((row) => num(row, 'unitDraw')! / 1000));
    const start = on.reduce((total, row) => {
      const [running, inrush] = [num(row, 'unitDraw')! / 1000, num(types.find(({ type }) => type === row.type), 'inrush', 0)!];
      return total + num(row, 'qty')! * (inrush > running ? inrush : running);
    }, 0);
    const each = num(supply, 'rated');
    const counting = num(supply, 'units', 1)! - (supply?.redundant === true ? 1 : 0);
    const most = each === null ? null : each * counting * num(supply, 'peak', 1)!;
    const all = sum(devices.filter((device) => railOfDevice(device) === way.rail), diversity);
    const available = supply === undefined || most === null ? null : Math.max(0, most - Math.max(0, all - demand));
    const isStartUnread = way.kind === 'electronic'
      && on.some((row) => row.qty !== 0 && isUnread(types.find(({ type }) => type === row.type), 'inrush'));
    const status = wayStatus(way, supply, {
      demand, connected, largest, start, available, most: available, isCovered: false, isStartUnread,
    });
    return {
      trip, k2, connected, demand, largest, start, available,
      status,
    };
  });
}

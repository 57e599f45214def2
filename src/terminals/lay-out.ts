import { terminalFor } from '../electrical/index.ts';
import {
  grouped, isBlank, setCells, type CellEdit, type Cells, type CellValue, type Change, type Row,
  type ScheduleDocument,
} from '../schedule/index.ts';
import { numberOf, usualStrip } from './designations.ts';
import { Parts, type Figures } from './parts.ts';
import { textOf } from './placed-terminals.ts';
import { groupOf, wantedTerminals, type LeftOut, type WantedTerminal } from './wanted.ts';

/** What a terminal that stands would become. */
export interface TerminalEdit {
  readonly id: number;
  readonly cells: Readonly<Record<string, CellValue>>;
}

/** What laying out comes to. Nothing of it renumbers or moves a terminal that stands. */
export interface Layout {
  /** New terminals, in the order of their strips. */
  readonly came: readonly Cells[];
  /** Terminals that would go on with another potential, inside conductor, size or bridge. */
  readonly changed: readonly TerminalEdit[];
  /** Terminals whose cable or part is gone: they become spare. */
  readonly gone: readonly TerminalEdit[];
  /** Spare terminals that are used again. */
  readonly reused: readonly TerminalEdit[];
  /** How many stand as they are asked for. */
  readonly kept: number;
  readonly leftOut: readonly LeftOut[];
}

/** What a person takes of a layout. */
export const LAYOUT_PARTS = ['came', 'changed', 'gone', 'reused'] as const;
export type LayoutPart = (typeof LAYOUT_PARTS)[number];

/** What a spare terminal does not keep of the one that it was. Its ticks stay: its conductors may still be in. */
const EMPTIED = { potential: null, inside: null, outside: null, core: null, size: null, bridge: null } as const;

/** Connections that terminals are laid out for: one of a part that is there and is not asked for any more is gone. */
const LAID_FOR = /:(?:1|2|L|N|PE|C|11|14|R1|R2)$/;

/** A terminal as it stands, or would. */
interface Placed {
  /** Its row; `undefined` for a new one. */
  readonly row: Row | undefined;
  readonly cells: Record<string, CellValue>;
  readonly wanted: WantedTerminal;
  /** Whether it had the potential before that it has now. */
  readonly isOld: boolean;
}

/**
 * Lays terminals out for all that a schedule wires: what stands keeps its number and its place, what is new comes at
 * the end of its strip, and what is asked for no more is spare.
 * @param options.useSpares spare terminals of a strip are taken first, those that are large enough.
 */
export function layOutTerminals(
  document: ScheduleDocument, figures: Figures, { useSpares = false }: { readonly useSpares?: boolean } = {},
): Layout {
  const parts = new Parts(document, figures);
  const { wanted, leftOut } = wantedTerminals(parts);
  const rows = document.rows('terminals').filter((row) => !isBlank(row));
  const byKey = grouped(rows, keyOfRow);
  const taken = new Set<Row>();
  const placed: Placed[] = [];
  const missing: WantedTerminal[] = [];
  // A connection that is fed from two potentials by mistake has a terminal on each.
  const found = wanted.map((each) => {
    const standing = byKey.get(keyOfWanted(each)) ?? [];
    return { each, row: standing.find(({ cells }) => textOf(cells.potential) === each.potential) ?? standing[0] };
  });
  const keeps = ({ each, row }: (typeof found)[number]) =>
    row !== undefined && textOf(row.cells.potential) === each.potential;
  const strips = new Strips(rows);
  for (const { each, row } of [...found.filter(keeps), ...found.filter((one) => !keeps(one))]) {
    // On another strip its potential cannot be bridged: the core moves, and leaves its terminal.
    const stands = row !== undefined && !taken.has(row)
      && (keeps({ each, row }) || strips.of(each) === textOf(row.cells.strip));
    if (!stands) {
      missing.push(each);
      continue;
    }
    taken.add(row);
    placed.push(standing(row, each));
    strips.settle(each, textOf(row.cells.strip));
  }
  const gone = rows.filter((row) => !taken.has(row) && isGone(row, parts));
  const spares = useSpares ? rows.filter((row) => !taken.has(row) && isSpare(row)) : [];
  const largest = largestByGroup(wanted);
  for (const each of missing) placed.push(strips.place(each, spares, largest.get(groupOf(each))!));
  const sources = new Set(wanted.map(({ source }) => source));
  for (const group of grouped(placed, ({ wanted: each }) => groupOf(each)).values()) {
    leaveOthers(group, sources);
    joinGroup(group, placed, rows);
  }
  const edits = placed.flatMap(({ row, cells }) => row === undefined ? [] : [{ row, edit: editOf(row, cells) }]);
  const moved = edits.filter(({ edit }) => Object.keys(edit.cells).length > 0);
  return {
    came: placed.filter(({ row }) => row === undefined).map(({ cells }) => filled(cells)),
    changed: moved.filter(({ row }) => taken.has(row)).map(({ edit }) => edit),
    gone: gone.map((row) => editOf(row, EMPTIED)),
    reused: moved.filter(({ row }) => !taken.has(row)).map(({ edit }) => edit),
    kept: edits.length - moved.length,
    leftOut,
  };
}

/** Changes that make a layout true, as one action: new terminals stand behind those of their strip. */
export function layoutChanges(
  document: ScheduleDocument, layout: Layout, taken: ReadonlySet<LayoutPart> = new Set(LAYOUT_PARTS),
): Change[] {
  const edits = (['changed', 'gone', 'reused'] as const).filter((part) => taken.has(part)).flatMap((part) => layout[part])
    .flatMap(({ id, cells }) =>
      Object.entries(cells).map(([key, value]): CellEdit => ({ sheet: 'terminals', id, key, value })));
  const changes = setCells(document, edits);
  if (!taken.has('came')) return changes;
  const rows = document.rows('terminals');
  const byStrip = [...grouped(layout.came, ({ strip }) => strip)].map(([strip, cells]) => {
    const last = rows.findLastIndex((row) => row.cells.strip === strip);
    return { at: last < 0 ? rows.length : last + 1, cells };
  });
  // From the end, so that places still hold; strips that are new keep their order behind all others.
  const inserted = byStrip.sort((one, other) => one.at - other.at).reduceRight<{ at: number; cells: Cells[] }[]>(
    (joined, { at, cells }) => {
      const last = joined.at(-1);
      if (last?.at === at) last.cells.unshift(...cells);
      else joined.push({ at, cells: [...cells] });
      return joined;
    }, []);
  const ids = document.freeIds('terminals', layout.came.length);
  for (const { at, cells } of inserted) {
    const own = ids.splice(0, cells.length);
    changes.push({ op: 'insert', sheet: 'terminals', at, rows: cells.map((each, place) => ({ id: own[place]!, cells: each })) });
  }
  return changes;
}

const keyOfWanted = ({ enclosure, inside, outside, core }: WantedTerminal): string =>
  JSON.stringify(outside === '' ? [enclosure, '', inside] : [enclosure, outside, core]);

function keyOfRow({ cells }: Row): string {
  const text = (key: string) => textOf(cells[key]);
  return JSON.stringify(text('outside') === '' ? [text('enclosure'), '', text('inside')]
    : [text('enclosure'), text('outside'), text('core')]);
}

/** A terminal that holds nothing and is designated. */
const isSpare = ({ cells }: Row): boolean =>
  ['potential', 'inside', 'outside'].every((key) => textOf(cells[key]) === '') && textOf(cells.terminal) !== '';

/** Cores as they are laid out; others were entered by a person, who knows what they are. */
const LAID_CORE = /^(?:\d+:)?(?:\d+|L|N|PE)$/;

/** Whether what a terminal was laid out for is there no more; one without a potential was never laid out. */
function isGone({ cells }: Row, parts: Parts): boolean {
  if (textOf(cells.potential) === '') return false;
  const [inside, outside] = [textOf(cells.inside), textOf(cells.outside)];
  if (outside === '') return LAID_FOR.test(inside);
  return !parts.isCable(outside) || LAID_CORE.test(textOf(cells.core));
}

/** A terminal that is asked for and stands: with the potential that it has to have. */
function standing(row: Row, wanted: WantedTerminal): Placed {
  const { potential, inside, outside, size } = wanted;
  const cells: Record<string, CellValue> = { ...row.cells };
  if (size !== null) cells.size = size;
  const isOld = textOf(row.cells.potential) === potential;
  if (!isOld) Object.assign(cells, { potential, bridge: null, ...outside === '' ? {} : { inside: inside === '' ? null : inside } });
  return { row, cells, wanted, isOld };
}

/** The strips of a schedule, where new terminals find their place and their number. */
class Strips {
  readonly #highest = new Map<string, number>();
  /** The strip of a potential in an enclosure, and of a kind. */
  readonly #ofGroup = new Map<string, string>();
  readonly #ofKind = new Map<string, string>();

  constructor(rows: readonly Row[]) {
    for (const { cells } of rows) this.#note(textOf(cells.strip), numberOf(textOf(cells.terminal)) ?? 0);
  }

  /** Strip for a terminal: that of its potential, else of its kind in its enclosure, else the usual one. */
  of(wanted: WantedTerminal): string {
    return this.#ofGroup.get(groupOf(wanted)) ?? this.#ofKind.get(kindOf(wanted))
      ?? usualStrip(wanted.enclosure, wanted.kind);
  }

  /** Notes where a terminal stands; the first of a potential counts for it, the last of a kind for that. */
  settle(wanted: WantedTerminal, strip: string): void {
    if (strip === '') return;
    if (!this.#ofGroup.has(groupOf(wanted))) this.#ofGroup.set(groupOf(wanted), strip);
    this.#ofKind.set(kindOf(wanted), strip);
  }

  /** A new terminal at the end of its strip, or a spare one of it. */
  place(wanted: WantedTerminal, spares: Row[], most: Most): Placed {
    const { enclosure, potential, inside, outside, core, size } = wanted;
    const strip = this.of(wanted);
    this.settle(wanted, strip);
    const holds = { potential, inside: inside === '' ? null : inside, outside, core, size };
    const spare = spares.findIndex(({ cells }) => textOf(cells.strip) === strip && textOf(cells.enclosure) === enclosure
      && takes(cells.maxSize ?? null, size));
    if (spare >= 0) {
      const [row] = spares.splice(spare, 1);
      return { row, cells: { ...row!.cells, ...holds }, wanted, isOld: false };
    }
    const number = (this.#highest.get(strip) ?? 0) + 1;
    this.#note(strip, number);
    const { maxSize = null, width = null } = terminalFor(most.size, most.amps) ?? {};
    return {
      row: undefined, wanted, isOld: false,
      cells: { terminal: `${strip}:${number}`, strip, enclosure, ...holds, maxSize, width },
    };
  }

  #note(strip: string, number: number): void {
    this.#highest.set(strip, Math.max(this.#highest.get(strip) ?? 0, number));
  }
}

const kindOf = ({ enclosure, kind }: Pick<WantedTerminal, 'enclosure' | 'kind'>): string =>
  JSON.stringify([enclosure, kind]);

const takes = (maxSize: CellValue, size: number | null): boolean =>
  size === null || (typeof maxSize === 'number' && maxSize >= size);

/** The largest conductor [mm²] of a potential in a strip, and the most current [A] that it may carry there. */
interface Most {
  size: number | null;
  amps: number | null;
}

/** What the terminals of each potential are chosen for: all alike, as bridges fit one size. */
function largestByGroup(wanted: readonly WantedTerminal[]): Map<string, Most> {
  const larger = (one: number | null, other: number | null) => one === null ? other : Math.max(one, other ?? 0);
  const most = new Map<string, Most>();
  for (const each of wanted) {
    const before = most.get(groupOf(each));
    most.set(groupOf(each), {
      size: larger(each.size, before?.size ?? null), amps: larger(each.amps, before?.amps ?? null),
    });
  }
  return most;
}

/** The plus of a supply, before or behind a fuse at its output, which moves what is wired to it as it comes or goes. */
const PLUS = /:(?:\+|F\/2)$/;

const isOtherPlus = (one: string, other: string): boolean =>
  one !== other && PLUS.test(one) && PLUS.test(other) && one.replace(PLUS, '') === other.replace(PLUS, '');

/** Takes conductors out that lead to what another potential, or the same in another enclosure, comes from by now. */
function leaveOthers(group: readonly Placed[], sources: ReadonlySet<string>): void {
  for (const { cells, wanted: { inside, source } } of group) {
    const leadsTo = textOf(cells.inside);
    if (isOtherPlus(leadsTo, source)) cells.inside = source;
    else if (leadsTo !== '' && leadsTo !== inside && leadsTo !== source && sources.has(leadsTo)) cells.inside = null;
  }
}

/** Wires one terminal of a potential to what it comes from, and bridges those with it that have just come to it. */
function joinGroup(group: readonly Placed[], all: readonly Placed[], rows: readonly Row[]): void {
  const { source } = group[0]!.wanted;
  const free = group.find(({ cells }) => textOf(cells.inside) === '');
  // A person may have named the part alone.
  const part = source.slice(0, source.lastIndexOf(':'));
  const isWired = group.some(({ cells }) => cells.inside === source || cells.inside === part);
  if (source !== '' && free !== undefined && !isWired) free.cells.inside = source;
  const fresh = group.filter(({ isOld }) => !isOld);
  if (group.length === 1 || fresh.length === 0) return;
  for (const [strip, those] of grouped(group, ({ cells }) => cells.strip)) {
    const old = those.filter(({ isOld }) => isOld);
    const bridge = old.map(({ cells }) => textOf(cells.bridge)).find((each) => each !== '')
      ?? freeBridge(group[0]!.wanted.potential, textOf(strip), all, rows);
    // One that stood alone had nothing to be bridged with; of several, a person may have left some apart on purpose.
    const joining = old.length === 1 ? those : those.filter(({ isOld }) => !isOld);
    if (those.length > 1) for (const { cells } of joining) if (textOf(cells.bridge) === '') cells.bridge = bridge;
  }
}

/** Name for a new bridge: its potential, with its strip where another strip has a bridge of that name. */
function freeBridge(potential: string, strip: string, all: readonly Placed[], rows: readonly Row[]): string {
  const isElsewhere = [...all.map(({ cells }) => cells), ...rows.map(({ cells }) => cells)]
    .some((cells) => cells.bridge === potential && textOf(cells.strip) !== strip);
  return isElsewhere ? `${potential} ${strip}` : potential;
}

/** What of a terminal that stands becomes something else. */
function editOf({ id, cells: before }: Row, cells: Readonly<Record<string, CellValue>>): TerminalEdit {
  return {
    id, cells: Object.fromEntries(Object.entries(cells).filter(([key, value]) => (before[key] ?? null) !== (value === '' ? null : value))
      .map(([key, value]) => [key, value === '' ? null : value])),
  };
}

const filled = (cells: Readonly<Record<string, CellValue>>): Cells =>
  Object.fromEntries(Object.entries(cells).filter(([, value]) => value !== null && value !== ''));

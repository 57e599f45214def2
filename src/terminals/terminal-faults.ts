import { grouped, type ScheduleDocument } from '../schedule/index.ts';
import { Parts, type Figures } from './parts.ts';
import { inStripOrder, listTerminals, rowsNamed, type ListedTerminal } from './placed-terminals.ts';
import { Unions } from './unions.ts';
import { voltageBand } from './voltage-band.ts';
import { EARTH, wantedTerminals } from './wanted.ts';
import { insideWires, type InsideWire } from './wiring.ts';

/** What is wrong with a terminal beside others; each is absent where nothing is. Terminals are named by designation. */
export interface TerminalFaults {
  /** Other potentials on its bridge. */
  shorts?: readonly string[];
  /** One of its ends, and the potential that this has by the schedule, which is another than its own. */
  otherwise?: { readonly end: string; readonly meant: string };
  /** Strips that its bridge would have to span. */
  strips?: readonly string[];
  /** A terminal of the same potential that it is neither bridged nor wired with. */
  apartFrom?: string;
  /** Nothing is wired inside to any terminal that it is joined with. */
  unfed?: true;
  /** Others that hold the same core. */
  sameCore?: readonly string[];
  /** How many conductors come to a side of it, or to the connection that it names. */
  crowded?: { readonly place: string; readonly conductors: number };
  /** The neighbour without a partition between, one on mains and one on extra-low voltage. */
  beside?: string;
  /** Ends that name nothing, and ends that name several things. */
  lost?: 'inside' | 'outside';
  doubtful?: 'inside' | 'outside';
}

/** What is wrong with terminals beside others, by the id of their row; none where nothing is. */
export function terminalFaults(document: ScheduleDocument, figures: Figures): Map<number, TerminalFaults> {
  const found = new Map<number, TerminalFaults>();
  const terminals = listTerminals(document);
  if (terminals.length === 0) return found;
  const parts = new Parts(document, figures);
  const say: Say = ({ row: { id } }, fault) => { found.set(id, { ...found.get(id), ...fault }); };
  findBridges(terminals, say);
  findEnds(parts, terminals, say);
  findOtherwise(parts, terminals, insideWires(document, figures, parts), say);
  findCores(parts, terminals, say);
  findCrowds(terminals, say);
  findApart(parts, terminals, say);
  findNeighbours(parts, terminals, say);
  return found;
}

type Say = (terminal: ListedTerminal, fault: TerminalFaults) => void;

function findBridges(terminals: readonly ListedTerminal[], say: Say): void {
  for (const [bridge, those] of grouped(terminals, (each) => each.bridge)) {
    if (bridge === '') continue;
    const potentials = [...new Set(those.map(({ potential }) => potential).filter((each) => each !== ''))];
    // One on no strip is told by itself.
    const strips = [...new Set(those.map(({ strip }) => strip).filter((each) => each !== ''))];
    for (const each of those) {
      if (potentials.length > 1) say(each, { shorts: potentials.filter((other) => other !== each.potential) });
      if (strips.length > 1) say(each, { strips });
    }
  }
}

function findEnds(parts: Parts, terminals: readonly ListedTerminal[], say: Say): void {
  for (const each of terminals) {
    for (const end of ['inside', 'outside'] as const) {
      if (each[end] === '') continue;
      const named = rowsNamed(parts, end, each[end]).length;
      if (named === 0) say(each, { lost: end });
      else if (named > 1) say(each, { doubtful: end });
    }
  }
}

/**
 * Ends that have another potential by the schedule than their terminal: the list would join the two, or is older than a
 * change. Terminals whose potential is called as a person pleases are left out.
 */
function findOtherwise(
  parts: Parts, terminals: readonly ListedTerminal[], wires: readonly InsideWire[], say: Say,
): void {
  const { wanted } = wantedTerminals(parts);
  const known = new Set(wanted.map(({ potential }) => potential));
  // By core and by connection; several where a tag stands on several sheets.
  const meant = new Map<string, Set<string>>();
  const mean = (end: string, potential: string): void => {
    meant.set(end, (meant.get(end) ?? new Set()).add(potential));
  };
  const coreOf = (enclosure: string, outside: string, core: string) => JSON.stringify([enclosure, outside, core]);
  for (const { enclosure, inside, source, outside, core, potential } of wanted) {
    if (outside !== '') mean(coreOf(enclosure, outside, core), potential);
    for (const connection of [inside, source]) if (connection !== '') mean(connection, potential);
  }
  for (const { from, to, potential } of wires) for (const connection of [from, to]) mean(connection, potential);
  for (const each of terminals) {
    const { enclosure, potential, inside, outside, core } = each;
    if (!known.has(potential)) continue;
    for (const [end, told] of [[inside, inside], [coreOf(enclosure, outside, core), `${outside} ${core}`]] as const) {
      const potentials = meant.get(end);
      if (potentials === undefined || potentials.has(potential)) continue;
      say(each, { otherwise: { end: told, meant: [...potentials].join(', ') } });
    }
  }
}

/** A core has two ends: one on a terminal and one in the field, or both on terminals of two enclosures. */
function findCores(parts: Parts, terminals: readonly ListedTerminal[], say: Say): void {
  const cores = grouped(terminals.filter(({ outside, core }) => outside !== '' && core !== ''), ({ outside, core }) => JSON.stringify([outside, core]));
  for (const those of cores.values()) {
    if (those.length < 2) continue;
    const goesOn = comesIn(parts, those[0]!.outside);
    for (const each of those) {
      const others = those.filter((other) => other !== each && !(goesOn && other.enclosure !== each.enclosure));
      if (others.length > 0) say(each, { sameCore: others.map(({ terminal }) => terminal) });
    }
  }
}

/** Conductors that come to the inside of a terminal, and to one connection of a part: each is to have one. */
function findCrowds(terminals: readonly ListedTerminal[], say: Say): void {
  const designated = grouped(terminals, ({ terminal }) => terminal);
  const coming = grouped(terminals.filter(({ inside }) => inside !== ''), ({ inside }) => inside);
  for (const [place, those] of coming) {
    const own = (designated.get(place) ?? []).filter(({ inside }) => inside !== '');
    const conductors = those.length + own.length;
    if (conductors < 2 || (!place.includes(':') && !designated.has(place))) continue;
    for (const each of [...those, ...own]) say(each, { crowded: { place, conductors } });
  }
}

/** Terminals of one potential that do not hang together, and those that nothing inside is wired to. */
function findApart(parts: Parts, terminals: readonly ListedTerminal[], say: Say): void {
  const unions = joined(terminals);
  const isFed = ({ inside, outside }: ListedTerminal) => inside !== '' || comesIn(parts, outside);
  for (const [potential, those] of grouped(terminals, (each) => each.potential)) {
    if (potential === '') continue;
    // Protective conductors of each enclosure are joined by its own earthing.
    const nets = potential === EARTH ? grouped(those, ({ enclosure }) => enclosure).values() : [those];
    for (const net of nets) findPartsOf(net, unions, isFed, say);
  }
}

function findPartsOf(
  net: readonly ListedTerminal[], unions: Unions<string>, isFed: (terminal: ListedTerminal) => boolean, say: Say,
): void {
  const pieces = [...grouped(net, (each) => unions.of(nameOf(each))).values()];
  const main = pieces.find((piece) => piece.some(isFed)) ?? pieces[0]!;
  for (const piece of pieces) {
    for (const each of piece) {
      if (piece !== main) say(each, { apartFrom: main[0]!.terminal });
      else if (!piece.some(isFed)) say(each, { unfed: true });
    }
  }
}

/** Whether a cable comes from elsewhere, from a feed or another enclosure. */
const comesIn = (parts: Parts, outside: string): boolean =>
  outside !== '' && rowsNamed(parts, 'outside', outside).some(({ sheet }) => sheet === 'feeds' || sheet === 'branches');

const nameOf = ({ row: { id } }: ListedTerminal): string => `terminal ${id}`;

/** What is joined: by bridges within a strip, by conductors inside, and by cores from terminal to terminal. */
export function joined(terminals: readonly ListedTerminal[]): Unions<string> {
  const unions = new Unions<string>();
  for (const each of terminals) {
    const { bridge, strip, inside, outside, core, terminal } = each;
    if (bridge !== '') unions.join(nameOf(each), `bridge ${JSON.stringify([strip, bridge])}`);
    if (inside !== '') unions.join(nameOf(each), `connection ${inside}`);
    if (terminal !== '') unions.join(nameOf(each), `connection ${terminal}`);
    if (outside !== '' && core !== '') unions.join(nameOf(each), `core ${JSON.stringify([outside, core])}`);
  }
  return unions;
}

function findNeighbours(parts: Parts, terminals: readonly ListedTerminal[], say: Say): void {
  const bands = bandsOfPotentials(parts, terminals);
  for (const those of grouped(terminals, ({ enclosure, strip }) => JSON.stringify([enclosure, strip])).values()) {
    const row = inStripOrder(those);
    row.forEach((each, place) => {
      const next = row[place + 1];
      if (next === undefined || each.hasPartition) return;
      const [band, other] = [bands.get(each.potential), bands.get(next.potential)];
      if (band === undefined || other === undefined || band === other) return;
      say(each, { beside: next.terminal });
      say(next, { beside: each.terminal });
    });
  }
}

/** Whether each potential is one of mains, which it is where any of its ends is, or of extra-low voltage. */
export function bandsOfPotentials(parts: Parts, terminals: readonly ListedTerminal[]): Map<string, 'elv' | 'mains'> {
  const bands = new Map<string, 'elv' | 'mains'>();
  for (const { potential, inside, outside } of terminals) {
    if (potential === '' || potential === EARTH) continue;
    for (const [end, text] of [['inside', inside], ['outside', outside]] as const) {
      const band = text === '' ? undefined : bandOfEnd(parts, end, text);
      if (band !== undefined && bands.get(potential) !== 'mains') bands.set(potential, band);
    }
  }
  return bands;
}

function bandOfEnd(parts: Parts, end: 'inside' | 'outside', text: string): 'elv' | 'mains' | undefined {
  const [named, ...more] = rowsNamed(parts, end, text);
  if (named === undefined || more.length > 0) return undefined;
  const { sheet, id, behind } = named;
  switch (sheet) {
    case 'feeds': return voltageBand(parts.number(sheet, id, 'voltage'), '');
    case 'outputs': return voltageBand(parts.number(sheet, id, 'voltage'), parts.text(sheet, id, 'kind'));
    case 'supplies': return /^:(\d+\/)?[LN]$/.test(behind) ? 'mains' : voltageBand(parts.number(sheet, id, 'voltage'), 'dc');
    case 'ways': case 'runs': {
      const supply = parts.find('supplies', parts.text(sheet, id, 'rail'));
      return supply === undefined ? undefined : voltageBand(parts.number('supplies', supply, 'voltage'), 'dc');
    }
    case 'branches': return 'elv';
    default: return undefined;
  }
}

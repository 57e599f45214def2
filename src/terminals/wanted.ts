import { grouped } from '../schedule/index.ts';
import { voltageBand } from './voltage-band.ts';
import type { Parts } from './parts.ts';

/** What stands apart from the rest: mains, the plus of rails and ways, their common minus, the bus. */
export const STRIP_KINDS = ['mains', 'plus', 'minus', 'bus'] as const;
export type StripKind = (typeof STRIP_KINDS)[number];

/** A terminal that the schedule asks for. */
export interface WantedTerminal {
  /** Tag of the enclosure; empty where it is not known. */
  readonly enclosure: string;
  readonly kind: StripKind;
  readonly potential: string;
  /** Connection of a part that this terminal is for; empty for one that a cable asks for. */
  readonly inside: string;
  /** Connection from which its potential comes: one of its terminals in an enclosure is wired to it. */
  readonly source: string;
  /** Tag of the cable, and its core; both empty for a terminal that is wired inside alone. */
  readonly outside: string;
  readonly core: string;
  /** Cross-section [mm²] of the core; `null` where it is not known. */
  readonly size: number | null;
  /** Current [A] that its potential may carry for ever; `null` where it is not known. */
  readonly amps: number | null;
}

/** Mark of protective conductors, which are one potential in a panel (IEC 60445). */
export const EARTH = 'PE';

/** The two conductors of a bus. Common practice, no source: standards of buses mark them each in its way. */
const BUS_MARKS = ['+', '-'] as const;

/** What a row has that no terminal can be laid out for. */
export interface LeftOut {
  readonly sheet: 'runs' | 'outputs' | 'branches' | 'feeds';
  readonly id: number;
  readonly why: 'untagged' | 'doubled' | 'railless';
}

/** What a terminal is asked for by, in its strip and its enclosure. */
type Ask = Omit<WantedTerminal, 'inside' | 'source' | 'outside' | 'core' | 'size' | 'amps'> & Partial<WantedTerminal>;

/**
 * The terminals that a schedule asks for, one for each core and for each connection that needs one. In the order of
 * feeds, outputs, runs and branches, so that each strip begins with what comes in.
 */
export function wantedTerminals(parts: Parts): { readonly wanted: WantedTerminal[]; readonly leftOut: LeftOut[] } {
  const wanted: WantedTerminal[] = [];
  const leftOut: LeftOut[] = [];
  const ask = (terminal: Ask): void => {
    wanted.push({ inside: '', source: '', outside: '', core: '', size: null, amps: null, ...terminal });
  };
  const tagged = (sheet: LeftOut['sheet']): [number, string][] => parts.rows(sheet).flatMap((id): [number, string][] => {
    const tag = parts.text(sheet, id, parts.tagKey(sheet));
    if (tag !== '' && parts.find(sheet, tag) === id) return [[id, tag]];
    leftOut.push({ sheet, id, why: tag === '' ? 'untagged' : 'doubled' });
    return [];
  });
  for (const [id, tag] of tagged('feeds')) askForFeed(parts, id, tag, ask);
  for (const [id, tag] of tagged('outputs')) askForOutput(parts, id, tag, ask);
  for (const [id, tag] of tagged('runs')) {
    if (parts.text('runs', id, 'rail') === '') leftOut.push({ sheet: 'runs', id, why: 'railless' });
    else askForRun(parts, id, tag, ask);
  }
  for (const [id, tag] of tagged('branches')) askForBranch(parts, id, tag, ask);
  return { wanted: withSources(wanted), leftOut };
}

/** Where terminals of one potential stand: those of one strip in one enclosure. */
export const groupOf = ({ enclosure, kind, potential }: Pick<WantedTerminal, 'enclosure' | 'kind' | 'potential'>): string =>
  JSON.stringify([enclosure, kind, potential]);

/**
 * Potential by potential, protective conductors last, with a terminal for the connection that a potential comes from
 * where no cable leaves room for its conductor.
 */
function withSources(wanted: readonly WantedTerminal[]): WantedTerminal[] {
  const isEarth = (group: readonly WantedTerminal[]) => Number(group[0]!.potential === EARTH);
  const groups = [...grouped(wanted, groupOf).values()].sort((one, other) => isEarth(one) - isEarth(other));
  return groups.flatMap((group) => {
    const { source } = group[0]!;
    if (source === '' || group.some(({ inside }) => inside === '')) return group;
    // One part alone is wired to it without a terminal between.
    return group.length === 1 ? [] : [{ ...group[0]!, inside: source }, ...group];
  });
}

/** Mains as they come into each enclosure that uses the feed, and what is wired to them there. */
function askForFeed(parts: Parts, id: number, feed: string, ask: (terminal: Ask) => void): void {
  const own = parts.text('feeds', id, 'enclosure');
  const amps = parts.number('feeds', id, 'rated');
  const chains = parts.chainsOfFeed(feed);
  const places = [...new Set(chains.map(({ enclosure }) => enclosure))];
  const elsewhere = own === '' ? places : places.filter((enclosure) => enclosure !== own);
  const cable = (enclosure: string, before: string, line: Pick<Ask, 'potential' | 'source'>): void => {
    const at = { enclosure, kind: 'mains' as const, outside: feed };
    ask({ ...at, ...line, core: `${before}L`, amps });
    ask({ ...at, potential: `${feed} N`, core: `${before}N`, amps });
    ask({ ...at, potential: EARTH, core: `${before}PE` });
  };
  const protectedLine = { potential: `${feed} L`, source: own === '' ? '' : `${feed}:2` };
  // Where its breaker is mounted, what comes in is not yet what it protects, and goes on to the other enclosures.
  if (own !== '') {
    cable(own, '', { potential: `${feed}:1`, source: `${feed}:1` });
    for (const place of elsewhere.keys()) cable(own, `${place + 2}:`, protectedLine);
  }
  for (const [place, enclosure] of elsewhere.entries()) {
    cable(enclosure, own === '' ? '' : `${place + 2}:`, { potential: `${feed} L`, source: '' });
  }
  for (const enclosure of own === '' ? elsewhere : [own, ...elsewhere]) {
    const at = { enclosure, kind: 'mains' as const };
    const source = enclosure === own ? protectedLine.source : '';
    const here = chains.filter((chain) => chain.enclosure === enclosure);
    // The first connection of each chain; the others are looped from it.
    for (const { connections } of here) ask({ ...at, potential: `${feed} L`, source, inside: connections[0]!, amps });
    for (const unit of here.flatMap(({ units }) => units)) {
      ask({ ...at, potential: `${feed} N`, inside: `${unit}N`, amps });
      ask({ ...at, potential: EARTH, inside: `${unit}PE` });
    }
  }
}

/** The switched line, neutral and protective conductor of a load on mains, or both conductors of another. */
function askForOutput(parts: Parts, id: number, output: string, ask: (terminal: Ask) => void): void {
  const enclosure = parts.enclosureOfOutput(id);
  const [feed, rail] = [parts.text('outputs', id, 'feed'), parts.text('outputs', id, 'rail')];
  const amps = parts.ratingBehind(feed, rail);
  const switched = { enclosure, inside: '', source: `${output}:14`, outside: output, amps };
  if (rail !== '') {
    ask({ ...switched, kind: 'plus', potential: `${output} L+`, core: '1' });
    ask({ ...minusOf(parts, rail, enclosure), outside: output, core: '2' });
  } else if (feed !== '') {
    ask({ ...switched, kind: 'mains', potential: `${output} L`, core: 'L' });
    ask({ enclosure, kind: 'mains', potential: `${feed} N`, outside: output, core: 'N', amps });
    ask({ enclosure, kind: 'mains', potential: EARTH, outside: output, core: 'PE' });
  } else {
    // A contact of which nothing says what feeds it: both its ends go out, with mains unless it is known better.
    const kind = voltageBand(parts.number('outputs', id, 'voltage'), parts.text('outputs', id, 'kind')) === 'elv' ? 'plus' : 'mains';
    ask({ ...switched, kind, potential: `${output}:11`, source: `${output}:11`, core: '1' });
    ask({ ...switched, kind, potential: `${output}:14`, core: '2' });
  }
}

/** Both conductors of each pair of a run, at both of its ends where it is fed at both, and the bus in its cable. */
function askForRun(parts: Parts, id: number, run: string, ask: (terminal: Ask) => void): void {
  const size = parts.sizeOfRun(id);
  const pairs = parts.number('runs', id, 'pairs') ?? 1;
  const rail = parts.text('runs', id, 'rail');
  const end = (way: string, enclosure: string, before: string): void => {
    const amps = way === '' ? parts.given(rail) : parts.ratingOfWay(way);
    for (let pair = 0; pair < pairs; pair += 1) {
      ask({
        enclosure, kind: 'plus', potential: way === '' ? `${rail} L+` : `${way} L+`,
        source: way !== '' ? `${way}:2` : parts.isRailIn(rail, enclosure) ? parts.plusOf(rail) : '', outside: run, core: `${before}${2 * pair + 1}`, size, amps,
      });
      ask({ ...minusOf(parts, rail, enclosure), outside: run, core: `${before}${2 * pair + 2}`, size });
    }
  };
  const enclosure = parts.enclosureOfRun(id);
  end(parts.text('runs', id, 'way'), enclosure, '');
  const second = parts.text('runs', id, 'secondWay');
  if (second !== '') end(second, parts.enclosureOfWay(second), '2:');
  const branch = parts.text('runs', id, 'branch');
  if (branch !== '') askForBus(parts, branch, enclosure, { outside: run, first: 2 * pairs + 1, size }, ask);
}

/** The common minus of a rail in an enclosure; it comes from the supply where that is mounted there. */
function minusOf(parts: Parts, rail: string, enclosure: string): Ask {
  return {
    enclosure, kind: 'minus', potential: `${rail} L-`, source: parts.isRailIn(rail, enclosure) ? `${rail}:-` : '', amps: parts.given(rail),
  };
}

/** The bus of a branch that no run takes along, and the terminator where the line ends at the panel. */
function askForBranch(parts: Parts, id: number, branch: string, ask: (terminal: Ask) => void): void {
  const cables = parts.runsOfBranch(branch);
  const own = parts.text('branches', id, 'enclosure');
  const bus = (enclosure: string, before: string) => {
    askForBus(parts, branch, enclosure, { outside: branch, first: 1, before, size: null }, ask);
  };
  if (cables.length === 0) bus(own, '');
  // The bus goes on, by a cable of its own, to enclosures from which runs take it along.
  const elsewhere = own === '' ? []
    : [...new Set(cables.map((each) => parts.enclosureOfRun(each)))].filter((each) => each !== '' && each !== own);
  for (const [place, enclosure] of elsewhere.entries()) {
    for (const each of [own, enclosure]) bus(each, place === 0 ? '' : `${place + 1}:`);
  }
  if (cables.length > 1 || elsewhere.length > 0) return;
  for (const [place, mark] of BUS_MARKS.entries()) {
    ask({ ...busOf(parts, branch, own === '' && cables.length > 0 ? parts.enclosureOfRun(cables[0]!) : own, mark), inside: `${branch}:R${place + 1}` });
  }
}

function askForBus(
  parts: Parts, branch: string, enclosure: string,
  cable: { outside: string; first: number; before?: string; size: number | null }, ask: (terminal: Ask) => void,
): void {
  const { outside, first, before = '', size } = cable;
  for (const [place, mark] of BUS_MARKS.entries()) {
    ask({ ...busOf(parts, branch, enclosure, mark), outside, core: `${before}${first + place}`, size });
  }
}

/** One conductor of a bus in an enclosure; it comes from its coupler where that is mounted there. */
function busOf(parts: Parts, branch: string, enclosure: string, mark: string): Ask {
  const own = parts.enclosureOfBranch(branch);
  const source = own === '' || own === enclosure ? `${branch}:${mark}` : '';
  return { enclosure, kind: 'bus', potential: `${branch} ${mark}`, source };
}

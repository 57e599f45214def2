import { grouped, type Row, type ScheduleDocument } from '../schedule/index.ts';
import { Parts, type Figures } from './parts.ts';
import { inStripOrder, listTerminals, rowsNamed, type ListedTerminal } from './placed-terminals.ts';

/** One terminal of the wiring list, with both of its conductors; texts are empty where nothing is entered. */
export interface WiredTerminal extends ListedTerminal {
  /** The terminals that it is bridged with, in the order of their numbers. */
  readonly bridgedWith: readonly string[];
  /** Where the cable goes, or what the load is; empty where it is not known. */
  readonly to: string;
}

/** A conductor within an enclosure that touches no terminal. */
export interface InsideWire {
  readonly enclosure: string;
  readonly from: string;
  readonly to: string;
  readonly potential: string;
  /** Current [A] that it carries, with all that is looped on from it; `null` where it is not known. */
  readonly amps: number | null;
}

/** The terminals in the order in which they stand: by enclosure, strip and number. */
export function wiredTerminals(document: ScheduleDocument, figures: Figures): WiredTerminal[] {
  const parts = new Parts(document, figures);
  const terminals = listTerminals(document);
  const bridges = grouped(terminals.filter(({ bridge }) => bridge !== ''), ({ strip, bridge }) => JSON.stringify([strip, bridge]));
  const strips = grouped(terminals, ({ enclosure, strip }) => JSON.stringify([enclosure, strip]));
  return [...strips.values()].flatMap((those) => inStripOrder(those).map((each): WiredTerminal => {
    const bridged = bridges.get(JSON.stringify([each.strip, each.bridge])) ?? [];
    return {
      ...each, to: each.outside === '' ? '' : destinationOf(parts, each.outside),
      bridgedWith: inStripOrder(bridged.filter((other) => other !== each)).map(({ terminal }) => terminal),
    };
  }));
}

/** Where the cable of a run, output, branch or feed goes. */
function destinationOf(parts: Parts, outside: string): string {
  const [named] = rowsNamed(parts, 'outside', outside);
  if (named === undefined) return '';
  const texts = { runs: ['to', 'note'], outputs: ['load', 'area'], branches: ['note'], feeds: ['note'] } as const;
  const { sheet, id } = named;
  const [first = '', ...more] = texts[sheet as keyof typeof texts].map((key) => parts.text(sheet, id, key));
  if (sheet === 'outputs') return [first, ...more].filter((each) => each !== '').join(', ');
  return [first, ...more].find((each) => each !== '') ?? '';
}

/**
 * Conductors from part to part: what joins the units of each supply, its plus by way of its fuse, looped through the
 * inputs of its ways and the commons of the outputs that switch its loads; the line of each feed through the inputs of
 * its supplies; and the commons of outputs, each fed from the one before. None of them leaves its enclosure.
 * @param parts the same read by tag, where they are read already.
 */
export function insideWires(
  document: ScheduleDocument, figures: Figures, parts = new Parts(document, figures),
): InsideWire[] {
  const wires: InsideWire[] = [];
  const chain = (
    enclosure: string, potential: string, connections: readonly string[], amps: readonly (number | null)[],
  ): void => {
    // What flows into a link is drawn by all that come after it.
    connections.slice(1).forEach((to, place) => {
      const behind = amps.slice(place + 1);
      wires.push({
        enclosure, potential, from: connections[place]!, to,
        amps: behind.includes(null) ? null : (behind as number[]).reduce((sum, each) => sum + each, 0),
      });
    });
  };
  for (const supply of parts.rows('supplies')) {
    const rail = parts.text('supplies', supply, 'rail');
    if (rail === '' || parts.find('supplies', rail) !== supply) continue;
    const own = parts.text('supplies', supply, 'enclosure');
    const plus = parts.isFused(rail) ? `${rail}:+` : `${rail} L+`;
    const { units, drawn } = parts.shared(rail, parts.number('supplies', supply, 'demand'));
    // What decouples redundant units stands between, of which the schedule knows no connection.
    if (!parts.isRedundant(rail)) chain(own, plus, units.map((unit) => `${unit}+`), drawn);
    chain(own, `${rail} L-`, units.map((unit) => `${unit}-`), drawn);
    if (parts.isFused(rail)) chain(own, plus, [`${rail}:+`, `${rail}:F/1`], [0, parts.number('supplies', supply, 'demand')]);
    for (const { enclosure, connections, amps } of parts.chainsOfRail(rail)) {
      const isHere = parts.isRailIn(rail, enclosure);
      chain(enclosure, `${rail} L+`, isHere ? [parts.plusOf(rail), ...connections] : connections, isHere ? [0, ...amps] : amps);
    }
  }
  const onTerminals = new Set(listTerminals(document).map(({ inside }) => inside));
  for (const id of parts.rows('feeds')) {
    const feed = parts.text('feeds', id, 'feed');
    if (feed === '') continue;
    for (const { enclosure, connections, amps } of parts.chainsOfFeed(feed)) {
      // Where no terminal leads to the first of them, its breaker does.
      const isDirect = parts.text('feeds', id, 'enclosure') === enclosure && !onTerminals.has(connections[0]!);
      chain(enclosure, `${feed} L`, isDirect ? [`${feed}:2`, ...connections] : connections, isDirect ? [0, ...amps] : amps);
    }
  }
  return wires;
}

/** A cable with what is known of it. */
export interface CableLine {
  readonly sheet: 'runs' | 'outputs' | 'branches' | 'feeds';
  readonly row: Row;
  readonly tag: string;
  readonly type: string;
  /** Cores in it; `null` where that is not known. */
  readonly cores: number | null;
  /** Its cores that are on a terminal. */
  readonly used: number;
  /** Strips on which it ends. */
  readonly from: readonly string[];
  readonly to: string;
  /** Length [m], of all of it; `null` where it is not known. */
  readonly length: number | null;
  /** Largest current [A] in it; `null` where it is not known, `undefined` where none is calculated. */
  readonly amps: number | null | undefined;
  readonly gland: string;
}

/** The cables that end on terminals or are to: one for each run, output, feed and branch that has one of its own. */
export function cableSchedule(document: ScheduleDocument, figures: Figures): CableLine[] {
  const parts = new Parts(document, figures);
  const landed = grouped(listTerminals(document).filter(({ outside }) => outside !== ''), ({ outside }) => outside);
  return (['runs', 'outputs', 'branches', 'feeds'] as const).flatMap((sheet) => document.rows(sheet).flatMap((row): CableLine[] => {
    const tag = parts.text(sheet, row.id, parts.tagKey(sheet));
    const ends = landed.get(tag) ?? [];
    // A branch may have no cable of its own, and a feed that nothing hangs on comes to no terminal.
    if (tag === '' || (ends.length === 0 && (sheet === 'branches' || sheet === 'feeds'))) return [];
    const number = (key: string) => parts.number(sheet, row.id, key);
    const isRun = sheet === 'runs';
    return [{
      sheet, row, tag, type: isRun ? cableType(parts, row.id) : '', cores: isRun ? number('cores') : null,
      used: new Set(ends.map(({ core }) => core)).size, from: [...new Set(ends.map(({ strip }) => strip))],
      to: destinationOf(parts, tag), length: isRun ? number('wholeLength') ?? number('length') : null,
      amps: sheet === 'branches' ? undefined : number(sheet === 'feeds' ? 'demand' : 'current'),
      gland: isRun ? parts.text('runs', row.id, 'gland') : '',
    }];
  }));
}

const cableType = (parts: Parts, id: number): string => {
  const own = parts.text('runs', id, 'cable');
  return own === '' ? parts.text('runs', id, 'conductor') : own;
};

/** A strip, and how many of its terminals are free. */
export interface StripLine {
  readonly enclosure: string;
  readonly strip: string;
  readonly terminals: number;
  readonly spare: number;
}

/** The strips with their spare terminals: those that hold no conductor. */
export function stripLines(document: ScheduleDocument): StripLine[] {
  const strips = grouped(listTerminals(document), ({ enclosure, strip }) => JSON.stringify([enclosure, strip]));
  return [...strips.values()].map((those) => ({
    enclosure: those[0]!.enclosure, strip: those[0]!.strip, terminals: those.length,
    spare: those.filter(({ inside, outside, potential }) => inside === '' && outside === '' && potential === '').length,
  }));
}

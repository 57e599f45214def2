import { terminalCurrent } from '../electrical/index.ts';
import { grouped, type ScheduleDocument } from '../schedule/index.ts';
import { Parts, type Figures } from './parts.ts';
import { listTerminals, rowsNamed, type ListedTerminal } from './placed-terminals.ts';
import { EARTH } from './wanted.ts';

/** What flows through a bridge at the most, and what it carries. */
export interface BridgeCurrent {
  /** Current [A] next to where it is fed: all that is drawn through it but by what hangs on the fed terminal itself. */
  readonly amps: number;
  /** Current [A] that the smallest of its terminals carries. */
  readonly limit: number;
  /** How many of its terminals lead to something of which the current is not known. */
  readonly unknown: number;
}

/** What one terminal leads to draws; `null` where it is not known. */
interface Drawn {
  readonly amps: number | null;
  /** Whether its potential comes from there. */
  readonly isSource: boolean;
}

const NOTHING: Drawn = { amps: 0, isSource: false };
const SOURCE: Drawn = { amps: 0, isSource: true };

/**
 * What flows through each bridge, for the terminals on it by the id of their row: the sum of the currents of all cables
 * and parts behind it, as the neutral of several outputs carries. Bridges of which a size of terminal is not known are
 * left out, and those of protective conductors and of the bus.
 */
export function bridgeCurrents(document: ScheduleDocument, figures: Figures): Map<number, BridgeCurrent> {
  const found = new Map<number, BridgeCurrent>();
  const terminals = listTerminals(document).filter(({ bridge, potential }) => bridge !== '' && potential !== EARTH);
  if (terminals.length === 0) return found;
  const parts = new Parts(document, figures);
  for (const those of grouped(terminals, ({ strip, bridge }) => JSON.stringify([strip, bridge])).values()) {
    const limits = those.map(({ row }) => typeof row.cells.maxSize === 'number' ? terminalCurrent(row.cells.maxSize) : null);
    if (those.length < 2 || limits.includes(null)) continue;
    const drawn = those.map((each) => drawnAt(parts, each));
    const first = drawn.findIndex(({ isSource }) => isSource);
    const behind = drawn.filter((_, place) => place !== first);
    const current: BridgeCurrent = {
      amps: behind.reduce((sum, { amps }) => sum + (amps ?? 0), 0), limit: Math.min(...limits as number[]),
      unknown: behind.filter(({ amps }) => amps === null).length,
    };
    for (const { row: { id } } of those) found.set(id, current);
  }
  return found;
}

function drawnAt(parts: Parts, { inside, outside }: ListedTerminal): Drawn {
  const [out, ...others] = outside === '' ? [] : rowsNamed(parts, 'outside', outside);
  if (others.length > 0) return { amps: null, isSource: false };
  const isFed = inside !== '' && isSourceConnection(parts, inside);
  switch (out?.sheet) {
    case 'runs': {
      const [amps, pairs] = [parts.number('runs', out.id, 'current'), parts.number('runs', out.id, 'pairs')];
      return { amps: amps === null || pairs === null ? null : amps / pairs, isSource: isFed };
    }
    case 'outputs': return { amps: parts.number('outputs', out.id, 'current'), isSource: isFed };
    case 'feeds': return SOURCE;
    case 'branches': return NOTHING;
    default: return isFed ? SOURCE : inside === '' ? NOTHING : drawnBy(parts, inside);
  }
}

const isSourceConnection = (parts: Parts, inside: string): boolean => rowsNamed(parts, 'inside', inside).some(({ sheet, behind }) =>
  sheet === 'ways' || sheet === 'branches' || (sheet === 'supplies' && [':+', ':-', ':F/2', ''].includes(behind))
  || (sheet === 'feeds' && behind !== ':1') || (sheet === 'outputs' && behind !== ':11'));

/** What a part draws through a connection of its own: a supply from its feed, a chain of outputs through its common. */
function drawnBy(parts: Parts, inside: string): Drawn {
  const [named, ...others] = rowsNamed(parts, 'inside', inside);
  if (named === undefined || others.length > 0) return { amps: null, isSource: false };
  const { sheet, id, behind } = named;
  if (sheet === 'supplies') {
    // The line is looped on from the first supply of a feed: all of them draw through it.
    // What the further units draw is counted with the first.
    const amps = behind === ':PE' || behind.includes('/') ? 0 : behind === ':L' ? parts.drawnBySupplies(id) : parts.number('supplies', id, 'inputCurrent');
    return { amps, isSource: false };
  }
  if (sheet === 'outputs') return { amps: parts.drawnByChain(id), isSource: false };
  if (sheet === 'modules') return { amps: parts.number('modules', id, 'current'), isSource: false };
  return NOTHING;
}

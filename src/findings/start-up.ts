import { startCurrent, type Starting } from '../electrical/index.ts';
import { tagOf } from '../schedule/index.ts';
import type { Gathering } from './facts.ts';

/** What the devices of a supply ask for when all of them start at once. */
export interface StartUp {
  /** Sum over the rows that are known [A]. */
  readonly amps: number;
  /** Rows of which it is not known. */
  readonly missing: number;
  /** Tags of the rows that ask for most, the largest first. */
  readonly largest: readonly string[];
}

/** As many rows are named. */
const NAMED = 3;

/**
 * What starts at once behind the supplies that switch off and try again on overload; all others get over it, and where
 * there are only such nothing is gathered.
 */
export const START_UPS: Gathering<StartUp> = {
  sheet: 'supplies',
  reads: [
    ['devices', 'rail'], ['devices', 'type'], ['devices', 'qty'], ['devices', 'unitDraw'], ['devices', 'ref'],
    ['types', 'inrush'], ['supplies', 'overload'],
  ],
  gather: (document, book) => {
    const retrying = new Set(document.rows('supplies').filter(({ cells }) => cells.overload === 'retries')
      .map(({ id }) => id));
    const rows = new Map<number, { tag: string; starting: Starting }[]>();
    if (retrying.size === 0) return new Map();
    const [rails, types] = [book.targets('devices', 'rail'), book.targets('devices', 'type')];
    for (const row of document.rows('devices')) {
      const [rail, type] = [rails[row.id]!, types[row.id]!];
      if (!retrying.has(rail)) continue;
      const own = (key: string) => book.number('devices', row.id, key);
      const inrushAmps = type < 0 ? NaN : book.number('types', type, 'inrush');
      const starting = { quantity: own('qty'), drawAmps: own('unitDraw') / 1000, inrushAmps };
      const others = rows.get(rail);
      if (others === undefined) rows.set(rail, [{ tag: tagOf('devices', row), starting }]);
      else others.push({ tag: tagOf('devices', row), starting });
    }
    return new Map([...rows].map(([id, all]) => [id, startUpOf(all)]));
  },
};

function startUpOf(rows: readonly { readonly tag: string; readonly starting: Starting }[]): StartUp {
  const each = rows.map(({ tag, starting }) => ({ tag, amps: startCurrent([starting]), starting }));
  const known = each.filter(({ amps }) => !Number.isNaN(amps));
  const largest = known.filter(({ tag }) => tag !== '').sort((one, other) => other.amps - one.amps).slice(0, NAMED);
  return {
    amps: startCurrent(known.map(({ starting }) => starting)), missing: each.length - known.length,
    largest: largest.map(({ tag }) => tag),
  };
}

import { startCurrent, type Starting } from '../electrical/index.ts';
import { startingOf, type CellPlace } from '../engine/index.ts';
import { grouped, tagOf, type CellValue } from '../schedule/index.ts';
import type { Gathering } from './facts.ts';

/** What is fed asks for when all of it starts at once: devices, and of a supply what relay outputs switch on it. */
export interface StartUp {
  /** Sum over the rows that are known [A]. */
  readonly amps: number;
  /** Rows of which it is not known, and where to look for what the first of them lacks. */
  readonly missing: number;
  readonly lacks?: CellPlace;
  /**
   * What is asked for at the most where the rows that ask for most start later than all others, one of them or more.
   */
  readonly later: readonly { readonly tags: readonly string[]; readonly amps: number }[];
  /** What is asked for at the most where each device starts by itself, while all others run [A]. */
  readonly oneByOne: number;
}

/** As many rows are named. */
const NAMED = 3;

/** What starts at once behind rows of a sheet that a start may switch off; where there are none nothing is gathered. */
const on = (sheet: 'supplies' | 'ways', by: 'rail' | 'way', key: string, isAsked: CellValue): Gathering<StartUp> => ({
  sheet,
  reads: [
    ['devices', 'rail'], ['devices', 'type'], ['devices', 'qty'], ['devices', 'unitDraw'], ['devices', 'ref'],
    ['types', 'inrush'], [sheet, key],
    ...by === 'rail' ? [['outputs', 'rail'], ['outputs', 'current'], ['outputs', 'output']] as const
      : [['devices', 'run'], ['runs', 'way'], ['runs', 'secondWay']] as const,
  ],
  gather: (document, book) => {
    const asked = new Set(document.rows(sheet).filter(({ cells }) => cells[key] === isAsked).map(({ id }) => id));
    const rows: (StartingRow & { readonly behind: number })[] = [];
    if (asked.size === 0) return new Map();
    const [rails, types] = [book.targets('devices', 'rail'), book.targets('devices', 'type')];
    const runs = book.targets('devices', 'run');
    // Of two ways the one that comes first starts all of it.
    const ways = (['way', 'secondWay'] as const).map((each) => book.targets('runs', each));
    for (const row of document.rows('devices')) {
      const [type, run] = [types[row.id]!, runs[row.id]!];
      const behind = (by === 'rail' ? [rails[row.id]!] : run < 0 ? [] : ways.map((each) => each[run]!))
        .filter((id) => asked.has(id));
      if (behind.length === 0) continue;
      const { inrushAmps: inrush, ...known } = startingOf(book, row.id);
      // A supply waits for an inrush that is not known; on a way it counts with what is drawn, as its column has it.
      const inrushAmps = by === 'way' && Number.isNaN(inrush) ? 0 : inrush;
      const starting = { ...known, inrushAmps };
      const place: CellPlace = Number.isNaN(inrushAmps) && type >= 0 ? ['types', type, 'inrush']
        : ['devices', row.id, Number.isNaN(starting.quantity) ? 'qty' : 'unitDraw'];
      for (const id of behind) rows.push({ behind: id, tag: tagOf('devices', row), starting, place });
    }
    if (by === 'rail') {
      // The inrush of an output is the peak that its contact makes, too short to count here: see `inrush` of types.
      const behind = book.targets('outputs', 'rail');
      for (const row of document.rows('outputs')) {
        const starting = { quantity: 1, drawAmps: book.number('outputs', row.id, 'current'), inrushAmps: 0 };
        const supply = behind[row.id]!;
        const place: CellPlace = ['outputs', row.id, 'current'];
        if (asked.has(supply)) rows.push({ behind: supply, tag: tagOf('outputs', row), starting, place });
      }
    }
    return new Map([...grouped(rows, ({ behind }) => behind)].map(([id, all]) => [id, startUpOf(all)]));
  },
});

/**
 * What starts at once behind supplies that switch off and try again on overload, and on ways that switch off at once.
 */
export const START_UPS = {
  supplies: on('supplies', 'rail', 'overload', 'retries'), ways: on('ways', 'way', 'kind', 'electronic'),
};

/** One row that starts with the rest, and the cell where to look for what it lacks. */
interface StartingRow {
  readonly tag: string;
  readonly starting: Starting;
  readonly place: CellPlace;
}

function startUpOf(rows: readonly StartingRow[]): StartUp {
  const each = rows.map(({ tag, starting, place }) => {
    const { quantity, drawAmps } = starting;
    return { tag, amps: startCurrent([starting]), running: quantity * drawAmps, starting, place };
  });
  const known = each.filter(({ amps }) => !Number.isNaN(amps)).sort((one, other) => other.amps - one.amps);
  const [amps, running] = [startCurrent(known.map(({ starting }) => starting)), sum(known.map((row) => row.running))];
  const later = known.slice(0, NAMED).map((_row, at) => {
    const last = known.slice(0, at + 1);
    const [starts, runs] = [sum(last.map((row) => row.amps)), sum(last.map((row) => row.running))];
    return { tags: last.map(({ tag }) => tag), amps: Math.max(amps - starts, starts + running - runs) };
  });
  const lacking = each.find((row) => Number.isNaN(row.amps));
  const most = Math.max(0, ...known.map(({ starting }) =>
    startCurrent([{ ...starting, quantity: 1 }]) - starting.drawAmps));
  return {
    amps, missing: each.length - known.length, oneByOne: running + most, ...lacking && { lacks: lacking.place },
    later: later.filter(({ tags }) => tags.length < known.length && !tags.includes('')),
  };
}

const sum = (amps: readonly number[]) => amps.reduce((all, each) => all + each, 0);

import { exceeds } from '../electrical/index.ts';
import type { Workbook } from '../engine/index.ts';
import type { ScheduleDocument } from '../schedule/index.ts';
import type { Gathering } from './facts.ts';

type Place = 'runs' | 'ways' | 'supplies';

/** Counts what is entered where it cannot be, for what feeds it: told there, and what it makes of sums is not sure. */
function count(document: ScheduleDocument, book: Workbook, place: Place): ReadonlyMap<number, number> {
  const counts = new Map<number, number>();
  const add = (id: number) => { if (id >= 0) counts.set(id, (counts.get(id) ?? 0) + 1); };
  const [rails, runs] = [book.targets('devices', 'rail'), book.targets('devices', 'run')];
  const railOfRun = book.targets('runs', 'rail');
  const waysOfRun = ['way', 'secondWay'].map((by) => book.targets('runs', by));
  const railOfWay = book.targets('ways', 'rail');
  const [distances, lengths] = [
    book.columns('devices').numbers.get('distance')!, book.columns('runs').numbers.get('length')!,
  ];
  const size = document.capacity('devices');
  for (let id = 0; id < size; id += 1) {
    const run = runs[id]!;
    if (run < 0) continue;
    const isElsewhere = railOfRun[run]! >= 0 && rails[id] !== railOfRun[run];
    if (place === 'runs' && (isElsewhere || exceeds(distances[id]!, lengths[run]!))) add(run);
    if (!isElsewhere || place === 'runs') continue;
    if (place === 'supplies') add(railOfRun[run]!);
    else for (const ways of waysOfRun) add(ways[run]!);
  }
  if (place === 'runs') return counts;
  for (const { id } of document.rows('runs')) {
    // A second way of another rail is told by itself: it must not be.
    const way = waysOfRun[0]![id]!;
    if (way < 0 || railOfWay[way]! < 0 || railOfRun[id] === railOfWay[way]) continue;
    add(place === 'ways' ? way : railOfWay[way]!);
  }
  return counts;
}

const on = (sheet: Place): Gathering<number> => ({
  sheet,
  reads: [
    ['devices', 'rail'], ['devices', 'run'], ['devices', 'distance'], ['runs', 'rail'], ['runs', 'way'],
    ['runs', 'secondWay'], ['runs', 'length'], ['ways', 'rail'],
  ],
  gather: (document, book) => count(document, book, sheet),
});

/**
 * How many rows are entered on it and on another rail, or on a run beyond its end: device rows on runs; on ways and
 * supplies also runs whose way hangs on another rail.
 */
export const MISPLACED = { runs: on('runs'), ways: on('ways'), supplies: on('supplies') };

/** Runs with a device row whose distance holds something and tells nothing, which is not as if it were empty. */
export const UNREAD_DISTANCES: Gathering<true> = {
  sheet: 'runs', reads: [['devices', 'run'], ['devices', 'distance']],
  gather: (document, book) => {
    const [runs, distances] = [book.targets('devices', 'run'), book.columns('devices').numbers.get('distance')!];
    const isUnread = (id: number) =>
      Number.isNaN(distances[id]) && (document.row('devices', id)?.cells.distance ?? null) !== null;
    const found = new Map<number, true>();
    const size = document.capacity('devices');
    for (let id = 0; id < size; id += 1) if (runs[id]! >= 0 && isUnread(id)) found.set(runs[id]!, true);
    return found;
  },
};

import type { CellValue } from '../schedule/index.ts';
import { SOLUTIONS } from './schema-rules.ts';
import type { Workbook } from './workbook.ts';

/**
 * The figures of a run with some more devices on it: NaN where not known, and where no voltage works without end.
 * @param more how many, 0 or more
 */
export type RunWithMore = (more: number) => {
  readonly drop: number;
  readonly current: number;
  readonly extra: number;
  /** The least that a device has above the voltage that it needs [V]. */
  readonly margin: number;
};

/** What one device more of a type draws at the nominal voltage [A]. */
interface Added {
  readonly connected: number;
  readonly demand: number;
  readonly diversity: number;
}

const CIRCUIT = SOLUTIONS.find(({ sheet, gives }) => sheet === 'runs' && gives.includes('voltageMargin'))!;

/**
 * Works a run out with more devices of a type at one place, as the schedule itself would: the conductors get warmer by
 * their load too.
 * @param distance where they are [m]; at the far end where it is `null`
 */
export function runWithMore(
  book: Workbook, id: number, typeId: number, added: Added, distance: CellValue,
): RunWithMore {
  const own = CIRCUIT.of.map((each) => book.read('runs', id, each));
  const countsOwn = book.countsOwn('runs', id, 'demand');
  const groupOf = book.cases.groupOf('devices');
  const devices = book.members('devices', 'run', id).map((member) => CIRCUIT.each.map((each) => {
    const value = book.read('devices', member, each);
    // The most of all cases.
    return each.path === 'diversity' && typeof value === 'number'
      ? book.cases.mostShare(groupOf[member]!, value, countsOwn) : value;
  }));
  const warmthOf = (more: number) => book.workOut('runs', id, 'temperature', ({ key }) =>
    key === 'connected' || key === 'demand' ? more * added[key] : 0);
  // One that was entered holds whatever the load.
  const [place, temperature] = [CIRCUIT.of.findIndex(({ path }) => path === 'temperature'), warmthOf(0)];
  const isByLoad = own[place] === temperature;
  const line = (more: number): Readonly<Record<string, CellValue>> => ({
    qty: more, unitDraw: added.connected * 1000, diversity: added.diversity, distance,
    'rail.voltage': book.number('supplies', book.target('runs', id, 'rail'), 'voltage'),
  });
  const solved = new Map<number, ReturnType<RunWithMore>>();
  return (more) => {
    let found = solved.get(more);
    if (found === undefined) {
      const cells = line(more);
      const one = CIRCUIT.each.map(({ path, by, key }) =>
        by === 'type' ? book.value('types', typeId, key) : cells[path] ?? null);
      const { figures, outcome } = CIRCUIT.solve(
        own.map((value, at) => at === place && isByLoad ? warmthOf(more) : value),
        more === 0 ? devices : [...devices, one], [],
      );
      const figure = (key: string, otherwise: number) => {
        const value = figures[key];
        return outcome !== undefined ? Infinity : typeof value === 'number' ? value : otherwise;
      };
      found = {
        drop: figure('drop', NaN), current: figure('current', NaN), extra: figure('extra', NaN),
        // Where no device says which voltage it needs, none lacks it.
        margin: outcome === undefined ? figure('voltageMargin', Number.MAX_VALUE) : -Infinity,
      };
      solved.set(more, found);
    }
    return found;
  };
}

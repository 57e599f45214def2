import { exceeds } from '../../electrical/index.ts';
import { amps, fixed, roundedDown, roundedUp, volts } from '../../words/index.ts';
import type { Gathering } from '../facts.ts';
import { MISFIT } from '../misfit.ts';
import type { RowReader } from '../row-reader.ts';
import { inTheWay } from './in-the-way.ts';

/** What no run of its longest length, or of its smallest conductor, has against it: both are looked for by that. */
const BY_CABLE: ReadonlySet<string> = new Set([
  'run-under-voltage', 'run-no-working-voltage', 'run-over-drop', 'run-over-carries', 'run-devices-over-carries',
  'run-devices-over-carries-elsewhere', 'run-protection-over-carries', 'run-protection-acts-late',
  'run-second-protection-over-carries', 'run-second-protection-acts-late', 'run-may-not-clear',
  'run-second-may-not-clear', 'run-way-may-not-act', 'run-second-way-may-not-act', 'run-ways-share-fault',
  'run-unprotected', 'run-fuse-may-not-act', 'run-fuse-never-acts',
]);

/** The same of one without a working voltage, of which it is not known either what it leaves for a short circuit. */
const WHEN_IT_WORKS: ReadonlySet<string> = new Set([...BY_CABLE, 'run-available-partial']);

/** How many rows on each run are at a distance of their own: those at its end go along when it is shorter. */
const PLACED: Gathering<number> = {
  sheet: 'runs', reads: [['devices', 'run'], ['devices', 'distance']],
  gather: (_document, book) => {
    const placed = new Map<number, number>();
    const distances = book.columns('devices').numbers.get('distance')!;
    book.targets('devices', 'run').forEach((run, id) => {
      if (run >= 0 && distances[id]! > 0) placed.set(run, (placed.get(run) ?? 0) + 1);
    });
    return placed;
  },
};

/** Whether it is as warm around it as its conductor may get, so that no size of it carries anything. */
export const isTooWarm = (row: RowReader) => row.number('carries') === 0;

/** What the cable of a run carries, where that is a matter of its size [A]. */
export const carriesOf = (row: RowReader) => isTooWarm(row) ? null : row.number('carries');

/** Whether all is known that lengths and conductors are tried against. */
function canBeTried(row: RowReader): boolean {
  if (row.missing('current') > 0 || row.number('carries') === null || !row.knows('rail', 'lowest')) return false;
  const ways = ['way', 'secondWay'].filter((by) => row.value(by) !== null);
  if (ways.length > 0) return ways.every((by) => row.knows(by, 'rated', 'trip', 'k2', 'available'));
  return row.knows('rail', 'rated', 'units', 'maxOutput') && !row.isUnreadable('rail', 'fuse')
    && (row.valueOf('rail', 'fuse') === null || row.valueOf('rail', 'fuseKind') !== null);
}

/** What would put a run right: a shorter one, or a larger conductor. */
export function remedy(row: RowReader): string {
  if (isTooWarm(row)) return row.say('Lay it where it is cooler first: no size of its conductor carries anything there.');
  const longest = row.number('maxLength');
  const smallest = row.value('smallestConductor');
  const [needed, lowest] = [row.number('minVoltage'), row.numberOf('rail', 'lowest')];
  if (needed !== null && lowest !== null && exceeds(needed, lowest)) {
    return row.say('No cable puts it right: its supply may give {lowest}, and a device on it needs {needed}. Use a supply that holds its voltage higher, or a type that needs less.', {
      lowest: volts(lowest, needed), needed: roundedUp(volts(needed, lowest)),
    });
  }
  if (row.fact(MISFIT.runs) !== undefined) return row.say('Put its devices on a rail of their voltage first.');
  if (!canBeTried(row)) return row.say('Enter what it waits for, to see what would put it right.');
  const [current, protection] = [row.number('current'), row.numberOf('way', 'rated')];
  const isAlone = row.value('secondWay') === null;
  if (isAlone && current !== null && protection !== null && exceeds(current, protection)) {
    return row.say('No conductor and no length puts it right: it draws {current} through a way of {protection}.', {
      current: amps(current, protection), protection: roundedDown(amps(protection, current)),
    });
  }
  const others = inTheWay(row, row.against({}, row.outcome === undefined ? BY_CABLE : WHEN_IT_WORKS));
  if (others !== '') {
    return row.say('Another length or conductor alone does not put it right. Still in the way: {others}.', { others });
  }
  const length = longest === null ? 0 : Number(fixed(longest, 1, 'down'));
  const [conductor, larger] = [String(row.own('conductor')), String(smallest)];
  if (length > 0) {
    const placed = row.fact(PLACED) ?? 0;
    return smallest === null
      ? row.say('With {conductor} it may be {length} m long{placed, plural, =0 {} other { if the distances on it shrink along}}.', {
        conductor, length, placed,
      })
      : row.say('With {conductor} it may be {length} m long{placed, plural, =0 {} other { if the distances on it shrink along}}; {larger} would do at this length.', {
        conductor, length, placed, larger,
      });
  }
  if (smallest !== null) {
    return row.say('With {conductor} no length works; {larger} would do at this length.', { conductor, larger });
  }
  return row.say('No conductor on the sheet {sheet} would do: feed it from another place, or share the load over more runs.', {
    sheet: row.titleOf('conductors'),
  });
}

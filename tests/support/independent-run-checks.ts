import { independentCarries } from './independent-carries.ts';
import { misplacedOn } from './independent-places.ts';
import { betweenWays } from './independent-second-feed.ts';
import { isVoltageUnread, lowestOf } from './independent-voltage.ts';
import { recalculate, TRIPS, type InputSchedule } from './independent.ts';
import { exceeds, hasFault, isGiven, number, times, type Cell, type InputRow, type Known } from './known-number.ts';

/**
 * The checks of each run that cannot be made, in words, by what they need and nobody knows: the row of the run, its
 * cable, what hangs on it, what protects it and what its supply has for a short circuit. It shares nothing with the
 * software.
 * @param schedule a parsed schedule file; formulas in its cells may hold numbers only
 * @returns one list for each run, in their order; empty where every check can be made
 */
export function runGaps(schedule: InputSchedule): string[][] {
  const sheet = (name: string): readonly InputRow[] => schedule.sheets[name] ?? [];
  const allOf = (name: string, key: string, tag: Cell) =>
    isGiven(tag) ? sheet(name).filter((row) => row[key] === tag) : [];
  const first = (name: string, key: string, tag: Cell) => allOf(name, key, tag)[0];
  const isTwice = (name: string, key: string, tag: Cell) => allOf(name, key, tag).length > 1;
  const figures = recalculate(schedule);
  const misplaced = misplacedOn({
    supplies: sheet('supplies'), ways: sheet('ways'), runs: sheet('runs'), devices: sheet('devices'),
  });

  /** Whether what a run takes through its way, or through either of two, is not known. */
  const isShareUnsure = (run: InputRow, at: number) => {
    const isDrawUnknown = sheet('devices').some((row, place) =>
      first('runs', 'run', row.run) === run && figures.devices[place]!.demand === null);
    if (isDrawUnknown || figures.runs[at]!.extra === null) return true;
    if (!isGiven(run.secondWay)) return false;
    const conductor = first('conductors', 'conductor', run.conductor);
    const [way, second] = [first('ways', 'way', run.way), first('ways', 'way', run.secondWay)];
    return [way, second].some((each) => isTwice('ways', 'way', each?.way)) || betweenWays(run, way, second) === null
      || isTwice('conductors', 'conductor', run.conductor) || number(conductor, 'resistance') === null
      || isUnread(run, 'pairs') || (isGiven(run.temperature) ? isUnread(run, 'temperature')
        : isUnread(run, 'grouped') || isUnread({ around: run.ambient }, 'around')
          || ['maxCurrent', 'maxTemperature', 'baseTemperature'].some((key) => isUnread(conductor, key)));
  };

  return sheet('runs').map((run) => {
    const gaps: string[] = [];
    const lacks = (is: boolean, what: string) => { if (is) gaps.push(what); };
    // Around a cable it may be warmer than around an enclosure.
    lacks(hasFault({ ...run, ambient: undefined, around: run.ambient }), 'a cell of its own');
    lacks(isTwice('runs', 'run', run.run), 'which row of its tag is meant');
    const way = first('ways', 'way', run.way);
    const rail = isGiven(run.rail) ? run.rail : way?.rail;
    const names = { way: ['ways', 'way'], secondWay: ['ways', 'way'], branch: ['branches', 'branch'], conductor: ['conductors', 'conductor'] } as const;
    for (const [key, [name, tag]] of Object.entries(names)) {
      lacks(isGiven(run[key]) && allOf(name, tag, run[key]).length !== 1, `the ${key} that it names`);
    }
    lacks(allOf('supplies', 'rail', rail).length !== 1, 'its supply');
    lacks(isGiven(run.rail) && isGiven(way?.rail) && run.rail !== way?.rail, 'of which rail it is');
    const supply = first('supplies', 'rail', rail);
    const conductor = first('conductors', 'conductor', run.conductor);
    lacks(number(supply, 'voltage', 24) === null, 'the voltage of its supply');
    // A cell that holds something and tells nothing is not as if it were empty.
    const isLowestUnread = supply !== undefined && ['seriesDrop', 'battery', 'standbyHours']
      .some((key) => isUnread(supply, key));
    lacks(supply === undefined || isLowestUnread || lowestOf(supply) === null, 'the lowest voltage of its supply');
    lacks(number(run, 'length') === null, 'its length');
    lacks(number(conductor, 'resistance') === null, 'the resistance of its conductor');
    const around = number({ around: run.ambient }, 'around', 30);
    const pairs = number(run, 'pairs', 1);
    const cable = {
      alone: number(conductor, 'maxCurrent'), highest: number(conductor, 'maxTemperature', 70),
      base: number(conductor, 'baseTemperature', 30), pairs, grouped: number(run, 'grouped', pairs), ambient: around,
    };
    const carries = isWhole(cable) ? independentCarries(cable) : null;
    lacks(carries === null, 'what its cable carries');
    lacks(isGiven(run.temperature) && exceeds(around, number(run, 'temperature')), 'how warm its conductors are');

    const on = sheet('devices').flatMap((row, at) => first('runs', 'run', row.run) === run
      ? [{ row, type: first('types', 'type', row.type), ...figures.devices[at]! }] : []);
    lacks(misplaced.has(run), 'where its devices are');
    lacks(on.some(({ row }) => isUnread(row, 'distance')), 'how far along its devices are');
    lacks(on.some(({ connected, demand }) => (run.basis === 'demand' ? demand : connected) === null), 'what its devices draw');
    lacks(on.some(({ row }) => isTwice('types', 'type', row.type)), 'of which type its devices are');
    lacks(isVoltageUnread(on), 'which voltage its devices bear');

    const forFault = (behind: InputRow | undefined) => {
      const at = sheet('supplies').indexOf(behind!);
      const { usable = null, partial } = at < 0 ? {} : figures.supplies[at]!;
      const known = [usable, number(behind, 'peak', 1), number(behind, 'innerResistance', 0.3)];
      return known.includes(null) || partial?.usable !== false || partial.demand;
    };
    for (const key of ['way', 'secondWay']) {
      if (!isGiven(run[key])) continue;
      const by = first('ways', 'way', run[key]);
      lacks(actsAt(by).includes(null), `when its ${key} acts`);
      const behind = first('supplies', 'rail', by?.rail);
      const isUnsure = sheet('runs').some((other, at) => [other.way, other.secondWay].includes(run[key]) && isShareUnsure(other, at));
      lacks(isUnsure || isTwice('supplies', 'rail', by?.rail) || forFault(behind), `what there is for a short circuit on its ${key}`);
    }
    if (isGiven(run.secondWay)) {
      lacks(!isGiven(run.way) || run.way === run.secondWay, 'the way at its start');
      lacks(number(run, 'secondLength') === null, 'its length to its second way');
    }
    if (!isGiven(run.way)) {
      const given = times(times(number(supply, 'rated'), number(supply, 'units', 1)), number(supply, 'maxOutput', 1.5));
      lacks(given === null || isUnread(supply, 'fuse'), 'what protects it');
      const fuse = number(supply, 'fuse');
      const isOnFuse = exceeds(given, carries) && fuse !== null && !exceeds(fuse, carries);
      lacks(isOnFuse && !isGiven(supply?.fuseKind), 'what kind of fuse protects it');
      const acts = times(fuse, multiple(String(supply?.fuseKind), fuse));
      const isHeld = isOnFuse && acts !== null && !exceeds(acts, times(carries, 1.45));
      lacks(isHeld && forFault(supply), 'what there is for a short circuit on it');
    }
    return gaps;
  });
}

/** Whether a cell holds something that is no number. */
const isUnread = (row: InputRow | undefined, key: string) => isGiven(row?.[key]) && number(row, key) === null;

/** Whether every number is known. */
const isWhole = <Key extends string>(numbers: Readonly<Record<Key, Known>>): numbers is Readonly<Record<Key, number>> =>
  !Object.values(numbers).includes(null);

/** Rating of a way, and the multiples of it at which it acts at once and on overload; `null` is not known. */
function actsAt(way: InputRow | undefined): Known[] {
  const [rated, kind] = [number(way, 'rated'), String(way?.kind)];
  return [rated, number(way, 'trip', TRIPS[kind] ?? null), number(way, 'k2', multiple(kind, rated))];
}

/** Multiple of its rating at which it acts on overload. */
function multiple(kind: string, rated: Known): Known {
  if (!(kind in TRIPS)) return null;
  if (kind === 'fast' || kind === 'slow') return 2.1;
  if (kind !== 'gG') return 1.45;
  return rated === null ? null : rated >= 16 ? 1.6 : rated > 4 ? 1.9 : 2.1;
}

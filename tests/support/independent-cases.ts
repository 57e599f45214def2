import { batteryLasts, batteryNeeded } from './independent-starts.ts';
import {
  byTag, named, recalculate, usableOf, type Coincidence, type Figures, type InputRow, type InputSchedule,
} from './independent.ts';
import {
  isGiven, minus, number, over, plus, times, type Cell, type Known,
} from './known-number.ts';

/**
 * A schedule with cases worked out by brute force: for each case a plain schedule is made in which each row has the
 * diversity of that case, all of it is worked out anew, and the worst of what counts is taken. Nothing of the product
 * is imported.
 */

/** More cases than these are not worked out, and what is worked out lacks them. */
const MOST = 100;

interface Factor {
  readonly share: Known;
  readonly ofDemand: boolean;
  /** Whether another case may be meant. */
  readonly isUnsure: boolean;
}

interface OneCase {
  readonly row: InputRow;
  readonly factors: ReadonlyMap<Cell, Factor>;
}

/** A figure of a row in all cases: first by the diversity of rows alone. */
export interface InCases {
  readonly each: readonly Known[];
  /** Whether the first counts. */
  readonly countsOwn: boolean;
}

type Row = object;

/**
 * What a schedule with cases comes to; figures of each row of each sheet, in their order, with statuses.
 */
export interface FiguresInCases {
  readonly sheets: Readonly<Record<string, readonly Row[]>>;
  /** Names of the cases that are worked out. */
  readonly cases: readonly (string | null)[];
  /** What figures are in each case, by sheet, row and key. */
  readonly inCases: Readonly<Record<string, readonly Readonly<Record<string, InCases>>[]>>;
  /** The plain schedule of each case; first that by the diversity of rows alone. */
  readonly plain: readonly InputSchedule[];
  /** Device rows with their run, what they draw, and what of it in each case. */
  readonly devices: readonly DeviceInCases[];
}

/** A device row with what it comes to. */
export interface DeviceInCases {
  readonly row: InputRow;
  readonly run: InputRow | undefined;
  /** Of one [mA], and of all at once [A]. */
  readonly unitDraw: Known;
  readonly connected: Known;
  readonly inrush: Known;
  /** In each case [A], first by its own diversity. */
  readonly demands: readonly Known[];
  /** Whether another share of it may be on in some case. */
  readonly isUnsure: boolean;
}

/** The cases of a schedule with the factors that name them. */
function casesOf(rows: readonly InputRow[], factors: readonly InputRow[]): OneCase[] {
  const isBlank = (row: InputRow) => Object.values(row).every((cell) => !isGiven(cell));
  return rows.filter((row) => !isBlank(row)).slice(0, MOST).map((row) => {
    const found = new Map<Cell, Factor>();
    for (const line of factors) {
      const bearing = rows.filter((each) => isGiven(line.case) && each.case === line.case);
      if (bearing[0] !== row || !isGiven(line.group)) continue;
      const factor = { share: number(line, 'factor'), ofDemand: line.of === 'demand', isUnsure: bearing.length > 1 };
      const other = found.get(line.group);
      const isSame = other === undefined || (other.share === factor.share && other.ofDemand === factor.ofDemand);
      found.set(line.group, isSame ? factor : { ...factor, share: null });
    }
    return { row, factors: found };
  });
}

const worstOf = ({ each, countsOwn }: InCases, isHighest: boolean): Known => {
  const counting = countsOwn ? each : each.slice(1);
  if (counting.includes(null)) return null;
  return (isHighest ? Math.max : Math.min)(...counting as number[]);
};

/** Where it is worst: 0 by the diversity of rows, unless a case is worse by more than rounding. */
function placeOf(figure: InCases): number {
  const worst = worstOf(figure, true)!;
  return figure.each.findIndex((value, place) => (place > 0 || figure.countsOwn)
    && value! >= worst - 2e-9 * Math.abs(worst));
}

/**
 * Every figure of devices, supplies, feeds, enclosures and cases, and of ways and runs what follows from their demand.
 * @param schedule a parsed schedule file; formulas in its cells may hold numbers only; figures of ways hold where their
 * runs have no second one
 */
export function recalculateInCases(schedule: InputSchedule): FiguresInCases {
  const sheet = (name: string): readonly InputRow[] => schedule.sheets[name] ?? [];
  const all = casesOf(sheet('cases'), sheet('factors'));
  const isBeyond = sheet('cases').filter((row) => Object.values(row).some(isGiven)).length > MOST;
  const types = byTag(sheet('types'), 'type');
  const groupOf = (row: InputRow) => isGiven(row.group) ? row.group : named(types, row.type)?.group;
  const isGroupUnsure = (row: InputRow) => !isGiven(row.group) && isGiven(row.type)
    && sheet('types').filter(({ type }) => type === row.type).length > 1;
  const factorOf = (row: InputRow, { factors }: OneCase) =>
    isGiven(groupOf(row)) ? factors.get(groupOf(row)) : undefined;

  const own = recalculate(schedule);
  /** A cell that tells as much: a number, or what nobody can read. */
  const cell = (value: Known): Cell => value ?? '=1/0';
  const alike = (each: OneCase | undefined, celsius?: readonly (Known | undefined)[]): InputSchedule => ({
    sheets: {
      ...schedule.sheets,
      devices: sheet('devices').map((row, at) => {
        const factor = each && factorOf(row, each);
        if (factor === undefined) return row;
        const { share, ofDemand } = factor;
        return { ...row, diversity: cell(ofDemand ? times(share, own.devices[at]!.diversity) : share) };
      }),
      runs: sheet('runs').map((row, at) => isGiven(row.temperature) || typeof celsius?.[at] !== 'number' ? row
        : { ...row, temperature: celsius[at] }),
    },
  });
  const together = (each: OneCase): Coincidence => ({
    unsureDevices: sheet('devices').map((row) =>
      isBeyond || isGroupUnsure(row) || factorOf(row, each)?.isUnsure === true),
    outputs: sheet('outputs').map((row) => {
      const factor = factorOf({ group: row.group }, each);
      return { share: factor === undefined ? 1 : factor.share, isUnsure: isBeyond || factor?.isUnsure === true };
    }),
  });
  const worked = (celsius?: readonly (Known | undefined)[]) => {
    const plain = [undefined, ...all].map((each) => alike(each, celsius));
    const figures = plain.map((each, at) => recalculate(each, at === 0 ? undefined : together(all[at - 1]!)));
    return { plain, figures };
  };

  // Which rows stand behind a figure, and whether every case has a factor for all of them.
  const runOf = byTag(sheet('runs'), 'run');
  const wayOf = byTag(sheet('ways'), 'way');
  const supplyOf = byTag(sheet('supplies'), 'rail');
  const railOfRun = (run: InputRow | undefined) => isGiven(run?.rail) ? run!.rail : named(wayOf, run?.way)?.rail;
  const railOf = (row: InputRow) => isGiven(row.rail) ? row.rail : railOfRun(named(runOf, row.run));
  const means = (rows: ReadonlyMap<Cell, InputRow>, tag: Cell, row: InputRow) => isGiven(tag) && rows.get(tag) === row;
  const devicesOf = (run: InputRow) => sheet('devices').filter((row) => means(runOf, row.run, run));
  const runsOfWay = (way: InputRow) =>
    sheet('runs').filter((run) => means(wayOf, run.way, way) || means(wayOf, run.secondWay, way));
  const outputsBy = (key: string, tag: Cell) =>
    sheet('outputs').filter((row) => isGiven(tag) && row[key] === tag).map(({ group }) => ({ group }));
  const onRun = devicesOf;
  const onWay = (way: InputRow) => runsOfWay(way).flatMap(devicesOf);
  const onSupply = (supply: InputRow) => supplyOf.get(supply.rail) !== supply ? [] : [
    ...sheet('devices').filter((row) => means(supplyOf, railOf(row), supply)), ...outputsBy('rail', supply.rail),
    ...sheet('runs').filter((run) => means(supplyOf, railOfRun(run), supply)).flatMap(devicesOf),
  ];
  const feedOf = byTag(sheet('feeds'), 'feed');
  const onFeed = (feed: InputRow) => feedOf.get(feed.feed) !== feed ? [] : [
    ...outputsBy('feed', feed.feed), ...sheet('supplies').filter((row) => row.feed === feed.feed).flatMap(onSupply),
  ];
  const enclosureOf = byTag(sheet('enclosures'), 'enclosure');
  const onEnclosure = (row: InputRow) => enclosureOf.get(row.enclosure) !== row ? []
    : sheet('supplies').filter((supply) => supply.enclosure === row.enclosure).flatMap(onSupply);
  const coversAll = (rows: readonly InputRow[], each: OneCase) =>
    rows.length > 0 && rows.every((row) => factorOf(row, each) !== undefined);
  const countsOwn = (rows: readonly InputRow[]) => all.length === 0 || all.some((each) => !coversAll(rows, each));

  // Conductors are as warm as the worst demand makes them in all cases.
  const first = worked();
  const celsius = sheet('runs').map((run, at) => worstOf(
    { each: first.figures.map(({ runs }) => runs[at]!.celsius), countsOwn: countsOwn(onRun(run)) }, true) ?? undefined);
  const { plain, figures } = worked(celsius);

  const each = (rows: readonly InputRow[], figure: (of: Figures, place: number) => Known): InCases =>
    ({ each: figures.map(figure), countsOwn: countsOwn(rows) });
  const anywhere = (is: (of: Figures) => boolean) => figures.some(is);
  const nameOf = (place: number): string | null => {
    const tag = place === 0 ? undefined : all[place - 1]!.row.case;
    return place === 0 ? null : typeof tag === 'string' ? tag : '';
  };
  const inCases: Record<string, Record<string, InCases>[]> = {};
  const marked = (demand: InCases, rows: readonly InputRow[], mark: string, isCovering: boolean): Known => {
    const values = all.flatMap((one, at) => one.row[mark] === true && (!isCovering || coversAll(rows, one))
      ? [demand.each[at + 1]!] : []);
    return values.length > 0 ? Math.max(...values) : isCovering ? null : worstOf(demand, true);
  };

  inCases.runs = sheet('runs').map((run, at) => ({
    extra: each(onRun(run), ({ runs }) => runs[at]!.extra),
    demand: each(onRun(run), ({ devices }) => sheet('devices').reduce((sum, row, place) =>
      sum + (means(runOf, row.run, run) ? devices[place]!.demand ?? 0 : 0), 0)),
  }));
  const extraOf = (at: number) => worstOf(inCases.runs![at]!.extra!, true);

  inCases.enclosures = sheet('enclosures').map((row, at) => ({
    supplyLoss: each(onEnclosure(row), ({ enclosures }) => enclosures[at]!.supplyLoss),
  }));
  const enclosures = sheet('enclosures').map((_row, at) => {
    const { status: inWarmest, ...warmest } =
      figures[placeOf(inCases.enclosures![at]!.supplyLoss!)]!.enclosures[at]!;
    const partial = {
      supplyLoss: anywhere((of) => of.enclosures[at]!.partial.supplyLoss), usedWidth: warmest.partial.usedWidth,
    };
    // A loss that is not known in one case may make it warmer there.
    const status = inWarmest === 'ok' && partial.supplyLoss ? 'incomplete' : inWarmest;
    return { ...warmest, partial, status };
  });
  const topOf = (supply: InputRow) => {
    const enclosure = named(enclosureOf, supply.enclosure);
    return enclosure === undefined ? null : enclosures[sheet('enclosures').indexOf(enclosure)]!.top;
  };

  inCases.supplies = sheet('supplies').map((row, at) => {
    const figure = (key: 'demand' | 'loss' | 'inputCurrent') => each(onSupply(row), ({ supplies }) => supplies[at]![key]);
    return {
      demand: figure('demand'), loss: figure('loss'), inputCurrent: figure('inputCurrent'),
      power: each(onSupply(row), ({ supplies }) => times(number(row, 'voltage', 24), supplies[at]!.demand)),
    };
  });
  const supplies = sheet('supplies').map((row, at) => {
    const { demand, loss, inputCurrent, power } = inCases.supplies![at]!;
    const [worst, usable, target] = [worstOf(demand!, true)!, usableOf(row, topOf(row)), number(row, 'target', 0.8)];
    const connected = sheet('runs').reduce((sum, run, place) => means(supplyOf, railOfRun(run), row)
      ? sum + (extraOf(place) ?? 0) - (figures[0]!.runs[place]!.extra ?? 0) : sum, figures[0]!.supplies[at]!.connected);
    const { partial, surge } = figures[placeOf(demand!)]!.supplies[at]!;
    const standby = marked(demand!, onSupply(row), 'standby', false)!;
    const together = marked(demand!, onSupply(row), 'together', true);
    const isPartial = (key: keyof typeof partial) => anywhere((of) => of.supplies[at]!.partial[key]);
    const enclosure = named(enclosureOf, row.enclosure);
    const status = figures[0]!.again.supplies[at]!({
      usable, isUsablePartial: isPartial('usable'), connected: { sum: connected, partial: isPartial('connected') },
      demand: { sum: worst, partial: isPartial('demand') }, isCovered: together !== null, standby, top: topOf(row),
      isTopPartial: enclosure !== undefined && enclosures[sheet('enclosures').indexOf(enclosure)]!.partial.supplyLoss,
    });
    return {
      status,
      usable, connected, demand: worst, loading: over(worst, usable), spare: minus(times(usable, target), worst),
      limitDiversity: over(times(usable, target), connected), fuseLoading: over(worst, number(row, 'fuse')),
      loss: worstOf(loss!, true), inputCurrent: worstOf(inputCurrent!, true), power: worstOf(power!, true), surge,
      worstCase: nameOf(placeOf(demand!)), standbyDemand: standby, batteryNeeded: batteryNeeded(row, standby),
      batteryLasts: batteryLasts(row, standby),
      togetherDemand: together,
      partial: Object.fromEntries(Object.keys(partial).map((key) =>
        [key, anywhere((of) => of.supplies[at]!.partial[key as keyof typeof partial])])),
    };
  });

  inCases.feeds = sheet('feeds').map((row, at) => {
    const drawn = each(onFeed(row), ({ feeds }) => feeds[at]!.drawn);
    return {
      drawn,
      demand: { ...drawn, each: drawn.each.map((amps, place) => place > 0 && coversAll(onFeed(row), all[place - 1]!)
        ? amps : times(amps, number(row, 'diversity', 1))) },
    };
  });
  const feeds = sheet('feeds').map((row, at) => {
    const { drawn, demand } = inCases.feeds![at]!;
    const [worst, rated] = [worstOf(demand!, true), number(row, 'rated')];
    const onIt = sheet('supplies').flatMap((supply, place) => means(feedOf, supply.feed, row) ? [place] : []);
    const more = (key: 'inputCurrent' | 'surge') => onIt.reduce((sum, place) =>
      sum + (supplies[place]![key] ?? 0) - (figures[0]!.supplies[place]![key] ?? 0), 0);
    const { connected, supplySurge, outputSurge, partial } = figures[0]!.feeds[at]!;
    const [all, start] = [connected + more('inputCurrent'), supplySurge + more('surge')];
    const total = (sum: number, key: keyof typeof partial) =>
      ({ sum, partial: anywhere((of) => of.feeds[at]!.partial[key]) });
    const status = figures[0]!.again.feeds[at]!(total(all, 'connected'), total(worstOf(drawn!, true)!, 'drawn'),
      [total(start, 'supplySurge'), total(outputSurge, 'outputSurge')], worst);
    return {
      status,
      connected: all, drawn: worstOf(drawn!, true), demand: worst, loading: over(worst, rated),
      spare: minus(times(rated, number(row, 'target', 0.8)), worst), supplySurge: start, outputSurge,
      inrush: plus(all, Math.max(start, outputSurge)), worstCase: worst === null ? null : nameOf(placeOf(demand!)),
      partial: Object.fromEntries(Object.keys(partial).map((key) =>
        [key, anywhere((of) => of.feeds[at]!.partial[key as keyof typeof partial])])),
    };
  });

  const through = (way: InputRow, of: Figures) => sheet('runs').reduce((sum, run, at) => {
    if (!means(wayOf, run.way, way)) return sum;
    return sum + (of.runs[at]!.extra ?? 0) + sheet('devices').reduce((amps, row, place) =>
      amps + (means(runOf, row.run, run) ? of.devices[place]!.demand ?? 0 : 0), 0);
  }, 0);
  const left = (supply: InputRow | undefined, of: Figures, ownAmps: number): Known => {
    if (supply === undefined) return null;
    const all = times(usableOf(supply, topOf(supply)), number(supply, 'peak', 1));
    const elsewhere = Math.max(0, of.supplies[sheet('supplies').indexOf(supply)]!.demand - ownAmps);
    return all === null ? null : Math.max(0, all - elsewhere);
  };
  inCases.ways = sheet('ways').map((way) => {
    const supply = named(supplyOf, way.rail);
    return {
      demand: each(onWay(way), (of) => through(way, of)),
      available: each(
        [...onWay(way), ...supply === undefined ? [] : onSupply(supply)], (of) => left(supply, of, through(way, of))),
    };
  });
  const ways = sheet('ways').map((way, at) => {
    const { demand, available } = inCases.ways![at]!;
    const worst = worstOf(demand!, true)!;
    return {
      demand: worst, worstCase: nameOf(placeOf(demand!)), loading: over(worst, number(way, 'rated')),
      togetherDemand: marked(demand!, onWay(way), 'together', true), available: worstOf(available!, false),
    };
  });

  for (const [at, run] of sheet('runs').entries()) {
    const [way, supply] = [named(wayOf, run.way), named(supplyOf, railOfRun(run))];
    inCases.runs[at]!.available = isGiven(run.way) && way !== undefined
      ? { ...inCases.ways[sheet('ways').indexOf(way)]!.available!, countsOwn: countsOwn([
        ...onRun(run), ...onWay(way), ...[way.rail, railOfRun(run)].flatMap((tag) => {
          const behind = named(supplyOf, tag);
          return behind === undefined ? [] : onSupply(behind);
        }),
      ]) }
      : each([...onRun(run), ...supply === undefined ? [] : onSupply(supply)], (of, place) =>
        isGiven(run.way) ? null
          : left(supply, of, inCases.runs![at]!.demand!.each[place]! + (of.runs[at]!.extra ?? 0)));
  }
  const runs = sheet('runs').map((_run, at) => {
    const { extra, demand, available } = inCases.runs![at]!;
    return {
      extra: worstOf(extra!, true), demand: worstOf(demand!, true), worstCase: nameOf(placeOf(demand!)),
      available: worstOf(available!, false),
    };
  });

  const cases = sheet('cases').map((row) => {
    const at = all.findIndex((one) => one.row === row);
    const watts = inCases.supplies!.map(({ power }) => power!.each[at + 1] ?? null);
    const demand = at < 0 ? null : watts.reduce((sum: number, each) => sum + (each ?? 0), 0);
    return { demand, energy: over(times(demand, number(row, 'hours')), 1000) };
  });
  return {
    sheets: {
      devices: own.devices.map((figures, at) => {
        const supply = named(supplyOf, railOf(sheet('devices')[at]!));
        return { ...figures, share: over(figures.demand, supply ? usableOf(supply, topOf(supply)) : null) };
      }),
      supplies, feeds, ways, runs, enclosures, cases,
      // Nothing of these hangs on how much is on together.
      branches: own.branches, modules: own.modules, outputs: own.outputs,
    },
    cases: all.map(({ row }) => typeof row.case === 'string' ? row.case : ''), inCases, plain,
    devices: sheet('devices').map((row, at): DeviceInCases => {
      const { unitDraw, connected } = own.devices[at]!;
      return {
        row, run: named(runOf, row.run), unitDraw, connected, inrush: number(named(types, row.type), 'inrush'),
        demands: figures.map(({ devices }) => devices[at]!.demand),
        isUnsure: all.some((one) => together(one).unsureDevices[at] === true),
      };
    }),
  };
}

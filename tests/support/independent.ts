import { independentExtra } from './independent-extra.ts';
import { betweenWays } from './independent-second-feed.ts';
import { measuredSupply } from './independent-measured.ts';
import { misplacedOn } from './independent-places.ts';
import { batteryLasts, batteryNeeded, startUp, type StartingRow } from './independent-starts.ts';
import { railsOf, type RailFigures } from './independent-rails.ts';
import { hasMisfit, isVoltageUnread } from './independent-voltage.ts';
import {
  feedOf, inputOf, moduleOf, outputOf, type FeedFigures, type ModuleFigures, type OutputFigures,
} from './independent-outputs.ts';
import {
  exceeds, hasFault, isGiven, minus, number, over, plus, times, wholePart, type Cell, type InputRow, type Known,
} from './known-number.ts';

/**
 * The load schedule worked out a second time, row by row in plain loops, from the rules of the document alone. Nothing
 * of the product is imported, so that what it computes can be held against this.
 *
 * Unknown is `null`. A total adds the rows that are known; `partial` says of each total whether some are not.
 */

export type { InputRow } from './known-number.ts';

/** A parsed schedule file, as far as it is needed here. */
export interface InputSchedule {
  readonly sheets: Readonly<Record<string, readonly InputRow[] | undefined>>;
}

export type Status = 'over' | 'near' | 'incomplete' | 'ok';

export interface DeviceFigures {
  unitDraw: Known; diversity: Known; connected: Known; demand: Known; share: Known; nodes: Known;
  busDemand: Known;
}
export interface SupplyFigures {
  usable: Known; connected: number; demand: number; loading: Known; spare: Known; limitDiversity: Known;
  fuseLoading: Known; loss: Known; batteryNeeded: Known; batteryLasts: Known;
  inputCurrent: Known; surge: Known; status: Status;
  partial: { usable: boolean; connected: boolean; demand: boolean; battery: boolean; lasts: boolean };
}
export interface BranchFigures {
  nodes: number; free: Known; used: Known; cables: number; cableLength: number; busDemand: number; status: Status;
  partial: { nodes: boolean; cableLength: boolean; busDemand: boolean };
}
export interface EnclosureFigures {
  supplyLoss: number; loss: Known; area: Known; rise: Known; inside: Known; top: Known;
  usedWidth: number; freeWidth: Known; status: Status; partial: { supplyLoss: boolean; usedWidth: boolean };
}
export interface Figures {
  devices: DeviceFigures[]; supplies: SupplyFigures[]; branches: BranchFigures[];
  modules: (ModuleFigures & { status: Status })[]; outputs: (OutputFigures & { status: Status })[];
  feeds: (FeedFigures & { status: Status })[]; enclosures: EnclosureFigures[];
  /** What runs draw beyond their devices, how warm they are, the rail behind them. */
  runs: { extra: Known; celsius: Known; rail: Cell; partial: boolean }[];
  /** Statuses that would follow from other figures than these, as the worst of several cases is one. */
  again: {
    supplies: ((change: Partial<SupplyTotals>) => Status)[];
    feeds: ((connected: Total, drawn: Total, surges: readonly [Total, Total], demand: Known) => Status)[];
  };
}

/** How far things are on together that no cell of a schedule tells, row by row. */
export interface Coincidence {
  /** Device rows whose diversity may be another. */
  readonly unsureDevices: readonly boolean[];
  /** Share of the current of each output, and whether it may be another. */
  readonly outputs: readonly { readonly share: Known; readonly isUnsure: boolean }[];
}

/**
 * Every computed figure of devices, supplies, branches, modules, outputs, feeds and enclosures; those of runs, and the
 * voltage of devices on them, are worked out in `independent-runs.ts`.
 * @param schedule a parsed schedule file; formulas in its cells may hold numbers only
 * @param together how far outputs are on together: all of them unless said otherwise
 * @returns one row of figures for each row of the seven sheets, in their order
 * @throws SyntaxError for a formula that is not plain arithmetic
 */
export function recalculate(schedule: InputSchedule, together?: Coincidence): Figures {
  const sheet = (name: string): readonly InputRow[] => schedule.sheets[name] ?? [];
  const types = byTag(sheet('types'), 'type');
  const contacts = byTag(sheet('contacts'), 'contact');
  const supplyOf = byTag(sheet('supplies'), 'rail');
  const enclosureOf = byTag(sheet('enclosures'), 'enclosure');

  const runs = byTag(sheet('runs'), 'run');
  const wayOf = byTag(sheet('ways'), 'way');
  const conductors = byTag(sheet('conductors'), 'conductor');
  // A row without a rail of its own takes over that of its run, and a run that of its way.
  const railOf = (run: InputRow | undefined) => isGiven(run?.rail) ? run!.rail : named(wayOf, run?.way)?.rail;
  const rails = sheet('devices').map((row) => isGiven(row.rail) ? row.rail : railOf(named(runs, row.run)));
  const currents = sheet('devices').map((row, index) =>
    deviceCurrents(row, named(types, row.type), named(supplyOf, rails[index])));

  // Where a tag stands twice, nobody knows which row is meant: what is read there is not wholly known.
  const doubled = (name: string, key: string, tag: Cell) =>
    isGiven(tag) && sheet(name).filter((row) => row[key] === tag).length > 1;
  const isUnsure = sheet('devices').map((row, index) => {
    const [type, rail] = [doubled('types', 'type', row.type), doubled('supplies', 'rail', rails[index])];
    const draw = !isGiven(row.unitDraw) && (type || rail);
    const isOther = together?.unsureDevices[index] === true;
    return { draw, demand: draw || isOther || (!isGiven(row.diversity) && type), nodes: type };
  });
  const rail = (index: number) => rails[index];
  const of = (name: string, key: string) => (index: number) => sheet(name)[index]![key];
  const feedOfTag = byTag(sheet('feeds'), 'feed');
  const outputs = sheet('outputs').map((row) => outputOf(row, {
    contact: named(contacts, row.contact), feed: named(feedOfTag, row.feed), rail: named(supplyOf, row.rail),
  }));
  const isOutputUnsure = sheet('outputs').map((row) => !isGiven(row.voltage)
    && (doubled('feeds', 'feed', row.feed) || doubled('supplies', 'rail', row.rail)));
  const outputCurrent = (index: number) => outputs[index]!.figures.current;
  const outputsBy = (key: string) =>
    gather(sheet('outputs'), of('outputs', key), outputCurrent, (index) => isOutputUnsure[index]!);
  const onRail = outputsBy('rail');
  const outputsTogether = (key: string) => gather(
    sheet('outputs'), of('outputs', key), (index) => times(outputCurrent(index), together?.outputs[index]!.share ?? (together === undefined ? 1 : null)),
    (index) => isOutputUnsure[index]! || together?.outputs[index]!.isUnsure === true);
  const extras = sheet('runs').map((row) => independentExtra({
    row, supply: named(supplyOf, railOf(row)), conductor: named(conductors, row.conductor),
    devices: sheet('devices').flatMap((device, index) => named(runs, device.run) !== row ? [] : [{
      ...currents[index]!, row: device, type: named(types, device.type), supply: named(supplyOf, rails[index]),
      isUnsure: doubled('types', 'type', device.type) || doubled('supplies', 'rail', rails[index])
        || together?.unsureDevices[index] === true,
    }]),
    isUnsure: doubled('supplies', 'rail', railOf(row)) || doubled('conductors', 'conductor', row.conductor)
      || (isGiven(row.secondWay) && [row.way, row.secondWay].some((tag) => doubled('ways', 'way', tag))),
    between: betweenWays(row, named(wayOf, row.way), named(wayOf, row.secondWay)),
  }));
  const extra = gather(
    sheet('runs'), (index) => railOf(sheet('runs')[index]), (index) => extras[index]!.amps,
    (index) => extras[index]!.partial);
  const withOthers = (devices: (tag: Cell) => Total, switched: (tag: Cell) => Total) => (tag: Cell): Total =>
    totalOf(devices(tag), totalOf(extra(tag), switched(tag)));
  const connected = withOthers(gather(
    sheet('devices'), rail, (index) => currents[index]!.connected, (index) => isUnsure[index]!.draw), onRail);
  const demand = withOthers(gather(
    sheet('devices'), rail, (index) => currents[index]!.demand, (index) => isUnsure[index]!.demand), outputsTogether('rail'));
  const trips = sheet('ways').map((row) => times(number(row, 'rated'), number(row, 'trip', TRIPS[String(row.kind)] ?? null)));
  /** The least current that makes one of the ways of a rail act; unknown where that of one is. */
  const leastTrip = (tag: Cell): Known => {
    const behind = trips.filter((_amps, index) => isGiven(tag) && sheet('ways')[index]!.rail === tag);
    return behind.length === 0 || behind.includes(null) ? null : Math.min(...behind.filter((amps) => amps !== null));
  };
  const nodes = gather(
    sheet('devices'), of('devices', 'branch'), (index) => currents[index]!.nodes, (index) => isUnsure[index]!.nodes);
  const onBus = gather(
    sheet('devices'), of('devices', 'branch'), (index) => currents[index]!.busDemand, (index) => isUnsure[index]!.nodes);
  const cables = gather(sheet('runs'), of('runs', 'branch'), () => 1);
  /** Whether a row names something that is not there. */
  const isLost = (row: InputRow, names: Readonly<Record<string, string>>) => Object.entries(names).some(([key, name]) =>
    isGiven(row[key]) && !sheet(name).some((each) => each[key] === row[key]));
  const isPlaceLost = (row: InputRow) => isLost(row, { enclosure: 'enclosures' });
  const isDoubled = (name: string, key: string) => (row: InputRow) => doubled(name, key, row[key]);

  // The warmth of an enclosure follows from what its supplies are asked for, and what they may give from its warmth.
  const losses = firstOfTag(sheet('supplies'), 'rail', (row, tag) => lossOf(row, demand(tag)));
  const supplyLoss = gather(sheet('supplies'), of('supplies', 'enclosure'),
    (index) => losses[index]!.watts, (index) => losses[index]!.partial);
  const widths = ['supplies', 'ways', 'branches', 'modules', 'feeds', 'terminals'].map((name) => gather(sheet(name),
    // A way stands where its supply does, unless it says otherwise.
    (index) => sheet(name)[index]!.enclosure ?? (name === 'ways' ? named(supplyOf, sheet(name)[index]!.rail)?.enclosure : null),
    (index) => times(number(sheet(name)[index], 'width'), name === 'supplies' ? number(sheet(name)[index], 'units', 1) : 1)));
  const usedWidth = (tag: Cell) => widths.map((of) => of(tag)).reduce(totalOf);
  const enclosures = firstOfTag(sheet('enclosures'), 'enclosure', (row, tag) =>
    enclosureFigures(row, supplyLoss(tag), usedWidth(tag), tag === null ? undefined : railsOf(sheet, row)));
  const warmth = new Map(sheet('enclosures').map((row, index) => [row, enclosures[index]!.top]));
  const usables = new Map(sheet('supplies').map((row) => {
    const enclosure = named(enclosureOf, row.enclosure);
    return [row, usableOf(row, enclosure === undefined ? null : warmth.get(enclosure)!)];
  }));

  // What follows from a warmth that lacks a loss is not wholly known either.
  const isWarmthPartial = (row: InputRow) => isGiven(row.fullUpTo)
    && named(enclosureOf, row.enclosure) !== undefined
    && (supplyLoss(row.enclosure ?? null).partial || doubled('enclosures', 'enclosure', row.enclosure));

  const isFeedUnsure = (row: InputRow) => doubled('feeds', 'feed', row.feed);
  const inputs = firstOfTag(sheet('supplies'), 'rail', (row, tag) => ({
    ...inputOf(row, demand(tag).sum, named(feedOfTag, row.feed)), unsure: demand(tag).partial || isFeedUnsure(row),
  }));
  const [onFeed, onFeedTogether] = [outputsBy('feed'), outputsTogether('feed')];
  const takenFrom = gather(sheet('supplies'), of('supplies', 'feed'),
    (index) => inputs[index]!.inputCurrent, (index) => inputs[index]!.unsure);
  const supplySurge = gather(sheet('supplies'), of('supplies', 'feed'),
    (index) => inputs[index]!.surge, (index) => inputs[index]!.unsure);
  const isSurgeUnsure = (index: number) => isOutputUnsure[index]! || isFeedUnsure(sheet('outputs')[index]!);
  const outputSurge = gather(sheet('outputs'), of('outputs', 'feed'), (index) => outputs[index]!.figures.surge,
    isSurgeUnsure, (one, other) => one > other ? one : other);
  const onModule = outputsBy('module');
  const usedOf = gather(sheet('outputs'), of('outputs', 'module'), () => 1);

  const starting = (tag: Cell): StartingRow[] => sheet('devices').flatMap((row, index) => (
    isGiven(tag) && rails[index] === tag
      ? [{ row, unitDraw: currents[index]!.unitDraw, type: named(types, row.type) }] : []));
  const standing = (row: InputRow): Standing => {
    const enclosure = named(enclosureOf, row.enclosure);
    return {
      top: enclosure === undefined ? null : warmth.get(enclosure)!,
      isTopPartial: enclosure !== undefined && supplyLoss(row.enclosure ?? null).partial,
    };
  };
  const misplaced = misplacedOn({
    supplies: sheet('supplies'), ways: sheet('ways'), runs: sheet('runs'), devices: sheet('devices'),
  });
  const lengths = gather(sheet('runs'), of('runs', 'branch'), (index) => number(sheet('runs')[index], 'length'));

  const supplies = firstOfTag(sheet('supplies'), 'rail', (row, tag) => (change: Partial<SupplyTotals>) => {
    const totals = {
      usable: usables.get(row)!, isUsablePartial: isWarmthPartial(row), connected: connected(tag),
      demand: demand(tag), starting: starting(tag), switched: onRail(tag).sum, isMisplaced: misplaced.has(row),
      leastTrip: leastTrip(tag), ...standing(row), input: inputs[sheet('supplies').indexOf(row)]!, ...change,
    };
    return incompleteIf(supplyFigures(row, totals), isDoubled('supplies', 'rail')(row)
      || doubled('enclosures', 'enclosure', row.enclosure) || isFeedUnsure(row) || totals.isUsablePartial
      || isLost(row, { enclosure: 'enclosures', feed: 'feeds' }));
  });
  /** Feeds and rails behind the outputs of a module. */
  const sourcesOf = (module: Cell | undefined) => new Set(sheet('outputs').filter((row) => row.module === module)
    .map((row) => isGiven(row.rail) ? `rail ${String(row.rail)}` : row.feed).filter(isGiven)).size;
  const isFeedRowUnsure = (row: InputRow) => isDoubled('feeds', 'feed')(row) || isPlaceLost(row)
    || doubled('enclosures', 'enclosure', row.enclosure) || hasFault(row);

  return {
    devices: sheet('devices').map((_row, index) => {
      const supply = named(supplyOf, rails[index]);
      return { ...currents[index]!, share: over(currents[index]!.demand, supply ? usables.get(supply)! : null) };
    }),
    supplies: supplies.map((judge) => judge({})),
    runs: extras.map(({ amps, celsius, partial }, index) =>
      ({ extra: amps, celsius, partial, rail: railOf(sheet('runs')[index]) })),
    branches: firstOfTag(sheet('branches'), 'branch', (row, tag) =>
      incompleteIf(branchFigures(row, nodes(tag), onBus(tag), cables(tag).sum, lengths(tag)), isDoubled('branches', 'branch')(row) || isPlaceLost(row)
        || doubled('enclosures', 'enclosure', row.enclosure))),
    modules: firstOfTag(sheet('modules'), 'module', (row, tag) =>
      judged(moduleOf(row, onModule(tag), usedOf(tag).sum, sourcesOf(tag) > 1), isDoubled('modules', 'module')(row) || isPlaceLost(row)
        || doubled('enclosures', 'enclosure', row.enclosure) || hasFault(row))),
    outputs: outputs.map((each, index) => {
      const row = sheet('outputs')[index]!;
      const names = { contact: 'contacts', module: 'modules', feed: 'feeds', rail: 'supplies' };
      return judged(each, isLost(row, names) || doubled('contacts', 'contact', row.contact) || isFeedUnsure(row)
        || doubled('modules', 'module', row.module) || doubled('supplies', 'rail', row.rail) || hasFault(row));
    }),
    feeds: firstOfTag(sheet('feeds'), 'feed', (row, tag) =>
      judged(feedOf(row, totalOf(onFeed(tag), takenFrom(tag)), totalOf(onFeedTogether(tag), takenFrom(tag)),
        supplySurge(tag), outputSurge(tag)), isFeedRowUnsure(row))),
    again: {
      supplies: supplies.map((judge) => (change) => judge(change).status),
      feeds: sheet('feeds').map((row) => (all, drawn, [supply, output], asked) =>
        judged(feedOf(row, all, drawn, supply, output, asked), isFeedRowUnsure(row)).status),
    },
    enclosures: enclosures.map((figures, index) =>
      incompleteIf(figures, isDoubled('enclosures', 'enclosure')(sheet('enclosures')[index]!))),
  };
}

function deviceCurrents(
  row: InputRow, type: InputRow | undefined, supply: InputRow | undefined,
): Omit<DeviceFigures, 'share'> {
  const unitDraw = isGiven(row.unitDraw) ? number(row, 'unitDraw')
    : isGiven(type?.draw) ? number(type, 'draw')
      : times(over(number(type, 'power'), supply ? number(supply, 'voltage', 24) : null), 1000);
  const diversity = isGiven(row.diversity) ? number(row, 'diversity') : number(type, 'diversity', 1);
  const qty = number(row, 'qty');
  const connected = over(times(qty, unitDraw), 1000);
  const demand = times(connected, diversity);
  return {
    unitDraw, diversity, connected, demand,
    nodes: times(qty, number(type, 'nodes')),
    busDemand: over(times(qty, number(type, 'busDraw')), 1000),
  };
}

/** What may be used of a supply; above the temperature up to which it gives all, less for each kelvin, down to none. */
export function usableOf(row: InputRow, top: Known): Known {
  const units = number(row, 'units', 1);
  const counting = row.redundant === true ? minus(units, 1) : units;
  const cool = times(times(number(row, 'rated'), counting), number(row, 'derating', 1));
  // A formula without a result is given, and not known.
  if (!isGiven(row.fullUpTo)) return cool;
  const lost = times(minus(top, number(row, 'fullUpTo')), number(row, 'lessPerKelvin'));
  return lost === null ? null : times(cool, lost <= 0 ? 1 : lost >= 1 ? 0 : 1 - lost);
}

/** Heat of a supply [W], and whether it lacks some. */
function lossOf(row: InputRow, demand: Total): { watts: Known; partial: boolean } {
  const lost = minus(over(1, number(row, 'efficiency')), 1);
  return { watts: times(times(number(row, 'voltage', 24), demand.sum), lost), partial: demand.partial };
}

/**
 * What a square metre of a face counts for, by mounting: top, front, back, left and right (IEC TR 60890, Table 3: a top
 * 1.4, covered 0.7; any other face 0.9, against a wall or a neighbour 0.5; number of the table from memory). Let into a
 * wall its front alone, an allowance.
 */
const FACES: Readonly<Record<string, readonly [number, number, number, number, number]>> = {
  'free': [1.4, 0.9, 0.9, 0.9, 0.9],
  'wall': [1.4, 0.9, 0.5, 0.9, 0.9],
  'row-end-free': [1.4, 0.9, 0.9, 0.9, 0.5],
  'row-end-wall': [1.4, 0.9, 0.5, 0.9, 0.5],
  'row-middle-free': [1.4, 0.9, 0.9, 0.5, 0.5],
  'row-middle-wall': [1.4, 0.9, 0.5, 0.5, 0.5],
  'row-middle-wall-covered': [0.7, 0.9, 0.5, 0.5, 0.5],
  'flush': [0, 0.9, 0, 0, 0],
};

/** Cooling surface [m²]. */
function areaOf(row: InputRow): Known {
  const metres = (key: string) => over(number(row, key), 1000);
  const [height, width, depth] = [metres('height'), metres('width'), metres('depth')];
  const mounting = row.mounting ?? 'wall';
  const faces = typeof mounting === 'string' && Object.hasOwn(FACES, mounting) ? FACES[mounting]! : undefined;
  if (height === null || width === null || depth === null || faces === undefined) return null;
  const [top, front, back, left, right] = faces;
  return top * width * depth + front * width * height + back * width * height + left * depth * height
    + right * depth * height;
}

/** An enclosure this close to the most that it may get inside is near it [K]. */
const CLOSE_KELVINS = 5;

function enclosureFigures(
  row: InputRow, supplyLoss: Total, used: Total, onRails: RailFigures | undefined,
): EnclosureFigures {
  const loss = plus(supplyLoss.sum, number(row, 'otherLoss', 20));
  const area = areaOf(row);
  const rise = over(loss, times(number(row, 'transfer', 5.5), area));
  const ambient = number(row, 'ambient', 30);
  const top = plus(ambient, times(rise, number(row, 'topFactor', 1.3)));
  const most = number(row, 'maxInside');
  const [rails, railLength] = [number(row, 'rails'), number(row, 'railLength')];
  const whole = times(rails, railLength);
  const freeWidth = minus(times(whole, minus(1, number(row, 'reserve', 0.2))), used.sum);
  // Whether parts fit one by one is asked where they do in sum.
  const fits = exceeds(used.sum, whole) ? undefined : onRails;
  return {
    supplyLoss: supplyLoss.sum, loss, area, rise, inside: plus(ambient, rise), top, usedWidth: used.sum, freeWidth,
    status: worst(
      exceeds(top, most) || exceeds(used.sum, whole) || fits?.fits === false || onRails?.isOver === true,
      (top !== null && most !== null && !exceeds(most - CLOSE_KELVINS, top))
        || exceeds(used.sum, plus(freeWidth, used.sum))
        || (fits !== undefined && exceeds(fits.used, times(whole, minus(1, number(row, 'reserve', 0.2))))),
      top === null || most === null || supplyLoss.partial || (whole !== null && used.partial)
        || (rails === null) !== (railLength === null) || fits?.fits === null || hasFault(row),
    ),
    partial: { supplyLoss: supplyLoss.partial, usedWidth: used.partial },
  };
}

/** Where a supply stands: how warm it is there. */
export interface Standing {
  readonly top: Known;
  readonly isTopPartial: boolean;
}

export interface SupplyTotals extends Standing {
  readonly usable: Known;
  readonly isUsablePartial: boolean;
  readonly connected: Total;
  readonly demand: Total;
  readonly starting: readonly StartingRow[];
  /** What relay outputs switch on it [A]. */
  readonly switched: number;
  readonly input: ReturnType<typeof inputOf>;
  readonly leastTrip: Known;
  /** Whether something on it is entered on another rail too. */
  readonly isMisplaced: boolean;
  /** Whether a case says how much of all that is on it comes together. */
  readonly isCovered?: boolean;
  /** What its battery has to bear [A]; its demand without cases. */
  readonly standby?: number;
}

/** Up to here supplies give all that is written on them [°C]: common practice, no source. */
const RATED_AT = 40;

function supplyFigures(row: InputRow, totals: SupplyTotals): SupplyFigures {
  const { usable, isUsablePartial, connected, demand, starting, switched, leastTrip } = totals;
  const { top, isTopPartial, isMisplaced, isCovered = false, standby = demand.sum } = totals;
  const isOneTooMuch = starting.some(({ row: device, unitDraw }) =>
    (number(device, 'qty') ?? 0) > 0 && exceeds(over(unitDraw, 1000), usable));
  const { inputCurrent, surge, isAsked } = totals.input;
  const [target, fuse, offAt] = [number(row, 'target', 0.8), number(row, 'fuse'), number(row, 'offAt')];
  const loading = over(demand.sum, usable);
  const units = number(row, 'units', 1);
  const peak = number(row, 'peak', 1);
  const most = times(times(number(row, 'rated'), row.redundant === true ? minus(units, 1) : units), peak);
  const [needed, battery] = [batteryNeeded(row, standby), number(row, 'battery')];
  const measured = measuredSupply(row, usable, demand.sum, demand.partial, Math.min(
    ...starting.map(({ row: device, type }) => number(device, 'qty') === 0 ? Infinity : number(type, 'maxVoltage') ?? Infinity)));
  const start = startUp(row, usable, starting, switched);
  const isNotDerated = !isGiven(row.derating) && number(row, 'fullUpTo') === null;
  const lacksWarmth = isGiven(row.enclosure) && (
    number(row, 'efficiency') === null || (isNotDerated && exceeds(top, RATED_AT))
    || ((offAt !== null || isNotDerated) && (top === null || isTopPartial)));
  return {
    usable, connected: connected.sum, demand: demand.sum, loading, batteryNeeded: needed,
    batteryLasts: batteryLasts(row, standby),
    spare: minus(times(usable, target), demand.sum),
    limitDiversity: over(times(usable, target), connected.sum),
    fuseLoading: over(demand.sum, fuse),
    loss: lossOf(row, demand).watts, inputCurrent, surge,
    status: worst(
      exceeds(demand.sum, usable) || usable === 0 || isOneTooMuch || hasMisfit(starting, row)
        || exceeds(demand.sum, fuse) || exceeds(needed, battery) || measured.over
        || (top !== null && offAt !== null && !exceeds(offAt, top)),
      exceeds(loading, target) || (!isCovered && (exceeds(connected.sum, usable) || exceeds(connected.sum, fuse)))
        || exceeds(fuse, most) || exceeds(leastTrip, times(usable, peak)) || measured.near || start.over,
      usable === null || target === null || demand.partial || isMisplaced || lacksWarmth || start.isPartial
        || (needed !== null && battery === null) || isAsked || hasFault(row)
        || isVoltageUnread(starting) || (row.redundant === true && number(row, 'seriesDrop') === null),
    ),
    partial: {
      usable: isUsablePartial, connected: connected.partial, demand: demand.partial,
      battery: demand.partial && isGiven(row.standbyHours), lasts: demand.partial && isGiven(row.battery),
    },
  };
}

function branchFigures(row: InputRow, nodes: Total, onBus: Total, cables: number, lengths: Total): BranchFigures {
  const limit = number(row, 'limit');
  const allowed = wholePart(times(limit, minus(1, number(row, 'reserve', 0))));
  const [terminators, maxCable] = [number(row, 'terminators'), number(row, 'maxCable')];
  const busCurrent = number(row, 'busCurrent');
  return {
    nodes: nodes.sum, cables, cableLength: lengths.sum, busDemand: onBus.sum,
    free: minus(allowed, nodes.sum),
    used: over(nodes.sum, limit),
    status: worst(
      exceeds(nodes.sum, limit) || exceeds(lengths.sum, maxCable) || exceeds(onBus.sum, busCurrent)
        || (terminators !== null && terminators > 2),
      exceeds(nodes.sum, allowed) || exceeds(onBus.sum, times(busCurrent, minus(1, number(row, 'reserve', 0))))
        || (terminators !== null && terminators < 2),
      allowed === null || nodes.partial || hasFault(row) || (isGiven(row.busCurrent) && onBus.partial)
        || (maxCable !== null && (lengths.partial || (cables === 0 && nodes.sum > 0))),
    ),
    partial: { nodes: nodes.partial, cableLength: lengths.partial, busDemand: onBus.partial },
  };
}

/** Figures with the status that their limits make. */
function judged<Figures>(
  { figures, verdict }: { figures: Figures; verdict: readonly [boolean, boolean, boolean] }, isUnsure: boolean,
): Figures & { status: Status } {
  return incompleteIf({ ...figures, status: worst(...verdict) }, isUnsure);
}

/** Multiples of the rating at which a way acts at once on direct current, by kind. */
export const TRIPS: Readonly<Record<string, number>> = {
  B: 7.5, C: 15, D: 30, gG: 7, fast: 4, slow: 10, electronic: 1.8,
};

/** A status that is not worse already becomes incomplete. */
function incompleteIf<Figures extends { status: Status }>(figures: Figures, isUnsure: boolean): Figures {
  return isUnsure && figures.status === 'ok' ? { ...figures, status: 'incomplete' } : figures;
}

function worst(over: boolean, near: boolean, incomplete: boolean): Status {
  return over ? 'over' : near ? 'near' : incomplete ? 'incomplete' : 'ok';
}

// Tags and totals

export interface Total {
  readonly sum: number;
  readonly partial: boolean;
}

const NOTHING: Total = { sum: 0, partial: false };

const totalOf = (one: Total, other: Total): Total =>
  ({ sum: one.sum + other.sum, partial: one.partial || other.partial });

/** Rows of a sheet by their tag; of rows that share a tag, the first one is meant. */
export function byTag(rows: readonly InputRow[], key: string): Map<Cell, InputRow> {
  const found = new Map<Cell, InputRow>();
  for (const row of rows) if (isGiven(row[key]) && !found.has(row[key])) found.set(row[key], row);
  return found;
}

export function named(rows: Map<Cell, InputRow>, tag: Cell): InputRow | undefined {
  return isGiven(tag) ? rows.get(tag) : undefined;
}

/** Figures of each row of a sheet; a later row with a tag used before is named by nothing and gets the tag `null`. */
function firstOfTag<T>(rows: readonly InputRow[], key: string, figures: (row: InputRow, tag: Cell) => T): T[] {
  const meant = byTag(rows, key);
  return rows.map((row) => figures(row, named(meant, row[key]) === row ? row[key] : null));
}

/**
 * Adds up a figure of rows by the tag that they name. @param isUnsure whether it is not wholly known though it has a
 * value.
 */
function gather(
  rows: readonly InputRow[], tagOf: (index: number) => Cell, figure: (index: number) => Known,
  isUnsure: (index: number) => boolean = () => false, join = (one: number, other: number) => one + other,
): (tag: Cell) => Total {
  const totals = new Map<Cell, { sum: number; partial: boolean }>();
  rows.forEach((_row, index) => {
    const tag = tagOf(index);
    if (!isGiven(tag)) return;
    let total = totals.get(tag);
    if (total === undefined) totals.set(tag, total = { sum: 0, partial: false });
    const value = figure(index);
    if (value === null || isUnsure(index)) total.partial = true;
    if (value !== null) total.sum = join(total.sum, value);
  });
  return (tag) => totals.get(tag) ?? NOTHING;
}

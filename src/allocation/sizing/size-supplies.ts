import { numberOf } from '../../engine/index.ts';
import { withRounding, type Steps } from '../packing/index.ts';
import { shareRow } from '../sharing/device-reader.ts';
import { gatherAreas } from '../sharing/gather-areas.ts';
import type { Lot } from '../sharing/lots.ts';
import { classesOfPieces, piecesOf } from '../sharing/pieces.ts';
import { runsOfSeveral } from '../sharing/read-supplies.ts';
import { readRails, type Rail } from '../sharing/rails.ts';
import { placementsOf } from '../sharing/share-out.ts';
import { supplyDevices, type SupplyDevice } from '../sharing/supply-devices.ts';
import { grouped, PURPOSES } from '../../schedule/index.ts';
import { amps, roundedDown, roundedUp } from '../../words/index.ts';
import { rowNames } from '../row-names.ts';
import { leastSet } from './least-set.ts';
import { wayLike, waysOf } from './size-ways.ts';
import type { SizedBin, SizedSchedule, SizedWay, SizingRow, SizingRules } from './sizing.ts';

/** Share of the rating that the demand may reach where nothing says otherwise. */
const DEFAULT_TARGET = 0.8;
/** Tags that the first supply for a purpose follows. */
const FIRST: Readonly<Record<string, string>> = { lighting: 'L0', field: 'P0', control: 'C0', other: 'S0' };
/** Cells that belong to one rating; a supply of another does not take them over. */
const OF_RATING = [
  'fuse', 'fuseKind', 'width', 'partNumber', 'price', 'efficiency', 'inputPowerFactor', 'inputInrush', 'maxOnB16',
  'battery',
];

/** What the supplies of a job come to. */
export interface SizedSupplies {
  readonly rows: SizingRow[];
  readonly bins: SizedBin[];
}

/**
 * The supplies that the devices need, by panel, purpose and voltage: the least number of those that an office keeps,
 * then the smallest total rating, each loaded with whole devices up to the target; and the ways behind them. They are
 * derated, have a spare unit and a target as the last rail of the schedule for that purpose and voltage has them.
 */
export function* sizeSupplies(schedule: SizedSchedule, rules: SizingRules): Steps<SizedSupplies> {
  const rails = readRails(schedule);
  const devices = supplyDevices(schedule, rails).filter(({ on }) => !rules.unplaced || on < 0)
    .map((device) => ({ ...device, panel: rules.panelOf('devices', device.id) }));
  const groupOf = ({ voltage, purpose, panel }: SupplyDevice) => `${voltage} ${purpose} ${panel ?? ''}`;
  const mixedRuns = runsOfSeveral(devices, groupOf);
  const groups = grouped(PURPOSES.flatMap((purpose) =>
    devices.filter((each) => each.purpose === purpose && !mixedRuns.has(each.run))), groupOf);
  const rows: SizingRow[] = [];
  const bins: SizedBin[] = [];
  for (const members of groups.values()) {
    const sized = yield* sizeGroup(schedule, members, likeLast(schedule, rails, members[0]!), rules);
    rows.push(...sized.rows);
    bins.push(...sized.bins);
  }
  return { rows: [...rows, ...onMixedRuns(schedule, devices.filter(({ run }) => mixedRuns.has(run)))], bins };
}

/** Lines for devices whose run would need several supplies. */
function onMixedRuns({ words }: SizedSchedule, devices: readonly SupplyDevice[]): SizingRow[] {
  return [...new Set(devices.map(({ panel }) => panel))].map((panel) => {
    const members = devices.filter((device) => device.panel === panel);
    return {
      panel, item: words.say('Devices on runs of several purposes or panels'),
      quantity: members.reduce((sum, { qty }) => sum + (qty ?? 0), 0),
      why: words.say('Not counted above: {rows}. Give them runs of their own.', { rows: rowNames(members, words) }),
    };
  });
}

/** What a rail of the schedule says of the supplies that are like it. */
interface Like {
  readonly rail: Rail;
  /** Share of the rating of its units that may be used where it is mounted, above 0 to 1. */
  readonly share: number;
  /** One unit more is a spare. */
  readonly redundant: boolean;
  readonly target: number;
}

/** The last rail that devices could be put on, in their panel before others. */
function likeLast(
  schedule: SizedSchedule, rails: readonly Rail[], { purpose, voltage, panel }: SupplyDevice,
): Like | undefined {
  const fits = (each: Rail) => each.voltage === voltage && each.purpose === purpose;
  const rail = rails.findLast((each) => panel !== null && each.panel === panel && fits(each)) ?? rails.findLast(fits);
  if (rail === undefined) return undefined;
  const value = (key: string) => numberOf(schedule, 'supplies', rail.id, key);
  const redundant = schedule.value('supplies', rail.id, 'redundant') === true;
  const [usable, rated, units] = [value('usable'), value('rated'), value('units')];
  const whole = rated === null || units === null ? 0 : rated * (redundant ? units - 1 : units);
  const known = usable === null || whole <= 0 ? value('derating') : usable / whole;
  return {
    rail, redundant, share: known !== null && known > 0 && known < 1 ? known : 1,
    target: value('target') ?? DEFAULT_TARGET,
  };
}

function* sizeGroup(
  schedule: SizedSchedule, devices: readonly SupplyDevice[], like: Like | undefined, rules: SizingRules,
): Steps<SizedSupplies> {
  const { words } = schedule;
  const { voltage, purpose, panel } = devices[0]!;
  const { lists: { ratings }, extension, equalUnits, stop } = rules;
  const group = { voltage, purpose: words.text(purpose) };
  const { share = 1, redundant = false } = like ?? {};
  const target = rules.target ?? like?.target ?? DEFAULT_TARGET;
  const capacities = ratings.map((rating) => withRounding(rating * share * target / (1 + extension)));
  const largest = Math.max(...capacities);
  const unknown = devices.filter(({ amps: current }) => current === null);
  const known = devices.filter((device) => device.amps !== null && device.amps.connected > 0);
  const pieces = piecesOf(known.map((device) =>
    shareRow(device, device.amps!.demand, rules.wholeRows, device.run < 0 ? null : device.run)));
  const fitting = pieces.filter(({ size }) => size <= largest);
  const tooLarge = pieces.filter(({ size }) => size > largest);
  const demand = fitting.reduce((sum, { size, count }) => sum + size * count, 0);
  const connected = known.reduce((sum, device) => sum + device.amps!.connected, 0);

  const rows: SizingRow[] = [];
  const bins: SizedBin[] = [];
  if (fitting.length > 0) {
    const classes = classesOfPieces(fitting);
    const { chosen, fills, isLeast, isSmallest } = yield* leastSet(classes, capacities, equalUnits, stop);
    // Devices of a diversity of 0 ask for nothing, but need a supply.
    const set = chosen.length > 0 ? chosen : [capacities.indexOf(Math.min(...capacities))];
    const rooms = chosen.map((place) => capacities[place]!);
    const lots = yield* gatherAreas(fitting, rooms, fills, { whole: stop, all: stop });
    const sizeless = fitting.filter(({ size }) => size === 0).map((piece): Lot => ({ piece, count: piece.count }));
    const ofWay = wayLike(schedule, rules, purpose, voltage);
    for (const [index, place] of set.entries()) {
      const held = [...lots[index] ?? [], ...index === 0 ? sizeless : []];
      bins.push({
        over: 'supplies', panel, like: like?.rail.id ?? null, after: like?.rail.tag ?? FIRST[purpose]!,
        cells: cellsOf(schedule, ratings[place]!, devices[0]!, like), placements: placementsOf(held, ''),
        ways: yield* waysOf(held, ofWay, rules),
      });
    }
    const total = set.reduce((sum, place) => sum + ratings[place]!, 0);
    const reasons = [
      words.say('Demand {demand} at a target of {target} % needs {needed} of rating; {total} in {supplies} is {claim, select, smallest {the least number and, with it, the smallest total rating of those kept} least {the least number of those kept} other {the fewest found}}, with whole devices on each.', {
        demand: amps(demand), target: Math.round(target * 1000) / 10,
        needed: roundedUp(amps(demand * (1 + extension) / target / share)),
        total: amps(total), supplies: set.length,
        claim: !isLeast ? 'fewest' : isSmallest ? 'smallest' : 'least',
      }),
      ...extension === 0 ? [] : [words.say('It may grow by {percent} %.', { percent: Math.round(extension * 1000) / 10 })],
      ...!equalUnits ? [] : [words.say('All are of one rating.')],
      ...share === 1 && !redundant ? [] : [words.say('As on rail {tag}, {percent} % of a rating may be used{redundant, select, true {, and each supply has one unit more as a spare: {units} units} other {}}.', {
        tag: like!.rail.tag, percent: Math.round(share * 1000) / 10, redundant: String(redundant),
        units: 2 * set.length,
      })],
      ...connected <= withRounding(total * share) ? []
        : [words.say('It lives on diversity: everything at the same time takes {connected}, and where all of it starts together, as in a wind alarm or at power return, the supplies shut down.', { connected: amps(connected) })],
      ...schedule.cases.cases.length === 0 ? []
        : [words.say('Each device row counts with what it draws in the case in which that is most.')],
      words.say('What cables make devices draw more is not counted.'),
    ];
    for (const place of new Set(set)) {
      const quantity = set.filter((each) => each === place).length;
      rows.push({
        panel, item: words.say('Supply {voltage} V, {purpose}, {rating} A', { ...group, rating: ratings[place]! }),
        quantity: redundant ? 2 * quantity : quantity, why: reasons.join(' '),
      });
    }
    rows.push(wayRow(schedule, panel, group, bins.flatMap(({ ways }) => ways), ofWay.rated, rules));
  }
  if (tooLarge.length > 0) {
    rows.push({
      panel, item: words.say(
        'Supply {voltage} V, {purpose}, larger than {rating} A', { ...group, rating: Math.max(...ratings) }
      ),
      quantity: tooLarge.reduce((sum, { count }) => sum + count, 0),
      why: words.say('{rows} ask for more than {most} in one piece, up to which the largest supply kept may be loaded.', {
        rows: rowNames(
          tooLarge.flatMap(({ parts }) => parts.map(({ row }) => row)), words
        ), most: roundedDown(amps(largest)),
      }),
    });
  }
  if (unknown.length > 0) {
    rows.push({
      panel, item: words.say(
        'Devices of unknown demand, {voltage} V, {purpose}', group
      ), quantity: unknown.reduce((sum, { qty }) => sum + (qty ?? 0), 0),
      why: words.say('Not counted above: {rows}. Enter their {lacks, select, quantity {quantity and draw} other {draw}}.', {
        rows: rowNames(unknown, words), lacks: unknown.some(({ qty }) => qty === null) ? 'quantity' : 'draw',
      }),
    });
  }
  return { rows, bins };
}

function wayRow(
  { words }: SizedSchedule, panel: string | null, group: { voltage: number; purpose: string },
  ways: readonly SizedWay[], rated: number, { extension }: SizingRules,
): SizingRow {
  const kind = words.text(String(ways[0]!.cells.kind));
  return {
    panel, item: words.say('Way {voltage} V, {purpose}, {kind}, {rated} A', { ...group, kind, rated }),
    quantity: ways.length,
    why: words.say('The least number behind each supply that carry its demand up to their target, each run on one way{extension, select, none {} other {, and {percent} % more for extension}}; how long and how many the cables are may ask for more.', {
      extension: extension === 0 ? 'none' : 'some', percent: Math.round(extension * 1000) / 10,
    }),
  };
}

/** Cells in which a supply differs from the one that it is made like. */
function cellsOf(
  schedule: SizedSchedule, rated: number, { purpose, voltage, panel }: SupplyDevice, like: Like | undefined,
): SizedBin['cells'] {
  const other = like !== undefined && numberOf(schedule, 'supplies', like.rail.id, 'rated') !== rated ? OF_RATING : [];
  const elsewhere = like !== undefined && like.rail.panel !== panel ? ['enclosure'] : [];
  return {
    // Its feed is sized with it.
    ...Object.fromEntries(['feed', ...other, ...elsewhere].map((key) => [key, null])),
    purpose, rated, ...(voltage === 24 ? {} : { voltage }), ...(panel === null ? {} : { enclosure: panel }),
    ...(like === undefined ? {} : { units: like.redundant ? 2 : null }),
  };
}

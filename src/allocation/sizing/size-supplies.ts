import { withRounding, type Steps, type Stop } from '../packing/index.ts';
import { numberOf, shareRow } from '../sharing/device-reader.ts';
import { classesOfPieces, piecesOf } from '../sharing/pieces.ts';
import { readRails, type Rail } from '../sharing/rails.ts';
import { supplyDevices, type SupplyDevice } from '../sharing/supply-devices.ts';
import { PURPOSES } from '../../schedule/index.ts';
import { amps, roundedDown, roundedUp } from '../../words/index.ts';
import { rowNames } from '../row-names.ts';
import { leastSet } from './least-set.ts';
import type { SizedSchedule, SizingRow } from './sizing.ts';

/**
 * The supplies that the devices need, by purpose and voltage: the least number of those that an office keeps, then
 * the smallest total rating, each loaded with whole devices up to the target. They are derated, and have a spare unit,
 * where the last rail of the schedule for that purpose and voltage does.
 *
 * @param ratings rated currents to choose from [A]
 * @param target share of the rating that the demand may reach
 */
export function* sizeSupplies(
  schedule: SizedSchedule, ratings: readonly number[], target: number, wholeRows: boolean, stop: Stop,
): Steps<SizingRow[]> {
  const rails = readRails(schedule);
  const devices = supplyDevices(schedule, rails);
  const groups = new Map<string, SupplyDevice[]>();
  for (const device of PURPOSES.flatMap((purpose) => devices.filter((each) => each.purpose === purpose))) {
    const key = `${device.voltage} ${device.purpose}`;
    groups.set(key, [...groups.get(key) ?? [], device]);
  }
  const rows: SizingRow[] = [];
  for (const members of groups.values()) {
    const like = likeLast(schedule, rails, members[0]!);
    rows.push(...yield* sizeGroup(schedule, members, like, ratings, target, wholeRows, stop));
  }
  return rows;
}

/** What a rail of the schedule says of the supplies that are like it. */
interface Like {
  /** Its tag. */
  readonly tag: string;
  /** Share of the rating of its units that may be used where it is mounted, above 0 to 1. */
  readonly share: number;
  /** One unit more is a spare. */
  readonly redundant: boolean;
}

/** The last rail that devices could be put on, where it is redundant or may not be used whole. */
function likeLast(
  schedule: SizedSchedule, rails: readonly Rail[], { purpose, voltage }: SupplyDevice,
): Like | undefined {
  const rail = rails.findLast((each) => each.voltage === voltage && each.purpose === purpose);
  if (rail === undefined) return undefined;
  const value = (key: string) => numberOf(schedule, 'supplies', rail.id, key);
  const redundant = schedule.value('supplies', rail.id, 'redundant') === true;
  const [usable, rated, units] = [value('usable'), value('rated'), value('units')];
  const whole = rated === null || units === null ? 0 : rated * (redundant ? units - 1 : units);
  const known = usable === null || whole <= 0 ? value('derating') : usable / whole;
  const share = known !== null && known > 0 && known < 1 ? known : 1;
  return redundant || share < 1 ? { tag: rail.tag, share, redundant } : undefined;
}

function* sizeGroup(
  { words }: SizedSchedule, devices: readonly SupplyDevice[], like: Like | undefined, ratings: readonly number[],
  target: number, wholeRows: boolean, stop: Stop,
): Steps<SizingRow[]> {
  const { voltage, purpose } = devices[0]!;
  const group = { voltage, purpose: words.text(purpose) };
  const { tag = '', share = 1, redundant = false } = like ?? {};
  const capacities = ratings.map((rating) => withRounding(rating * share * target));
  const largest = Math.max(...capacities);
  const unknown = devices.filter(({ amps: current }) => current === null);
  const known = devices.filter((device) => device.amps !== null && device.amps.connected > 0);
  const pieces = piecesOf(known.map((device) =>
    shareRow(device, device.amps!.demand, wholeRows, device.run < 0 ? null : device.run)));
  const fitting = pieces.filter(({ size }) => size <= largest);
  const tooLarge = pieces.filter(({ size }) => size > largest);
  const classes = classesOfPieces(fitting);
  const demand = fitting.reduce((sum, { size, count }) => sum + size * count, 0);
  const connected = known.reduce((sum, device) => sum + device.amps!.connected, 0);

  const rows: SizingRow[] = [];
  if (fitting.length > 0) {
    const { chosen, isLeast, isSmallest } = yield* leastSet(classes, capacities, stop);
    // Devices of a diversity of 0 ask for nothing, but need a supply.
    const set = chosen.length > 0 ? chosen : [capacities.indexOf(Math.min(...capacities))];
    const total = set.reduce((sum, place) => sum + ratings[place]!, 0);
    const spare = like === undefined ? '' : ` ${words.say('As on rail {tag}, {percent} % of a rating may be used{redundant, select, true {, and each supply has one unit more as a spare: {units} units} other {}}.', {
      tag, percent: Math.round(share * 1000) / 10, redundant: String(redundant), units: 2 * set.length,
    })}`;
    for (const place of [...new Set(set)]) {
      const quantity = set.filter((each) => each === place).length;
      rows.push({
        item: words.say('Supply {voltage} V, {purpose}, {rating} A', { ...group, rating: ratings[place]! }),
        quantity: redundant ? 2 * quantity : quantity,
        why: words.say('Demand {demand} at a target of {target} % needs {needed} of rating; {total} in {supplies} is {claim, select, smallest {the least number and, with it, the smallest total rating of those kept} least {the least number of those kept} other {the fewest found}}, with whole devices on each.', {
          demand: amps(demand), target: Math.round(target * 1000) / 10,
          needed: roundedUp(amps(demand / target / share)),
          total: amps(total), supplies: set.length,
          claim: !isLeast ? 'fewest' : isSmallest ? 'smallest' : 'least',
        }) + spare + (connected > withRounding(total * share) ? ` ${words.say('It lives on diversity: everything at once takes {connected}, and where all of it starts together, as in a wind alarm or at power return, the supplies shut down.', { connected: amps(connected) })}` : '')
          + ` ${words.say('Ways, feeds with their breakers, and what cables make devices draw more are not counted.')}`,
      });
    }
  }
  if (tooLarge.length > 0) {
    rows.push({
      item: words.say(
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
      item: words.say(
        'Devices of unknown demand, {voltage} V, {purpose}', group
      ), quantity: unknown.reduce((sum, { qty }) => sum + (qty ?? 0), 0),
      why: words.say('Not counted above: {rows}. Enter their quantity and draw.', { rows: rowNames(unknown, words) }),
    });
  }
  return rows;
}

import { withRounding, type Steps, type Stop } from '../packing/index.ts';
import { shareRow } from '../sharing/device-reader.ts';
import { classesOfPieces, piecesOf } from '../sharing/pieces.ts';
import { readRails } from '../sharing/rails.ts';
import { supplyDevices, type SupplyDevice } from '../sharing/supply-devices.ts';
import { PURPOSES } from '../../schedule/index.ts';
import { amps, roundedDown, roundedUp } from '../../words/index.ts';
import { rowNames } from '../row-names.ts';
import { leastSet } from './least-set.ts';
import type { SizedSchedule, SizingRow } from './sizing.ts';

/**
 * The supplies that the devices need, by purpose and voltage: the least number of those that an office keeps, then
 * the smallest total rating, each loaded with whole devices up to the target.
 *
 * @param ratings rated currents to choose from [A]
 * @param target share of the rating that the demand may reach
 */
export function* sizeSupplies(
  schedule: SizedSchedule, ratings: readonly number[], target: number, wholeRows: boolean, stop: Stop,
): Steps<SizingRow[]> {
  const devices = supplyDevices(schedule, readRails(schedule));
  const groups = new Map<string, SupplyDevice[]>();
  for (const device of PURPOSES.flatMap((purpose) => devices.filter((each) => each.purpose === purpose))) {
    const key = `${device.voltage} ${device.purpose}`;
    groups.set(key, [...groups.get(key) ?? [], device]);
  }
  const rows: SizingRow[] = [];
  for (const members of groups.values()) {
    rows.push(...yield* sizeGroup(schedule, members, ratings, target, wholeRows, stop));
  }
  return rows;
}

function* sizeGroup(
  { words }: SizedSchedule, devices: readonly SupplyDevice[], ratings: readonly number[], target: number,
  wholeRows: boolean,
  stop: Stop,
): Steps<SizingRow[]> {
  const { voltage, purpose } = devices[0]!;
  const group = { voltage, purpose: words.text(purpose) };
  const capacities = ratings.map((rating) => withRounding(rating * target));
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
    for (const place of [...new Set(set)]) {
      const quantity = set.filter((each) => each === place).length;
      rows.push({
        item: words.say('Supply {voltage} V, {purpose}, {rating} A', { ...group, rating: ratings[place]! }), quantity,
        why: words.say('Demand {demand} at a target of {target} % needs {needed} of rating; {total} in {supplies} is {claim, select, smallest {the least number and, with it, the smallest total rating of those kept} least {the least number of those kept} other {the fewest found}}, with whole devices on each.', {
          demand: amps(demand), target: Math.round(target * 1000) / 10, needed: roundedUp(amps(demand / target)),
          total: amps(total), supplies: set.length,
          claim: !isLeast ? 'fewest' : isSmallest ? 'smallest' : 'least',
        }) + (connected > withRounding(total) ? ` ${words.say('It lives on diversity: everything at once takes {connected}, and where all of it starts together, as in a wind alarm or at power return, the supplies shut down.', { connected: amps(connected) })}` : ''),
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

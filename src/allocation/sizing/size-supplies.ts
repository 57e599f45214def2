import { withRounding, type Steps, type Stop } from '../packing/index.ts';
import { shareRow } from '../sharing/device-reader.ts';
import { classesOfPieces, piecesOf } from '../sharing/pieces.ts';
import { readRails } from '../sharing/rails.ts';
import type { Figures } from '../sharing/read-sharing.ts';
import { supplyDevices, type SupplyDevice } from '../sharing/supply-devices.ts';
import { PURPOSES } from '../../schedule/index.ts';
import { leastSet } from './least-set.ts';
import type { SizingRow } from './sizing.ts';
import { amps, listed, percent } from './wording.ts';

/**
 * The supplies that the devices need, by purpose and voltage: the least number of those that an office keeps, then
 * the smallest total rating, each loaded with whole devices up to the target.
 *
 * @param ratings rated currents to choose from [A]
 * @param target share of the rating that the demand may reach
 */
export function* sizeSupplies(
  schedule: Figures, ratings: readonly number[], target: number, wholeRows: boolean, stop: Stop,
): Steps<SizingRow[]> {
  const devices = supplyDevices(schedule, readRails(schedule));
  const groups = new Map<string, SupplyDevice[]>();
  for (const device of PURPOSES.flatMap((purpose) => devices.filter((each) => each.purpose === purpose))) {
    const key = `${device.voltage} V, ${device.purpose}`;
    groups.set(key, [...groups.get(key) ?? [], device]);
  }
  const rows: SizingRow[] = [];
  for (const [name, members] of groups) rows.push(...yield* sizeGroup(name, members, ratings, target, wholeRows, stop));
  return rows;
}

function* sizeGroup(
  name: string, devices: readonly SupplyDevice[], ratings: readonly number[], target: number, wholeRows: boolean,
  stop: Stop,
): Steps<SizingRow[]> {
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

  const rows: SizingRow[] = [];
  if (fitting.length > 0) {
    const { chosen, isLeast, isSmallest } = yield* leastSet(classes, capacities, stop);
    // Devices of a diversity of 0 ask for nothing, but need a supply.
    const set = chosen.length > 0 ? chosen : [capacities.indexOf(Math.min(...capacities))];
    const claim = isLeast ? `the least number${isSmallest ? ' and, with it, the smallest total rating' : ''} of those kept` : 'the fewest found';
    const rating = set.reduce((sum, place) => sum + ratings[place]!, 0);
    for (const place of [...new Set(set)]) {
      const quantity = set.filter((each) => each === place).length;
      rows.push({
        item: `Supply ${name}, ${ratings[place]!} A`, quantity,
        why: `Demand ${amps(demand)} at a target of ${percent(target)} needs ${amps(demand / target)} of rating; ${amps(rating)} in ${set.length} is ${claim}, with whole devices on each.`,
      });
    }
  }
  if (tooLarge.length > 0) {
    rows.push({
      item: `Supply ${name}, larger than ${Math.max(...ratings)} A`,
      quantity: tooLarge.reduce((sum, { count }) => sum + count, 0),
      why: `${listed(tooLarge.flatMap(({ parts }) => parts.map(({ row }) => row)))} ask for more than ${amps(largest)} in one piece, up to which the largest supply kept may be loaded.`,
    });
  }
  if (unknown.length > 0) {
    rows.push({
      item: `Devices of unknown demand, ${name}`, quantity: unknown.reduce((sum, { qty }) => sum + (qty ?? 0), 0),
      why: `Not counted above: ${listed(unknown)}. Enter their quantity and draw.`,
    });
  }
  return rows;
}

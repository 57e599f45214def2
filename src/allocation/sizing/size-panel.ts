import { runSteps, stopAt } from '../packing/index.ts';
import { OFFICE_LISTS } from './office-lists.ts';
import { sizeBranches } from './size-branches.ts';
import { sizeRelays } from './size-relays.ts';
import { sizeSupplies } from './size-supplies.ts';
import type { SizedSchedule, SizingOptions, SizingRow } from './sizing.ts';

/**
 * What a job needs: supplies by purpose, bus branches, relay modules. What cannot be counted, because an input is
 * missing, has lines of its own.
 *
 * @returns lines in this order; none for an empty schedule
 * @throws RangeError when a list to choose from is empty
 *
 * Limits: supplies are derated and redundant as the last rail for their purpose is; ways, feeds with their breakers and
 * what cables make devices draw more are not counted. A count for pricing, not a design.
 */
export async function sizePanel(schedule: SizedSchedule, options: SizingOptions = {}): Promise<readonly SizingRow[]> {
  const { lists = OFFICE_LISTS, target = 0.8, wholeRows = false, signal, milliseconds = 1_500 } = options;
  if (lists.ratings.length === 0 || lists.ways.length === 0) {
    throw new RangeError('A list of ratings or ways to choose from is empty.');
  }
  const stop = stopAt(signal, milliseconds);
  return [
    ...await runSteps(sizeSupplies(schedule, lists.ratings, target, wholeRows, stop)),
    ...await runSteps(sizeBranches(schedule, wholeRows, stop)),
    ...await runSteps(sizeRelays(schedule, lists.ways, stop)),
  ];
}

import { tagOf } from '../../schedule/index.ts';
import type { Carried } from './carried.ts';
import { leftOut } from './device-reader.ts';
import type { Rail } from './rails.ts';
import type { Figures, LeftOut, Placement } from './sharing-problem.ts';
import type { SupplyDevice } from './supply-devices.ts';

/** Devices whose rail follows from their run. */
export interface OnFedRuns {
  readonly pinned: readonly Placement[];
  readonly left: readonly LeftOut[];
  /** The devices that a sharing may put on any rail. */
  readonly free: readonly SupplyDevice[];
}

/**
 * Puts devices without a rail on the one that feeds their run, where that is known and may take them; `carried` takes
 * them up.
 * @param staying devices that keep their rail, and with it their run
 */
export function onFedRuns(
  schedule: Figures, rails: readonly Rail[], moving: readonly SupplyDevice[], staying: readonly SupplyDevice[],
  carried: Carried,
): OnFedRuns {
  const railOfRun = new Map<number, number>();
  for (const { id } of schedule.rows('runs')) railOfRun.set(id, schedule.target('runs', id, 'rail'));
  for (const { run, on } of staying) railOfRun.set(run, on);

  const pinned: Placement[] = [];
  const left: LeftOut[] = [];
  const free: SupplyDevice[] = [];
  for (const device of moving) {
    const rail = rails.find(({ id }) => id === railOfRun.get(device.run));
    if (device.run < 0 || rail === undefined || device.qty === null || device.amps === null) {
      free.push(device);
    } else if (carried.mayTake(rail, device)) {
      const { row, id, ref, qty } = device;
      pinned.push({ row, id, ref, tag: tagOf('supplies', schedule.document.row('supplies', rail.id)!), qty });
      carried.add(rail.id, device);
    } else {
      left.push(leftOut(device, 'run-elsewhere'));
    }
  }
  return { pinned, left, free };
}

import { PURPOSES } from '../../schedule/index.ts';
import { Carried } from './carried.ts';
import { keptPlacement, leftOut, numberOf, shareRow, takenTags } from './device-reader.ts';
import { onFedRuns } from './fed-runs.ts';
import { furtherRails, readRails, type Rail } from './rails.ts';
import type {
  Figures, LeftOut, LeftOutCode, ShareBin, ShareGroup, ShareRequest, ShareRow, SharingNote, SharingProblem,
} from './sharing-problem.ts';
import { supplyDevices, type SupplyDevice } from './supply-devices.ts';

/**
 * What there is to share out over the supplies: the demand of the devices, up to what may be used of a supply times
 * its target, and no more than its fuse.
 *
 * Each purpose has supplies of its own, and so has each voltage; a type without a purpose counts as `other`. A
 * supply without a purpose goes to the purpose that needs it. Devices of one run stay together, as one rail feeds
 * it. To a supply that keeps devices whose demand is not known nothing is added.
 *
 * Limits: what may be used of a supply is taken as it is now; where it depends on the warmth of the enclosure, it
 * may change.
 */
export function readSupplies(
  schedule: Figures, { wholeRows = false, keepPlaced = false }: ShareRequest,
): SharingProblem {
  const rails = readRails(schedule);
  const byId = new Map(rails.map((rail) => [rail.id, rail]));
  const devices = supplyDevices(schedule, rails);
  const stays = ({ on }: SupplyDevice) => keepPlaced && byId.has(on);
  const staying = devices.filter(stays);
  const moving = devices.filter((device) => !stays(device));
  const carried = new Carried(staying);
  for (const { id } of schedule.rows('outputs')) {
    const rail = schedule.target('outputs', id, 'rail');
    if (rail >= 0) carried.addAmps(rail, numberOf(schedule, 'outputs', id, 'current'));
  }
  const { pinned, left, free } = keepPlaced ? onFedRuns(schedule, rails, moving, staying, carried)
    : { pinned: [], left: [], free: moving };

  const groups = new Groups(rails);
  const leftOuts: LeftOut[] = [...left];
  const mixedRuns = runsOfSeveral(free);
  for (const device of PURPOSES.flatMap((purpose) => free.filter((each) => each.purpose === purpose))) {
    const { amps, run, purpose, voltage } = device;
    const code = mixedRuns.has(run) ? 'mixed-run' : obstacle(device, rails);
    if (code !== undefined) leftOuts.push(leftOut(device, code));
    else groups.of(purpose, voltage).rows.push(shareRow(device, amps!.demand, wholeRows, run < 0 ? null : run));
  }
  const pools: Record<string, ShareBin[]> = {};
  for (const rail of rails) {
    const bin = carried.bin(rail);
    const purpose = carried.purposeOf(rail);
    if (purpose === null) (pools[poolOf(rail.voltage)] ??= []).push(bin);
    else if (bin.inUse || groups.has(purpose, rail.voltage)) groups.of(purpose, rail.voltage).bins.push(bin);
  }
  return {
    over: 'supplies', groups: groups.all(), pools, pinned, leftOut: leftOuts,
    kept: staying.map((device) => keptPlacement(device, byId.get(device.on)!.tag)),
    takenTags: takenTags(schedule, 'supplies', 'rail'), notes: notesOn(rails, carried),
  };
}

const poolOf = (voltage: number) => `${voltage} V`;

/** Groups by purpose and voltage. */
class Groups {
  readonly #rails: readonly Rail[];
  readonly #groups = new Map<string, ShareGroup & { readonly rows: ShareRow[]; readonly bins: ShareBin[] }>();

  constructor(rails: readonly Rail[]) {
    this.#rails = rails;
  }

  has(purpose: string, voltage: number): boolean {
    return this.#groups.has(`${purpose} ${voltage}`);
  }

  of(purpose: string, voltage: number) {
    const key = `${purpose} ${voltage}`;
    const group = this.#groups.get(key) ?? {
      serves: { purpose, voltage }, pool: poolOf(voltage), rows: [], bins: [], further: furtherRails(
        this.#rails, purpose, voltage
      ),
    };
    this.#groups.set(key, group);
    return group;
  }

  all(): ShareGroup[] {
    return [...this.#groups.values()];
  }
}

/** What keeps a device from being shared out, if anything does. */
function obstacle(
  { qty, amps, purpose, voltage }: SupplyDevice, rails: readonly Rail[],
): Exclude<LeftOutCode, 'too-large' | 'no-room'> | undefined {
  if (qty === null) return 'quantity-unknown';
  if (amps === null) return 'size-unknown';
  if (amps.connected === 0) return 'takes-none';
  return furtherRails(rails, purpose, voltage) === undefined ? 'nothing-to-share-over' : undefined;
}

/** Runs whose devices need several purposes or voltages. */
function runsOfSeveral(devices: readonly SupplyDevice[]): Set<number> {
  const first = new Map<number, SupplyDevice>();
  const mixed = new Set<number>();
  for (const device of devices) {
    if (device.run < 0) continue;
    const other = first.get(device.run) ?? device;
    first.set(device.run, other);
    if (other.purpose !== device.purpose || other.voltage !== device.voltage) mixed.add(device.run);
  }
  return mixed;
}

function notesOn(rails: readonly Rail[], carried: Carried): SharingNote[] {
  return rails.flatMap((rail): SharingNote[] => {
    const { tag } = rail;
    if (rail.capacity === null) return [{ code: 'rating-unknown', tag }];
    if (carried.isMixed(rail)) return [{ code: 'purposes-mixed', tag }];
    return carried.isUnknown(rail) ? [{ code: 'demand-unknown', tag }] : [];
  });
}

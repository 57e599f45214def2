import { numberOf } from '../../engine/index.ts';
import { PURPOSES } from '../../schedule/index.ts';
import { groupsByPanel, panelsBind, type BoundRow } from './by-panel.ts';
import { Carried } from './carried.ts';
import { keptPlacement, leftOut, shareRow, takenTags } from './device-reader.ts';
import { onFedRuns } from './fed-runs.ts';
import { furtherRails, readRails, type Rail } from './rails.ts';
import type {
  Figures, LeftOut, LeftOutCode, Served, ShareBin, ShareGroup, ShareRequest, SharingNote, SharingProblem,
} from './sharing-problem.ts';
import { supplyDevices, type SupplyDevice } from './supply-devices.ts';

/**
 * What there is to share out over the supplies: the demand of the devices, up to what may be used of a supply times
 * its target, and no more than its fuse.
 *
 * Each purpose has supplies of its own, and so has each voltage; a type without a purpose counts as `other`. A
 * supply without a purpose goes to the purpose that needs it. Devices of one run stay together, as one rail feeds
 * it. To a supply that keeps devices whose demand is not known nothing is added. Where supplies say their enclosure,
 * devices stay in the panel that they belong to.
 *
 * Limits: what may be used of a supply is taken as it is now; where it depends on the warmth of the enclosure, it
 * may change. With cases each device row counts with the most that it draws in any of them, so that a supply may have
 * room for more.
 */
export function readSupplies(
  schedule: Figures, { wholeRows = false, keepPlaced = false, acrossPanels = false, extension = 0 }: ShareRequest,
): SharingProblem {
  const rails = readRails(schedule, extension);
  const binds = panelsBind(rails, acrossPanels);
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

  const groups = new Groups();
  const leftOuts: LeftOut[] = [...left];
  const mixedRuns = runsOfSeveral(free, ({ purpose, voltage }) => `${purpose} ${voltage}`);
  const bound = (device: SupplyDevice) => binds ? device.panel : null;
  const runsBetween = runsOfSeveral(free, bound);
  const panelOfRun = new Map(free.filter((device) => bound(device) !== null).map(({ run, panel }) => [run, panel]));
  for (const device of PURPOSES.flatMap((purpose) => free.filter((each) => each.purpose === purpose))) {
    const { amps, run, purpose, voltage } = device;
    const code = mixedRuns.has(run) ? 'mixed-run' : runsBetween.has(run) ? 'run-between-panels'
      : obstacle(device, rails);
    if (code !== undefined) {
      leftOuts.push(leftOut(device, code));
      continue;
    }
    const panel = bound(device) ?? (run < 0 ? null : panelOfRun.get(run) ?? null);
    const row = shareRow(device, amps!.demand, wholeRows, run < 0 ? null : run);
    groups.of(purpose, voltage).rows.push({ row, panel });
  }
  const spare: { readonly voltage: number; readonly bin: ShareBin }[] = [];
  for (const rail of rails) {
    const bin = carried.bin(rail);
    const purpose = carried.purposeOf(rail);
    if (purpose === null) spare.push({ voltage: rail.voltage, bin });
    else if (bin.inUse || groups.has(purpose, rail.voltage)) groups.of(purpose, rail.voltage).bins.push(bin);
  }
  return {
    over: 'supplies', ...withPools(groups.byPanel(rails), spare), pinned, leftOut: leftOuts,
    kept: staying.map((device) => keptPlacement(device, byId.get(device.on)!.tag)),
    takenTags: takenTags(schedule, 'supplies', 'rail'),
    notes: [...schedule.cases.cases.length === 0 ? [] : [{ code: 'cases-added', tag: '' } as const], ...notesOn(rails, carried)],
  };
}

/** Gives groups the supplies without a purpose: those of their panel, where no group of the voltage may go to any. */
function withPools(
  groups: readonly Omit<ShareGroup, 'pool'>[], spare: readonly { readonly voltage: number; readonly bin: ShareBin }[],
): Pick<SharingProblem, 'groups' | 'pools'> {
  const anywhere = new Set(groups.filter(({ panel }) => panel === null).map(({ serves }) => serves!.voltage));
  const poolOf = (voltage: number, panel: string | null) =>
    anywhere.has(voltage) || panel === null ? `${voltage} V` : `${voltage} V, ${panel}`;
  const pools: Record<string, ShareBin[]> = {};
  for (const { voltage, bin } of spare) (pools[poolOf(voltage, bin.panel)] ??= []).push(bin);
  return { pools, groups: groups.map((group) => ({ ...group, pool: poolOf(group.serves!.voltage, group.panel) })) };
}

/** Groups by purpose and voltage. */
class Groups {
  readonly #groups =
    new Map<string, { readonly serves: Served; readonly rows: BoundRow[]; readonly bins: ShareBin[] }>();

  has(purpose: string, voltage: number): boolean {
    return this.#groups.has(`${purpose} ${voltage}`);
  }

  of(purpose: string, voltage: number) {
    const key = `${purpose} ${voltage}`;
    const group = this.#groups.get(key) ?? { serves: { purpose, voltage }, rows: [], bins: [] };
    this.#groups.set(key, group);
    return group;
  }

  byPanel(rails: readonly Rail[]): Omit<ShareGroup, 'pool'>[] {
    return [...this.#groups.values()].flatMap(({ serves, rows, bins }) => groupsByPanel(serves, rows, bins,
      (panel) => furtherRails(rails, serves.purpose, serves.voltage, panel)));
  }
}

/** What keeps a device from being shared out, if anything does. */
function obstacle(
  { qty, amps, purpose, voltage }: SupplyDevice, rails: readonly Rail[],
): Exclude<LeftOutCode, 'too-large' | 'no-room'> | undefined {
  if (qty === null) return 'quantity-unknown';
  if (amps === null) return 'size-unknown';
  if (amps.connected === 0) return 'takes-none';
  return furtherRails(rails, purpose, voltage, null) === undefined ? 'nothing-to-share-over' : undefined;
}

/** Runs whose devices need several of what must be one for a run; those that need none in particular fit any. */
export function runsOfSeveral(
  devices: readonly SupplyDevice[], need: (device: SupplyDevice) => string | null,
): Set<number> {
  const first = new Map<number, string>();
  const mixed = new Set<number>();
  for (const device of devices) {
    const own = need(device);
    if (device.run < 0 || own === null) continue;
    const other = first.get(device.run) ?? own;
    first.set(device.run, other);
    if (other !== own) mixed.add(device.run);
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

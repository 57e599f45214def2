import { exceeds } from '../../electrical/index.ts';
import type { Rail } from './rails.ts';
import type { ShareBin } from './sharing-problem.ts';
import type { SupplyDevice } from './supply-devices.ts';

/** What the supplies carry of devices that stay. */
export class Carried {
  readonly #amps = new Map<number, number>();
  readonly #purposes = new Map<number, Set<string>>();

  /** @param staying devices that keep their rail */
  constructor(staying: readonly SupplyDevice[]) {
    for (const device of staying) this.add(device.on, device);
  }

  add(rail: number, { amps, purpose }: SupplyDevice): void {
    this.addAmps(rail, amps?.demand ?? null);
    this.#purposes.set(rail, (this.#purposes.get(rail) ?? new Set()).add(purpose));
  }

  /** Counts a demand that stays on a supply [A]; `null` where it is not known. */
  addAmps(rail: number, amps: number | null): void {
    this.#amps.set(rail, (this.#amps.get(rail) ?? 0) + (amps ?? Infinity));
  }

  /** Whether a device may be put on a supply besides: it is for its purpose and voltage, and has room. */
  mayTake(rail: Rail, device: SupplyDevice): boolean {
    const { id, capacity, voltage } = rail;
    if (this.isMixed(rail) || this.isUnknown(rail) || capacity === null || device.amps === null) return false;
    return voltage === device.voltage && (this.purposeOf(rail) ?? device.purpose) === device.purpose
      && !exceeds((this.#amps.get(id) ?? 0) + device.amps.demand, capacity);
  }

  /** Whether the demand that stays on a supply is not known. */
  isUnknown({ id }: Rail): boolean {
    return this.#amps.get(id) === Infinity;
  }

  /** Whether a supply without a purpose carries devices of several. */
  isMixed({ id, purpose }: Rail): boolean {
    return purpose === null && (this.#purposes.get(id)?.size ?? 0) > 1;
  }

  /** The purpose that a supply serves: its own, else that of the devices on it; `null` where it is still free. */
  purposeOf({ id, purpose }: Rail): string | null {
    const [first = null] = this.#purposes.get(id) ?? [];
    return purpose ?? first;
  }

  /** A supply as one that devices can be put on. On one that carries several purposes there is no room for any. */
  bin(rail: Rail): ShareBin {
    return {
      id: rail.id, tag: rail.tag, panel: rail.panel, capacity: rail.capacity, limitedBy: rail.limitedBy,
      kept: this.isMixed(rail) ? Infinity : this.#amps.get(rail.id) ?? 0,
      inUse: this.#amps.has(rail.id),
    };
  }
}

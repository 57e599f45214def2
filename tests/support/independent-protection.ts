/**
 * What protects a run without a way, what a device bears and what all at once take, a second time: nothing of the
 * product is imported. Cells are numbers or empty; a fuse has a kind or none.
 */

export interface Feeding {
  readonly voltage: number;
  readonly tolerance: number;
  readonly rated: number | null;
  readonly units: number;
  readonly redundant: boolean;
  readonly maxOutput: number;
  readonly fuse: number | null;
  readonly fuseKind: string | null;
}

export interface Fed {
  readonly voltage: number | null;
  readonly minVoltage: number | null;
  readonly maxVoltage: number | null;
  readonly qty: number;
  /** [mA] */
  readonly unitDraw: number;
  readonly diversity: number;
}

const above = (one: number, other: number) => one > other * (1 + 1e-9);

/** How many times its rating flows an hour before it opens: IEC 60898-1, 60269-1, 60127-2; electronic as a breaker. */
function overload(kind: string, rated: number): number {
  if (kind === 'fast' || kind === 'slow') return 2.1;
  if (kind !== 'gG') return 1.45;
  return rated <= 4 ? 2.1 : rated < 16 ? 1.9 : 1.6;
}

/** Whether all at once is too much where the share that is expected is not. */
function onDiversity({ qty, unitDraw, diversity }: Fed, limit: number): boolean {
  const all = qty * unitDraw / 1000;
  return above(all, limit) && !above(all * diversity, limit);
}

/** Rules by which a run without a way, its supply and the device on it are found wrong, by alphabet. */
export function foundWrong(supply: Feeding, carries: number, device: Fed): string[] {
  const { rated, units, fuse, fuseKind, voltage, tolerance } = supply;
  const found: string[] = [];
  const draw = device.unitDraw / 1000;
  let isLiving = false;
  if (device.qty > 0 && above(draw, carries)) found.push('device-over-run');
  if (rated !== null) {
    const usable = rated * (supply.redundant ? units - 1 : units);
    if (usable === 0) found.push('supply-gives-nothing');
    else if (device.qty > 0 && above(draw, usable)) found.push('device-over-supply');
    isLiving = onDiversity(device, usable);
    if (isLiving) found.push('supply-lives-on-diversity-usable');
    if (above(rated * units * supply.maxOutput, carries)) {
      // IEC 60364-4-43, 433.1: In ≤ Iz and I2 = k2 × In ≤ 1.45 × Iz; without a fuse the supply overloads the cable.
      const isLarge = fuse === null || above(fuse, carries);
      if (isLarge || (fuseKind !== null && above(overload(fuseKind, fuse) * fuse, 1.45 * carries))) {
        found.push('run-unprotected');
      }
    }
    const isUnclear = fuse !== null && fuseKind === null && above(rated * units * supply.maxOutput, carries)
      && !above(fuse, carries);
    if (isUnclear) found.push('supply-fuse-kind-missing');
  }
  // Beyond both it is told once.
  if (fuse !== null && !isLiving && onDiversity(device, fuse)) found.push('supply-lives-on-diversity-fuse');
  const [lowest, highest] = [voltage * (1 - tolerance), voltage * (1 + tolerance)];
  const isBounded = device.minVoltage !== null && device.maxVoltage !== null;
  // One thing is told of one device. A type that says nothing is made for 24 V; where there is none, nothing is wrong.
  if (device.qty === 0) return found.sort();
  if (device.maxVoltage !== null && above(highest, device.maxVoltage)) found.push('device-over-voltage');
  else if (device.minVoltage !== null && above(device.minVoltage, lowest)) found.push('device-under-voltage');
  else if (!isBounded && above(Math.abs((device.voltage ?? 24) - voltage), 0.1 * voltage)) found.push('device-other-voltage');
  return found.sort();
}

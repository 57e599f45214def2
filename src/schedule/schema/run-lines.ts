import type { Tap } from '../../electrical/index.ts';
import type { CellValue, Path } from './column.ts';

/** What is read of each device row on a run. */
export const DEVICE = [
  'qty', 'unitDraw', 'diversity', 'distance', 'rail.voltage', 'type.load', 'type.power', 'type.draw', 'type.minVoltage',
  'type.inrush',
] as const satisfies Path[];

/** Values by path; a number that is unknown, and every text, is `null` to `number`. */
export class Line<Key extends string> {
  readonly #keys: readonly Key[];
  readonly #cells: readonly CellValue[];

  constructor(keys: readonly Key[], cells: readonly CellValue[]) {
    this.#keys = keys;
    this.#cells = cells;
  }

  value(key: Key): CellValue {
    return this.#cells[this.#keys.indexOf(key)] ?? null;
  }

  number(key: Key): number | null {
    const value = this.value(key);
    return typeof value === 'number' ? value : null;
  }
}

export type DeviceLine = Line<(typeof DEVICE)[number]>;

/** Without these nothing can be said of the cable of a run. */
export interface Essentials {
  readonly supplyVolts: number;
  readonly pairs: number;
  readonly lengthMetres: number;
  readonly temperature: number;
  /** Length of the cable up to where its second way feeds it, if it has one. */
  readonly fedAgainMetres?: number;
}

/** What is known of the cable; `null` where something is missing that nothing can be said without. */
export function essentials(
  run: Pick<Line<'rail.voltage' | 'pairs' | 'length' | 'temperature' | 'secondWay' | 'wholeLength'>, 'number' | 'value'>,
): Essentials | null {
  const [supplyVolts, pairs] = [run.number('rail.voltage'), run.number('pairs')];
  const [lengthMetres, temperature] = [run.number('length'), run.number('temperature')];
  if (supplyVolts === null || pairs === null || lengthMetres === null || temperature === null) return null;
  const known = { supplyVolts, pairs, lengthMetres, temperature };
  if (run.value('secondWay') === null) return known;
  const fedAgainMetres = run.number('wholeLength');
  return fedAgainMetres === null ? null : { ...known, fedAgainMetres };
}

/** A device row at its place, and what it draws at its nominal voltage [A]. */
export interface DeviceTap extends Tap {
  readonly nominalAmps: number;
}

/** A device row at its place by the share of it that is on; `null` where its current is not known. */
export type TapByShare = (share: number | null) => DeviceTap | null;

/**
 * Current or power of a device row and the voltage that it needs, at its distance or else at the far end, by the share
 * of it that is on.
 */
export function tapByShare(
  device: DeviceLine, { supplyVolts, lengthMetres, fedAgainMetres = Infinity }: Essentials,
): TapByShare {
  const [qty, draw, need] = [device.number('qty'), device.number('unitDraw'), needOf(device)];
  if (qty === null || draw === null) return () => null;
  // One beyond the end is told; it is nowhere behind the second feed.
  const distanceMetres = Math.min(device.number('distance') ?? lengthMetres, fedAgainMetres);
  const power = device.value('type.load') === 'power' ? unitPower(device, draw, supplyVolts) : undefined;
  return (share) => {
    if (share === null) return null;
    // Made for each device in each case, so without spreading one object into another.
    const nominalAmps = qty * share * draw / 1000;
    const amps = power === undefined ? nominalAmps : 0;
    const watts = power === undefined ? 0 : qty * share * power;
    return need === null ? { distanceMetres, nominalAmps, amps, watts }
      : { distanceMetres, nominalAmps, amps, watts, leastVolts: need };
  };
}

/** Voltage that a device row needs [V]; `null` where its type does not say, or it counts no device. */
export function needOf(device: DeviceLine): number | null {
  return device.number('qty') === 0 ? null : device.number('type.minVoltage');
}

/**
 * The power of the type, unless the row has a draw of its own: then that draw at the nominal voltage. Both are those of
 * the row's own rail, which by mistake may not be that of the run.
 */
function unitPower(device: DeviceLine, draw: number, supplyVolts: number): number {
  const nominalVolts = device.number('rail.voltage') ?? supplyVolts;
  const atNominal = draw / 1000 * nominalVolts;
  const power = device.number('type.power');
  if (power === null) return atNominal;
  const typical = device.number('type.draw') ?? power / nominalVolts * 1000;
  const isOwn = Math.abs(draw - typical) > 1e-9 * Math.max(1, typical);
  return isOwn ? atNominal : power;
}

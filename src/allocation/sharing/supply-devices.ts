import { numberOf, textOf } from '../../engine/index.ts';
import { connectedCurrent, demandCurrent, drawFromPower } from '../../electrical/index.ts';
import { deviceRows, type DeviceRow } from './device-reader.ts';
import { voltageFor, type Rail } from './rails.ts';
import type { Figures } from './sharing-problem.ts';

/** A device row with what decides which supply it may be put on. */
export interface SupplyDevice extends DeviceRow {
  readonly purpose: string;
  /** Voltage that it needs [V]. */
  readonly voltage: number;
  /** Id of its run; -1 for none. */
  readonly run: number;
  /** Its current at that voltage [A]; `null` where it is not known. */
  readonly amps: { readonly connected: number; readonly demand: number } | null;
}

/**
 * Reads the device rows. A device has the voltage of its present rail, else that of the supplies for its purpose.
 * Where its type has no purpose, or the purpose `other`, which need not be kept apart, it has that of the other
 * devices on its run.
 */
export function supplyDevices(schedule: Figures, rails: readonly Rail[]): SupplyDevice[] {
  const byId = new Map(rails.map((rail) => [rail.id, rail]));
  const devices = deviceRows(schedule, 'rail').map((device) => {
    const type = schedule.target('devices', device.id, 'type');
    const purpose = (type < 0 ? null : textOf(schedule, 'types', type, 'purpose')) ?? 'other';
    return { ...device, type, purpose, run: schedule.target('devices', device.id, 'run') };
  });
  const purposeOfRun =
    new Map(devices.filter(({ purpose }) => purpose !== 'other').map(({ run, purpose }) => [run, purpose]));
  return devices.map((device) => {
    const { type, run } = device;
    const purpose = device.purpose === 'other' && run >= 0 ? purposeOfRun.get(run) ?? 'other' : device.purpose;
    const voltage = byId.get(device.on)?.voltage ?? voltageFor(rails, purpose);
    return { ...device, purpose, voltage, amps: currentOf(schedule, device, type, voltage) };
  });
}

function currentOf(schedule: Figures, { id, qty }: DeviceRow, type: number, voltage: number): SupplyDevice['amps'] {
  // Without a rail, the draw of a type that gives its power is not known to the schedule yet.
  const power = type < 0 ? null : numberOf(schedule, 'types', type, 'power');
  const draw = numberOf(schedule, 'devices', id, 'unitDraw') ?? (power === null ? null : drawFromPower(power, voltage));
  const own = numberOf(schedule, 'devices', id, 'diversity');
  if (qty === null || draw === null || own === null || draw < 0 || own < 0) return null;
  // The most of all cases: whatever rows come together on a supply, it holds in each of them.
  const diversity = schedule.cases.mostShare(schedule.cases.groupOf('devices')[id]!, own, true);
  const connected = connectedCurrent(qty, draw);
  return { connected, demand: demandCurrent(connected, diversity) };
}

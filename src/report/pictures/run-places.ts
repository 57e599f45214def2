import { exceeds } from '../../electrical/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { nameOf, numberAt } from './words.ts';

/** One device row of a run. */
export interface RunDevice {
  readonly name: string;
  /** Lowest voltage at which it works [V]; `null` when its type gives none, or the row counts no device. */
  readonly leastVolts: number | null;
  readonly isConstantPower: boolean;
}

/** A place on a run with the device rows there. */
export interface RunPlace {
  readonly metres: number;
  /** Voltage there [V]; `null` when it is unknown. */
  readonly volts: number | null;
  readonly devices: readonly RunDevice[];
  /** Highest of the least voltages of its devices [V]. */
  readonly leastVolts: number | null;
  /** The voltage is less than a device there needs. */
  readonly isLacking: boolean;
}

/**
 * The places of a run with its device rows, nearest first; a row without a distance is at the far end.
 * @returns empty when the run carries no devices, or the length that decides where they are is unknown
 */
export function runPlaces(schedule: LoadSchedule, runId: number): RunPlace[] {
  const length = numberAt(schedule, 'runs', runId, 'length');
  const byMetres = new Map<number, { volts: number | null; devices: RunDevice[] }>();
  for (const id of schedule.members('devices', 'run', runId)) {
    const metres = numberAt(schedule, 'devices', id, 'distance') ?? length;
    if (metres === null) continue;
    const volts = numberAt(schedule, 'devices', id, 'terminalVoltage');
    const place = byMetres.get(metres) ?? { volts, devices: [] };
    // A row whose current is unknown has no voltage of its own; another at the same place may.
    byMetres.set(metres, { volts: place.volts ?? volts, devices: [...place.devices, deviceOf(schedule, id)] });
  }
  return [...byMetres].sort(([one], [other]) => one - other).map(([metres, { volts, devices }]) => {
    const needs = devices.map(({ leastVolts }) => leastVolts).filter((each) => each !== null);
    const leastVolts = needs.length === 0 ? null : Math.max(...needs);
    const isLacking = volts !== null && leastVolts !== null && exceeds(leastVolts, volts);
    return { metres, volts, devices, leastVolts, isLacking };
  });
}

function deviceOf(schedule: LoadSchedule, id: number): RunDevice {
  const type = schedule.target('devices', id, 'type');
  const counts = numberAt(schedule, 'devices', id, 'qty') !== 0;
  return {
    name: nameOf(schedule, 'devices', id),
    leastVolts: type < 0 || !counts ? null : numberAt(schedule, 'types', type, 'minVoltage'),
    isConstantPower: type >= 0 && schedule.value('types', type, 'load') === 'power',
  };
}

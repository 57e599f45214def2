import { settle, type Load } from './independent-circuit.ts';
import { settleFromBoth } from './independent-second-feed.ts';
import { independentWarmth } from './independent-warmth.ts';
import { isGiven, number, over, times, type InputRow, type Known } from './known-number.ts';

/** A device row as its run needs it. */
export interface DeviceOnRun {
  readonly row: InputRow;
  readonly type: InputRow | undefined;
  readonly supply: InputRow | undefined;
  readonly unitDraw: Known;
  readonly diversity: Known;
  readonly connected: Known;
  readonly demand: Known;
  /** Whether a tag that stands twice leaves open what it draws. */
  readonly isUnsure: boolean;
}

/** A run with the rows that it names. */
export interface RunBehind {
  readonly row: InputRow;
  readonly supply: InputRow | undefined;
  readonly conductor: InputRow | undefined;
  readonly devices: readonly DeviceOnRun[];
  /** Whether the tag of its rail or conductor stands twice. */
  readonly isUnsure: boolean;
  /** Length from way to way [m]; `undefined` where it has one way, `null` where it is not known. */
  readonly between?: Known | undefined;
}

/**
 * What the devices of a run draw more than at their nominal voltage [A], diversified, as the cable takes voltage from
 * those of constant power, and how warm it gets; it shares nothing with the software.
 */
export function independentExtra(
  { row, supply, conductor, devices, isUnsure, between }: RunBehind,
): { amps: Known; celsius: Known; partial: boolean } {
  const celsius = warmthOf(row, conductor, devices);
  if (devices.every(({ type }) => type?.load !== 'power')) return { amps: 0, celsius, partial: false };
  const partial = isUnsure || devices.some((device) => device.isUnsure || device.demand === null);
  const voltage = supply === undefined ? null : number(supply, 'voltage', 24);
  const [length, pairs] = [number(row, 'length'), number(row, 'pairs', 1)];
  const ohmPerKm = number(conductor, 'resistance');
  if (voltage === null || length === null || pairs === null || pairs === 0 || ohmPerKm === null || celsius === null
    || between === null) {
    return { amps: null, celsius, partial };
  }
  const known = devices.filter(({ demand }) => demand !== null);
  const loads = known.map((device) => loadOf(device, voltage, length));
  const ohmsPerMetre = 2 * ohmPerKm / 1000 * (1 + 0.00393 * (celsius - 20)) / pairs;
  const twice = between === undefined ? undefined
    : settleFromBoth(
      loads.map((load) => ({ ...load, metres: Math.min(load.metres, between) })), voltage, ohmsPerMetre, between,
    );
  const settled = twice === undefined ? settle(loads, voltage, ohmsPerMetre)
    : twice === null ? null : { current: twice.first + twice.second };
  const nominal = known.reduce((sum, { demand }) => sum + demand!, 0);
  return { amps: settled === null ? null : Math.max(0, settled.current - nominal), celsius, partial };
}

function loadOf(
  { row, type, supply, unitDraw, diversity, demand }: DeviceOnRun, voltage: number, length: number,
): Load {
  const metres = number(row, 'distance') ?? length;
  if (type?.load !== 'power') return { metres, amps: demand!, watts: 0 };
  const nominal = supply === undefined ? voltage : number(supply, 'voltage', 24) ?? voltage;
  const power = number(type, 'power');
  const typical = number(type, 'draw') ?? times(over(power, nominal), 1000);
  // A draw of the row itself is the one at the nominal voltage; one that is the type's says nothing new.
  const isOwn = power === null || typical === null || Math.abs(unitDraw! - typical) > 1e-9 * Math.max(1, typical);
  const each = isOwn ? unitDraw! / 1000 * nominal : power;
  return { metres, amps: 0, watts: number(row, 'qty')! * diversity! * each };
}

function warmthOf(row: InputRow, conductor: InputRow | undefined, devices: readonly DeviceOnRun[]): Known {
  if (isGiven(row.temperature)) return number(row, 'temperature');
  if (conductor === undefined) return 70;
  const key = row.basis === 'demand' ? 'demand' : 'connected';
  const nominal = devices.reduce((sum, device) => sum + (device[key] ?? 0), 0);
  const [highest, base] = [number(conductor, 'maxTemperature', 70), number(conductor, 'baseTemperature', 30)];
  const [pairs, ambient] = [number(row, 'pairs', 1), number(row, 'ambient', 30)];
  const [alone, grouped] = [number(conductor, 'maxCurrent'), number(row, 'grouped', pairs)];
  if (highest === null || base === null || isFaulty(conductor, 'maxCurrent', alone)) return null;
  if (alone === null) return highest;
  if (pairs === null || ambient === null || grouped === null) return null;
  return independentWarmth(nominal, { alone, pairs, grouped, ambient, highest, base });
}

const isFaulty = (row: InputRow, key: string, value: Known): boolean => value === null && isGiven(row[key]);

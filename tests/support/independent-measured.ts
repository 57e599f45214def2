import { exceeds, number, times, type InputRow, type Known } from './known-number.ts';

/** What measurements of a supply or a run amount to. */
export interface Measured {
  readonly over: boolean;
  readonly near: boolean;
}

const NOTHING: Measured = { over: false, near: false };
const OVER: Measured = { over: true, near: false };

/** What a measurement is held against. */
export interface Against {
  readonly nominal: Known;
  /** Current at which what feeds it limits. */
  readonly limit: Known;
  readonly worked: Known;
}

/** Common practice, no source: none at all up to a tenth, held down below a half, at the limit from nine tenths on. */
export function stateOf(row: InputRow, { nominal, limit, worked }: Against, isSupply: boolean): string | undefined {
  const [volts, amps] = [number(row, 'measuredVoltage'), number(row, 'measuredCurrent')];
  if (volts === null || nominal === null) return undefined;
  const share = volts / nominal;
  if (share < -0.1) return 'reversed';
  if (share >= 0.9) return amps !== null && worked !== null && worked > 0 && amps <= 0.02 * worked ? 'open' : undefined;
  if (share >= 0.5) return undefined;
  if (amps !== null && limit !== null && amps >= 0.9 * limit) return 'short circuit';
  if (share <= 0.1) return 'dead';
  return isSupply ? 'short circuit' : undefined;
}

/**
 * What was measured at a supply; `demand` is not compared where it is partial.
 * @param bears the most that each device on it bears [V]
 */
export function measuredSupply(
  row: InputRow, usable: Known, demand: number, isPartial: boolean, bears: number,
): Measured {
  const nominal = number(row, 'voltage', 24);
  const [volts, amps] = [number(row, 'measuredVoltage'), number(row, 'measuredCurrent')];
  const state = stateOf(row, { nominal, limit: number(row, 'rated'), worked: demand }, true);
  if (state !== undefined && state !== 'open') return OVER;
  const may = times(number(row, 'voltageTolerance', 0.02), nominal);
  const apart = (amount: Known) => (volts === null || nominal === null || may === null ? null : amount);
  // As it was entered: with its tolerance, less its diode; a battery is charged with 13.8 V in place of 12 V.
  const off = times(number(row, 'tolerance', 0), nominal);
  const charging = number(row, 'battery') === null && !number(row, 'standbyHours') ? 0 : 1.8 / 12 * (nominal ?? 0);
  const below = off === null ? null : apart(nominal! - off - (number(row, 'seriesDrop') ?? 0) - volts!);
  if (exceeds(amps, usable) || exceeds(below, may) || exceeds(volts, bears)) return OVER;
  const differs = amps !== null && !isPartial
    && exceeds(Math.abs(amps - demand), times(number(row, 'currentTolerance', 0.1), demand));
  return state === 'open' || differs || exceeds(off === null ? null : apart(volts! - nominal! - Math.max(off, charging)), may) ? { over: false, near: true } : NOTHING;
}

/** What a run is held against besides. */
export interface RunAgainst extends Against {
  /** Most that its protection and its cable bear. */
  readonly most: Known;
  readonly needed: Known;
  /** Voltage at the start and the end at its lowest, and what each device then has above what it needs [V]. */
  readonly lowest: { readonly start: number; readonly end: Known; readonly margins: readonly number[] };
  /** Drop that is worked out, with the current that is [V]. */
  readonly drop: Known;
  readonly rail: InputRow;
  /** The most that each device on it bears, and the most that its rail may give [V]. */
  readonly bears: number;
  readonly highest: number;
}

/** What was measured of a run. Its drop may be a fifth more, besides what the readings at both ends are good for. */
export function measuredRun(row: InputRow, against: RunAgainst): Measured {
  const [volts, amps] = [number(row, 'measuredVoltage'), number(row, 'measuredCurrent')];
  const { nominal, worked, most, needed, drop, rail } = against;
  const state = stateOf(row, against, false);
  if (state !== undefined && state !== 'open') return OVER;
  // Less at the end than some device needs may be enough where that device is.
  const lacks = (at: number, from: number, { start, end }: RunAgainst['lowest']) =>
    end === null ? Infinity : Math.max(0, start - from) + Math.max(0, from - at - start + end);
  const isShort = volts !== null && exceeds(needed, volts) && !against.lowest.margins.every((margin) => !exceeds(
    lacks(volts, number(rail, 'measuredVoltage') ?? against.lowest.start, against.lowest), margin));
  if (exceeds(amps, most) || isShort || exceeds(volts, against.bears)) return OVER;
  const differs = amps !== null && worked !== null && state !== 'open'
    && exceeds(Math.abs(amps - worked), number(row, 'currentTolerance', 0.1)! * worked);
  const start = number(rail, 'measuredVoltage');
  // A volt meter at the end sees less for the diode too, where none was at the start.
  const begin = start ?? nominal! - (number(rail, 'seriesDrop') ?? 0);
  const expected = drop === null || amps === null || worked === 0 ? drop : drop * amps / worked!;
  const error = start === null ? number(row, 'voltageTolerance', 0.02)! * nominal! : 0.1;
  const isMore = volts !== null && expected !== null
    && exceeds(begin - volts - expected, expected / 5 + error);
  // No cable adds voltage.
  const isAbove = volts !== null
    && exceeds(volts - (start ?? against.highest), number(row, 'voltageTolerance', 0.02)! * nominal!);
  return state === 'open' || differs || isMore || isAbove ? { over: false, near: true } : NOTHING;
}

import { fixed, type SafeSide } from './rounding.ts';

/** A figure in a sentence, which each language writes with its own decimal sign. */
export interface Quantity {
  readonly value: number;
  readonly decimals: number;
  /** Unit behind it: `A`, `V`, `°C`, `K`, `%`; empty for none. */
  readonly unit: string;
}

const MOST_DECIMALS = 9;

/** Least decimals with which a number can be told from another one. */
function decimalsToTell(value: number, other: number | undefined, least: number): number {
  if (other === undefined || other === value) return least;
  let digits = least;
  while (value.toFixed(digits) === other.toFixed(digits) && digits < MOST_DECIMALS) digits += 1;
  return digits;
}

function quantity(value: number, other: number | undefined, least: number, unit: string): Quantity {
  return { value, decimals: decimalsToTell(value, other, least), unit };
}

/** A current in a sentence: «7.90 A»; with more decimals where rounding would hide that it differs from `other`. */
export function amps(value: number, other?: number): Quantity {
  return quantity(value, other, 2, 'A');
}

/** A small current in a sentence, given in amperes: «250 mA»; with decimals where rounding would hide a difference. */
export function milliamps(value: number, other?: number): Quantity {
  return quantity(value * 1000, other === undefined ? undefined : other * 1000, 0, 'mA');
}

/** A voltage in a sentence: «21.60 V»; with more decimals where rounding would hide that it differs from `other`. */
export function volts(value: number, other?: number): Quantity {
  return quantity(value, other, 2, 'V');
}

/**
 * A temperature in a sentence: «42.5 °C»; with more decimals where rounding would hide that it differs from `other`.
 */
export function degrees(value: number, other?: number): Quantity {
  return quantity(value, other, 1, '°C');
}

/** A difference of temperatures in a sentence: «2.5 K»; with more decimals where rounding would make it nothing. */
export function kelvins(value: number): Quantity {
  return quantity(value, 0, 1, 'K');
}

/** A width in a sentence: «360 mm»; with decimals where rounding would hide that it differs from `other`. */
export function millimetres(value: number, other?: number): Quantity {
  return quantity(value, other, 0, 'mm');
}

/** A cross-section in a sentence: «2.5 mm²»; with more decimals where rounding would hide a difference. */
export function squareMillimetres(value: number, other?: number): Quantity {
  return quantity(value, other, Number.isInteger(value) ? 0 : 1, 'mm²');
}

/** A length in a sentence: «42.5 m»; with more decimals where rounding would hide that it differs from `other`. */
export function metres(value: number, other?: number): Quantity {
  return quantity(value, other, 1, 'm');
}

/** A capacity in a sentence: «7.2 Ah»; with more decimals where rounding would hide that it differs from `other`. */
export function ampereHours(value: number, other?: number): Quantity {
  return quantity(value, other, 1, 'Ah');
}

/** A share in a sentence: «79 %»; with decimals where rounding would hide that it differs from `other`. */
export function percent(value: number, other?: number): Quantity {
  return quantity(value * 100, other === undefined ? undefined : other * 100, 0, '%');
}

/** A limit that must not be passed upwards, or what is left before one, in a sentence: rounded down. */
export function roundedDown(limit: Quantity): Quantity {
  return rounded(limit, 'down');
}

/** What is needed at least, or what is too much, in a sentence: rounded up. */
export function roundedUp(limit: Quantity): Quantity {
  return rounded(limit, 'up');
}

function rounded({ value, decimals, unit }: Quantity, side: SafeSide): Quantity {
  return { value: Number(fixed(value, decimals, side)), decimals, unit };
}

import { exceeds, isGiven, minus, number, times, type InputRow, type Known } from './known-number.ts';
import { independentLowest } from './independent-warmth.ts';

/** Whether a battery stands behind a supply. */
const hasBattery = (supply: InputRow) => number(supply, 'battery') !== null || (number(supply, 'standbyHours') ?? 0) > 0;

/** Lowest voltage of a supply [V]. */
export const lowestOf = (supply: InputRow): Known => independentLowest(
  number(supply, 'voltage', 24), number(supply, 'tolerance', 0), number(supply, 'seriesDrop'), supply.redundant === true,
  hasBattery(supply));

/** Highest voltage of a supply [V]; a battery of twelve cells is charged with 2.3 V each, 27.6 V (from memory). */
export function highestOf(supply: InputRow): Known {
  const [volts, more] = [number(supply, 'voltage', 24), number(supply, 'tolerance', 0)];
  const regulated = times(volts, more === null ? null : 1 + more);
  const charged = hasBattery(supply) ? times(volts, 27.6 / 24) : null;
  return charged !== null && exceeds(charged, regulated) ? charged : regulated;
}

/**
 * Whether a supply gives a voltage that a type does not bear, or is not made for; nothing of the product is imported.
 */
export function isMisfit(type: InputRow, supply: InputRow): boolean {
  const [least, most] = [number(type, 'minVoltage'), number(type, 'maxVoltage')];
  if (exceeds(highestOf(supply), most) || exceeds(least, lowestOf(supply))) return true;
  const [made, given] = [number(type, 'voltage', 24), number(supply, 'voltage', 24)];
  if (least !== null && most !== null) return false;
  const apart = minus(made, given);
  return apart !== null && exceeds(apart < 0 ? -apart : apart, times(given, 0.1));
}

/** A device row with what it names. */
export interface VoltageRow {
  readonly row: InputRow;
  readonly type: InputRow | undefined;
}

/** Whether one of the device rows on a supply does not bear its voltage. */
export const hasMisfit = (rows: readonly VoltageRow[], supply: InputRow): boolean => rows.some(({ row, type }) =>
  type !== undefined && number(row, 'qty') !== 0 && isMisfit(type, supply));

/** Whether a voltage of the type of a row is entered and is none; what it is made for counts without limits only. */
export const isVoltageUnread = (rows: readonly VoltageRow[]): boolean => rows.some(({ row, type }) => {
  const lacks = (key: string) => number(type, key) === null;
  const isUnread = (key: string) => isGiven(type?.[key]) && lacks(key);
  return number(row, 'qty') !== 0 && (isUnread('minVoltage') || isUnread('maxVoltage')
    || (isUnread('voltage') && (lacks('minVoltage') || lacks('maxVoltage'))));
});

import { exceeds, number, times, type InputRow, type Known } from './known-number.ts';

/** A device row that starts with the others on its rail. */
export interface StartingRow {
  readonly row: InputRow;
  /** Current of one when it runs [mA]. */
  readonly unitDraw: Known;
  readonly type: InputRow | undefined;
}

/**
 * Whether everything at once is more than a supply that retries on overload gives, and whether some is unknown.
 * @param switched what relay outputs switch on it [A]; they start with what they draw
 */
export function startUp(
  supply: InputRow, usable: Known, rows: readonly StartingRow[], switched: number,
): { over: boolean; isPartial: boolean } {
  if (supply.overload !== 'retries') return { over: false, isPartial: false };
  let [sum, isPartial] = [switched, false];
  for (const { row, unitDraw, type } of rows) {
    const [qty, inrush] = [number(row, 'qty'), number(type, 'inrush')];
    if (qty === null || unitDraw === null || inrush === null) isPartial = true;
    else sum += qty * (inrush > unitDraw / 1000 ? inrush : unitDraw / 1000);
  }
  return { over: exceeds(sum, times(usable, number(supply, 'peak', 1))), isPartial };
}

/** Capacity of a battery by BS 5839-1, Annex E [Ah]. */
export function batteryNeeded(supply: InputRow, demand: number): Known {
  const battery = number(supply, 'battery');
  const rate = battery !== null && demand * 20 <= battery ? 1 : 1.75;
  return times(times(1.25 * rate, demand), number(supply, 'standbyHours'));
}

/** Hours for which a battery bears a current at the end of its life, by the same source solved for the time. */
export function batteryLasts(supply: InputRow, demand: number): Known {
  const battery = number(supply, 'battery');
  if (battery === null || demand === 0) return null;
  return battery / demand / (demand * 20 <= battery ? 1.25 : 2.1875);
}

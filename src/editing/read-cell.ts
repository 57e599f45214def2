import type { LoadSchedule } from '../load-schedule.ts';
import {
  decimalSign, isFormula, isNumeric, parseCell, type CellContext, type InputColumn, type ParsedCell, type SheetName,
} from '../schedule/index.ts';
import type { Words } from '../words/index.ts';

/** Where a text is to stand, as far as reading it depends on it. */
export interface ReadPlace {
  readonly schedule: LoadSchedule;
  readonly sheet: SheetName;
  /** The language in which cells are shown and read. */
  readonly words: Words;
}

/**
 * Reads what a person typed or pasted into a cell, formulas included, so that the value can be set.
 * @param id id of the row; -1 for a row that is still to come.
 * @param context what is known beyond the place; the decimal sign is that of the words unless given.
 */
export function readCell(
  place: ReadPlace, id: number, column: InputColumn, text: string, context: CellContext = {},
): ParsedCell {
  const parsed = parseCell(column, text, {
    ...context,
    words: place.words,
    decimal: context.decimal ?? decimalSign(place.words.locale),
    voltage: context.voltage ?? railVoltage(place, id),
  });
  if (!parsed.ok || !isNumeric(column) || !isFormula(parsed.value)) return parsed;
  return place.schedule.checkFormula(place.sheet, column.key, parsed.value);
}

/** Voltage [V] of the rail that a device row names, by which watts become a draw. */
function railVoltage({ schedule, sheet }: ReadPlace, id: number): number | undefined {
  if (sheet !== 'devices' || id < 0) return undefined;
  const rail = schedule.target(sheet, id, 'rail');
  const voltage = rail < 0 ? null : schedule.value('supplies', rail, 'voltage');
  return typeof voltage === 'number' ? voltage : undefined;
}

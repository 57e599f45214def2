import { drawFromPower } from '../../electrical/index.ts';
import { isNumeric, type CellValue, type InputColumn } from '../schema/index.ts';
import { allowedText, checkCell } from './check-cell.ts';
import { quoted } from './quoted.ts';
import { unitsAllowed, unitShift, wattShift } from './units.ts';
import { writtenNumber, type DecimalSign, type WrittenNumber } from './written-number.ts';

/** What is known about the place that a text comes from. */
export interface CellContext {
  /** The decimal sign in use; without it `1,200` is refused as ambiguous. */
  readonly decimal?: DecimalSign | undefined;
  /** Voltage [V] at which watts are turned into a draw; 24 when it is not known. */
  readonly voltage?: number | undefined;
  /** The unit of a number that bears none, where it is not that of the column. */
  readonly unit?: string | undefined;
}

/** `hint` says how a value came about where something was assumed. */
export type ParsedCell =
  | { readonly ok: true; readonly value: CellValue; readonly hint?: string }
  | { readonly ok: false; readonly problem: string };

/** Nominal voltage [V] of an ELV rail when nothing else is known; common practice, no source. */
const USUAL_VOLTAGE = 24;
const YES = new Set(['yes', 'y', 'true', '1', 'ja', 'oui', 'x']);
const NO = new Set(['no', 'n', 'false', '0', 'nein', 'non']);

/**
 * Reads what a person typed or pasted into a cell: numbers with a decimal point or comma, with units (`8.4 W`,
 * `350 mA`, `70 %`, `12 no.`), or by a name of the trade (`B`); yes and no, words of a list. A text in a column of numbers
 * that begins with `=` is a formula and returned as it is. Tags and references lose the spaces around them, other texts
 * nothing.
 * @returns the value, `null` for an empty text; else one sentence: what was found, what is allowed, what to do.
 */
export function parseCell(column: InputColumn, text: string, context: CellContext = {}): ParsedCell {
  if (text === '') return { ok: true, value: null };
  if (column.kind === 'text' && column.tag !== true) return checked(column, wellFormed(text), text);
  const trimmed = text.trim();
  if (trimmed === '') return { ok: true, value: null };
  if (isNumeric(column)) {
    if (trimmed.startsWith('=')) return checked(column, wellFormed(trimmed), text);
    return suggested(column, trimmed) ?? parseNumber(column, trimmed, context);
  }
  switch (column.kind) {
    case 'boolean': return parseBoolean(trimmed);
    case 'choice': {
      const word = column.choices!.find((each) => each.toLowerCase() === trimmed.toLowerCase());
      return checked(column, word ?? trimmed, text);
    }
    default: return checked(column, wellFormed(trimmed), text);
  }
}

function checked(column: InputColumn, value: CellValue, found: string): ParsedCell {
  const problem = checkCell(column, value, found);
  return problem === undefined ? { ok: true, value } : refused(problem);
}

function refused(problem: string): ParsedCell {
  return { ok: false, problem };
}

/** Half of a surrogate pair cannot be saved as UTF-8: it gives way to the replacement character. */
function wellFormed(text: string): string {
  return text.replace(/\p{Surrogate}/gu, '\ufffd');
}

function parseBoolean(text: string): ParsedCell {
  const word = text.toLowerCase();
  if (YES.has(word)) return { ok: true, value: true };
  if (NO.has(word)) return { ok: true, value: false };
  return refused(`${quoted(text)} is neither yes nor no, which alone are allowed. Type yes or no, or empty the cell.`);
}

/** The number that a name of the trade stands for, as `B` for the trip multiple of such a breaker. */
function suggested({ suggestions, title }: InputColumn, text: string): ParsedCell | undefined {
  const found = suggestions?.find(({ label }) => label.toLowerCase() === text.toLowerCase());
  return found && { ok: true, value: found.value, hint: `${title} ${found.value} for ${found.label}: ${found.source}` };
}

function parseNumber(column: InputColumn, text: string, context: CellContext): ParsedCell {
  const written = writtenNumber(text, context.decimal);
  if (written === undefined) {
    return refused(`${quoted(text)} is not a number; ${allowedText(column)} is allowed. Type digits, or nothing.`);
  }
  if (written.otherwise !== undefined) {
    const readings = `${Number(written.plain)} or ${written.otherwise}`;
    return refused(`${quoted(text)} can mean ${readings}; a number with one meaning is allowed. Type ${readings}.`);
  }
  const unit = written.rest === '' ? context.unit ?? '' : written.rest;
  const shift = unit === '' ? 0 : unitShift(column, unit);
  if (shift !== undefined) return checked(column, shifted(written, shift), text);
  const watts = wattShift(unit);
  if (column.unit === 'mA' && watts !== undefined) {
    const found = written.rest === '' ? `${text} ${unit}` : text;
    return parsePower(column, found, shifted(written, watts), context);
  }
  const units = unitsAllowed(column);
  const remedy = units.length === 0 ? 'Type the number alone' : `Type the number alone or with ${listed(units)}`;
  const found = `${quoted(text)} has the unit ${quoted(unit)}, which does not fit here`;
  return refused(`${found}; ${allowedText(column)} is allowed. ${remedy}.`);
}

/** Moving the decimal point in the text instead of multiplying keeps 0.0123 A from becoming 12.299999999999999 mA. */
function shifted({ plain, exponent }: WrittenNumber, places: number): number {
  // Adding 0 turns a negative zero into zero.
  return Number(`${plain}e${exponent + places}`) + 0;
}

function parsePower(column: InputColumn, text: string, watts: number, context: CellContext): ParsedCell {
  const voltage = context.voltage ?? USUAL_VOLTAGE;
  const draw = drawFromPower(watts, voltage);
  const parsed = checked(column, draw, text);
  if (!parsed.ok || draw === null) return parsed;
  return { ...parsed, hint: `${text} at ${voltage} V is ${Number(draw.toPrecision(4))} ${column.unit}` };
}

function listed(words: readonly string[]): string {
  return words.length === 1 ? words[0]! : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

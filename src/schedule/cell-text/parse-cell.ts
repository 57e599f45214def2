import { drawFromPower } from '../../electrical/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import { isNumeric, type CellValue, type InputColumn } from '../schema/index.ts';
import { alternatives } from './alternatives.ts';
import { allowedText, checkCell } from './check-cell.ts';
import { excerpt } from './excerpt.ts';
import { unitsAllowed, unitShift, wattShift } from './units.ts';
import { withUnit } from './with-unit.ts';
import { writtenNumber, type DecimalSign, type WrittenNumber } from './written-number.ts';

/** What is known about the place that a text comes from. */
export interface CellContext {
  /** The decimal sign in use; without it `1,200` is refused as ambiguous. */
  readonly decimal?: DecimalSign | undefined;
  /** Voltage [V] at which watts are turned into a draw; 24 when it is not known. */
  readonly voltage?: number | undefined;
  /** The unit of a number that bears none, where it is not that of the column. */
  readonly unit?: string | undefined;
  /**
   * The language of sentences, and of words of a list, which are understood in English as well; English unless said
   * otherwise.
   */
  readonly words?: Words | undefined;
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
 * `350 mA`, `70 %`, `12 no.`), or by a name of the trade (`B`); yes and no, words of a list. A text in a column of
 * numbers that begins with `=` is a formula and returned as it is. Tags and references lose the spaces around them,
 * other texts nothing.
 * @returns the value, `null` for an empty text; else one sentence: what was found, what is allowed, what to do.
 */
export function parseCell(column: InputColumn, text: string, context: CellContext = {}): ParsedCell {
  const words = context.words ?? ENGLISH;
  if (text === '') return { ok: true, value: null };
  if (column.kind === 'text' && column.tag !== true) return checked(column, wellFormed(text), text, words);
  const trimmed = text.trim();
  if (trimmed === '') return { ok: true, value: null };
  if (isNumeric(column)) {
    if (trimmed.startsWith('=')) return checked(column, wellFormed(trimmed), text, words);
    return suggested(column, trimmed, words) ?? parseNumber(column, trimmed, context, words);
  }
  switch (column.kind) {
    case 'boolean': return parseBoolean(trimmed, words);
    case 'choice': return checked(column, chosen(column.choices!, trimmed, words) ?? trimmed, text, words);
    default: return checked(column, wellFormed(trimmed), text, words);
  }
}

function checked(column: InputColumn, value: CellValue, found: string, words: Words): ParsedCell {
  const problem = checkCell(column, value, found, words);
  return problem === undefined ? { ok: true, value } : refused(problem);
}

function refused(problem: string): ParsedCell {
  return { ok: false, problem };
}

/** Half of a surrogate pair cannot be saved as UTF-8: it gives way to the replacement character. */
function wellFormed(text: string): string {
  return text.replace(/\p{Surrogate}/gu, '\ufffd');
}

/** Whether two texts are the same but for their case. */
function isSame(text: string, other: string): boolean {
  return text.toLowerCase() === other.toLowerCase();
}

/** The value of a list that a word stands for, in the language of the person first. */
function chosen(choices: readonly string[], text: string, words: Words): string | undefined {
  return choices.find((each) => isSame(words.text(each), text)) ?? choices.find((each) => isSame(each, text));
}

function parseBoolean(text: string, words: Words): ParsedCell {
  const word = text.toLowerCase();
  if (YES.has(word)) return { ok: true, value: true };
  if (NO.has(word)) return { ok: true, value: false };
  return refused(words.say(
    '“{found}” is neither yes nor no, which alone are allowed. Type yes or no, or empty the cell.', {
      found: excerpt(text),
    }));
}

/** The number that a name of the trade stands for, as `B` for the trip multiple of such a breaker. */
function suggested(column: InputColumn, text: string, words: Words): ParsedCell | undefined {
  const found = column.suggestions?.find(({ label }) => isSame(words.text(label), text) || isSame(label, text));
  return found && {
    ok: true, value: found.value,
    hint: words.say('{title} {value} for {name}: {source}', {
      title: words.text(column.title), value: withUnit(column, found.value, words), name: words.text(found.label),
      source: words.text(found.source),
    }),
  };
}

function parseNumber(column: InputColumn, text: string, context: CellContext, words: Words): ParsedCell {
  const written = writtenNumber(text, context.decimal);
  if (written === undefined) {
    return refused(words.say('“{found}” is not a number; {allowed} is allowed. Type digits, or nothing.',
      { found: excerpt(text), allowed: allowedText(column, words) }));
  }
  if (written.otherwise !== undefined) {
    const readings = alternatives([words.number(Number(written.plain)), written.otherwise], words);
    return refused(words.say('“{found}” can mean {readings}; a number with one meaning is allowed. Type {readings}.',
      { found: excerpt(text), readings }));
  }
  const unit = written.rest === '' ? context.unit ?? '' : written.rest;
  const shift = unit === '' ? 0 : unitShift(column, unit);
  if (shift !== undefined) return checked(column, shifted(written, shift), text, words);
  const watts = wattShift(unit);
  if (column.unit === 'mA' && watts !== undefined) {
    const power = written.rest === '' ? `${text} ${unit}` : text;
    return parsePower(column, power, shifted(written, watts), context.voltage ?? USUAL_VOLTAGE, words);
  }
  return refused(unitProblem(column, excerpt(text), excerpt(unit), words));
}

function unitProblem(column: InputColumn, found: string, unit: string, words: Words): string {
  const values = { found, unit, allowed: allowedText(column, words) };
  const units = unitsAllowed(column);
  return units.length === 0
    ? words.say(
      '“{found}” has the unit “{unit}”, which does not fit here; {allowed} is allowed. Type the number alone.', values
    )
    : words.say(
      '“{found}” has the unit “{unit}”, which does not fit here; {allowed} is allowed. Type the number alone or with {units}.',
      { ...values, units: alternatives(units, words) });
}

/** Moving the decimal point in the text instead of multiplying keeps 0.0123 A from becoming 12.299999999999999 mA. */
function shifted({ plain, exponent }: WrittenNumber, places: number): number {
  // Adding 0 turns a negative zero into zero.
  return Number(`${plain}e${exponent + places}`) + 0;
}

function parsePower(column: InputColumn, text: string, watts: number, voltage: number, words: Words): ParsedCell {
  const draw = drawFromPower(watts, voltage);
  const parsed = checked(column, draw, text, words);
  if (!parsed.ok || draw === null) return parsed;
  return {
    ...parsed,
    hint: words.say('{power} at {voltage} V is {draw} {unit}',
      { power: text, voltage, draw: Number(draw.toPrecision(4)), unit: column.unit! }),
  };
}

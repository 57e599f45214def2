import { ENGLISH, type Words } from '../../words/index.ts';
import { isNumeric, type CellValue, type InputColumn } from '../schema/index.ts';
import { decimalSign } from './decimal-sign.ts';
import { excerpt } from './excerpt.ts';

/** What a column of numbers allows, for a sentence: `more than 0 A`, `0 to 1`. Empty when every number is allowed. */
export function rangeText({ min, above, max, unit }: InputColumn, words: Words): string {
  const figure = (limit: number) => `${words.number(limit)}${unit === undefined ? '' : ` ${unit}`}`;
  if (min !== undefined) {
    return max === undefined ? words.say('{least} or more', { least: figure(min) })
      : words.say('{least} to {most}', { least: min, most: figure(max) });
  }
  if (above !== undefined) {
    return max === undefined ? words.say('more than {limit}', { limit: figure(above) })
      : words.say('more than {limit} and at most {most}', { limit: above, most: figure(max) });
  }
  return max === undefined ? '' : words.say('at most {most}', { most: figure(max) });
}

/** What a column allows, for a sentence: `a whole number (0 or more)`. */
export function allowedText(column: InputColumn, words: Words): string {
  switch (column.kind) {
    case 'boolean': return words.say('yes or no');
    case 'choice': return column.choices!.map((each) => words.text(each)).join(', ');
    case 'text': return words.say('any text');
    case 'reference': return words.say('the tag of a row');
    default: {
      const range = rangeText(column, words);
      const number = numberText(column.kind, words);
      const suggestions = (column.suggestions ?? []).map(({ label }) => words.text(label));
      return [range === '' ? number : `${number} (${range})`, ...suggestions].join(', ');
    }
  }
}

function numberText(kind: 'integer' | 'number' | 'ratio', words: Words): string {
  switch (kind) {
    case 'integer': return words.say('a whole number');
    case 'number': return words.say('a number');
    case 'ratio': return words.say('a share or a percentage');
  }
}

/**
 * Checks a value against its column: range, whole numbers, words allowed.
 * @param text how the value was written, for the sentence; the value itself unless said otherwise.
 * @returns what is wrong in one sentence: what was found, what is allowed, what to do. `undefined` when nothing is.
 */
export function checkCell(
  column: InputColumn, value: CellValue, text?: string, words: Words = ENGLISH,
): string | undefined {
  return fits(column, value, text) ? undefined
    : problemOf(column, value!, excerpt(text ?? written(value!, words)), words);
}

/** Whether a column takes a value. Files of many rows are read through it, so no sentence is made ready for it. */
function fits(column: InputColumn, value: CellValue, text: string | undefined): boolean {
  if (value === null) return true;
  if (typeof value === 'boolean') return column.kind === 'boolean';
  if (typeof value === 'string') {
    if (value.includes('\0') || column.kind === 'boolean') return false;
    if (isNumeric(column)) return value.startsWith('=');
    return column.kind !== 'choice' || column.choices!.includes(value);
  }
  if (!isNumeric(column) || (column.kind === 'integer' && !Number.isSafeInteger(value)
    && !isLength(column, value, text))) return false;
  return isInRange(column, value);
}

/** Whether a number is within the range of a column. */
export function isInRange({ min, above, max }: InputColumn, value: number): boolean {
  return Number.isFinite(value) && (min === undefined || value >= min) && (above === undefined || value > above)
    && (max === undefined || value <= max);
}

/** A text says that it means metres. */
function isLength({ metres }: InputColumn, value: number, text: string | undefined): boolean {
  return metres === true && !Number.isInteger(value) && (text === undefined || /\dm$/i.test(text.replace(/\s/g, '')));
}

function written(value: string | number | boolean, words: Words): string {
  return typeof value === 'number' ? String(value).replace('.', decimalSign(words.locale)) : String(value);
}

function problemOf(column: InputColumn, value: string | number | boolean, found: string, words: Words): string {
  if (typeof value === 'string' && value.includes('\0')) {
    return words.say('The text holds a NUL character, which no text may hold. Delete it and enter the text again.');
  }
  if (typeof value === 'string' && column.kind === 'choice') {
    return words.say('“{found}” is not in the list; {allowed} are allowed. Type one of these, or nothing.',
      { found, allowed: allowedText(column, words) });
  }
  if (typeof value !== 'number' || !isNumeric(column) || !Number.isFinite(value)) return mismatch(column, found, words);
  if (column.kind === 'integer' && !Number.isInteger(value)) {
    return words.say('“{found}” is not a whole number; {allowed} is allowed. Type {below} or {above}.', {
      found, allowed: allowedText(column, words), below: String(Math.floor(value)), above: String(Math.ceil(value)),
    });
  }
  if (column.kind === 'integer' && !Number.isSafeInteger(value)) {
    return words.say('“{found}” is too large; at most {most} is allowed. Type a smaller number.',
      { found, most: String(Number.MAX_SAFE_INTEGER) });
  }
  if (column.kind === 'ratio' && column.max !== undefined && value > column.max) {
    return aboveOne(column, value, found, words);
  }
  return words.say('“{found}” is out of range; {range} is allowed. Type such a value, or empty the cell.',
    { found, range: rangeText(column, words) });
}

function mismatch(column: InputColumn, found: string, words: Words): string {
  return words.say('“{found}” is not valid here; {allowed} is allowed. Type that, or empty the cell.',
    { found, allowed: allowedText(column, words) });
}

/**
 * A share above 1 is often a percentage without its sign or, for diversity and factors, the reciprocal that some texts
 * print.
 */
function aboveOne(column: InputColumn, value: number, found: string, words: Words): string {
  const range = rangeText(column, words);
  if (found.includes('%')) {
    return words.say(
      '“{found}” is more than 100 %; {range} (at most 100 %) is allowed. Type a smaller share.', { found, range }
    );
  }
  if ((column.key === 'diversity' || column.key === 'factor') && value < 10) {
    const problem = column.key === 'diversity' ? words.say(
      '“{found}” is more than 1; {range} (at most 100 %) is allowed: diversity is the share expected at the same time.',
      { found, range })
      : words.say('“{found}” is more than 1; {range} (at most 100 %) is allowed: a factor is the share of the group that is on.', { found, range });
    const remedy = words.say('Some texts print its reciprocal: if yours does, type {reciprocal}.',
      { reciprocal: Number((1 / value).toFixed(3)) });
    return `${problem} ${remedy}`;
  }
  if (value > 100) {
    return words.say('“{found}” is more than 1; {range} (at most 100 %) is allowed. Type 80 % or {share}, for instance.',
      { found, range, share: 0.8 });
  }
  return words.say(
    '“{found}” is more than 1; {range} (at most 100 %) is allowed. Type {value} % or {share} if {value} in a hundred is meant.',
    { found, range, value, share: value / 100 });
}

import { isNumeric, type CellValue, type InputColumn } from '../schema/index.ts';
import { quoted } from './quoted.ts';

/** What a column of numbers allows, for a sentence: `more than 0 A`, `0 to 1`. Empty when every number is allowed. */
export function rangeText(column: InputColumn): string {
  const { min, above, max } = column;
  const unit = column.unit === undefined ? '' : ` ${column.unit}`;
  if (min !== undefined) return max === undefined ? `${min}${unit} or more` : `${min} to ${max}${unit}`;
  if (above !== undefined) return `more than ${above}${max === undefined ? '' : ` and at most ${max}`}${unit}`;
  return max === undefined ? '' : `at most ${max}${unit}`;
}

/** What a column allows, for a sentence: `a whole number (0 or more)`. */
export function allowedText(column: InputColumn): string {
  switch (column.kind) {
    case 'boolean': return 'yes or no';
    case 'choice': return column.choices!.join(', ');
    case 'text': return 'any text';
    case 'reference': return 'the tag of a row';
    default: {
      const range = rangeText(column) === '' ? '' : ` (${rangeText(column)})`;
      return [NUMBERS[column.kind] + range, ...(column.suggestions ?? []).map(({ label }) => label)].join(', ');
    }
  }
}

const NUMBERS = { integer: 'a whole number', number: 'a number', ratio: 'a share or a percentage' };

/**
 * Checks a value against its column: range, whole numbers, words allowed.
 * @param found how the value was written, for the sentence.
 * @returns what is wrong in one sentence: what was found, what is allowed, what to do. `undefined` when nothing is.
 */
export function checkCell(column: InputColumn, value: CellValue, found = String(value)): string | undefined {
  if (value === null) return undefined;
  if (typeof value === 'string') return checkText(column, value, found);
  if (typeof value === 'boolean') return column.kind === 'boolean' ? undefined : mismatch(column, found);
  if (!isNumeric(column) || !Number.isFinite(value)) return mismatch(column, found);
  if (column.kind === 'integer' && !Number.isInteger(value)) {
    const [below, over] = [Math.floor(value), Math.ceil(value)];
    return `${quoted(found)} is not a whole number; ${allowedText(column)} is allowed. Type ${below} or ${over}.`;
  }
  if (column.kind === 'integer' && !Number.isSafeInteger(value)) {
    return `${quoted(found)} is too large; at most ${Number.MAX_SAFE_INTEGER} is allowed. Type a smaller number.`;
  }
  const { min = -Infinity, above = -Infinity, max = Infinity } = column;
  if (value >= min && value > above && value <= max) return undefined;
  if (column.kind === 'ratio' && value > max) return aboveOne(column, value, found);
  return `${quoted(found)} is out of range; ${rangeText(column)} is allowed. Type such a value, or empty the cell.`;
}

function mismatch(column: InputColumn, found: string): string {
  return `${quoted(found)} cannot stand here; ${allowedText(column)} is allowed. Type that, or empty the cell.`;
}

function checkText(column: InputColumn, value: string, found: string): string | undefined {
  if (value.includes('\0')) {
    return 'The text holds a NUL character, which no text may hold. Delete it and enter the text again.';
  }
  if (isNumeric(column)) return value.startsWith('=') ? undefined : mismatch(column, found);
  if (column.kind === 'boolean') return mismatch(column, found);
  if (column.kind !== 'choice' || column.choices!.includes(value)) return undefined;
  return `${quoted(found)} is not in the list; ${allowedText(column)} are allowed. Type one of these, or nothing.`;
}

/** A share above 1 is often a percentage without its sign or, for diversity, the reciprocal that some texts print. */
function aboveOne(column: InputColumn, value: number, found: string): string {
  const range = `${rangeText(column)} (at most 100 %)`;
  if (found.includes('%')) return `${quoted(found)} is more than 100 %; ${range} is allowed. Type a smaller share.`;
  const share = Number((value / 100).toPrecision(12));
  if (column.key === 'diversity' && value < 10) {
    const reciprocal = Number((1 / value).toFixed(3));
    return `${quoted(found)} is more than 1; ${range} is allowed: diversity is the share expected at the same time. `
      + `Some texts print its reciprocal: if yours does, type ${reciprocal}.`;
  }
  const remedy = value > 100 ? '80 % or 0.8, for instance' : `${value} % or ${share} if ${value} in a hundred is meant`;
  return `${quoted(found)} is more than 1; ${range} is allowed. Type ${remedy}.`;
}

import type { Words } from '../../words/index.ts';
import { decimalSign } from '../cell-text/index.ts';

/** A text in quotes, or a number with a decimal comma, which parts nothing in a formula and can mean nothing else. */
const COMMAS = /"(?:[^"]|"")*"|(?<![\w.,$])\d+,\d+(?:[Ee][-+]?\d+)?(?![\w.,])/g;
/** A text in quotes, a kept reference, or a number with a decimal point. */
const POINTS = /"(?:[^"]|"")*"|⟦[^⟧]*⟧|(?<![\w.$])\d+\.\d+/g;

/** A formula as typed, with a point in each number where the language writes a comma: `=2,5*D3` is `=2.5*D3`. */
export function withPoints(formula: string, { locale }: Words): string {
  if (decimalSign(locale) === '.') return formula;
  return formula.replace(COMMAS, (part) => part.startsWith('"') ? part : part.replace(',', '.'));
}

/** A kept formula with the decimal sign of a language in each number. */
export function withDecimalSign(formula: string, { locale }: Words): string {
  const sign = decimalSign(locale);
  if (sign === '.') return formula;
  return formula.replace(POINTS, (part) => /^\d/.test(part) ? part.replace('.', sign) : part);
}

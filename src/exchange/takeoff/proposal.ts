import { parseCell, type DecimalSign, type InputColumn } from '../../schedule/index.ts';
import { isCountUnit, isPair } from './count-units.ts';

/** A plain number of at most six digits, with decimals or without. */
const NUMBER = String.raw`(\d{1,6}(?:[.,]\d{1,3})?)`;
/** Words that say that a second number is part of the first: «12 (incl. 2 spare)», «12, davon 2 Reserve». */
const PART_OF = /^\W*(?:incl|including|inkl|inklusive|einschl|einschließlich|davon|dont|y compris|of which|thereof)\b/iu;
/** Units that a part has, and not a count. */
const MEASURE = /^\s*(?:[mk]?[WVA]|VA|[mc]m|kg|K|°C|lm|Hz|h|dB)\b/u;
const [TIMES, PLUS] = [/^\W*[x×*]\s*$/iu, /^[^\d%]{0,20}\+\s*$/u];

/**
 * How many a quantity of more than one number, or of pairs, probably means: 4 for «2 pr.» and «3 + 1 spare», 12 for
 * «12 (incl. 2 spare)», 6 for «2x3». It is for a person to confirm.
 * @param unit the cell of the unit.
 * @returns `undefined` where it may as well mean something else, as «10-12» and «12 (2 spare)».
 */
export function proposedQuantity(text: string, unit: string, decimal: DecimalSign | undefined): number | undefined {
  const parts = text.split(new RegExp(NUMBER, 'u'));
  // Text between numbers stands at even places, numbers at odd ones.
  const numbers = parts.filter((_, index) => index % 2 === 1).map((each) => numberOf(each, decimal));
  const between = parts.filter((_, index) => index % 2 === 0);
  const [first, second] = numbers;
  if (first === undefined || numbers.includes(undefined) || /[\d%\p{No}]/u.test(between.join('')) || !/^\W*$/u.test(between[0]!)
    || /[-−]/.test(between[0]!)) return undefined;
  const rest = between.slice(1);
  if (numbers.length === 1) return [rest[0]!, unit].some(isPair) ? exact(first * 2) : undefined;
  if ([...rest, unit].some((each) => each.split(/[^\p{L}.]+/u).some(isPair))) return undefined;
  const all = numbers as number[];
  const [joints, behind] = [rest.slice(0, -1), rest.at(-1)!];
  if (joints.every((each) => PLUS.test(each))) {
    return MEASURE.test(behind) ? undefined : exact(all.reduce((sum, each) => sum + each, 0));
  }
  // «2 x 6 W» are two.
  if (joints.every((each) => TIMES.test(each))) {
    return isCountUnit(behind) ? exact(all.reduce((product, each) => product * each, 1)) : undefined;
  }
  const isPart = all.length === 2 && PART_OF.test(joints[0]!.replace(/^\s*\p{L}{1,6}\.?(?=\s*[(,;])/u, ''));
  return isPart && second! <= first ? first : undefined;
}

const COUNT: InputColumn = { role: 'input', key: 'qty', title: '', kind: 'number', help: '' };

function numberOf(text: string, decimal: DecimalSign | undefined): number | undefined {
  const parsed = parseCell(COUNT, text, { decimal });
  return parsed.ok && typeof parsed.value === 'number' ? parsed.value : undefined;
}

function exact(count: number): number {
  return Math.round(count * 1000) / 1000;
}

import { checkCell, columnOf, parseCell, type DecimalSign, type InputColumn } from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import { withoutFootnote, withoutStruck } from '../marked-text.ts';
import { isCountUnit, isMetres, isPair } from './count-units.ts';
import { proposedQuantity } from './proposal.ts';

/** What a cell says about how many there are. */
export interface Quantity {
  /** The number that stands there; `null` when none can be made out. */
  readonly qty: number | null;
  /** Why it is not simply taken, and what to do; absent for a plain count. */
  readonly doubt?: string | undefined;
  /** What it probably means, for a person to confirm; then `qty` says the same. */
  readonly proposal?: number;
  /** It is in doubt only because it is not whole and has no unit: it may be a length. */
  readonly isFraction?: true;
  /** It is a length in metres. */
  readonly isLength?: true;
}

const QTY = columnOf('devices', 'qty') as InputColumn;
/** Any number: a quantity that is not whole is in doubt but still counts in the sums. */
const NUMBER: InputColumn = { role: 'input', key: 'qty', title: QTY.title, kind: 'number', help: QTY.help };
/** Larger counts are slips of the keyboard, and sums of them would no longer be exact. */
const MOST = 1_000_000;

/**
 * Reads a quantity as people write it: `12`, `12 no.`, `12,0`, `1 200`, `12 Stk`, `12 x`.
 * @param text the cell of the quantity.
 * @param unit the cell of its unit, empty where there is none.
 * @param decimal the decimal sign in use, if known; without it `1,200` is in doubt.
 * @param words the language of the doubt.
 * @returns the count; with a doubt for all that is not a plain whole number, and with a proposal where it is clear what
 * is probably meant: 12 for `ca. 12`, 4 for `3 + 1 spare` and for 4 with a footnote, none for `12.5`, `10-12` and `1
 * lot`.
 */
export function readQuantity(text: string, unit = '', decimal?: DecimalSign, words: Words = ENGLISH): Quantity {
  const plain = withPlainSigns(text).trim();
  if (plain === '') return { qty: null };
  const rest = withoutFootnote(withoutStruck(plain));
  if (rest !== plain) return marked(plain, unit, readQuantity(rest, unit, decimal, words), words);
  if (plain.startsWith('=')) {
    return {
      qty: null, doubt: words.say('“{text}” is a formula, not a count. Say how many there are.', { text: plain }),
    };
  }
  const behind = /^([+\-−]?[\d.,'’\s]*\d)[.,]?\s*(\D.*)?$/su.exec(plain);
  const units = [behind?.[2] ?? '', unit];
  if (behind === null || !units.every(isCountUnit)) {
    return inDoubt(plain, unit, decimal, words);
  }
  const [isLength, isBare] = [units.some(isMetres), units.every((each) => each.trim() === '')];
  return { ...readCount(behind[1]!, decimal, words, isLength ? ' m' : isBare ? '' : ' no'), ...(isLength ? { isLength } : {}) };
}

/** Whether a text is a count, plainly or with a proposal; «Room 101» holds a number but counts nothing. */
export function isCount(text: string): boolean {
  const { qty, doubt, proposal } = readQuantity(text, '', '.');
  return qty !== null && (doubt === undefined || proposal !== undefined);
}

/** Signs that are the same to a reader, but for raised digits and fractions: 4¹ is no 41, and 12½ no 121⁄2. */
function withPlainSigns(text: string): string {
  return text.replace(/[^\p{No}⁺-⁾₊-₎]+/gu, (signs) => signs.normalize('NFKC'));
}

/** A quantity with a footnote, or of which a part is struck through: what is left is for a person to confirm. */
function marked(
  text: string, unit: string, { doubt, isFraction: _isFraction, ...rest }: Quantity, words: Words,
): Quantity {
  const { qty, proposal = qty } = rest;
  if (proposal === null || (doubt !== undefined && rest.proposal === undefined)) {
    return { qty, doubt: notPlain(text, unit, words) };
  }
  return { ...rest, proposal, doubt: probably(text, unit, proposal, words) };
}

function probably(text: string, unit: string, proposal: number, words: Words): string {
  return unit === '' ? words.say('“{text}” probably means {proposal}. Confirm it, or say how many there are.', { text, proposal })
    : words.say('“{text}” in “{unit}” probably means {proposal}. Confirm it, or say how many there are.', { text, unit, proposal });
}

function notPlain(text: string, unit: string, words: Words): string {
  return unit === '' ? words.say('“{text}” is not a plain count. Say how many there are.', { text })
    : words.say('“{text}” in “{unit}” is not a plain count. Say how many there are.', { text, unit });
}

function inDoubt(text: string, unit: string, decimal: DecimalSign | undefined, words: Words): Quantity {
  const proposal = !isCountUnit(unit) && !isPair(unit) ? undefined
    : proposedQuantity(text, unit, decimal) ?? roughCount(text, decimal, words);
  const isLength = isMetres(unit) || isMetres(text.slice(text.search(/[^\d.,]*$/)));
  if (proposal !== undefined && proposal <= MOST && (isLength || Number.isInteger(proposal))) {
    return {
      qty: proposal, proposal, ...(isLength ? { isLength } : {}),
      doubt: probably(text, unit, proposal, words),
    };
  }
  return { qty: onlyNumber(text, decimal, words), doubt: notPlain(text, unit, words) };
}

/** The count in «ca. 12», «env. 3», «~12», «12?» and «12 (tbc)»: nothing but words of doubt stands beside it. */
function roughCount(text: string, decimal: DecimalSign | undefined, words: Words): number | undefined {
  const rough = /^(?:(?:ca|circa|approx|about|around|env|environ|etwa|rd|rund|min|mind|~|≈|±)\W*)?[\d.,\s]*\d[\s(?]*(?:tbc|t\.b\.c\.)?[\s)?]*$/iu;
  // «41)» may be 4 with the mark of a footnote.
  const isWhole = !text.includes(')') || text.includes('(');
  return isWhole && rough.test(text) ? onlyNumber(text, decimal, words) ?? undefined : undefined;
}

/** @param unit `m` for a length, a piece for what is counted; empty where there is none. */
function readCount(text: string, decimal: DecimalSign | undefined, words: Words, unit = ''): Quantity {
  const parsed = parseCell(NUMBER, text, { decimal, words });
  if (!parsed.ok) return { qty: null, doubt: parsed.problem };
  const qty = Math.round(Number(parsed.value) * 1000) / 1000;
  if (Math.abs(qty) > MOST) {
    return {
      qty: null, doubt: words.say('“{text}” is more than {most}. Say how many there are.', { text, most: MOST }),
    };
  }
  const doubt = checkCell(QTY, qty, `${text}${unit}`, words);
  if (doubt === undefined) return { qty };
  return { qty, doubt, ...(unit === '' && qty > 0 && !Number.isInteger(qty) ? { isFraction: true as const } : {}) };
}

/** The one number in a text; `null` where there are several, a fraction or none, or where it can mean two. */
function onlyNumber(text: string, decimal: DecimalSign | undefined, words: Words): number | null {
  const found = text.match(/\d[\d.,]*/g) ?? [];
  return found.length === 1 && !/\p{No}/u.test(text) ? readCount(found[0].replace(/[.,]$/, ''), decimal, words).qty : null;
}

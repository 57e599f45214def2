/** A sign that parts whole units from decimals. */
export type DecimalSign = '.' | ',';

/** A number as somebody wrote it. */
export interface WrittenNumber {
  /** The number in plain notation, a point before the decimals: `-1234.5`. */
  readonly plain: string;
  /** Power of ten that follows it. */
  readonly exponent: number;
  /** What stands behind the number: a unit or nothing. */
  readonly rest: string;
  /** The decimal sign that this way of writing proves, if it proves one. */
  readonly proves?: DecimalSign;
  /** The other reading of `1,200` and its like; absent where there is only one. */
  readonly otherwise?: string;
}

const SPACES = /[ \u00a0\u2007\u2009\u202f'’]/g;
/** Sign; digits with what parts them; exponent; the rest. */
const NUMBER = new RegExp([
  String.raw`^([+\-−]?)[ \u00a0]?`,
  String.raw`(\d[\d.,'’ \u00a0\u2007\u2009\u202f]*|[.,]\d+)`,
  String.raw`(?:[eE]([+\-−]?\d{1,3})(?!\d))?`,
  String.raw`(.*)$`,
].join(''), 's');

/**
 * Reads a number with a decimal point or comma, thousands parted by spaces, apostrophes, points or commas, and a
 * power of ten: `12,5`, `1 200`, `1.234,5`, `1,234.5`, `1e3`.
 * @param decimal the decimal sign in use, if known; it decides what `1,200` means.
 * @returns the number and what follows it; `undefined` when the text does not begin with a number.
 */
export function writtenNumber(text: string, decimal?: DecimalSign): WrittenNumber | undefined {
  const found = NUMBER.exec(text.trim());
  if (found === null) return undefined;
  const body = bodyOf(found[2]!.trim(), decimal);
  if (body === undefined) return undefined;
  const minus = found[1] === '' || found[1] === '+' ? '' : '-';
  return {
    ...body,
    plain: minus + body.plain,
    ...(body.otherwise === undefined ? {} : { otherwise: minus + body.otherwise }),
    exponent: Number((found[3] ?? '0').replace('−', '-')),
    rest: found[4]!.trim(),
  };
}

type Body = Pick<WrittenNumber, 'plain' | 'proves' | 'otherwise'>;

function bodyOf(text: string, decimal: DecimalSign | undefined): Body | undefined {
  if (text.search(SPACES) >= 0) {
    const groups = /^\d{1,3}(?:[^\d.,]\d{3})+(?:([.,])\d+)?$/.exec(text);
    return groups === null ? undefined : withDecimals(text.replace(SPACES, ''), groups[1] as DecimalSign | undefined);
  }
  const signs = text.replace(/\d/g, '');
  if (signs.length <= 1) return oneSign(text, signs as DecimalSign | '', decimal);
  const last = signs.at(-1) as DecimalSign;
  const first = signs[0] as DecimalSign;
  if (first === last) {
    const grouped = first === ',' ? /^\d{1,3}(?:,\d{3})+$/ : /^\d{1,3}(?:\.\d{3})+$/;
    return grouped.test(text) ? { plain: text.replaceAll(first, ''), proves: first === ',' ? '.' : ',' } : undefined;
  }
  const grouped = last === ',' ? /^\d{1,3}(?:\.\d{3})+,\d+$/ : /^\d{1,3}(?:,\d{3})+\.\d+$/;
  return grouped.test(text) ? withDecimals(text.replaceAll(first, ''), last) : undefined;
}

function oneSign(text: string, sign: DecimalSign | '', decimal: DecimalSign | undefined): Body | undefined {
  if (sign === '') return { plain: text };
  // Thousands never begin with a nought, so 0.350 has only one reading.
  if (!/^[1-9]\d{0,2}[.,]\d{3}$/.test(text)) return /\d$/.test(text) ? withDecimals(text, sign) : undefined;
  const asDecimals = text.replace(',', '.');
  const asThousands = text.replace(sign, '');
  if (decimal === undefined) return { plain: asDecimals, otherwise: asThousands };
  return { plain: decimal === sign ? asDecimals : asThousands };
}

function withDecimals(text: string, sign: DecimalSign | undefined): Body {
  return sign === undefined ? { plain: text } : { plain: text.replace(',', '.'), proves: sign };
}

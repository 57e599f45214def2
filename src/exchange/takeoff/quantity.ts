import { checkCell, columnOf, parseCell, type DecimalSign, type InputColumn } from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';

/** What a cell says about how many there are. */
export interface Quantity {
  /** The number that stands there; `null` when none can be made out. */
  readonly qty: number | null;
  /** Why it is not simply taken, and what to do; absent for a plain count. */
  readonly doubt?: string | undefined;
  /** It is a length in metres. */
  readonly isLength?: true;
}

const QTY = columnOf('devices', 'qty') as InputColumn;
/** Any number: a quantity that is not whole is in doubt but still counts in the sums. */
const NUMBER: InputColumn = { role: 'input', key: 'qty', title: QTY.title, kind: 'number', help: QTY.help };
/** Words for single pieces, in English, German and French, that do not change a count. */
const PIECES = new Set([
  'no', 'nos', 'pc', 'pcs', 'pce', 'pces', 'piece', 'pieces', 'pièce', 'pièces', 'pièce(s)', 'ea', 'each', 'off',
  'unit',
  'units', 'u', 'un', 'unité', 'unités', 'unité(s)', 'unite', 'unites', 'st', 'stk', 'stck', 'stück', 'stücke',
  'stueck', 'stuck',
  'x', '×', 'nr', 'item', 'items', 'mal', 'fois', 'appareil', 'appareils', 'gerät', 'geräte',
]);
const METRES = new Set([
  'm', 'lm', 'lfm', 'lfdm', 'lfd m', 'lfd meter', 'laufmeter', 'ml', 'm l', 'metre', 'metres', 'meter', 'mètre',
  'mètres',
  'mètre linéaire', 'mètres linéaires', 'rm',
]);
/** Larger counts are slips of the keyboard, and sums of them would no longer be exact. */
const MOST = 1_000_000;

/**
 * Reads a quantity as people write it: `12`, `12 no.`, `12,0`, `1 200`, `12 Stk`, `12 x`.
 * @param text the cell of the quantity.
 * @param unit the cell of its unit, empty where there is none.
 * @param decimal the decimal sign in use, if known; without it `1,200` is in doubt.
 * @param words the language of the doubt.
 * @returns the count; with a doubt for all that is not a plain whole number: `ca. 12`, `12.5`, `2 x 6`, `1 lot`.
 */
export function readQuantity(text: string, unit = '', decimal?: DecimalSign, words: Words = ENGLISH): Quantity {
  const plain = text.normalize('NFKC').trim();
  if (plain === '') return { qty: null };
  if (plain.startsWith('=')) {
    return {
      qty: null, doubt: words.say('“{text}” is a formula, not a count. Say how many there are.', { text: plain }),
    };
  }
  const behind = /^([+\-−]?[\d.,'’\s]*\d)[.,]?\s*(\D.*)?$/su.exec(plain);
  const units = [behind?.[2] ?? '', unit].map(unitForm).filter((word) => word !== '');
  if (behind === null || units.some((word) => !PIECES.has(word) && !METRES.has(word))) {
    const doubt = unit === '' ? words.say('“{text}” is not a plain count. Say how many there are.', { text: plain })
      : words.say('“{text}” in “{unit}” is not a plain count. Say how many there are.', { text: plain, unit });
    return { qty: onlyNumber(plain, decimal, words), doubt };
  }
  return {
    ...readCount(behind[1]!, decimal, words), ...(units.some((word) => METRES.has(word)) ? { isLength: true } : {}),
  };
}

function readCount(text: string, decimal: DecimalSign | undefined, words: Words): Quantity {
  const parsed = parseCell(NUMBER, text, { decimal, words });
  if (!parsed.ok) return { qty: null, doubt: parsed.problem };
  const qty = Math.round(Number(parsed.value) * 1000) / 1000;
  if (Math.abs(qty) > MOST) {
    return {
      qty: null, doubt: words.say('“{text}” is more than {most}. Say how many there are.', { text, most: MOST }),
    };
  }
  const doubt = checkCell(QTY, qty, text, words);
  return doubt === undefined ? { qty } : { qty, doubt };
}

function unitForm(text: string): string {
  return text.normalize('NFKC').toLowerCase().replace(/[.\s]+/g, ' ').trim();
}

/** The one number in a text; `null` where there are several or none, or where it can mean two. */
function onlyNumber(text: string, decimal: DecimalSign | undefined, words: Words): number | null {
  const found = text.match(/\d[\d.,]*/g) ?? [];
  return found.length === 1 ? readCount(found[0].replace(/[.,]$/, ''), decimal, words).qty : null;
}

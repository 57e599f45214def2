/** Words for single pieces, in English, German and French, that do not change a count. */
const PIECES = new Set([
  'no', 'nos', 'pc', 'pcs', 'pce', 'pces', 'piece', 'pieces', 'pièce', 'pièces', 'pièce(s)', 'ea', 'each', 'off',
  'unit',
  'units', 'u', 'un', 'unité', 'unités', 'unité(s)', 'unite', 'unites', 'st', 'stk', 'stck', 'stück', 'stücke',
  'stueck', 'stuck',
  'x', '×', 'nr', 'item', 'items', 'mal', 'fois', 'appareil', 'appareils', 'gerät', 'geräte',
]);
/** Words for metres. */
const METRES = new Set([
  'm', 'lm', 'lfm', 'lfdm', 'lfd m', 'lfd meter', 'laufmeter', 'ml', 'm l', 'metre', 'metres', 'meter', 'mètre',
  'mètres',
  'mètre linéaire', 'mètres linéaires', 'rm',
]);
/** Words for two of a kind; common practice, no source. */
const PAIRS = new Set(['pr', 'prs', 'pair', 'pairs', 'paar', 'paare', 'paire', 'paires']);

/** Whether a unit leaves a count what it is, or is none: «Stk», «no.», «m». */
export function isCountUnit(text: string): boolean {
  const form = unitForm(text);
  return form === '' || PIECES.has(form) || METRES.has(form);
}

/** Whether a unit means metres. */
export function isMetres(text: string): boolean {
  return METRES.has(unitForm(text));
}

/** Whether a unit means two of a kind. */
export function isPair(text: string): boolean {
  return PAIRS.has(unitForm(text));
}

function unitForm(text: string): string {
  return text.normalize('NFKC').toLowerCase().replace(/[.\s]+/g, ' ').trim();
}

/** A text that becomes another one wherever it stands in a tag. */
export interface Renaming {
  readonly from: string;
  readonly to: string;
}

const escaped = (text: string) => text.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&');

/** A number or a word must not go on beyond it: `L1` is no part of `L10`, nor of `XL1`. */
function whole(text: string): string {
  const ends = (sign: string | undefined, look: '!' | '<!') =>
    sign === undefined ? '' : /\d/.test(sign) ? `(?${look}\\d)` : /\p{L}/u.test(sign) ? `(?${look}\\p{L})` : '';
  return ends(text[0], '<!') + escaped(text) + ends(text.at(-1), '!');
}

/** Whether a text begins with another one, which does not end within a number or a word of it. */
export function beginsWith(text: string, beginning: string): boolean {
  return beginning !== '' && new RegExp(`^${whole(beginning)}`, 'u').test(text);
}

/** A text that begins otherwise; one that does not begin so is as it was. */
export function begunOtherwise(text: string, { from, to }: Renaming): string {
  return beginsWith(text, from) ? to + text.slice(from.length) : text;
}

/**
 * A tag in which texts have become others, all at once; the longest of those that fit counts.
 *
 * @example renamedTag('L1-001', [{ from: 'L1', to: 'L3' }]) // 'L3-001'
 * @example renamedTag('L10-001', [{ from: 'L1', to: 'L3' }]) // 'L10-001'
 */
export function renamedTag(tag: string, renamings: readonly Renaming[]): string {
  const known = renamings.filter(({ from }) => from !== '').sort((a, b) => b.from.length - a.from.length);
  if (known.length === 0) return tag;
  const pattern = new RegExp(known.map(({ from }) => `(${whole(from)})`).join('|'), 'gu');
  return tag.replace(pattern, (...found: unknown[]) =>
    known[found.slice(1, known.length + 1).findIndex((each) => each !== undefined)]!.to);
}

/**
 * The text with its last number one higher, and again until it is free; without a number it gets one.
 *
 * @example nextText('Level 1', (text) => text === 'Level 2') // 'Level 3'
 */
export function nextText(text: string, isTaken: (text: string) => boolean): string {
  const [, before = text, digits = '', after = ''] = /^(.*?)(\d+)(\D*)$/su.exec(text) ?? [];
  const stem = digits === '' ? `${before} ` : before;
  for (let number = digits === '' ? 2 : Number(digits) + 1; ; number += 1) {
    const next = stem + String(number).padStart(digits.length, '0') + after;
    if (!isTaken(next)) return next;
  }
}

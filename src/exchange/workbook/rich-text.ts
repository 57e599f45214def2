import { withLook, type Look } from '../marked-text.ts';
import { attribute, plainText } from './xml-elements.ts';

/** Elements that matter to the look of a text: a run of it, its text, and what is struck through, raised or lowered. */
const TAG = /<(\/?)(?:\w+:)?(r|t|strike|vertAlign)(\s[^<>]*?)?(\/?)>/g;
const ALIGNED: Readonly<Record<string, Look>> = { superscript: 'raised', subscript: 'lowered' };

/**
 * Puts the look of parts of a cell into their signs (ECMA-376, part 1, 18.4.4, 18.4.10, 18.4.14), in one pass whatever
 * the text is.
 * @param xml the part of a sheet, or that of shared texts.
 */
export function withLooks(xml: string): string {
  if (!/strike|vertAlign/.test(xml)) return xml;
  const looks = new Set<Look>();
  const pieces: string[] = [];
  let [from, start] = [0, -1];
  for (const { index, 0: whole, 1: closing, 2: name, 3: attributes = '', 4: single } of xml.matchAll(TAG)) {
    const opens = closing === '';
    const value = attribute(attributes, 'val') ?? '1';
    if (name === 'r') looks.clear();
    else if (name === 'strike' && opens && !/^(?:0|false)$/.test(value)) looks.add('struck');
    else if (name === 'vertAlign' && Object.hasOwn(ALIGNED, value)) looks.add(ALIGNED[value]!);
    else if (name === 't' && opens) start = single === '' ? index + whole.length : -1;
    else if (name === 't' && start >= 0 && looks.size > 0) {
      const text = [...looks].sort().reduce((before, look) =>
        withLook(before, look), plainText(xml.slice(start, index)));
      pieces.push(xml.slice(from, start), text.replace(/&/g, '&amp;').replace(/</g, '&lt;'));
      from = index;
    }
  }
  return [...pieces, xml.slice(from)].join('');
}

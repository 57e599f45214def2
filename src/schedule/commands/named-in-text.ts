/**
 * The tag in a text that names a row, alone or with one of its connections behind a colon: `F1` of `F1:2`. A tag that
 * has a colon of its own is found first.
 * @param isTag whether a text is the tag of a row that counts.
 * @returns the tag, and what stands behind it; `undefined` where it is none that counts.
 */
export function namedInText(
  text: string, isTag: (tag: string) => boolean,
): { readonly tag: string; readonly behind: string } | undefined {
  if (isTag(text)) return { tag: text, behind: '' };
  const colon = text.lastIndexOf(':');
  const tag = text.slice(0, Math.max(colon, 0));
  return tag !== '' && isTag(tag) ? { tag, behind: text.slice(colon) } : undefined;
}

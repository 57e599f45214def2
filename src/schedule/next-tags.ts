/**
 * Tags that go on from one: `B4` gives `B5`, `B6`; `KP-09` gives `KP-10`; a tag without a number at its end gets one.
 * @param taken tags that are passed over
 *
 * @example nextTags('KP-09', 2, new Set(['KP-10'])) // ['KP-11', 'KP-12']
 */
export function nextTags(tag: string, count: number, taken: ReadonlySet<string>): string[] {
  const digits = /\d+$/.exec(tag)?.[0] ?? '';
  const stem = digits === '' ? `${tag} ` : tag.slice(0, -digits.length);
  const tags: string[] = [];
  for (let number = digits === '' ? 2 : Number(digits) + 1; tags.length < count; number += 1) {
    const next = stem + String(number).padStart(digits.length, '0');
    if (!taken.has(next)) tags.push(next);
  }
  return tags;
}

/** A tag for a part of a row that is parted: `L1-004/2`, the next one that is not taken; it is taken then. */
export function nextPartTag(tag: string, taken: Set<string>): string {
  let part = 2;
  while (taken.has(`${tag}/${part}`)) part += 1;
  taken.add(`${tag}/${part}`);
  return `${tag}/${part}`;
}

/** A tag and those of which it may be a part, the closest first: `L1-004/2/3`, `L1-004/2`, `L1-004`. */
export function wholeTags(tag: string): string[] {
  const whole = tag.replace(/(?<=.)\/\d+$/, '');
  return whole === tag ? [tag] : [tag, ...wholeTags(whole)];
}

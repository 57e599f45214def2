import type { InputColumn, SheetName } from '../schema/index.ts';

/** A row that a text names. */
export interface NamedInText {
  readonly sheet: SheetName;
  readonly tag: string;
  /** What stands behind the tag: a connection with its colon, or a mark; empty where the tag stands alone. */
  readonly behind: string;
}

/**
 * The rows that the text of a column names, one of each of its sheets that has such a tag: more than one where it is in
 * doubt. A tag stands alone or with something behind it, `F1` of `F1:2`; one that has a colon of its own is found
 * first. Where several sheets have the tag, what stands behind it tells of which it is, as far as that is known.
 * @param isTag whether a text is the tag of a row of a sheet.
 */
export function namedInText(
  { names = [], behind = {} }: Pick<InputColumn, 'names' | 'behind'>, text: string,
  isTag: (sheet: SheetName, tag: string) => boolean,
): NamedInText[] {
  const ends = ['', ...Object.keys(behind).filter((each) => each.startsWith(' ') && text.endsWith(each))];
  const colon = text.lastIndexOf(':');
  if (colon > 0) ends.push(text.slice(colon));
  const named = names.flatMap((sheet): NamedInText[] => {
    const end = ends.find((each) => isTag(sheet, text.slice(0, text.length - each.length)));
    return end === undefined ? [] : [{ sheet, tag: text.slice(0, text.length - end.length), behind: end }];
  });
  const known = named.filter((each) => behind[each.behind]?.includes(each.sheet) === true);
  return named.length > 1 && known.length > 0 ? known : named;
}

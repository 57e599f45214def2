import { TypeIndex } from '../exchange/takeoff/names/type-index.ts';
import { tagOf, type ScheduleDocument, type SheetName } from '../schedule/index.ts';

/** Letters and digits alone, in small letters, without zeros before a number: `l1 r01` and `L1-R1` are alike. */
const plain = (tag: string) => tag.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '').replace(/(?<!\d)0+(?=\d)/g, '');

/**
 * The tag that a person probably meant who typed one that no row of a sheet has: of types the likest by name or alias,
 * of others the only one that differs in case, spaces, signs or zeros alone.
 * @returns `undefined` where none is likely.
 */
export function likelyTag(document: ScheduleDocument, sheet: SheetName, typed: string): string | undefined {
  const rows = document.rows(sheet);
  const alike = new Set(rows.map((row) => tagOf(sheet, row)).filter((tag) => tag !== '' && plain(tag) === plain(typed)));
  if (alike.size === 1) return [...alike][0];
  if (sheet !== 'types') return undefined;
  const { type, candidates } = new TypeIndex(rows.map(({ cells }) => cells)).match([typed]);
  return type ?? candidates[0]?.type;
}

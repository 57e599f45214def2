import type { ScheduleDocument } from './document.ts';
import type { FileRows } from './formula/file-rows.ts';
import { SHEET_NAMES, type SheetName } from './schema/index.ts';
import type { Acceptance, Row, RowAcceptance } from './snapshot.ts';

/** A tag that more rows share tells nothing, and may not make a file grow without bounds. */
const MOST_SHARING = 100;

/**
 * Gives rows that were read from a file the acceptances that are meant for them: without a number every row that bears
 * the tag, as version 1 had it.
 * @returns those that are meant for no row that is there.
 */
export function attachAcceptances(
  accepted: readonly Acceptance[], sheets: Readonly<Record<SheetName, readonly Row[]>>, rows: FileRows,
): Acceptance[] {
  const placeOf = (sheet: SheetName, tag: string, number: number) =>
    number >= 1 && number <= sheets[sheet].length && rows.tag(sheet, number - 1) === tag ? [number - 1] : [];
  return accepted.filter((each) => {
    const { sheet, tag, row: number, ...acceptance } = each;
    const meant = number === undefined ? rows.tagged(sheet, tag) : placeOf(sheet, tag, number);
    if (meant.length === 0 || meant.length > MOST_SHARING) return true;
    for (const place of meant) ((sheets[sheet][place]!.accepted ??= []) as RowAcceptance[]).push(acceptance);
    return false;
  });
}

/** The acceptances of a document as files hold them: by tag, and by number where no tag tells a row from others. */
export function acceptancesOf(document: ScheduleDocument, rows: FileRows): Acceptance[] {
  const attached = SHEET_NAMES.flatMap((sheet) => document.rows(sheet).flatMap(({ accepted }, place) => {
    if (accepted === undefined) return [];
    const tag = rows.tag(sheet, place);
    const isOnly = tag !== '' && rows.tagged(sheet, tag).length === 1;
    const row = isOnly ? {} : { row: place + 1 };
    return accepted.map((acceptance): Acceptance => ({ sheet, tag, ...row, ...acceptance }));
  }));
  // A row that bears the tag by now is another one.
  const unattached = document.unattached.map((each) =>
    (rows.tagged(each.sheet, each.tag).length > 0 ? { ...each, row: 0 } : each));
  return [...attached, ...unattached];
}

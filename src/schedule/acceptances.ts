import type { ScheduleDocument } from './document.ts';
import type { FileRows } from './formula/file-rows.ts';
import { SHEET_NAMES, type SheetName } from './schema/index.ts';
import type { Acceptance, Row } from './snapshot.ts';

/**
 * Gives rows that were read from a file the acceptances that are meant for them.
 * @returns those that are meant for no row that is there.
 */
export function attachAcceptances(
  accepted: readonly Acceptance[], sheets: Readonly<Record<SheetName, readonly Row[]>>, rows: FileRows,
): Acceptance[] {
  return accepted.filter((each) => {
    const { sheet, tag, row: number, ...acceptance } = each;
    const meant = number === undefined
      ? sheets[sheet].filter((_row, place) => rows.tag(sheet, place) === tag)
      : sheets[sheet].slice(number - 1, number).filter(() => number > 0 && rows.tag(sheet, number - 1) === tag);
    for (const row of meant) row.accepted = [...row.accepted ?? [], acceptance];
    return meant.length === 0;
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

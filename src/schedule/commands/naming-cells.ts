import { tagOf, type ScheduleDocument } from '../document.ts';
import { inputColumns, SHEET_NAMES, type SheetName } from '../schema/index.ts';

/** A cell that names a row of another sheet. */
export interface NamingCell {
  readonly sheet: SheetName;
  readonly id: number;
  readonly key: string;
}

/**
 * The cells that name one of some rows by its tag and would name none without them; cells of these rows themselves are
 * left out, and rows whose tag another one bears too.
 */
export function namingCells(document: ScheduleDocument, sheet: SheetName, ids: readonly number[]): NamingCell[] {
  const going = new Set(ids);
  const staying = new Set(document.rows(sheet).filter(({ id }) => !going.has(id)).map((row) => tagOf(sheet, row)));
  const tags = new Set<unknown>(ids.map((id) => tagOf(sheet, document.row(sheet, id)!)).filter((tag) => tag !== '' && !staying.has(tag)));
  if (tags.size === 0) return [];
  return SHEET_NAMES.flatMap((name) => {
    const references = inputColumns(name).filter((column) => column.to === sheet);
    return references.length === 0 ? [] : document.rows(name).flatMap(({ id, cells }): NamingCell[] => (
      name === sheet && going.has(id) ? []
        : references.filter(({ key }) => tags.has(cells[key])).map(({ key }) => ({ sheet: name, id, key }))
    ));
  });
}

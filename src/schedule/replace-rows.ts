import { moveKeyForm } from './formula/key-form.ts';
import { inputColumns, isNumeric, SCHEMA, type SheetName } from './schema/index.ts';
import type { Acceptance, Cells, Content } from './snapshot.ts';

/**
 * A content with rows of another file in the place of those of a sheet. What was accepted of rows that only their
 * number tells stays without a row, since the new ones are others.
 */
export function withRowsReplaced(content: Content, sheet: SheetName, rows: readonly Cells[]): Content {
  return withRows(content, sheet, rows, (each) => (each.row === undefined ? each : { ...each, row: 0 }));
}

/**
 * A content with rows of another file behind those of a sheet, to which what was accepted and typed there still refers.
 */
export function withRowsAdded(content: Content, sheet: SheetName, rows: readonly Cells[]): Content {
  const before = content.sheets[sheet] ?? [];
  const numberOf = ({ tag }: Acceptance) => before.findIndex((cells) => cells[SCHEMA[sheet].tag] === tag) + 1;
  const keys = inputColumns(sheet).filter(isNumeric).map(({ key }) => key);
  const added = rows.map((cells) => {
    const moved = { ...cells };
    for (const key of keys) {
      const value = cells[key];
      if (typeof value === 'string') moved[key] = moveKeyForm(value, sheet, before.length);
    }
    return moved;
  });
  return withRows(content, sheet, [...before, ...added], (each) => ({ ...each, row: each.row ?? numberOf(each) }));
}

function withRows(
  content: Content, sheet: SheetName, rows: readonly Cells[], acceptedNow: (each: Acceptance) => Acceptance,
): Content {
  const accepted = (content.accepted ?? []).map((each) => (each.sheet === sheet ? acceptedNow(each) : each));
  return { ...content, sheets: { ...content.sheets, [sheet]: rows }, accepted };
}

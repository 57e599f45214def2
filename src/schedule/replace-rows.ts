import { FileRows } from './formula/file-rows.ts';
import { isFormula } from './formula/formula-text.ts';
import { renumberKeyForm } from './formula/key-form.ts';
import { inputColumns, isNumeric, SHEET_NAMES, type SheetName } from './schema/index.ts';
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
 * A row whose tag stands twice from then on is named by its number, in the formulas of either.
 */
export function withRowsAdded(content: Content, sheet: SheetName, rows: readonly Cells[]): Content {
  const before = content.sheets[sheet] ?? [];
  const [old, fresh] = [before, rows].map((each) => new FileRows(() => each.map((cells) => ({ cells }))));
  const only = (among: FileRows, tag: string) => {
    const [place, other] = among.tagged(sheet, tag);
    return other === undefined ? place : undefined;
  };
  const oldNumber = (row: number | string) => {
    const place = typeof row === 'string' && fresh!.tagged(sheet, row).length > 0 ? only(old!, row) : undefined;
    return place === undefined ? undefined : place + 1;
  };
  const newNumber = (row: number | string) => {
    if (typeof row === 'number') return before.length + row;
    const place = old!.tagged(sheet, row).length > 0 ? only(fresh!, row) : undefined;
    return place === undefined ? undefined : before.length + place + 1;
  };
  const kept = Object.fromEntries(SHEET_NAMES.map((own) =>
    [own, renumbered(content.sheets[own] ?? [], own, sheet, oldNumber)])) as Record<SheetName, Cells[]>;
  const added = renumbered(rows, sheet, sheet, newNumber);
  const numberOf = ({ tag }: Acceptance) => (old!.tagged(sheet, tag)[0] ?? -1) + 1;
  return withRows({ ...content, sheets: kept }, sheet, [...kept[sheet], ...added],
    (each) => ({ ...each, row: each.row ?? numberOf(each) }));
}

/** Rows whose formulas name rows of a sheet by other numbers. */
function renumbered(
  rows: readonly Cells[], own: SheetName, sheet: SheetName, numberOf: (row: number | string) => number | undefined,
): Cells[] {
  const keys = inputColumns(own).filter(isNumeric).map(({ key }) => key);
  return rows.map((cells) => {
    const now = { ...cells };
    for (const key of keys) {
      const value = cells[key];
      if (isFormula(value)) now[key] = renumberKeyForm(value, own, sheet, numberOf);
    }
    return now;
  });
}

function withRows(
  content: Content, sheet: SheetName, rows: readonly Cells[], acceptedNow: (each: Acceptance) => Acceptance,
): Content {
  const accepted = (content.accepted ?? []).map((each) => (each.sheet === sheet ? acceptedNow(each) : each));
  return { ...content, sheets: { ...content.sheets, [sheet]: rows }, accepted };
}

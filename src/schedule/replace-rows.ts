import { FileRows } from './formula/file-rows.ts';
import { formulasIn } from './formula/formulas-in.ts';
import { renumberKeyForm } from './formula/key-form.ts';
import { inputColumns, SHEET_NAMES, type SheetName } from './schema/index.ts';
import type { Acceptance, Cells, Content } from './snapshot.ts';

/** A content with rows of another file in it. */
export interface ContentWithRows {
  readonly content: Content;
  /** What was accepted of rows of before that are not among those of the file; the content keeps it without a row. */
  readonly gone: readonly Acceptance[];
}

/**
 * A content with rows of another file in the place of those of a sheet. What was accepted of a row that only its number
 * tells stays with the row at its place where that bears the same tag or, without one, is the same in all that is
 * entered; else it stays without a row, since the new one is another.
 */
export function withRowsReplaced(content: Content, sheet: SheetName, rows: readonly Cells[]): ContentWithRows {
  const before = content.sheets[sheet] ?? [];
  const [old, fresh] = [fileRows(before), fileRows(rows)];
  const isIn = (among: FileRows, { tag, row }: Acceptance) => row === undefined ? among.tagged(sheet, tag).length > 0
    : among.has(sheet, row - 1) && among.tag(sheet, row - 1) === tag;
  const inputs = inputColumns(sheet);
  const isSame = (place: number) =>
    inputs.every(({ key }) => (before[place]?.[key] ?? null) === (rows[place]?.[key] ?? null));
  const stays = (each: Acceptance) =>
    isIn(fresh, each) && (each.row === undefined || each.tag !== '' || isSame(each.row - 1));
  return {
    content: withRows(content, sheet, rows,
      (each) => (each.row === undefined || stays(each) ? each : { ...each, row: 0 })),
    gone: (content.accepted ?? []).filter((each) => each.sheet === sheet && isIn(old, each) && !stays(each)),
  };
}

/**
 * A content with rows of another file behind those of a sheet, to which what was accepted and typed there still refers.
 * A row whose tag stands twice from then on is named by its number, in the formulas of either.
 */
export function withRowsAdded(content: Content, sheet: SheetName, rows: readonly Cells[]): Content {
  const before = content.sheets[sheet] ?? [];
  const [old, fresh] = [fileRows(before), fileRows(rows)];
  const only = (among: FileRows, tag: string) => {
    const [place, other] = among.tagged(sheet, tag);
    return other === undefined ? place : undefined;
  };
  const oldNumber = (row: number | string) => {
    const place = typeof row === 'string' && fresh.tagged(sheet, row).length > 0 ? only(old, row) : undefined;
    return place === undefined ? undefined : place + 1;
  };
  const newNumber = (row: number | string) => {
    if (typeof row === 'number') return before.length + row;
    const place = old.tagged(sheet, row).length > 0 ? only(fresh, row) : undefined;
    return place === undefined ? undefined : before.length + place + 1;
  };
  const kept = Object.fromEntries(SHEET_NAMES.map((own) =>
    [own, renumbered(content.sheets[own] ?? [], own, sheet, oldNumber)])) as Record<SheetName, Cells[]>;
  const added = renumbered(rows, sheet, sheet, newNumber);
  const numberOf = ({ tag }: Acceptance) => (old.tagged(sheet, tag)[0] ?? -1) + 1;
  return withRows({ ...content, sheets: kept }, sheet, [...kept[sheet], ...added],
    (each) => ({ ...each, row: each.row ?? numberOf(each) }));
}

/** Rows whose formulas name rows of a sheet by other numbers. */
function renumbered(
  rows: readonly Cells[], own: SheetName, sheet: SheetName, numberOf: (row: number | string) => number | undefined,
): Cells[] {
  return rows.map((cells) => {
    const now = { ...cells };
    for (const [key, formula] of formulasIn(own, cells)) now[key] = renumberKeyForm(formula, own, sheet, numberOf);
    return now;
  });
}

function fileRows(cells: readonly Cells[]): FileRows {
  const rows = cells.map((each) => ({ cells: each }));
  return new FileRows(() => rows);
}

function withRows(
  content: Content, sheet: SheetName, rows: readonly Cells[], acceptedNow: (each: Acceptance) => Acceptance,
): Content {
  const accepted = (content.accepted ?? []).map((each) => (each.sheet === sheet ? acceptedNow(each) : each));
  return { ...content, sheets: { ...content.sheets, [sheet]: rows }, accepted };
}

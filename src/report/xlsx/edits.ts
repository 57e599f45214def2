import type { ListRows } from '../../exchange/update/index.ts';
import { cellNow, keyThen } from '../../exchange/json/version-1.ts';
import type { Workbook, WorksheetCell } from '../../exchange/workbook/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import {
  columnPlace, DETAIL_KEYS, grouped, inputColumns, isBlank, isFormula, isNumeric, isOfDocuments, namingKeys, parseCell,
  SCHEMA, SHEET_NAMES, tagOf,
  type Cells, type CellValue, type InputColumn, type Row, type SheetName,
} from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import { changedValue } from '../changes/changes-text.ts';
import { matchRows } from '../../schedule/compare/index.ts';
import { isSameValue } from '../changes/same-value.ts';
import { detailText, DETAIL_TITLES } from '../model/detail-titles.ts';
import { LiveFormulas } from './live-formulas.ts';
import { worksheetName } from './package-parts.ts';
import { shownValue } from './shown-value.ts';

/** A row as it is compared: cells that show a formula of ours are left out, as they say nothing of their own. */
interface ComparedRow extends Row {
  /** What its cells show, a formula of ours included. */
  readonly shown: Cells;
  /** Its number on the worksheet, from 1. */
  readonly number: number;
}

/** What was changed in one place of the worksheets. */
interface Edit {
  readonly sentence: string;
  /** What names the row in the schedule with the value of a cell, or a whole row that is new. */
  readonly offer?: { readonly sheet: SheetName; readonly row: number; readonly cells: Cells };
}

/** What was changed on the worksheets of a load table. */
export interface WorksheetEdits {
  readonly sentences: readonly string[];
  /** Rows that bring changes into the schedule, by what names them; formulas are none of them. */
  readonly offered: readonly ListRows[];
  /** The sentences on what no row of these brings: what was emptied, named otherwise or taken out, and the details. */
  readonly left: readonly string[];
}

/** What stands on the worksheets of a version of the format, in the words of now. */
interface Written {
  /** Key that a column of now has there; `undefined` where there was no such column. */
  keyOf(sheet: SheetName, key: string): string | undefined;
  /** What a cell there shows, as it would be shown now. */
  valueOf(sheet: SheetName, column: InputColumn, value: CellValue): CellValue;
  /** Whether what a cell shows there is read of other cells, whose rules may be others by now. */
  mayDiffer(cell: CellValue | undefined): boolean;
}

function writtenAs(version: number, words: Words): Written {
  if (version > 1) {
    return {
      // A person may write TRUE where the worksheet says yes.
      keyOf: (_sheet, key) => key, valueOf: (_sheet, column, value) => typeof value === 'boolean' ? shownValue(column, value, words) : value,
      mayDiffer: () => false,
    };
  }
  return {
    keyOf: keyThen,
    valueOf: (sheet, column, value) => {
      const [, now] = cellNow(sheet, keyThen(sheet, column.key) ?? column.key, value, (text) => text);
      // Its English worksheets had the keys of choices.
      const isKey = column.choices?.includes(String(now)) === true;
      return now === value && !isKey && typeof now !== 'boolean' ? value : shownValue(column, now, words);
    },
    mayDiffer: (cell) => isFormula(cell) && cell.includes('⟦'),
  };
}

/**
 * What was changed on the worksheets of a load table and is not in the schedule that it carries: the details, and the
 * inputs and rows of every sheet. Figures are left out, since they follow, and so are worksheets that only say what was
 * found. A column is found by the name of its range, wherever it stands by now.
 * @param schedule the schedule that the workbook carries, in the language in which its worksheets were written.
 * @param version version of the format in which the workbook carries it.
 * @param words the language of the sentences.
 * @returns a sentence for each place; one as well for each part that could not be compared; and the rows that bring
 * into the schedule what can be brought there by tag.
 */
export function editsOf(workbook: Workbook, schedule: LoadSchedule, version: number, words: Words): WorksheetEdits {
  const written = writtenAs(version, schedule.words);
  const sheets = SHEET_NAMES.filter((sheet) => schedule.rows(sheet).some((row) => !isBlank(row)));
  const edits: readonly Edit[] = [
    ...detailEdits(workbook, schedule, words).map((sentence) => ({ sentence })),
    ...sheets.flatMap((sheet) => sheetEdits(workbook, schedule, written, sheet, words)),
  ];
  const bySheet = grouped(edits.flatMap(({ offer }) => offer ?? []), ({ sheet }) => sheet);
  return {
    sentences: edits.map(({ sentence }) => sentence),
    left: edits.filter(({ offer }) => offer === undefined).map(({ sentence }) => sentence),
    offered: [...bySheet].map(([sheet, offers]): ListRows => ({
      sheet, isPart: true,
      rows: [...grouped(offers, ({ row }) => row).values()]
        .map((all) => Object.fromEntries(all.flatMap(({ cells }) => Object.entries(cells)))),
    })),
  };
}

function detailEdits(workbook: Workbook, schedule: LoadSchedule, words: Words): string[] {
  const { words: written, document: { details } } = schedule;
  // It is the first one, which bore other names in some languages once; any other has no title block.
  const cells = workbook.cells(worksheetName(written.say('Load table'))) ?? workbook.cells(workbook.sheets[0] ?? '');
  const titles = cells === undefined || 'ok' in cells ? [] : DETAIL_KEYS.map((key) =>
    cells.find(({ column, value }) => column === 0 && value === written.say(DETAIL_TITLES[key])));
  if (cells === undefined || 'ok' in cells || titles.every((title) => title === undefined)) {
    return [notFound(words.say('Details'), words)];
  }
  return DETAIL_KEYS.flatMap((key, place) => {
    const title = titles[place];
    const shown = title && cells.find(({ row, column }) => row === title.row && column === 1)?.value;
    // One of documents alone has no line where it is not entered, and had none once.
    if (title === undefined && isOfDocuments(key)) return [];
    const [before, after] = [comparable(details[key] ?? null, false), comparable(shown ?? null, false)];
    // Dates stood as they were entered once.
    const isSame = before === after || (before !== null && detailText(key, before, written) === after);
    if (title !== undefined && isSame) return [];
    return [different(words.say(DETAIL_TITLES[key]), before ?? '–', after ?? '–', words)];
  });
}

function sheetEdits(
  workbook: Workbook, schedule: LoadSchedule, written: Written, sheet: SheetName, words: Words,
): Edit[] {
  const title = words.text(SCHEMA[sheet].title);
  const inputs = inputColumns(sheet).filter(({ key }) => written.keyOf(sheet, key) !== undefined);
  // What the migration made of other sheets had no worksheet.
  if (inputs.length === 0) return [];
  const places = new Map(inputs.flatMap(({ key }) => {
    const place = placeOf(workbook.ranges.get(`${sheet}.${written.keyOf(sheet, key)!}`));
    return place === undefined ? [] : [[key, place] as const];
  }));
  const [first] = places.values();
  const cells = first && workbook.cells(first.worksheet);
  if (first === undefined || cells === undefined) return [{ sentence: notFound(title, words) }];
  if ('ok' in cells) return cells.problems.map((problem) => ({ sentence: `${title}: ${problem.message}` }));
  const columns = inputs.filter(({ key }) => places.has(key));
  const missing = inputs.filter(({ key }) => !places.has(key))
    .map((column) => ({ sentence: notFound(`${title}, ${words.text(column.title)}`, words) }));

  const formulas = new LiveFormulas(schedule);
  const ours = new Map(columns.map((column) => [column.key, skeletonOf(formulas.shown(sheet, column, 0))]));
  const { length } = schedule.rows(sheet);
  const spare = new Map(columns.map((column) => [column.key, skeletonOf(formulas.spare(sheet, column, length))]));
  const carried = schedule.rows(sheet).map((row, place) => carriedRow(schedule, sheet, row, place, columns, ours));
  const keys = new Map([...places].map(([key, { column }]) => [column, key]));
  const heldAs = (column: InputColumn, value: CellValue) => written.valueOf(sheet, column, value);
  const shown = worksheetRows(cells, first.row, keys, columns, [ours, spare], heldAs);
  const { pairs, removed, added } = matchRows(sheet, carried, shown);
  const removedFrom = new Map(removed.map((row) => [row.number, row]));
  const nameOf = (row: ComparedRow) => tagOf(sheet, row) || words.say('row {row}', { row: row.number });
  /** What names a row of the schedule, in the form of files. */
  const namesOf = (id: number): Cells | undefined => {
    const { cells: now } = schedule.document.row(sheet, id)!;
    const names = namingKeys(sheet).map((key) => [key, now[key] ?? null] as const);
    return names.some(([, name]) => name === null) ? undefined : Object.fromEntries(names);
  };
  const valueOf = (column: InputColumn, value: CellValue) =>
    typeof value === 'string' ? value : changedValue(column, value, words);
  return [
    ...missing,
    ...pairs.flatMap(({ before, after }) => columns.flatMap((column): Edit[] => {
      const { key } = column;
      const [was, is] = [before.shown[key] ?? null, after.shown[key] ?? null];
      // A formula of ours follows other cells; where it stands in both, only they can have been changed.
      if ((!(key in before.cells) && !(key in after.cells)) || isSameValue(was, is)) return [];
      if (written.mayDiffer(schedule.document.row(sheet, before.id)?.cells[key])) return [];
      const place = `${title}, ${nameOf(before)}, ${words.text(column.title)}`;
      const sentence = different(place, valueOf(column, was), valueOf(column, is), words);
      const names = namesOf(before.id);
      const value = entered(column, is, schedule.words);
      const mayBe = names !== undefined && value !== undefined && !(key in names);
      return [mayBe ? { sentence, offer: { sheet, row: before.id, cells: { ...names, [key]: value } } } : { sentence }];
    })),
    ...removed.map((row) => ({
      sentence: words.say('{sheet}, {row}: the row is not on the worksheet.', { sheet: title, row: nameOf(row) }),
    })),
    ...added.map((row): Edit => {
      const filled = columns.filter(({ key }) => key in row.cells);
      const gone = removedFrom.get(row.number - first.row);
      const sentence = words.say('{sheet}, row {row} of the worksheet: the row is not in the schedule: {values}.', {
        sheet: title, row: row.number,
        values: filled.map((column) => `${words.text(column.title)} ${valueOf(column, row.shown[column.key] ?? null)}`)
          .join(words.say('; ')),
      });
      const values = filled.map((column) =>
        [column.key, entered(column, row.cells[column.key]!, schedule.words)] as const);
      const isNamed = namingKeys(sheet).every((key) => key in row.cells);
      const mayBe = isNamed && values.every(([, value]) => value !== undefined);
      // It may be that row under another tag, which would be there twice.
      if (gone !== undefined) {
        return { sentence: words.say('{sentence} It stands where {gone} stood: enter it where it is another row; else change the tag and the figures of {gone}.', { sentence, gone: nameOf(gone) }) };
      }
      // Behind the rows of the schedule, whose ids are those of its own.
      if (!mayBe) return { sentence };
      return { sentence, offer: { sheet, row: -row.number, cells: Object.fromEntries(values) as Cells } };
    }),
  ];
}

/** A value of a worksheet as a person would have entered it; `undefined` for none, or one that is refused. */
function entered(column: InputColumn, value: CellValue, words: Words): CellValue | undefined {
  if (value === null || typeof value !== 'string') return value ?? undefined;
  const parsed = parseCell(column, value, { words });
  // A text that looks like a formula was none on the worksheet.
  if (!parsed.ok || parsed.value === null) return undefined;
  return isNumeric(column) && isFormula(parsed.value) ? undefined : parsed.value;
}

function different(place: string, before: CellValue, after: CellValue, words: Words): string {
  return words.say('{place}: {before} in the schedule, {after} on the worksheet.', {
    place, before: String(before), after: String(after),
  });
}

function notFound(part: string, words: Words): string {
  return words.say('{part}: was not found on a worksheet and is not compared.', { part });
}

/** Where a range begins: `'Bus branches'!$P$2:$P$90`; `undefined` for one that was deleted. */
function placeOf(range: string | undefined): { worksheet: string; row: number; column: number } | undefined {
  const [, quoted, plain, letters, digits] = /^(?:'((?:[^']|'')+)'|([^'!]+))!\$?([A-Z]+)\$?(\d+)/.exec(range ?? '')
    ?? [];
  const worksheet = quoted?.replaceAll('\'\'', '\'') ?? plain;
  return worksheet === undefined ? undefined : { worksheet, row: Number(digits) - 1, column: columnPlace(letters!) };
}

/** A row as the worksheet had it when it was written. */
function carriedRow(
  schedule: LoadSchedule, sheet: SheetName, row: Row, place: number, columns: readonly InputColumn[],
  ours: ReadonlyMap<string, string>,
): ComparedRow {
  const [cells, shown]: [Cells, Cells] = [{}, {}];
  for (const column of isBlank(row) ? [] : columns) {
    const { key } = column;
    const value = comparable(shownValue(column, schedule.value(sheet, row.id, key), schedule.words), isNumeric(column));
    if (value === null) continue;
    shown[key] = value;
    if (column.derived === undefined || schedule.isOwn(sheet, row.id, key) || ours.get(key) === '') cells[key] = value;
  }
  return { id: row.id, cells, shown, number: place + 1 };
}

/** The rows of a worksheet from its first row of inputs on. */
function worksheetRows(
  cells: readonly WorksheetCell[], first: number, keys: ReadonlyMap<number, string>, columns: readonly InputColumn[],
  ours: readonly ReadonlyMap<string, string>[], heldAs: (column: InputColumn, value: CellValue) => CellValue,
): ComparedRow[] {
  const byKey = new Map(columns.map((column) => [column.key, column]));
  const rows = new Map<number, ComparedRow>();
  for (const { row, column: place, value: held, formula } of cells) {
    const column = byKey.get(keys.get(place) ?? '');
    const value = column && comparable(heldAs(column, held), isNumeric(column));
    if (column === undefined || value === undefined || value === null || row < first) continue;
    const found = rows.get(row) ?? { id: row, cells: {}, shown: {}, number: row + 1 };
    rows.set(row, found);
    found.shown[column.key] = value;
    const isOurs = column.derived !== undefined && formula !== undefined
      && (formula === '' || ours.some((each) => skeletonOf(formula) === each.get(column.key)));
    if (!isOurs) found.cells[column.key] = value;
  }
  return [...rows.values()];
}

/** What a formula is apart from the rows that it names and the ways in which programs write it. */
function skeletonOf(formula: string | undefined): string {
  return formula?.replace(/["'$\s\d.]/g, '').replace('_XLFN', '').toUpperCase() ?? '';
}

/**
 * A value as it is compared: texts without the ends and line ends that programs change, numbers only in their columns.
 */
function comparable(value: CellValue, isNumber: boolean): CellValue {
  if (value === null || typeof value === 'boolean' || (isNumber && typeof value === 'number')) return value;
  return String(value).replace(/\r\n?/g, '\n').trim() || null;
}

import { readCell } from '../../../src/editing/index.ts';
import {
  detectDecimal, findColumn, insertRows, isBlank, isNumeric, setCells,
  type CellEdit, type CellValue, type Cells, type Column, type InputColumn,
} from '../../../src/schedule/index.ts';
import { MOST_ROWS } from '../../../src/exchange/index.ts';
import type { Words } from '../../../src/words/index.ts';
import type { EnteredCells } from '../clipboard/entered-cells.ts';
import { headingColumns, type NamedColumn } from '../clipboard/heading-columns.ts';
import { listHeadings } from '../clipboard/list-headings.ts';
import { readTable } from '../clipboard/read-table.ts';
import { cellsOfGroup, clipboardColumns, hidesRows, idAt, type GridModel } from '../grid-model.ts';
import type { GridSelection } from '../grid-selection.ts';
import type { ListLines } from './list-lines.ts';
import { enterInAll, enterTextInAll } from './enter-text.ts';
import { nothing, refused, type Plan } from './plan.ts';
import { readEnteredCell } from './read-entered.ts';

/** A table from the clipboard and the columns of the sheet that its columns go to. */
interface Pasted {
  readonly lines: readonly (readonly string[])[];
  readonly columns: readonly (InputColumn | undefined)[];
  readonly units: readonly (string | undefined)[];
  /** Number of the first line in what was copied, from 1. */
  readonly firstLine: number;
  readonly notes: readonly string[];
  /** What was entered in these cells, where a schedule says so. */
  readonly entered: EnteredCells | undefined;
  /** It has the headings of a takeoff. */
  readonly isList: boolean;
}

/**
 * Takes a table from the clipboard into the rows from the first selected line on, in the order in which they are shown;
 * the sheet grows where it ends. A first line of headings chooses the columns; else they follow from the first selected
 * one on. One cell fills all selected ones. Nothing is taken when any cell cannot be, nor of a list of devices whose
 * headings are not plain, or that would overwrite rows: a takeoff can read it.
 * @param entered what was entered in the cells, where they come from a schedule: it counts before the text.
 * @param lines what the reader of takeoffs says of a list with headings.
 */
export function pasteText(
  model: GridModel, selection: GridSelection, text: string, entered?: EnteredCells, lines?: ListLines,
): Plan {
  const { words } = model;
  const copied = entered === undefined ? readTable(text) : wholeTable(readTable(text), entered);
  const tiled = lines === undefined ? tile(model, selection, copied, entered) : { table: copied, entered };
  const { table } = tiled;
  if (table.length === 0) return nothing(words.say('The clipboard holds no text to paste.'));
  const block = selection.blocks[0]!;
  const hasMany = selection.blocks.length > 1 || block.lines.length * block.columns.length > 1;
  if (table.length === 1 && table[0]!.length === 1 && hasMany) return fillAll(model, selection, table[0]![0]!, entered);
  if (selection.blocks.length > 1) {
    return refused(
      words.say('Several blocks are selected, and a table goes to one place. Select the cell where it is to begin.')
    );
  }
  if (model.schedule.rows(model.sheet).length + table.length > MOST_ROWS) {
    return refused(
      words.say(
        'The clipboard holds {found} rows; a sheet may have at most {most}. Paste fewer.',
        { found: table.length, most: MOST_ROWS }
      )
    );
  }
  const list = model.sheet === 'devices' && entered === undefined ? listHeadings(table, words) : undefined;
  if (list === 'unclear') {
    return refused(
      words.say(
        'The clipboard holds a list with headings of its own, and not every column is plain. Nothing was pasted. Read it with Takeoff, which says of every line what becomes of it.'
      ), [], lines?.list ?? text
    );
  }
  const pasted = withColumns(model, block.columns[0] ?? selection.column, table, tiled.entered, list);
  if (pasted.lines.length === 0) {
    return nothing(words.say('The clipboard holds headings only, and no rows below them.'));
  }
  if (pasted.columns.every((column) => column === undefined)) {
    return nothing(words.say('Computed figures cannot be pasted over: they follow from the cells that are filled in.'));
  }
  const plan = planOf(model, block.lines[0] ?? selection.line, pasted);
  const isPlain = lines === undefined || (pasted.isList ? lines.isPlain : lines.countsOnce);
  if (plan.kind === 'act' && !isPlain) {
    return refused(words.say(
      'The clipboard holds a list in which not every line is plainly a device: totals, titles, blank or merged rooms, other names. Nothing was pasted. Read it with Takeoff, which says of every line what becomes of it.'
    ), [], lines.list);
  }
  return pasted.isList && plan.kind === 'refused' ? { ...plan, list: lines?.list ?? text } : plan;
}

interface Tiled {
  readonly table: readonly (readonly string[])[];
  readonly entered: EnteredCells | undefined;
}

/** A table that goes several times into the selected block, so many times beside and below itself. */
function tile(
  model: GridModel, { blocks }: GridSelection, table: readonly (readonly string[])[], entered: EnteredCells | undefined,
): Tiled {
  const [rows, width] = [table.length, Math.max(0, ...table.map((cells) => cells.length))];
  const selected = blocks[0]!.lines.filter((line) => idAt(model, line) >= 0).length;
  const [down, across] = [selected / rows, blocks[0]!.columns.length / width];
  const fits = blocks.length === 1 && rows > 0 && rows * width > 1
    && Number.isInteger(down) && down > 0 && Number.isInteger(across);
  const isHeaded = entered === undefined && headingColumns(model.sheet, table[0] ?? [], model.words) !== undefined;
  if (!fits || down * across === 1 || isHeaded) return { table, entered };
  const times = <Each>(count: number, list: readonly Each[]) => Array.from({ length: count }, () => list).flat();
  return {
    table: times(down, table.map((cells) => times(across, Array.from({ length: width }, (_cell, place) => cells[place] ?? '')))),
    // What was entered is known for the columns that it was copied from; beside them, the text counts.
    entered: entered && across === 1 ? { ...entered, rows: times(down, entered.rows) } : undefined,
  };
}

/** The table with the empty cells and lines at its ends, which a text does not tell apart. */
function wholeTable(table: readonly (readonly string[])[], { rows, keys }: EnteredCells): string[][] {
  return rows.map((_row, line) => keys.map((_key, place) => table[line]?.[place] ?? ''));
}

/** One cell goes to all selected ones. */
function fillAll(model: GridModel, selection: GridSelection, text: string, entered: EnteredCells | undefined): Plan {
  if (entered === undefined) return enterTextInAll(model, selection, text);
  return enterInAll(model, selection, (id, column) => {
    const row = model.schedule.document.position(model.sheet, id) + 1;
    return readEnteredCell(model, entered, { line: 0, place: 0, column, row, coming: [] })
      ?? readCell(model, id, column, text);
  });
}

function withColumns(
  model: GridModel, first: number, table: readonly (readonly string[])[], entered: EnteredCells | undefined,
  list: readonly NamedColumn[] | undefined,
): Pasted {
  const { words } = model;
  const named = list ?? (entered === undefined ? headingColumns(model.sheet, table[0]!, words) : undefined);
  const width = table.reduce((most, cells) => Math.max(most, cells.length), 0);
  const ordered = clipboardColumns(model);
  const begin = ordered.indexOf(model.columns[first]!);
  // What was copied where other columns were in sight goes to its own, as long as it begins in them.
  const isAtHome = entered?.keys[0] === ordered[begin]?.key;
  const own = isAtHome ? entered?.keys.map((key) => findColumn(model.sheet, key)) : undefined;
  const columns: (Column | undefined)[] = named?.map(({ column }) => column)
    ?? own ?? ordered.slice(begin, begin + width);
  const computed = columns.filter((column) => column?.role === 'computed').map((column) => words.text(column.title));
  const unknown = named?.flatMap(({ column }, index) => (column === undefined ? [table[0]![index]!.trim()] : []))
    .filter((name) => name !== '') ?? [];
  const beyond = named === undefined ? Math.max(0, width - columns.length) : 0;
  return {
    lines: named === undefined ? table : table.slice(1),
    columns: columns.map((column) => (column?.role === 'input' ? column : undefined)),
    units: named?.map(({ unit }) => unit) ?? [],
    firstLine: named === undefined ? 1 : 2,
    entered,
    isList: list !== undefined,
    notes: [
      ...(list === undefined ? [] : [
        words.say('read by the headings {headings}', {
          headings: list.map(({ column }, place) => `${table[0]![place]!.trim()} (${words.text(column!.title)})`).join(', '),
        }),
      ]),
      ...(computed.length > 0 ? [words.say('left out as computed: {columns}', { columns: computed.join(', ') })] : []),
      ...(
        unknown.length > 0
          ? [words.say('left out as this sheet has no such column: {headings}', { headings: unknown.join(', ') })]
          : []
      ),
      ...(
        beyond > 0
          ? [words.say('{n, plural, one {# column} other {# columns}} beyond the last one left out', { n: beyond })]
          : []
      ),
    ],
  };
}

function planOf(model: GridModel, line: number, pasted: Pasted): Plan {
  const { schedule: { document }, sheet, words } = model;
  const targets = rowLines(model, line).slice(0, pasted.lines.length);
  if (pasted.isList && targets.some((id) => !isBlank(document.row(sheet, id)!))) {
    return refused(
      words.say(
        'The clipboard holds a list with headings of its own, and rows stand here already. Nothing was pasted. Read it with Takeoff, or paste it below the last row.'
      )
    );
  }
  const { values, problems, hints } = readCells(model, targets, pasted);
  if (problems.length > 0) return refusedPaste(problems, words);
  const edits: CellEdit[] = [];
  const added: Cells[] = [];
  const group = cellsOfGroup(model, line);
  values.forEach((cells, index) => {
    const id = targets[index];
    if (id === undefined) added.push({ ...group, ...Object.fromEntries(cells.filter(([, value]) => value !== null)) });
    else edits.push(...cells.map(([key, value]) => ({ sheet, id, key, value })));
  });
  const ids = [...targets, ...document.freeIds(sheet, added.length)];
  const changes = [...setCells(document, edits), ...insertRows(document, sheet, document.rows(sheet).length, added)];
  if (changes.length === 0) return nothing(words.say('The pasted cells hold what is there already.'));
  const keys = pasted.columns.filter((column) => column !== undefined).map(({ key }) => key);
  const label = words.say('Paste of {n, plural, one {# row} other {# rows}}', { n: values.length });
  const counts = { rows: values.length, columns: keys.length };
  const what = added.length === 0
    ? words.say(
      '{rows, plural, one {# row} other {# rows}} of {columns, plural, one {# column} other {# columns}} pasted', counts
    )
    : words.say(
      '{rows, plural, one {# row} other {# rows}} of {columns, plural, one {# column} other {# columns}} pasted, {added} of them new',
      { ...counts, added: added.length }
    );
  const assumed = hints.length === 0 ? []
    : [
      words.say(
        '{n, plural, one {# draw} other {# draws}} in watts turned into mA, such as {example}',
        { n: hints.length, example: hints[0]! }
      ),
    ];
  const passed = hidesRows(model) && targets.length > 0 ? [words.say('rows out of sight passed over')] : [];
  const message =
    `${[what, ...passed, ...pasted.notes, ...assumed].reduce((one, other) => words.say('{one}; {other}', { one, other }))}.`;
  return { kind: 'act', label, changes, message, select: { ids, keys } };
}

const MOST_PROBLEMS = 200;

function refusedPaste(problems: readonly string[], words: Words): Plan {
  const n = problems.length;
  const text = words.say(
    'Nothing was pasted, as {n, plural, one {one cell} other {# cells}} cannot be taken. {problem}',
    { n, problem: problems[0]! }
  );
  if (n === 1) return refused(text);
  const left = n - MOST_PROBLEMS;
  const more = left > 0
    ? [words.say('{n, plural, one {# more cell} other {# more cells}} cannot be taken.', { n: left })]
    : [];
  return refused(text, [...problems.slice(0, MOST_PROBLEMS), ...more]);
}

/** Ids of the rows from a line on, in the order in which they are shown. */
function rowLines(model: GridModel, line: number): number[] {
  const ids: number[] = [];
  for (let at = line; at < model.lines.length; at += 1) if (idAt(model, at) >= 0) ids.push(idAt(model, at));
  return ids;
}

type ReadCells = readonly (readonly [string, CellValue])[];

/** What a pasted table holds, what could not be read, and what was assumed in reading it. */
interface Read {
  readonly values: readonly ReadCells[];
  readonly problems: readonly string[];
  readonly hints: readonly string[];
}

function readCells(model: GridModel, targets: readonly number[], pasted: Pasted): Read {
  const { words } = model;
  const decimal = detectDecimal(numericTexts(pasted));
  const voltageOf = pastedVoltages(model, pasted);
  const { schedule: { document }, sheet } = model;
  const coming = document.freeIds(sheet, Math.max(0, pasted.lines.length - targets.length));
  const rowOf = (index: number) => index < targets.length ? document.position(sheet, targets[index]!) + 1
    : document.rows(sheet).length + index - targets.length + 1;
  const problems: string[] = [];
  const hints: string[] = [];
  const values = pasted.lines.map((cells, index): ReadCells => pasted.columns.flatMap((column, place) => {
    const text = cells[place];
    if (column === undefined || text === undefined) return [];
    const context = { decimal, unit: pasted.units[place], voltage: voltageOf(cells) };
    const landing = { line: index, place, column, row: rowOf(index), coming };
    const read = (pasted.entered && readEnteredCell(model, pasted.entered, landing))
      ?? readCell(model, targets[index] ?? -1, column, text, context);
    if (!read.ok) {
      const line = index + pasted.firstLine;
      problems.push(
        words.say('Line {line}, {column}: {problem}', { line, column: words.text(column.title), problem: read.problem })
      );
      return [];
    }
    if (read.hint !== undefined) hints.push(read.hint);
    return [[column.key, read.value] as const];
  }));
  return { values, problems, hints };
}

/** The voltage [V] of the rail that a pasted line names, by which watts in the same line become a draw. */
function pastedVoltages(
  { schedule, sheet }: GridModel, { columns }: Pasted,
): (cells: readonly string[]) => number | undefined {
  const place = sheet === 'devices' ? columns.findIndex((column) => column?.key === 'rail') : -1;
  if (place < 0) return () => undefined;
  const voltages = new Map(schedule.document.rows('supplies').map(({ id, cells }) =>
    [cells.rail, schedule.value('supplies', id, 'voltage')] as const));
  return (cells) => {
    const voltage = voltages.get(cells[place]?.trim() ?? '');
    return typeof voltage === 'number' ? voltage : undefined;
  };
}

function* numericTexts({ lines, columns }: Pasted): Generator<string> {
  for (const cells of lines) {
    for (let place = 0; place < columns.length; place += 1) {
      const column = columns[place];
      const text = cells[place];
      if (column !== undefined && isNumeric(column) && text !== undefined) yield text;
    }
  }
}

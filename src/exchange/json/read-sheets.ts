import {
  checkCell, findColumn, isNumeric, parseCell, SHEET_NAMES, titleWithUnit,
  type CellContext, type Cells, type CellValue, type Column, type InputColumn, type ParsedCell, type SheetName,
} from '../../schedule/index.ts';
import type { Words } from '../../words/index.ts';
import { railVoltages } from '../rail-voltages.ts';
import type { Reading } from './reading.ts';
import { isHarmful } from './unknown-keys.ts';

type Sheets = Partial<Record<SheetName, Cells[]>>;

/** Reads the sheets of a schedule file, cell by cell as the schema says. */
export function readSheets(value: unknown, reading: Reading): { known: Sheets; unknown: Record<string, unknown> } {
  const { words } = reading;
  if (value === undefined) {
    reading.wrongKind(null, '', words.say('The file has no “sheets”: it must be an object'), 'object');
  }
  const sheets = reading.object(value, '/sheets', words.say('“{text}”', { text: 'sheets' }));
  const known: Sheets = {};
  // Supplies come first, as their voltages turn the watts of device rows into a draw.
  for (const sheet of ['supplies' as const, ...SHEET_NAMES.filter((name) => name !== 'supplies')]) {
    const voltageOf = railVoltages(known.supplies ?? []);
    known[sheet] = reading.array(sheets[sheet], `/sheets/${sheet}`, words.say('The sheet “{sheet}”', { sheet }))
      .map((row, index) => readRow(sheet, index, row, voltageOf, reading));
  }
  const unknown = Object.entries(sheets).filter(([name]) => !(name in known) && !isHarmful(name));
  for (const [name] of unknown) {
    reading.kept.add(
      words.say('The file has the unknown sheet “{sheet}”; it is kept and written back.', { sheet: name })
    );
  }
  return { known, unknown: Object.fromEntries(unknown) };
}

function readRow(
  sheet: SheetName, index: number, value: unknown, voltageOf: ReturnType<typeof railVoltages>, reading: Reading,
): Cells {
  const path = `/sheets/${sheet}/${index}`;
  const { words } = reading;
  const row = reading.object(value, path, words.say('{sheet}, row {row}:', { sheet, row: index + 1 }));
  const context = { voltage: voltageOf(row.rail), words };
  const cells: Cells = {};
  for (const [key, item] of Object.entries(row)) {
    const column = findColumn(sheet, key);
    if (column === undefined) {
      keepUnknown(cells, key, item, sheet, reading);
      continue;
    }
    if (column.role === 'computed' || item === null) continue;
    const parsed = readValue(column, item, context);
    const placed = (sentence: string) => placedInRow(sheet, index + 1, column, sentence, words);
    if (parsed === undefined) {
      reading.wrongKind(item, `${path}/${key}`, placed(words.say('a single value is allowed')), column.kind);
    } else if (!parsed.ok) {
      reading.list.add('value-refused', `${path}/${key}`, placed(parsed.problem), { received: JSON.stringify(item) });
    } else if (parsed.value !== null) {
      cells[key] = parsed.value;
      if (parsed.hint !== undefined) reading.hints.push(placed(`${parsed.hint}.`));
    }
  }
  return cells;
}

/** A sentence about a cell, with its place in the file in front. */
export function placedInRow(sheet: SheetName, row: number, column: Column, sentence: string, words: Words): string {
  return words.say(
    '{sheet}, row {row}, {column}: {sentence}', { sheet, row, column: titleWithUnit(column, words), sentence }
  );
}

/** Cells of a row may carry keys of a later version; nothing but the writer of files looks at them. */
function keepUnknown(cells: Cells, key: string, value: unknown, sheet: SheetName, reading: Reading): void {
  if (isHarmful(key)) return;
  cells[key] = value as CellValue;
  reading.kept.add(
    reading.words.say('The sheet “{sheet}” has the unknown key “{key}”; it is kept and written back.', { sheet, key })
  );
}

/** Texts are read as if they were typed, other values taken as they are; `undefined` for what is not one value. */
function readValue(column: InputColumn, item: unknown, context: CellContext): ParsedCell | undefined {
  if (typeof item === 'string') return parseCell(column, item, context);
  if (typeof item !== 'number' && typeof item !== 'boolean') return undefined;
  // A tag such as 12 may stand without quotes.
  if (typeof item === 'number' && !isNumeric(column)) return parseCell(column, String(item), context);
  const problem = checkCell(column, item, undefined, context.words);
  return problem === undefined ? { ok: true, value: item } : { ok: false, problem };
}

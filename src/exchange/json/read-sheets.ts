import {
  checkCell, findColumn, isNumeric, parseCell, SHEET_NAMES, titleWithUnit,
  type CellContext, type Cells, type CellValue, type InputColumn, type ParsedCell, type SheetName,
} from '../../schedule/index.ts';
import { railVoltages } from '../rail-voltages.ts';
import type { Reading } from './reading.ts';
import { isHarmful } from './unknown-keys.ts';

type Sheets = Partial<Record<SheetName, Cells[]>>;

/** Reads the sheets of a schedule file, cell by cell as the schema says. */
export function readSheets(value: unknown, reading: Reading): { known: Sheets; unknown: Record<string, unknown> } {
  if (value === undefined) reading.wrongKind(null, '', 'The file has no “sheets”: it must be an object', 'object');
  const sheets = reading.object(value, '/sheets', '“sheets”');
  const known: Sheets = {};
  // Supplies come first, as their voltages turn the watts of device rows into a draw.
  for (const sheet of ['supplies' as const, ...SHEET_NAMES.filter((name) => name !== 'supplies')]) {
    const voltageOf = railVoltages(known.supplies ?? []);
    known[sheet] = reading.array(sheets[sheet], `/sheets/${sheet}`, `The sheet “${sheet}”`)
      .map((row, index) => readRow(sheet, index, row, voltageOf, reading));
  }
  const unknown = Object.entries(sheets).filter(([name]) => !(name in known) && !isHarmful(name));
  for (const [name] of unknown) reading.unknownKeys.add(`The file has the unknown sheet “${name}”`);
  return { known, unknown: Object.fromEntries(unknown) };
}

function readRow(
  sheet: SheetName, index: number, value: unknown, voltageOf: ReturnType<typeof railVoltages>, reading: Reading,
): Cells {
  const path = `/sheets/${sheet}/${index}`;
  const row = reading.object(value, path, `${sheet}, row ${index + 1}:`);
  const context = { voltage: voltageOf(row.rail) };
  const cells: Cells = {};
  for (const [key, item] of Object.entries(row)) {
    const column = findColumn(sheet, key);
    if (column === undefined) {
      keepUnknown(cells, key, item, sheet, reading);
      continue;
    }
    if (column.role === 'computed' || item === null) continue;
    const parsed = readValue(column, item, context);
    const place = () => `${sheet}, row ${index + 1}, ${titleWithUnit(column)}`;
    if (parsed === undefined) {
      reading.wrongKind(item, `${path}/${key}`, `${place()}: a single value is allowed`, column.kind);
    } else if (!parsed.ok) {
      reading.list.add('value-refused', `${path}/${key}`, `${place()}: ${parsed.problem}`, { received: JSON.stringify(item) });
    } else if (parsed.value !== null) {
      cells[key] = parsed.value;
      if (parsed.hint !== undefined) reading.hints.push(`${place()}: ${parsed.hint}.`);
    }
  }
  return cells;
}

/** Cells of a row may carry keys of a later version; nothing but the writer of files looks at them. */
function keepUnknown(cells: Cells, key: string, value: unknown, sheet: SheetName, reading: Reading): void {
  if (isHarmful(key)) return;
  cells[key] = value as CellValue;
  reading.unknownKeys.add(`The sheet “${sheet}” has the unknown key “${key}”`);
}

/** Texts are read as if they were typed, other values taken as they are; `undefined` for what is not one value. */
function readValue(column: InputColumn, item: unknown, context: CellContext): ParsedCell | undefined {
  if (typeof item === 'string') return parseCell(column, item, context);
  if (typeof item !== 'number' && typeof item !== 'boolean') return undefined;
  // A tag such as 12 may stand without quotes.
  if (typeof item === 'number' && !isNumeric(column)) return parseCell(column, String(item), context);
  const problem = checkCell(column, item);
  return problem === undefined ? { ok: true, value: item } : { ok: false, problem };
}

import type { ScheduleDocument, SheetName } from '../schedule/index.ts';
import type { Argument } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';
import type { Touched } from './touched.ts';

/** Ids of the rows of a sheet for which something that is read of them, or through their references, was touched. */
export function rowsReading(
  sheet: SheetName, args: readonly Argument[], touched: Touched, document: ScheduleDocument,
  columns: Readonly<Record<SheetName, SheetColumns>>,
): Set<number> {
  if (!touched.rows.has(sheet) && !args.some((arg) => touched.rows.has(arg.sheet))) return new Set();
  const found = rowsTouched(touched, sheet, args.map(({ by, key }) => by ?? key));
  for (const by of new Set(args.map((arg) => arg.by))) {
    if (by === undefined) continue;
    const read = args.filter((arg) => arg.by === by);
    const to = read[0]!.sheet;
    if (!touched.rows.has(to)) continue;
    const rows = rowsTouched(touched, to, read.map(({ key }) => key));
    if (rows.size === 0) continue;
    const isMeant = new Uint8Array(document.capacity(to));
    for (const id of rows) isMeant[id] = 1;
    const targets = columns[sheet].targets.get(by)!;
    const count = document.capacity(sheet);
    for (let id = 0; id < count; id += 1) if (targets[id]! >= 0 && isMeant[targets[id]!] === 1) found.add(id);
  }
  return found;
}

/** Ids of the rows of a sheet of which one of some columns was touched. */
function rowsTouched(touched: Touched, sheet: SheetName, keys: readonly string[]): Set<number> {
  const found = new Set<number>();
  if (!keys.some((key) => touched.concerns(sheet, key))) return found;
  for (const [id, touchedKeys] of touched.rows.get(sheet) ?? []) {
    if (touchedKeys === null || keys.some((key) => touchedKeys.has(key))) found.add(id);
  }
  return found;
}

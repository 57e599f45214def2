import type { ScheduleDocument, SheetName } from '../schedule/index.ts';
import type { Argument } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';
import type { Touched } from './touched.ts';

/**
 * Ids of the rows of a sheet for which something that is read of them, or through their references, was touched: each
 * once.
 */
export function rowsReading(
  sheet: SheetName, args: readonly Argument[], touched: Touched, document: ScheduleDocument,
  columns: Readonly<Record<SheetName, SheetColumns>>,
): readonly number[] {
  const isTouched = args.some((arg) => touched.concerns(arg.sheet, arg.key)
    || (arg.by !== undefined && touched.concerns(sheet, arg.by)));
  if (!isTouched) return [];
  const found = touched.having(sheet, args.map(({ by, key }) => by ?? key));
  let isFound: Uint8Array | undefined;
  for (const by of new Set(args.map((arg) => arg.by))) {
    if (by === undefined) continue;
    const read = args.filter((arg) => arg.by === by);
    const to = read[0]!.sheet;
    const meant = touched.having(to, read.map(({ key }) => key));
    if (meant.length === 0) continue;
    isFound ??= marked(found, document.capacity(sheet));
    addNaming(marked(meant, document.capacity(to)), columns[sheet].targets.get(by)!, isFound, found);
  }
  return found;
}

function marked(ids: readonly number[], capacity: number): Uint8Array {
  const marks = new Uint8Array(capacity);
  for (const id of ids) marks[id] = 1;
  return marks;
}

/** Adds the rows that name one that is meant. Short loops of their own are compiled within the first edits. */
function addNaming(isMeant: Uint8Array, targets: Int32Array, isFound: Uint8Array, found: number[]): void {
  for (let id = 0; id < isFound.length; id += 1) {
    const target = targets[id]!;
    if (target < 0 || isMeant[target] !== 1 || isFound[id] === 1) continue;
    isFound[id] = 1;
    found.push(id);
  }
}

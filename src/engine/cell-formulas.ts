import {
  mapReferences, referencesOf, type CellReference, type Reference, type Row, type ScheduleDocument, type SheetName,
} from '../schedule/index.ts';
import { EMPTY_CELL, type CellLayout } from './cell-layout.ts';
import { RANGE_FUNCTION, TYPED_FUNCTION } from './formula-functions.ts';
import type { PreparedRule } from './schema-rules.ts';
import type { SheetColumns } from './sheet-columns.ts';

/** The formula that works out a rule for one row. */
export function ruleFormula(
  { sheet, args, rule, functionName }: PreparedRule, { id, cells: own }: Row, layout: CellLayout,
  columns: Readonly<Record<SheetName, SheetColumns>>,
): string {
  const cells = args.map((arg) => {
    const needed = rule.onlyWith?.[arg.path];
    if (needed !== undefined && (own[needed] ?? null) === null) return EMPTY_CELL;
    if (arg.by === undefined) return layout.ownAddress(sheet, arg.key, id);
    const target = columns[sheet].target(arg.by, id);
    return target < 0 ? EMPTY_CELL : layout.address(arg.sheet, arg.key, target);
  });
  return `=${functionName}(${cells.join(';')})`;
}

/** Ids of the rows that a reference covers, in order of the document; none when an end of it is gone. */
export function coveredIds({ sheet, from, to }: Reference, document: ScheduleDocument): number[] {
  if (to === undefined) return document.row(sheet, from.id) === undefined ? [] : [from.id];
  const first = document.position(sheet, from.id);
  const last = document.position(sheet, to.id);
  if (first < 0 || last < 0) return [];
  return document.rows(sheet).slice(Math.min(first, last), Math.max(first, last) + 1).map(({ id }) => id);
}

/**
 * A formula that a person typed, as the formula engine calculates it: references become addresses, and the whole is
 * checked against the range of its column. A single cell that it reads makes it unknown while that cell is empty.
 */
export function typedFormula(
  formula: string, sheet: SheetName, key: string, document: ScheduleDocument, layout: CellLayout,
  keysBetween: (reference: Reference) => string[],
): string {
  const single = new Set<string>();
  const cell = (target: SheetName, { key: column, id }: CellReference) => layout.address(target, column, id);
  const body = mapReferences(formula.slice(1), (reference) => {
    const ids = reference === undefined ? [] : coveredIds(reference, document);
    if (reference === undefined || ids.length === 0) return '#REF!';
    if (reference.to === undefined) {
      const address = cell(reference.sheet, reference.from);
      single.add(address);
      return address;
    }
    const keys = keysBetween(reference);
    const ranges = keys.flatMap((column) => blocks(ids).map(([first, last]) => {
      const start = layout.address(reference.sheet, column, first);
      return `${start}:${layout.address(reference.sheet, column, last).split('!')[1]}`;
    }));
    return ranges.length === 1 ? ranges[0]! : `${RANGE_FUNCTION}(${keys.length};${ranges.join(';')})`;
  });
  // The parentheses keep a formula that is no single expression, such as =1;2, from becoming several arguments.
  return `=${TYPED_FUNCTION}("${sheet}.${key}";${[`(${body})`, ...single].join(';')})`;
}

/** Ids that follow one another upwards, as first and last. */
function blocks(ids: readonly number[]): [number, number][] {
  const found: [number, number][] = [];
  for (const id of ids) {
    const last = found.at(-1);
    if (last !== undefined && last[1] + 1 === id) last[1] = id;
    else found.push([id, id]);
  }
  return found;
}

/** The columns that a kept formula reads. */
export function columnsRead(
  formula: string, keysBetween: (reference: Reference) => string[],
): { sheet: SheetName; key: string }[] {
  return referencesOf(formula).flatMap((reference) => {
    if (reference === undefined) return [];
    const keys = reference.to === undefined ? [reference.from.key] : keysBetween(reference);
    return keys.map((key) => ({ sheet: reference.sheet, key }));
  });
}

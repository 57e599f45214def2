import { columnOf, SCHEMA, type ScheduleDocument, type SheetName } from '../schedule/index.ts';
import { argument, isShare, ruleOf, type Argument } from './schema-rules.ts';
import type { Workbook } from './workbook.ts';

/** A cell of any row. */
export type CellPlace = readonly [sheet: SheetName, id: number, key: string];

/**
 * The cell that is to be filled in for a figure to be known as a whole, the first of several: through rules,
 * references, totals and solutions down to what a person enters.
 *
 * @returns one that may be left empty only where no other is; `undefined` where nothing is lacking
 */
export function lackingBehind(document: ScheduleDocument, book: Workbook, place: CellPlace): CellPlace | undefined {
  return found(false) ?? found(true);

  function found(isOptional: boolean): CellPlace | undefined {
    const seen = new Set<string>();
    const search = (each: CellPlace): CellPlace | undefined => {
      const [sheet, id, key] = each;
      const name = each.join(' ');
      if (seen.has(name)) return undefined;
      seen.add(name);
      const column = columnOf(sheet, key);
      const isWhole = column.kind === 'reference' ? book.target(sheet, id, key) >= 0
        : book.value(sheet, id, key) !== null && !book.isPartial(sheet, id, key)
          && !(sheet === 'factors' && book.cases.isFactorUnsure(id));
      if (isWhole) return undefined;
      if (column.role === 'input') {
        const isEmpty = (document.row(sheet, id)?.cells[key] ?? null) === null;
        if (isEmpty && column.optional === true && !isOptional) return undefined;
        if (!isEmpty || column.derived === undefined) return each;
      }
      for (const behind of read(each)) {
        const cell = search(behind);
        if (cell !== undefined) return cell;
      }
      return column.role === 'input' ? each : undefined;
    };
    return search(place);
  }

  /** The cells that a figure is worked out from. */
  function* read([sheet, id, key]: CellPlace): Generator<CellPlace> {
    const args = (of: readonly Argument[], from: SheetName, at: number): CellPlace[] => of.map(({ by, ...arg }) => {
      const target = by === undefined ? at : book.target(from, at, by);
      return target < 0 ? [from, at, by!] : [arg.sheet, target, arg.key];
    });
    const column = columnOf(sheet, key);
    yield* args(ruleOf(sheet, key)?.args ?? [], sheet, id);
    const total = column.role === 'computed' ? column.total : undefined;
    for (const part of total?.of ?? []) {
      const { from, by, sum, times } = part;
      for (const member of book.members(from, by, id)) {
        for (const each of [sum, times]) if (each !== undefined) yield [from, member, each];
        if (isShare(part)) yield* factorsOf(from, member);
      }
    }
    for (const { gives, of, from, by, each, diversity } of SCHEMA[sheet].solutions ?? []) {
      if (!gives.includes(key)) continue;
      yield* args(of.map((path) => argument(sheet, path)), sheet, id);
      const ofEach = each.map((path) => argument(from, path));
      for (const member of book.members(from, by, id)) {
        yield* args(ofEach, from, member);
        if (diversity !== undefined) yield* factorsOf(from, member);
      }
    }
  }

  /** The factors that cases give the group of a row. */
  function factorsOf(sheet: SheetName, id: number): CellPlace[] {
    const group = book.value(sheet, id, 'group');
    return group === null ? [] : document.rows('factors').filter(({ cells }) => cells.group === group)
      .map((row) => ['factors', row.id, 'factor']);
  }
}

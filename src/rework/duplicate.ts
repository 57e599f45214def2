import type { LoadSchedule } from '../load-schedule.ts';
import {
  formulasIn, inputColumns, insertRows, nextTags, SCHEMA, SHEET_NAMES, tagOf, withOtherIds, type Cells, type Change,
  type Row, type SheetName,
} from '../schedule/index.ts';
import { belongingRows, DUPLICATED, type DuplicatedSheet, type DuplicateOf, type RowIds } from './belonging.ts';
import { beginsWith, begunOtherwise, nextText, renamedTag, type Renaming } from './renamed.ts';

/** A row that is copied. */
export interface CopiedRow {
  readonly sheet: DuplicatedSheet;
  /** Id of the original. */
  readonly id: number;
  /** Tag of the original, empty for none. */
  readonly from: string;
  /** Tag of the copy. */
  readonly to: string;
  /**
   * Why the copy cannot have that tag: another row has it already (`taken`), rows name it though none has it, which the
   * copy would take on (`named`), another copy gets it too (`twice`), or it is empty (`missing`).
   */
  readonly problem?: 'taken' | 'named' | 'twice' | 'missing';
  /** Number of the row that has it, from 1. */
  readonly takenBy?: number;
}

/** How something is duplicated. */
export interface Duplication {
  readonly of: DuplicateOf;
  /** Texts that become others in tags; a tag with none of them gets the next free one. */
  readonly tags: readonly Renaming[];
  /** How areas begin, and are to begin. */
  readonly area?: Renaming | undefined;
  /** Tags that are chosen for single copies, by `sheet id` of the original: `runs 3`. */
  readonly chosen?: ReadonlyMap<string, string>;
}

/** What a duplication comes to. */
export interface DuplicatePlan {
  /** The copies, sheet by sheet. */
  readonly rows: readonly CopiedRow[];
  /** None while a tag is refused. */
  readonly changes: readonly Change[];
}

/** What is true of the original alone: what was measured on it, where it was counted, its address and number. */
const ITS_OWN: ReadonlySet<string> = new Set(['source', 'address', 'serial', ...DUPLICATED.flatMap((sheet) =>
  inputColumns(sheet).filter(({ rare }) => rare === 'measured').map(({ key }) => key))]);

/**
 * How tags and areas may become others, to begin with: each supply, branch and module gets the next free tag of its
 * sheet, and what bears it in its tag follows; an area goes on to the next number that is free. Some device rows or
 * outputs of an area are more of the same there, and stay in it.
 */
export function proposeRenamings(schedule: LoadSchedule, of: DuplicateOf): Pick<Duplication, 'tags' | 'area'> {
  const rows = belongingRows(schedule, of);
  const tags = (['supplies', 'branches', 'modules'] as const).flatMap((sheet) => {
    const taken = new Set([...schedule.rows(sheet).map((row) => tagOf(sheet, row)), ...namedTags(schedule, sheet)]);
    return rows[sheet].map((id) => tagOf(sheet, schedule.document.row(sheet, id)!)).filter((tag) => tag !== '')
      .map((from) => {
        const [to] = nextTags(from, 1, taken) as [string];
        taken.add(to);
        return { from, to };
      });
  });
  const areas = (['devices', 'outputs'] as const).flatMap((sheet) => schedule.rows(sheet).map(({ cells }) => cells.area))
    .filter((area) => typeof area === 'string');
  const from = 'area' in of ? of.area : commonArea(schedule, rows);
  if (from === '' || isPartOf(schedule, of, from)) return { tags };
  return { tags, area: { from, to: nextText(from, (text) => areas.some((area) => beginsWith(area, text))) } };
}

/** Whether device rows or outputs were chosen that leave others of their area behind. */
function isPartOf(schedule: LoadSchedule, of: DuplicateOf, area: string): boolean {
  if ('area' in of || (of.sheet !== 'devices' && of.sheet !== 'outputs')) return false;
  return schedule.rows(of.sheet).some(({ id, cells }) =>
    !of.ids.includes(id) && typeof cells.area === 'string' && beginsWith(cells.area, area));
}

/** How all areas of some rows begin, up to the first number; empty where they have no such beginning in common. */
function commonArea(schedule: LoadSchedule, rows: RowIds): string {
  const beginnings = new Set((['devices', 'outputs'] as const).flatMap((sheet) => rows[sheet].map((id) => {
    const { area } = schedule.document.row(sheet, id)!.cells;
    return typeof area === 'string' ? /^\D*\d+/.exec(area)?.[0] ?? '' : '';
  })));
  return beginnings.size === 1 ? [...beginnings][0]! : '';
}

/**
 * Duplicates rows with all that belongs to them, see `belongingRows`. References among them name the copies, others
 * stay; formulas go on with the copies of the rows that they name. What is true of an original alone, as measured
 * values and what was accepted, is not copied. The copies stand at the end of their sheets.
 */
export function duplicateRows(schedule: LoadSchedule, duplication: Duplication): DuplicatePlan {
  const { document } = schedule;
  const ids = belongingRows(schedule, duplication.of);
  const rows = DUPLICATED.flatMap((sheet) => copiesOf(schedule, sheet, ids[sheet], duplication));
  if (rows.some(({ problem }) => problem !== undefined)) return { rows, changes: [] };

  const tags = new Map(rows.map(({ sheet, from, to }) => [`${sheet} ${from}`, to]));
  const copyIds = new Map<string, number>(DUPLICATED.flatMap((sheet) => {
    const free = document.freeIds(sheet, ids[sheet].length);
    return ids[sheet].map((id, index) => [`${sheet} ${id}`, free[index]!] as const);
  }));
  const copy = ({ sheet, id, to }: CopiedRow): Cells => {
    const { cells } = document.row(sheet, id)!;
    // References among the copied rows name the copies; a range does where both of its ends are copied.
    const formulas = new Map(formulasIn(sheet, cells).map(([key, formula]) =>
      [key, withOtherIds(formula, (of, id) => copyIds.get(`${of} ${id}`), (reference) => reference)]));
    const references = new Map(inputColumns(sheet).flatMap((column) => column.to === undefined ? []
      : [[column.key, tags.get(`${column.to} ${String(cells[column.key])}`)] as const]));
    const { area } = cells;
    return {
      ...Object.fromEntries(Object.entries(cells).filter(([key]) => !ITS_OWN.has(key))
        .map(([key, value]) => [key, formulas.get(key) ?? references.get(key) ?? value])),
      ...to === '' ? {} : { [SCHEMA[sheet].tag]: to },
      ...duplication.area === undefined || typeof area !== 'string' ? {}
        : { area: begunOtherwise(area, duplication.area) },
    };
  };
  return {
    rows,
    changes: DUPLICATED.flatMap((sheet) => insertRows(document, sheet, document.rows(sheet).length,
      rows.filter((row) => row.sheet === sheet).map(copy))),
  };
}

function copiesOf(
  schedule: LoadSchedule, sheet: DuplicatedSheet, ids: readonly number[], { tags, chosen }: Duplication,
): CopiedRow[] {
  const places = new Map(schedule.rows(sheet).map((row, index) => [tagOf(sheet, row), index + 1]));
  const named = namedTags(schedule, sheet);
  const taken = new Set([...places.keys(), ...named]);
  const given = new Map<string, string>();
  const tagFor = (row: Row): string => {
    const from = tagOf(sheet, row);
    const own = chosen?.get(`${sheet} ${row.id}`);
    if (own !== undefined || from === '') return own?.trim() ?? '';
    // Rows that share a tag, as parts of one device, share that of their copies.
    const known = given.get(from);
    if (known !== undefined) return known;
    const renamed = renamedTag(from, tags);
    const to = renamed === from ? nextTags(from, 1, taken)[0]! : renamed;
    taken.add(to);
    given.set(from, to);
    return to;
  };
  const copies = ids.map((id) => {
    const row = schedule.document.row(sheet, id)!;
    return { sheet, id, from: tagOf(sheet, row), to: tagFor(row) };
  });
  const firstOf = new Map<string, string>();
  for (const { from, to } of copies) if (!firstOf.has(to)) firstOf.set(to, from);
  return copies.map((copy): CopiedRow => {
    const { from, to } = copy;
    const takenBy = places.get(to);
    if (to === '') return from === '' ? copy : { ...copy, problem: 'missing' };
    if (takenBy !== undefined) return { ...copy, problem: 'taken', takenBy };
    if (named.has(to)) return { ...copy, problem: 'named' };
    return firstOf.get(to) === from ? copy : { ...copy, problem: 'twice' };
  });
}

/** Tags of a sheet that cells name, whether a row has them or not. */
function namedTags(schedule: LoadSchedule, sheet: SheetName): Set<string> {
  return new Set(SHEET_NAMES.flatMap((from) => inputColumns(from).filter(({ to }) => to === sheet).flatMap(({ key }) =>
    schedule.rows(from).map(({ cells }) => cells[key]).filter((tag) => typeof tag === 'string'))));
}

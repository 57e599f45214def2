import {
  identityOf, isBlank, nameOf, SCHEMA, SHEET_NAMES, type Cells, type Content, type Row, type SheetName,
} from '../../schedule/index.ts';
import { matchRows, pairRows } from '../../schedule/compare/index.ts';

/** The schedules that are joined; `base` is what both began with, where that is known. */
export interface Sides {
  readonly mine: Content;
  readonly theirs: Content;
  readonly base: Content | undefined;
}

/** A row of what two schedules make together, by its places in them, from 0. */
export interface JointRow {
  readonly sheet: SheetName;
  /** Names it among its sheet in what a person decides: its tag, or its number where that tells nothing. */
  readonly name: string;
  /** What tells it from the others, as persons read it: its tag, or «evening, blinds». */
  readonly tag: string;
  readonly base?: number;
  readonly mine?: number;
  readonly theirs?: number;
}

/** The rows of a sheet, those of mine in their order, each other one behind the row that it stands below in theirs. */
export interface JointSheet {
  readonly rows: readonly JointRow[];
  /** Whether rows of theirs stand in another order than in the base, which is not taken over. */
  readonly isMoved: boolean;
}

/**
 * Says which rows of two schedules are the same. With a base: those that come from one row of it, then those that both
 * added under one tag or with equal content. Without one, by tag and equal content. Since a quantity must not be
 * doubled, device rows without a ref are the same by the line of the list that they were counted in and, without a
 * base, by area and type.
 */
export function jointRows(sides: Sides): Record<SheetName, JointSheet> {
  return Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, jointSheet(sheet, sides)])) as never;
}

/** Cells as files hold them, which name rows by tag: so formulas are the same wherever their rows stand. */
const rowsIn = (content: Content | undefined, sheet: SheetName): readonly Row[] =>
  (content?.sheets[sheet] ?? []).map((cells, id) => ({ id, cells }));

function jointSheet(sheet: SheetName, sides: Sides): JointSheet {
  const [base, mine, theirs] = [sides.base, sides.mine, sides.theirs].map((each) => rowsIn(each, sheet)) as
    [readonly Row[], readonly Row[], readonly Row[]];
  const [inMine, inTheirs] = [matchRows(sheet, base, mine), matchRows(sheet, base, theirs)];
  const places = ({ pairs }: typeof inMine) => new Map(pairs.map((pair) => [pair.before.id, pair.after.id]));
  const [mineOf, theirsOf] = [places(inMine), places(inTheirs)];
  const added = pairRows(inMine.added, inTheirs.added, namesOf(sheet, sides.base !== undefined));

  const sources = new Map<number, Omit<JointRow, 'sheet' | 'name' | 'tag'>>();
  for (const { id } of mine) sources.set(id, { mine: id });
  const others = new Map<number, Omit<JointRow, 'sheet' | 'name' | 'tag'>>();
  for (const { id } of theirs) if (!isBlank(theirs[id]!)) others.set(id, { theirs: id });
  for (const [one, other] of added) {
    sources.set(one.id, { mine: one.id, theirs: other.id });
    others.delete(other.id);
  }
  for (const { id } of base) {
    const [own, other] = [mineOf.get(id), theirsOf.get(id)];
    if (own !== undefined) sources.set(own, { base: id, mine: own, ...(other === undefined ? {} : { theirs: other }) });
    if (other === undefined) continue;
    if (own === undefined) others.set(other, { base: id, theirs: other });
    else others.delete(other);
  }
  const rows = withOthers([...sources.values()], others, theirs.length);
  const tagIn = ({ mine: own, theirs: other }: Omit<JointRow, 'sheet' | 'name' | 'tag'>) =>
    nameOf(sheet, own === undefined ? theirs[other!]! : mine[own]!);
  const counts = new Map<string, number>();
  for (const row of rows) counts.set(tagIn(row), (counts.get(tagIn(row)) ?? 0) + 1);
  return {
    isMoved: inTheirs.pairs.some(({ isMoved }) => isMoved),
    rows: rows.map((row) => {
      const tag = tagIn(row);
      const number = row.mine === undefined ? `theirs ${row.theirs! + 1}` : String(row.mine + 1);
      return { ...row, sheet, tag, name: tag !== '' && counts.get(tag) === 1 ? tag : `#${number}` };
    }),
  };
}

/** Puts each row that only theirs has behind the one above it in theirs; behind all rows where that is not there. */
function withOthers<Each extends Omit<JointRow, 'sheet' | 'name' | 'tag'>>(
  rows: readonly Each[], others: ReadonlyMap<number, Each>, count: number,
): Each[] {
  const byTheirs = new Map(rows.flatMap((row): [number, Each][] =>
    row.theirs === undefined ? [] : [[row.theirs, row]]));
  const behind = new Map<Each | undefined, Each[]>();
  let above: Each | undefined;
  for (let place = 0; place < count; place += 1) {
    above = byTheirs.get(place) ?? above;
    const other = others.get(place);
    if (other === undefined) continue;
    const waiting = behind.get(above);
    if (waiting === undefined) behind.set(above, [other]);
    else waiting.push(other);
  }
  return [...rows.flatMap((row) => [row, ...behind.get(row) ?? []]), ...behind.get(undefined) ?? []];
}

function namesOf(sheet: SheetName, hasBase: boolean): ((row: Row) => string | undefined)[] {
  const content = ({ cells }: Row) =>
    JSON.stringify(Object.entries(cells).filter(([, value]) => value !== null)
      .sort(([one], [other]) => (one < other ? -1 : 1)));
  const names = [content, (row: Row) => identityOf(sheet, row)];
  return sheet !== 'devices' ? names : hasBase ? [...names, sourceOf] : [...names, sourceOf, kindOfDevice];
}

/** Both counted it in the same line of the same list. */
function sourceOf({ cells: { ref = null, source = null, type = null } }: Row): string | undefined {
  return ref === null && source !== null ? JSON.stringify([source, type]) : undefined;
}

function kindOfDevice({ cells: { ref = null, area = null, type = null } }: Row): string | undefined {
  return ref === null && type !== null ? JSON.stringify([area, type]) : undefined;
}

/** The cells of a row in one of the schedules, as files hold them; `undefined` where it is not in it. */
export function cellsOf(sides: Sides, row: JointRow, side: keyof Sides): Cells | undefined {
  const place = row[side];
  return place === undefined ? undefined : sides[side]?.sheets[row.sheet]?.[place];
}

/** Key of the column that names rows of a sheet. */
export const tagKey = (sheet: SheetName) => SCHEMA[sheet].tag;

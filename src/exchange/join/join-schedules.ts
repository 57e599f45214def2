import {
  findColumn, isFormula, nextTags, referencesOf, removeRows, SCHEMA, ScheduleDocument, SHEET_NAMES, toContent,
  toSnapshot, withOtherIds, type Acceptance, type Cells, type CellValue, type Content, type Revision, type Row,
  type RowAcceptance, type SheetName, type Snapshot, type Variant,
} from '../../schedule/index.ts';
import { isSameData } from '../../schedule/compare/index.ts';
import { cellsOf, jointRows, tagKey, type JointRow, type Sides } from './joint-rows.ts';
import { partedUnits } from './parted-units.ts';
import { Decisions, joinByName, joinValues, type JoinChoice, type JoinConflict } from './three-way.ts';

/** A row that came, changed or went because of theirs. */
export interface JoinedRow {
  readonly sheet: SheetName;
  readonly tag: string;
  /** Keys of the cells that were taken from theirs; empty for a row that came or went. */
  readonly keys: readonly string[];
}

/** Two schedules as one. */
export interface Join {
  readonly content: Content;
  readonly added: readonly JoinedRow[];
  readonly changed: readonly JoinedRow[];
  readonly removed: readonly JoinedRow[];
  /** Names of details, revisions, acceptances and other things that were taken from theirs. */
  readonly others: readonly string[];
  /** Sheets whose rows theirs have in another order than the base; the order of mine stands. */
  readonly moved: readonly SheetName[];
  /** What is known of what both began with: it was given, or an issue is the last that both list; else nothing. */
  readonly begun: 'given' | Revision | null;
  /** What both changed; where nothing was decided, mine stands, and so does a row that something still reads. */
  readonly conflicts: readonly JoinConflict[];
}

/**
 * Joins two schedules, cell by cell: what one of them changed since their common base, or has in the place of nothing
 * where there is no base. What both changed, each in its own way, is a conflict. Rows are matched by tag; those that
 * only one of them has stay, unless the other one removed them from the base. Nothing of either is missing in what is
 * made or among the conflicts, apart from blank rows of theirs, their order of rows, and their view.
 * @param choices what was decided about conflicts, by their names.
 * @throws RangeError for a content with a formula that cannot be read.
 */
export function joinSchedules(
  mine: Content, theirs: Content, base?: Content, choices: Readonly<Record<string, JoinChoice>> = {},
): Join {
  return new Joining({ mine, theirs, base }, new Decisions(choices)).join();
}

type Side = keyof Sides;

/** A row as it is being made. */
interface MadeRow extends JointRow {
  readonly id: number;
  /** It is two things under one tag: the place of theirs, which is a row of its own. */
  readonly twin?: number;
  /** Another row of mine has the tag of this one of theirs. */
  readonly isTaken?: true;
  /** The tag that it is given in the place of one that is taken. */
  readonly renamed?: string;
}

class Joining {
  readonly #sides: Sides;
  readonly #decisions: Decisions;
  readonly #snapshots: Partial<Record<Side, Snapshot>>;
  /** The rows of each sheet, all that are to be in it and all that may have to go. */
  readonly #rows = {} as Record<SheetName, readonly MadeRow[]>;
  /** Ids in what is made by the places in each of the schedules. */
  readonly #ids = { base: {}, mine: {}, theirs: {} } as Record<Side, Record<SheetName, Map<number, number>>>;
  /** The tags that rows of theirs are given, by those that they had. */
  readonly #renamed = {} as Record<SheetName, Map<string, string>>;
  readonly #moved: SheetName[] = [];
  readonly #cells = new Map<MadeRow, { readonly cells: Cells; readonly keys: readonly string[] }>();
  readonly #others: string[] = [];
  /** Parts of device rows that count as one side has them, all of a unit together. */
  readonly #parts = new Map<MadeRow, 'mine' | 'theirs'>();

  constructor(sides: Sides, decisions: Decisions) {
    this.#sides = sides;
    this.#decisions = decisions;
    this.#snapshots = Object.fromEntries((['base', 'mine', 'theirs'] as const).flatMap((side) => {
      const content = sides[side];
      return content === undefined ? [] : [[side, snapshotOf(content)]];
    }));
  }

  join(): Join {
    const joint = jointRows(this.#sides);
    for (const sheet of SHEET_NAMES) {
      if (this.#sides.base !== undefined && joint[sheet].isMoved) this.#moved.push(sheet);
      this.#number(sheet, joint[sheet].rows);
    }
    this.#askOfParts();
    for (const sheet of SHEET_NAMES) for (const row of this.#rows[sheet]) this.#cells.set(row, this.#joinCells(row));
    const gone = this.#goneRows();
    const accepted = new Map(SHEET_NAMES.flatMap((sheet) => this.#rows[sheet].map((row) =>
      [row, gone.has(row) ? [] : this.#joinAcceptances(row)] as const)));
    const sheets = Object.fromEntries(SHEET_NAMES.map((sheet) => [sheet, this.#rows[sheet].map((row): Row => {
      const own = accepted.get(row)!;
      return { id: row.id, cells: this.#cells.get(row)!.cells, ...(own.length === 0 ? {} : { accepted: own }) };
    })])) as Record<SheetName, Row[]>;
    const document = new ScheduleDocument({ ...this.#snapshots.mine!, sheets, ...this.#joinOthers() });
    for (const sheet of SHEET_NAMES) {
      const ids = this.#rows[sheet].filter((row) => gone.has(row)).map(({ id }) => id);
      document.perform(removeRows(document, sheet, ids));
    }
    const stays = SHEET_NAMES.flatMap((sheet) => this.#rows[sheet]).filter((row) => !gone.has(row));
    const told = (row: MadeRow): JoinedRow => {
      const { sheet, tag, renamed = tag, mine } = row;
      return { sheet, tag: renamed, keys: mine === undefined ? [] : this.#cells.get(row)!.keys };
    };
    return {
      content: toContent(document),
      added: stays.filter(({ mine }) => mine === undefined).map(told),
      changed: stays.filter((row) => row.mine !== undefined && this.#cells.get(row)!.keys.length > 0).map(told),
      removed: [...gone].filter(({ mine }) => mine !== undefined).map((row) => ({ ...told(row), keys: [] })),
      others: this.#others, moved: this.#moved, begun: begunWith(this.#sides), conflicts: this.#decisions.conflicts,
    };
  }

  /** Gives rows their ids: those of mine keep theirs, so that a formula of mine is the same as it was. */
  #number(sheet: SheetName, joint: readonly JointRow[]): void {
    let next = this.#snapshots.mine!.sheets[sheet].length;
    const tags = new Set([this.#sides.mine, this.#sides.theirs].flatMap((content) =>
      (content.sheets[sheet] ?? []).map((cells) => String(cells[tagKey(sheet)]))));
    const renamed = this.#renamed[sheet] = new Map();
    const newTag = (tag: string) => {
      const [given] = nextTags(tag, 1, tags) as [string];
      tags.add(given);
      renamed.set(tag, given);
      return given;
    };
    // What is named by several cells together gets no other name: two of one name are told as what they are.
    const isTagged = SCHEMA[sheet].named === undefined;
    const ofMine = new Map(joint.filter(({ mine }) => mine !== undefined).map((row) => [row.tag, row]));
    this.#rows[sheet] = joint.flatMap((row): MadeRow[] => {
      const name = `${sheet}/${row.name}`;
      if (row.mine === undefined) {
        // A tag that mine gave another row, which theirs does not have or calls otherwise.
        const other = row.base === undefined && row.tag !== '' && isTagged ? ofMine.get(row.tag) : undefined;
        const isTaken = other !== undefined && this.#tagIn(other, 'theirs') !== row.tag;
        const isBoth = isTaken && this.#decisions.of(name) === 'both';
        return [{
          ...row, id: next++, ...(isTaken ? { isTaken } : {}), ...(isBoth ? { renamed: newTag(row.tag) } : {}),
        }];
      }
      if (row.base !== undefined || row.theirs === undefined || !isTagged || !this.#decisions.isBoth(name)) {
        return [{ ...row, id: row.mine }];
      }
      const { theirs, ...own } = row;
      const { mine: _mine, ...other } = row;
      const given = row.tag === '' ? {} : { renamed: newTag(row.tag) };
      return [{ ...own, id: row.mine, twin: theirs }, { ...other, id: next++, ...given }];
    });
    for (const side of ['base', 'mine', 'theirs'] as const) {
      this.#ids[side][sheet] = new Map(this.#rows[sheet].flatMap((row): [number, number][] => {
        const place = row[side];
        return place === undefined ? [] : [[place, row.id]];
      }));
    }
  }

  #tagIn(row: JointRow, side: Side): CellValue {
    return cellsOf(this.#sides, row, side)?.[tagKey(row.sheet)] ?? null;
  }

  /** What a cell of one of the schedules holds, naming rows as they are called in what is made. */
  #cell({ sheet, renamed, ...row }: MadeRow, side: Side, key: string): CellValue {
    const place = row[side];
    const value = place === undefined ? undefined : this.#snapshots[side]?.sheets[sheet][place]!.cells[key];
    if (value === undefined || value === null) return null;
    const column = findColumn(sheet, key);
    if (side === 'theirs' && key === tagKey(sheet) && renamed !== undefined) return renamed;
    if (side === 'theirs' && column?.role === 'input' && column.to !== undefined && typeof value === 'string') {
      return this.#renamed[column.to].get(value) ?? value;
    }
    return isFormula(value) && column !== undefined && column.kind !== 'text'
      ? withOtherIds(value, (to, id) => this.#ids[side][to].get(id)) : value;
  }

  #joinCells(row: MadeRow): { readonly cells: Cells; readonly keys: readonly string[] } {
    const { sheet } = row;
    const files = (side: Side) => cellsOf(this.#sides, row, side);
    if (row.twin !== undefined) this.#askOfTwins(row, this.#sides.theirs.sheets[sheet]![row.twin]!);
    const sides = (['mine', 'theirs'] as const).filter((side) => row[side] !== undefined);
    if (sides.length === 1) {
      const own = Object.keys(files(sides[0]!)!);
      return { cells: Object.fromEntries(own.map((key) => [key, this.#cell(row, sides[0]!, key)])), keys: [] };
    }
    const cells: Cells = {};
    const keys: string[] = [];
    for (const key of new Set([...Object.keys(files('mine')!), ...Object.keys(files('theirs')!)])) {
      const [was, own, other] = (['base', 'mine', 'theirs'] as const).map((side) => this.#cell(row, side, key));
      const parts = key === 'qty' && own !== other ? this.#parts.get(row) : undefined;
      let outcome = parts ?? joinValues(row.base === undefined ? undefined : was, own, other);
      // Nobody knows whether one of them entered it or the other one took it out.
      const isOneSided = this.#sides.base === undefined && (own === null) !== (other === null);
      const isTaken = outcome === 'theirs' && key === tagKey(sheet) && SCHEMA[sheet].named === undefined
        && this.#isTagOfMine(sheet, other!);
      if (parts === undefined && (outcome === 'conflict' || isTaken || isOneSided)) {
        outcome = this.#decisions.ask({
          ...this.#placeOf(row, 'cell', key), base: files('base')?.[key] ?? null, mine: files('mine')![key] ?? null,
          theirs: files('theirs')![key] ?? null,
          choices: row.base === undefined && !isOneSided && SCHEMA[sheet].named === undefined
            ? ['mine', 'theirs', 'both'] : ['mine', 'theirs'],
        }, outcome === 'theirs' && !isTaken ? 'theirs' : 'mine') === 'theirs' ? 'theirs' : 'mine';
      }
      if (outcome === 'theirs') keys.push(key);
      const value = (outcome === 'theirs' ? other : own) ?? null;
      if (value !== null) cells[key] = value;
    }
    return { cells, keys };
  }

  /** Two things under one tag: what differs stays to be decided otherwise. */
  #askOfTwins(row: MadeRow, theirs: Cells): void {
    const mine = cellsOf(this.#sides, row, 'mine')!;
    for (const key of new Set([...Object.keys(mine), ...Object.keys(theirs)])) {
      const [own, other] = [mine[key] ?? null, theirs[key] ?? null];
      if (joinValues(undefined, own, other) !== 'conflict') continue;
      const place = this.#placeOf(row, 'cell', key);
      this.#decisions.conflicts.push(
        { ...place, base: null, mine: own, theirs: other, choices: ['mine', 'theirs', 'both'], choice: 'both' });
    }
  }

  #isTagOfMine(sheet: SheetName, tag: CellValue): boolean {
    return (this.#sides.mine.sheets[sheet] ?? []).some((cells) => cells[tagKey(sheet)] === tag);
  }

  #placeOf(row: JointRow, kind: JoinConflict['kind'], key = '') {
    const { sheet, name, tag, mine, theirs } = row;
    const number = (place: number | undefined) => place === undefined ? null : place + 1;
    const holds = cellsOf(this.#sides, row, mine === undefined ? 'theirs' : 'mine')!;
    return {
      name: `${sheet}/${name}${key === '' ? '' : `/${key}`}`, kind, sheet, tag, key,
      row: { mine: number(mine), theirs: number(theirs), holds },
    };
  }

  /** Device rows that were parted: a row of them that is joined by itself would lose or double a quantity. */
  #askOfParts(): void {
    for (const unit of partedUnits(this.#sides, this.#rows.devices)) {
      const rowsOf = (side: Side) => {
        const rows = unit.map((row) => cellsOf(this.#sides, row, side)).filter((cells) => cells !== undefined);
        return rows.length === 0 ? null : rows;
      };
      const choice = this.#decisions.ask({
        ...this.#placeOf(unit[0]!, 'parts', 'qty'), base: rowsOf('base'), mine: rowsOf('mine'), theirs: rowsOf('theirs'),
        choices: ['mine', 'theirs'],
      });
      for (const row of unit) this.#parts.set(row, choice === 'theirs' ? 'theirs' : 'mine');
    }
  }

  /** Rows that are not to stay: those that one side removed from the base, unless the other changed or reads them. */
  #goneRows(): ReadonlySet<MadeRow> {
    const gone = new Set<MadeRow>();
    const isRead = this.#readRows();
    for (const sheet of SHEET_NAMES) {
      for (const row of this.#rows[sheet]) {
        const files = (side: Side) => cellsOf(this.#sides, row, side) ?? null;
        const ask = (kind: 'removed' | 'tag', choices: readonly JoinChoice[], otherwise?: JoinChoice) => this.#decisions.ask(
          { ...this.#placeOf(row, kind), base: files('base'), mine: files('mine'), theirs: files('theirs'), choices },
          otherwise);
        const parts = this.#parts.get(row);
        if (parts !== undefined) {
          if (row[parts] === undefined) gone.add(row);
        } else if (row.base !== undefined && (row.mine === undefined || row.theirs === undefined)) {
          const side = row.mine === undefined ? 'theirs' : 'mine';
          const isUsed = isRead.has(row) || !isSameData(...this.#before(row, side));
          const remover = side === 'mine' ? 'theirs' : 'mine';
          const counts = isUsed ? ask('removed', ['mine', 'theirs'], isRead.has(row) ? side : 'mine') : remover;
          if (counts === remover) gone.add(row);
        } else if (row.isTaken === true && ask('tag', ['mine', 'both']) === 'mine') gone.add(row);
      }
    }
    return gone;
  }

  /** What a row that one side has held in the base, and what it holds there now. */
  #before(row: MadeRow, side: Side): [before: Cells, after: Cells] {
    const keys = Object.keys({ ...cellsOf(this.#sides, row, 'base'), ...cellsOf(this.#sides, row, side) });
    const cells = (from: Side) => Object.fromEntries(keys.map((key) => [key, this.#cell(row, from, key)]));
    return [cells('base'), cells(side)];
  }

  /** Rows that one side removed and a cell reads or names that only the other side has so, and the base had not. */
  #readRows(): ReadonlySet<MadeRow> {
    const by = (nameOf: (row: MadeRow) => CellValue) => new Map(SHEET_NAMES.map((sheet) =>
      [sheet, new Map(this.#rows[sheet].map((row) => [nameOf(row), row]))]));
    const [byId, byTag] = [by(({ id }) => id), by(({ renamed, tag }) => renamed ?? tag)];
    const read = new Set<MadeRow>();
    for (const row of SHEET_NAMES.flatMap((sheet) => this.#rows[sheet])) {
      for (const [key, value] of Object.entries(this.#cells.get(row)!.cells)) {
        const column = findColumn(row.sheet, key);
        if (column?.role !== 'input' || (column.to === undefined && !isFormula(value))) continue;
        if (value === this.#cell(row, 'base', key)) continue;
        const [isOfMine, isOfTheirs] = [value === this.#cell(row, 'mine', key), value === this.#cell(row, 'theirs', key)];
        if (isOfMine && isOfTheirs) continue;
        const corners = isFormula(value) && column.kind !== 'text'
          ? referencesOf(value).flatMap((each) => [each?.from, each?.to].map((corner) =>
            corner && byId.get(each!.sheet)!.get(corner.id)))
          : [column.to && byTag.get(column.to)!.get(value)];
        for (const target of corners) {
          if (target?.[isOfMine ? 'mine' : 'theirs'] !== undefined) read.add(target);
        }
      }
    }
    return read;
  }

  #joinAcceptances(row: MadeRow): readonly RowAcceptance[] {
    const of = (side: Side) => {
      const place = row[side];
      const own = place === undefined ? undefined : this.#snapshots[side]?.sheets[row.sheet][place]!.accepted;
      return new Map((own ?? []).map((each) => [`${each.rule}${each.key === undefined ? '' : ` ${each.key}`}`, each]));
    };
    const place = (name: string) => this.#placeOf(row, 'acceptance', `accepted/${name}`);
    const joined = joinByName(row.base === undefined ? undefined : of('base'), of('mine'), of('theirs'), this.#decisions,
      place, (name) => { if (row.mine !== undefined) this.#others.push(place(name).name); });
    return [...joined.values()];
  }

  /** What stands beside the rows. */
  #joinOthers(): Pick<Snapshot, 'details' | 'revisions' | 'lists' | 'variants' | 'unknown' | 'unattached'> {
    const all = <Thing>(
      kind: JoinConflict['kind'], thingsOf: (snapshot: Snapshot, content: Content) => Iterable<readonly [string, Thing]>,
    ): Map<string, Thing> => {
      const [base, mine, theirs] = (['base', 'mine', 'theirs'] as const).map((side) => {
        const snapshot = this.#snapshots[side];
        return snapshot && new Map(thingsOf(snapshot, this.#sides[side]!));
      });
      const place = (name: string) => ({ name: `${kind}/${name}`, kind, sheet: '', tag: '', key: name });
      const took = (name: string) => { this.#others.push(place(name).name); };
      return joinByName(base, mine!, theirs!, this.#decisions, place, took);
    };
    const meanings = all('list', ({ lists = {} }) => byPlace(lists as Snapshot['unknown']));
    return {
      details: Object.fromEntries(all('detail', ({ details }) => Object.entries(details))),
      revisions: [...all<Revision>('revision', ({ revisions }) => named(revisions, ({ revision }) => revision)).values()],
      lists: this.#snapshots.mine!.lists === undefined && meanings.size === 0 ? undefined
        : { ...this.#snapshots.mine!.lists, ...unknownFrom(meanings) },
      variants: [...all<Variant>('variant', ({ variants = [] }) => named(variants, ({ name }) => name)).values()],
      unknown: unknownFrom(all('other', ({ unknown }) => byPlace(unknown))),
      unattached: [...all<Acceptance>('acceptance', ({ unattached }) =>
        named(unattached, ({ sheet, tag, rule, key = '' }) => [sheet, tag, rule, key].join(' '))).values()],
    };
  }
}

/** The last issue that both list, where the base is not given. */
function begunWith({ base, mine, theirs }: Sides): Join['begun'] {
  if (base !== undefined) return 'given';
  const listed = (each: Revision) => (theirs.revisions ?? []).some((other) => isSameData(each, other));
  return (mine.revisions ?? []).findLast(listed) ?? null;
}

/** Things by name, those that share one with a number behind it. */
function named<Thing>(things: readonly Thing[], nameOf: (thing: Thing) => string): [string, Thing][] {
  const counts = new Map<string, number>();
  return things.map((thing) => {
    const name = nameOf(thing);
    const count = (counts.get(name) ?? 0) + 1;
    counts.set(name, count);
    return [count === 1 ? name : `${name} (${count})`, thing];
  });
}

/** Keys that this version does not know, by place and key: `details/owner`. */
function byPlace(unknown: Snapshot['unknown']): [string, unknown][] {
  return Object.entries(unknown).flatMap(([place, keys]) => typeof keys !== 'object' || keys === null ? []
    : Object.entries(keys).map(([key, value]): [string, unknown] => [`${place}/${key}`, value]));
}

function unknownFrom(things: ReadonlyMap<string, unknown>): Snapshot['unknown'] {
  const unknown: Record<string, Record<string, unknown>> = {};
  for (const [name, value] of things) {
    const slash = name.indexOf('/');
    (unknown[name.slice(0, slash)] ??= {})[name.slice(slash + 1)] = value;
  }
  return unknown;
}

function snapshotOf(content: Content): Snapshot {
  const { snapshot, problems: [problem] } = toSnapshot(content);
  if (problem === undefined) return snapshot;
  throw new RangeError(`${problem.sheet}, row ${problem.row}, ${problem.key}: ${problem.problem}`);
}

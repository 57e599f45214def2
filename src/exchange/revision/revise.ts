import {
  GONE, isFormula, nextPartTag, rowsInFormulas, wholeTags, type Cells, type CellEdit, type CellValue,
} from '../../schedule/index.ts';
import { ENGLISH, type Words } from '../../words/index.ts';
import type { CountedList } from '../takeoff/index.ts';
import { plainKey } from '../takeoff/plain-words.ts';
import { calledIn, movedTo, placesOf } from '../takeoff/source-text.ts';
import { chooseLists, type RevisedList } from './choose-lists.ts';
import type { Match, MatchOptions, Matched } from './match-units.ts';
import { spread } from './spread.ts';
import { identityOf, isGone, textOf, unitsOf, type Part, type RevisedSchedule, type Unit } from './units.ts';

/** What becomes of a device row when a list is taken onto its schedule. */
export type RevisedOutcome = 'came' | 'changed' | 'went' | 'kept';

/** A device row and what becomes of it. */
export interface RevisedRow {
  /** `asked`: a row of the list that may be one that is there; it is not in the schedule until a person says which. */
  readonly outcome: RevisedOutcome | 'asked';
  /** Id of the device row; `null` for one that comes or is asked about. */
  readonly id: number | null;
  readonly ref: string;
  readonly area: string;
  readonly type: string;
  /** Quantity that stands in the schedule; `null` for a row that comes, or where it is not known. */
  readonly before: number | null;
  /** Quantity of the list; `null` for a row that went. */
  readonly after: number | null;
  /** What else is to be said of it, in plain sentences; perhaps none. */
  readonly reason: string;
  /**
   * Of a row that comes or is asked about, or that a person says is one that is there: its number in the list, from 0,
   * and ids of device rows that it may be.
   */
  readonly place?: number;
  readonly maybe?: readonly number[];
}

/** What a person says of a list that comes again; everything may be left out. */
export interface RevisionOptions extends Omit<MatchOptions, 'isMeant'> {
  /** Names of the lists that it takes the place of; found out by default. */
  readonly lists?: readonly string[] | undefined;
  /** What becomes of rows that the list no longer has: they are marked, or deleted. */
  readonly gone?: 'mark' | 'delete';
  readonly words?: Words;
}

/** A list held against a schedule that was counted from an earlier one. */
export interface ListRevision {
  /** Every device row of the lists that it takes the place of, and those that come. */
  readonly rows: readonly RevisedRow[];
  /** The lists that the schedule was counted from. */
  readonly lists: readonly RevisedList[];
  /** It is in doubt of which list it is a revision, or whether of any, and a person is to say it. */
  readonly isAsked: boolean;
  /** How many rows of the list no device row of any list has. */
  readonly fresh: number;
  /** By what rows were matched where ref and place disagree; absent where they never do. */
  readonly by?: Matched;
  readonly edits: readonly CellEdit[];
  readonly coming: readonly Cells[];
  /** Ids of the device rows that are deleted. */
  readonly deleted: readonly number[];
}

/**
 * Holds a list against the device rows of a schedule: what came, changed, went, and what is kept. What stays keeps its
 * rail, branch, run, distance and every own value; of a row only its quantity, and its type, area and ref where the
 * list says another, change. Device rows that no list has are left alone, unless the list names them by ref and type.
 */
export function reviseSchedule(
  schedule: RevisedSchedule, list: CountedList, options: RevisionOptions = {},
): ListRevision {
  const refs = new Set(list.rows.map(({ ref }) => plainKey(ref)));
  const all = unitsOf(schedule, refs);
  const { lists, isAsked, fresh, isMeant, matches: { matches, left, by } } =
    chooseLists(all, list, options.lists, options);
  const reviser = new Reviser(schedule, list, options);
  matches.forEach((match, place) => {
    if (match.units.length > 0) reviser.stays(
      match, typeof options.same?.get(place) === 'number' ? { place, maybe: reviser.alike(match.row, left) } : {}
    );
    else reviser.comes(match.row, place, left);
  });
  for (const unit of left.filter(isMeant)) reviser.goes(unit, list);
  const { rows, edits, coming, deleted } = reviser;
  return {
    rows, edits, coming, deleted, lists, isAsked, fresh, ...(by === undefined ? {} : { by }),
  };
}

/** How many device rows there are of each outcome, apart from what is asked. */
export function countOutcomes({ rows }: Pick<ListRevision, 'rows'>): Record<RevisedOutcome, number> {
  const counts = { came: 0, changed: 0, went: 0, kept: 0 };
  for (const { outcome } of rows) if (outcome !== 'asked') counts[outcome] += 1;
  return counts;
}

class Reviser {
  readonly rows: RevisedRow[] = [];
  readonly edits: CellEdit[] = [];
  readonly coming: Cells[] = [];
  readonly deleted: number[] = [];
  readonly #named: ReadonlySet<number>;
  readonly #refs: Set<string>;
  /** Refs of the list, as they are compared. */
  readonly #listed: ReadonlySet<string>;
  readonly #words: Words;
  readonly #deletes: boolean;
  readonly #same: ReadonlyMap<number, number | null>;
  /** Device rows that a row of the list may be on which nobody decided, with the first of these. */
  readonly #doubted = new Map<Unit, Cells>();

  constructor(
    { document }: RevisedSchedule, { rows }: CountedList, { words = ENGLISH, gone = 'mark', same = new Map() }: RevisionOptions,
  ) {
    this.#same = same;
    this.#named = rowsInFormulas(document);
    const refs = [...document.rows('devices').map(({ cells }) => cells.ref), ...rows.map(({ ref }) => ref)];
    this.#refs = new Set(refs.map(textOf));
    this.#listed = new Set(rows.map(({ ref }) => plainKey(ref)));
    this.#words = words;
    this.#deletes = gone === 'delete';
  }

  /** Device rows that the list still has. */
  stays({ row, units }: Match, said: Pick<RevisedRow, 'place' | 'maybe'> = {}): void {
    const parts = units.flatMap((unit) => unit.parts);
    const { edits, rest } = spread(parts, Number(row.qty), this.#named);
    const isNews = (key: 'ref' | 'area' | 'type') => saysAnew(row, parts, key);
    const refs = isNews('ref') ? this.#refsOf(parts, row.ref) : undefined;
    // What a person put elsewhere stays there as long as a part is where the list says.
    const isElsewhere = plainKey(row.area) !== '' && isNews('area')
      && parts.every((part) => plainKey(part.row.cells.area) !== plainKey(row.area));
    parts.forEach((part, index) => {
      const { cells } = part.row;
      const reasons: string[] = [];
      const after = edits.get(part.row.id);
      const now: Cells = { ...cells };
      const change = (key: string, value: CellValue, reason: string) => {
        this.#edit(part, key, value);
        now[key] = value;
        reasons.push(reason);
      };
      if (after !== undefined) {
        this.#edit(part, 'qty', after);
        reasons.push(...this.#onQuantity(part, parts.length));
      }
      if (plainKey(cells.type) !== plainKey(row.type) && isNews('type')) {
        change('type', row.type!, this.#words.say('Its type was {before}.', { before: textOf(cells.type) }));
      }
      if (isElsewhere) {
        change('area', row.area!, textOf(cells.area) === '' ? this.#words.say('It had no area.')
          : this.#words.say('Its area was {before}.', { before: textOf(cells.area) }));
      }
      if (refs?.[index] !== undefined) {
        change('ref', refs[index], textOf(cells.ref) === '' ? this.#words.say('It had no ref.')
          : this.#words.say('Its ref was {before}.', { before: textOf(cells.ref) }));
      }
      if (cells.state === GONE) {
        change('state', null, this.#words.say('It was marked as gone, and the list has it again.'));
      }
      this.#edit(part, 'source', row.source!);
      const own = this.#ownNames(now, row);
      this.#tell(now, {
        outcome: reasons.length > 0 || after !== undefined ? 'changed' : 'kept', id: part.row.id, before: part.qty, after: after ?? part.qty,
      }, [...reasons, ...own], said.maybe === undefined ? {} : { ...said, maybe: [part.row.id, ...said.maybe] });
    });
    if (rest > 0) this.#partComes(row, parts, rest);
  }

  /** A row of the list that the schedule does not have, unless it is one of those that nothing tells apart from it. */
  comes(row: Cells, place: number, left: readonly Unit[]): void {
    const { area, type } = identityOf(row);
    const doubted = this.#same.has(place) ? [] : left.filter((unit) => this.#mayBe(unit, row));
    const more = { place, maybe: this.alike(row, left) };
    if (doubted.length === 0) {
      this.coming.push(row);
      this.#tell(row, { outcome: 'came', id: null, before: null, after: Number(row.qty) }, [], more);
      return;
    }
    for (const unit of doubted) if (!this.#doubted.has(unit)) this.#doubted.set(unit, row);
    const twin = doubted.find((unit) => unit.source === '' && unit.type === type && isIn(unit, area));
    const ofLine = doubted.find((unit) => isOfLine(unit, row));
    this.#tell(row, { outcome: 'asked', id: null, before: null, after: Number(row.qty) }, [
      twin !== undefined ? this.#words.say('The schedule has a row of this type in this place that no list has. Say whether it is the same.')
      : ofLine !== undefined ? this.#words.say('The row “{name}” was counted on this very line before. Say whether it is the same.', { name: nameOf(ofLine) })
      : this.#words.say('The list no longer has {rows, plural, one {a row} other {# rows}} of this type elsewhere. Say whether it is one of them or new.', { rows: doubted.length }),
    ], more);
  }

  /**
   * Whether a row that has no match may be a device row all the same. Refs keep them apart, unless the list gives that
   * of the device row to another.
   */
  #mayBe(unit: Unit, row: Cells): boolean {
    const { ref, area, type } = identityOf(row);
    const isApart = ref !== '' && unit.called.every((each) => each.ref !== '' && !this.#listed.has(each.ref));
    if (isGone(unit) || isApart) return false;
    return isOfLine(unit, row) || isAlike(unit, type, area);
  }

  /**
   * Ids of device rows that a row of the list may be, though nothing tells it: of its line, of its type, then others in
   * its place.
   */
  alike(row: Cells, left: readonly Unit[]): number[] {
    const { area, type } = identityOf(row);
    const ofType = left.filter((unit) => isAlike(unit, type, area));
    const inPlace = left.filter((unit) => unit.type !== type && unit.source !== '' && isIn(unit, area));
    const found = new Set([...left.filter((unit) => isOfLine(unit, row)), ...ofType, ...inPlace]);
    return [...found].map(({ parts }) => parts[0]!.row.id);
  }

  /** Device rows that the list no longer has; where a line that nobody decided on may mean them, they stay. */
  goes(unit: Unit, { open }: CountedList): void {
    const toldBy = [...unit.called, ...unit.identities];
    const doubt = open.find(({ ref, area, types }) =>
      (types === undefined || toldBy.some(({ type }) => types.includes(type)))
      && toldBy.some((each) => area === each.area || ref !== '' && ref === each.ref));
    const asked = this.#doubted.get(unit);
    const kept = doubt !== undefined ? {
      places: doubt.source,
      why: this.#words.say('Line {line} of the list, which is undecided, may mean it.', { line: doubt.line }),
    } : asked && {
      places: placesOf(textOf(asked.source)),
      why: this.#words.say('“{name}” of the list may be it, which nobody decided on yet.', {
        name: [asked.ref, asked.area, asked.type].map(textOf).filter((text) => text !== '').join(', '),
      }),
    };
    for (const { row, qty } of unit.parts) {
      if (kept !== undefined) {
        // So that it is no part of another line of that number in the list of before.
        if (kept.places !== '') this.#edit({ row }, 'source', movedTo(kept.places, textOf(row.cells.source)));
        this.#tell(row.cells, { outcome: 'kept', id: row.id, before: qty, after: qty }, [kept.why]);
        continue;
      }
      if (this.#deletes) this.deleted.push(row.id);
      else this.#edit({ row }, 'state', GONE);
      this.#tell(row.cells, { outcome: 'went', id: row.id, before: qty, after: null }, [
        this.#deletes ? this.#words.say('The list no longer has it. It is deleted.')
          : this.#words.say('The list no longer has it. It is marked as gone and still counts.'),
      ]);
    }
  }

  /** What comes to a row that is shared out, and is to be shared in its turn. */
  #partComes(row: Cells, parts: readonly Part[], qty: number): void {
    const [first, ...others] = parts.map((part) => part.row.cells);
    const common = Object.entries(first!).filter(([key, value]) => others.every((cells) => cells[key] === value));
    const whole = textOf(row.ref) || textOf(first!.ref);
    const cells: Cells = { type: row.type!, ...Object.fromEntries(common), qty, source: row.source! };
    delete cells.state;
    for (const key of ['type', 'area'] as const) {
      if (plainKey(row[key]) !== '' && (cells[key] === undefined || saysAnew(row, parts, key))) cells[key] = row[key]!;
    }
    if (whole !== '') cells.ref = nextPartTag(whole, this.#refs);
    this.coming.push(cells);
    this.#tell(cells, { outcome: 'came', id: null, before: null, after: qty }, [
      this.#words.say('The list has more of what is shared over {rows} rows. It comes into a row of its own, to be shared out.', { rows: parts.length }),
    ]);
  }

  #onQuantity({ row }: Part, parts: number): string[] {
    return [
      ...(isFormula(row.cells.qty) ? [this.#words.say('The number of the list takes the place of a formula.')] : []),
      ...(parts > 1 ? [this.#words.say('It is one of {parts} rows that share what the list counts; the change is where the least is lost by it.', { parts })] : []),
    ];
  }

  /** Where a person calls it otherwise than the list, and that stays. */
  #ownNames(cells: Cells, row: Cells): string[] {
    const said = [row.ref, row.area, row.type].map(textOf);
    const own = [cells.ref, cells.area, cells.type].map(textOf);
    const isOther = said.some((text, place) => plainKey(text) !== '' && plainKey(text) !== plainKey(own[place])
      && !(place === 0 && isPartOf(own[0]!, text)));
    return !isOther ? [] : [this.#words.say('The list still calls it “{name}”; what was entered here stays.', {
      name: said.filter((text) => text !== '').join(', '),
    })];
  }

  /** Refs of the parts where the list gives another; the first part bears it as it is. */
  #refsOf(parts: readonly Part[], ref: CellValue | undefined): (string | undefined)[] | undefined {
    const own = textOf(ref);
    if (own === '' || parts.some((part) => isPartOf(textOf(part.row.cells.ref), own))) return undefined;
    this.#refs.add(own);
    return parts.map((_part, index) => index === 0 ? own : nextPartTag(own, this.#refs));
  }

  #edit({ row: { id } }: Pick<Part, 'row'>, key: string, value: CellValue): void {
    this.edits.push({ sheet: 'devices', id, key, value });
  }

  #tell(
    { ref, area, type }: Cells, of: Pick<RevisedRow, 'outcome' | 'id' | 'before' | 'after'>, reasons: readonly string[],
    more: Pick<RevisedRow, 'place' | 'maybe'> = {},
  ): void {
    this.rows.push({
      ...of, ref: textOf(ref), area: textOf(area), type: textOf(type), reason: reasons.join(' '), ...more,
    });
  }
}

/** Whether a list says something else than it said before: what a person made of that since is no matter. */
function saysAnew(row: Cells, parts: readonly Part[], key: 'ref' | 'area' | 'type'): boolean {
  return parts.some(({ row: { cells } }) => plainKey(calledIn(textOf(cells.source))?.[key]) !== plainKey(row[key]));
}

/** Whether device rows were counted on the line of a row of a list, and as many. */
function isOfLine({ source, parts }: Unit, row: Cells): boolean {
  return source !== '' && placesOf(source) === placesOf(textOf(row.source)) && parts.reduce((sum, { qty }) => sum + (qty ?? 0), 0) === row.qty;
}

function nameOf({ parts: [first] }: Unit): string {
  const { ref, type, area } = first!.row.cells;
  return [ref, type, area].map(textOf).filter((text) => text !== '').join(', ');
}

/** Whether a device row is of the type and, where no list says where it stands, of the place of a row of the list. */
function isAlike(unit: Unit, type: string, area: string): boolean {
  return unit.type === type && (unit.source !== '' || isIn(unit, area));
}

function isIn({ identities }: Unit, area: string): boolean {
  return identities.some((each) => each.area === area);
}

/** Whether a ref is another, or a part of it, as they are compared. */
function isPartOf(ref: string, whole: string): boolean {
  return wholeTags(ref).some((each) => plainKey(each) === plainKey(whole));
}

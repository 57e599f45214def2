import { isBlank, type CellValue, type ScheduleDocument, type SheetName } from '../../schedule/index.ts';
import { enlarged, GROWTH } from '../enlarged.ts';
import { rowsReading } from '../rows-reading.ts';
import { argument } from '../schema-rules.ts';
import type { SheetColumns } from '../sheet-columns.ts';
import type { TagIndex } from '../tag-index.ts';
import type { Touched } from '../touched.ts';

type Columns = Readonly<Record<SheetName, SheetColumns>>;

/** A sheet whose rows belong to groups. */
export type GroupedSheet = 'devices' | 'outputs';

/** A case as it is entered. */
export interface Case {
  readonly id: number;
  readonly name: string;
  readonly standby: boolean;
  readonly together: boolean;
}

/** The share of a group that is on in a case; NaN where it is not known. */
export interface GroupFactor {
  readonly share: number;
  /** Of what the diversity of each row leaves, not of all that is connected. */
  readonly ofDemand: boolean;
  /** It lacks something, or another case may be meant. */
  readonly isUnsure: boolean;
}

/**
 * What a load counts in a case: its factor of all that is connected, or of what its own diversity leaves; without a
 * factor the latter. Amperes give amperes, shares of 1 a share.
 * @returns NaN where that is not known
 */
export function countedIn(factor: GroupFactor | undefined, all: number, own: number): number {
  return factor === undefined ? own : (factor.ofDemand ? own : all) * factor.share;
}

/** More cases than these are not worked out. */
export const MOST_CASES = 100;

/** Where the group of a row is read. */
const GROUP_OF = {
  devices: [argument('devices', 'group'), argument('devices', 'type.group')], outputs: [argument('outputs', 'group')],
};

/** The cases of a document, the factors that they give groups, and the group of each row. */
export class CaseTable {
  readonly #document: ScheduleDocument;
  readonly #columns: Columns;
  readonly #tags: TagIndex;
  /** Places of groups by their names; that of no group is 0. */
  readonly #groups = new Map<string, number>([['', 0]]);
  readonly #groupOf: Record<GroupedSheet, Int32Array> = { devices: new Int32Array(0), outputs: new Int32Array(0) };
  /** Rows whose group is that of a type which shares its tag with another, by id. */
  readonly #isUnclear: Record<GroupedSheet, Uint8Array> = { devices: new Uint8Array(0), outputs: new Uint8Array(0) };
  #cases: readonly Case[] = [];
  /** Factors by the places of cases and groups. */
  #factors: readonly (readonly (GroupFactor | undefined)[])[] = [];
  /** Whether a group has a factor in some case that is not wholly known, by its place. */
  #isGroupUnsure: readonly boolean[] = [];
  /** Rows that make it so. */
  #unsureFactors: ReadonlySet<number> = new Set();
  #isCut = false;
  #lines: readonly unknown[] = [];

  constructor(document: ScheduleDocument, columns: Columns, tags: TagIndex) {
    this.#document = document;
    this.#columns = columns;
    this.#tags = tags;
  }

  /** The cases in their order; none beyond the number that is worked out. */
  get cases(): readonly Case[] {
    return this.#cases;
  }

  /** Whether there are more cases than are worked out, so that nothing that they concern is whole. */
  get isCut(): boolean {
    return this.#isCut;
  }

  /** How many groups there are, that of no group included. */
  get groupCount(): number {
    return this.#groups.size;
  }

  /** Names of the groups by their places. */
  get groups(): readonly string[] {
    return [...this.#groups.keys()];
  }

  /** Place of the group of each row by its id; 0 for none. */
  groupOf(sheet: GroupedSheet): Int32Array {
    return this.#groupOf[sheet];
  }

  /** What a case gives a group; `undefined` where it gives it nothing. */
  factor(place: number, group: number): GroupFactor | undefined {
    return this.#factors[place]![group];
  }

  /**
   * Whether it is not wholly known of a row how much of it is on in some case: by its group, by a factor of that, or
   * because there are more cases than are worked out.
   */
  isUnsure(sheet: GroupedSheet, id: number): boolean {
    return this.#cases.length > 0 && (
      this.#isCut || this.#isUnclear[sheet][id] === 1 || this.#isGroupUnsure[this.#groupOf[sheet][id]!] === true
    );
  }

  /** Whether the factor in a row is not wholly known, or contradicts another one. */
  isFactorUnsure(id: number): boolean {
    return this.#unsureFactors.has(id);
  }

  /**
   * The largest share of what is connected that a row may count with, over all cases: where a factor is not known, or
   * not every case is worked out, all.
   * @param own share by the diversity of the row
   * @param countsOwn whether that counts beside the cases
   */
  mostShare(group: number, own: number, countsOwn: boolean): number {
    if (this.#isCut) return 1;
    const shares = this.#cases.map((_case, place) => {
      const factor = this.factor(place, group);
      return factor !== undefined && Number.isNaN(factor.share) ? 1 : countedIn(factor, 1, own);
    });
    return Math.max(...countsOwn || shares.length === 0 ? [own] : [], ...shares);
  }

  /** Place of a group by its name; 0 for none, and for one that no row and no factor names. */
  placeOf(group: CellValue): number {
    return typeof group === 'string' ? this.#groups.get(group) ?? 0 : 0;
  }

  /**
   * Reads what was touched.
   * @param touched what changed; it learns which device rows belong to another group by now. Everything when absent.
   * @returns whether any case or factor is another than before.
   */
  update(touched?: Touched): boolean {
    for (const sheet of ['devices', 'outputs'] as const) this.#readGroups(sheet, touched);
    const mayDiffer = (['cases', 'factors'] as const).some((sheet) =>
      touched === undefined || touched.rows.has(sheet) || touched.rearranged.has(sheet));
    if (!mayDiffer) return false;
    const entered = this.#document.rows('cases').filter((row) => !isBlank(row));
    const { factors } = this.#columns;
    const shared = this.#tags.shared('cases');
    const lines = [...entered.flatMap(({ id, cells }) => [id, cells.case, cells.standby, cells.together]), null,
      ...this.#document.rows('factors').flatMap(({ id, cells }) => [
        id, factors.target('case', id), shared.has(factors.target('case', id)), cells.group, factors.number('factor', id),
        factors.isPartial('factor', id), cells.of,
      ])];
    const isSame = lines.length === this.#lines.length && lines.every((each, at) => Object.is(each, this.#lines[at]));
    if (isSame) return false;
    this.#lines = lines;
    this.#isCut = entered.length > MOST_CASES;
    this.#cases = entered.slice(0, MOST_CASES).map(({ id, cells }) => ({
      id, name: typeof cells.case === 'string' ? cells.case : '', standby: cells.standby === true,
      together: cells.together === true,
    }));
    this.#readFactors();
    return true;
  }

  /** Of two factors that one case gives a group, other than each other, none is known to be meant. */
  #readFactors(): void {
    const places = new Map(this.#cases.map(({ id }, place) => [id, place]));
    const read: (GroupFactor | undefined)[][] = this.#cases.map(() => []);
    const [isGroupUnsure, unsure]: [boolean[], Set<number>] = [[], new Set()];
    const { factors } = this.#columns;
    for (const { id, cells: { group: name, of } } of this.#document.rows('factors')) {
      const named = factors.target('case', id);
      const place = places.get(named);
      if (place === undefined || typeof name !== 'string') continue;
      const group = this.#place(name);
      const factor = {
        share: factors.number('factor', id) ?? NaN, ofDemand: of === 'demand',
        isUnsure: factors.isPartial('factor', id) || this.#tags.shared('cases').has(named),
      };
      const before = read[place]![group];
      const isOther = before !== undefined && (before.share !== factor.share || before.ofDemand !== factor.ofDemand);
      const taken = isOther ? { ...factor, share: NaN } : factor;
      read[place]![group] = taken;
      if (!taken.isUnsure && !Number.isNaN(taken.share)) continue;
      isGroupUnsure[group] = true;
      unsure.add(id);
    }
    this.#factors = read;
    [this.#isGroupUnsure, this.#unsureFactors] = [isGroupUnsure, unsure];
  }

  #readGroups(sheet: GroupedSheet, touched: Touched | undefined): void {
    const size = this.#document.capacity(sheet);
    if (this.#groupOf[sheet].length < size) {
      const bigger = Math.ceil(size * GROWTH);
      this.#groupOf[sheet] = enlarged(this.#groupOf[sheet], new Int32Array(bigger));
      this.#isUnclear[sheet] = enlarged(this.#isUnclear[sheet], new Uint8Array(bigger));
    }
    const rows = this.#document.byId(sheet);
    const types = sheet === 'devices' ? this.#columns.devices.targets.get('type')! : undefined;
    const ofTypes = this.#document.byId('types');
    const due = touched === undefined ? this.#document.rows(sheet).map(({ id }) => id)
      : rowsReading(sheet, GROUP_OF[sheet], touched, this.#document, this.#columns);
    const [groupOf, isUnclear, shared] = [this.#groupOf[sheet], this.#isUnclear[sheet], this.#tags.shared('types')];
    const changed: number[] = [];
    for (const id of due) {
      const type = types?.[id] ?? -1;
      const own = rows[id]?.cells.group ?? null;
      const group: CellValue | undefined = own ?? (type < 0 ? null : ofTypes[type]?.cells.group);
      const place = typeof group === 'string' ? this.#place(group) : 0;
      const unclear = own === null && shared.has(type) ? 1 : 0;
      if (groupOf[id] !== place || isUnclear[id] !== unclear) changed.push(id);
      groupOf[id] = place;
      isUnclear[id] = unclear;
    }
    touched?.column(sheet, changed, 'group');
  }

  #place(group: string): number {
    const place = this.#groups.get(group);
    if (place !== undefined) return place;
    this.#groups.set(group, this.#groups.size);
    return this.#groups.size - 1;
  }
}

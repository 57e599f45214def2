import { isBlank, type CellValue, type ScheduleDocument, type SheetName } from '../../schedule/index.ts';
import { rowsReading } from '../rows-reading.ts';
import { argument } from '../schema-rules.ts';
import type { SheetColumns } from '../sheet-columns.ts';
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
  /** Places of groups by their names; that of no group is 0. */
  readonly #groups = new Map<string, number>([['', 0]]);
  readonly #groupOf: Record<GroupedSheet, Int32Array> = { devices: new Int32Array(0), outputs: new Int32Array(0) };
  #cases: readonly Case[] = [];
  /** Factors by case and group. */
  #factors: readonly ReadonlyMap<number, GroupFactor>[] = [];
  #lines: readonly unknown[] = [];
  #isCut = false;

  constructor(document: ScheduleDocument, columns: Columns) {
    this.#document = document;
    this.#columns = columns;
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
    return this.#factors[place]!.get(group);
  }

  /**
   * The largest share of what is connected that a row may count with, over all cases: where a factor is not known, all.
   * @param own share by the diversity of the row
   * @param countsOwn whether that counts beside the cases
   */
  mostShare(group: number, own: number, countsOwn: boolean): number {
    const shares = this.#cases.map((_case, place) => {
      const factor = this.factor(place, group);
      if (factor === undefined) return own;
      return Number.isNaN(factor.share) ? 1 : factor.ofDemand ? own * factor.share : factor.share;
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
    if (touched !== undefined && !touched.rows.has('cases') && !touched.rows.has('factors')) return false;
    const factors = this.#document.rows('factors');
    const lines = [...this.#document.rows('cases').flatMap(({ id, cells }) =>
      [id, cells.case, cells.standby, cells.together]), null, ...factors.flatMap(({ id, cells }) =>
      [id, this.#columns.factors.target('case', id), cells.group, this.#columns.factors.number('factor', id), cells.of])];
    const isSame = lines.length === this.#lines.length && lines.every((each, at) => Object.is(each, this.#lines[at]));
    if (isSame) return false;
    this.#lines = lines;
    const entered = this.#document.rows('cases').filter((row) => !isBlank(row));
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
    const read = this.#cases.map(() => new Map<number, GroupFactor>());
    for (const { id, cells: { group, of } } of this.#document.rows('factors')) {
      const place = places.get(this.#columns.factors.target('case', id));
      if (place === undefined || typeof group !== 'string') continue;
      const factor = { share: this.#columns.factors.number('factor', id) ?? NaN, ofDemand: of === 'demand' };
      const before = read[place]!.get(this.#place(group));
      const isOther = before !== undefined && (before.share !== factor.share || before.ofDemand !== factor.ofDemand);
      read[place]!.set(this.#place(group), isOther ? { ...factor, share: NaN } : factor);
    }
    this.#factors = read;
  }

  #readGroups(sheet: GroupedSheet, touched: Touched | undefined): void {
    const size = this.#document.capacity(sheet);
    if (this.#groupOf[sheet].length < size) {
      const bigger = new Int32Array(Math.ceil(size * 1.5));
      bigger.set(this.#groupOf[sheet]);
      this.#groupOf[sheet] = bigger;
    }
    const rows = this.#document.byId(sheet);
    const types = sheet === 'devices' ? this.#columns.devices.targets.get('type')! : undefined;
    const ofTypes = this.#document.byId('types');
    const due = touched === undefined ? this.#document.rows(sheet).map(({ id }) => id)
      : rowsReading(sheet, GROUP_OF[sheet], touched, this.#document, this.#columns);
    const groupOf = this.#groupOf[sheet];
    const changed: number[] = [];
    for (const id of due) {
      const type = types?.[id] ?? -1;
      const group: CellValue | undefined = rows[id]?.cells.group ?? (type < 0 ? null : ofTypes[type]?.cells.group);
      const place = typeof group === 'string' ? this.#place(group) : 0;
      if (groupOf[id] !== place) changed.push(id);
      groupOf[id] = place;
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

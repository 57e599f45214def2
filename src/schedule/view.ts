import { SCHEMA, type Column, type ColumnGroup, type SheetName } from './schema/index.ts';

/** By sheet. A sheet that is not known is kept. */
type BySheet<Value> = Readonly<Record<string, Value>>;

/** How a schedule is looked at, which is no part of what it says; keys that are not known are kept. */
export interface View {
  /**
   * Rare columns that are shown although nothing stands in them: all of a sheet (`supplies`) or one group of it
   * (`supplies.measured`).
   */
  readonly rare?: readonly string[];
  /** Keys of columns that are put out of sight, by sheet. */
  readonly hidden?: BySheet<readonly string[]>;
  /** Key of the last column that stays in view when the others are scrolled, by sheet; else that of the tag. */
  readonly frozen?: BySheet<string>;
  /** Widths that a person gave columns, in sizes of type, by sheet and key. */
  readonly wide?: BySheet<Readonly<Record<string, number>>>;
  /** What of the load table is handed over. */
  readonly loadTable?: Handover;
}

/** What of the load table is handed over, by names of its forms and sections; names that are not known are kept. */
export interface Handover {
  /** What it is for; all of it where it is not said. */
  readonly form?: string;
  /** Sections that are left out. */
  readonly without?: readonly string[];
  /** Whether runs within their limits are drawn too. */
  readonly allPictures?: boolean;
}

/** How one sheet is looked at. */
export interface SheetLook {
  /** Whether all rare columns are shown although nothing stands in them. */
  readonly all: boolean;
  /** Groups of rare columns that are. */
  readonly groups: readonly string[];
  readonly hidden: readonly string[];
  readonly frozen: string | undefined;
  readonly wide: Readonly<Record<string, number>>;
}

/** How a sheet is looked at until a person says otherwise. */
export const PLAIN_LOOK: SheetLook = { all: false, groups: [], hidden: [], frozen: undefined, wide: {} };

/** The look of one sheet. */
export function lookOf(view: View | undefined, sheet: SheetName): SheetLook {
  const { rare = [], hidden, frozen, wide } = view ?? {};
  const groups = rare.flatMap((name) => (name.startsWith(`${sheet}.`) ? [name.slice(sheet.length + 1)] : []));
  return {
    all: rare.includes(sheet), groups, hidden: hidden?.[sheet] ?? [], frozen: frozen?.[sheet],
    wide: wide?.[sheet] ?? {},
  };
}

/** The view with something of the look of one sheet changed; what is as at first is left out. */
export function withLook(view: View | undefined, sheet: SheetName, changed: Partial<SheetLook>): View {
  const { all, groups, hidden, frozen, wide } = { ...lookOf(view, sheet), ...changed };
  const rare = [
    ...(view?.rare ?? []).filter((name) => name !== sheet && !name.startsWith(`${sheet}.`)),
    ...(all ? [sheet] : groups.map((group) => `${sheet}.${group}`)),
  ];
  return {
    ...view, rare, hidden: put(view?.hidden, sheet, hidden.length === 0 ? undefined : hidden),
    frozen: put(view?.frozen, sheet, frozen === SCHEMA[sheet].tag ? undefined : frozen),
    wide: put(view?.wide, sheet, Object.keys(wide).length === 0 ? undefined : wide),
  };
}

function put<Value>(before: BySheet<Value> = {}, sheet: SheetName, value: Value | undefined): BySheet<Value> {
  const others = Object.fromEntries(Object.entries(before).filter(([name]) => name !== sheet));
  return value === undefined ? others : { ...others, [sheet]: value };
}

/** Whether a rare column is asked for, by itself or with its group. */
export function isAsked({ all, groups }: SheetLook, column: Column): boolean {
  return all || groups.includes(groupOf(column));
}

/** The group of a rare column: those of none are one together. */
export function groupOf({ rare }: Column): ColumnGroup | 'further' {
  return rare === undefined || rare === true ? 'further' : rare;
}

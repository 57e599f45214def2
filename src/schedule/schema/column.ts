import type { SafeSide } from '../../words/index.ts';

/** The sheets of a schedule, in the order in which they are shown and saved. */
export const SHEET_NAMES = [
  'devices', 'types', 'supplies', 'ways', 'branches', 'runs', 'conductors', 'modules', 'outputs', 'contacts', 'feeds',
  'enclosures', 'terminals', 'cases', 'factors',
] as const;

/** Name of a sheet in files, in the order in which the sheets are shown. */
export type SheetName = (typeof SHEET_NAMES)[number];

/** What one cell of a schedule holds; `null` is an empty cell, whose value is unknown. */
export type CellValue = string | number | boolean | null;

/** `ratio` is a share, stored 0 to 1 and shown in percent; `reference` holds the tag of a row of another sheet. */
export type ColumnKind = 'text' | 'integer' | 'number' | 'ratio' | 'boolean' | 'choice' | 'reference';

/** A value that a rule reads: a key of the same row (`qty`), or of the row that a reference names (`rail.voltage`). */
export type Path = string;

/** How a value follows from other cells. */
export interface Rule {
  /** What the function is given, in order. */
  readonly of: readonly Path[];
  /**
   * The formula of the trade. Called with known values only, unless `takesUnknown`; `null` says that there is no
   * finite result.
   */
  readonly by: (...values: never[]) => number | string | null;
  /**
   * Paths that are read only in rows where another input, named here, is filled in: so that no row follows what means
   * nothing to it.
   */
  readonly onlyWith?: Readonly<Record<Path, string>>;
  /** The function is called even when a value is unknown, which it then receives as `null`. */
  readonly takesUnknown?: true;
  /** What takes the place of arguments in a case that has a factor for every group on the row, by path. */
  readonly inCoveringCase?: Readonly<Record<Path, number>>;
  /**
   * The rule for a reader, with each path in braces: `{qty} × {unitDraw} ÷ 1000`. A function chooses the wording
   * from the values, in the order of `of`.
   */
  readonly words: string | ((...values: CellValue[]) => string);
  /** Where the rule comes from. */
  readonly source: string;
}

/** Rows of another sheet that name this row, and what of them is added up. */
export interface TotalPart {
  readonly from: SheetName;
  /** The reference column of `from` that names the row. */
  readonly by: string;
  /** The column of `from` that is added up; without it the rows are counted. */
  readonly sum?: string;
  /** A column of `from` by which each is multiplied before, as a width by how many units there are. */
  readonly times?: string;
  /** Only rows in which this other input is filled in, or empty. */
  readonly only?: { readonly key: string; readonly filled: boolean };
}

/** A figure gathered from the rows of another sheet, of each what it is in the case that this row is. */
export interface CaseTotal {
  readonly from: SheetName;
  /** The column of `from` that is added up, one that is worked out in cases. */
  readonly sum: string;
  /** The rule for a reader, and where it comes from, as in `Total`. */
  readonly words: string;
  readonly source: string;
}

/**
 * How a figure stands in the cases of a schedule. One of a `share` holds what the row's own diversity leaves of that
 * other column; in a case the factor of its group takes its place. `highest` and `lowest` are worked out in each case
 * from what the same case gives, and hold the worst of them.
 */
export type InCases = 'highest' | 'lowest' | { readonly share: string };

/** A figure of the row in cases that bear a mark, the highest of them. */
export interface InMarkedCase {
  /** The column that is worked out in cases. */
  readonly of: string;
  /** The column of the cases that marks them. */
  readonly marked: 'standby' | 'together';
  /** Only cases that have a factor for every group on the row count, and without one it is unknown. */
  readonly covering?: true;
  readonly words: string;
  readonly source: string;
}

/** A figure gathered from the rows of one or several other sheets that name this row. */
export interface Total {
  readonly of: readonly TotalPart[];
  /** The greatest of the figures counts, and not their sum. */
  readonly greatest?: true;
  /** The rule for a reader: `sum of demand over the device rows that name it`. */
  readonly words: string;
  readonly source: string;
}

/** What a solution came to for one row; a figure that is absent is unknown. */
export interface Solved {
  /** Figures of the row, by key of its sheet. */
  readonly figures: Readonly<Record<string, number | string | null>>;
  /** Figures of each row that names it, in their order, by key of their sheet. */
  readonly each?: Readonly<Record<string, readonly (number | null)[]>>;
  /** How many of the rows that name it could not be reckoned with. */
  readonly missing: number;
  /** Figures that hold whatever the rows are that could not be reckoned with, or that are in doubt. */
  readonly sure?: readonly string[];
  /** Word for an outcome that is no figure, such as `collapses`. */
  readonly outcome?: string;
}

/**
 * Figures that are worked out for a row together, from its own values, from those of all rows of another sheet that
 * name it, and from a whole third sheet.
 */
export interface Solution {
  readonly from: SheetName;
  /** The reference column of `from` that names the row. */
  readonly by: string;
  /** What is read of the row itself. */
  readonly of: readonly Path[];
  /** What of the row's own values matters, in their order: it is not solved again for any other change of them. */
  readonly heed?: (own: readonly CellValue[]) => readonly CellValue[];
  /** What is read of each row that names it. */
  readonly each: readonly Path[];
  /** How it is solved in cases, for rows of which it hangs on the diversity of the rows that name them. */
  readonly diversity?: {
    /** The key of `each` that holds the diversity of a row, in the place of which cases put their factors. */
    readonly key: Path;
    readonly matters: (own: readonly CellValue[], each: readonly (readonly CellValue[])[]) => boolean;
    /** It is solved once for all cases that count: it gives what holds in each of them. */
    readonly once?: true;
    /**
     * Called with the share of each row that names it in several cases; `null` is unknown.
     * @returns a solution for each of them, or the one for all.
     */
    readonly inCases: (
      own: readonly CellValue[], each: readonly CellValue[][], shares: readonly (readonly CellValue[])[],
      whole: readonly CellValue[][],
    ) => readonly Solved[];
  };
  /** A sheet that is read as a whole, and what is read of each of its rows. */
  readonly whole?: { readonly sheet: SheetName; readonly of: readonly string[] };
  /** Keys that it gives the row. */
  readonly gives: readonly string[];
  /** Keys that it gives each row that names it. */
  readonly givesEach: readonly string[];
  /** Called with values in the order of `of`, `each` and `whole.of`; `null` is unknown. */
  readonly solve: (own: readonly CellValue[], each: readonly CellValue[][], whole: readonly CellValue[][]) => Solved;
}

/** A value that has a name of its own in the trade, which may be typed instead. */
export interface Suggestion {
  readonly value: number;
  /** What is typed, in any case: `B`. */
  readonly label: string;
  readonly source: string;
}

/** Columns that are folded away and shown together. */
export type ColumnGroup =
  'measured' | 'limits' | 'heat' | 'mains' | 'battery' | 'mounting' | 'purchase' | 'laying' | 'second' |
  'progress';

interface ColumnBase {
  readonly key: string;
  /** Heading on the screen, in files and in print; the unit stands apart. */
  readonly title: string;
  readonly kind: ColumnKind;
  readonly unit?: string;
  /** One line that says what the column means. */
  readonly help: string;
  /** Decimals shown; a ratio counts those of its percentage. */
  readonly decimals?: number;
  /**
   * The column holds a limit, or what is left before one: shown figures are rounded to this side, never to the nearest.
   */
  readonly safeSide?: SafeSide;
  /**
   * Few schedules need it: the grid shows it where something stands in it or was found there, or a person asks for it,
   * alone or with the group that it belongs to.
   */
  readonly rare?: true | ColumnGroup;
}

/** What belongs to a tick: keys of cells of its row. */
export interface Tick {
  /** Who ticked, and when: emptied when the tick is taken back. */
  readonly by: string;
  readonly on: string;
  /** What the cells of `of` held when it was ticked, kept to be held against what they hold later. */
  readonly as: string;
  readonly of: readonly string[];
}

/** A column that a person fills in. */
export interface InputColumn extends ColumnBase {
  readonly role: 'input';
  /** The value of an empty cell. */
  readonly default?: CellValue;
  /** The value of an empty cell where it follows from other cells. */
  readonly derived?: Rule;
  /** Least value allowed. */
  readonly min?: number;
  /** The value must be greater than this. */
  readonly above?: number;
  /** Greatest value allowed. */
  readonly max?: number;
  /** Beside whole numbers, lengths in metres are allowed, which are written with their unit: `12.5 m`. */
  readonly metres?: true;
  /** The words allowed in a `choice` column. */
  readonly choices?: readonly string[];
  /** Usual values of a column of numbers by name; any other number may be typed as well. */
  readonly suggestions?: readonly Suggestion[];
  /** The sheet whose rows a `reference` column names. */
  readonly to?: SheetName;
  /**
   * Sheets of which a `text` column names a row by its tag, alone or before a colon: the text follows when that row is
   * given another tag, and nothing is read through it.
   */
  readonly names?: readonly SheetName[];
  /**
   * What stands behind a tag in such a text and says of which sheets it is: `:C` is a connection of a module. Behind
   * what begins with a space a text names a row too: `F1 L+`.
   */
  readonly behind?: Readonly<Record<string, readonly SheetName[]>>;
  /** A `boolean` column that says of other cells of its row that they were carried out. */
  readonly tick?: Tick;
  /** The column names its row: references hold its text, and no two rows may share it. */
  readonly tag?: true;
  /** An empty cell only means that a check is not made: a note says so and the status does not suffer. */
  readonly optional?: true;
  /** Where the default or the range comes from. */
  readonly source?: string;
}

/** A column that the software works out. */
export interface ComputedColumn extends ColumnBase {
  readonly role: 'computed';
  readonly rule?: Rule;
  readonly total?: Total;
  readonly caseTotal?: CaseTotal;
  readonly inMarkedCase?: InMarkedCase;
  /** How the figure stands in the cases; absent where they change nothing of it. */
  readonly inCases?: InCases;
  /** The column holds the name of the case in which this other figure is worst. */
  readonly worstOf?: string;
  /** The column is given by a solution. This says the rule for a reader, as in `Rule`. */
  readonly solved?: { readonly of: readonly Path[]; readonly words: string; readonly source: string };
  /**
   * The column is worked out when it is read and at no other time: no rule, total, solution or check may read it. It
   * spares an edit that reaches thousands of rows what nobody looks at.
   */
  readonly onDemand?: true;
  /** The column is the worst that the limits of its row say. */
  readonly status?: true;
  /**
   * What the figure is when a total that it follows from is partial: a figure that is at least (`≥`) or at most
   * (`≤`) what is shown.
   */
  readonly whenPartial?: '≥' | '≤';
}

/** A column of a sheet: one that a person fills, or one that is worked out. */
export type Column = InputColumn | ComputedColumn;

/** One sheet: a list of rows with these columns. */
export interface Sheet {
  readonly name: SheetName;
  readonly title: string;
  /** What one row is called in a sentence: «this supply». */
  readonly rowName: string;
  /** What the sheet is for, in one sentence; shown while it is empty. */
  readonly help: string;
  /** Key of the column that names a row. */
  readonly tag: string;
  /** Keys that tell a row from the others only together, where the tag alone stands in many of them. */
  readonly named?: readonly string[];
  readonly columns: readonly Column[];
  /** Figures of this sheet that are worked out together; one solution may read what another gives. */
  readonly solutions?: readonly Solution[];
}

/** Whether a column holds the verdict on its row. */
export function isStatus(column: Column | undefined): boolean {
  return column?.role === 'computed' && column.status === true;
}

/** Whether a column holds numbers, as typed or as worked out. */
export function isNumeric(column: Column): boolean {
  return column.kind === 'integer' || column.kind === 'number' || column.kind === 'ratio';
}

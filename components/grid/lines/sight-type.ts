import type { PanelChoice } from '../../../src/engine/panel-of.ts';

/**
 * Rows that are picked by their state, or because something in them takes the place of what follows from other
 * cells.
 */
export type RowsOnly = 'over' | 'near' | 'incomplete' | 'own';

/** What a column may hold in a row in sight. */
export interface ColumnSight {
  /** One of these, as `heldText` has it; an empty text is an empty cell. */
  readonly texts?: readonly string[];
  /** A number no less, or no more than this. A cell without a known number has none. */
  readonly least?: number;
  readonly most?: number;
  /** Its own value, in place of one that follows from other cells. */
  readonly own?: true;
}

/** Which rows of a sheet are in sight, and in which order: a view, which changes neither rows nor their order. */
export interface Sight {
  /** The panel that is looked at. */
  readonly panel?: PanelChoice;
  readonly only?: RowsOnly | undefined;
  /** By key of column; a row has to pass all of them. */
  readonly columns: Readonly<Record<string, ColumnSight>>;
  readonly sort?: { readonly key: string; readonly down: boolean } | undefined;
}

export const ALL_ROWS: Sight = { columns: {} };

/** Whether some rows may be out of sight. */
export const isNarrowed = ({ panel, only, columns }: Sight): boolean =>
  panel !== undefined || only !== undefined || Object.keys(columns).length > 0;

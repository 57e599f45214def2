import type Handsontable from 'handsontable/base';
import { baseRenderer } from 'handsontable/renderers/baseRenderer';
import type { editorsFor } from '../editing/cell-editor.ts';
import { frozenColumns, inputAt, type GridModel } from '../grid-model.ts';
import { THEME_NAME } from '../theme.styles.ts';

type Editors = ReturnType<typeof editorsFor>;

/** Room [px] above a title of two lines, so that what opens the ways to sort and pick covers none of it. */
const MENU_ABOVE = 18;

/** What the settings read whenever the grid draws. */
export interface SettingsSource {
  readonly model: GridModel;
  readonly readonly: boolean;
  readonly widths: readonly number[];
  readonly draw: Handsontable.renderers.BaseRenderer;
  /** Column of the cell that has the focus. */
  readonly column: number;
  /** Steps on by the tabulator. @returns by how many columns. */
  tabStep(back: boolean): number;
  /** By how many columns Enter goes on, downwards: back to where the tabulator began. */
  enterStep(): number;
  /** Size of the figures [px]. */
  readonly fontSize: number;
}

/** Settings of the library that never change: everything that would keep data, sort, undo or write styles is off. */
export function fixedSettings(source: SettingsSource, licenseKey: string): Handsontable.GridSettings {
  return {
    licenseKey,
    themeName: THEME_NAME,
    injectCoreCss: false,
    width: '100%',
    height: '100%',
    autoColumnSize: false,
    autoRowSize: false,
    undo: false,
    wordWrap: false,
    manualColumnResize: true,
    outsideClickDeselects: false,
    // Upwards, the library turns both round.
    enterMoves: ((event: KeyboardEvent) => ({ row: 1, col: (event.shiftKey ? -1 : 1) * source.enterStep() })),
    tabMoves: ((event: KeyboardEvent) => ({ row: 0, col: source.tabStep(event.shiftKey) })),
    autoWrapRow: false,
    autoWrapCol: false,
    minSpareRows: 0,
    // Two lines of a title, and one of its letter and unit.
    columnHeaderHeight: Math.round(source.fontSize * 3.5) + 12 + (isTouched() ? MENU_ABOVE : 0),
    renderer: (...args) => {
      baseRenderer(...args);
      source.draw(...args);
    },
    rowHeaders: true,
    readOnlyCellClassName: 'not-editable',
    cells: (row: number, column: number) => ({ readOnly: !isEditable(source, row, column) }),
    colWidths: (column: number) => source.widths[column] ?? 80,
  };
}

/** Whether a person points at nothing before they press it: what opens a heading's ways is then always in sight. */
const isTouched = () => matchMedia('(hover: none)').matches;

/** Settings that follow from the sheet shown. The columns only point to lines: the grid holds no value of any cell. */
export function sheetSettings(source: SettingsSource, editors: Editors): Handsontable.GridSettings {
  const { model } = source;
  return {
    data: [...model.lines] as never,
    columns: model.columns.map((_column, index) => {
      const { kind, suggestions } = inputAt(model, index) ?? {};
      const listed = kind === 'reference' || kind === 'choice' || kind === 'boolean' || suggestions !== undefined;
      return { data: (() => null) as never, editor: listed ? editors.listed : editors.text };
    }) as never,
    colHeaders: model.columns.map(({ title }) => model.words.text(title)),
    rowHeaderWidth: Math.round(source.fontSize * (2.3 + 0.58 * String(model.lines.length).length)),
    fixedColumnsStart: frozenColumns(model),
    fillHandle: source.readonly ? false : { direction: 'vertical', autoInsertRow: false },
  };
}

function isEditable(source: SettingsSource, row: number, column: number): boolean {
  return !source.readonly && source.model.lines[row]?.kind !== 'heading' && inputAt(source.model, column) !== undefined;
}

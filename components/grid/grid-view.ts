import Handsontable from 'handsontable/base';
import { Autofill } from 'handsontable/plugins/autofill';
import { ManualColumnResize } from 'handsontable/plugins/manualColumnResize';
import { registerPlugin } from 'handsontable/plugins/registry';
import { isStatus, SCHEMA } from '../../src/schedule/index.ts';
import type { Pointed } from './editing/pointing.ts';
import { editorsFor, isOwnEditor, type EditorHost, type Typed } from './editing/cell-editor.ts';
import { idAt, type GridModel } from './grid-model.ts';
import { blockOf, selectionOf, type Block, type CellBlock, type GridSelection } from './grid-selection.ts';
import { dragRows } from './hot/row-drag.ts';
import { fixedSettings, sheetSettings, type SettingsSource } from './hot/grid-settings.ts';
import { fixShadowRoot } from './hot/shadow-fixes.ts';
import { skipHeadings, type HeadingLine } from './lines/index.ts';
import { cellRenderer, drawRowHeading } from './look/cell-renderer.ts';
import { drawColumnHeading, drawCorner } from './look/column-heading.ts';
import { columnWidths } from './look/column-widths.ts';
import type { MenuPoint } from './menu/cell-menu.ts';
import type { MenuPlace } from './menu/menu-entries.ts';
import { HeadingLayer } from './look/heading-layer.ts';

/** What a view asks of the element that holds it. */
export interface ViewHost extends Omit<EditorHost, 'model' | 'refused' | 'mark'> {
  /** Key of the grid library. */
  readonly licenseKey: string;
  /** Whether nothing can be changed. */
  readonly readonly: boolean;
  /** Takes a key while no cell is edited. @returns whether it has been dealt with. */
  takeKey(event: KeyboardEvent): boolean;
  fill(from: CellBlock, into: CellBlock): void;
  /** Puts the selected rows before a line. */
  dropRows(line: number): void;
  /** Opens the menu on what is selected. @param column at whose heading, or in which cell, it was asked for. */
  openMenu(place: MenuPlace, at: MenuPoint, column: number): void;
  /** A heading of a group was pressed. */
  fold(line: HeadingLine): void;
  /** What can be done with a column is asked for, at its heading. */
  headingOpened(key: string, box: DOMRect): void;
  /** A person gave a column another width, in sizes of type. */
  widened(key: string, width: number): void;
  selectionChanged(): void;
}

/** Whether the button in a heading was pressed. */
const isMenu = (event: Event): boolean =>
  ((event.composedPath()[0] as Element | undefined)?.closest('.menu') ?? null) !== null;

type Range = NonNullable<ReturnType<Handsontable['getSelectedRangeActive']>>;

/** One cell, by row and column as the schedule knows them. */
interface Spot {
  readonly id: number;
  readonly line: number;
  readonly key: string;
}

/** Where a person was on a sheet. */
interface Kept {
  /** Widths of columns [px] by key, but of those that a person widened. */
  readonly widths: ReadonlyMap<string, number>;
  readonly spot: Spot | undefined;
  readonly top: number;
  readonly left: number;
}

/**
 * The grid library on the screen, showing a model. It holds no data: lines point to rows, cells are drawn from the
 * schedule, and every edit goes to the host.
 */
export class GridView implements SettingsSource {
  readonly hot: Handsontable;
  model: GridModel;
  widths: number[];
  /** Lines that there were when they were measured. */
  #measuredLines = 0;
  /** The cells that a formula being typed is pointed at. */
  pointed: Pointed | undefined;
  readonly fontSize: number;
  readonly #host: ViewHost;
  readonly #editors: ReturnType<typeof editorsFor>;
  readonly #renderer: ReturnType<typeof cellRenderer>;
  readonly #headings: HeadingLayer;
  readonly #unfix: () => void;
  readonly #undrag: () => void;
  readonly #box: HTMLElement;
  readonly #kept = new Map<string, Kept>();
  /** The column in which a person began to go on by the tabulator, and whether it is going on just now. */
  #tabbedFrom: number | undefined;
  #tabs = false;

  /**
   * @param box where the grid is made; it must have a size.
   * @param groups where headings of groups are drawn, over the box.
   */
  constructor(host: ViewHost, model: GridModel, box: HTMLElement, groups: HTMLElement) {
    registerPlugin(Autofill);
    registerPlugin(ManualColumnResize);
    this.#host = host;
    this.#box = box;
    this.model = model;
    this.#renderer = cellRenderer(this);
    this.fontSize = Number.parseFloat(getComputedStyle(box).fontSize);
    box.style.setProperty('--ht-line-height', `${Math.round(this.fontSize * 1.45)}px`);
    this.widths = this.#measure(model);
    this.#editors = editorsFor(this.#editorHost());
    this.hot = new Handsontable(box, {
      ...fixedSettings(this, host.licenseKey), ...sheetSettings(this, this.#editors), ...this.#hooks(),
    });
    this.#headings = new HeadingLayer(this.hot, groups);
    this.#unfix = fixShadowRoot(this.hot, box);
    this.#keepInView();
    this.#undrag = dragRows(this.hot, box, host.layer, host);
    box.addEventListener('contextmenu', this.#onMenu);
    box.addEventListener('mousedown', this.#onPoint, { capture: true });
    this.#describe();
    this.#headings.draw(model);
  }

  get readonly(): boolean {
    return this.#host.readonly;
  }

  get draw(): Handsontable.renderers.BaseRenderer {
    return this.#renderer.draw;
  }

  get column(): number {
    return this.hot.getSelectedRangeActive()?.highlight.col ?? 0;
  }

  get isEditing(): boolean {
    return this.hot.getActiveEditor()?.isOpened() === true;
  }

  /** The tabulator goes from what is entered to what is entered, past the status that stands between. */
  tabStep(back: boolean): number {
    const { column, model: { columns } } = this;
    this.#tabbedFrom ??= column;
    this.#tabs = true;
    return isStatus(columns[1]) && column === (back ? 2 : 0) ? 2 : 1;
  }

  enterStep(): number {
    return this.#tabbedFrom === undefined ? 0 : this.#tabbedFrom - this.column;
  }

  /** What an open editor holds that is not in the schedule yet. @param closes whether the editor is closed for it. */
  typed(closes: boolean): Typed | undefined {
    const editor = this.hot.getActiveEditor();
    if (!this.isEditing || !isOwnEditor(editor)) return undefined;
    const typed = editor.typed();
    if (closes) editor.abandon();
    return typed;
  }

  /** Shows another sheet, grouping, schedule or language; where a person was on it before is found again. */
  show(model: GridModel): void {
    const now = this.#now();
    const isSameSheet = this.#name(model) === this.#name(this.model);
    if (model.words === this.model.words) {
      const isOrdered = isSameSheet && model.sight.sort?.key === this.model.sight.sort?.key
        && model.sight.sort?.down === this.model.sight.sort?.down;
      this.#kept.set(this.#name(this.model), now);
      this.#turnTo(model, this.#kept.get(this.#name(model)));
      if (isOrdered && now.spot !== undefined) this.#lookAt(now.spot);
      return;
    }
    // Another language takes other widths.
    this.#kept.clear();
    this.#turnTo(model, isSameSheet ? { ...now, widths: new Map<string, number>() } : undefined);
  }

  /** Shows another document, as when a file is opened: nothing is remembered of the one before. */
  restart(model: GridModel): void {
    this.#kept.clear();
    this.#turnTo(model, undefined);
  }

  #turnTo(model: GridModel, kept: Kept | undefined): void {
    this.model = model;
    this.widths = this.#measure(model, kept?.widths);
    this.hot.deselectCell();
    const resize = this.hot.getPlugin('manualColumnResize');
    for (let column = 0; column < this.hot.countCols(); column += 1) resize.clearManualSize(column);
    this.#renderer.forget();
    // Left to itself, the library draws once for the rows and once more for the columns.
    this.hot.batchRender(() => {
      this.#takeSize();
      this.hot.updateSettings(sheetSettings(this, this.#editors));
    });
    this.#describe();
    // The library's own way scrolls no further than to the columns that stay in view.
    Object.assign(this.#holder, { scrollTop: kept?.top ?? 0, scrollLeft: kept?.left ?? 0 });
    if (kept?.spot !== undefined) this.#selectSpot(kept.spot);
    this.#headings.draw(model);
  }

  /** Shows what an action has changed. The selection stays on its rows. */
  refresh(model: GridModel): void {
    // Widths that follow from a few rows, or from none, are nothing to many: those of a list, or typed one by one.
    const isOther = model.lines.length > 2 * Math.max(1, this.#measuredLines);
    if (model.columns !== this.model.columns) {
      this.#turnTo(model, isOther ? { ...this.#now(), widths: new Map<string, number>() } : this.#now());
      return;
    }
    if (isOther) this.widths = this.#measure(model);
    this.#renderer.forget();
    if (this.model.lines === model.lines) {
      this.model = model;
      this.hot.render();
    } else {
      const [range, spot] = [this.hot.getSelectedRangeActive(), this.#spot()];
      const anchor = range === undefined ? -1 : idAt(this.model, range.from.row ?? -1);
      const end = range === undefined ? -1 : idAt(this.model, range.to.row ?? -1);
      this.model = model;
      this.hot.updateData([...model.lines] as never);
      if (range !== undefined && spot !== undefined) this.#selectAgain(range, anchor, end, spot);
      this.#describe();
    }
    this.#headings.draw(this.model);
  }

  selection(): GridSelection | undefined {
    const ranges = this.hot.getSelectedRange();
    const focus = this.hot.getSelectedRangeActive()?.highlight;
    if (ranges === undefined || focus === undefined) return undefined;
    const blocks = ranges.map(({ from, to }) => ({
      from: { row: from.row ?? 0, col: from.col ?? 0 }, to: { row: to.row ?? 0, col: to.col ?? 0 },
    }));
    return selectionOf(blocks, { row: focus.row ?? 0, col: focus.col ?? 0 });
  }

  /**
   * Selects the block of some rows and columns, and brings it into view.
   * @param listens whether keys are the grid's from then on.
   * @returns whether the rows are shown.
   */
  select(ids: readonly number[], keys: readonly string[], scroll = true, listens = true): boolean {
    const wanted = new Set(ids);
    const lines = this.model.lines.flatMap((line, index) => (
      line.kind === 'row' && wanted.has(line.id) ? [index] : []
    ));
    const columns = keys.map((key) => this.model.columns.findIndex((column) => column.key === key))
      .filter((index) => index >= 0);
    if (lines.length === 0 || columns.length === 0) return false;
    this.hot.selectCell(lines[0]!, Math.min(...columns), lines.at(-1), Math.max(...columns), scroll, listens);
    return true;
  }

  /** Selects the first cell of a line. */
  selectLine(line: number): void {
    if (line >= 0) this.hot.selectCell(line, 0);
  }

  /** Asks for what can be done with a column, at its heading. */
  openHeading(column: number): void {
    const heading = this.hot.rootElement.querySelector(`.ht_clone_top th[aria-colindex="${column + 2}"], `
      + `.ht_clone_top_inline_start_corner th[aria-colindex="${column + 2}"]`) ?? this.#box;
    this.#host.headingOpened(this.model.columns[column]!.key, heading.getBoundingClientRect());
  }

  focus(): void {
    const at = this.hot.getSelectedRangeActive()?.highlight;
    if (at === undefined) this.hot.selectCell(Math.min(this.#firstRow(), this.hot.countRows() - 1), 0);
    this.hot.listen();
    this.hot.getFocusManager().focusOnHighlightedCell();
  }

  /** Draws everything again, as it is. */
  repaint(): void {
    this.#renderer.forget();
    this.hot.render();
  }

  /** The box of a cell as it is seen; `undefined` where it is not drawn. */
  boxOf(line: number, column: number): DOMRect | undefined {
    return this.hot.getCell(line, column, true)?.getBoundingClientRect();
  }

  /** Opens the editor of the cell that has the focus, with its list where it has one. */
  edit(): void {
    this.focus();
    const at = this.hot.getSelectedRangeActive()?.highlight;
    const editor = this.hot.getActiveEditor();
    if (at === undefined || editor === undefined || this.hot.getCellMeta(at.row!, at.col!).readOnly === true) return;
    editor.enableFullEditMode();
    editor.beginEditing(null, undefined);
  }

  /**
   * Goes to the first cell of the row, or of the table. The library stops at the first column that is not frozen.
   * @param extend from where the selection began, it reaches there.
   */
  goToStart(of: 'row' | 'table', extend = false): void {
    const range = this.hot.getSelectedRangeLast();
    const row = of === 'table' ? this.#firstRow() : range?.to.row;
    if (row === undefined || row === null) return;
    // Below 0 are headings.
    const line = Math.max(0, row);
    const { row: fromRow, col } = range?.from ?? {};
    if (extend) this.hot.selectCell(Math.max(0, fromRow ?? line), Math.max(0, col ?? 0), line, 0);
    else this.hot.selectCell(line, 0);
  }

  /** After the element has moved in the page: the rows painted before are painted again where they are. */
  revive(): void {
    this.resize();
    if (this.#isShown) this.hot.render();
  }

  /** Draws what fits now. Where nothing has changed its size nothing is drawn. */
  resize(): void {
    if (!this.#isShown) return;
    this.hot.refreshDimensions();
    // In closed details it has a size, and nothing in it is drawn.
    if (this.#box.querySelector('tbody td') === null) this.hot.render();
    this.#headings.draw(this.model);
  }

  /**
   * The explanation below grows with what it says: the cell that it is about stays in view if it was. What is drawn, a
   * little more than what was in view, tells whether it was: the library has counted by the new height already.
   */
  #keepInView(): void {
    let row = -1;
    this.hot.addHook('beforeRefreshDimensions', () => {
      const selected = this.hot.getSelectedRangeActive()?.highlight.row ?? -1;
      row = selected <= this.hot.getLastRenderedVisibleRow() ? selected : -1;
    });
    this.hot.addHook('afterRefreshDimensions', () => {
      if (row > this.hot.getLastFullyVisibleRow()) this.hot.scrollViewportTo({ row, verticalSnap: 'bottom' });
    });
  }

  /** What came above the rows with another look at them has made the grid smaller: it is not drawn once more for it. */
  #takeSize(): void {
    const { view, rootElement } = this.hot;
    const { width, height } = rootElement.getBoundingClientRect();
    const { width: lastWidth, height: lastHeight } = view.getLastSize();
    if (!this.#isShown || (width === lastWidth && height === lastHeight)) return;
    view.setLastSize(width, height);
    view.adjustElementsSize();
  }

  get #isShown(): boolean {
    return this.#box.offsetHeight > 0 && this.#box.offsetWidth > 0;
  }

  destroy(): void {
    this.#unfix();
    this.#undrag();
    this.#box.removeEventListener('contextmenu', this.#onMenu);
    this.#box.removeEventListener('mousedown', this.#onPoint, { capture: true });
    this.#headings.destroy();
    this.hot.destroy();
  }

  #hooks(): Handsontable.GridSettings {
    return {
      beforeKeyDown: (event) => (this.#takeKey(event) ? false : undefined) as never,
      // Nothing is ever written to the library's own data: edits are actions of the schedule.
      beforeChange: () => false,
      beforeAutofill: (_data, from, into) => {
        this.#host.fill(blockOf(from as Block), blockOf(into as Block));
        return false as never;
      },
      modifyTransformStart: (delta) => {
        const from = this.hot.getSelectedRangeActive()?.highlight.row ?? -1;
        if (from >= 0) delta.row = skipHeadings(this.model.lines, from, delta.row ?? 0);
      },
      afterSelection: () => {
        if (!this.#tabs) this.#tabbedFrom = undefined;
        this.#tabs = false;
        this.#keepClearOfHeading();
        this.#host.selectionChanged();
      },
      afterDeselect: () => { this.#host.selectionChanged(); },
      beforeRender: () => { this.#renderer.forget(); },
      afterGetColHeader: (index, heading) => {
        const { words, columns } = this.model;
        const column = columns[index];
        // Scrolled sideways, the library gives the corner as the column before the first one that is drawn.
        if (heading.cellIndex === 0) drawCorner(words, heading);
        else if (column !== undefined) {
          drawColumnHeading(this.model, column, heading);
          // The library counts those that are drawn; cells are told by their place in the sheet.
          heading.setAttribute('aria-colindex', String(index + 2));
        }
      },
      afterGetRowHeader: (row, heading) => { drawRowHeading(this, row, heading); },
      beforeOnCellMouseDown: (event, { row, col }) => {
        const line = this.model.lines[row ?? -1];
        const isHeading = row !== null && row < 0 && (col ?? -1) >= 0;
        if (line?.kind !== 'heading' && !(isHeading && event.button === 0 && isMenu(event))) return;
        event.stopImmediatePropagation();
        if (line?.kind === 'heading') this.#host.fold(line);
        else {
          // What opens while the button is still down closes when it is let go.
          const over = new AbortController();
          const open = () => { over.abort(); setTimeout(() => { this.openHeading(col!); }); };
          addEventListener('pointerup', open, over);
          addEventListener('pointercancel', () => { over.abort(); }, over);
        }
      },
      beforeColumnResize: (width, column, isDoubleClick) => isDoubleClick ? this.#fitting(column) : width,
      afterColumnResize: (width, column) => {
        this.widths[column] = width;
        this.#host.widened(this.model.columns[column]!.key, width / this.fontSize);
      },
    };
  }

  /** Opens the menu on the cell that has the focus. */
  openMenu(): void {
    const at = this.hot.getSelectedRangeActive()?.highlight;
    const box = at === undefined ? undefined : this.boxOf(at.row!, at.col!);
    if (box === undefined) return;
    const isOf = (name: 'isSelectedByRowHeader' | 'isSelectedByColumnHeader') => this.hot.selection[name]();
    this.#host.openMenu(isOf('isSelectedByRowHeader') ? 'rows' : isOf('isSelectedByColumnHeader') ? 'columns' : 'cells',
      { x: box.left, y: box.bottom }, this.column);
  }

  readonly #onMenu = (event: MouseEvent): void => {
    // A field that is being edited has the menu of the browser.
    if (this.isEditing) return;
    event.preventDefault();
    const heading = (event.composedPath()[0] as Element).closest('th');
    const place = heading === null ? 'cells' : heading.closest('thead') === null ? 'rows' : 'columns';
    // Of several columns that are selected, it is the one whose heading was pressed.
    const column = place === 'columns' ? Number(heading!.getAttribute('aria-colindex')) - 2 : this.column;
    this.#host.openMenu(place, { x: event.clientX, y: event.clientY }, column);
  };

  /** A click puts the name of a cell into the formula that is being typed, a drag those of a range. */
  readonly #onPoint = (event: MouseEvent): void => {
    const editor = this.hot.getActiveEditor();
    const spotOf = ({ target }: Event, path: readonly EventTarget[]) => {
      const cell = ((path[0] ?? target) as Element).closest<HTMLTableCellElement>('tbody td');
      const at = cell === null ? null : this.hot.getCoords(cell);
      return at === null ? undefined : { line: at.row ?? -1, column: at.col ?? -1 };
    };
    const spot = spotOf(event, event.composedPath());
    if (
      event.button !== 0 || spot === undefined || !this.isEditing || !isOwnEditor(editor) || !editor.awaitsCell
    ) return;
    // The library would close the editor for it.
    event.stopImmediatePropagation();
    event.preventDefault();
    editor.pointAt(spot, event.shiftKey);
    const over = new AbortController();
    const options = { capture: true, signal: over.signal };
    document.addEventListener('mousemove', (moved) => {
      const to = spotOf(moved, moved.composedPath());
      if (to !== undefined && (to.line !== spot.line || to.column !== spot.column)) editor.pointAt(to, true);
    }, options);
    document.addEventListener('mouseup', () => { over.abort(); }, options);
  };

  #takeKey(event: KeyboardEvent): boolean {
    const editor = this.hot.getActiveEditor();
    const taken = this.isEditing ? isOwnEditor(editor) && editor.takeKey(event) : this.#host.takeKey(event);
    if (taken) {
      event.preventDefault();
      event.stopPropagation();
    }
    return taken;
  }

  #editorHost(): EditorHost {
    const host = this.#host;
    return {
      model: () => this.model,
      layer: host.layer,
      plan: (...place) => host.plan(...place),
      enter: (...place) => { host.enter(...place); },
      refused: (line, column) => this.model.refused
        .of(this.model.sheet, idAt(this.model, line), this.model.columns[column]!.key)?.text,
      mark: (pointed) => {
        this.pointed = pointed;
        this.repaint();
      },
      giveUp: (line, column) => { host.giveUp(line, column); },
      planForAll: (text) => host.planForAll(text),
      perform: (plan) => { host.perform(plan); },
    };
  }

  /** A selected cell must not lie behind the heading that is kept in view. */
  #keepClearOfHeading(): void {
    if (this.#headings.height === 0) return;
    requestAnimationFrame(() => {
      const row = this.hot.isDestroyed ? undefined : this.hot.getSelectedRangeActive()?.highlight.row;
      if (row === undefined || row === null || row < 0) return;
      const above = row * this.#headings.height - this.#holder.scrollTop;
      if (above >= 0 && above < this.#headings.height) this.#holder.scrollTop -= this.#headings.height - above;
    });
  }

  #selectAgain(range: Range, anchor: number, end: number, spot: Spot): void {
    const lineOf = (id: number, otherwise: number): number => {
      const found = id < 0 ? -1 : this.model.lines.findIndex((line) => line.kind === 'row' && line.id === id);
      return Math.min(found < 0 ? otherwise : found, this.model.lines.length - 1);
    };
    const from = lineOf(anchor, range.from.row ?? spot.line);
    const to = end === anchor ? from : lineOf(end, range.to.row ?? spot.line);
    if (from < 0) return;
    this.hot.selectCell(from, Math.max(0, range.from.col ?? 0), to, Math.max(0, range.to.col ?? 0), false, false);
  }

  /** Where a person is. */
  #now(): Kept {
    const { columns, look: { wide } } = this.model;
    const widths = new Map(columns.map(({ key }, column) => [key, this.widths[column]!]));
    for (const key of Object.keys(wide)) widths.delete(key);
    const { scrollTop: top, scrollLeft: left } = this.#holder;
    return { widths, spot: this.#spot(), top, left };
  }

  #spot(): Spot | undefined {
    const at = this.hot.getSelectedRangeActive()?.highlight;
    const column = this.model.columns[at?.col ?? -1];
    const line = at?.row ?? null;
    if (line === null || column === undefined) return undefined;
    return { id: idAt(this.model, line), line, key: column.key };
  }

  #selectSpot({ id, line, key }: Spot): void {
    if (this.select([id], [key], false)) return;
    const column = this.model.columns.findIndex((each) => each.key === key);
    if (line < this.model.lines.length && column >= 0) this.hot.selectCell(line, column, line, column, false, false);
  }

  /** Among rows that were picked anew, the one where a person was is in view, or the first where that one has gone. */
  #lookAt({ id, line, key }: Spot): void {
    if (id < 0) return;
    const row = this.model.lines.findIndex((each) => each.kind === 'row' && each.id === id);
    if (row === line) return;
    if (row >= 0) this.hot.scrollViewportTo({ row });
    else {
      this.#holder.scrollTop = 0;
      const column = this.model.columns.findIndex((each) => each.key === key);
      const first = this.#firstRow();
      this.hot.selectCell(first, Math.max(0, column), first, Math.max(0, column), false, false);
    }
  }

  #firstRow(): number {
    return Math.max(0, this.model.lines.findIndex(({ kind }) => kind !== 'heading'));
  }

  /** Tells assistive technology what the table is and how long, which the library leaves out. */
  #describe(): void {
    const { sheet, lines, words } = this.model;
    const root = this.hot.rootElement;
    root.setAttribute('aria-label', words.text(SCHEMA[sheet].title));
    root.setAttribute('aria-rowcount', String(lines.length + 1));
  }

  #name(model: GridModel): string {
    return `${model.sheet} ${model.grouping}`;
  }

  get #holder(): HTMLElement {
    return this.hot.rootElement.querySelector<HTMLElement>('.ht_master .wtHolder')!;
  }

  /** Widths of the columns: those that a person gave, those that are known, and measured ones. */
  #measure(model: GridModel, known?: ReadonlyMap<string, number>): number[] {
    this.#measuredLines = model.lines.length;
    const { wide } = model.look;
    const widths = model.columns.map(({ key }) => key in wide ? wide[key]! * this.fontSize : known?.get(key));
    if (widths.every((width) => width !== undefined)) return widths;
    return columnWidths(model, model.columns, this.#font, this.fontSize)
      .map((width, column) => widths[column] ?? width);
  }

  /** Width with which a column shows everything that stands in it. */
  #fitting(column: number): number {
    return columnWidths(this.model, [this.model.columns[column]!], this.#font, this.fontSize, 'whole')[0]!;
  }

  get #font(): string {
    const { fontWeight, fontFamily } = getComputedStyle(this.#box);
    return `${fontWeight} ${this.fontSize}px ${fontFamily}`;
  }
}

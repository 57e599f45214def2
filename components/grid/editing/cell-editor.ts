import { TextEditor } from 'handsontable/editors/textEditor';
import { isNumeric, titleWithUnit, type InputColumn } from '../../../src/schedule/index.ts';
import { textToEdit, type Plan } from '../actions/index.ts';
import { idAt, inputAt, type GridModel } from '../grid-model.ts';
import { skipHeadings } from '../lines/index.ts';
import { awaitsCell, nameOfCells, type Pointed, type Spot } from './pointing.ts';
import { SuggestionList } from './suggestion-list.ts';
import { suggestionsFor } from './suggestions.ts';

/** What an editor needs of the grid around it. */
export interface EditorHost {
  model(): GridModel;
  /** Where the list of an editor is put: inside the shadow root, outside the grid. */
  readonly layer: HTMLElement;
  /** What entering a text comes to; nothing happens yet. */
  plan(line: number, column: number, text: string): Plan;
  /** Enters a text, or keeps it with what is wrong. */
  enter(line: number, column: number, text: string): void;
  /** A text that could not be taken, to be mended. */
  refused(line: number, column: number): string | undefined;
  /** Gives up what could not be taken. */
  giveUp(line: number, column: number): void;
  /** The same for all selected cells. */
  planForAll(text: string): Plan;
  /** Marks the cells that a formula being typed is pointed at. */
  mark(pointed: Pointed | undefined): void;
  /** Carries a plan out, or says why it is refused. */
  perform(plan: Plan): void;
}

/** What an open editor holds that is not in the schedule yet. */
export interface Typed {
  readonly line: number;
  readonly text: string;
  /** What entering it comes to. */
  readonly plan: Plan;
}

/** An editor of a cell as this grid has it. */
export interface OwnEditor {
  /** Takes a key before the grid does. @returns whether the key has been dealt with. */
  takeKey(event: KeyboardEvent): boolean;
  /** What stands in it and differs from what it began with; `undefined` when nothing does. */
  typed(): Typed | undefined;
  /** Closes it and leaves the cell as it is. */
  abandon(): void;
  /** Whether a formula is being typed in which the name of a cell may come next. */
  readonly awaitsCell: boolean;
  /** Puts the name of a cell into the formula. @param extends whether it is the other end of a range. */
  pointAt(spot: Spot, isEnd: boolean): void;
}

export const isOwnEditor = (editor: unknown): editor is OwnEditor =>
  typeof editor === 'object' && editor !== null && 'takeKey' in editor;

/** What an editor is called: its column, and its row by the number as entered. */
function editorName(model: GridModel, line: number, inputColumn: InputColumn): string {
  const { words, schedule, sheet } = model;
  const id = idAt(model, line);
  const column = titleWithUnit(inputColumn, words);
  return id < 0
    ? words.say('{column}, new row', { column })
    : words.say('{column}, row {row}', { column, row: schedule.document.position(sheet, id) + 1 });
}

/** Parts of the library's editor that its types leave open. */
type Callback = (saved: boolean) => void;

const EDITING = 'STATE_EDITING';

const ARROWS: Readonly<Record<string, Spot>> = {
  ArrowUp: { line: -1, column: 0 }, ArrowDown: { line: 1, column: 0 },
  ArrowLeft: { line: 0, column: -1 }, ArrowRight: { line: 0, column: 1 },
};

/**
 * The editors of a grid: one for texts of several lines, one on a single line with a list of what may be entered. They
 * write nothing to the grid: what is typed becomes an action of the schedule. A text that is refused stays in the open
 * editor when a key would close it.
 */
export function editorsFor(host: EditorHost): { text: typeof TextEditor; listed: typeof TextEditor } {
  class CellEditor extends TextEditor implements OwnEditor {
    /** The text that the editor began with; `undefined` when a person began by typing. */
    begunWith: string | undefined;
    #pointed: Pointed | undefined;

    override createElements(tag?: string): void {
      super.createElements(tag);
      this.TEXTAREA.addEventListener('input', () => { this.#point(undefined); });
    }

    override close(): void {
      super.close();
      this.#point(undefined);
    }

    override prepare(...args: Parameters<TextEditor['prepare']>): void {
      const [line, column] = args;
      args[4] = textToEdit(host.model(), line, column);
      super.prepare(...args);
    }

    override beginEditing(initial?: unknown, event?: Event): void {
      // The cell may have been filled otherwise since it was selected.
      this.originalValue = host.refused(this.row!, this.col!) ?? textToEdit(host.model(), this.row!, this.col!);
      const isBegunAnew = !this.isInFullEditMode() || typeof initial === 'string'
        || host.refused(this.row!, this.col!) !== undefined;
      this.begunWith = isBegunAnew ? undefined : this.originalValue as string;
      super.beginEditing(initial, event);
    }

    override open(): void {
      super.open();
      const column = inputAt(host.model(), this.col!);
      if (column !== undefined) this.TEXTAREA.setAttribute('aria-label', editorName(host.model(), this.row!, column));
      // On site, with a finger, what is measured is typed on the keyboard of numbers.
      this.TEXTAREA.inputMode = column?.rare === 'measured' ? 'decimal' : '';
      this.TEXTAREA.setAttribute('autocomplete', 'off');
      this.TEXTAREA.setAttribute('spellcheck', 'false');
      this.TEXTAREA.removeAttribute('aria-invalid');
    }

    override finishEditing(restore = false, ofAll = false, callback?: Callback): void {
      if (restore || this.state !== EDITING) {
        if (restore && this.state === EDITING) host.giveUp(this.row!, this.col!);
        super.finishEditing(restore, ofAll, callback);
        return;
      }
      const text = this.typedText();
      const [line, column] = [this.row!, this.col!];
      const unchanged = text === this.begunWith;
      super.finishEditing(true, false, callback);
      if (unchanged && !ofAll) return;
      if (ofAll && this.hot.selection.isMultiple()) host.perform(host.planForAll(text));
      else host.enter(line, column, text);
    }

    get awaitsCell(): boolean {
      const { selectionEnd, value } = this.TEXTAREA;
      const caret = this.TEXTAREA.selectionStart ?? 0;
      const column = inputAt(host.model(), this.col!);
      if (!this.isOpened() || column === undefined || !isNumeric(column) || caret !== selectionEnd) return false;
      return this.#pointed?.end === caret || awaitsCell(value, caret);
    }

    pointAt(spot: Spot, isEnd: boolean): void {
      const { value } = this.TEXTAREA;
      const caret = this.TEXTAREA.selectionStart ?? 0;
      const before = this.#pointed;
      const from = isEnd && before !== undefined ? before.from : spot;
      const name = nameOfCells(host.model(), { from, to: spot });
      if (name === undefined) return;
      const start = before?.start ?? caret;
      this.TEXTAREA.value = value.slice(0, start) + name + value.slice(before?.end ?? caret);
      const end = start + name.length;
      this.TEXTAREA.setSelectionRange(end, end);
      this.#point({ from, to: spot, start, end });
    }

    #point(pointed: Pointed | undefined): void {
      if (this.#pointed === pointed) return;
      this.#pointed = pointed;
      host.mark(pointed);
    }

    /** An arrow goes from cell to cell while a formula waits for the name of one; after F2 it goes through the text. */
    takesArrow(event: KeyboardEvent): boolean {
      const step = ARROWS[event.key];
      const isPlain = !event.altKey && !event.ctrlKey && !event.metaKey;
      if (
        step === undefined || !isPlain || !this.awaitsCell
          || (this.isInFullEditMode() && this.#pointed === undefined)
      ) return false;
      const { lines, columns } = host.model();
      const at = this.#pointed?.to ?? { line: this.row!, column: this.col! };
      const line = at.line + skipHeadings(lines, at.line, step.line);
      const column = Math.min(columns.length - 1, Math.max(0, at.column + step.column * this.hot.getDirectionFactor()));
      this.pointAt({ line, column }, event.shiftKey);
      return true;
    }

    takeKey(event: KeyboardEvent): boolean {
      if (this.takesArrow(event)) return true;
      const typed = this.#closes(event) ? this.typed() : undefined;
      if (typed?.plan.kind !== 'refused') return false;
      this.TEXTAREA.setAttribute('aria-invalid', 'true');
      host.enter(typed.line, this.col!, typed.text);
      return true;
    }

    typed(): Typed | undefined {
      const text = this.isOpened() && this.state === EDITING ? this.typedText() : undefined;
      if (text === undefined || text === this.begunWith) return undefined;
      return { line: this.row!, text, plan: host.plan(this.row!, this.col!, text) };
    }

    abandon(): void {
      super.finishEditing(true);
    }

    typedText(): string {
      return this.TEXTAREA.value;
    }

    #closes({ key, altKey, ctrlKey, metaKey }: KeyboardEvent): boolean {
      if (key === 'Enter') return !altKey && !((ctrlKey || metaKey) && !this.hot.selection.isMultiple());
      if (key === 'Tab' || key === 'PageUp' || key === 'PageDown') return true;
      return key.startsWith('Arrow') && !this.isInFullEditMode();
    }
  }

  class ListedEditor extends CellEditor {
    suggestions: SuggestionList | undefined;

    override createElements(): void {
      super.createElements('input');
    }

    override open(): void {
      super.open();
      const column = inputAt(host.model(), this.col!);
      if (column === undefined || this.TD === null) return;
      const list = this.suggestions ?? this.#makeList();
      const { schedule, words } = host.model();
      list.element.setAttribute('aria-label', words.say('Suggestions'));
      const isClosed = column.kind === 'choice' || column.kind === 'boolean';
      list.open(
        suggestionsFor(schedule, column, words), this.begunWith ?? '', this.TD.getBoundingClientRect(), isClosed
      );
    }

    override close(): void {
      super.close();
      this.suggestions?.close();
    }

    override takeKey(event: KeyboardEvent): boolean {
      if (this.takesArrow(event)) return true;
      const list = this.suggestions;
      if (list?.isOpen === true && this.state === EDITING && !event.altKey) {
        if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
          list.step(event.key === 'ArrowDown' ? 1 : -1);
          return true;
        }
        if ((event.key === 'Enter' || event.key === 'Tab') && list.chosen !== undefined) this.setValue(list.chosen);
      }
      return super.takeKey(event);
    }

    #makeList(): SuggestionList {
      const list = new SuggestionList(this.TEXTAREA, (word) => {
        this.setValue(word);
        this.finishEditing();
      });
      host.layer.append(list.element);
      this.TEXTAREA.addEventListener('input', () => list.narrow(this.typedText()));
      this.suggestions = list;
      return list;
    }
  }

  return { text: CellEditor, listed: ListedEditor };
}

/** What a key does in the grid while no cell is being edited. */
export type GridCommand =
  | 'undo' | 'redo' | 'clearCells' | 'fillDown' | 'insertAbove' | 'insertBelow' | 'removeRows' | 'moveUp' | 'moveDown'
  | 'openList' | 'toggle';

interface GridKey {
  readonly command: GridCommand;
  /** Value of `KeyboardEvent.key`, in lower case. */
  readonly key: string;
  readonly control?: true;
  readonly alt?: true;
  readonly shift?: true;
}

const GRID_KEYS: readonly GridKey[] = [
  { command: 'undo', key: 'z', control: true },
  { command: 'redo', key: 'y', control: true },
  { command: 'redo', key: 'z', control: true, shift: true },
  { command: 'clearCells', key: 'delete' },
  { command: 'clearCells', key: 'backspace' },
  { command: 'fillDown', key: 'd', control: true },
  { command: 'insertBelow', key: 'enter', alt: true },
  { command: 'insertAbove', key: 'enter', alt: true, shift: true },
  { command: 'removeRows', key: 'delete', alt: true },
  { command: 'removeRows', key: 'backspace', alt: true },
  { command: 'moveUp', key: 'arrowup', alt: true, shift: true },
  { command: 'moveDown', key: 'arrowdown', alt: true, shift: true },
  { command: 'openList', key: 'arrowdown', alt: true },
  { command: 'toggle', key: ' ' },
];

/** The command of a key, on a Mac with Command in place of Control. */
export function commandOf({ key, ctrlKey, metaKey, altKey, shiftKey }: KeyboardEvent): GridCommand | undefined {
  return GRID_KEYS.find((each) => each.key === key.toLowerCase() && (each.control === true) === (ctrlKey || metaKey)
    && (each.alt === true) === altKey && (each.shift === true) === shiftKey)?.command;
}

/** The keys of the grid and what they do, for the help of the page. */
export const KEY_HELP: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: 'Enter or F2', does: 'Edit the cell; Enter again takes the text and goes down, Tab goes on, Escape leaves the cell as it was' },
  { keys: 'any letter or digit', does: 'Type over the cell' },
  { keys: '=', does: 'Begin a formula such as =D3*2: letter of the column, number of the row' },
  { keys: 'Alt+Down', does: 'Open the list of a cell that has one' },
  { keys: 'Space', does: 'Change yes to no and back' },
  { keys: 'Delete', does: 'Empty the selected cells; defaults come back' },
  { keys: 'Ctrl+D', does: 'Fill the selected cells with the first row, or one row with the row above' },
  { keys: 'Ctrl+C, Ctrl+X, Ctrl+V', does: 'Copy, cut and paste cells; what is pasted at the end adds rows' },
  { keys: 'Ctrl+Z', does: 'Undo' },
  { keys: 'Ctrl+Y or Ctrl+Shift+Z', does: 'Redo' },
  { keys: 'Alt+Enter', does: 'Insert rows below; in an open cell of text, begin a new line' },
  { keys: 'Alt+Shift+Enter', does: 'Insert rows above' },
  { keys: 'Alt+Delete or Alt+Backspace', does: 'Delete the selected rows' },
  { keys: 'Alt+Shift+Up, Alt+Shift+Down', does: 'Move the selected rows' },
  { keys: 'arrows, Home, End, Page Up, Page Down', does: 'Move; with Ctrl to the edge, with Shift to extend the selection' },
  { keys: 'Shift+Space, Ctrl+Space', does: 'Select whole rows, whole columns' },
  { keys: 'Tab', does: 'Next cell; at the end of a row, leave the table' },
];

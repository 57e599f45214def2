import { message } from '../../src/words/index.ts';
import type { JobCommand } from '../schedule-toolbar/commands.ts';

/** What a key does in the grid while no cell is being edited. */
export type GridCommand =
  | 'undo' | 'redo' | 'clearCells' | 'fillDown' | 'insertAbove' | 'insertBelow' | 'removeRows' | 'moveUp' | 'moveDown'
  | 'fillRight' | 'takeProposal' | 'openList' | 'openMenu' | 'toggle' | 'rowStart' | 'tableStart' | 'fold' | 'unfold'
  | 'extendToRowStart' | 'extendToTableStart'
  | 'columnMenu' | JobCommand;

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
  { command: 'fillRight', key: 'r', control: true },
  { command: 'takeProposal', key: '.', control: true },
  { command: 'insertBelow', key: 'enter', alt: true },
  { command: 'insertAbove', key: 'enter', alt: true, shift: true },
  { command: 'removeRows', key: 'delete', alt: true },
  { command: 'removeRows', key: 'backspace', alt: true },
  { command: 'moveUp', key: 'arrowup', alt: true, shift: true },
  { command: 'moveDown', key: 'arrowdown', alt: true, shift: true },
  { command: 'openList', key: 'arrowdown', alt: true },
  { command: 'openMenu', key: 'f10', shift: true },
  { command: 'openMenu', key: 'contextmenu' },
  { command: 'fold', key: 'arrowleft', alt: true, shift: true },
  { command: 'unfold', key: 'arrowright', alt: true, shift: true },
  { command: 'columnMenu', key: 'l', control: true, shift: true },
  { command: 'duplicate', key: 'd', alt: true, shift: true },
  { command: 'moveTo', key: 'm', alt: true, shift: true },
  { command: 'swapType', key: 's', alt: true, shift: true },
  { command: 'splitRun', key: 'x', alt: true, shift: true },
  { command: 'toggle', key: ' ' },
  { command: 'rowStart', key: 'home' },
  { command: 'tableStart', key: 'home', control: true },
  { command: 'extendToRowStart', key: 'home', shift: true },
  { command: 'extendToTableStart', key: 'home', control: true, shift: true },
];

/** The command of a key, on a Mac with Command in place of Control. */
export function commandOf({ key, code, ctrlKey, metaKey, altKey, shiftKey }: KeyboardEvent): GridCommand | undefined {
  // With Alt, some keyboards give another sign than the letter of the key.
  const name = altKey && /^Key[A-Z]$/.test(code) && !/^[a-z]$/i.test(key) ? code.slice(3) : key;
  return GRID_KEYS.find((each) => each.key === name.toLowerCase() && (each.control === true) === (ctrlKey || metaKey)
    && (each.alt === true) === altKey && (each.shift === true) === shiftKey)?.command;
}

/** The keys of the grid and what they do, for the help of the page. */
export const KEY_HELP: readonly { readonly keys: string; readonly does: string }[] = [
  {
    keys: message('Enter or F2'),
    does: message(
      'Edit the cell; Enter again takes the text and goes down, after Tab to the column where it began; Escape leaves the cell as it was'
    ),
  },
  { keys: message('any letter or digit'), does: message('Type over the cell') },
  { keys: message('='), does: message('Begin a formula such as =D3*2: letter of the column, number of the row') },
  { keys: message('Alt+Down'), does: message('Open the list of a cell that has one') },
  { keys: message('Shift+F10 or right click'), does: message('Menu of what can be done with the cells, rows or columns') },
  { keys: message('Space'), does: message('Change yes to no and back') },
  { keys: message('Delete'), does: message('Empty the selected cells; defaults come back') },
  {
    keys: message('Ctrl+D'),
    does: message('Fill the selected cells with the first row, or one row with the row above; tags go on'),
  },
  {
    keys: message('Ctrl+C, Ctrl+X, Ctrl+V'),
    does: message('Copy, cut and paste cells; what is pasted at the end adds rows'),
  },
  { keys: message('Ctrl+R'), does: message('Fill the selected cells with the first column, or one column with the one before') },
  { keys: message('Ctrl+.'), does: message('Take what is proposed for a tag that no row has; else go to what would mend what was found in the cell') },
  { keys: message('Ctrl+Z'), does: message('Undo') },
  { keys: message('Ctrl+Y or Ctrl+Shift+Z'), does: message('Redo') },
  { keys: message('Alt+Enter'), does: message('Insert rows below; in an open cell of text, begin a new line') },
  { keys: message('Alt+Shift+Enter'), does: message('Insert rows above') },
  { keys: message('Alt+Delete or Alt+Backspace'), does: message('Delete the selected rows') },
  { keys: message('Alt+Shift+Up, Alt+Shift+Down'), does: message('Move the selected rows; those selected by their numbers can be dragged') },
  { keys: message('Alt+Shift+D'), does: message('Duplicate the selected rows, or an area, with all that belongs to them') },
  { keys: message('Alt+Shift+M'), does: message('Move the selected rows to another rail or branch, with their runs') },
  { keys: message('Alt+Shift+S'), does: message('Swap a type: give device rows another one') },
  { keys: message('Alt+Shift+X'), does: message('Part the run of the selected device row, or the selected run, in two') },
  { keys: message('Alt+Shift+Left, Alt+Shift+Right'), does: message('Fold the group of the row under its heading, show its rows again') },
  { keys: message('Ctrl+Shift+K'), does: message('Folds the rows of all groups under their headings, or shows them again') },
  { keys: message('Ctrl+Shift+L'), does: message('Sort by the column of the selected cell, or pick rows by what it holds') },
  {
    keys: message('arrows, Home, End, Page Up, Page Down'),
    does: message('Move; with Ctrl to the edge, with Shift to extend the selection'),
  },
  { keys: message('Shift+Space, Ctrl+Space'), does: message('Select whole rows, whole columns') },
  { keys: message('Tab'), does: message('Next cell; at the end of a row, leave the table') },
];

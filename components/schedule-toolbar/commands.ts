import type { IconName } from '../look/index.ts';

/** What a button of the element does. */
export interface Command {
  readonly title: string;
  /** One line for a person who has not used it yet. */
  readonly help: string;
  readonly icon: IconName;
  /** Keys that do the same, as they are written for a person. */
  readonly keys: string;
  /** It changes the schedule, so that a read-only element does not offer it. */
  readonly changes: boolean;
}

/** The commands that have a button. */
export const COMMANDS = {
  undo: { title: 'Undo', help: 'Takes the last action back, on whichever sheet it was', icon: 'undo', keys: 'Ctrl+Z', changes: true },
  redo: { title: 'Redo', help: 'Does again what was taken back', icon: 'redo', keys: 'Ctrl+Y', changes: true },
  open: { title: 'Open', help: 'Opens a schedule (.json, or a load table saved as .html or .xlsx), or reads one sheet (.csv)', icon: 'open', keys: 'Ctrl+O', changes: true },
  save: { title: 'Save', help: 'Saves the whole schedule as a file', icon: 'save', keys: 'Ctrl+S', changes: false },
  csvIn: { title: 'CSV in', help: 'Replaces the rows of this sheet by those of a CSV file', icon: 'csvIn', keys: 'Ctrl+I', changes: true },
  csvOut: { title: 'CSV out', help: 'Saves this sheet as a CSV file', icon: 'csvOut', keys: 'Ctrl+E', changes: false },
  takeoff: { title: 'Takeoff', help: 'Reads a list of counts measured off drawings', icon: 'takeoff', keys: 'F8', changes: true },
  shareOut: { title: 'Share out', help: 'Shares the devices out over bus branches or supplies', icon: 'shareOut', keys: 'F9', changes: true },
  sizing: { title: 'Sizing', help: 'Counts the supplies, branches and relay modules that the job needs', icon: 'sizing', keys: 'Shift+F9', changes: false },
  loadTable: { title: 'Load table', help: 'Shows what is handed over, prints and saves it; revisions, and changes since an older schedule', icon: 'loadTable', keys: 'Shift+F8', changes: false },
  insertAbove: { title: 'Insert above', help: 'Inserts a row above the selected one', icon: 'insertAbove', keys: 'Alt+Shift+Enter', changes: true },
  insertBelow: { title: 'Insert below', help: 'Inserts a row below the selected one', icon: 'insertBelow', keys: 'Alt+Enter', changes: true },
  removeRows: { title: 'Delete rows', help: 'Deletes the selected rows', icon: 'removeRows', keys: 'Alt+Delete', changes: true },
  moveUp: { title: 'Move up', help: 'Moves the selected rows up', icon: 'moveUp', keys: 'Alt+Shift+Up', changes: true },
  moveDown: { title: 'Move down', help: 'Moves the selected rows down', icon: 'moveDown', keys: 'Alt+Shift+Down', changes: true },
  fillDown: { title: 'Fill down', help: 'Fills the selected cells with what the uppermost ones hold', icon: 'fillDown', keys: 'Ctrl+D', changes: true },
} as const satisfies Record<string, Command>;

export type CommandName = keyof typeof COMMANDS;

/** The commands that act on the rows selected in the grid. */
export const ROW_COMMANDS = ['insertAbove', 'insertBelow', 'removeRows', 'moveUp', 'moveDown', 'fillDown'] as const;
export type RowCommand = (typeof ROW_COMMANDS)[number];

export function isRowCommand(name: CommandName): name is RowCommand {
  return (ROW_COMMANDS as readonly string[]).includes(name);
}

/** The commands that open a work area in the place of the sheets. */
export const WORK_COMMANDS = ['takeoff', 'shareOut', 'sizing', 'loadTable'] as const;
export type WorkCommand = (typeof WORK_COMMANDS)[number];

export function isWorkCommand(name: CommandName): name is WorkCommand {
  return (WORK_COMMANDS as readonly string[]).includes(name);
}

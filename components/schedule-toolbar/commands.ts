import type { IconName } from '../look/index.ts';
import { message } from '../../src/words/index.ts';

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
  undo: {
    title: message('Undo'), help: message('Takes the last action back, on whichever sheet it was'), icon: 'undo',
    keys: message('Ctrl+Z'), changes: true,
  },
  redo: {
    title: message('Redo'), help: message('Does again what was taken back'), icon: 'redo', keys: message('Ctrl+Y'),
    changes: true,
  },
  open: {
    title: message('Open'),
    help: message('Opens a schedule (.json, or a load table saved as .html or .xlsx), or reads one sheet (.csv)'),
    icon: 'open', keys: message('Ctrl+O'), changes: true,
  },
  save: {
    title: message('Save'), help: message('Saves the whole schedule as a file'), icon: 'save', keys: message('Ctrl+S'),
    changes: false,
  },
  csvIn: {
    title: message('CSV in'), help: message('Reads a CSV file into this sheet: it updates by tag, appends or replaces'), icon: 'csvIn',
    keys: message('Ctrl+I'), changes: true,
  },
  csvOut: {
    title: message('CSV out'), help: message('Saves this sheet as a CSV file'), icon: 'csvOut', keys: message('Ctrl+E'),
    changes: false,
  },
  join: {
    title: message('Join'), help: message('Joins another schedule to this one, as of somebody who worked on other floors'),
    icon: 'join', keys: message('Ctrl+J'), changes: true,
  },
  takeoff: {
    title: message('Takeoff'), help: message('Reads a list counted off drawings'), icon: 'takeoff',
    keys: message('F8'), changes: true,
  },
  shareOut: {
    title: message('Share out'), help: message('Shares the devices out over bus branches or supplies'),
    icon: 'shareOut', keys: message('F9'), changes: true,
  },
  sizing: {
    title: message('Sizing'), help: message('Counts the supplies, branches and relay modules that the job needs'),
    icon: 'sizing', keys: message('Shift+F9'), changes: false,
  },
  cases: {
    title: message('Cases'), help: message('What happens when it all comes together: factors by case, loadings compared, what matters'),
    icon: 'cases', keys: message('F7'), changes: false,
  },
  wiring: {
    title: message('Wiring'), help: message('Lays out terminals, and lists what is wired to what: wiring list, cables, labels, spare ways'),
    icon: 'wiring', keys: message('F4'), changes: false,
  },
  bill: {
    title: message('Bill'), help: message('Counts what is to be bought, by panel and in all, with prices where they are known'),
    icon: 'bill', keys: message('Ctrl+B'), changes: false,
  },
  loadTable: {
    title: message('Load table'),
    help: message('Shows what is handed over, prints and saves it; revisions, and changes since an older schedule'),
    icon: 'loadTable', keys: message('Shift+F8'), changes: false,
  },
  measure: {
    title: message('Measured'), help: message('Enters what was measured at supplies and runs, and says what it means'),
    icon: 'measure', keys: message('Ctrl+M'), changes: true,
  },
  variants: {
    title: message('Variants'), help: message('Tries something out beside the schedule, compares, and takes it over or drops it'),
    icon: 'variants', keys: message('Shift+F6'), changes: false,
  },
  help: {
    title: message('Help'), help: message('Says what columns and words mean'), icon: 'help', keys: message('F1'),
    changes: false,
  },
  firstSteps: {
    title: message('First steps'), help: message('Leads step by step from counts to what is handed over'),
    icon: 'firstSteps', keys: message('Shift+F1'), changes: true,
  },
  find: {
    title: message('Find'), help: message('Finds a text in all sheets'), icon: 'find', keys: message('Ctrl+F'), changes: false,
  },
  replace: {
    title: message('Replace'), help: message('Replaces a text in what was entered, with a preview'), icon: 'find',
    keys: message('Ctrl+H'), changes: true,
  },
  goTo: {
    title: message('Go to'), help: message('Goes to a tag, a sheet or a cell'), icon: 'find', keys: message('Ctrl+G'),
    changes: false,
  },
  insertAbove: {
    title: message('Insert above'), help: message('Inserts a row above the selected one'), icon: 'insertAbove',
    keys: message('Alt+Shift+Enter'), changes: true,
  },
  insertBelow: {
    title: message('Insert below'), help: message('Inserts a row below the selected one'), icon: 'insertBelow',
    keys: message('Alt+Enter'), changes: true,
  },
  removeRows: {
    title: message('Delete rows'), help: message('Deletes the selected rows'), icon: 'removeRows',
    keys: message('Alt+Delete'), changes: true,
  },
  moveUp: {
    title: message('Move up'), help: message('Moves the selected rows up'), icon: 'moveUp',
    keys: message('Alt+Shift+Up'), changes: true,
  },
  moveDown: {
    title: message('Move down'), help: message('Moves the selected rows down'), icon: 'moveDown',
    keys: message('Alt+Shift+Down'), changes: true,
  },
  fillDown: {
    title: message('Fill down'), help: message('Fills the selected cells with what the uppermost ones hold'),
    icon: 'fillDown', keys: message('Ctrl+D'), changes: true,
  },
  moreColumns: {
    title: message('More columns'),
    help: message('Shows the columns that few schedules need; those that hold something are shown anyway'),
    icon: 'moreColumns', keys: message('Shift+F7'), changes: false,
  },
  foldGroups: {
    title: message('Fold groups'),
    help: message('Folds the rows of all groups under their headings, or shows them again'), icon: 'foldGroups',
    keys: message('Ctrl+Shift+K'), changes: false,
  },
} as const satisfies Record<string, Command>;

export type CommandName = keyof typeof COMMANDS;

/** The commands that act on the rows selected in the grid. */
export const ROW_COMMANDS = ['insertAbove', 'insertBelow', 'removeRows', 'moveUp', 'moveDown', 'fillDown'] as const;
export type RowCommand = (typeof ROW_COMMANDS)[number] | 'foldGroups';

export function isRowCommand(name: CommandName): name is RowCommand {
  return name === 'foldGroups' || (ROW_COMMANDS as readonly string[]).includes(name);
}

/** The commands that open a bar above the rows, to look for something. */
export type SeekCommand = 'find' | 'replace' | 'goTo';

export function isSeekCommand(name: CommandName): name is SeekCommand {
  return name === 'find' || name === 'replace' || name === 'goTo';
}

/** Jobs on the selected rows, which open the area of jobs; they have no button. */
export const JOB_COMMANDS = ['duplicate', 'moveTo', 'swapType', 'splitRun'] as const;
export type JobCommand = (typeof JOB_COMMANDS)[number];

export function isJobCommand(name: string): name is JobCommand {
  return (JOB_COMMANDS as readonly string[]).includes(name);
}

/** The commands that open a work area in the place of the sheets. */
export const WORK_COMMANDS = ['join', 'takeoff', 'shareOut', 'sizing', 'cases', 'variants', 'wiring', 'bill', 'measure', 'loadTable'] as const;
export type WorkCommand = (typeof WORK_COMMANDS)[number];

export function isWorkCommand(name: CommandName): name is WorkCommand {
  return (WORK_COMMANDS as readonly string[]).includes(name);
}

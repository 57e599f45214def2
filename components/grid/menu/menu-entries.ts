import { message } from '../../../src/words/index.ts';
import { JOB_WORDS, JOBS_OF } from '../../rework/job-sheets.ts';
import type { CommandName, JobCommand } from '../../schedule-toolbar/commands.ts';
import { COMMANDS } from '../../schedule-toolbar/commands.ts';
import { inputAt, type GridModel } from '../grid-model.ts';
import type { GridSelection } from '../grid-selection.ts';

/** What the menu was asked for on. */
export type MenuPlace = 'cells' | 'rows' | 'columns';

/** What an entry does: a command of the grid, or one of the element. */
export type MenuCommand = 'startEditing' | 'cut' | 'copy' | 'paste' | 'clearCells' | 'columnMenu' | CommandName | JobCommand;

export interface MenuEntry {
  readonly command: MenuCommand;
  /** English messages: what it is called, and the keys that do the same. */
  readonly title: string;
  readonly keys: string;
  readonly disabled: boolean;
}

interface Offered {
  readonly title: string;
  readonly keys: string;
  readonly changes: boolean;
}

const OWN: Readonly<Record<Exclude<MenuCommand, CommandName>, Offered>> = {
  startEditing: { title: message('Edit'), keys: message('F2'), changes: true },
  cut: { title: message('Cut'), keys: message('Ctrl+X'), changes: true },
  copy: { title: message('Copy'), keys: message('Ctrl+C'), changes: false },
  paste: { title: message('Paste'), keys: message('Ctrl+V'), changes: true },
  clearCells: { title: message('Empty'), keys: message('Delete'), changes: true },
  columnMenu: { title: message('Sort and pick rows'), keys: message('Ctrl+Shift+L'), changes: false },
  ...JOB_WORDS,
};

const CELLS: readonly MenuCommand[] = ['cut', 'copy', 'paste', 'clearCells'];
const ROWS: readonly MenuCommand[] = ['insertAbove', 'insertBelow', 'removeRows', 'moveUp', 'moveDown'];
const SEEKING: readonly MenuCommand[] = ['find', 'replace', 'goTo'];

const GROUPS: Readonly<Record<MenuPlace, readonly (readonly MenuCommand[])[]>> = {
  cells: [['startEditing', 'undo', 'redo'], CELLS, ['fillDown'], ROWS, ['columnMenu', ...SEEKING]],
  rows: [ROWS, CELLS, ['fillDown'], SEEKING],
  columns: [['columnMenu', 'moreColumns'], CELLS, ['fillDown'], SEEKING],
};

/** What the menu offers on a place, in groups; what would do nothing is there and cannot be chosen. */
export function menuEntries(
  place: MenuPlace, model: GridModel, selection: GridSelection, readonly: boolean,
): (readonly MenuEntry[])[] {
  const { schedule } = model;
  const isInput = inputAt(model, selection.column) !== undefined;
  const isVain = (command: MenuCommand): boolean => (command === 'startEditing' && !isInput)
    || (command === 'undo' && schedule.undoLabel === undefined) || (command === 'redo' && schedule.redoLabel === undefined);
  const groups = GROUPS[place].map((group) => (group === ROWS ? [...group, ...JOBS_OF[model.sheet] ?? []] : group));
  return groups.map((group) => group.map((command) => {
    const { title, keys, changes }: Offered = command in OWN
      ? OWN[command as keyof typeof OWN] : COMMANDS[command as CommandName];
    return { command, title, keys, disabled: (readonly && changes) || isVain(command) };
  }));
}

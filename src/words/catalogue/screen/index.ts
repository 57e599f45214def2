import { cellActions } from './cell-actions.ts';
import { commands } from './commands.ts';
import { explanation } from './explanation.ts';
import { grid } from './grid.ts';
import { keys } from './keys.ts';
import { page } from './page.ts';
import { panel } from './panel.ts';
import { rowActions } from './row-actions.ts';

/** What the element says on the screen. */
export const screen = { ...commands, ...keys, ...rowActions, ...cellActions, ...grid, ...panel, ...explanation, ...page };

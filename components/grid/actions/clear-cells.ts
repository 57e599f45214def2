import { setCells, type InputColumn } from '../../../src/schedule/index.ts';
import { idAt, inputAt, type GridModel } from '../grid-model.ts';
import type { GridSelection } from '../grid-selection.ts';
import { counted, nothing, type Plan } from './plan.ts';

/** Empties the selected cells, so that defaults come back. Computed cells stay as they are. */
export function clearCells(model: GridModel, selection: GridSelection, verb: 'cleared' | 'cut' = 'cleared'): Plan {
  const { schedule: { document }, sheet } = model;
  const keys = selection.columns.map((index) => inputAt(model, index))
    .filter((column): column is InputColumn => column !== undefined).map(({ key }) => key);
  if (keys.length === 0) return nothing('Computed figures cannot be emptied: they follow from the cells that are filled in.');
  const edits = selection.lines.map((line) => idAt(model, line)).filter((id) => id >= 0)
    .flatMap((id) => keys.map((key) => ({ sheet, id, key, value: null })));
  const changes = setCells(document, edits);
  if (changes.length === 0) return nothing();
  const what = counted(changes.length, 'cell');
  return {
    kind: 'act', label: `${verb === 'cut' ? 'Cut' : 'Clearing'} of ${what}`, changes,
    ...(changes.length > 1 || verb === 'cut' ? { message: `${what} ${verb}.` } : {}),
  };
}

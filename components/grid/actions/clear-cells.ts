import { setCells, type InputColumn } from '../../../src/schedule/index.ts';
import { idAt, inputAt, type GridModel } from '../grid-model.ts';
import type { GridSelection } from '../grid-selection.ts';
import { nothing, type Plan } from './plan.ts';

/** Empties the selected cells, so that defaults come back. Computed cells stay as they are. */
export function clearCells(model: GridModel, selection: GridSelection, verb: 'cleared' | 'cut' = 'cleared'): Plan {
  const { schedule: { document }, sheet, words } = model;
  const keys = selection.columns.map((index) => inputAt(model, index))
    .filter((column): column is InputColumn => column !== undefined).map(({ key }) => key);
  if (keys.length === 0) return nothing(words.say('Computed figures cannot be emptied: they follow from the cells that are filled in.'));
  const edits = selection.lines.map((line) => idAt(model, line)).filter((id) => id >= 0)
    .flatMap((id) => keys.map((key) => ({ sheet, id, key, value: null })));
  const changes = setCells(document, edits);
  if (changes.length === 0) return nothing();
  const n = changes.length;
  if (verb === 'cut') {
    const label = words.say('Cut of {n, plural, one {# cell} other {# cells}}', { n });
    return { kind: 'act', label, changes, message: words.say('{n, plural, one {# cell} other {# cells}} cut.', { n }) };
  }
  return {
    kind: 'act', label: words.say('Clearing of {n, plural, one {# cell} other {# cells}}', { n }), changes,
    ...(n > 1 ? { message: words.say('{n, plural, one {# cell} other {# cells}} cleared.', { n }) } : {}),
  };
}

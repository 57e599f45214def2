import { setCells } from '../../../src/schedule/index.ts';
import { idAt, inputAt, type GridModel } from '../grid-model.ts';
import { columnsByLine, type GridSelection } from '../grid-selection.ts';
import { nothing, type Plan } from './plan.ts';

/** Empties the selected cells, so that defaults come back. Computed cells stay as they are. */
export function clearCells(model: GridModel, selection: GridSelection, verb: 'cleared' | 'cut' = 'cleared'): Plan {
  const { schedule: { document }, sheet, words } = model;
  const columns = selection.blocks.flatMap((block) => block.columns);
  if (columns.every((index) => inputAt(model, index) === undefined)) {
    return nothing(words.say('Computed figures cannot be emptied: they follow from the cells that are filled in.'));
  }
  const edits = [...columnsByLine(selection)].flatMap(([line, own]) => {
    const id = idAt(model, line);
    if (id < 0) return [];
    return own.flatMap((index) => inputAt(model, index) ?? []).map(({ key }) => ({ sheet, id, key, value: null }));
  });
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
